/** What df shows on a server, held against what is declared and what was read before: which of it becomes readings. */
import { offer, quoted } from '../base/nearest.ts';
import { err, type Outcome, ok, type Problem } from '../base/problem.ts';
import { type Bytes, showSize } from '../estate/size.ts';
import type { DfRow } from './df.ts';
import type { Reading } from './readings.ts';

/** What is to be added, and against what it is held. */
export interface NewReadings {
  readonly server: string;
  /** When df ran, as `readingTime` gives it. */
  readonly at: string;
  readonly now: string;
  readonly rows: readonly DfRow[];
  /** The file systems the estate declares: server, mount point, declared size. */
  readonly declared: ReadonlyMap<string, ReadonlyMap<string, Bytes>>;
  /** The newest reading there is, by mount point of this server. */
  readonly newest: ReadonlyMap<string, Pick<Reading, 'at' | 'size'>>;
  /** Whether a size is taken that is far from the declared one. */
  readonly anySize?: boolean;
  /** The mount points asked for by name; none means every declared one that df shows. */
  readonly only?: readonly string[];
}

/** A file system of df that is not taken, and why. */
export interface LeftOut {
  readonly mount: string;
  readonly device: string;
  readonly why: 'not declared' | 'not asked for' | 'not measured';
}

export interface Appendable {
  readonly readings: readonly Reading[];
  readonly leftOut: readonly LeftOut[];
  /** Declared on this server and not in df's output: not mounted, perhaps. */
  readonly notShown: readonly string[];
}

const dayInMilliseconds = 86_400_000;

/**
 * Decides which lines of df become readings. df shows every mounted file system, memory and device trees among them;
 * those that the estate does not declare are left out and listed. It is refused, all or nothing, when the server is
 * not declared, when no line belongs to a declared file system, when a mount point asked for is not declared or not
 * measured, when a size is at odds with the declared one, and when the time is not later than the newest reading's or
 * lies in the future.
 */
export function rowsToAppend(wanted: NewReadings): Outcome<Appendable> {
  const { server, at, now, rows, declared, newest, only, anySize = false } = wanted;
  const sizes = declared.get(server) ?? new Map<string, Bytes>();
  const mounts = [...sizes.keys()];
  if (mounts.length === 0) {
    const withMounts = [...declared].filter(([, each]) => each.size > 0).map(([name]) => name);
    return err({
      message: `no file system is declared on a server ${quoted(server)}`,
      advice: `${offer(server, withMounts)}Declare its file systems under storage/ first.`,
    });
  }
  if (Date.parse(at) > Date.parse(now) + dayInMilliseconds) {
    // It would stand in the way of every reading until then.
    return err({ message: `${at} is in the future`, advice: 'Give the time at which df ran.' });
  }
  const shown = new Map(rows.map((row) => [row.mount, row]));
  const problems: Problem[] = [];
  const declaredAre = `Declared on ${server}: ${mounts.join(', ')}.`;
  for (const mount of only ?? []) {
    if (!mounts.includes(mount)) {
      problems.push({
        message: `no file system ${quoted(mount)} is declared on ${server}`,
        advice: `${offer(mount, mounts)}${declaredAre}`,
      });
    } else if (shown.get(mount)?.use === undefined) {
      problems.push({
        message: shown.has(mount) ? `df could not measure ${mount}` : `df does not show ${mount}`,
        advice: `Check on ${server} whether it is mounted.`,
      });
    }
  }
  const readings: Reading[] = [];
  const leftOut: LeftOut[] = [];
  for (const { mount, device, use } of shown.values()) {
    const why = !mounts.includes(mount)
      ? 'not declared'
      : only !== undefined && !only.includes(mount)
        ? 'not asked for'
        : use === undefined
          ? 'not measured'
          : undefined;
    const latest = newest.get(mount);
    if (why !== undefined || use === undefined) {
      leftOut.push({ mount, device, why: why ?? 'not measured' });
    } else if (latest !== undefined && at <= latest.at) {
      problems.push({
        message:
          at === latest.at
            ? `${server}:${mount} already has a reading for ${at}`
            : `${at} is older than the newest reading of ${server}:${mount}, ${latest.at}`,
        advice: 'Add readings in the order in which they were taken.',
      });
    } else if (!anySize && isAtOdds(use.size, sizes.get(mount), latest?.size)) {
      problems.push({
        message: `${server}:${mount} is declared with ${showSize(sizes.get(mount) ?? use.size)}, and df measured ${showSize(use.size, 0)}`,
        advice: `See whether this df ran on ${server}; if it did, mend the declaration, or take it as it is with --any-size.`,
      });
    } else {
      readings.push({ server, mount, at, ...use });
    }
  }
  if (problems.length === 0 && readings.length === 0) {
    const undeclared = leftOut.filter(({ why }) => why === 'not declared').map(({ mount }) => mount);
    const offers = [...new Set(undeclared.map((mount) => offer(mount, mounts)))].filter(
      (text) => text !== '',
    );
    problems.push({
      message: `none of the ${rows.length} file systems that df shows is a declared one of ${server} with figures`,
      advice: `${offers.slice(0, 3).join('')}${declaredAre} Check whether they are mounted, and whether this df ran on ${server}.`,
    });
  }
  if (problems.length > 0) return err(...problems);
  return ok({ readings, leftOut, notShown: mounts.filter((mount) => !shown.has(mount)) });
}

/**
 * Whether a measured size is so far from the declared one that another server may be meant: no file system takes a
 * quarter of its device for itself. One like that of the reading before is not: the declaration may be ahead of what is
 * carried out.
 */
function isAtOdds(measured: Bytes, declared: Bytes | undefined, before: Bytes | undefined): boolean {
  return ![declared, before].some((known) => known !== undefined && isAlike(known, measured));
}

/** Whether a measured size is that of a device of a known size, less what its file system keeps. */
export const isAlike = (known: Bytes, measured: Bytes): boolean =>
  (measured > known ? measured - known : known - measured) * 4n <= known;
