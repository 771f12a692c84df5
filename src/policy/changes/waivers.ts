/** What differs between the waivers of two policies. */
import { onBase, onHead } from '../../change/place.ts';
import type { PolicyChange } from '../../rules/view.ts';
import type { Ceiling, PolicyRule, Waiver } from '../policy.ts';
import { withoutEffect } from '../waiver-effect.ts';
import { allNames, type Direction, policyChange } from './change.ts';

export const waiverKey = ({ rule, name, subject, kind }: Waiver): string =>
  `${rule}${name === undefined ? '' : ` (${name})`} for ${kind === undefined ? '' : `${kind} `}${subject}`;

/** Which way a ceiling went: a higher one and none at all let more through; two measures cannot be compared. */
function ceilingDirection(was: Ceiling | undefined, is: Ceiling | undefined): Direction {
  if (is === undefined) return was === undefined ? 'neither' : 'looser';
  if (was === undefined) return 'tighter';
  if (was.measure !== is.measure) return 'unknown';
  return is.amount.gt(was.amount) ? 'looser' : is.amount.lt(was.amount) ? 'tighter' : 'neither';
}

/** What it lets through, until when, why and on whose word. */
const termsOf = ({ from, until, upTo, reason, approvedBy }: Waiver): string =>
  `${from} to ${until}${upTo === undefined ? '' : `, up to ${upTo.written}`}, approved by ${approvedBy}: ${reason}`;

const span = ({ from, until }: Waiver): string => `${from} to ${until}`;

/** Whether two waivers of one rule and subject let the same through. */
const alike = (a: Waiver, b: Waiver): boolean =>
  span(a) === span(b) && ceilingDirection(a.upTo, b.upTo) === 'neither';

const isSame = (a: Waiver, b: Waiver): boolean =>
  alike(a, b) && a.reason === b.reason && a.approvedBy === b.approvedBy;

interface Asked {
  readonly on: string;
  /** Those that the new waivers are for. */
  readonly rules: readonly PolicyRule[];
}

/** Told before it is merged: a waiver that covers nothing is approved in vain. */
function remarkOn(waiver: Waiver, rules: readonly PolicyRule[]): Pick<PolicyChange, 'remark'> {
  const said = withoutEffect(waiver, rules).map(({ message, advice }) => `${sentenceOf(message)} ${advice}`);
  return said.length === 0 ? {} : { remark: said.join(' ') };
}

const sentenceOf = (message: string): string => `${message.charAt(0).toUpperCase()}${message.slice(1)}.`;

interface Paired {
  /** A waiver before and after. */
  readonly pairs: readonly (readonly [Waiver, Waiver])[];
  readonly came: readonly Waiver[];
  readonly left: readonly Waiver[];
}

/** Which became which, where that can be told: where only words changed, and of one that is left over on each side. */
function paired(left: readonly Waiver[], came: readonly Waiver[]): Paired {
  const rest = [...came];
  const pairs: (readonly [Waiver, Waiver])[] = [];
  const gone = left.filter((was) => {
    const at = rest.findIndex((each) => alike(was, each));
    const [is] = at === -1 ? [] : rest.splice(at, 1);
    if (is !== undefined) pairs.push([was, is]);
    return is === undefined;
  });
  const [was, ...others] = gone;
  const [is, ...more] = rest;
  return was !== undefined && is !== undefined && others.length + more.length === 0
    ? { pairs: [...pairs, [was, is]], came: [], left: [] }
    : { pairs, came: rest, left: gone };
}

/** What is otherwise in one waiver. What is over lets nothing through, whatever is written in it. */
function alterations(
  name: string,
  gone: Waiver,
  first: Waiver,
  { on, rules }: Asked,
): readonly PolicyChange[] {
  const isOver = first.until < on;
  const wider = !isOver && (first.from < gone.from || first.until > gone.until);
  const narrower = gone.until >= on && (first.from > gone.from || first.until < gone.until);
  const raised = ceilingDirection(gone.upTo, first.upTo);
  const told = (key: string, direction: Direction, from: string | undefined, to: string | undefined) =>
    policyChange({ of: 'waiver', name, place: onHead(first.place), key, direction, from, to });
  return [
    ...(span(gone) === span(first)
      ? []
      : [told('dates', wider ? 'looser' : narrower ? 'tighter' : 'neither', span(gone), span(first))]),
    ...(raised === 'neither'
      ? []
      : [
          {
            ...told('up-to', isOver ? 'neither' : raised, gone.upTo?.written, first.upTo?.written),
            ...remarkOn(first, rules),
          },
        ]),
    ...(gone.reason === first.reason ? [] : [told('reason', 'neither', gone.reason, first.reason)]),
    ...(gone.approvedBy === first.approvedBy
      ? []
      : [told('approved-by', 'neither', gone.approvedBy, first.approvedBy)]),
  ];
}

export function waiverChanges(
  base: readonly Waiver[],
  head: readonly Waiver[],
  asked: Asked,
): readonly PolicyChange[] {
  const { on, rules } = asked;
  const grouped = (waivers: readonly Waiver[]): ReadonlyMap<string, readonly Waiver[]> => {
    const groups = new Map<string, Waiver[]>();
    for (const waiver of waivers)
      groups.set(waiverKey(waiver), [...(groups.get(waiverKey(waiver)) ?? []), waiver]);
    return groups;
  };
  const before = grouped(base);
  const after = grouped(head);
  return allNames(before, after).flatMap((key): readonly PolicyChange[] => {
    const old = before.get(key) ?? [];
    const now = after.get(key) ?? [];
    const { pairs, came, left } = paired(
      old.filter((waiver) => !now.some((other) => isSame(other, waiver))),
      now.filter((waiver) => !old.some((other) => isSame(other, waiver))),
    );
    // A waiver that is over before it comes lets nothing through.
    const told = (waiver: Waiver, direction: 'looser' | 'tighter') =>
      ({ of: 'waiver', name: key, direction: waiver.until < on ? 'neither' : direction }) as const;
    return [
      ...pairs.flatMap(([was, is]) => alterations(key, was, is, asked)),
      ...came.map((waiver) =>
        policyChange({
          ...told(waiver, 'looser'),
          to: termsOf(waiver),
          place: onHead(waiver.place),
          ...remarkOn(waiver, rules),
        }),
      ),
      ...left.map((waiver) =>
        policyChange({ ...told(waiver, 'tighter'), from: termsOf(waiver), place: onBase(waiver.place) }),
      ),
    ];
  });
}
