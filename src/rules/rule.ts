/**
 * What a rule is. Each rule is one file in this folder that holds everything about it: its name, its parameters
 * as JSON Schema, which direction of each parameter is looser, what it does, why the trade wants it, what to do,
 * and the check itself. The rule pack's schema, `ullage rules`, the documentation and the direction of a policy
 * change all come from there.
 */
import { Decimal } from 'decimal.js';
import { counted } from '../base/wording.ts';
import type { Room } from '../capacity/headroom.ts';
import type { Usage } from '../capacity/usage.ts';
import type { Change, RevisionPlace } from '../change/change.ts';
import type { Renames } from '../change/compare.ts';
import type { Selection } from '../change/touched.ts';
import type {
  Belonging,
  Estate,
  FileSystem,
  Server,
  Subject,
  Volume,
  VolumeGroup,
} from '../estate/estate.ts';
import { subjectKey } from '../estate/estate.ts';
import type { Settings } from '../estate/settings.ts';
import { type Bytes, bytes, noBytes, parseSize, showSize } from '../estate/size.ts';
import type { EstateCost } from '../price/cost.ts';
import type { Money } from '../price/money.ts';
import type { PriceList } from '../price/price-list.ts';
import type { Step } from '../read/document.ts';
import type { RuleEntry } from '../read/generated/rule-pack.ts';
import type { Examples } from './example.ts';

/** The levels of SARIF 2.1.0, worst first. */
export const levels = ['error', 'warning', 'note'] as const;

export type Level = (typeof levels)[number];

export type { RuleEntry };

export type RuleName = RuleEntry['rule'];

/** A rule pack's entry for one rule, as its schema types it. */
export type EntryOf<N extends RuleName> = Extract<RuleEntry, { rule: N }>;

/** Tells which of a scope's subjects a rule looks at. */
export interface Scope {
  includes(belonging: Belonging, tier?: string): boolean;
}

/** One revision, as rules about its state see it. */
export interface View {
  readonly estate: Estate;
  readonly settings: Settings;
  /**
   * What the rule is to look at: all of the estate, or what a change touched. A finding's subject is a thing that was
   * looked at, or a sum over the estate (a site, a team, a label, a scope, the estate); a finding about a thing
   * depends on the thing and on what it is tied to, and on nothing further off.
   */
  readonly selection: Selection;
  /** The price list in force on the day, from the policy that judges. */
  readonly prices: PriceList;
  /** What the estate costs at that list. */
  readonly cost: EstateCost;
  /** The day of the judgement, RFC 3339 full-date. */
  readonly on: string;
  readonly revision: 'base' | 'head';
  /** Measured use by the name of the file system, from the policy that judges; left out where there are no readings. */
  readonly usage?: ReadonlyMap<string, Usage>;
}

/** Both revisions and what differs, as rules about changes see them. */
export interface ChangeView {
  readonly base: View;
  readonly head: View;
  readonly changes: readonly Change[];
  readonly renames: Renames;
  readonly on: string;
  /** What the branch alters in the policy, told apart by direction. */
  readonly policyChanges: readonly PolicyChange[];
}

/** One alteration of the policy, and whether it lets more through. */
export interface PolicyChange {
  readonly direction: 'tighter' | 'looser' | 'neither' | 'unknown';
  /** What was altered: a rule entry, a waiver, a price list, a setting. */
  readonly of: 'rule' | 'waiver' | 'price-list' | 'settings';
  readonly name: string;
  /** The parameter or key, where one was altered by itself. */
  readonly key: string | undefined;
  readonly from: string | undefined;
  readonly to: string | undefined;
  readonly place: RevisionPlace | undefined;
}

export type Excess = bigint | Money | ReadonlySet<string>;

/** What a rule has to say about one subject. The engine adds the level, the baseline state and the waiver. */
export interface Violation {
  readonly subject: Subject;
  readonly place: RevisionPlace;
  /** What is wrong, with the figures. */
  readonly message: string;
  /** What to do, where the rule's own advice can be made more exact. */
  readonly advice?: string;
  /**
   * Tells apart several things that one rule says of one subject, such as two measures of a quota. A thing by its
   * name is written with `tied`, so that a rename of it makes no new finding.
   */
  readonly facet?: string;
  /**
   * How far beyond the bound, by which a finding on the head is told to be worse than the same one on the base: a
   * larger amount, or a set that holds anything the base's did not. Left out where a thing is either wrong or not.
   * In a set, too, names are written with `tied`.
   */
  readonly excess?: Excess;
  /** A violation below the bound (a warning on the way to it) caps the entry's level here. */
  readonly atMost?: Level;
}

/**
 * Which way a parameter loosens: a higher or lower value, a value of `true` or `false`, a longer or shorter list,
 * being left out. `neither` changes whom it is for or how it is said; `unknown` cannot be told from the values.
 */
export type Looser = 'higher' | 'lower' | 'true' | 'false' | 'longer' | 'shorter' | 'neither' | 'unknown';

/** One parameter: its JSON Schema, and which way it loosens. */
export interface Parameter {
  readonly schema: Readonly<Record<string, unknown>> & { readonly description: string };
  readonly looser: Looser;
  /** What being left out amounts to: the loosest value, the tightest, or the schema's `default`. */
  readonly absent: 'loosest' | 'tightest' | 'default';
}

interface RuleText {
  /** What it refuses, one sentence. */
  readonly refuses: string;
  /** Why the trade wants it. */
  readonly why: string;
  /** What to do about a finding. */
  readonly advice: string;
}

/** What is wrong with an entry that the schema of a rule pack cannot tell. */
export interface EntryFault {
  /** From the entry to the value at fault. */
  readonly path: readonly Step[];
  readonly message: string;
  readonly advice: string;
}

interface RuleBase<N extends RuleName> extends RuleText {
  readonly name: N;
  readonly level: Level;
  readonly parameters: Readonly<Record<string, Parameter>>;
  /** What of `where` the rule can tell its subjects apart by; all of it where left out. */
  readonly scope?: readonly ('teams' | 'sites' | 'tiers' | 'labels')[];
  /** Parameters of which at least one must be given; empty where none is needed. */
  readonly needs: readonly string[];
  /** Parameters that must be given besides. */
  readonly requires?: readonly string[];
  /** A branch that it refuses and one that it lets pass; each is judged in a test. */
  readonly examples: Examples;
  /** Asked when a pack is read: whether the parameters mean anything, by themselves and together. */
  verify?(entry: EntryOf<N>): readonly EntryFault[];
}

/** A rule about a state: it holds of one revision, so what was wrong before can be told from what is new. */
export interface StateRule<N extends RuleName> extends RuleBase<N> {
  readonly about: 'state';
  check(entry: EntryOf<N>, view: View, scope: Scope): Iterable<Violation>;
  /**
   * The things about which it may find something else on another day, all else being the same; left out, or
   * `undefined`, where there are none. Sums are looked at on each day.
   */
  dated?(entry: EntryOf<N>, estate: Estate): Selection | undefined;
  /** What the rule finds in the changes themselves, for one that can be asked about either. */
  checkChanges?(entry: EntryOf<N>, view: ChangeView, scope: Scope): Iterable<Violation>;
}

/** A rule about changes: what it finds is new, because the change is. */
export interface ChangeRule<N extends RuleName> extends RuleBase<N> {
  readonly about: 'change';
  check(entry: EntryOf<N>, view: ChangeView, scope: Scope): Iterable<Violation>;
}

export type Rule<N extends RuleName = RuleName> = StateRule<N> | ChangeRule<N>;

/** Points at a field of a declaration, or at the declaration. */
export const placed = (
  declared: Server | Volume | VolumeGroup | FileSystem,
  revision: 'base' | 'head',
  field?: string,
): RevisionPlace => ({
  revision,
  ...((field === undefined ? undefined : declared.fields[field]) ?? declared.place),
});

/** A size parameter; rule packs are checked when they are read, so no other text reaches a rule. */
export const sizeOf = (text: string): Bytes => {
  const size = parseSize(text);
  return typeof size === 'bigint' ? size : noBytes;
};

const tie = ' + ';

/** Subjects by kind and name, in a facet or an excess. */
export const subjectRef = (...subjects: readonly Subject[]): string => subjects.map(subjectKey).join(tie);

/** A facet or an element of an excess with each subject in it under another name. */
export const renameRefs = (text: string, renamed: (subject: Subject) => Subject): string =>
  text
    .split(tie)
    .map((key) => {
      const [kind, ...name] = key.split(' ');
      switch (kind) {
        case 'server':
        case 'volume':
        case 'volume-group':
        case 'file-system':
          return subjectKey(renamed({ kind, name: name.join(' ') }));
        default:
          return key;
      }
    })
    .join(tie);
/**
 * Decimals wide enough that a size times a parameter is exact: a limit holds at equality and breaks one byte above.
 */
export const ExactDecimal = Decimal.clone({ precision: 100 });

/** So much of what a room is measured in: `1.5 TiB`, `3 volumes`, `12 slots`. */
export function measured(measure: Room['measure'], amount: bigint): string {
  switch (measure) {
    case 'bytes':
      return showSize(bytes(amount));
    case 'volumes':
      return counted(amount, 'volume');
    case 'slots':
      return counted(amount, 'slot');
  }
}
