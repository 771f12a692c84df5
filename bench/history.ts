/** A long history over a large estate: the first commit declares it, each further one changes a few files of it. */
import { execFileSync } from 'node:child_process';
import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { estateFile, fixed } from './estate.ts';

export interface HistorySize {
  readonly volumes: number;
  readonly files: number;
  readonly commits: number;
  /** Only the first so many files ever change, so that two estates of unlike size can go through the same commits. */
  readonly changing: number;
}

const day = 86_400;
const start = Date.UTC(2026, 0, 5, 9) / 1000;

/** Four commits a day; nine in ten change one file, some three, and one in fifty the policy. Returns the folder. */
export function buildHistory({ volumes, files, commits, changing }: HistorySize): string {
  const repository = mkdtempSync(join(tmpdir(), 'ullage-bench-'));
  execFileSync('git', ['init', '--quiet', '--initial-branch=main', repository]);
  const texts = Array.from({ length: files }, (_each, file) => estateFile(file, volumes / files));
  const stream: string[] = [];
  const commit = (number: number, edits: ReadonlyMap<string, string>): void => {
    const message = `change ${number}\n\nReviewed-by: Robin Knot <robin@gannet-point.example>\n`;
    const who = `Avery Tern <avery@gannet-point.example> ${start + Math.floor((number * day) / 4)} +0000`;
    stream.push(`commit refs/heads/main\nmark :${number + 1}\nauthor ${who}\ncommitter ${who}\n`);
    stream.push(`data ${Buffer.byteLength(message)}\n${message}\n${number === 0 ? '' : `from :${number}\n`}`);
    for (const [path, text] of edits) {
      stream.push(`M 100644 inline ${path}\ndata ${Buffer.byteLength(text)}\n${text}\n`);
    }
  };
  const path = (file: number): string => `storage/e${file}.yaml`;
  commit(0, new Map([...Object.entries(fixed), ...texts.map((text, file) => [path(file), text] as const)]));
  for (let number = 1; number <= commits; number++) {
    const edits = new Map<string, string>();
    for (let each = 0; each < (number % 10 === 0 ? 3 : 1); each++) {
      const file = (number * 7 + each * 31) % changing;
      const grown = 40 + (number % 60);
      const text = (texts[file] ?? '').replace(
        /size: [0-9]+ GiB\n {4}tier: bulk/,
        `size: ${grown} GiB\n    tier: bulk`,
      );
      texts[file] = text;
      edits.set(path(file), text);
    }
    if (number % 50 === 0) {
      const policies = fixed['policies/storage.yaml'] ?? '';
      edits.set('policies/storage.yaml', policies.replace('"500000.00"', `"${500_000 + number}.00"`));
    }
    commit(number, edits);
  }
  execFileSync('git', ['fast-import', '--quiet', '--done'], {
    cwd: repository,
    input: `${stream.join('')}done\n`,
  });
  return repository;
}
