/** What can be drawn of a report's figures: the figures themselves, and no shape, place or colour. */
import type { DeclaredSize } from '../../capacity/declared-sizes.ts';
import type { Room } from '../../capacity/headroom.ts';
import type { Money } from '../../price/money.ts';

/** Before, after, and the limit on what comes after; all in the picture's one currency. */
export interface AmountRow {
  readonly name: string;
  readonly before: Money;
  readonly after: Money;
  readonly limit: Money | undefined;
}

/** Capacity and what is taken of it, in one measure. */
export interface RoomRow {
  readonly name: string;
  readonly before: Room | undefined;
  readonly after: Room | undefined;
}

export interface WaitingStep {
  readonly number: number;
  readonly does: string;
  /** The numbers of the steps that must be done first. */
  readonly after: readonly number[];
}

/** From one day to another, both RFC 3339 full-dates. */
export interface DaySpan {
  readonly from: string;
  readonly until: string;
}

/** What something cost a month from a day on, until the next; likewise its limit. Either may end. */
export interface SpendRow {
  readonly name: string;
  readonly steps: readonly { readonly on: string; readonly amount: Money | undefined }[];
  readonly limits: readonly { readonly on: string; readonly amount: Money | undefined }[];
}

/** Single days and stretches of days, beside what they come to in words. */
export interface DaysRow {
  readonly name: string;
  readonly days: readonly string[];
  readonly stretches: readonly (DaySpan & { readonly as: 'standing' | 'over' })[];
  readonly figure: string;
  /** Rows of tables that this one is told in, by their names. */
  readonly toldAt?: readonly { readonly text: string; readonly row: string }[];
}

/** Measured use of one file system, and how it is forecast to go on. */
export interface ForecastPicture {
  readonly name: string;
  readonly capacity: bigint;
  readonly readings: readonly { readonly at: string; readonly used: bigint }[];
  /** When it was first measured at another size. */
  readonly resized: readonly string[];
  /** Sizes that commits declared in the span; undefined where no history tells. */
  readonly declared: readonly DeclaredSize[] | undefined;
  /** The day before which nothing is known to be declared, where the history at hand begins within the span. */
  readonly declaredSince: string | undefined;
  /** From the last reading on; `undefined` where nothing is forecast, or it is never full. Whole days after the last reading. */
  readonly outlook:
    | {
        readonly earliest: number;
        readonly middle: number | undefined;
        readonly latest: number | undefined;
      }
    | undefined;
}

/** What becomes of a thing's capacity: `idle` is paid for and given to nothing, `given` is what lies on it. */
export type PartOfThing = 'given' | 'used' | 'usable' | 'free' | 'kept' | 'idle' | 'undetermined';

export interface EstatePart {
  readonly part: PartOfThing;
  readonly amount: bigint;
}

/** Where it lies among the bytes of its server, and how much of them it takes; what its parts lack is left blank. */
export interface DrawnThing {
  readonly name: string;
  readonly words: string;
  readonly from: bigint;
  readonly size: bigint;
  readonly parts: readonly EstatePart[];
  readonly touched: boolean;
  readonly disputed: boolean;
}

export interface EstateServer {
  readonly name: string;
  readonly note: string;
  readonly size: bigint;
  readonly touched: boolean;
  readonly disputed: boolean;
  readonly rows: readonly [
    volumes: readonly DrawnThing[],
    groups: readonly DrawnThing[],
    systems: readonly DrawnThing[],
  ];
}

/** Its servers, the largest first. */
export interface EstateSite {
  readonly name: string;
  readonly servers: readonly EstateServer[];
  /** The volumes there that no server holds, as if one did. */
  readonly unattached: EstateServer | undefined;
}

export type Picture =
  | { readonly kind: 'amounts'; readonly currency: string; readonly rows: readonly AmountRow[] }
  /** Parts of one sum, the largest first. */
  | {
      readonly kind: 'sums';
      readonly currency: string;
      readonly by: string;
      readonly rows: readonly { readonly name: string; readonly amount: Money }[];
    }
  /** From one amount to another by differences that add up to the difference of the two. */
  | {
      readonly kind: 'bridge';
      readonly currency: string;
      readonly before: Money;
      readonly after: Money;
      readonly causes: readonly { readonly name: string; readonly difference: Money }[];
    }
  | { readonly kind: 'rooms'; readonly rows: readonly RoomRow[] }
  | { readonly kind: 'waits'; readonly steps: readonly WaitingStep[] }
  | {
      readonly kind: 'spend';
      /** What is drawn, what a row is, and what its steps are. */
      readonly caption: string;
      readonly of: string;
      readonly spent: string;
      readonly currency: string;
      readonly span: DaySpan;
      readonly rows: readonly SpendRow[];
    }
  | {
      readonly kind: 'days';
      /** What is drawn, as a sentence without its stop; what a row is, and what its figure says. */
      readonly caption: string;
      readonly columns: readonly [row: string, figure: string];
      readonly span: DaySpan;
      readonly rows: readonly DaysRow[];
    }
  | ({ readonly kind: 'forecast' } & ForecastPicture)
  | { readonly kind: 'estate'; readonly sites: readonly EstateSite[] };
