/** What can be drawn of a report's figures: the figures themselves, and no shape, place or colour. */
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

export type Picture =
  | { readonly kind: 'amounts'; readonly currency: string; readonly rows: readonly AmountRow[] }
  /** From one amount to another by differences that add up to the difference of the two. */
  | {
      readonly kind: 'bridge';
      readonly currency: string;
      readonly before: Money;
      readonly after: Money;
      readonly causes: readonly { readonly name: string; readonly difference: Money }[];
    }
  | { readonly kind: 'rooms'; readonly rows: readonly RoomRow[] }
  | { readonly kind: 'waits'; readonly steps: readonly WaitingStep[] };
