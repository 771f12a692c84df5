import { describe, expect, it } from 'vitest';
import type { Estate } from '../../src/estate/estate.ts';
import { checkPolicy } from '../../src/policy/check.ts';
import { gatherRules } from '../../src/policy/pack.ts';
import type { Policy, Waiver } from '../../src/policy/policy.ts';
import { ExactDecimal } from '../../src/rules/parameter.ts';
import type { Measure } from '../../src/rules/rule.ts';
import { plainProcedures } from '../../src/runbook/procedures.ts';
import { estateOf, packOf, pricesOf, readPack, settingsOf, valueIn } from '../estate/builder.ts';

const office = estateOf(`
servers:
  plate-scanner: { team: imagery, site: north-quay }
  books: { team: ledger, site: south-quay }
volumes:
  plates-1: { size: 100 GiB, tier: bulk, team: imagery, site: north-quay, labels: { use: scans } }
  plates-2: { size: 100 GiB, tier: steady, team: imagery, site: north-quay }
  ledger-1: { size: 50 GiB, tier: steady, team: ledger, site: south-quay }
attachments:
  - { volume: plates-1, server: plate-scanner }
volume-groups:
  plates:
    team: imagery
    members: [plates-1, plates-2]
`);

const on = '2026-11-20';

interface Told {
  readonly entries?: readonly string[];
  readonly use?: string;
  readonly teams?: readonly string[];
  readonly waivers?: readonly Partial<Waiver>[];
  readonly soon?: number;
  readonly estate?: Estate;
}

const waiver: Waiver = {
  rule: 'no-shrink',
  subject: 'plates-1',
  kind: undefined,
  reason: 'a copy was made',
  approvedBy: 'head of imagery',
  from: '2026-11-01',
  until: '2026-12-31',
  place: { file: 'waivers/2026.yaml', line: 2, column: 5 },
};

/** What is remarked: `kind line: message`. */
function remarked({
  entries = [],
  use,
  waivers = [],
  soon = 14,
  estate = office,
  teams = [],
}: Told): readonly string[] {
  const text = `${use === undefined ? '' : `use: [${use}]\n`}${entries.length === 0 ? 'rules: []\n' : packOf(entries)}`;
  const pack = valueIn(readPack(text));
  const policy: Policy = {
    settings: { ...settingsOf('currency: EUR\nsites: { north-quay: { quota: { volumes: 9 } } }\n'), teams },
    priceLists: [pricesOf()],
    rules: valueIn(gatherRules([pack])),
    waivers: waivers.map((each) => ({ ...waiver, ...each })),
    procedures: plainProcedures,
  };
  return checkPolicy(policy, { packs: [pack], elsewhere: new Map() }, estate, { on, soon }).map(
    ({ kind, place, message, advice }) => `${kind} ${place.line}: ${message} | ${advice}`,
  );
}

const limit = (name: string, amount: number, more = ''): string =>
  `{ name: ${name}, rule: max-monthly-spend, limit: "${amount}"${more} }`;

describe('a rule that can find nothing in this estate', () => {
  it('is left alone where it fits something', () => {
    expect(
      remarked({
        entries: [
          '{ rule: no-shrink, where: { teams: [imagery], sites: [north-quay], tiers: [bulk], labels: { use: scans } } }',
          '{ rule: minimum-headroom, of: quota, where: { sites: [north-quay] } }',
        ],
      }),
    ).toEqual([]);
  });

  it('is told by the misspelt team, with the nearest one', () => {
    expect(remarked({ entries: ['{ rule: no-shrink, where: { teams: [imagry] } }'] })).toEqual([
      'unknown in scope 2: no-shrink applies to the team imagry, and the estate has none | The estate has the team imagery: correct whichever of the two is misspelt. Names that ullage.yaml lists are checked against its list.',
    ]);
  });

  it('is held against the teams that the settings list, not against a slip in the estate', () => {
    const entries = (team: string) => [`{ rule: no-shrink, where: { teams: [${team}] } }`];
    expect(remarked({ entries: entries('imagry'), teams: ['imagery', 'soundings'] })).toEqual([
      'unknown in scope 2: no-shrink applies to the team imagry, and ullage.yaml lists no such team | Did you mean imagery? Correct the name, or list the team.',
    ]);
    expect(remarked({ entries: entries('imageries'), teams: ['imageries'] })).toEqual([
      expect.stringMatching(
        /^unknown in scope 2: .* which ullage\.yaml lists, and nothing of the team is declared \| Leave it where that is still to come/,
      ),
    ]);
  });

  it('is not told before anything is declared: the policy comes first, and with it a waiver ahead of its change', () => {
    const estate = estateOf('');
    const entries = [
      limit('imagery-limit', 50, ', where: { teams: [imagery], labels: { use: scans } }'),
      '{ rule: no-shrink, where: { sites: [north-quay], tiers: [bulk] } }',
    ];
    expect(remarked({ entries, teams: ['imagery'], waivers: [{}], estate })).toEqual([]);
    expect(remarked({ entries, waivers: [{}], estate })).toEqual([]);
    // What ullage.yaml lists is known already.
    expect(remarked({ entries, teams: ['imageries'], estate })).toEqual([
      expect.stringContaining('ullage.yaml lists no such team'),
    ]);
  });

  it('is told of each unknown site, tier, label and value of a label', () => {
    const where = '{ sites: [west-quay], tiers: [gold], labels: { usage: scans, use: prints } }';
    expect(
      remarked({ entries: [`{ rule: no-shrink, where: ${where} }`] }).map((each) => each.split(',')[0]),
    ).toEqual([
      'unknown in scope 2: no-shrink applies to the site west-quay',
      'unknown in scope 2: no-shrink applies to the tier gold',
      'unknown in scope 2: no-shrink applies to the label usage',
      'unknown in scope 2: no-shrink applies to the label use with the value prints',
    ]);
  });

  it('is told where every name is known, and nothing has them all', () => {
    expect(
      remarked({ entries: ['{ rule: no-shrink, where: { teams: [ledger], sites: [north-quay] } }'] }),
    ).toEqual([expect.stringMatching(/^nothing in scope 2: no-shrink can find nothing/)]);
  });

  it('is told where the rule looks at things that the scope never has', () => {
    expect(
      remarked({ entries: ['{ rule: naming, server: "[a-z-]+", where: { tiers: [bulk] } }'] }),
    ).toHaveLength(1);
    expect(
      remarked({ entries: ['{ rule: minimum-headroom, of: quota, where: { teams: [imagery] } }'] }),
    ).toHaveLength(1);
    expect(remarked({ entries: ['{ rule: group-travels-whole, where: { teams: [ledger] } }'] })).toHaveLength(
      1,
    );
  });
});

/** Remarks on limits held against each other, without those on teams that are under none. */
const betweenLimits = (remark: string): boolean => !remark.startsWith('no limit');

describe('limits against each other', () => {
  it('pass where a team has its own within the estate, and they fit', () => {
    expect(
      remarked({
        entries: [
          limit('all', 200),
          limit('imagery', 150, ', where: { teams: [imagery] }'),
          limit('ledger', 50, ', where: { teams: [ledger] }'),
        ],
      }),
    ).toEqual([]);
  });

  it('are told where together they allow a cent more than the estate', () => {
    const [sum = '', ...more] = remarked({
      entries: [
        limit('all', 200),
        limit('imagery', 150, ', where: { teams: [imagery] }'),
        limit('ledger', 50.01, ', where: { teams: [ledger] }'),
      ],
    });
    expect(sum).toContain(
      'limits add up 2: the limits within all (imagery, ledger) allow 200.01 EUR together, 0.01 EUR more',
    );
    expect(more).toEqual([]);
  });

  it('are told where a team is under none: a slip in its name is enough', () => {
    const [remark, ...more] = remarked({ entries: [limit('ledger', 50, ', where: { teams: [ledger] }')] });
    expect(remark).toContain('team imagery');
    expect([remark?.startsWith('no limit'), more]).toEqual([true, []]);
    expect(remarked({ entries: [limit('all', 200)] })).toEqual([]);
  });

  const unclaimed = estateOf(`volumes:
  spare: { size: 1 GiB, tier: bulk }
  plates-1: { size: 100 GiB, tier: bulk, team: imagery }
`);

  it('count what has no team, where one entry sets one for each', () => {
    expect(remarked({ entries: [limit('team', 150, ', each: team')], estate: unclaimed })).toEqual([]);
  });

  it('are added up by team where one entry sets one for each', () => {
    expect(remarked({ entries: [limit('all', 200), limit('team', 150, ', each: team')] })[0]).toContain(
      'the limits within all (team (team imagery), team (team ledger)) allow 300.00 EUR together, 100.00 EUR more',
    );
  });

  it('are told where two count the same', () => {
    expect(
      remarked({
        entries: [
          limit('one', 100, ', where: { teams: [imagery] }'),
          limit('other', 80, ', where: { teams: [imagery] }'),
        ],
      }).filter(betweenLimits),
    ).toEqual([
      'limits of one scope 2: one (100.00 EUR) covers exactly what other covers, whose limit is 80.00 EUR; only the lower one can ever be exceeded | Keep one of the two.',
    ]);
  });

  it('are told where they cross', () => {
    expect(
      remarked({
        entries: [
          limit('steady', 100, ', where: { tiers: [steady] }'),
          limit('imagery', 100, ', where: { teams: [imagery] }'),
        ],
      })[0],
    ).toMatch(/^limits overlap 2: steady and imagery both cover 1 thing/);
  });

  it('are told where the inner can never be reached', () => {
    expect(
      remarked({ entries: [limit('all', 50), limit('imagery', 60, ', where: { teams: [imagery] }')] })[0],
    ).toMatch(/^limit out of reach 3: imagery allows 60.00 EUR, but all, .* only 50.00 EUR/);
  });

  it('are not held against each other where no day is in both', () => {
    const spring = ', where: { teams: [imagery] }, from: 2027-03-01, until: 2027-05-31';
    const summer = ', where: { teams: [imagery] }, from: 2027-06-01';
    expect(
      remarked({ entries: [limit('spring', 100, spring), limit('summer', 80, summer)] }).filter(
        betweenLimits,
      ),
    ).toEqual([]);
    const early = summer.replace('06-01', '05-31');
    expect(
      remarked({ entries: [limit('spring', 100, spring), limit('summer', 80, early)] }).filter(betweenLimits),
    ).toHaveLength(1);
  });

  it('and freezes that are over are told', () => {
    expect(remarked({ entries: [limit('old', 1, ', until: 2026-11-19')] })).toEqual([
      expect.stringMatching(/^over 2: old applied until 2026-11-19/),
    ]);
    expect(remarked({ entries: [limit('today', 1, ', until: 2026-11-20')] })).toEqual([]);
    expect(remarked({ entries: ['{ rule: freeze, until: 2026-11-19 }'] })).toHaveLength(1);
  });
});

describe('an entry that overrides a shipped one', () => {
  it('is left alone where it is tighter', () => {
    expect(remarked({ use: 'starter', entries: ['{ rule: growth-step, times: 4 }'] })).toEqual([]);
  });

  it('is told where it lets more through, with what', () => {
    expect(remarked({ use: 'starter', entries: ['{ rule: growth-step, times: 40 }'] })).toEqual([
      'looser than shipped 3: growth-step is looser than the entry that it overrides: times changes from 8 to 40 | Leave it if that is intended, with a comment that says why.',
    ]);
    expect(remarked({ use: 'starter', entries: ['{ rule: no-shrink, level: note }'] })[0]).toContain(
      'level changes from error to note',
    );
    expect(
      remarked({ use: 'starter', entries: ['{ rule: no-shrink, where: { teams: [imagery] } }'] })[0],
    ).toContain('where.teams');
  });

  it('is told where it switches it off, at its own place', () => {
    expect(
      remarked({ use: 'starter', entries: ['{ rule: same-site }', '{ rule: no-shrink, enabled: false }'] }),
    ).toEqual([expect.stringMatching(/^looser than shipped 4: no-shrink is switched off/)]);
  });

  it('is compared with the pack that is used, and with none where none is', () => {
    expect(
      remarked({ use: 'strict', entries: ['{ rule: growth-step, times: 10, by: 2 TiB }'] })[0],
    ).toContain('times changes from 4 to 10');
    expect(remarked({ entries: ['{ rule: growth-step, times: 40 }'] })).toEqual([]);
  });
});

describe('waivers', () => {
  const entries = ['{ rule: no-shrink }'];

  it('are left alone while they hold for long enough', () => {
    expect(remarked({ entries, waivers: [{ until: '2026-12-05' }] })).toEqual([]);
  });

  it('are told when they end within the days asked for', () => {
    expect(remarked({ entries, waivers: [{ until: '2026-12-04' }] })).toEqual([
      'waiver ends soon 2: the waiver of no-shrink for plates-1 ends on 2026-12-04, in 14 days | Fix what it waives, or have it approved again.',
    ]);
    expect(remarked({ entries, waivers: [{ until: '2026-11-20' }] })[0]).toContain('which is today');
    expect(remarked({ entries, waivers: [{ until: '2026-12-04' }], soon: 13 })).toEqual([]);
  });

  it('are told when they are over', () => {
    expect(remarked({ entries, waivers: [{ until: '2026-11-19' }] })[0]).toMatch(
      /^waiver expired 2: .* expired on 2026-11-19/,
    );
  });

  it('are told when they are for a rule or a thing that is not there', () => {
    expect(remarked({ entries, waivers: [{ rule: 'no-shrnk' }] })[0]).toContain(
      'which is not a rule or an entry | Did you mean no-shrink?',
    );
    expect(remarked({ entries, waivers: [{ rule: 'same-site' }] })[0]).toContain(
      'which no pack here contains',
    );
    expect(remarked({ entries, waivers: [{ subject: 'plates-l' }] })[0]).toContain(
      'not in the estate | Did you mean plates-1?',
    );
  });
});

describe('a waiver that cannot have its effect', () => {
  const amount = (amount: number, measure: Measure, written: string): Partial<Waiver> => ({
    upTo: { measure, amount: new ExactDecimal(amount), written },
  });
  const entries = [
    '{ name: small, rule: growth-step, by: 1 GiB }',
    '{ name: floor, rule: minimum-headroom, of: quota, share: 0.1 }',
    '{ rule: naming, volume: "p.*" }',
  ];
  const told = (waiver: Partial<Waiver>): string | undefined => remarked({ entries, waivers: [waiver] })[0];

  it.each<[string, Partial<Waiver>, string | undefined]>([
    ['in the measure of its rule', { rule: 'growth-step', ...amount(1, 'size', '1 B') }, undefined],
    ['in one of two', { rule: 'floor', ...amount(1, 'number', '1') }, undefined],
    [
      'in none of two',
      { rule: 'floor', ...amount(9, 'amount', '9.00') },
      'the ceiling 9.00 of the waiver is an amount of money, in which floor measures nothing, so that it covers nothing | Write a size (the size that is missing) or a number (the volumes, attachment slots or days that are missing).',
    ],
    [
      'in another',
      { rule: 'growth-step', ...amount(9, 'number', '9') },
      'the ceiling 9 of the waiver is a number, in which growth-step measures nothing, so that it covers nothing | Write a size (the size by which the volume grows in one change).',
    ],
    [
      'where nothing is measured',
      { rule: 'naming', ...amount(9, 'number', '9') },
      'the waiver has the ceiling 9, and naming measures nothing, so that it covers nothing | Leave up-to out.',
    ],
  ])('is told by its ceiling %s', (_what, waiver, remark) => {
    expect(told(waiver)).toBe(remark === undefined ? undefined : `waiver without effect 2: ${remark}`);
  });

  it.each<[string, Partial<Waiver>, string | undefined]>([
    ['of an entry of its rule', { rule: 'growth-step', name: 'small' }, undefined],
    [
      'that no entry has',
      { rule: 'growth-step', name: 'smal' },
      'the waiver names the entry smal, and no entry has that name | Did you mean small? Correct the name, or leave it out: the waiver is then for every entry of growth-step.',
    ],
    [
      'of an entry of another rule',
      { rule: 'growth-step', name: 'floor' },
      'the waiver is for growth-step and names the entry floor, which is of the rule minimum-headroom | Correct the name, or leave it out: the waiver is then for every entry of growth-step.',
    ],
  ])('is told by a name %s', (_what, waiver, remark) => {
    expect(told(waiver)).toBe(remark === undefined ? undefined : `waiver without effect 2: ${remark}`);
  });
});

it('the shipped packs by themselves give nothing to remark on', () => {
  expect(remarked({ use: 'starter' })).toEqual([]);
  expect(remarked({ use: 'strict' })).toEqual([]);
});
