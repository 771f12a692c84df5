import { describe, expect, it } from 'vitest';
import { readEstatePart } from '../../src/estate/part.ts';
import { readSettings } from '../../src/estate/settings.ts';
import { readRulePack } from '../../src/policy/pack.ts';
import { readWaivers } from '../../src/policy/waiver.ts';
import { readPriceList } from '../../src/price/price-list.ts';
import { documentOf, line, problemsOf } from '../estate/builder.ts';

const estate = (text: string) => problemsOf(readEstatePart(documentOf(text, 'storage/imagery.yaml')));
const prices = (text: string) => problemsOf(readPriceList(documentOf(text, 'prices/2026.yaml')));
const pack = (text: string) => problemsOf(readRulePack(documentOf(text, 'policies/storage.yaml')));
const settings = (text: string) => problemsOf(readSettings(documentOf(text, 'ullage.yaml')));
const waivers = (text: string) => problemsOf(readWaivers(documentOf(text, 'waivers/2026.yaml')));

describe('a slip in an estate file is found where it stands', () => {
  it('an unknown key, with the nearest known one offered', () => {
    const [problem] = estate('volumes:\n  plates-1: { sise: 40 GiB, tier: bulk, size: 40 GiB }\n');
    expect(problem && line(problem)).toBe(
      'storage/imagery.yaml:2:15: sise is not a key of plates-1 of volumes',
    );
    expect(problem?.advice).toContain('Did you mean size?');
    expect(problem?.excerpt).toBe('  plates-1: { sise: 40 GiB, tier: bulk, size: 40 GiB }');
  });

  it('an unknown key that resembles none, with the known ones listed and none guessed', () => {
    const [problem] = estate('widgets: {}\n');
    expect(problem?.advice).not.toContain('Did you mean');
    expect(problem?.advice).toContain('volumes');
  });

  it.each([
    ['volume: { plates-1: { size: 40 GiB, tier: bulk } }', 'volumes', 'volumes: { plates-1:'],
    ['volume: { size: 40 GiB, tier: bulk }', 'volumes', 'volumes: { plates-1:'],
    ['server: { scanner: { guest: linux } }', 'servers', 'servers: {'],
    ['attachment: [{ volume: plates-1, server: scanner }]', 'attachments', 'attachments: ['],
    ['volume-group: { plates: { members: [plates-1] } }', 'volume-groups', 'volume-groups: {'],
    ['volume-groups: { plates: { member: [plates-1] } }', 'members', 'members: ['],
    [
      'volumes: { a: { size: 1 GiB, tier: bulk, file-systems: { mount: /a, type: xfs } } }',
      'file-system',
      'file-system: {',
    ],
  ])('one word for many, or many for one, is offered the other: %s', (text, meant, example) => {
    const [problem] = estate(`${text}\n`);
    expect(problem?.advice).toMatch(
      new RegExp(`^Did you mean ${meant}\\? Write it as in .${example.replace(/[[{]/g, '\\$&')}`),
    );
  });

  it('one word for many that names a thing belongs where such names are', () => {
    expect(estate('volume: plates-1\n')[0]?.advice).toMatch(/^volume belongs in an entry of `attachments:`/);
  });

  it.each([
    ['attachments:\n', 'attachments has no value', 'attachments: [ {', true],
    ['volumes:\n', 'volumes has no value', 'volumes: {', true],
    ['volumes:\n  a:\n', 'a of volumes has no value', 'a: { size', false],
    ['volumes: { a: { size: , tier: bulk } }\n', 'size of a has no value', 'with its unit', false],
    ['volume-groups: { g: { members: } }\n', 'members of g has no value', 'members: [', false],
    ['volume-groups: { g: { members: [] } }\n', 'members of g is empty', 'members: [', false],
    [
      'volumes: { a: { size: 1 GiB, tier: bulk, reason: "" } }\n',
      'reason of a has no value',
      'say why',
      true,
    ],
    ['team:\n', 'team has no value', 'A name', true],
  ])('a key with nothing behind it, and whether it can be left out: %j', (text, message, advice, canGo) => {
    const [problem] = estate(text);
    expect(problem?.message).toBe(message);
    expect(problem?.advice).toContain(advice);
    expect(problem?.advice.includes('Or remove the key, which can be left out.')).toBe(canGo);
  });

  it.each([
    ['servers: { a: { iops: -1 } }\n', 'iops of a is -1, which is less than 0'],
    ['servers: { a: { guest: a b } }\n', 'guest of a is a b, which is not written as it has to be'],
  ])('a value beyond its bound: %j', (text, message) => {
    expect(estate(text)[0]?.message).toBe(message);
  });

  it('a size without a unit', () => {
    const [problem, ...others] = estate('volumes:\n  plates-1: { size: 50, tier: bulk }\n');
    expect(others).toEqual([]);
    expect(problem && line(problem)).toBe(
      'storage/imagery.yaml:2:21: size of plates-1 is 50, which is not a size',
    );
    expect(problem?.advice).toBe('Write 50 GiB or 50 GB.');
  });

  it.each([
    ['40G', 'Did you mean 40 GiB or 40 GB?'],
    ['40 gib', 'Did you mean 40 GiB or 40 GB?'],
    ['40GIB', 'Did you mean 40 GiB or 40 GB?'],
    ['1.5t', 'Did you mean 1.5 TiB or 1.5 TB?'],
    ['512 K', 'Did you mean 512 KiB or 512 kB?'],
    ['1.50', 'Write 1.50 GiB or 1.50 GB.'],
  ])('%s for a size is offered in both units that it may mean', (size, advice) => {
    expect(estate(`volumes:\n  plates-1: { size: ${size}, tier: bulk }\n`)[0]?.advice).toBe(advice);
  });

  it('what is offered for a size is one', () => {
    for (const size of ['50', '40G', '40 gib', '512 k', '1.5 pb', '7 MIB']) {
      const [problem] = estate(`volumes:\n  a: { size: "${size}", tier: bulk }\n`);
      const offered = problem?.advice.match(/[0-9.]+ [A-Za-z]+(?=[ .?])/g) ?? [];
      expect(offered).toHaveLength(2);
      for (const each of offered) {
        expect(estate(`volumes:\n  a: { size: ${each}, tier: bulk }\n`)).toEqual([]);
      }
    }
  });

  it('a misspelt key is one thing to put right, not a missing key too', () => {
    expect(estate('volumes:\n  plates-1: { size: 40 GiB, teir: bulk }\n').map(line)).toEqual([
      'storage/imagery.yaml:2:29: teir is not a key of plates-1 of volumes',
    ]);
    expect(estate('volumes:\n  plates-1: { szie: 40 GiB }\n').map(({ message }) => message)).toEqual([
      'plates-1 of volumes has no tier',
      'szie is not a key of plates-1 of volumes',
    ]);
    expect(
      prices('from: 2026-01-01\ncurrency: EUR\ntiers:\n  a: { per: GiB-month, raet: "1" }\n').map(
        ({ message }) => message,
      ),
    ).toEqual(['raet is not a key of a of tiers']);
  });

  it('an unknown key that resembles nothing missing hides nothing', () => {
    expect(estate('volumes:\n  a: { size: 1 GiB, colour: red }\n').map(({ message }) => message)).toEqual([
      'a of volumes has no tier',
      'colour is not a key of a of volumes',
    ]);
  });

  it('a missing key is told with what to write, and what it is for', () => {
    expect(estate('volume-groups:\n  plates: { extent: 4 MiB }\n')[0]).toMatchObject({
      message: 'plates of volume-groups has no members',
      advice: 'Add `members: …`. The volumes in the group.',
    });
    expect(prices('from: 2026-01-01\ncurrency: EUR\ntiers:\n  a: { rate: "1" }\n')[0]?.advice).toBe(
      'Add `per: …`, one of GiB-month, GB-month. The unit of capacity that the rate is for.',
    );
  });

  it('a size in a unit that no standard has', () => {
    for (const size of ['50 gib', '50 Gib', '50G', '50 KB', '5e1 GiB', '-5 GiB', '.5 GiB', '50  GiB', ' ']) {
      expect(estate(`volumes:\n  plates-1: { size: "${size}", tier: bulk }\n`).map(line).join()).toContain(
        'is not a size',
      );
    }
  });

  it('a size of nothing, and one that is not a whole number of bytes', () => {
    expect(estate('volumes:\n  a: { size: 0 GiB, tier: bulk }\n').map(line)).toEqual([
      'storage/imagery.yaml:2:14: a size cannot be zero',
    ]);
    expect(estate('volumes:\n  a: { size: 0.0001 kB, tier: bulk }\n').map(line)).toEqual([
      'storage/imagery.yaml:2:14: 0.0001 kB is not a whole number of bytes',
    ]);
  });

  it('what a volume must have, and has not', () => {
    expect(estate('volumes:\n  plates-1: { tier: bulk }\n').map(line)).toEqual([
      'storage/imagery.yaml:2:3: plates-1 of volumes has no size',
    ]);
  });

  it('a name that cannot be one, such as __proto__ or one that steers a terminal', () => {
    const [proto] = estate('volumes:\n  __proto__: { size: 1 GiB, tier: bulk }\n');
    expect(proto && line(proto)).toBe('storage/imagery.yaml:2:3: __proto__ cannot be a name in volumes');
    expect(estate('volumes:\n  "a\\e[31m": { size: 1 GiB, tier: bulk }\n')).toHaveLength(1);
    expect(estate('volumes:\n  "a\\nb": { size: 1 GiB, tier: bulk }\n')[0]?.message).not.toContain('\n');
  });

  it('takes a name for a name also where it is all digits', () => {
    expect(estate('volumes:\n  10: { size: 5, tier: bulk }\n').map(line)).toEqual([
      'storage/imagery.yaml:2:15: size of 10 is 5, which is not a size',
    ]);
  });

  it('a date that the calendar has not', () => {
    expect(
      estate('volumes:\n  a: { size: 1 GiB, tier: bulk, retain-until: 2026-02-30 }\n').map(line),
    ).toEqual(['storage/imagery.yaml:2:47: 2026-02-30 is not a day in the calendar']);
  });

  it('a member named twice, and layouts that have too few members', () => {
    expect(estate('volume-groups:\n  plates: { members: [a, a] }\n').map(line)).toEqual([
      'storage/imagery.yaml:2:26: a is named twice among the members of plates',
    ]);
    expect(
      estate('volume-groups:\n  plates: { members: [a, b], layout: striped, stripes: 3 }\n')[0]?.message,
    ).toContain('needs at least 3 members, and there are 2');
    expect(estate('volume-groups:\n  plates: { members: [a], layout: mirrored }\n')[0]?.message).toContain(
      '2 copies need at least 2 members, and there are 1',
    );
  });

  it('an extent that no volume manager takes, a slip of the unit as a rule', () => {
    expect(estate('volume-groups:\n  plates: { members: [a], extent: 4 MB }\n')).toHaveLength(1);
    expect(estate('volume-groups:\n  plates: { members: [a], extent: 4 MiB }\n')).toEqual([]);
  });

  it('several at once, in the order of the file', () => {
    const found = estate(`team: imagery
volumes:
  plates-1: { size: 50, tier: bulk }
  plates-2: { siez: 40 GiB, tier: bulk, size: 40 GiB }
servers:
  plate-scanner: { power: runing }
attachments:
  - { volume: plates-1 }
`);
    expect(found.map(({ place }) => place?.line)).toEqual([3, 4, 6, 8]);
    expect(found[2]?.advice).toContain('Did you mean running?');
  });
});

describe('a slip in a price list', () => {
  it('an amount without quotes, which a number would round', () => {
    const [problem] = prices(
      'from: 2026-01-01\ncurrency: EUR\ntiers:\n  bulk: { rate: 0.045, per: GiB-month }\n',
    );
    expect(problem && line(problem)).toBe(
      'prices/2026.yaml:4:17: rate of bulk is 0.045, which is not an amount',
    );
    expect(problem?.advice).toBe('Write it in quotes: "0.045".');
  });

  it('an amount keeps the cents it was written with', () => {
    const flat = (amount: string) =>
      prices(
        `from: 2026-01-01\ncurrency: EUR\ntiers:\n  a: { rate: "1", per: GiB-month, flat: ${amount} }\n`,
      )[0]?.advice;
    expect(flat('1.50')).toBe('Write it in quotes: "1.50".');
    // In quotes it would be no amount either.
    expect(flat('-1.50')).toContain('An amount of money as a decimal in quotes');
  });

  it('a rate and bands together, or neither', () => {
    const tier = (text: string) =>
      prices(`from: 2026-01-01\ncurrency: EUR\ntiers:\n  bulk: { per: GiB-month${text} }\n`).map(line);
    expect(tier('')).toHaveLength(1);
    expect(tier(', rate: "1", bands: [ { rate: "1" } ]')).toHaveLength(1);
    expect(tier(', rate: "1"')).toEqual([]);
  });

  it('bands that do not rise, or have no end before the last', () => {
    const bands = (text: string) =>
      prices(`from: 2026-01-01\ncurrency: EUR\ntiers:\n  brisk: { per: GiB-month, bands: [${text}] }\n`).map(
        ({ message }) => message,
      );
    expect(bands('{ rate: "1" }, { rate: "2" }')).toEqual(['band 1 of the tier brisk has no end']);
    expect(bands('{ up-to: 2 TiB, rate: "1" }, { up-to: 2 TiB, rate: "2" }')).toEqual([
      'band 2 of the tier brisk ends before the one above it',
    ]);
  });

  it('a step of nothing', () => {
    expect(
      prices('from: 2026-01-01\ncurrency: EUR\ntiers:\n  a: { per: GB-month, rate: "1", step: 0 GB }\n'),
    ).toHaveLength(1);
  });
});

describe('a slip in a rule pack', () => {
  it('a rule that is not there, with the nearest offered', () => {
    const [problem] = pack('rules:\n  - { rule: no-shrinks }\n');
    expect(problem && line(problem)).toBe('policies/storage.yaml:2:13: there is no rule no-shrinks');
    expect(problem?.advice).toContain('Did you mean no-shrink?');
  });

  it('an entry without a rule, and one that has nothing to go by', () => {
    expect(pack('rules:\n  - { level: error }\n').map(line)).toEqual([
      'policies/storage.yaml:2:5: item 1 of rules names no rule',
    ]);
    expect(pack('rules:\n  - { rule: growth-step }\n')).toHaveLength(1);
    expect(pack('rules:\n  - { rule: growth-step, level: error }\n').map(line)).toEqual([
      'policies/storage.yaml:2:13: the rule growth-step has none of the parameters it needs',
    ]);
    expect(pack('rules:\n  - { rule: max-monthly-spend }\n')).toHaveLength(1);
  });

  it('a parameter of another rule, a limit that is a number, a day that is none', () => {
    expect(pack('rules:\n  - { rule: no-shrink, times: 4 }\n').map(line).join()).toContain(
      'times is not a key of',
    );
    expect(pack('rules:\n  - { rule: max-monthly-spend, limit: 120.00 }\n')[0]?.advice).toContain(
      'in quotes',
    );
    expect(pack('rules:\n  - { rule: max-monthly-spend, limit: "1", until: 2026-02-29 }\n')[0]?.message).toBe(
      '2026-02-29 is not a day in the calendar',
    );
  });
});

describe('a slip in the settings and in waivers', () => {
  it('a currency that is none', () => {
    expect(settings('currency: XQQ\n').map(line)).toEqual(['ullage.yaml:1:11: XQQ is not a currency in use']);
  });

  it('a quota that is not a whole number of bytes is refused, and does not become no quota', () => {
    expect(
      settings('currency: EUR\nsites:\n  north-quay: { quota: { size: 0.0001 kB } }\n').map(line),
    ).toEqual(['ullage.yaml:3:32: 0.0001 kB is not a whole number of bytes']);
  });

  it('a folder out of the repository', () => {
    for (const folder of ['/etc', '..', 'storage/../..', 'a/./b', 'a\\b', 'storage/']) {
      expect(settings(`currency: EUR\npaths: { storage: '${folder}' }\n`)).toHaveLength(1);
    }
  });

  it('a waiver that ends before it begins, or that nobody signed', () => {
    const waiver = (dates: string, more = ', approved-by: head of imagery') =>
      waivers(`waivers:\n  - { rule: growth-step, subject: a, reason: b, ${dates}${more} }\n`).map(
        ({ message }) => message,
      );
    expect(waiver('from: 2026-06-01, until: 2026-05-01')).toEqual([
      'the waiver ends on 2026-05-01, before it begins on 2026-06-01',
    ]);
    expect(waiver('from: 2026-05-01, until: 2026-05-01')).toEqual([]);
    expect(waiver('from: 2026-05-01, until: 2026-06-01', '')).toEqual([
      'item 1 of waivers has no approved-by',
    ]);
    expect(waiver('from: 2026-05-01, until: 2026-06-01', ', approved-by: " "')).toHaveLength(1);
  });
});

describe('a list that must not name a thing twice', () => {
  it('says which, at its place', () => {
    expect(settings('currency: EUR\nteams: [imagery, ledger, imagery]\n').map(line)).toEqual([
      'ullage.yaml:2:26: teams names imagery twice',
    ]);
  });

  it('takes mappings for the mistake that they are, whatever their keys are called', () => {
    expect(settings('currency: EUR\nteams: [ { a: 1 }, { b: 2 } ]\n')).toHaveLength(2);
    expect(settings('currency: EUR\nteams: [ { valueOf: 1 }, { valueOf: 2 } ]\n')).toHaveLength(2);
  });
});
