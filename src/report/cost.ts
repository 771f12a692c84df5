/** What an estate costs, as text, JSON or CSV. */
import { stringify } from 'csv-stringify/sync';
import type { Estate } from '../estate/estate.ts';
import type { Settings } from '../estate/settings.ts';
import {
  type CostLine,
  costLines,
  type EstateCost,
  type Grouping,
  groupKey,
  nameOf,
  ownerOf,
} from '../price/cost.ts';
import { detachedCost } from '../price/delta.ts';
import { explainCost } from '../price/explain.ts';
import { type Money, showMoney } from '../price/money.ts';
import type { PriceList } from '../price/price-list.ts';
import { showAmount } from './amounts.ts';
import { atLeast, drawHeadline, drawSections, type Screen } from './draw.ts';
import type { Block, Section } from './sections.ts';

export type CostFormat = 'text' | 'json' | 'csv';

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
      return costText(overview, atLeast(screen));
    case 'json':
      return costJson(overview);
    case 'csv':
      return costCsv(overview);
  }
}

/** What a group without a name is called: it belongs to none. */
const groupName = (name: string, by: Grouping): string => (name === '' ? `no ${by}` : name);

function costText({ on, list, estate, settings, cost, by, sums }: CostOverview, screen: Screen): string {
  const { currency } = cost;
  const detached = detachedCost(cost, estate);
  const headline = `The estate costs ${showAmount(cost.total, currency)} a month on ${on}`;
  const blocks: Block[] = [
    { kind: 'sentence', text: `By the price list that holds from ${list.from} (${list.place.file}).` },
  ];
  if (!detached.isZero()) {
    blocks.push({
      kind: 'sentence',
      text: `Of that, ${showAmount(detached, currency)} are for volumes that no server holds. A detached volume is billed until it is deleted.`,
    });
  }
  const sections: Section[] = [
    { title: '', blocks },
    {
      title: `A month, by ${by}`,
      blocks: [
        {
          kind: 'table',
          table:
            by === 'volume' || by === 'server'
              ? lineTable({ on, list, estate, settings, cost, by, sums })
              : {
                  columns: [
                    { title: by, align: 'left' },
                    { title: currency, align: 'right' },
                  ],
                  rows: [...sums].map(([name, sum]) => [groupName(name, by), showMoney(sum, currency)]),
                },
        },
      ],
    },
  ];
  return `${[...drawHeadline(headline, 'plain', screen), ...drawSections(sections, screen)].join('\n').replace('\n\n  By', '\n  By')}\n`;
}

const byName = (a: CostLine, b: CostLine): number => (nameOf(a) < nameOf(b) ? -1 : 1);

/** Each volume with its arithmetic; by server, each server's volumes beneath it. */
function lineTable({ on, list, settings, cost, by, estate, sums }: CostOverview) {
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
  return {
    columns: [
      { title: by === 'volume' ? 'volume or server' : 'server', align: 'left' },
      { title: 'tier or server type', align: 'left' },
      { title: 'how it comes about', align: 'left' },
      { title: currency, align: 'right' },
    ],
    rows,
  } as const;
}

function lineFacts({ on, list, settings }: CostOverview, line: CostLine) {
  const { team, site } = ownerOf(line);
  return {
    kind: line.kind,
    name: nameOf(line),
    team: team ?? null,
    site: site ?? null,
    price: line.kind === 'volume' ? line.tier : line.serverType,
    bytes: line.kind === 'volume' ? line.volume.size.toString() : null,
    billedBytes: line.kind === 'volume' ? line.billed.toString() : null,
    detached: line.kind === 'volume' && line.detached,
    monthly: line.monthly.toFixed(),
    arithmetic: explainCost(line, list, settings, on),
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
      detached: detachedCost(cost, estate).toFixed(),
      by,
      sums: [...sums].map(([name, sum]) => ({ name: name === '' ? null : name, monthly: sum.toFixed() })),
      lines: [...costLines(cost)].sort(byName).map((line) => lineFacts(overview, line)),
    },
    null,
    2,
  )}\n`;
}

/** A cell that a spreadsheet would take for a formula is led by an apostrophe, so that it stays text. */
const costCsv = (overview: CostOverview): string =>
  stringify(
    [...costLines(overview.cost)].sort(byName).map((line) => lineFacts(overview, line)),
    { header: true, escape_formulas: true, cast: { boolean: (value) => (value ? 'true' : 'false') } },
  );
