/** What an estate costs, as text, JSON or CSV. */
import { stringify } from 'csv-stringify/sync';
import type { Estate } from '../estate/estate.ts';
import type { Settings } from '../estate/settings.ts';
import { costLines, type EstateCost, type Grouping, groupKey } from '../price/cost.ts';
import { detachedCost } from '../price/delta.ts';
import { explainCost } from '../price/explain.ts';
import { type CostLine, nameOf, ownerOf } from '../price/line.ts';
import { addMoney, compareMoney, type Money, noMoney, showMoney } from '../price/money.ts';
import type { PriceList } from '../price/price-list.ts';
import { addsUp, asShown, roundedNote } from '../price/shown.ts';
import { drawReport, type Screen } from './draw.ts';
import { showAmount } from './model/amounts.ts';
import { figures, sentence, table, words } from './model/blocks.ts';
import type { Block, ReportModel } from './model/model.ts';
import { drawPage } from './page/document.ts';

export type CostFormat = 'text' | 'json' | 'csv' | 'html';

export interface CostOverview {
  readonly on: string;
  readonly list: PriceList;
  readonly estate: Estate;
  readonly settings: Settings;
  readonly cost: EstateCost;
  readonly by: Grouping;
  readonly sums: ReadonlyMap<string, Money>;
}

export function reportCost(overview: CostOverview, format: CostFormat, screen: Screen): string {
  switch (format) {
    case 'text':
      return drawReport(costModel(overview), screen);
    case 'json':
      return costJson(overview);
    case 'csv':
      return costCsv(overview);
    case 'html':
      return drawPage(costModel(overview), 'ullage cost --format json');
  }
}

/** What the sum is called of what belongs to no team, site or server. */
const groupName = (name: string, by: Grouping): string => (name === '' ? `no ${by}` : name);

function costModel(overview: CostOverview): ReportModel {
  const { on, list, estate, cost, by, sums } = overview;
  const { currency } = cost;
  const detached = detachedCost(cost, estate);
  return {
    tone: 'plain',
    headline: `The estate costs ${showAmount(cost.total, currency)} a month on ${on}`,
    fields: [],
    sections: [
      {
        title: '',
        blocks: [
          sentence(`Prices are those of the price list from ${list.from} (${list.place.file}).`),
          ...(detached.isZero()
            ? []
            : [
                sentence(
                  `Of this, ${showAmount(detached, currency)} is for unattached volumes. An unattached volume is billed until it is deleted.`,
                ),
              ]),
        ],
      },
      {
        title: `Monthly cost by ${by}`,
        blocks: [
          by === 'volume' || by === 'server'
            ? lineTable(overview)
            : table(
                [words(by), figures(currency)],
                [...sums].map(([name, sum]) => [groupName(name, by), showMoney(sum, currency)]),
              ),
          {
            kind: 'picture',
            picture: { kind: 'sums', currency, by, rows: dearestFirst(overview) },
          },
          ...(sumsComeOut(overview) ? [] : [sentence(roundedNote(currency))]),
        ],
      },
    ],
  };
}

const dearestFirst = ({ sums, by }: CostOverview) =>
  [...sums]
    .map(([name, amount]) => ({ name: groupName(name, by), amount }))
    .sort((a, b) => compareMoney(b.amount, a.amount));

/** Whether the sums shown come to the total shown, and by server each one's volumes to its own sum. */
function sumsComeOut({ cost, by, sums, estate }: CostOverview): boolean {
  const { currency, total } = cost;
  if (by === 'volume')
    return addsUp(
      [...costLines(cost)].map(({ monthly }) => monthly),
      total,
      currency,
    );
  if (!addsUp([...sums.values()], total, currency)) return false;
  if (by !== 'server') return true;
  const beneath = new Map<string, Money>();
  for (const line of costLines(cost)) {
    const key = groupKey(line, estate, by);
    beneath.set(key, addMoney(beneath.get(key) ?? noMoney, asShown(line.monthly, currency)));
  }
  return [...sums].every(([name, sum]) => asShown(sum, currency).eq(beneath.get(name) ?? noMoney));
}

const byName = (a: CostLine, b: CostLine): number => (nameOf(a) < nameOf(b) ? -1 : 1);

/** Each volume with its arithmetic; by server, each server's volumes beneath it. */
function lineTable({ on, list, settings, cost, by, estate, sums }: CostOverview): Block {
  const { currency } = cost;
  const row = (line: CostLine, lead = ''): readonly string[] => [
    `${lead}${nameOf(line)}`,
    line.kind === 'volume' ? line.tier : line.serverType,
    explainCost(line, list, settings, on),
    showMoney(line.monthly, currency),
  ];
  const lines = [...costLines(cost)].sort(byName);
  const beneath = new Map<string, CostLine[]>();
  for (const line of by === 'server' ? lines : []) {
    const server = groupKey(line, estate, by);
    const those = beneath.get(server);
    if (those === undefined) beneath.set(server, [line]);
    else those.push(line);
  }
  const rows =
    by === 'volume'
      ? lines.map((line) => row(line))
      : [...sums].flatMap(([server, sum]) => [
          [groupName(server, by), '', '', showMoney(sum, currency)],
          ...(beneath.get(server) ?? []).map((line) => row(line, '  ')),
        ]);
  return table(
    [
      words(by === 'volume' ? 'volume or server' : 'server'),
      words('tier or server type'),
      words('calculation'),
      figures(currency),
    ],
    rows,
  );
}

function lineFacts({ on, list, settings }: CostOverview, line: CostLine) {
  const { team, site } = ownerOf(line);
  return {
    kind: line.kind,
    name: nameOf(line),
    team: team ?? null,
    site: site ?? null,
    tier: line.kind === 'volume' ? line.tier : null,
    serverType: line.kind === 'volume' ? null : line.serverType,
    bytes: line.kind === 'volume' ? line.volume.size.toString() : null,
    billedBytes: line.kind === 'volume' ? line.billed.toString() : null,
    unattached: line.kind === 'volume' && line.detached,
    monthly: line.monthly.toFixed(),
    calculation: explainCost(line, list, settings, on),
  };
}

/** Amounts are exact here: rounding is for showing. */
function costJson(overview: CostOverview): string {
  const { on, list, cost, by, sums, estate } = overview;
  return `${JSON.stringify(
    {
      on,
      currency: cost.currency,
      priceList: { from: list.from, file: list.place.file },
      total: cost.total.toFixed(),
      unattached: detachedCost(cost, estate).toFixed(),
      by,
      sums: [...sums].map(([name, sum]) => ({ name: name === '' ? null : name, monthly: sum.toFixed() })),
      lines: [...costLines(cost)].sort(byName).map((line) => lineFacts(overview, line)),
    },
    null,
    2,
  )}\n`;
}

/** A cell that a spreadsheet would take for a formula is led by an apostrophe, so that it stays text. */
/** Under the headings that the screen has, where it has them. */
function csvRow(overview: CostOverview, line: CostLine) {
  const { name, kind, team, site, tier, serverType, bytes, billedBytes, unattached, monthly, calculation } =
    lineFacts(overview, line);
  return {
    kind,
    'volume or server': name,
    team,
    site,
    'tier or server type': tier ?? serverType,
    bytes,
    'billed bytes': billedBytes,
    unattached,
    'monthly cost': monthly,
    currency: overview.cost.currency,
    calculation,
  };
}

const costCsv = (overview: CostOverview): string =>
  stringify(
    [...costLines(overview.cost)].sort(byName).map((line) => csvRow(overview, line)),
    { header: true, escape_formulas: true, cast: { boolean: (value) => (value ? 'true' : 'false') } },
  );
