/**
 * What a report says, in order, and not yet in any form: the terminal and Markdown draw this, and so can a page, so
 * that they never disagree. It holds values (amounts, sizes, shares, places) and what they mean, and no layout. Every
 * text here may carry input and is made harmless by whoever draws it.
 */
import type { Place } from '../../base/problem.ts';
import type { Room } from '../../capacity/headroom.ts';
import type { Money } from '../../price/money.ts';
import type { Picture } from './picture.ts';

/** How grave it is, for an accent. What it means is always in the words, too. */
export type Tone = 'loses data' | 'fails' | 'caution' | 'plain';

/** The word before an entry that says of which kind it is. */
export interface Tag {
  readonly word: string;
  readonly tone: Tone;
}

/**
 * One labelled line. Advice may write commands between backticks; an example is a command, and the page it was read
 * in is for whoever has room for it; a place is a file's, with a word on where.
 */
export type Field =
  | { readonly label: string; readonly form: 'text' | 'advice'; readonly text: string }
  | { readonly label: string; readonly form: 'example'; readonly command: string; readonly source: string }
  | { readonly label: string; readonly form: 'place'; readonly place: Place; readonly note: string };

/** The line that is meant, with some that stand about it where they are known. */
export interface Excerpt {
  readonly source: string;
  readonly place: Place;
  readonly before?: readonly string[];
  readonly after?: readonly string[];
}

export interface Entry {
  /** Its number, where entries are in an order that counts. */
  readonly number?: number;
  /** What it is ticked off by, and whether it is. */
  readonly id?: string;
  readonly done?: boolean;
  readonly doneOn?: string | undefined;
  readonly tag?: Tag | undefined;
  readonly text: string;
  readonly excerpt?: Excerpt | undefined;
  readonly fields: readonly Field[];
}

/** What becomes of capacity. */
export type PartOfCapacity = 'used' | 'usable' | 'reserved' | 'overhead' | 'undetermined' | 'free';

/** How much of a whole is what, in any one unit, in order. What is missing to the whole belongs to none. */
export interface Bar {
  readonly kind: 'bar';
  readonly whole: bigint;
  readonly parts: readonly { readonly part: PartOfCapacity; readonly amount: bigint }[];
  /** Whether more is given away than there is; the parts then say nothing. */
  readonly over: boolean;
}

/** One value of a table: words, which may be input's, or something measured or paid. */
export type Cell =
  | string
  | { readonly kind: 'amount' | 'difference'; readonly amount: Money; readonly currency: string }
  /** What a limit leaves, or by how much it is exceeded. */
  | { readonly kind: 'remaining'; readonly limit: Money; readonly spent: Money; readonly currency: string }
  | { readonly kind: 'measure'; readonly measure: Room['measure']; readonly amount: bigint }
  | { readonly kind: 'free share' | 'used share'; readonly of: Room }
  | Bar;

/** Figures are read down a column, so whoever draws them lines up their ends. */
export interface Column {
  readonly title: string;
  readonly holds: 'words' | 'figures';
}

/** As many cells in each row as there are columns. */
export interface Table {
  readonly columns: readonly Column[];
  readonly rows: readonly (readonly Cell[])[];
  /** What each row is pointed at by, where pictures point at rows. */
  readonly rowNames?: readonly string[] | undefined;
}

export type Block =
  | { readonly kind: 'sentence'; readonly text: string }
  | {
      readonly kind: 'entries';
      readonly entries: readonly Entry[];
      /** What tells these from all others, where they are to be ticked off one by one. */
      readonly checklist?: string | undefined;
    }
  | { readonly kind: 'table'; readonly table: Table }
  /** What the parts of the bars above are. */
  | {
      readonly kind: 'legend';
      readonly parts: readonly { readonly part: PartOfCapacity; readonly text: string }[];
    }
  /** Figures that are in words beside it, too: whoever draws words alone leaves it out. */
  | { readonly kind: 'picture'; readonly picture: Picture };

export interface Section {
  /** Empty where the blocks go on from the first lines. */
  readonly title: string;
  readonly blocks: readonly Block[];
  /** What stands for the blocks where somebody only wants to know whether to read on: on a screen, in a comment. */
  readonly brief?: readonly Block[];
  /** What its entries are, where there may be too many of them for a screen. */
  readonly lists?: 'problem' | 'finding';
  /** Where a page has no room for all, what yields most is cut first; left out, it is cut last. */
  readonly yields?: number;
}

/** The first lines answer: the headline, then a few labelled lines. The sections follow. */
export interface ReportModel {
  readonly tone: Tone;
  readonly headline: string;
  readonly fields: readonly Field[];
  readonly sections: readonly Section[];
}
