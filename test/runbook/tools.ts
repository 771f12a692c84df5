/** What shipped commands run, and what their manual pages say of it. */
import type { Command } from '../../src/runbook/procedure-file.ts';

export interface ManualPage {
  readonly page: string;
  readonly package: string;
  readonly version: string;
  readonly source: string;
  readonly options: readonly string[];
  readonly settings: readonly string[];
}

/** Programs whose manual pages Debian's main archive does not carry: OpenZFS is in contrib. */
export const elsewhere: readonly string[] = ['zpool'];

/** The program, and the page that its command names. */
export function pageOf({ run, from }: Extract<Command, { run: unknown }>): readonly [string, string] {
  const [program] = run;
  return [typeof program === 'string' ? program : '', from.split(',')[0] ?? ''];
}
