/**
 * A scratch repository in a temporary folder, which borrows the objects of the real one and has none of its settings.
 * It is written file by file, as gitrepository-layout(5) has it: running `git init` would take longer than a merge.
 */
import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { mkdtemp } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { err, type Outcome, ok } from '../base/problem.ts';

export type ObjectFormat = 'sha1' | 'sha256';

export interface ScratchOf {
  /** The folder of the real repository's objects. */
  readonly objects: string;
  readonly objectFormat: ObjectFormat;
  /** Where the clone's history ends, as its own file `shallow` has it; empty where it does not. */
  readonly shallowText: string;
}

const configs: Readonly<Record<ObjectFormat, string>> = {
  sha1: '[core]\n\trepositoryformatversion = 0\n\tbare = true\n',
  sha256: '[core]\n\trepositoryformatversion = 1\n\tbare = true\n[extensions]\n\tobjectformat = sha256\n',
};

export async function makeScratch({
  objects,
  objectFormat,
  shallowText,
}: ScratchOf): Promise<Outcome<string>> {
  let scratch: string | undefined;
  try {
    scratch = await mkdtemp(join(tmpdir(), 'ullage-'));
    mkdirSync(join(scratch, 'refs'));
    mkdirSync(join(scratch, 'objects', 'info'), { recursive: true });
    writeFileSync(join(scratch, 'HEAD'), 'ref: refs/heads/main\n');
    writeFileSync(join(scratch, 'config'), configs[objectFormat]);
    // Quoted, because a bare path may not begin with a number sign or a quote.
    const quoted = `"${objects.replace(/["\\]/g, '\\$&')}"\n`;
    writeFileSync(join(scratch, 'objects', 'info', 'alternates'), quoted);
    if (shallowText !== '') writeFileSync(join(scratch, 'shallow'), shallowText, 'latin1');
    return ok(scratch);
  } catch (error) {
    if (scratch !== undefined) removeScratch(scratch);
    return err({
      message: `no temporary folder can be made in ${tmpdir()} (${error instanceof Error ? error.message : error})`,
      advice: 'Free space there, or set TMPDIR to a folder that can be written to.',
    });
  }
}

/** A handful of small files: quicker gone at once than by way of the thread pool. */
export const removeScratch = (scratch: string): void =>
  rmSync(scratch, { recursive: true, force: true, maxRetries: 3 });
