/** Many random branches, played one after another, and what went wrong of them by kind. */
import fc from 'fast-check';
import type { Spare } from './begin.ts';
import { pairs } from './estates.ts';
import { played } from './played.ts';

export interface Found {
  readonly times: number;
  /** The shortest that was seen. */
  readonly example: string;
}

export interface Many {
  /** Branches that do not contradict themselves. */
  readonly tried: number;
  /** Steps of all of them. */
  readonly steps: number;
  readonly faults: ReadonlyMap<string, Found>;
  /** By kind: branches of which the planner says that no order of steps carries them out. */
  readonly snags: ReadonlyMap<string, Found>;
  /** How many of those have more orders than were tried. */
  readonly untold: number;
}

const batch = 1_000;

const GiB = 1n << 30n;

/**
 * Of quotas, in turn: none are set, all is taken, a volume's room is left, one of both is over what there may be; main
 * has too much, and the branch mends that, with room to spare or none.
 */
const quotas: readonly Spare['quota'][] = [
  undefined,
  { than: 'either', volumes: 0, size: 0n },
  { than: 'either', volumes: 1, size: 20n * GiB },
  { than: 'either', volumes: 1, size: 0n },
  { than: 'either', volumes: 0, size: 40n * GiB },
  { than: 'either', volumes: -1, size: 0n },
  { than: 'either', volumes: 0, size: -5n * GiB },
  { than: 'head', volumes: 0, size: 0n },
  { than: 'head', volumes: 1, size: 20n * GiB },
  { than: 'head', volumes: 9, size: 0n },
  { than: 'head', volumes: 0, size: 900n * GiB },
];

/** Servers have no attachment slot beyond what either end takes, one, or two, in turn, and their sites likewise. */
export const spareOf = (index: number): Spare => ({
  slots: index % 3,
  quota: quotas[index % quotas.length],
});

export function playMany({ count, seed }: { readonly count: number; readonly seed: number }): Many {
  const [faults, snags] = [new Map<string, Found>(), new Map<string, Found>()];
  let [tried, steps, untold] = [0, 0, 0];
  for (let done = 0; done < count; done += batch) {
    const drawn = fc.sample(pairs, { seed: seed + done / batch, numRuns: Math.min(batch, count - done) });
    drawn.forEach((pair, index) => {
      const outcome = played(pair, spareOf(index));
      if (outcome === undefined) return;
      tried += 1;
      steps += outcome.steps.length;
      if (outcome.isUntold) untold += 1;
      const [base, head] = pair.map((files) => files['storage/all.yaml']);
      const where = `\n  base: ${base}\n  head: ${head}\n  spare: ${index % (3 * quotas.length)}`;
      for (const fault of outcome.faults) {
        // One kind, whatever the names and the figures.
        const [first = ''] = fault.split('\n');
        const kind = first.replace(/\b[svg][0-9](-new|-renamed)?\b/g, 'N').replace(/[0-9]+/g, '0');
        keep(faults, kind, `${fault}${where}`);
      }
      if (outcome.snag !== undefined) keep(snags, outcome.snag.kind, where);
    });
  }
  return { tried, steps, faults, snags, untold };
}

function keep(found: Map<string, Found>, kind: string, example: string): void {
  const known = found.get(kind);
  found.set(kind, {
    times: (known?.times ?? 0) + 1,
    example: known !== undefined && known.example.length <= example.length ? known.example : example,
  });
}
