/** What is printed can be redone by a reader: products, sums, and what a limit leaves. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { layersOf } from '../../src/capacity/layers.ts';
import { costBy, type Grouping, priceEstate } from '../../src/price/cost.ts';
import { type Money, money, noMoney, showMoney, sumMoney } from '../../src/price/money.ts';
import { type PriceList, readPriceList } from '../../src/price/price-list.ts';
import { reportCost } from '../../src/report/cost.ts';
import { reportHeadroom } from '../../src/report/headroom.ts';
import { showRemaining } from '../../src/report/model/amounts.ts';
import { reportText } from '../../src/report/report.ts';
import { documentOf, estateOf, judged, settingsOf, today, valueIn } from '../estate/builder.ts';

const wide = { width: 400, colour: false };
const note = 'Each amount is rounded to';

const volume = fc.record({
  size: fc
    .tuple(fc.integer({ min: 1, max: 4000 }), fc.constantFrom('GiB', 'GB', 'MB', 'TB', 'kB'))
    .map(([count, unit]) => `${count} ${unit}`),
  tier: fc.constantFrom('bulk', 'brisk', 'least'),
  team: fc.constantFrom('soundings', 'imagery', 'ledger'),
  server: fc.constantFrom('sounder-1', 'plotter'),
});
type Volume = typeof volume extends fc.Arbitrary<infer V> ? V : never;

const files = (volumes: readonly Volume[], stopped = false): string => `
servers:
  sounder-1: { type: small, team: soundings, power: ${stopped ? 'stopped' : 'running'} }
  plotter: { type: large, team: imagery }
volumes:
  root: { size: 20 GiB, tier: bulk, team: ledger }
${volumes.map(({ size, tier, team }, index) => `  v${index}: { size: ${size}, tier: ${tier}, team: ${team} }`).join('\n')}
attachments:
  - { volume: root, server: plotter }
${volumes.map(({ server }, index) => `  - { volume: v${index}, server: ${server} }`).join('\n')}
`;

const rate = fc.integer({ min: 1, max: 400_000 }).map((millionths) => (millionths / 1e6).toFixed(6));
const prices = fc.record({ bulk: rate, brisk: rate, further: rate, flat: rate, hour: rate });
const listText = (
  { bulk, brisk, further, flat, hour }: typeof prices extends fc.Arbitrary<infer P> ? P : never,
  currency = 'EUR',
): string => `
from: 2026-01-01
currency: ${currency}
tiers:
  bulk: { rate: "${bulk}", per: GiB-month }
  brisk: { per: GB-month, flat: "${flat}", bands: [ { up-to: 1 TiB, rate: "${brisk}" }, { rate: "${further}" } ] }
  least: { rate: "${further}", per: GiB-month, minimum-billed: 10 GB }
server-types:
  small: { running: "${hour}", stopped: "0.0013" }
  large: { running: "0.1234567", stopped: "0.01" }
`;

const settings = settingsOf('currency: EUR\n');

function costText(list: PriceList, text: string, by: Grouping): string {
  const estate = estateOf(text);
  const cost = valueIn(priceEstate(estate, list, settings, today));
  const overview = { on: today, list, estate, settings, cost, by, sums: costBy(cost, estate, by) };
  return reportCost(overview, 'text', wide);
}

/** The rows of the only table that ends in an amount. */
const rowsOf = (text: string): readonly (readonly string[])[] =>
  text
    .split('\n')
    .filter((line) => /^ {2}.* \d+\.\d\d$/.test(line))
    .map((line) => line.replace(/^ {2}/, '').split(/ {2,}/));

/** Redoes `1.50 + ≈1862.6 GiB × 0.1, billed as ...`. */
function redone(arithmetic: string): Money {
  const [terms = ''] = arithmetic.split(',');
  return sumMoney(
    terms.split(' + ').map((term) => {
      const product = /^≈?(\d+(?:\.\d+)?) (?:GiB|GB|h) × (\d+(?:\.\d+)?)$/.exec(term);
      return product === null ? money(term) : money(money(product[1] ?? '').times(product[2] ?? ''));
    }),
  );
}

describe('arithmetic as printed', () => {
  it('2 TB at 0.1 a GiB are shown in GiB, with as many digits as the result wants', () => {
    const list = valueIn(
      readPriceList(
        documentOf(
          'from: 2026-01-01\ncurrency: EUR\ntiers:\n  bulk: { rate: "0.1", per: GiB-month }\n',
          'prices/2026.yaml',
        ),
      ),
    );
    const text = costText(list, 'volumes:\n  v0: { size: 2 TB, tier: bulk }\n', 'volume');
    expect(text).toMatch(/≈1862\.6 GiB × 0\.1, unattached +186\.26$/m);
  });

  it('comes out, for every volume and server at any rate', () => {
    fc.assert(
      fc.property(fc.array(volume, { maxLength: 6 }), prices, (volumes, rates) => {
        const list = valueIn(readPriceList(documentOf(listText(rates), 'prices/2026.yaml')));
        const rows = rowsOf(costText(list, files(volumes), 'volume'));
        expect(rows.length).toBe(volumes.length + 3);
        for (const [name, , arithmetic = '', amount] of rows)
          expect(showMoney(redone(arithmetic), 'EUR'), `${name}: ${arithmetic}`).toBe(amount);
      }),
    );
  });
});

describe('sums as printed', () => {
  it('are the sums of their parts, or it is said that amounts are rounded', () => {
    fc.assert(
      fc.property(
        fc.array(volume, { maxLength: 6 }),
        prices,
        fc.constantFrom<Grouping>('team', 'site', 'tier', 'server', 'volume'),
        (volumes, rates, by) => {
          const list = valueIn(readPriceList(documentOf(listText(rates), 'prices/2026.yaml')));
          const text = costText(list, files(volumes), by);
          const total = /^The estate costs (\d+\.\d\d) EUR/.exec(text)?.[1] ?? '';
          const lines = text.split('\n').filter((line) => / \d+\.\d\d$/.test(line));
          const tops = lines.filter((line) => /^ {2}\S/.test(line));
          const amount = (line: string): Money => money(/(\d+\.\d\d)$/.exec(line)?.[1] ?? '');
          let comesOut = sumMoney(tops.map(amount)).eq(money(total));
          if (by === 'server') {
            let below = noMoney;
            for (const line of lines.toReversed()) {
              if (/^ {4}\S/.test(line)) below = sumMoney([below, amount(line)]);
              else {
                comesOut &&= below.eq(amount(line));
                below = noMoney;
              }
            }
          }
          expect(text.includes(note)).toBe(!comesOut);
        },
      ),
    );
  });

  it('and so are the differences and the causes of a change', async () => {
    const pair = fc.tuple(
      fc.array(volume, { maxLength: 4 }),
      fc.array(volume, { maxLength: 4 }),
      fc.boolean(),
    );
    await fc.assert(
      fc.asyncProperty(pair, prices, async ([before, after, stopped], rates) => {
        const judgement = await judged(
          { 'prices/2026.yaml': listText(rates), 'storage/imagery.yaml': files(before) },
          { 'storage/imagery.yaml': files(after, stopped) },
        );
        const text = reportText(judgement, wide).replace(/\s+/g, ' ');
        const line = /(\d+\.\d\d) EUR a month on main, (\d+\.\d\d) EUR after the merge: (\S+) EUR/.exec(text);
        if (line === null) return;
        const shown = (part: string): Money => money(part.replace('+', ''));
        const [, main = '', head = '', difference = ''] = line;
        const causes = [...text.matchAll(/\(([+-]?\d+\.\d\d) EUR\)/g)].map(([, each = '']) => shown(each));
        const hidden = /\(under 0\.01 EUR (?:more|less)\)/.test(text);
        const comesOut =
          /^[+-]?\d/.test(difference) &&
          shown(head).minus(shown(main)).eq(shown(difference)) &&
          sumMoney(causes).eq(shown(difference)) &&
          !hidden;
        if (!comesOut) expect(text.includes(note) || hidden).toBe(true);
      }),
      { numRuns: 25 },
    );
  });
});

describe('a limit, what is spent of it and what is left of it', () => {
  it('never contradict one another as they are printed', () => {
    const amount = fc
      .integer({ min: 0, max: 3_000_000 })
      .map((tenThousandths) => money(`${tenThousandths}e-4`));
    const near = fc
      .tuple(fc.integer({ min: 0, max: 30_000 }), fc.integer({ min: -200, max: 200 }))
      .map(
        ([hundredths, off]) =>
          [money(`${hundredths}e-2`), money(`${hundredths}e-2`).plus(off / 10_000)] as const,
      );
    fc.assert(
      fc.property(fc.oneof(fc.tuple(amount, amount), near), ([limit, plain]) => {
        const spent = money(plain);
        const left = showRemaining(limit, spent, 'EUR');
        const [shownLimit, shownSpent] = [limit, spent].map((each) => money(showMoney(each, 'EUR')));
        if (shownLimit === undefined || shownSpent === undefined) throw new Error('nothing shown');
        const apart = shownLimit.minus(shownSpent);
        expect(left.startsWith('over by ')).toBe(spent.gt(limit));
        const printed = /(\d+\.\d\d) EUR$/.exec(left)?.[1];
        if (left === 'none' || left.includes('under')) expect(apart.isZero()).toBe(true);
        else expect(printed).toBe(apart.abs().toFixed(2));
      }),
    );
  });
});

describe('the columns of headroom', () => {
  const gibs = fc
    .tuple(fc.integer({ min: 1, max: 500_000 }), fc.constantFrom('MiB', 'MB', 'GiB'))
    .map(([count, unit]) => `${unit === 'GiB' ? Math.ceil(count / 1000) : count + 600} ${unit}`);
  const system = fc.record({ size: gibs, type: fc.constantFrom('ext4', 'xfs', 'btrfs') });

  it('add up in every row', () => {
    fc.assert(
      fc.property(
        fc.array(gibs, { minLength: 1, maxLength: 4 }),
        fc.array(system, { maxLength: 3 }),
        (sizes, systems) => {
          const estate = estateOf(`volumes:
${sizes.map((size, index) => `  v${index}: { size: ${size}, tier: bulk }`).join('\n')}
volume-groups:
  plates:
    members: [${sizes.map((_, index) => `v${index}`).join(', ')}]
    file-systems: { ${systems.map(({ size, type }, index) => `/p${index}: { size: ${size}, type: ${type} }`).join(', ')} }
`);
          const overview = {
            estate,
            rooms: [],
            accounts: layersOf(estate),
            idle: [],
            currency: 'EUR',
            on: today,
          };
          const text = reportHeadroom(overview, 'text', wide);
          const figure = (cell: string): Money =>
            money(cell.startsWith('over by ') ? `-${cell.slice('over by '.length)}` : cell);
          const rows = text.split('\n').filter((line) => /^ {2}plates .*\d\.\d\d/.test(line));
          const [first = '', ...devices] = rows.map((row) => row.trim());
          const [, bought = '', ...kinds] = first.split(/ {2,}/);
          expect(sumMoney(kinds.map(figure)).toFixed(2)).toBe(bought);
          const allocated = devices.map((row) => {
            const [, , whole = '', ...parts] = row.split(/ {2,}/);
            if (!row.includes('undetermined')) expect(sumMoney(parts.map(figure)).toFixed(2)).toBe(whole);
            return figure(whole);
          });
          expect(devices.length).toBe(systems.length);
          expect(sumMoney(allocated).toFixed(2)).toBe(kinds[1]);
        },
      ),
    );
  });
});
