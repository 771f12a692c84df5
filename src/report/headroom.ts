/** What room is left, as text with bars that need no colour, or as JSON. */
import { freeShare, type Layer, layers, type Room } from '../capacity/headroom.ts';
import type { Idle } from '../capacity/idle.ts';
import type { DeviceAccount, LayerAccount } from '../capacity/layers.ts';
import { fillableBytes } from '../capacity/readings.ts';
import { type Bytes, bytes, unitBytes } from '../estate/size.ts';
import { showMoney, sumMoney } from '../price/money.ts';
import { showAmount, showMeasure, showShare } from './amounts.ts';
import { atLeast, drawHeadline, drawSections, type Screen } from './draw.ts';
import { forecastFacts, showForecast } from './forecast.ts';
import type { Section } from './sections.ts';

export type HeadroomFormat = 'text' | 'json';

/** Rooms with a bound, the account from what is bought to what is used, and what of it is idle. */
export interface HeadroomOverview {
  readonly rooms: readonly Room[];
  readonly accounts: readonly LayerAccount[];
  readonly idle: readonly Idle[];
  readonly currency: string;
  readonly on: string;
}

export const reportHeadroom = (overview: HeadroomOverview, format: HeadroomFormat, screen: Screen): string =>
  format === 'json' ? headroomJson(overview) : headroomText(overview, atLeast(screen));

const titles: { readonly [L in Layer]: string } = {
  quota: 'Quota of each site',
  'attachment-slots': 'Attachment slots of each server',
  'volume-group': 'Volume groups',
  'file-system': 'File systems',
};

const barWidth = 20;

/** Full blocks for what is taken, dots for what is free; `over` where more is taken than there is. */
export function bar(room: Room): string {
  if (room.free < 0n) return `${'█'.repeat(barWidth)} over`;
  const taken =
    room.capacity === 0n
      ? barWidth
      : Number((room.taken * BigInt(barWidth) + room.capacity / 2n) / room.capacity);
  return `${'█'.repeat(taken)}${'·'.repeat(barWidth - taken)}`;
}

function headroomText({ rooms, accounts, idle, currency }: HeadroomOverview, screen: Screen): string {
  const tightest = [...rooms].sort((a, b) => freeShare(a) - freeShare(b))[0];
  const headline =
    tightest === undefined
      ? 'No layer has a bound to keep room to'
      : tightest.free < 0n
        ? `${tightest.subject.name} is asked for more than it has`
        : `The tightest is ${tightest.subject.name}, with ${showShare(tightest)} free`;
  const sections = [
    ...layers.flatMap((layer) => roomSection(layer, rooms)),
    ...accountSection(accounts),
    ...idleSection(idle, currency),
    ...useSection(accounts),
  ];
  return `${[...drawHeadline(headline, 'plain', screen), ...drawSections(sections, screen)].join('\n')}\n`;
}

const right = (title: string) => ({ title, align: 'right' }) as const;
const left = (title: string) => ({ title, align: 'left' }) as const;

function roomSection(layer: Layer, rooms: readonly Room[]): readonly Section[] {
  const those = rooms.filter((room) => room.layer === layer);
  if (those.length === 0) return [];
  return [
    {
      title: titles[layer],
      blocks: [
        {
          kind: 'table',
          table: {
            columns: [left('name'), right('taken'), right('of'), right('free'), right('share'), left('')],
            rows: those.map((room) => [
              room.subject.name,
              showMeasure(room.measure, room.taken),
              showMeasure(room.measure, room.capacity),
              showMeasure(room.measure, room.free),
              showShare(room),
              bar(room),
            ]),
          },
        },
      ],
    },
  ];
}

const size = (amount: Bytes): string => showMeasure('bytes', amount);

/** In GiB to two decimals, since a column of one unit is read down. */
const gib = (amount: Bytes): string => (Number((amount * 100n) / unitBytes.GiB) / 100).toFixed(2);

/** What is given to no file system; where more is given than there is, by how much. */
const idleGib = (notGiven: Bytes): string =>
  notGiven < 0n ? `over by ${gib(bytes(-notGiven))}` : gib(notGiven);

/** One row for each file system; a group's own figures stand with its first. */
function accountSection(accounts: readonly LayerAccount[]): readonly Section[] {
  if (accounts.length === 0) return [];
  return [
    {
      title: 'From what is bought to what files can use, in GiB',
      blocks: [
        {
          kind: 'table',
          table: {
            columns: [
              left('on'),
              right('bought'),
              right('kept'),
              right('idle'),
              left('file system'),
              right('given'),
              right('kept'),
              right('reserve'),
              right('for files'),
            ],
            rows: accounts.flatMap(accountRows),
          },
        },
      ],
    },
    {
      title: 'The same, drawn',
      blocks: [
        {
          kind: 'table',
          table: {
            columns: [left('on'), left('all of what is bought')],
            rows: accounts.map((account) => [account.carrier.name, partsBar(account)]),
          },
        },
        {
          kind: 'sentence',
          text: `${parts.map(({ mark, what }) => `${mark} ${what}`).join(', ')}.`,
        },
      ],
    },
  ];
}

/** What becomes of capacity, each with a mark that tells it apart without colour. */
const parts = [
  { mark: '█', what: 'for files', of: forFiles },
  { mark: '▒', what: 'root reserve', of: reserved },
  { mark: '░', what: 'kept by the group, the file systems and copies', of: keptBelow },
  { mark: '?', what: 'given, and not known what is kept of it', of: unknownGiven },
  { mark: '·', what: 'given to no file system', of: ({ notGiven }: LayerAccount): bigint => notGiven },
] as const;

function forFiles({ devices }: LayerAccount): bigint {
  return devices.reduce<bigint>((sum, device) => sum + (device.kind === 'known' ? device.forFiles : 0n), 0n);
}

function reserved({ devices }: LayerAccount): bigint {
  return devices.reduce<bigint>((sum, device) => sum + (device.kind === 'known' ? device.reserved : 0n), 0n);
}

function keptBelow({ kept, devices }: LayerAccount): bigint {
  return devices.reduce<bigint>(
    (sum, device) => sum + (device.kind === 'known' ? device.overhead : 0n),
    kept,
  );
}

function unknownGiven({ devices }: LayerAccount): bigint {
  return devices.reduce<bigint>((sum, device) => sum + (device.kind === 'known' ? 0n : device.device), 0n);
}

const partsWidth = 40;

/** One mark for each fortieth of what is bought, rounded so that the parts together keep their total. */
function partsBar(account: LayerAccount): string {
  const { bought, notGiven } = account;
  if (notGiven < 0n) return `${'█'.repeat(partsWidth)} over`;
  let sum = 0n;
  let drawn = 0;
  return parts
    .map(({ mark, of }) => {
      sum += of(account);
      const end = Number((sum * BigInt(partsWidth) * 2n + bought) / (bought * 2n));
      const length = Math.max(0, Math.min(partsWidth, end) - drawn);
      drawn += length;
      return mark.repeat(length);
    })
    .join('');
}

function accountRows({
  carrier,
  bought,
  kept,
  notGiven,
  devices,
}: LayerAccount): readonly (readonly string[])[] {
  const own = [carrier.name, gib(bought), carrier.kind === 'volume' ? '' : gib(kept), idleGib(notGiven)];
  if (devices.length === 0) return [[...own, 'none', '', '', '', '']];
  return devices.map((device, index) => [
    ...(index === 0 ? own : ['', '', '', '']),
    `${device.system.mount} (${device.system.type})`,
    gib(device.device),
    ...(device.kind === 'known'
      ? [gib(device.overhead), gib(device.reserved), gib(device.forFiles)]
      : ['not known', '', '']),
  ]);
}

function idleSection(idle: readonly Idle[], currency: string): readonly Section[] {
  if (idle.length === 0) return [];
  const total = sumMoney(idle.map(({ monthly }) => monthly()));
  return [
    {
      title: 'Idle: paid for, and given to no file system',
      blocks: [
        {
          kind: 'table',
          table: {
            columns: [
              left('layer'),
              left('name'),
              right('bought'),
              right('idle'),
              right(`${currency} a month`),
            ],
            rows: idle.map(({ layer, subject, bought, idle: unused, monthly }) => [
              layer.replace('-', ' '),
              subject.name,
              size(bought),
              size(unused),
              showMoney(monthly(), currency),
            ]),
          },
        },
        { kind: 'sentence', text: `Together ${showAmount(total, currency)} a month.` },
      ],
    },
  ];
}

/** File systems with readings: what is used, and when they will be full. */
function useSection(accounts: readonly LayerAccount[]): readonly Section[] {
  const measured = accounts.flatMap(({ devices }) =>
    devices.flatMap(({ system, usage }) => (usage === undefined ? [] : [{ system, usage }])),
  );
  if (measured.length === 0) return [];
  return [
    {
      title: 'Measured use',
      blocks: [
        {
          kind: 'table',
          table: {
            columns: [
              left('file system'),
              right('used'),
              right('of'),
              left(''),
              left('as of'),
              left('will be full'),
            ],
            rows: measured.map(({ system, usage: { last, forecastFor } }) => {
              const fillable = fillableBytes(last);
              return [
                system.name,
                size(last.used),
                size(fillable),
                useBar(last.used, fillable),
                last.at.slice(0, 10),
                showForecast(forecastFor(fillable)),
              ];
            }),
          },
        },
        {
          kind: 'sentence',
          text: 'The forecast is the median of the slopes between days (Theil and Sen), cut at clean-ups, with its 90 % interval; least squares over the same days stands beside it.',
        },
      ],
    },
  ];
}

const useBar = (used: Bytes, of: Bytes): string => {
  const share = of <= 0n ? barWidth : Number((used * BigInt(barWidth) + of / 2n) / of);
  const full = Math.min(barWidth, Math.max(0, share));
  return `${'█'.repeat(full)}${'·'.repeat(barWidth - full)}`;
};

function headroomJson({ rooms, accounts, idle, currency, on }: HeadroomOverview): string {
  return `${JSON.stringify(
    {
      on,
      rooms: rooms.map(({ layer, subject, measure, capacity, taken, free }) => ({
        layer,
        subject,
        measure,
        capacity: capacity.toString(),
        taken: taken.toString(),
        free: free.toString(),
      })),
      accounts: accounts.map(({ carrier, bought, kept, given, notGiven, devices }) => ({
        on: { kind: carrier.kind, name: carrier.name },
        bought: bought.toString(),
        kept: kept.toString(),
        given: given.toString(),
        notGiven: notGiven.toString(),
        fileSystems: devices.map(deviceFacts),
      })),
      idle: idle.map(({ layer, subject, bought, idle: unused, monthly }) => ({
        layer,
        subject,
        bought: bought.toString(),
        idle: unused.toString(),
        monthly: monthly().toFixed(),
        currency,
      })),
    },
    null,
    2,
  )}\n`;
}

function deviceFacts(account: DeviceAccount) {
  const { system, device, usage } = account;
  return {
    mount: system.mount,
    type: system.type,
    device: device.toString(),
    overhead: account.kind === 'known' ? account.overhead.toString() : null,
    reserved: account.kind === 'known' ? account.reserved.toString() : null,
    forFiles: account.kind === 'known' ? account.forFiles.toString() : null,
    unknown: account.kind === 'known' ? null : account.why,
    used: usage === undefined ? null : usage.last.used.toString(),
    usedAt: usage === undefined ? null : usage.last.at,
    forecast: usage === undefined ? null : forecastFacts(usage.forecastFor(fillableBytes(usage.last))),
  };
}
