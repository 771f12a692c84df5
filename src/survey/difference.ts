/** One way in which what is there is otherwise than it is declared. */
import type { Subject } from '../estate/estate.ts';
import type { Money } from '../price/money.ts';

/** Where the two differ, from the provider's side inwards. */
export type Layer =
  | 'provider'
  | 'device'
  | 'physical volume'
  | 'volume group'
  | 'logical volume'
  | 'file system'
  | 'mount';

export interface Difference {
  readonly layer: Layer;
  /** `other` is there and declared, and otherwise. */
  readonly kind: 'not declared' | 'not there' | 'other';
  /**
   * What a rule asks of a server or an attachment; `guest` for what is as declared and not yet followed through in the
   * guest; undefined for all else.
   */
  readonly about: 'attachment' | 'boot' | 'power' | 'guest' | undefined;
  /** What is declared; what only a survey shows has the server's name for it. */
  readonly subject: Subject;
  /** The server whose survey shows it; undefined where the provider's list does. */
  readonly server: string | undefined;
  readonly message: string;
  /** What that means, and what is to be done; a sentence. */
  readonly meaning: string | undefined;
  /** Both figures, as people write them. */
  readonly declared: string | undefined;
  readonly surveyed: string | undefined;
  /** What it costs a month, where it is not declared and its tier is known. */
  readonly monthly: Money | undefined;
}

type Told = Pick<Difference, 'layer' | 'subject' | 'message'> & Partial<Difference>;

export const difference = (told: Told): Difference => ({
  kind: 'other',
  about: undefined,
  server: undefined,
  meaning: undefined,
  declared: undefined,
  surveyed: undefined,
  monthly: undefined,
  ...told,
});
