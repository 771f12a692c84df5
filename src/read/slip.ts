import type { Place } from '../base/problem.ts';
import type { SchemaError } from './format.ts';

/** One slip in writing, of which a schema finds several things wrong. */
export interface Slip {
  readonly place: Place;
  readonly message: string;
  readonly advice: string;
  /** Whether there is nothing else to an error. */
  explains(error: SchemaError): boolean;
}
