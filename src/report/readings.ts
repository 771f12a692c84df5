/** Readings of measured use, summarised. */

import { counted } from '../base/wording.ts';
import { forecast } from '../capacity/forecast.ts';
import { fillableBytes, type ReadingsSummary } from '../capacity/readings.ts';
import { showMeasure } from './amounts.ts';
import { atLeast, drawHeadline, drawSections, type Screen } from './draw.ts';
import { showForecast } from './forecast.ts';

export function reportReadings({ fileSystems, rows }: ReadingsSummary, screen: Screen): string {
  const uses = [...fileSystems.values()].sort((a, b) =>
    a.server === b.server ? (a.mount < b.mount ? -1 : 1) : a.server < b.server ? -1 : 1,
  );
  const headline = `${counted(rows, 'reading')} of ${counted(uses.length, 'file system')}`;
  const entries = uses.map(({ server, mount, count, first, last, daily }) => {
    const capacity = fillableBytes(last);
    const field = (label: string, text: string) => ({ label, form: 'text', text }) as const;
    return {
      lead: undefined,
      text: `${server} ${mount}`,
      excerpt: undefined,
      fields: [
        field('readings', `${count}, from ${first.at} to ${last.at}`),
        field('used', `${showMeasure('bytes', last.used)} of ${showMeasure('bytes', capacity)}`),
        field('full', showForecast(forecast(daily, capacity))),
      ],
    };
  });
  const drawn = drawSections(
    [{ title: 'By server and mount point', blocks: [{ kind: 'entries', entries }] }],
    atLeast(screen),
  );
  return `${[...drawHeadline(headline, 'plain', atLeast(screen)), ...(uses.length === 0 ? [] : drawn)].join('\n')}\n`;
}
