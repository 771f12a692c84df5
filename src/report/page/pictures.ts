/** Every picture of a report, as a figure. */
import type { Picture } from '../model/picture.ts';
import { amountsFigure } from './amounts.ts';
import { bridgeFigure } from './bridge.ts';
import type { Html } from './html.ts';
import { roomsFigure } from './rooms.ts';
import { waitsFigure } from './waits.ts';

export function drawPicture(picture: Picture): Html {
  switch (picture.kind) {
    case 'amounts':
      return amountsFigure(picture);
    case 'bridge':
      return bridgeFigure(picture);
    case 'rooms':
      return roomsFigure(picture);
    case 'waits':
      return waitsFigure(picture);
  }
}
