/** The headroom of an estate: at each layer, from what is provisioned to what files can use, and measured use. */

import type { EstateChanges } from '../../audit/estate-changes.ts';
import { apportion, rounded } from '../../base/apportion.ts';
import { byText } from '../../base/order.ts';
import { listed } from '../../base/wording.ts';
import { freeShare, type Layer, layers, type Room } from '../../capacity/headroom.ts';
import type { Idle } from '../../capacity/idle.ts';
import type { LayerAccount } from '../../capacity/layers.ts';
import { fillableBytes } from '../../capacity/readings.ts';
import type { Estate } from '../../estate/estate.ts';
import { type Bytes, noBytes, unitBytes } from '../../estate/size.ts';
import { showMoney, sumMoney } from '../../price/money.ts';
import { addsUp, roundedNote } from '../../price/shown.ts';
import { showAmount, showFreeShare, showMeasure } from './amounts.ts';
import { figures, sentence, table, words } from './blocks.ts';
import { forecastPicture, howForecast, showForecast } from './forecast.ts';
import type { Bar, Block, Cell, PartOfCapacity, ReportModel, Section } from './model.ts';
import { layerWords, surveyedOn } from './subjects.ts';

/** Layers whose capacity is limited, the account from what is provisioned to what is usable, and what is unallocated. */
export interface HeadroomOverview {
  readonly estate: Estate;
  readonly rooms: readonly Room[];
  readonly accounts: readonly LayerAccount[];
  readonly idle: readonly Idle[];
  readonly currency: string;
  readonly on: string;
  /** What commits made of the estate, for the forecasts' drawings; undefined where that was not asked, or cannot be told. */
  readonly history?: EstateChanges | undefined;
}

export const headroomModel = ({
  estate,
  rooms,
  accounts,
  idle,
  currency,
  history,
}: HeadroomOverview): ReportModel => ({
  tone: 'plain',
  headline: headline(rooms),
  fields: [],
  sections: [
    ...layers.flatMap((layer) => layerSection(layer, rooms)),
    ...accountSections(accounts),
    ...idleSection(idle, currency),
    ...useSection(accounts, estate, history),
  ],
});

function headline(rooms: readonly Room[]): string {
  const [least] = [...rooms].sort((a, b) => freeShare(a) - freeShare(b));
  if (least === undefined)
    return 'There are no quotas, attachment slots or volume groups, so there is no headroom to show';
  return least.free < 0n
    ? `More is asked of ${layerWords(least)} than there is: ${showMeasure(least.measure, least.free)}`
    : `The least headroom is that of ${layerWords(least)}: ${showFreeShare(least)} free`;
}

const titles: Readonly<Record<Layer, string>> = {
  quota: 'Quota of each site',
  'attachment-slots': 'Attachment slots of each server',
  'volume-group': 'Volume groups',
  'file-system': 'File systems',
};

const usedTitles: Readonly<Record<Layer, string>> = {
  quota: 'used',
  'attachment-slots': 'used',
  'volume-group': 'allocated',
  'file-system': 'used',
};

/** The share and the bar beside it are both of what is used. */
function layerSection(layer: Layer, rooms: readonly Room[]): readonly Section[] {
  const those = rooms.filter((room) => room.layer === layer);
  if (those.length === 0) return [];
  const used = usedTitles[layer];
  const isSurveyed = those.some(({ surveyed }) => surveyed !== undefined);
  const source = ({ surveyed }: Room): string =>
    surveyed === undefined ? 'estimated' : surveyedOn(surveyed);
  const columns = [
    words('name'),
    figures('capacity'),
    figures('free'),
    figures(used),
    figures(`share ${used}`),
    words(''),
    ...(isSurveyed ? [words('source')] : []),
  ];
  const rows = those.map((room): readonly Cell[] => [
    room.subject.name,
    { kind: 'measure', measure: room.measure, amount: room.capacity },
    { kind: 'measure', measure: room.measure, amount: room.free },
    { kind: 'measure', measure: room.measure, amount: room.taken },
    { kind: 'used share', of: room },
    usedBar(room.taken, room.capacity),
    ...(isSurveyed ? [source(room)] : []),
  ]);
  const note = layer === 'volume-group' ? [sentence(nextOne)] : [];
  return [{ title: titles[layer], blocks: [table(columns, rows), ...note] }];
}

const nextOne =
  'Free is what one more file system could have: file systems are placed one after another, as the volume manager places them.';

const usedBar = (used: bigint, whole: bigint): Bar => ({
  kind: 'bar',
  whole,
  parts: [
    { part: 'used', amount: used },
    { part: 'free', amount: whole - used },
  ],
  over: used > whole,
});

const size = (amount: Bytes): Cell => ({ kind: 'measure', measure: 'bytes', amount });

/** Columns of one unit are read down: whole hundredths of a GiB. */
const inHundredths = (amount: bigint): bigint => rounded(amount * 100n, unitBytes.GiB);
const shares = (parts: readonly bigint[], count: bigint): readonly bigint[] =>
  apportion(
    parts.map((part) => part * 100n),
    unitBytes.GiB,
    count,
  );

/** Hundredths of a GiB as `39.98`. */
const gib = (count: bigint): string => `${count / 100n}.${(count % 100n).toString().padStart(2, '0')}`;

/** What is allocated to no file system; where more is allocated than there is, by how much. */
const unallocatedGib = (count: bigint): string => (count < 0n ? `over by ${gib(-count)}` : gib(count));

/** An account in hundredths of a GiB: in every row the parts come to their whole as they are shown. */
interface ShownAccount {
  readonly account: LayerAccount;
  readonly bought: bigint;
  readonly kept: bigint;
  readonly given: bigint;
  readonly notGiven: bigint;
  readonly devices: readonly { readonly device: Device; readonly cells: readonly string[] }[];
}

function shownAccount(account: LayerAccount): ShownAccount {
  const bought = inHundredths(account.bought);
  const [kept = 0n, given = 0n, notGiven = 0n] = shares(
    [account.kept, account.given, account.notGiven],
    bought,
  );
  const each = shares(
    account.devices.map(({ device }) => device),
    given,
  );
  return {
    account,
    bought,
    kept,
    given,
    notGiven,
    devices: account.devices.map((device, index) => {
      const whole = each[index] ?? 0n;
      const parts =
        device.kind === 'known'
          ? shares([device.overhead, device.reserved, device.forFiles], whole).map(gib)
          : ['undetermined', '', ''];
      return { device, cells: [gib(whole), ...parts] };
    }),
  };
}

function accountSections(accounts: readonly LayerAccount[]): readonly Section[] {
  if (accounts.length === 0) return [];
  const shown = accounts.map(shownAccount);
  return [
    {
      title: 'Provisioned, in GiB',
      blocks: [
        table(
          [
            words('volume group or volume'),
            figures('provisioned'),
            figures('metadata'),
            figures('allocated'),
            figures('unallocated'),
          ],
          shown.map(({ account, bought, kept, given, notGiven }) => [
            account.carrier.name,
            gib(bought),
            gib(kept),
            gib(given),
            unallocatedGib(notGiven),
          ]),
        ),
      ],
    },
    {
      title: 'Allocated to file systems, in GiB',
      blocks: [
        table(
          [
            words('on'),
            words('file system'),
            figures('allocated'),
            figures('metadata'),
            figures('reserved blocks'),
            figures('usable'),
          ],
          shown.flatMap(({ account, devices }) =>
            devices.map(({ device, cells }) => [
              account.carrier.name,
              `${device.system.mount} (${device.system.type})`,
              ...cells,
            ]),
          ),
        ),
        ...determinedBy(accounts),
      ],
    },
    {
      title: 'What becomes of provisioned capacity',
      blocks: [
        table(
          [words('volume group or volume'), words('all that is provisioned')],
          accounts.map((account) => [account.carrier.name, partsBar(account)]),
        ),
        { kind: 'legend', parts: parts.map(({ part, text }) => ({ part, text })) },
      ],
    },
  ];
}

/** Which versions the figures hold for, and where something measured stands in for them. */
function determinedBy(accounts: readonly LayerAccount[]): readonly Block[] {
  const known = accounts.flatMap(({ devices }) =>
    devices.flatMap((device) => (device.kind === 'known' ? [device] : [])),
  );
  const makers = new Set(known.flatMap(({ by }) => ('maker' in by ? [by.maker] : [])));
  const measured = known.flatMap(({ system, by }) =>
    'reading' in by ? [`${system.name} (${by.reading.slice(0, 10)})`] : [],
  );
  const surveyed = known.flatMap(({ system, by }) =>
    'survey' in by ? [`${system.name} (${by.survey.slice(0, 10)})`] : [],
  );
  const made = listed([...makers].sort(byText));
  return [
    ...(makers.size === 0
      ? []
      : [sentence(`Metadata and reserved blocks are those of file systems made by ${made}, as declared.`)]),
    ...(measured.length === 0
      ? []
      : [sentence(`Where readings show the real size, that counts: ${listed(measured)}.`)]),
    ...(surveyed.length === 0
      ? []
      : [sentence(`Where surveys show what a file system really keeps, that counts: ${listed(surveyed)}.`)]),
  ];
}

type Device = LayerAccount['devices'][number];

const sumOf = (devices: readonly Device[], of: (device: Device) => Bytes): bigint =>
  devices.reduce((sum, device) => sum + of(device), 0n);

const ifKnown =
  (part: 'forFiles' | 'reserved' | 'overhead') =>
  (device: Device): Bytes =>
    device.kind === 'known' ? device[part] : noBytes;

const parts: readonly {
  readonly part: PartOfCapacity;
  readonly text: string;
  readonly of: (account: LayerAccount) => bigint;
}[] = [
  { part: 'usable', text: 'usable', of: ({ devices }) => sumOf(devices, ifKnown('forFiles')) },
  { part: 'reserved', text: 'reserved blocks', of: ({ devices }) => sumOf(devices, ifKnown('reserved')) },
  {
    part: 'overhead',
    text: 'metadata, rounding and copies',
    of: ({ kept, devices }) => kept + sumOf(devices, ifKnown('overhead')),
  },
  {
    part: 'undetermined',
    text: 'allocated, and how much of it is usable is undetermined',
    of: ({ devices }) => sumOf(devices, (device) => (device.kind === 'known' ? noBytes : device.device)),
  },
  { part: 'free', text: 'unallocated', of: ({ notGiven }) => notGiven },
];

const partsBar = (account: LayerAccount): Bar => ({
  kind: 'bar',
  whole: account.bought,
  parts: parts.map(({ part, of }) => ({ part, amount: of(account) })),
  over: account.notGiven < 0n,
});

function idleSection(idle: readonly Idle[], currency: string): readonly Section[] {
  if (idle.length === 0) return [];
  const monthlies = idle.map(({ monthly }) => monthly());
  const total = sumMoney(monthlies);
  const taken = idle.flatMap(({ subject, surveyed }) =>
    surveyed === undefined ? [] : [`${subject.name} (${surveyed.slice(0, 10)})`],
  );
  return [
    {
      title: 'Unallocated: paid for, and in no file system',
      blocks: [
        table(
          [
            words('layer'),
            words('name'),
            figures('provisioned'),
            figures('unallocated'),
            figures(`${currency} a month`),
          ],
          idle.map(({ layer, subject, bought, idle: unused, monthly }) => [
            layer.replace('-', ' '),
            subject.name,
            size(bought),
            size(unused),
            showMoney(monthly(), currency),
          ]),
        ),
        sentence(
          `The total is ${showAmount(total, currency)} a month. A volume group's metadata counts as unallocated here: it is paid for and holds no files.`,
        ),
        ...(taken.length === 0
          ? []
          : [sentence(`Less what surveys show that other things take: ${listed(taken)}.`)]),
        ...(addsUp(monthlies, total, currency) ? [] : [sentence(roundedNote(currency))]),
      ],
    },
  ];
}

/** More would hardly be looked at; the table has them all. */
const mostDrawn = 60;

/** File systems with readings: what is used, and when they will be full. */
function useSection(
  accounts: readonly LayerAccount[],
  estate: Estate,
  history: EstateChanges | undefined,
): readonly Section[] {
  const measured = accounts.flatMap(({ devices }) =>
    devices.flatMap(({ system, usage }) => (usage === undefined ? [] : [{ system, usage }])),
  );
  if (measured.length === 0) return [];
  return [
    {
      title: 'Measured use',
      blocks: [
        table(
          [
            words('file system'),
            figures('used'),
            figures('capacity'),
            words(''),
            words('measured on'),
            words('will be full'),
          ],
          measured.map(({ system, usage: { last, forecastFor, slopes } }): readonly Cell[] => {
            const capacity = fillableBytes(last);
            return [
              system.name,
              size(last.used),
              size(capacity),
              usedBar(last.used, capacity),
              last.at.slice(0, 10),
              showForecast(forecastFor(capacity), slopes),
            ];
          }),
        ),
        sentence(howForecast),
        ...measured
          .slice(0, mostDrawn)
          .map(({ system, usage }) => forecastPicture({ system, estate }, usage, history)),
      ],
    },
  ];
}
