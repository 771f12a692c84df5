/**
 * What a rule is. Each rule is one file in this folder that holds everything about it: its name, its parameters
 * as JSON Schema, which direction of each parameter is looser, what it does, why the trade wants it, what to do,
 * and the check itself. The rule pack's schema, `ullage rules`, the documentation and the direction of a policy
 * change all come from there.
 */
import type { Decimal } from 'decimal.js';
import type { RevisionPlace } from '../change/place.ts';
import type { Selection } from '../change/touched.ts';
import type { Estate, Subject } from '../estate/estate.ts';
import type { KeyOf } from '../price/sums.ts';
import type { Step } from '../read/document.ts';
import type { RuleEntry } from '../read/generated/rule-pack.ts';
import type { Examples } from './example.ts';
import type { Scope } from './scope.ts';
import type { SpendLimit } from './spend-limit.ts';
import type { ChangeView, View } from './view.ts';

/** The levels of SARIF 2.1.0, worst first. */
export const levels = ['error', 'warning', 'note'] as const;

export type Level = (typeof levels)[number];

export type { RuleEntry };

export type RuleName = RuleEntry['rule'];

/** A rule pack's entry for one rule, as its schema types it. */
export type EntryOf<N extends RuleName> = Extract<RuleEntry, { rule: N }>;

/**
 * How far beyond a bound: one amount, a set of what is wrong, or amounts by what they measure where one finding has
 * several bounds.
 */
export type Excess = Amount | ReadonlySet<string> | ReadonlyMap<string, Amount>;

export type Amount = bigint | Decimal;

/** What the ceiling of a waiver can be: a size in bytes, an amount of money a month, or a plain number. */
export type Measure = 'size' | 'amount' | 'number';

/** What a finding comes to, in each measure that a waiver's ceiling may be given in. */
export type Measured = Readonly<Partial<Record<Measure, Amount>>>;

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
   * name is written with `subjectRef`, so that a rename of it makes no new finding.
   */
  readonly facet?: string;
  /**
   * How far beyond the bound, by which a finding on the head is told to be worse than the same one on the base: a
   * larger amount, a set that holds anything the base's did not, or a measure that is new or larger. Left out where a
   * thing is either wrong or not. In a set, and in what is measured, too, names are written with `subjectRef`.
   */
  readonly excess?: Excess;
  /** What the ceiling of a waiver is held against; left out where there is nothing to measure, and no ceiling covers it. */
  readonly measured?: Measured;
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

/**
 * What an entry finds in what it is shown. It is made once, when the entry's pack is read, and asked of one revision or
 * change after another; whatever its parameters have to be compiled to is compiled then.
 */
export type Check<V extends View | ChangeView> = (view: V) => Iterable<Violation>;

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

/** What a price list gives: what things cost, the sizes that tiers sell, what they promise, who may share. */
export type PriceUse = 'cost' | 'sizes' | 'iops' | 'servers';

/** What a scope can choose among; a site stands for its quota. */
export type ScopedKind = 'server' | 'volume' | 'volume-group' | 'file-system' | 'site';

/** For a rule that looks at whatever an estate declares. */
export const everyDeclaredKind: readonly ScopedKind[] = ['server', 'volume', 'volume-group', 'file-system'];

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
  /** The kinds of subjects that an entry asks its scope about; where it includes none, the entry can find nothing. */
  looksAt(entry: EntryOf<N>): readonly ScopedKind[];
  /** Asked when a pack is read: whether the parameters mean anything, by themselves and together. */
  verify?(entry: EntryOf<N>): readonly EntryFault[];
  /** The last day on which an entry can find anything; left out, or `undefined`, where it has no end. */
  lastDay?(entry: EntryOf<N>): string | undefined;
  /** Whether an entry goes by measured use, so that it may find something else when there are other readings. */
  usesReadings?(entry: EntryOf<N>): boolean;
  /** Whether an entry goes by what surveys show. */
  usesSurveys?(entry: EntryOf<N>): boolean;
  /** Whether it goes by the steps that carry a branch out. */
  readonly usesSteps?: true;
  /** What it goes by in a price list, so that another price is told for what it lets through. */
  readonly usesPrices?: readonly PriceUse[];
  /** Whether it says of the estate what depends on which limits the policy sets, so that it is asked again with them. */
  readonly comparesLimits?: true;
  /** What `measured` holds in each measure, in words: how the ceiling of a waiver is read. */
  readonly measures?: Readonly<Partial<Record<Measure, string>>>;
  /** The limit that an entry sets on monthly cost, for a rule that is one. */
  spendLimit?(entry: EntryOf<N>): SpendLimit | undefined;
}

/** What a finding about a sum of costs adds up, and how it points at what the branch made dearer. */
export interface Spends {
  readonly keyOf: KeyOf;
  /** The key of the sum that a finding's subject is; `undefined` where it is none. */
  readonly keyFor: (subject: Subject) => string | undefined;
  /** What to do, beside what the branch made dearer most. */
  readonly advice: (violation: Violation) => string;
}

/** A rule about a state: it holds of one revision, so what was wrong before can be told from what is new. */
export interface StateRule<N extends RuleName> extends RuleBase<N> {
  readonly about: 'state';
  check(entry: EntryOf<N>, scope: Scope): Check<View>;
  /**
   * The things about which it may find something else on another day, all else being the same; left out, or
   * `undefined`, where there are none. Sums are looked at on each day.
   */
  dated?(entry: EntryOf<N>, estate: Estate): Selection | undefined;
  /** How the cost is summed that its findings about sums are about, for a rule that has such. */
  spends?(entry: EntryOf<N>, scope: Scope, view: View): Spends;
  /** What the rule finds in the changes themselves, of which it is shown those in scope, for one that can be asked about either. */
  checkChanges?(entry: EntryOf<N>): Check<ChangeView>;
}

/** A rule about changes, of which it is shown those in scope: what it finds is new, because the change is. */
export interface ChangeRule<N extends RuleName> extends RuleBase<N> {
  readonly about: 'change';
  check(entry: EntryOf<N>): Check<ChangeView>;
}

export type Rule<N extends RuleName = RuleName> = StateRule<N> | ChangeRule<N>;
