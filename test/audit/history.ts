/** Whole histories written at once by `git fast-import`, for tests that need many commits. */
import { execFileSync } from 'node:child_process';
import { isolatedEnvironment, makeRepository, type TestRepository } from '../repository.ts';

/** Path -> what it holds from this commit on; `null` where it goes. A link is written as its target. */
export type Edits = Readonly<Record<string, string | null | { readonly link: string }>>;

export interface Step {
  readonly edits: Edits;
  /** RFC 3339. */
  readonly date: string;
  /** Numbers of earlier steps that this one merges, besides the one before it. */
  readonly merges?: readonly number[];
  readonly message?: string;
  readonly author?: string;
}

const bytes = (text: string): number => Buffer.byteLength(text);

/** A repository whose main branch goes through these steps. */
export function historyOf(steps: readonly Step[]): TestRepository {
  const repository = makeRepository();
  const stream = steps.map((step, index) => commit(step, index)).join('');
  execFileSync('git', ['fast-import', '--quiet', '--done'], {
    cwd: repository.dir,
    env: isolatedEnvironment(),
    input: `${stream}done\n`,
  });
  repository.git('symbolic-ref', 'HEAD', 'refs/heads/main');
  return repository;
}

function commit({ edits, date, merges = [], message = 'a change', author }: Step, index: number): string {
  const seconds = Math.floor(Date.parse(date) / 1000);
  const who = author ?? 'Avery Tern <avery@gannet-point.example>';
  const lines = [
    'commit refs/heads/main',
    `mark :${index + 1}`,
    `author ${who} ${seconds} +0000`,
    `committer ${who} ${seconds} +0000`,
    `data ${bytes(message)}`,
    message,
    ...(index === 0 ? [] : [`from :${index}`]),
    ...[...new Set(merges)].filter((each) => each < index - 1).map((each) => `merge :${each + 1}`),
  ];
  for (const [path, content] of Object.entries(edits)) {
    if (content === null) lines.push(`D ${path}`);
    else {
      const text = typeof content === 'string' ? content : content.link;
      const mode = typeof content === 'string' ? '100644' : '120000';
      lines.push(`M ${mode} inline ${path}`, `data ${bytes(text)}`, text);
    }
  }
  return `${lines.join('\n')}\n\n`;
}

/** The commits of main, oldest first. */
export const mainOf = (repository: TestRepository): readonly string[] =>
  repository.git('rev-list', '--first-parent', '--reverse', 'main').split('\n');
