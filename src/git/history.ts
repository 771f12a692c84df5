/**
 * The main branch's own history, newest first: each commit or merge as it changed main, held against its first
 * parent. One `git log` names the commits and what each changed; the commits themselves come from the object
 * store. Both are streamed, so a long history takes no more memory than a short one.
 */

import { err, type Outcome, ok, type Problem } from '../base/problem.ts';
import type { Commit } from './commit.ts';
import { cannotRun, gitSaid } from './process.ts';
import type { GitRepository } from './repository.ts';
import { folderPath, noFolder } from './tree.ts';

/** One path that a commit changed. Modes are octal, `000000` where there is nothing; ids are all zeros there. */
export interface ChangedPath {
  readonly path: string;
  readonly how: 'added' | 'deleted' | 'modified' | 'type-changed';
  readonly before: { readonly mode: string; readonly blob: string };
  readonly after: { readonly mode: string; readonly blob: string };
}

export interface HistoryEntry {
  readonly commit: Commit;
  /** Within the folders asked for, in byte order of the path. */
  readonly changed: readonly ChangedPath[];
  /** The clone ends here, so what this commit changed is not known: all it holds is listed as added. */
  readonly cutShort: boolean;
}

export interface HistoryRange {
  /** The commit to start after, by id; the first of all if left out. */
  readonly from?: string | undefined;
  /** The commit to end with, by id. */
  readonly to: string;
  /** Only commits that change something in these. */
  readonly folders?: readonly string[] | undefined;
  readonly oldestFirst?: boolean | undefined;
}

/** Newest first, unless asked otherwise. The first refusal ends it. */
export async function* firstParentHistory(
  repo: GitRepository,
  { from, to, folders = [], oldestFirst = false }: HistoryRange,
): AsyncGenerator<Outcome<HistoryEntry>, void, undefined> {
  const paths = folders.map(folderPath);
  const unknown = folders.filter((_, index) => paths[index] === undefined);
  if (unknown.length > 0) return yield err(...unknown.map(noFolder));
  const args = [
    'log',
    '--first-parent',
    '-m',
    '--raw',
    '-z',
    '--no-abbrev',
    '--no-renames',
    '--no-ext-diff',
    '--no-textconv',
    '--no-show-signature',
    '--no-notes',
    '--root',
    ...(oldestFirst ? ['--reverse'] : []),
    '--format=%H',
    '--end-of-options',
    to,
    ...(from === undefined ? [] : [`^${from}`]),
    '--',
    ...(paths.includes('') ? [] : paths.filter((path) => path !== undefined)),
  ];
  const git = repo.startInObjects(args);
  git.stdin.on('error', () => {});
  git.stdin.end();
  let said = '';
  git.stderr.on('data', (chunk: Buffer) => {
    if (said.length < 4096) said += chunk.toString('utf8');
  });
  const ended = new Promise<Problem | undefined>((resolve) => {
    git.on('error', (error: NodeJS.ErrnoException) => resolve(cannotRun(error.code ?? error.message)));
    git.on('close', (code) => {
      const message = `git could not list the history: ${gitSaid(said)}`;
      resolve(
        code === 0
          ? undefined
          : { message, advice: 'Run `git fsck` in the repository, and repair what it reports.' },
      );
    });
  });
  try {
    let rest: Buffer = Buffer.alloc(0);
    const reader = new LogReader();
    for await (const chunk of git.stdout) {
      rest = Buffer.concat([rest, chunk]);
      const end = rest.lastIndexOf(0);
      if (end === -1) continue;
      yield* inOrder(repo, reader.take(rest.subarray(0, end + 1)));
      rest = Buffer.from(rest.subarray(end + 1));
    }
    const problem = await ended;
    if (problem !== undefined) return yield err(problem);
    yield* inOrder(repo, reader.finish());
  } finally {
    git.kill();
  }
}

interface Listed {
  readonly id: string;
  readonly changed: readonly ChangedPath[];
}

/** Asks for all commits at once, and hands them out in the order of the log. */
async function* inOrder(
  repo: GitRepository,
  listed: readonly Listed[],
): AsyncGenerator<Outcome<HistoryEntry>, void, undefined> {
  for (const entry of await Promise.all(
    listed.map(async ({ id, changed }): Promise<Outcome<HistoryEntry>> => {
      const commit = await repo.commit(id);
      return commit.ok ? ok({ commit: commit.value, changed, cutShort: repo.shallow.has(id) }) : commit;
    }),
  )) {
    yield entry;
    if (!entry.ok) return;
  }
}

const hows: Readonly<Record<string, ChangedPath['how']>> = {
  A: 'added',
  D: 'deleted',
  M: 'modified',
  T: 'type-changed',
};

/** Puts the log's pieces together: an id, then for each changed path its modes and ids, then the path itself. */
class LogReader {
  #id: string | undefined;
  #changed: ChangedPath[] = [];
  #raw: string | undefined;

  take(output: Buffer): readonly Listed[] {
    const done: Listed[] = [];
    let start = 0;
    for (let end = output.indexOf(0); end !== -1; end = output.indexOf(0, start)) {
      const piece = output.subarray(start, end);
      start = end + 1;
      if (this.#raw !== undefined) {
        const [before = '', after = '', blobBefore = '', blobAfter = '', status = ''] = this.#raw.split(' ');
        this.#changed.push({
          path: piece.toString('utf8'),
          how: hows[status] ?? 'modified',
          before: { mode: before, blob: blobBefore },
          after: { mode: after, blob: blobAfter },
        });
        this.#raw = undefined;
        continue;
      }
      const text = piece.toString('latin1').trim();
      if (text.startsWith(':')) this.#raw = text.slice(1);
      else {
        done.push(...this.finish());
        this.#id = text;
      }
    }
    return done;
  }

  /** The commit that is still open; its end is only known when the next begins. */
  finish(): readonly Listed[] {
    if (this.#id === undefined) return [];
    const last = { id: this.#id, changed: this.#changed };
    this.#id = undefined;
    this.#changed = [];
    return [last];
  }
}
