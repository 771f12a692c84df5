/**
 * What a waiver without a ceiling covers: what it was approved for, and no more.
 *
 * A waiver comes to main before the change that it permits, since no branch can bring its own. So what it was approved
 * for is seen on main, from the day on which it came:
 *
 * - what it is for and main had already on that day, or has had since by itself while the waiver was in force;
 * - where there was no such thing, what the first merged change brought that it is for, while it was in force.
 *
 * Up to that it covers the same again, at each level by itself: the same entry and subject, no worse. Another fault of
 * the same subject is something else. Until anything was covered there is nothing on main to hold a branch against, and
 * it covers what the branch does: that is said wherever it is used so, and a ceiling (`up-to`) says it beforehand.
 *
 * A waiver goes on being the same one in another file, at another place, in other words or on fewer days. On any day
 * more, or for anything else, it is new, and is told of as looser.
 *
 * All this is a value, made from one judged change of main after another; whoever walks through history hands it on.
 */

import type { Problem } from '../base/problem.ts';
import { counted } from '../base/wording.ts';
import type { Renames } from '../change/renames.ts';
import { holdsOn } from '../estate/dates.ts';
import { subjectKey } from '../estate/estate.ts';
import { levels, type Measure } from '../rules/rule.ts';
import { type Evaluation, levelOf } from './evaluation.ts';
import { carriedOn, isWorse } from './findings.ts';
import type { Covered, Finding, Held } from './judgement.ts';
import type { Waiver } from './policy.ts';
import { isFor, isOpen } from './waiver.ts';

/** What is known of one waiver without a ceiling. */
export interface Approval {
  readonly waiver: Waiver;
  /** What it has covered; undefined where history would have to be asked. */
  readonly covered: readonly Covered[] | undefined;
}

/** By what makes a waiver the same one. */
export type Approvals = ReadonlyMap<string, Approval>;

/** Where in history something was seen. */
export interface Seen {
  readonly commit: string;
  readonly on: string;
  /** Of the prices that judged. */
  readonly currency: string;
}

/** What a waiver is for, whatever its days. */
const purposeOf = ({ rule, name, subject, kind }: Waiver): string =>
  JSON.stringify([rule, name ?? null, subject, kind ?? null]);

const idOf = (waiver: Waiver): string => JSON.stringify([purposeOf(waiver), waiver.from, waiver.until]);

/** Whether a waiver is another one, or goes on from it: for the same, and on no day more. */
export const goesOnFrom = (waiver: Waiver, earlier: Waiver): boolean =>
  isOpen(earlier) &&
  purposeOf(waiver) === purposeOf(earlier) &&
  earlier.from <= waiver.from &&
  waiver.until <= earlier.until;

/**
 * What is known of the waivers of a revision, from what was known of those of the one before it.
 *
 * @param before undefined where nothing was: any of them may have covered something
 * @param main what main has on the day on which a new waiver comes
 */
export function succeed(
  before: Approvals | undefined,
  waivers: readonly Waiver[],
  main?: { readonly evaluation: Evaluation; readonly seen: Seen },
): Approvals {
  const approvals = new Map<string, Approval>();
  for (const waiver of waivers.filter(isOpen)) {
    const id = idOf(waiver);
    const earlier =
      before?.get(id) ?? [...(before?.values() ?? [])].find((each) => goesOnFrom(waiver, each.waiver));
    const covered =
      before === undefined
        ? undefined
        : earlier !== undefined
          ? earlier.covered
          : main === undefined
            ? []
            : standingFor(waiver, main.evaluation, main.seen);
    approvals.set(id, { waiver, covered });
  }
  return approvals;
}

/** With what stands on main and none of them had covered yet, for those in force. */
export const withStanding = (approvals: Approvals, evaluation: Evaluation, seen: Seen): Approvals =>
  adding(approvals, seen.on, (waiver) => standingFor(waiver, evaluation, seen));

/** With what a merged change brought, where that is the first; under the names that it gives. */
export const withChange = (
  approvals: Approvals,
  findings: readonly Finding[],
  renames: Renames,
  seen: Seen,
): Approvals =>
  adding(renamed(approvals, renames), seen.on, (waiver) =>
    findings.flatMap((finding) =>
      finding.baselineState === 'absent' || !isMeant(waiver, finding) ? [] : [coveredBy(finding, seen)],
    ),
  );

/** What is known, with what was found out since. */
export const foundOut = (approvals: Approvals, found: Approvals): Approvals =>
  new Map([...approvals].map(([id, approval]) => [id, found.get(id) ?? approval]));

/** Whether a waiver is for a finding; its days are asked for apart. */
export const isMeant = (waiver: Waiver, { entry, rule, subject }: Finding): boolean =>
  isFor(waiver, { name: entry, entry: { rule } }, subject);

/** At each level, only what came first counts. */
function adding(approvals: Approvals, on: string, seen: (waiver: Waiver) => readonly Covered[]): Approvals {
  if (approvals.size === 0) return approvals;
  return new Map(
    [...approvals].map(([id, approval]) => {
      const { waiver, covered } = approval;
      if (covered === undefined || !holdsOn(waiver, on)) return [id, approval];
      const known = new Set(covered.map(({ level }) => level));
      const more = known.size === levels.length ? [] : seen(waiver).filter(({ level }) => !known.has(level));
      return [id, more.length === 0 ? approval : { waiver, covered: [...covered, ...more] }];
    }),
  );
}

function renamed(approvals: Approvals, renames: Renames): Approvals {
  const none = Object.values(renames).every(({ toHead }) => toHead.size === 0);
  if (none) return approvals;
  return new Map(
    [...approvals].map(([id, { waiver, covered }]) => [
      id,
      { waiver, covered: covered?.map((each): Covered => carriedOn(each, renames)) },
    ]),
  );
}

/** What an evaluation says that a waiver is for. */
const standingFor = (waiver: Waiver, { policy, entries }: Evaluation, seen: Seen): readonly Covered[] =>
  policy.rules.flatMap((rule) => {
    const said = entries.get(rule.name);
    if (said === undefined) return [];
    const keys = declaredKinds.map((kind) => subjectKey({ kind, name: waiver.subject }));
    return [...keys.flatMap((key) => said.bySubject.get(key) ?? []), ...said.ofSums]
      .filter(({ subject }) => isFor(waiver, rule, subject))
      .map((violation) =>
        coveredBy({ ...violation, entry: rule.name, level: levelOf(rule, violation), about: 'state' }, seen),
      );
  });

const declaredKinds = ['server', 'volume', 'volume-group', 'file-system'] as const;

const coveredBy = (said: Covering, seen: Seen): Covered => {
  const { entry, level, about, subject, facet, message, excess, measured } = said;
  return {
    ...{ entry, level, about, subject, message, ...seen },
    ...(facet === undefined ? {} : { facet }),
    ...(excess === undefined ? {} : { excess }),
    ...(measured === undefined ? {} : { measured }),
  };
};

/** What of a finding is held against what was covered. */
interface Covering
  extends Pick<Finding, 'entry' | 'level' | 'about' | 'subject' | 'message' | 'excess' | 'measured'> {
  readonly facet?: string | undefined;
}

const keyOf = ({ entry, subject, facet }: Covering): string =>
  JSON.stringify([entry, subjectKey(subject), facet ?? null]);

/** What a waiver without a ceiling is held to, where a finding is new or worse than on main. */
export const heldTo =
  (approvals: Approvals, currency: string) =>
  (waiver: Waiver, finding: Covering): Held => {
    const covered = approvals.get(idOf(waiver))?.covered;
    if (covered === undefined) return { kind: 'unknown' };
    const [first, ...more] = covered.filter(({ level }) => level === finding.level);
    if (first === undefined) return { kind: 'nothing yet' };
    const same = [first, ...more].find((each) => keyOf(each) === keyOf(finding));
    if (same === undefined) return { kind: 'something else', covered: first };
    const isOtherMoney = finding.measured?.amount !== undefined && same.currency !== currency;
    return { kind: isOtherMoney || isBeyond(same, finding) ? 'less' : 'as much', covered: same };
  };

/**
 * Whether a finding is more than what was covered. Of what is either wrong or not there is no more; but a change that
 * nothing is measured of is no other than the one that was covered where the same can be said of it.
 */
function isBeyond(was: Covered, now: Covering): boolean {
  if (was.excess !== undefined || now.excess !== undefined) return isWorse(was.excess, now.excess);
  const measures = Object.entries(now.measured ?? {});
  if (measures.length > 0)
    return measures.some(([measure, amount]) =>
      isWorse(
        measure === 'size' || measure === 'amount' || measure === 'number'
          ? was.measured?.[measure]
          : undefined,
        amount,
      ),
    );
  return now.about === 'change' && was.message !== now.message;
}

export const isKnown = (approvals: Approvals | undefined, waiver: Waiver): boolean =>
  approvals?.get(idOf(waiver))?.covered !== undefined;

const called = ({ rule, subject, place }: Waiver): string =>
  `${place.file}:${place.line}: the waiver of ${rule} for ${subject} has no ceiling, and`;

const orCeiling = 'Or give the waiver a ceiling with up-to, which needs no history.';

/** What is said where a shallow clone does not hold the day on which a waiver came. */
export const beforeItCame = ([first, ...more]: readonly Waiver[]): Problem => ({
  message: `${first === undefined ? 'a waiver has no ceiling, and' : called(first)} this shallow clone ends ${endsBefore}${more.length === 0 ? '' : `; likewise ${counted(more.length, 'other waiver')}`}`,
  advice: `Fetch the rest with \`git fetch --unshallow origin\`; in CI, check out with fetch depth 0. ${orCeiling}`,
});

const endsBefore = 'before it came to main, so that what it was approved for is not known';

/** Whether more history would tell what a waiver covers. */
export const lacksHistory = ({ message }: Pick<Problem, 'message'>): boolean => message.includes(endsBefore);

/** What is said where history holds the day on which a waiver came, and does not tell what it has covered. */
export const untold = (waiver: Waiver): Problem => ({
  message: `${called(waiver)} what it has covered on main cannot be told, since Ullage failed on a commit there`,
  advice: `Report this with the output of \`ullage audit\`. ${orCeiling}`,
});

/** What is said where this clone lacks what a commit since it came, or its judgement, is made of. */
export const coveredUnseen = (
  [first]: readonly Waiver[],
  commit: string,
  { message, advice }: Problem,
): Problem => ({
  message: `${first === undefined ? 'a waiver has no ceiling, and' : called(first)} what it has covered on main cannot be told, since at ${commit.slice(0, 12)} ${message}`,
  advice,
});

/** What a finding's waiver was held to, as plain values: sizes in bytes, amounts exact. */
export function plainHeld(held: Held | undefined) {
  if (held === undefined) return null;
  const covered = 'covered' in held ? held.covered : undefined;
  if (covered === undefined) return { kind: held.kind, covered: null };
  const { entry, level, subject, facet, message, measured, commit, on, currency } = covered;
  const plain = (measure: Measure): string | null => {
    const amount = measured?.[measure];
    return amount === undefined ? null : typeof amount === 'bigint' ? amount.toString() : amount.toFixed();
  };
  return {
    kind: held.kind,
    covered: {
      ...{ entry, level, subject: { ...subject }, facet: facet ?? null, message },
      ...{ size: plain('size'), amount: plain('amount'), number: plain('number') },
      ...{ currency, commit, on },
    },
  };
}
