/** What is taken of each layer on main and after the merge. */
import type { Room } from '../../capacity/headroom.ts';
import { showFreeShare } from '../model/amounts.ts';
import type { Picture } from '../model/picture.ts';
import { type BarRow, barsFigure, type Mark } from './bars.ts';
import { type Html, html } from './html.ts';

export const roomsFigure = ({ rows }: Extract<Picture, { readonly kind: 'rooms' }>): Html =>
  barsFigure({
    caption: 'Headroom on main and after the merge; each row is drawn to its own capacity',
    columns: ['Layer', 'Free after'],
    domain: [0, 1],
    height: 30,
    rows: rows.map(({ name, before, after }): BarRow => {
      const whole = [before, after].reduce(
        (most, room) => (room !== undefined && room.capacity > most ? room.capacity : most),
        0n,
      );
      return {
        name,
        marks: [...marks(before, 'was', 3, whole), ...marks(after, 'now', 16, whole)],
        figure: html`${after === undefined ? 'removed' : showFreeShare(after)}`,
      };
    }),
    key: [
      { as: 'whole', text: 'capacity' },
      { as: 'was', text: 'used on main' },
      { as: 'now', text: 'used after' },
    ],
  });

function marks(room: Room | undefined, as: 'was' | 'now', top: number, whole: bigint): readonly Mark[] {
  if (room === undefined || whole === 0n) return [];
  const share = (amount: bigint): number => Number((amount * 1_000_000n) / whole) / 1_000_000;
  return [
    { as: 'whole', from: 0, to: share(room.capacity), top, height: 11 },
    { as, from: 0, to: share(room.capacity - room.free), top, height: 11 },
  ];
}
