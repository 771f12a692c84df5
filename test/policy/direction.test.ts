import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { emptyEstate } from '../../src/estate/estate.ts';
import { parameterDirection } from '../../src/policy/changes/rules.ts';
import { comparePolicies } from '../../src/policy/direction.ts';
import { judge } from '../../src/policy/judge.ts';
import { gatherRules, readRulePack } from '../../src/policy/pack.ts';
import type { Policy } from '../../src/policy/policy.ts';
import type { Side } from '../../src/policy/revision.ts';
import { rules } from '../../src/rules/registry.ts';
import type { Parameter, Rule } from '../../src/rules/rule.ts';
import { plainProcedures } from '../../src/runbook/procedures.ts';
import {
  documentOf,
  estateOf,
  type Files,
  judged,
  pack,
  revisionOf,
  today,
  valueIn,
} from '../estate/builder.ts';
import { change, filesOf } from '../estate/random.ts';

const every: readonly Rule[] = Object.values(rules);
const parameters = every.flatMap((rule) =>
  Object.entries(rule.parameters).map(([name, parameter]) => ({
    what: `${name} of ${rule.name}`,
    parameter,
  })),
);

/** A lower and a higher value that the parameter's schema takes. As text, the higher ones come first. */
function values({ schema }: Parameter): readonly [unknown, unknown] {
  switch (schema.$ref) {
    case 'common.json#/$defs/size':
      return ['900 MiB', '1 GiB'];
    case 'common.json#/$defs/amount':
      return ['9.00', '10.00'];
    case 'common.json#/$defs/date':
      return ['2026-02-01', '2026-10-01'];
  }
  switch (schema.type) {
    case 'boolean':
      return [false, true];
    case 'array':
      return [['ext4'], ['ext4', 'btrfs']];
    case 'number':
      return [0.25, 0.5];
    case 'integer':
      return [9, 10];
    default:
      return ['a', 'b'];
  }
}

describe('which way a parameter loosens is said by its rule', () => {
  it.each(parameters)('$what', ({ parameter }) => {
    const [low, high] = values(parameter);
    const up = parameterDirection(parameter, low, high);
    const down = parameterDirection(parameter, high, low);
    switch (parameter.looser) {
      case 'higher':
      case 'longer':
      case 'true':
        expect([up, down]).toEqual(['looser', 'tighter']);
        break;
      case 'lower':
      case 'shorter':
      case 'false':
        expect([up, down]).toEqual(['tighter', 'looser']);
        break;
      case 'neither':
      case 'unknown':
        expect([up, down]).toEqual([parameter.looser, parameter.looser]);
        return;
    }
    expect(parameterDirection(parameter, low, low)).toBe('same');
    const [given, taken] = [
      parameterDirection(parameter, undefined, low),
      parameterDirection(parameter, low, undefined),
    ];
    if (parameter.absent === 'loosest') expect([given, taken]).toEqual(['tighter', 'looser']);
    if (parameter.absent === 'tightest') expect([given, taken]).toEqual(['looser', 'tighter']);
    if (parameter.absent === 'default') {
      expect(parameterDirection(parameter, undefined, parameter.schema.default)).toBe('same');
      expect(parameter.schema.default).toBeDefined();
    }
  });

  it('the same worth in other words is no change', () => {
    const { by } = rules['growth-step'].parameters;
    const { limit } = rules['max-monthly-spend'].parameters;
    expect(by && parameterDirection(by, '1 TiB', '1024 GiB')).toBe('same');
    expect(by && parameterDirection(by, '50 GiB', '50 GB')).toBe('tighter');
    expect(limit && parameterDirection(limit, '120', '120.00')).toBe('same');
  });

  it('a list that loses some and gains others cannot be told', () => {
    const types = rules['no-shrink'].parameters['allow-file-systems'];
    expect(types && parameterDirection(types, ['ext4'], ['btrfs'])).toBe('unknown');
  });
});

const base = {
  'storage/a.yaml': 'site: north-quay\nvolumes:\n  v: { size: 1 GiB, tier: bulk, team: imagery }\n',
};

/** What the gate lists when a branch changes files: direction, name, key. */
async function listed(before: Files, after: Files): Promise<readonly string[]> {
  const { policyChanges } = await judged({ ...base, ...before }, after);
  return policyChanges.map(
    ({ direction, name, key, from, to }) =>
      `${direction}: ${name}${key === undefined ? '' : ` ${key}`} (${from ?? 'none'} to ${to ?? 'none'})`,
  );
}

describe('a policy change is listed with its direction', () => {
  const limit = (amount: string, more = '') =>
    pack(`name: cap, rule: max-monthly-spend, limit: "${amount}"${more}`);

  it.each([
    ['a limit raised', limit('9.00'), limit('10.00'), ['looser: cap limit (9.00 to 10.00)']],
    ['a limit lowered', limit('10.00'), limit('9.00'), ['tighter: cap limit (10.00 to 9.00)']],
    ['the same limit in other words', limit('10'), limit('10.00'), []],
    [
      'a level lowered',
      limit('9.00'),
      limit('9.00', ', level: warning'),
      ['looser: cap level (error to warning)'],
    ],
    [
      'a limit that begins later',
      limit('9.00'),
      limit('9.00', ', from: 2027-01-01'),
      ['looser: cap from (none to 2027-01-01)'],
    ],
    [
      'a warning taken out',
      limit('9.00', ', warn-from: 0.8'),
      limit('9.00'),
      ['looser: cap warn-from (0.8 to none)'],
    ],
    [
      'a scope drawn narrower',
      limit('9.00'),
      limit('9.00', ', where: { teams: [imagery] }'),
      ['looser: cap where.teams (none to imagery)'],
    ],
    [
      'a scope drawn wider',
      limit('9.00', ', where: { teams: [a] }'),
      limit('9.00', ', where: { teams: [a, b] }'),
      ['tighter: cap where.teams (a to a, b)'],
    ],
    [
      'a scope for others',
      limit('9.00', ', where: { teams: [a] }'),
      limit('9.00', ', where: { teams: [b] }'),
      ['unknown: cap where.teams (a to b)'],
    ],
    [
      'a rule taken out',
      limit('9.00'),
      pack('rule: no-shrink'),
      ['looser: cap (max-monthly-spend to none)', 'tighter: no-shrink (none to no-shrink)'],
    ],
    [
      'another rule under the same name',
      limit('9.00'),
      pack('name: cap, rule: no-shrink'),
      ['unknown: cap rule (max-monthly-spend to no-shrink)'],
    ],
    [
      'an entry switched off',
      limit('9.00'),
      limit('9.00', ', enabled: false'),
      ['looser: cap (max-monthly-spend to none)'],
    ],
  ])('%s', async (_what, before, after, changes) => {
    expect(await listed(before, after)).toEqual(changes);
  });

  const settings = (text: string): Files => ({ 'ullage.yaml': `currency: EUR\n${text}` });
  const quota = (text: string): Files => settings(`sites:\n  north-quay: { ${text} }\n`);

  it.each([
    [
      'a quota lowered',
      quota('quota: { size: 2 TiB }'),
      quota('quota: { size: 1 TiB }'),
      ['tighter: ullage.yaml sites.north-quay.quota.size (2 TiB to 1 TiB)'],
    ],
    [
      'a quota taken out',
      quota('quota: { volumes: 9 }'),
      quota(''),
      ['looser: ullage.yaml sites.north-quay.quota.volumes (9 to none)'],
    ],
    [
      'slots raised',
      quota('attachment-slots: 9'),
      quota('attachment-slots: 10'),
      ['looser: ullage.yaml sites.north-quay.attachment-slots (9 to 10)'],
    ],
    [
      'a site that comes without limits',
      settings('sites:\n  north-quay: {}\n'),
      settings('sites:\n  north-quay: {}\n  west-quay: {}\n'),
      [
        'looser: ullage.yaml sites.west-quay (none to quota.volumes unlimited, quota.size unlimited, attachment-slots unlimited)',
      ],
    ],
    [
      'a site that comes with limits of its own making',
      settings('sites:\n  north-quay: {}\n'),
      settings('sites:\n  north-quay: {}\n  west-quay: { quota: { size: 900 TiB }, attachment-slots: 64 }\n'),
      [
        'looser: ullage.yaml sites.west-quay (none to quota.volumes unlimited, quota.size 900 TiB, attachment-slots 64)',
      ],
    ],
    [
      'the first list of sites',
      settings(''),
      quota('quota: { volumes: 9 }'),
      [
        'tighter: ullage.yaml sites (none to north-quay)',
        'tighter: ullage.yaml sites.north-quay.quota.volumes (none to 9)',
      ],
    ],
    [
      'the list of sites taken out',
      settings('sites:\n  north-quay: {}\n'),
      settings(''),
      ['looser: ullage.yaml sites (north-quay to none)'],
    ],
    [
      'a first list of teams',
      settings(''),
      settings('teams: [imagery]\n'),
      ['tighter: ullage.yaml teams (none to imagery)'],
    ],
    [
      'a team more, which no limit may know',
      settings('teams: [imagery]\n'),
      settings('teams: [imagery, shadow]\n'),
      ['looser: ullage.yaml teams (imagery to imagery, shadow)'],
    ],
    [
      'a team less',
      settings('teams: [imagery, ledger]\n'),
      settings('teams: [imagery]\n'),
      ['tighter: ullage.yaml teams (imagery, ledger to imagery)'],
    ],
    [
      'the list of teams taken out',
      settings('teams: [imagery]\n'),
      settings(''),
      ['looser: ullage.yaml teams (imagery to none)'],
    ],
    [
      'the month',
      settings(''),
      settings('month: calendar\n'),
      ['unknown: ullage.yaml month (730 h to calendar)'],
    ],
    [
      'where the waivers are',
      settings(''),
      settings('paths: { waivers: exceptions }\n'),
      ['unknown: ullage.yaml paths.waivers (waivers to exceptions)'],
    ],
  ])('%s', async (_what, before, after, changes) => {
    expect(await listed(before, after)).toEqual(changes);
  });

  const waiver = (dates: string, more = ''): Files => ({
    'waivers/a.yaml': `waivers:\n  - { rule: growth-step, subject: v, reason: import, approved-by: head${more}, ${dates} }\n`,
  });

  it.each([
    [
      'a waiver brought along',
      {},
      waiver('from: 2026-11-01, until: 2026-12-01'),
      ['looser: growth-step for v (none to 2026-11-01 to 2026-12-01, approved by head: import)'],
    ],
    [
      'a waiver made longer',
      waiver('from: 2026-11-01, until: 2026-12-01'),
      waiver('from: 2026-11-01, until: 2026-12-02'),
      ['looser: growth-step for v dates (2026-11-01 to 2026-12-01 to 2026-11-01 to 2026-12-02)'],
    ],
    [
      'a waiver taken out',
      waiver('from: 2026-11-01, until: 2026-12-01'),
      { 'waivers/a.yaml': 'waivers: []\n' },
      ['tighter: growth-step for v (2026-11-01 to 2026-12-01, approved by head: import to none)'],
    ],
    [
      'a waiver that is over already',
      {},
      waiver('from: 2026-01-01, until: 2026-02-01'),
      ['neither: growth-step for v (none to 2026-01-01 to 2026-02-01, approved by head: import)'],
    ],
  ])('%s', async (_what, before, after, changes) => {
    expect(await listed(before, after)).toEqual(changes);
  });

  it('a price changed, tier by tier, in plain figures however small', async () => {
    const prices = (rate: string): Files => ({
      'prices/2026.yaml': `from: 2026-01-01\ncurrency: EUR\ntiers:\n  bulk: { rate: "${rate}", per: GiB-month }\n  steady: { rate: "1", per: GiB-month }\n`,
    });
    const [only, ...others] = await listed(prices('0.0000000005'), prices('0.0000000004'));
    expect(others).toEqual([]);
    expect(only).toBe('neither: prices from 2026-01-01 tier bulk, rate (0.0000000005 to 0.0000000004)');
  });

  it('a price list, one line a changed key by the name that its file has, and one line a tier that comes or goes', async () => {
    const prices = (tiers: string): Files => ({
      'prices/2026.yaml': `from: 2026-01-01\ncurrency: EUR\ntiers:\n${tiers}server-types:\n  small: { running: "0.031" }\n`,
    });
    const before = prices(
      '  bulk: { rate: "0.045", per: GiB-month, iops-per-gib: 3 }\n  old: { rate: "1", per: GB-month, flat: "2" }\n',
    );
    const after = prices(
      '  bulk: { bands: [ { up-to: 1 TiB, rate: "0.04" }, { rate: "0.03" } ], per: GiB-month, iops-per-gib: 4, maximum: 2 TiB }\n  new: { rate: "3", per: GiB-month }\n',
    );
    expect(await listed(before, after)).toEqual([
      'neither: prices from 2026-01-01 tier bulk, rate (0.045 to none)',
      'looser: prices from 2026-01-01 tier bulk, iops-per-gib (3 to 4)',
      'neither: prices from 2026-01-01 tier bulk, bands (none to 0.04 up to 1 TiB, then 0.03)',
      'tighter: prices from 2026-01-01 tier bulk, maximum (none to 2 TiB)',
      'neither: prices from 2026-01-01 tier new (none to rate 3, per GiB-month)',
      'neither: prices from 2026-01-01 tier old (rate 1, per GB-month, flat 2 to none)',
    ]);
  });

  it('a quota at the line of its site, in a unit that tells it apart from what it was', async () => {
    const site = (size: string): Files => ({
      'ullage.yaml': `currency: EUR\nsites:\n  south-quay: {}\n  north-quay: { quota: { size: ${size} } }\n`,
    });
    const changes = async (from: string, to: string) =>
      (await judged({ ...base, ...site(from) }, site(to))).policyChanges;
    expect((await changes('40 TiB', '50 TiB'))[0]).toMatchObject({
      from: '40 TiB',
      to: '50 TiB',
      place: { revision: 'head', file: 'ullage.yaml', line: 4, column: 3 },
    });
    const [close] = await changes('40 TB', '40000000000001 kB');
    expect(close?.from).not.toBe(close?.to);
  });

  it('nothing, where nothing changed', async () => {
    expect(await listed({}, { 'policies/storage.yaml': '# as before\nuse: [starter]\n' })).toEqual([]);
  });
});

const entries = fc.oneof(
  fc.integer({ min: 4, max: 40 }).map((times) => `name: e, rule: growth-step, times: ${times / 4}`),
  fc.integer({ min: 1, max: 3000 }).map((gib) => `name: e, rule: growth-step, times: 2, by: ${gib} GiB`),
  fc.integer({ min: 0, max: 900 }).map((limit) => `name: e, rule: max-monthly-spend, limit: "${limit}"`),
  fc
    .tuple(
      fc.integer({ min: 0, max: 400 }),
      fc.subarray(['soundings', 'imagery', 'ledger'], { minLength: 1 }),
    )
    .map(
      ([limit, teams]) => `name: e, rule: max-monthly-spend, limit: "${limit}", where: { teams: [${teams}] }`,
    ),
  fc
    .integer({ min: 0, max: 20 })
    .map((share) => `name: e, rule: minimum-headroom, of: volume-group, share: ${share / 20}`),
  fc
    .integer({ min: 26, max: 32 })
    .map((count) => `name: e, rule: minimum-headroom, of: attachment-slots, count: ${count}`),
  fc.boolean().map((allowed) => `name: e, rule: deletion-prepared, attached-allowed: ${allowed}`),
  fc
    .subarray(['soundings', 'imagery', 'ledger'], { minLength: 1 })
    .map((teams) => `name: e, rule: detached-volume-owned, where: { teams: [${teams}] }`),
);

const inOrder = (side: Side, policy: Policy): boolean => {
  const judgement = judge({ base: side, head: side, policy, policyFrom: 'base' }, { on: today });
  return judgement.verdict !== 'not judged' && judgement.findings.length === 0;
};

describe('a policy that is called tighter', () => {
  /**
   * Held where the base is in order under both: what is wrong there already is let stand if it is made no worse, and a
   * bound that is tighter can have it stand wrong earlier.
   */
  it('passes no change that the other refuses', async () => {
    const { settings, priceLists } = await revisionOf({});
    if (settings === undefined) throw new Error('no settings');
    const policyOf = (entry: string): Policy => ({
      settings,
      priceLists,
      rules: valueIn(
        gatherRules([valueIn(readRulePack(documentOf(pack(entry)['policies/storage.yaml'] ?? '')))]),
      ),
      waivers: [],
      procedures: plainProcedures,
    });
    let told = 0;
    fc.assert(
      fc.property(change, entries, entries, ([before, after], one, other) => {
        const [policy, proposed] = [policyOf(one), policyOf(other)];
        const directions = comparePolicies(policy, proposed, today, emptyEstate).map(
          ({ direction }) => direction,
        );
        fc.pre(directions.length > 0 && directions.every((direction) => direction === 'tighter'));
        const side = (files: Files): Side => ({
          label: { commit: '' },
          estate: estateOf(files, settings),
          policy,
        });
        const [main, branch] = [side(filesOf(before)), side(filesOf(after))];
        fc.pre([policy, proposed].every((each) => inOrder(main, each)));
        told++;
        const verdict = (by: Policy): string =>
          judge({ base: main, head: branch, policy: by, policyFrom: 'base' }, { on: today }).verdict;
        if (verdict(proposed) === 'pass') expect(verdict(policy)).toBe('pass');
      }),
      { numRuns: 60 },
    );
    expect(told).toBeGreaterThan(30);
  });
});

describe('prices that a limit depends on', () => {
  const limited = pack('name: cap, rule: max-monthly-spend, limit: "9.00"');
  const list = (rate: string, from = '2026-01-01'): string =>
    `from: ${from}\ncurrency: EUR\ntiers:\n  bulk: { rate: "${rate}", per: GiB-month }\n`;
  const told = async (before: Files, after: Files) =>
    (await judged({ ...base, ...before }, after)).policyChanges.map(
      ({ direction, key, monthly }) =>
        `${direction} ${key}: ${monthly?.difference.toFixed()} ${monthly?.currency}`,
    );

  it('loosen it where they fall, and say what that comes to for the estate', async () => {
    const priced = { ...limited, 'prices/2026.yaml': list('0.50') };
    expect(await told(priced, { 'prices/2026.yaml': list('0.20') })).toEqual([
      'looser tier bulk, rate: -0.3 EUR',
    ]);
    expect(await told(priced, { 'prices/2026.yaml': list('0.60') })).toEqual([
      'tighter tier bulk, rate: 0.1 EUR',
    ]);
  });

  it('are told of a list that takes the place of another, from its day on', async () => {
    expect(
      await told(
        { ...limited, 'prices/2026.yaml': list('0.50') },
        { 'prices/next.yaml': list('0.20', '2026-12-01') },
      ),
    ).toEqual(['neither undefined: undefined undefined', 'looser tier bulk, rate: -0.3 EUR']);
  });

  it("are the provider's own business where nothing is held against them", async () => {
    expect(
      await told(
        { ...pack('rule: no-shrink'), 'prices/2026.yaml': list('0.50') },
        { 'prices/2026.yaml': list('0.20') },
      ),
    ).toEqual(['neither tier bulk, rate: undefined undefined']);
  });
});

describe('attachment slots that a server writes for itself', () => {
  const sites = (slots: number): Files => ({
    'ullage.yaml': `currency: EUR\nsites:\n  north-quay: { attachment-slots: ${slots} }\n`,
  });
  const server = (slots: string, volumes = ''): Files => ({
    'storage/a.yaml': `site: north-quay\nservers:\n  scanner: { ${slots} }\n${volumes}`,
  });

  it("above its site's figure are a looser limit, in whatever file they stand", async () => {
    const raised = await judged(
      { ...sites(4), ...pack('rule: policy-apart'), ...server('') },
      server('attachment-slots: 40', 'volumes:\n  v: { size: 1 GiB, tier: bulk }\n'),
    );
    expect(
      raised.policyChanges.map(({ direction, of, name, key, from, to }) => [
        direction,
        of,
        name,
        key,
        from,
        to,
      ]),
    ).toEqual([['looser', 'server', 'scanner', 'attachment-slots', '4', '40']]);
    expect([raised.verdict, raised.reasons[0]]).toEqual([
      'fail',
      expect.stringContaining('scanner (attachment-slots)'),
    ]);
  });

  it('are a change of their own, which may be made apart', async () => {
    const apart = await judged(
      { ...sites(4), ...pack('rule: policy-apart'), ...server('') },
      server('attachment-slots: 40'),
    );
    expect([apart.verdict, apart.policyChanges.length]).toEqual(['pass', 1]);
  });

  it("above main's own figure are one, too, where the site has none; left out, they are without bound", async () => {
    const went = async (was: string, now: string) =>
      (await judged(server(was), server(now))).policyChanges.map(({ direction, from, to }) => [
        direction,
        from,
        to,
      ]);
    expect(await went('attachment-slots: 4', 'attachment-slots: 5')).toEqual([['looser', '4', '5']]);
    expect(await went('attachment-slots: 4', '')).toEqual([['looser', '4', undefined]]);
    expect(await went('attachment-slots: 4', 'attachment-slots: 3')).toEqual([]);
    expect(await went('', 'attachment-slots: 4')).toEqual([]);
  });

  it('at or below it are no loosening', async () => {
    for (const slots of ['attachment-slots: 4', 'attachment-slots: 2'])
      expect((await judged({ ...sites(4), ...server('') }, server(slots))).policyChanges).toEqual([]);
  });
});

describe('a newer survey', () => {
  const fact = ['id', 'name', 'tier', 'servers', 'boot'] as const;
  const value = { id: 'v-1', name: 'plates-1', tier: 'bulk', servers: ['press'], boot: false };
  const list = (facts: readonly (typeof fact)[number][], at: string, lists: readonly string[]): Files => ({
    'surveys/provider.json': JSON.stringify({
      format: 'ullage-provider-survey-1',
      at: `${at}T06:00:00Z`,
      lists,
      volumes: [{ size: '1', id: 'v-1', ...Object.fromEntries(facts.map((key) => [key, value[key]])) }],
      servers: [],
    }),
  });
  const seen = (unseen: readonly string[], at: string): Files => ({
    'surveys/press.json': JSON.stringify({
      format: 'ullage-survey-1',
      server: 'press',
      at: `${at}T06:00:00Z`,
      tools: {},
      unseen,
      devices: [],
      'volume-groups': [],
      'file-systems': [],
    }),
  });
  const directions = async (base: Files, head: Files) =>
    (
      await judged({ ...pack('rule: surveyed-as-declared'), ...base }, head, { on: '2026-11-25' })
    ).policyChanges.map(({ of, direction }) => [of, direction]);
  const parts = ['devices', 'mounts', 'use', 'volume-groups', 'fstab', 'superblocks'];

  it('is neither looser nor tighter where it tells all that the older did, and cannot be told where it tells less', async () => {
    const lists = fc.subarray(['volumes', 'servers'], { minLength: 1 });
    await fc.assert(
      fc.asyncProperty(
        fc.subarray([...fact]),
        fc.subarray([...fact]),
        lists,
        lists,
        async (was, is, a, b) => {
          const less =
            was.some((each) => each !== 'id' && !is.includes(each)) || a.some((each) => !b.includes(each));
          expect(await directions(list(was, '2026-11-20', a), list(is, '2026-11-24', b))).toEqual([
            ['surveys', less ? 'unknown' : 'neither'],
          ]);
        },
      ),
      { numRuns: 100 },
    );
    await fc.assert(
      fc.asyncProperty(fc.subarray(parts), fc.subarray(parts), async (was, is) => {
        expect(await directions(seen(was, '2026-11-20'), seen(is, '2026-11-24'))).toEqual([
          ['surveys', is.every((part) => was.includes(part)) ? 'neither' : 'unknown'],
        ]);
      }),
      { numRuns: 60 },
    );
  });

  it('tells less also where it knows things by another key, or of some of them alone', async () => {
    const rows = (at: string, volumes: readonly object[]): Files => ({
      'surveys/provider.json': JSON.stringify({
        format: 'ullage-provider-survey-1',
        at: `${at}T06:00:00Z`,
        lists: ['volumes'],
        volumes: volumes.map((row) => ({ size: '1', ...row })),
        servers: [],
      }),
    });
    const was = [{ name: 'a', servers: ['press'] }, { name: 'b', servers: [] }, { name: 'c' }];
    const went = async (is: readonly object[]) =>
      (await directions(rows('2026-11-20', was), rows('2026-11-24', is)))[0]?.[1];
    expect(await went(was.map((row, index) => ({ ...row, id: `v-${index}` })))).toBe('neither');
    expect(await went(was.map(({ name }, index) => ({ id: `v-${index}`, name })))).toBe('unknown');
    expect(await went([{ id: 'v-0' }, { id: 'v-1' }, { id: 'v-2' }])).toBe('unknown');
    expect(await went([{ name: 'a' }, { name: 'b', servers: [] }, { name: 'c', servers: ['press'] }])).toBe(
      'unknown',
    );
  });

  it('of a day to come cannot be told: it would stand before all that are still to be taken', async () => {
    const on = async (day: string) => directions(seen([], '2026-11-20'), seen([], day));
    expect([await on('2026-11-26'), await on('2026-11-27')]).toEqual([
      [['surveys', 'neither']],
      [['surveys', 'unknown']],
    ]);
    expect(await directions({}, seen([], '2026-11-27'))).toEqual([['surveys', 'unknown']]);
  });
});
