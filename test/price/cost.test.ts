import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { adoptedIn } from '../../src/change/adoption.ts';
import { compareEstates } from '../../src/change/compare.ts';
import { touchedBy } from '../../src/change/touched.ts';
import type { Settings } from '../../src/estate/settings.ts';
import { parseSize } from '../../src/estate/size.ts';
import { costBy, type EstateCost, priceEstate, repriceEstate } from '../../src/price/cost.ts';
import { costDelta } from '../../src/price/delta.ts';
import { capacityPrice } from '../../src/price/line.ts';
import { addMoney, money, noMoney, showMoney } from '../../src/price/money.ts';
import {
  gatherPriceLists,
  listInForce,
  type PriceList,
  readPriceList,
  type Tier,
} from '../../src/price/price-list.ts';
import {
  documentOf,
  estateOf,
  gannetPoint,
  line,
  problemsOf,
  settingsOf,
  today,
  valueIn,
} from '../estate/builder.ts';
import { change, filesOf } from '../estate/random.ts';

const listOf = (text: string, file = 'prices/2026.yaml'): PriceList =>
  valueIn(readPriceList(documentOf(text, file)));
const usual = listOf(gannetPoint['prices/2026.yaml'] ?? '');

const tier = (text: string): Tier => {
  const [found] = listOf(`from: 2026-01-01\ncurrency: EUR\ntiers:\n  t: { ${text} }\n`).tiers.values();
  if (found === undefined) throw new Error('no tier');
  return found;
};

/** What a size costs a month in a tier, exactly. */
const price = (declared: string, size: string): string => {
  const parsed = parseSize(size);
  if (typeof parsed !== 'bigint') throw new Error(parsed.why);
  return capacityPrice(tier(declared), parsed).toFixed();
};

const costOf = (text: string, { list = usual, settings = settingsOf(), day = today } = {}): EstateCost =>
  valueIn(priceEstate(estateOf(text), list, settings, day));

describe('the price of capacity', () => {
  it('is by the GiB or by the GB, which differ by a fourteenth', () => {
    expect(price('per: GiB-month, rate: "0.10"', '50 GiB')).toBe('5');
    expect(price('per: GB-month, rate: "0.10"', '50 GB')).toBe('5');
    expect(price('per: GB-month, rate: "0.10"', '50 GiB')).toBe('5.36870912');
    expect(price('per: GiB-month, rate: "0.10"', '50 GB')).toBe('4.656612873077392578125');
  });

  const banded =
    'per: GiB-month, bands: [ { up-to: 1 TiB, rate: "0.25" }, { up-to: 2 TiB, rate: "0.22" }, { rate: "0.20" } ]';

  it.each([
    ['1 GiB', '0.25'],
    ['1023 GiB', '255.75'],
    ['1024 GiB', '256'],
    ['1025 GiB', '256.22'],
    ['2048 GiB', '481.28'],
    ['2049 GiB', '481.48'],
  ])('in bands, %s costs %s: each rate holds for what falls into its band', (size, cost) => {
    expect(price(banded, size)).toBe(cost);
  });

  it('goes on at the last rate where the last band has an end: nothing is free because a list ends', () => {
    expect(price('per: GiB-month, bands: [ { up-to: 1 TiB, rate: "0.25" } ]', '2 TiB')).toBe('512');
  });

  it('has a flat fee a volume on top', () => {
    expect(price('per: GiB-month, rate: "0.25", flat: "1.50"', '4 GiB')).toBe('2.5');
  });

  it('bills a small volume as if it had the least size, bands and all', () => {
    const least = 'per: GiB-month, rate: "0.10", minimum-billed: 10 GiB';
    expect(price(least, '1 GiB')).toBe('1');
    expect(price(least, '10 GiB')).toBe('1');
    expect(price(least, '11 GiB')).toBe('1.1');
  });

  it('is exact down to one byte, at the smallest rate a list can write', () => {
    expect(price('per: GB-month, rate: "0.000000000000001"', '1 kB')).toBe('0.000000000000000000001');
  });

  it('never falls when a volume grows', () => {
    const gib = fc.integer({ min: 1, max: 5000 });
    fc.assert(
      fc.property(gib, gib, (a, b) => {
        const [small, large] = a < b ? [a, b] : [b, a];
        expect(money(price(banded, `${large} GiB`)).gte(money(price(banded, `${small} GiB`)))).toBe(true);
      }),
    );
  });
});

describe('the price of a server', () => {
  const server = (rest: string): string => `servers:\n  scanner: { ${rest} }\n`;
  const calendar = settingsOf('currency: EUR\nmonth: calendar\n');

  /** 8,760 h / 12 = 730 h: common practice, without a source. */
  it('is by the hour, 730 hours a month', () => {
    expect(costOf(server('type: small')).total.toFixed()).toBe('22.63');
  });

  it('is billed while it is stopped, too, at its own rate', () => {
    expect(costOf(server('type: small, power: stopped')).total.toFixed()).toBe('2.92');
  });

  it.each([
    ['2026-02-15', 672],
    ['2028-02-15', 696],
    ['2026-04-30', 720],
    ['2026-12-31', 744],
  ])('on %s a calendar month has %i hours', (day, hours) => {
    const { total } = costOf(server('type: small'), { settings: calendar, day });
    expect(total.eq(money('0.031').times(hours))).toBe(true);
  });

  it('is nothing where it names no type', () => {
    expect(costOf(server('')).total.toFixed()).toBe('0');
  });
});

describe('an estate', () => {
  it('pays for a detached volume, and shows it as such', () => {
    const { volumes } = costOf('volumes:\n  master: { size: 100 GiB, tier: bulk }\n');
    expect(volumes.get('master')).toMatchObject({ detached: true });
    expect(volumes.get('master')?.monthly.toFixed()).toBe('4.5');
  });

  it('names every tier and server type that the list does not price, with the nearest offered', () => {
    const outcome = priceEstate(
      estateOf('servers:\n  s: { type: smal }\nvolumes:\n  v: { size: 1 GiB, tier: bluk }\n'),
      usual,
      settingsOf(),
      today,
    );
    const found = problemsOf(outcome);
    expect(found.map(line)).toEqual([
      'storage/imagery.yaml:4:21: the volume v names the tier bluk, which the price list in force (prices/2026.yaml) does not price',
      'storage/imagery.yaml:2:8: the server s names the server type smal, which the price list in force (prices/2026.yaml) does not price',
    ]);
    expect(found[0]?.advice).toContain('Did you mean bulk?');
  });

  it('costs the same by team, by site, by tier, by server and by volume, in any order of its files', () => {
    fc.assert(
      fc.property(change, ([model]) => {
        const estate = estateOf(filesOf(model));
        const cost = valueIn(priceEstate(estate, usual, settingsOf(), today));
        const shuffled = valueIn(
          priceEstate(estateOf(filesOf(model, { backwards: true })), usual, settingsOf(), today),
        );
        expect(shuffled.total.eq(cost.total)).toBe(true);
        for (const grouping of ['team', 'site', 'tier', 'server', 'volume'] as const) {
          const sum = [...costBy(cost, estate, grouping).values()].reduce(addMoney, noMoney);
          expect(sum.eq(cost.total)).toBe(true);
        }
      }),
      { numRuns: 100 },
    );
  });
});

describe('price lists beside each other', () => {
  const dated = (from: string, file: string, currency = 'EUR'): PriceList =>
    listOf(`from: ${from}\ncurrency: ${currency}\n`, file);

  it('the newest that has begun is in force, on its first day already', () => {
    const lists = valueIn(
      gatherPriceLists([dated('2026-01-01', 'a'), dated('2027-01-01', 'b')], settingsOf()),
    );
    expect(listInForce(lists, '2026-12-31')?.from).toBe('2026-01-01');
    expect(listInForce(lists, '2027-01-01')?.from).toBe('2027-01-01');
    expect(listInForce(lists, '2025-12-31')).toBeUndefined();
  });

  it('two from one day, or one in another currency, are refused', () => {
    const found = problemsOf(
      gatherPriceLists(
        [dated('2026-01-01', 'a'), dated('2026-01-01', 'b'), dated('2027-01-01', 'c', 'USD')],
        settingsOf(),
      ),
    );
    expect(found.map(({ place }) => place?.file).sort()).toEqual(['b', 'c']);
  });
});

describe('the difference between two costs', () => {
  const dearer = listOf(
    (gannetPoint['prices/2026.yaml'] ?? '').replace('"0.045"', '"0.055"').replace('"0.031"', '"0.04"'),
  );

  function delta(
    before: string | Record<string, string>,
    after: string | Record<string, string>,
    list = usual,
    old = usual,
  ) {
    const settings: Settings = settingsOf();
    const [base, head] = [estateOf(before), estateOf(after)];
    const cost = (estate: typeof base, by: PriceList) => valueIn(priceEstate(estate, by, settings, today));
    const { changes, files, renames } = compareEstates(base, head);
    return costDelta(
      { estate: base, list: old, cost: cost(base, old) },
      { estate: head, list, cost: cost(head, list) },
      { atBasePrices: list === old ? undefined : cost(head, old) },
      renames,
      touchedBy(base, head, files),
      adoptedIn(changes),
    );
  }

  const causes = (found: ReturnType<typeof delta>) =>
    Object.fromEntries(found.causes.map(({ cause, difference }) => [cause, difference?.toFixed()]));

  it('is told apart by quantity, tier and price: 40 GiB of bulk become 60 GiB of steady at new prices', () => {
    const found = delta(
      'volumes:\n  a: { size: 40 GiB, tier: bulk }\n  b: { size: 100 GiB, tier: bulk }\n',
      'volumes:\n  a: { size: 60 GiB, tier: steady }\n  b: { size: 100 GiB, tier: bulk }\n',
      dearer,
    );
    expect(causes(found)).toEqual({
      quantity: '0.9',
      adoption: '0',
      'tier-move': '3.3',
      'price-change': '1',
      'month-change': '0',
    });
    expect(found.difference?.toFixed()).toBe('5.2');
  });

  it('is told apart for a server by the same rule: stopped for its new hours, then moved to another type', () => {
    const types = listOf(
      `${gannetPoint['prices/2026.yaml'] ?? ''}  large: { running: "0.11", stopped: "0.01" }\n`,
    );
    const found = delta(
      'servers:\n  scanner: { type: small, power: running }\n',
      'servers:\n  scanner: { type: large, power: stopped }\n',
      types,
      types,
    );
    // 730 h x (0.004 - 0.031) while it is small, then 730 h x (0.01 - 0.004) while it is stopped.
    expect(causes(found)).toEqual({
      quantity: '-19.71',
      adoption: '0',
      'tier-move': '4.38',
      'price-change': '0',
      'month-change': '0',
    });
  });

  it('is told apart by one rule for servers and volumes, whatever changes at once', () => {
    const rate = fc
      .integer({ min: 0, max: 500 })
      .map((thousandths) => `0.${`${thousandths}`.padStart(3, '0')}`);
    const rates = fc.record({ a: rate, b: rate, aStopped: rate, bStopped: rate });
    const lists = ({
      a,
      b,
      aStopped,
      bStopped,
    }: {
      a: string;
      b: string;
      aStopped: string;
      bStopped: string;
    }) =>
      listOf(
        `from: 2026-01-01\ncurrency: EUR\ntiers:\n  a: { rate: "${a}", per: GiB-month }\n  b: { rate: "${b}", per: GiB-month }\n` +
          `server-types:\n  a: { running: "${a}", stopped: "${aStopped}" }\n  b: { running: "${b}", stopped: "${bStopped}" }\n`,
      );
    const state = fc.record({
      type: fc.constantFrom('a', 'b'),
      power: fc.constantFrom('running', 'stopped'),
      tier: fc.constantFrom('a', 'b'),
      gib: fc.integer({ min: 1, max: 90 }),
    });
    type State = typeof state extends fc.Arbitrary<infer S> ? S : never;
    const text = ({ type, power, tier, gib }: State): string =>
      `servers:\n  s: { type: ${type}, power: ${power} }\nvolumes:\n  v: { tier: ${tier}, size: ${gib} GiB }\n`;
    fc.assert(
      fc.property(state, state, rates, rates, (before, after, old, fresh) => {
        const [oldList, newList] = [lists(old), lists(fresh)];
        const total = (of: State, list: PriceList) => costOf(text(of), { list }).total;
        // Each cause is the difference between two whole prices, one thing changed between them.
        const moved = { ...after, type: before.type, tier: before.tier };
        const found = delta(text(before), text(after), newList, oldList);
        expect(causes(found)).toEqual({
          quantity: total(moved, oldList).minus(total(before, oldList)).toFixed(),
          adoption: '0',
          'tier-move': total(after, oldList).minus(total(moved, oldList)).toFixed(),
          'price-change': total(after, newList).minus(total(after, oldList)).toFixed(),
          'month-change': '0',
        });
      }),
    );
  });

  it('is nothing for a rename', () => {
    const found = delta(
      'volumes:\n  a: { size: 40 GiB, tier: bulk }\n',
      'volumes:\n  b: { size: 40 GiB, tier: bulk, formerly: a }\n',
    );
    expect(causes(found)).toEqual({
      quantity: '0',
      adoption: '0',
      'tier-move': '0',
      'price-change': '0',
      'month-change': '0',
    });
  });

  it('passes from team to team where a volume does', () => {
    const owned = (team: string): string => `volumes:\n  a: { size: 100 GiB, tier: bulk, team: ${team} }\n`;
    const { teams, difference } = delta(owned('imagery'), owned('ledger'));
    expect(difference?.toFixed()).toBe('0');
    expect(
      teams.map(({ team, before, after }) => [team, showMoney(before, 'EUR'), showMoney(after, 'EUR')]),
    ).toEqual([
      ['imagery', '4.50', '0.00'],
      ['ledger', '0.00', '4.50'],
    ]);
  });

  const renamedNames = fc.uniqueArray(fc.constantFrom('s0', 's1', 'v0', 'v1', 'v2', 'g0'));

  it('is the sum of its causes, and of its teams, exactly', () => {
    fc.assert(
      fc.property(change, renamedNames, fc.boolean(), ([base, head], renamed, atNewPrices) => {
        const found = delta(
          filesOf(base),
          filesOf(head, { renamed: new Set(renamed) }),
          atNewPrices ? dearer : usual,
        );
        const sum = found.causes.reduce(
          (total, { difference }) => addMoney(total, difference ?? noMoney),
          noMoney,
        );
        expect(sum.toFixed()).toBe(found.difference?.toFixed());
        const teams = found.teams.reduce(
          (total, { before, after }) => total.plus(after).minus(before),
          money('0').plus(0),
        );
        expect(teams.toFixed()).toBe(found.difference?.toFixed());
      }),
      { numRuns: 150 },
    );
  });

  it('what is priced again after a change costs what it would cost priced from nothing', () => {
    fc.assert(
      fc.property(change, renamedNames, ([base, head], renamed) => {
        const settings = settingsOf();
        const [before, after] = [
          estateOf(filesOf(base)),
          estateOf(filesOf(head, { renamed: new Set(renamed) })),
        ];
        const cost = valueIn(priceEstate(before, usual, settings, today));
        const touched = touchedBy(before, after, compareEstates(before, after).files);
        const again = valueIn(repriceEstate(cost, after, touched, { list: usual, settings, day: today }));
        const fresh = valueIn(priceEstate(after, usual, settings, today));
        expect(again.total.toFixed()).toBe(fresh.total.toFixed());
        const flat = ({ volumes, servers }: EstateCost) =>
          [...volumes, ...servers]
            .map(([name, { kind, monthly }]) => `${kind} ${name} ${monthly.toFixed()} ${kind === 'volume'}`)
            .sort();
        expect(flat(again)).toEqual(flat(fresh));
        const detached = ({ volumes }: EstateCost) =>
          [...volumes.values()]
            .flatMap((each) => (each.kind === 'volume' && each.detached ? [each.volume.name] : []))
            .sort();
        expect(detached(again)).toEqual(detached(fresh));
      }),
      { numRuns: 150 },
    );
  });
});
