/** Repositories written at once by `git fast-import`, however many commits they have. */
import { execFileSync } from 'node:child_process';
import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

export interface Commit {
  /** The branch that it is put on, on top of what is there already. */
  readonly branch: string;
  /** The branch that this one begins at; the first commit of a branch without it has no parent. */
  readonly from?: string;
  /** Path -> what the file holds from this commit on, or `null` where it goes. */
  readonly files: Readonly<Record<string, string | null>>;
  /** Seconds since 1970, in UTC. */
  readonly at?: number;
  readonly message?: string;
}

/** Builds the repository in a temporary folder, bare of a work tree; returns the folder. */
export function buildRepository(commits: Iterable<Commit>): string {
  const folder = mkdtempSync(join(tmpdir(), 'ullage-bench-'));
  execFileSync('git', ['init', '--quiet', '--initial-branch=main', folder]);
  const stream: string[] = [];
  const blob = (text: string): string => `data ${Buffer.byteLength(text)}\n${text}\n`;
  for (const { branch, from, files, at = Date.UTC(2026, 0, 5, 9) / 1000, message = 'a change' } of commits) {
    const who = `Avery Tern <avery@gannet-point.example> ${at} +0000`;
    stream.push(`commit refs/heads/${branch}\nauthor ${who}\ncommitter ${who}\n${blob(message)}`);
    if (from !== undefined) stream.push(`from refs/heads/${from}\n`);
    for (const [path, text] of Object.entries(files)) {
      stream.push(text === null ? `D ${path}\n` : `M 100644 inline ${path}\n${blob(text)}`);
    }
  }
  execFileSync('git', ['fast-import', '--quiet', '--done'], {
    cwd: folder,
    input: `${stream.join('')}done\n`,
  });
  return folder;
}
