/** The headroom of an estate, as text or JSON. */
import type { DeviceAccount } from '../capacity/layers.ts';
import { fillableBytes } from '../capacity/readings.ts';
import { drawReport, type Screen } from './draw.ts';
import { type HeadroomOverview, headroomModel } from './model/capacity.ts';
import { estateSection } from './model/estate.ts';
import { forecastFacts } from './model/forecast.ts';
import { drawPage } from './page/document.ts';

export type HeadroomFormat = 'text' | 'json' | 'html';

export function reportHeadroom(overview: HeadroomOverview, format: HeadroomFormat, screen: Screen): string {
  switch (format) {
    case 'text':
      return drawReport(headroomModel(overview), screen);
    case 'json':
      return headroomJson(overview);
    case 'html':
      return headroomPage(overview);
  }
}

function headroomPage(overview: HeadroomOverview): string {
  const model = headroomModel(overview);
  const { estate, accounts } = overview;
  const drawn = estateSection({ estate, accounts, touched: new Set(), disputed: new Set() });
  return drawPage({ ...model, sections: [...model.sections, ...drawn] }, 'ullage headroom --format json');
}

/** Sizes are whole bytes, amounts exact; both are strings, which no reader rounds. */
function headroomJson({ rooms, accounts, idle, currency, on }: HeadroomOverview): string {
  return `${JSON.stringify(
    {
      on,
      headroom: rooms.map(({ layer, subject, measure, capacity, taken, free, surveyed }) => ({
        layer,
        subject,
        measure,
        capacity: capacity.toString(),
        used: taken.toString(),
        free: free.toString(),
        ...surveyedAt(surveyed),
      })),
      provisioned: accounts.map(({ carrier, bought, kept, given, notGiven, devices, surveyed }) => ({
        on: { kind: carrier.kind, name: carrier.name },
        provisioned: bought.toString(),
        metadata: kept.toString(),
        allocated: given.toString(),
        unallocated: notGiven.toString(),
        ...surveyedAt(surveyed),
        fileSystems: devices.map(deviceFacts),
      })),
      unallocated: idle.map(({ layer, subject, bought, idle: unused, monthly, surveyed }) => ({
        layer,
        subject,
        provisioned: bought.toString(),
        unallocated: unused.toString(),
        ...surveyedAt(surveyed),
        monthly: monthly().toFixed(),
        currency,
      })),
    },
    null,
    2,
  )}\n`;
}

/** Left out where the figures are declared, read or estimated. */
const surveyedAt = (surveyed: string | undefined) => (surveyed === undefined ? {} : { surveyed });

function deviceFacts(account: DeviceAccount) {
  const { system, device, usage } = account;
  return {
    mount: system.mount,
    type: system.type,
    allocated: device.toString(),
    metadata: account.kind === 'known' ? account.overhead.toString() : null,
    reservedBlocks: account.kind === 'known' ? account.reserved.toString() : null,
    usable: account.kind === 'known' ? account.forFiles.toString() : null,
    ...(account.kind === 'known' && 'survey' in account.by ? { surveyed: account.by.survey } : {}),
    undetermined: account.kind === 'known' ? null : account.why,
    used: usage === undefined ? null : usage.last.used.toString(),
    usedAt: usage === undefined ? null : usage.last.at,
    forecast:
      usage === undefined ? null : forecastFacts(usage.forecastFor(fillableBytes(usage.last)), usage.slopes),
  };
}
