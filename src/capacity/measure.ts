/** Amounts of what a room is measured in. */
import { counted } from '../base/wording.ts';
import { bytes, showSize } from '../estate/size.ts';
import type { Room } from './headroom.ts';

/** `1.5 TiB`, `3 volumes`, `12 slots`. */
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
