/** How much of a page is left to fill. */
import { counted } from '../../base/wording.ts';
import { type Html, html, nothing } from './html.ts';

/** The only thing that changes while a page is drawn: bytes of HTML left, beside the command that prints all there is. */
export interface Drawing {
  left: number;
  readonly whole: string;
}

/** Whether it has room, which it then takes. */
export function taken(piece: Html, drawing: Drawing): boolean {
  drawing.left -= Buffer.byteLength(piece.toString());
  return drawing.left >= 0;
}

export const leftOut = (count: number, { whole }: Drawing): Html =>
  count === 0
    ? nothing
    : html`<p class="left-out">${counted(count, 'more is', 'more are')} left out of this page. <code>${whole}</code> prints them all.</p>`;
