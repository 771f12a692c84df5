/** Every picture of a report, as a figure. */
import type { Picture } from '../model/picture.ts';
import { amountsFigure, sumsFigure } from './amounts.ts';
import { bridgeFigure } from './bridge.ts';
import { daysFigure } from './days.ts';
import type { Drawing } from './drawing.ts';
import { estateFigure } from './estate.ts';
import { forecastFigure } from './forecast.ts';
import type { Html } from './html.ts';
import { roomsFigure } from './rooms.ts';
import { spendFigure } from './spend.ts';
import { waitsFigure } from './waits.ts';

export function drawPicture(picture: Picture, drawing: Drawing): Html {
  switch (picture.kind) {
    case 'amounts':
      return amountsFigure(picture);
    case 'sums':
      return sumsFigure(picture);
    case 'bridge':
      return bridgeFigure(picture);
    case 'rooms':
      return roomsFigure(picture);
    case 'waits':
      return waitsFigure(picture, drawing);
    case 'spend':
      return spendFigure(picture);
    case 'days':
      return daysFigure(picture);
    case 'forecast':
      return forecastFigure(picture);
    case 'estate':
      return estateFigure(picture, drawing);
  }
}
