/**
 * Nothing slips past the gate: for every rule, branches that it refuses, and every move by which an author might slip
 * out. No move makes a pass of a failure. A rule is tried by being registered; its own example of what it refuses is
 * the first of its branches.
 */
import fc from 'fast-check';
import { afterAll, describe, expect, it } from 'vitest';
import { parse, stringify } from 'yaml';
import { describeChange } from '../../src/change/kinds.ts';
import { lossesOf } from '../../src/change/losses.ts';
import type { Judged, Judgement } from '../../src/policy/judgement.ts';
import { judgePair } from '../../src/policy/pair.ts';
import { emptyReading, type Reading, readNext } from '../../src/policy/reader.ts';
import { rules } from '../../src/rules/registry.ts';
import type { RuleName } from '../../src/rules/rule.ts';
import { ullage } from '../cli/run.ts';
import { exampleDay, examplePrices, exampleSettings, type Files, packOf, treeOf } from '../estate/builder.ts';
import { makeRepository, removeRepositories } from '../repository.ts';
import { type Branch, type EstateFile, moves, parseEstate, type Told, textOf } from './evasion-moves.ts';

/** A branch that a rule refuses. */
interface Refused {
  readonly what: string;
  readonly main: string;
  readonly branch: string;
  readonly entries: readonly string[];
  readonly branchEntries?: readonly string[];
  readonly readings?: string;
  readonly settings?: string;
}

const more: Partial<Record<RuleName, readonly Refused[]>> = {
  'growth-step': [
    {
      what: 'a larger volume in the seat of another',
      main: 'volumes:\n  a: { size: 10 GiB, tier: bulk }\nvolume-groups:\n  plates: { members: [a] }\n',
      branch: 'volumes:\n  b: { size: 1000 GiB, tier: bulk }\nvolume-groups:\n  plates: { members: [b] }\n',
      entries: ['{ rule: growth-step, times: 4 }'],
    },
  ],
  'no-shrink': [
    {
      what: 'a file system made smaller',
      main: 'volumes:\n  a: { size: 100 GiB, tier: bulk }\nvolume-groups:\n  plates: { members: [a], file-systems: { /plates: { size: 90 GiB, type: ext4 } } }\n',
      branch:
        'volumes:\n  a: { size: 100 GiB, tier: bulk }\nvolume-groups:\n  plates: { members: [a], file-systems: { /plates: { size: 50 GiB, type: ext4 } } }\n',
      entries: ['{ rule: no-shrink }'],
    },
    {
      what: 'a group that loses a member',
      main: 'volumes:\n  a: { size: 40 GiB, tier: bulk }\n  b: { size: 40 GiB, tier: bulk }\nvolume-groups:\n  plates: { members: [a, b] }\n',
      branch:
        'volumes:\n  a: { size: 40 GiB, tier: bulk }\n  b: { size: 40 GiB, tier: bulk }\nvolume-groups:\n  plates: { members: [a] }\n',
      entries: ['{ rule: no-shrink }'],
    },
  ],
  'exclusive-attachment': [
    {
      what: 'a volume that is on one server and goes to a second',
      main: 'servers:\n  scanner: {}\n  archive: {}\nvolumes:\n  a: { size: 50 GiB, tier: bulk, file-system: { mount: /plates, type: xfs } }\nattachments:\n  - { volume: a, server: scanner }\n',
      branch:
        'servers:\n  scanner: {}\n  archive: {}\nvolumes:\n  a: { size: 50 GiB, tier: bulk, file-system: { mount: /plates, type: xfs } }\nattachments:\n  - { volume: a, server: scanner }\n  - { volume: a, server: archive }\n',
      entries: ['{ rule: exclusive-attachment }'],
    },
  ],
  'same-site': [
    {
      what: 'a volume that goes to a server at another site',
      main: 'servers:\n  scanner: { site: north-quay }\n  archive: { site: south-quay }\nvolumes:\n  a: { size: 50 GiB, tier: bulk, site: north-quay }\nattachments:\n  - { volume: a, server: scanner }\n',
      branch:
        'servers:\n  scanner: { site: north-quay }\n  archive: { site: south-quay }\nvolumes:\n  a: { size: 50 GiB, tier: bulk, site: north-quay }\nattachments:\n  - { volume: a, server: archive }\n',
      entries: ['{ rule: same-site }'],
    },
  ],
  'spend-under-a-limit': [
    {
      what: 'a server whose type is left out, and with it what it costs',
      main: 'team: imagery\nservers:\n  scanner: { type: small }\n',
      branch: 'team: imagery\nservers:\n  scanner: {}\n',
      entries: ['{ rule: spend-under-a-limit }', '{ rule: max-monthly-spend, limit: "120.00" }'],
    },
  ],
  'tier-bounds': [
    {
      what: 'a volume beyond what its tier sells',
      main: 'volumes:\n  a: { size: 10 TiB, tier: bulk }\n',
      branch: 'volumes:\n  a: { size: 20 TiB, tier: bulk }\n',
      entries: ['{ rule: tier-bounds }'],
    },
  ],
  naming: [
    {
      what: 'a volume renamed against the pattern',
      main: 'volumes:\n  plates-1: { size: 10 GiB, tier: bulk }\n',
      branch: 'volumes:\n  PLATES_1: { size: 10 GiB, tier: bulk, formerly: plates-1 }\n',
      entries: ["{ rule: naming, volume: '[a-z]+-[0-9]+' }"],
    },
  ],
  shape: [
    {
      what: 'a volume grown beyond a bound',
      main: 'volumes:\n  a: { size: 10 GiB, tier: bulk }\n',
      branch: 'volumes:\n  a: { size: 400 GiB, tier: bulk }\n',
      entries: ['{ rule: shape, of: volume, schema: { properties: { size-gib: { maximum: 100 } } } }'],
    },
    {
      what: 'a volume created, where none of its tier is wanted',
      main: 'volumes:\n  a: { size: 10 GiB, tier: bulk }\n',
      branch: 'volumes:\n  a: { size: 10 GiB, tier: bulk }\n  b: { size: 10 GiB, tier: bulk }\n',
      entries: [
        '{ rule: shape, where: { sites: [north-quay, east-quay] }, of: change, kinds: [volume-created], schema: { properties: { after: { properties: { tier: { enum: [none] } } } } } }',
      ],
    },
    {
      what: 'a change that is not wanted',
      main: 'servers:\n  scanner: {}\nvolumes:\n  a: { size: 10 GiB, tier: bulk }\nattachments:\n  - { volume: a, server: scanner }\n',
      branch: 'servers:\n  scanner: {}\nvolumes:\n  a: { size: 10 GiB, tier: bulk }\n',
      entries: ['{ rule: shape, of: change, kinds: [detached], schema: { required: [never] } }'],
    },
  ],
  'minimum-headroom': [
    {
      what: 'one volume more than a server has slots',
      settings: `${exampleSettings}sites:\n  north-quay: { attachment-slots: 1 }\n  east-quay: { attachment-slots: 1 }\n`,
      main: 'servers:\n  scanner: {}\nvolumes:\n  a: { size: 10 GiB, tier: bulk }\n  b: { size: 10 GiB, tier: bulk }\nattachments:\n  - { volume: a, server: scanner }\n',
      branch:
        'servers:\n  scanner: {}\nvolumes:\n  a: { size: 10 GiB, tier: bulk }\n  b: { size: 10 GiB, tier: bulk }\nattachments:\n  - { volume: a, server: scanner }\n  - { volume: b, server: scanner }\n',
      entries: ['{ rule: minimum-headroom, of: attachment-slots, count: 0 }'],
    },
    {
      what: 'more than the quota of a site',
      settings: `${exampleSettings}sites:\n  north-quay: { quota: { size: 100 GiB } }\n  east-quay: { quota: { size: 100 GiB } }\n`,
      main: 'volumes:\n  a: { size: 10 GiB, tier: bulk }\n',
      branch: 'volumes:\n  a: { size: 400 GiB, tier: bulk }\n',
      entries: ['{ rule: minimum-headroom, of: quota, size: 1 GiB }'],
    },
  ],
  'surveyed-as-declared': [
    {
      what: 'a volume detached that nobody has surveyed',
      main: 'servers:\n  scanner: {}\nvolumes:\n  a: { size: 50 GiB, tier: bulk }\nattachments:\n  - { volume: a, server: scanner }\n',
      branch: 'servers:\n  scanner: {}\nvolumes:\n  a: { size: 50 GiB, tier: bulk }\n',
      entries: ['{ rule: surveyed-as-declared, missing: error }'],
    },
    {
      what: 'a volume handed over that nobody has surveyed',
      main: 'servers:\n  scanner: {}\n  archive: {}\nvolumes:\n  a: { size: 50 GiB, tier: bulk }\nattachments:\n  - { volume: a, server: scanner }\n',
      branch:
        'servers:\n  scanner: {}\n  archive: {}\nvolumes:\n  a: { size: 50 GiB, tier: bulk }\nattachments:\n  - { volume: a, server: archive }\n',
      entries: ['{ rule: surveyed-as-declared, missing: error }'],
    },
    {
      what: 'a member taken out of a group that nobody has surveyed',
      main: 'volumes:\n  a: { size: 40 GiB, tier: bulk }\n  b: { size: 40 GiB, tier: bulk }\nvolume-groups:\n  plates: { members: [a, b] }\n',
      branch:
        'volumes:\n  a: { size: 40 GiB, tier: bulk }\n  b: { size: 40 GiB, tier: bulk }\nvolume-groups:\n  plates: { members: [a] }\n',
      entries: ['{ rule: surveyed-as-declared, missing: error }'],
    },
    {
      what: 'a volume grown that nobody has surveyed',
      main: 'volumes:\n  a: { size: 40 GiB, tier: bulk }\n',
      branch: 'volumes:\n  a: { size: 80 GiB, tier: bulk }\n',
      entries: ['{ rule: surveyed-as-declared, missing: error }'],
    },
  ],
  'deletion-prepared': [
    {
      what: 'a file system deleted from a group that stays',
      main: 'volumes:\n  a: { size: 100 GiB, tier: bulk }\nvolume-groups:\n  plates: { members: [a], file-systems: { /plates: { size: 50 GiB, type: ext4 } } }\n',
      branch: 'volumes:\n  a: { size: 100 GiB, tier: bulk }\nvolume-groups:\n  plates: { members: [a] }\n',
      entries: ['{ rule: deletion-prepared }'],
    },
    {
      what: 'a group made over a file system of main',
      main: 'volumes:\n  a: { size: 100 GiB, tier: bulk, file-system: { mount: /a, type: ext4 } }\n',
      branch:
        'volumes:\n  a: { size: 100 GiB, tier: bulk }\nvolume-groups:\n  plates: { members: [a], file-systems: { /a: { size: 50 GiB, type: ext4 } } }\n',
      entries: ['{ rule: deletion-prepared }'],
    },
    {
      what: 'another volume in the seat of one that is deleted',
      main: 'volumes:\n  a: { size: 100 GiB, tier: bulk }\nvolume-groups:\n  plates: { members: [a] }\n',
      branch: 'volumes:\n  b: { size: 100 GiB, tier: bulk }\nvolume-groups:\n  plates: { members: [b] }\n',
      entries: ['{ rule: deletion-prepared }'],
    },
    {
      what: 'a file system made over with other blocks',
      main: 'volumes:\n  a: { size: 100 GiB, tier: bulk, file-system: { mount: /a, type: ext4 } }\n',
      branch:
        'volumes:\n  a: { size: 100 GiB, tier: bulk, file-system: { mount: /a, type: ext4, block-size: 1 KiB } }\n',
      entries: ['{ rule: deletion-prepared }'],
    },
    {
      what: 'another volume under the name, by its identifier',
      main: 'volumes:\n  a: { id: vol-1, size: 100 GiB, tier: bulk }\n',
      branch: 'volumes:\n  a: { id: vol-2, size: 100 GiB, tier: bulk }\n',
      entries: ['{ rule: deletion-prepared }'],
    },
    {
      what: 'a volume with a file system taken into a group',
      main: 'volumes:\n  a: { size: 100 GiB, tier: bulk }\n  b: { size: 100 GiB, tier: bulk, file-system: { mount: /b, type: ext4 } }\nvolume-groups:\n  plates: { members: [a] }\n',
      branch:
        'volumes:\n  a: { size: 100 GiB, tier: bulk }\n  b: { size: 100 GiB, tier: bulk }\nvolume-groups:\n  plates: { members: [a, b] }\n',
      entries: ['{ rule: deletion-prepared }'],
    },
  ],
  'boot-volume-stays': [
    {
      what: 'another server under the name, by its identifier',
      main: 'servers:\n  scanner: { id: srv-1, power: running, boot: root }\nvolumes:\n  root: { size: 50 GiB, tier: bulk }\n',
      branch:
        'servers:\n  scanner: { id: srv-2, power: running, boot: root }\nvolumes:\n  root: { size: 50 GiB, tier: bulk }\n',
      entries: ['{ rule: boot-volume-stays }'],
    },
    {
      what: 'a boot volume taken into a group',
      main: 'servers:\n  scanner: { power: running, boot: root }\nvolumes:\n  root: { size: 50 GiB, tier: bulk }\n',
      branch:
        'servers:\n  scanner: { power: running, boot: root }\nvolumes:\n  root: { size: 50 GiB, tier: bulk }\nvolume-groups:\n  plates: { members: [root] }\n',
      entries: ['{ rule: boot-volume-stays }'],
    },
  ],
  'max-monthly-spend': [
    {
      what: 'a first estate beyond the limit',
      main: '{}',
      branch: 'volumes:\n  a: { size: 1000 GiB, tier: bulk }\n',
      entries: ['{ rule: max-monthly-spend, limit: "10.00" }'],
    },
    {
      what: 'a limit for each team',
      main: 'volumes:\n  a: { size: 100 GiB, tier: bulk }\n',
      branch: 'volumes:\n  a: { size: 1000 GiB, tier: bulk }\n',
      entries: ['{ rule: max-monthly-spend, limit: "10.00", each: team }'],
    },
  ],
  'detached-volume-owned': [
    {
      what: 'kept past its day, and grown',
      main: 'volumes:\n  a: { size: 10 GiB, tier: bulk, reason: kept, retain-until: 2026-11-01 }\n',
      branch: 'volumes:\n  a: { size: 100 GiB, tier: bulk, reason: kept, retain-until: 2026-11-01 }\n',
      entries: ['{ rule: detached-volume-owned }'],
    },
  ],
};

const storage = 'storage/imagery.yaml';

/** Teams, sites and labels for whatever names none. */
const told = (text: string): EstateFile => {
  const file = parseEstate(text);
  return { team: 'imagery', site: 'north-quay', labels: { grade: 'a' }, ...file };
};

const casesOf = (name: RuleName): readonly Refused[] => {
  const { fails } = rules[name].examples;
  const { story, main, branch, entry, altered, readings } = fails;
  const example: Refused = {
    what: story,
    main: main ?? '{}',
    branch,
    entries: altered === undefined ? [entry] : [entry, altered.main],
    ...(altered === undefined ? {} : { branchEntries: [entry, altered.branch] }),
    ...(readings === undefined ? {} : { readings }),
  };
  return [example, ...(more[name] ?? [])];
};

const isValues = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const tiersIn = (text: string): readonly string[] => [
  ...new Set(
    Object.values(parseEstate(text).volumes ?? {}).flatMap(({ tier }) =>
      typeof tier === 'string' ? [tier] : [],
    ),
  ),
];

/** The entry of the rule for what main has, by one thing or the other; and for all. */
function scopesOf(
  name: RuleName,
  { main, entries }: Refused,
): readonly (readonly [string, readonly string[]])[] {
  const [own = '', ...others] = entries;
  const parsed: unknown = parse(own);
  const possible = rules[name].scope ?? ['teams', 'sites', 'tiers', 'labels'];
  const values: Readonly<Record<string, unknown>> = {
    teams: ['imagery'],
    sites: ['north-quay'],
    tiers: tiersIn(main),
    labels: { grade: 'a' },
  };
  const hasThings = Object.keys(parseEstate(main)).length > 0;
  const scoped = possible.flatMap((by): (readonly [string, readonly string[]])[] => {
    if (!hasThings || !isValues(parsed) || parsed.where !== undefined) return [];
    return [[by, [stringify({ ...parsed, where: { [by]: values[by] } }), ...others]]];
  });
  return [['all', entries], ...scoped];
}

interface Trial {
  readonly rule: RuleName;
  readonly refused: Refused;
  readonly scope: string;
  readonly told: Told;
  readonly base: Files;
  readonly branch: Branch;
  /** Main, as it is read; it is read once. */
  read(): Promise<Reading>;
}

function trialOf(rule: RuleName, refused: Refused, scope: string, entries: readonly string[]): Trial {
  const main = told(refused.main);
  const base: Files = {
    'ullage.yaml': refused.settings ?? exampleSettings,
    'prices/2026.yaml': examplePrices,
    ...(refused.readings === undefined ? {} : { 'readings/2026.csv': refused.readings }),
    'policies/storage.yaml': packOf(entries),
    [storage]: textOf(main),
  };
  const altered = refused.branchEntries;
  let reading: Promise<Reading> | undefined;
  return {
    read: () => {
      reading ??= readNext(emptyReading, treeOf(base, 'base'));
      return reading;
    },
    rule,
    refused,
    scope,
    told: { main, entries },
    base,
    branch: {
      estate: { [storage]: told(refused.branch) },
      files: altered === undefined ? {} : { 'policies/storage.yaml': packOf(altered) },
    },
  };
}

async function judgementOf({ rule, base, read }: Trial, { estate, files }: Branch): Promise<Judgement> {
  const { [storage]: _, ...kept } = base;
  const written = Object.entries(estate).map(([path, doc]): [string, string] => [path, textOf(doc)]);
  const head = treeOf({ ...kept, ...files, ...Object.fromEntries(written) }, 'head');
  const before = await read();
  return judgePair(
    { base: before, head: await readNext(before, head) },
    // A rule that only warns by itself is held to its own level.
    { on: exampleDay, failOn: rules[rule].level === 'warning' ? 'warning' : 'error' },
  );
}

const ruleNames = Object.values(rules).map(({ name }) => name);

const trials: readonly Trial[] = ruleNames.flatMap((name) =>
  casesOf(name).flatMap((refused) =>
    scopesOf(name, refused).map(([scope, entries]) => trialOf(name, refused, scope, entries)),
  ),
);

/** Those that the rule refuses as they stand: a rule may know nothing of a site, or of a tier. */
async function refusedTrials(name: RuleName): Promise<readonly Trial[]> {
  const own = trials.filter(({ rule }) => rule === name);
  const judgements = await Promise.all(own.map((trial) => judgementOf(trial, trial.branch)));
  return own.filter((_, index) => judgements[index]?.verdict === 'fail');
}

/**
 * Where a move makes another change of it, which the rule is right to let pass. What is told instead is asked of each
 * judgement that passes so.
 */
interface Otherwise {
  readonly rule: RuleName;
  /** The moves that do so by themselves. */
  readonly moves: readonly string[];
  /** Moves that do so when they are made more than once; where left out, the same. */
  readonly together?: readonly string[];
  /** Under which scope of the entry; whichever where left out. */
  readonly scopes?: readonly string[];
  readonly why: string;
  told(judged: Judged): boolean;
}

const losesAnyway = ({ changes }: Judged): boolean => lossesOf(changes).length > 0;

/** At the prices that judge, where the branch brings its own. */
const costsMore = ({ cost, afterAtJudgingPrices }: Judged): boolean =>
  (afterAtJudgingPrices ?? cost.after).gt(cost.before) && cost.teams.length > 0;

const anew = ['another name, without'];

const otherwise: readonly Otherwise[] = [
  ...(['no-shrink', 'growth-step'] as const).map(
    (rule): Otherwise => ({
      rule,
      moves: anew,
      why: 'A volume that is in no place, or a group, that is deleted while another is made has neither grown nor shrunk: it is lost, which is told as a loss and is for deletion-prepared, freeze and destructive-changes-few.',
      told: losesAnyway,
    }),
  ),
  {
    rule: 'max-monthly-spend',
    moves: ['another team on one thing', 'another team on all'],
    scopes: ['all', 'teams'],
    why: 'Cost that passes to another team counts under the limit of that team; the difference is shown team by team.',
    told: costsMore,
  },
  ...(
    [
      ['sites', 'another site on one thing', 'another site on all'],
      ['tiers', 'another tier on one volume', 'another tier on all'],
      ['labels', 'another label on one thing', 'another label on all'],
    ] as const
  ).map(
    ([scope, ...made]): Otherwise => ({
      rule: 'max-monthly-spend',
      moves: made,
      scopes: [scope],
      why: 'Cost that is of another site, tier or label counts under the limit of that; the difference is shown.',
      told: costsMore,
    }),
  ),
  {
    rule: 'minimum-headroom',
    moves: ['another site on one thing', 'another site on all'],
    scopes: ['sites'],
    why: 'What moves to another site is held against the quota of that site, which this entry is not for; the move is told, and destroys what was there.',
    told: losesAnyway,
  },
  {
    rule: 'deletion-prepared',
    moves: ['existing: true'],
    why: 'A file system that is marked by itself and stays as it is, with other blocks than main said, is only described better: the change says so, and no step makes it over.',
    told: ({ changes, runbook }) =>
      changes.some(({ kind }) => kind === 'file-system-edited') && runbook.every(({ destroys }) => !destroys),
  },
  {
    rule: 'boot-volume-stays',
    moves: ['existing: true', 'existing: true on each'],
    why: 'A group that lies on the volume already is made by nobody, and the change says so.',
    told: ({ changes }) =>
      changes.some((change) => describeChange(change).includes('is declared as existing on')),
  },
  {
    rule: 'order-of-steps',
    moves: ['existing: true', 'existing: true on each'],
    why: 'What is there already is brought about by no steps, and the change says that it is taken to be there.',
    told: ({ changes }) => changes.some(({ kind }) => kind.endsWith('-adopted')),
  },
  {
    rule: 'order-of-steps',
    moves: anew,
    why: 'A group that is deleted while another is made needs no place for both: it is lost, and told as a loss.',
    told: losesAnyway,
  },
  {
    rule: 'same-site',
    moves: ['another site on all'],
    together: ['another site on one thing', 'another site on all'],
    why: 'A server and its volume that are both at another site are at one site.',
    told: ({ changes }) =>
      changes.some(
        (change) =>
          'after' in change &&
          change.subject.kind === 'volume' &&
          change.after.kind === 'volume' &&
          change.after.site === 'east-quay',
      ),
  },
  {
    rule: 'no-stale-rename',
    moves: ['another name, with formerly', 'another name, without'],
    why: 'The name is not taken up, or the line goes with the name of what had it.',
    told: ({ changes }) => changes.length > 0,
  },
  {
    rule: 'tier-bounds',
    moves: ['another tier on one volume', 'another tier on all'],
    why: 'The other tier sells the size.',
    told: ({ changes }) =>
      changes.some(
        (change) => 'after' in change && change.after.kind === 'volume' && change.after.tier === 'brisk',
      ),
  },
];

const relabels = /^another (team|site|tier|label) /;

/** What is lost, and made anew under another name and for somebody else, has never been in the entry's scope. */
const isSomebodyElses = ({ scope }: Trial, made: readonly string[], judged: Judged): boolean =>
  scope !== 'all' &&
  made.some((move) => anew.includes(move)) &&
  made.some((move) => relabels.test(move)) &&
  (losesAnyway(judged) || judged.changes.some(({ kind }) => kind === 'server-deleted'));

/** Whether moves make another change of a branch, and what that is is told. */
const isOtherwise = (trial: Trial, made: readonly string[], judged: Judged): boolean =>
  isSomebodyElses(trial, made, judged) || isAnother(trial, made, judged);

const isAnother = ({ rule, scope }: Trial, made: readonly string[], judged: Judged): boolean =>
  otherwise.some((each) => {
    const these = made.length > 1 ? (each.together ?? each.moves) : each.moves;
    const isOf = each.rule === rule && (each.scopes?.includes(scope) ?? true);
    return isOf && made.some((move) => these.includes(move)) && each.told(judged);
  });

describe.each(ruleNames)('%s', (name) => {
  it('refuses each of its branches', async () => {
    const refused = await refusedTrials(name);
    const whole = refused.filter(({ scope }) => scope === 'all').map((trial) => trial.refused.what);
    expect(whole).toEqual(casesOf(name).map(({ what }) => what));
  });

  it('is slipped out of by no move', async () => {
    const slips: string[] = [];
    for (const trial of await refusedTrials(name)) {
      for (const [move, made] of Object.entries(moves)) {
        for (const { what, branch } of made(trial.branch, trial.told)) {
          const judgement = await judgementOf(trial, branch);
          if (judgement.verdict === 'pass' && !isOtherwise(trial, [move], judgement))
            slips.push(`${trial.refused.what} [${trial.scope}] ${move}: ${what}`);
        }
      }
    }
    expect(slips).toEqual([]);
  });

  it('is slipped out of by no moves one after another', async () => {
    const refused = await refusedTrials(name);
    let judged = 0;
    await fc.assert(
      fc.asyncProperty(
        fc.nat({ max: refused.length - 1 }),
        fc.array(fc.tuple(fc.constantFrom(...Object.keys(moves)), fc.nat()), { minLength: 2, maxLength: 4 }),
        async (index, chosen) => {
          const trial = refused[index];
          if (trial === undefined) throw new Error('no such branch');
          const made: string[] = [];
          const branch = chosen.reduce((before, [move, which]) => {
            const ways = moves[move]?.(before, trial.told) ?? [];
            const way = ways[which % Math.max(1, ways.length)];
            if (way === undefined) return before;
            made.push(move);
            return way.branch;
          }, trial.branch);
          const judgement = await judgementOf(trial, branch);
          if (judgement.verdict !== 'not judged') judged++;
          if (judgement.verdict !== 'pass') return;
          const slip = `${trial.refused.what} [${trial.scope}] ${made.join(', then ')}`;
          expect(isOtherwise(trial, made, judgement) ? '' : slip).toBe('');
        },
      ),
      { numRuns: Number(process.env.RUNS ?? 40) },
    );
    // Moves that make a branch unreadable try nothing.
    expect(judged).toBeGreaterThan(5);
  });
});

describe('two half-steps in one branch', () => {
  afterAll(removeRepositories);

  it.each(ruleNames)('are judged as one by %s', async (name) => {
    const [trial] = trials.filter(({ rule }) => rule === name);
    if (trial === undefined) throw new Error(`${name} has no branch`);
    const doc = trial.branch.estate[storage] ?? {};
    const repository = makeRepository({ files: trial.base });
    repository.branch('work');
    // The first half leaves the keys as they are on main, and the volumes as the branch has them.
    repository.write({
      [storage]: textOf({
        ...trial.told.main,
        ...(doc.volumes === undefined ? {} : { volumes: doc.volumes }),
      }),
      ...trial.branch.files,
    });
    repository.commit('one half');
    repository.write({ [storage]: textOf(doc) });
    repository.commit('the other half');
    const failOn = rules[name].level === 'warning' ? 'warning' : 'error';
    const asked = ['--repo', repository.dir, '--base', 'main', '--now', exampleDay, '--fail-on', failOn];
    const { code, err } = await ullage('gate', ...asked);
    expect([code, err.includes('not judged')]).toEqual([1, false]);
  });
});

it('is tried with every move on some branch that can still be judged', async () => {
  for (const [move, made] of Object.entries(moves)) {
    const tried = trials.flatMap((trial) =>
      made(trial.branch, trial.told).map(({ branch }) => ({ trial, branch })),
    );
    const judgements = await Promise.all(
      tried.slice(0, 60).map(({ trial, branch }) => judgementOf(trial, branch)),
    );
    expect([move, judgements.some(({ verdict }) => verdict !== 'not judged')]).toEqual([move, true]);
  }
});
