/** Readings of measured use, summed up. */
import { counted } from '../base/wording.ts';
import { fillableBytes } from '../capacity/readings.ts';
import { usageFrom } from '../capacity/usage.ts';
import type { ReadingsSummary, UseSummary } from '../capacity/use-summary.ts';
import { drawReport, type Screen } from './draw.ts';
import { showMeasure } from './model/amounts.ts';
import { entries, line } from './model/blocks.ts';
import { showForecast } from './model/forecast.ts';
import type { Entry } from './model/model.ts';

export function reportReadings({ fileSystems, rows }: ReadingsSummary, screen: Screen): string {
  const uses = [...fileSystems.values()].sort((a, b) =>
    a.server === b.server ? (a.mount < b.mount ? -1 : 1) : a.server < b.server ? -1 : 1,
  );
  const sections =
    uses.length === 0 ? [] : [{ title: 'By server and mount point', blocks: [entries(uses.map(useEntry))] }];
  const headline = `${counted(rows, 'reading')} of ${counted(uses.length, 'file system')}`;
  return drawReport({ tone: 'plain', headline, fields: [], sections }, screen);
}

function useEntry(use: UseSummary): Entry {
  const { server, mount, count, first, last } = use;
  const { forecastFor, slopes } = usageFrom(use);
  const capacity = fillableBytes(last);
  return {
    text: `${server} ${mount}`,
    fields: [
      line('readings', `${count}, from ${first.at} to ${last.at}`),
      line('used', `${showMeasure('bytes', last.used)} of ${showMeasure('bytes', capacity)}`),
      line('full', showForecast(forecastFor(capacity), slopes)),
    ],
  };
}
