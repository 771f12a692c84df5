/** A long history over a large estate: the first commit declares it, each further one changes a few files of it. */
import { estateFiles, fixed, type Size } from './estate.ts';
import { buildRepository, type Commit } from './repository.ts';

export interface HistorySize extends Size {
  readonly commits: number;
  /** Only the first so many files ever change, so that two estates of unlike size can go through the same commits. */
  readonly changing: number;
}

const day = 86_400;
const start = Date.UTC(2026, 0, 5, 9) / 1000;

/** Four commits a day; nine in ten change one file, some three, and one in fifty the policy. Returns the folder. */
export const buildHistory = (size: HistorySize): string => buildRepository(historyOf(size));

function* historyOf({ commits, changing, ...size }: HistorySize): Generator<Commit> {
  const texts: Record<string, string> = { ...estateFiles(size) };
  for (let number = 0; number <= commits; number++) {
    const edits: Record<string, string> = number === 0 ? { ...texts } : {};
    for (let each = 0; number > 0 && each < (number % 10 === 0 ? 3 : 1); each++) {
      const path = `storage/e${(number * 7 + each * 31) % changing}.yaml`;
      const size = `size: ${40 + (number % 60)} GiB\n    tier: bulk`;
      texts[path] = texts[path]?.replace(/size: [0-9]+ GiB\n {4}tier: bulk/, size) ?? '';
      edits[path] = texts[path];
    }
    if (number > 0 && number % 50 === 0) {
      const policies = fixed['policies/storage.yaml'] ?? '';
      edits['policies/storage.yaml'] = policies.replace('"500000.00"', `"${500_000 + number}.00"`);
    }
    const message = `change ${number}\n\nReviewed-by: Robin Knot <robin@gannet-point.example>\n`;
    yield { branch: 'main', files: edits, at: start + Math.floor((number * day) / 4), message };
  }
}
