/** Runs the command line as a user would, in this process, and gathers what it says. */
import { main } from '../../src/cli/main.ts';

export interface Run {
  readonly code: number;
  readonly out: string;
  readonly err: string;
}

export async function ullage(...args: readonly string[]): Promise<Run> {
  let out = '';
  let err = '';
  const code = await main(args, {
    out: (text) => {
      out += text;
    },
    err: (text) => {
      err += text;
    },
  });
  return { code, out, err };
}

/** As if the user stood in a folder. */
export async function ullageIn(folder: string, ...args: readonly string[]): Promise<Run> {
  const before = process.cwd();
  process.chdir(folder);
  try {
    return await ullage(...args);
  } finally {
    process.chdir(before);
  }
}
