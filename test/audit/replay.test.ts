import fc from 'fast-check';
import { afterAll, expect, it } from 'vitest';
import { approvalsUpTo } from '../../src/audit/approvals.ts';
import { auditRecords } from '../../src/audit/audit.ts';
import {
  type AuditRecord,
  type ChangeJudged,
  dayOfCommit,
  recordOf,
  waiverUses,
} from '../../src/audit/record.ts';
import { ok } from '../../src/base/problem.ts';
import { firstParentAncestors } from '../../src/git/ancestors.ts';
import type { Commit } from '../../src/git/commit.ts';
import { GitRepository } from '../../src/git/repository.ts';
import { emptyTree } from '../../src/git/tree.ts';
import type { Judged } from '../../src/policy/judgement.ts';
import { judgePair, readPair } from '../../src/policy/pair.ts';
import { valueIn } from '../estate/builder.ts';
import { removeRepositories } from '../repository.ts';
import { type Edits, historyOf, mainOf, type Step } from './history.ts';

afterAll(removeRepositories);

interface Volumes {
  readonly plates: number;
  readonly master: string;
  readonly team: string;
}

const imagery = ({ plates, master, team }: Volumes): string => `team: ${team}
site: north-quay
servers:
  plate-scanner: { power: running, boot: plate-scanner-root, guest: linux-lvm, type: small }
volumes:
  plate-scanner-root: { size: 20 GiB, tier: steady }
  plates-1: { size: ${plates} GiB, tier: bulk }
  master-plates: ${master}
attachments:
  - { volume: plates-1, server: plate-scanner }
volume-groups:
  plates:
    extent: 64 MiB
    members: [plates-1]
    file-systems:
      /plates: { size: 30 GiB, type: xfs }
`;

/** The last is of a tier that the first price list does not price. */
const masters = [
  '{ size: 100 GiB, tier: bulk, retain-until: 2026-03-01, reason: travels between servers }',
  '{ size: 100 GiB, tier: bulk, retain-until: 2026-01-20, reason: travels between servers }',
  '{ size: 80 GiB, tier: bulk }',
  '{ size: 100 GiB, tier: dear }',
];

const estates: readonly string[] = [
  ...[40, 80, 60, 1000].flatMap((plates) =>
    masters
      .slice(0, 3)
      .flatMap((master) => ['imagery', 'ledger'].map((team) => imagery({ plates, master, team }))),
  ),
  imagery({ plates: 40, master: masters[3] ?? '', team: 'imagery' }),
];

const soundings = [
  'team: soundings\nsite: north-quay\nvolumes:\n  depths-1: { size: 10 GiB, tier: steady }\n',
  'team: soundings\nsite: north-quay\nvolumes:\n  depths-2: { size: 10 GiB, tier: steady, formerly: depths-1 }\n',
  'team: soundings\nsite: south-quay\nservers:\n  sounder: {}\nvolumes:\n  depths-1: { size: 8 GiB, tier: steady }\nattachments:\n  - { volume: depths-1, server: sounder }\n  - { volume: master-plates, server: sounder }\n',
  'team: soundings\nvolumes:\n  plates-1: { size: 1 GiB, tier: bulk }\n',
  'team: [broken\n',
];

const packs = [
  'use: [starter]\n',
  'use: [strict]\nrules:\n  - { name: limit, rule: max-monthly-spend, limit: "9.00", until: 2026-02-10 }\n',
  'rules:\n  - { rule: detached-volume-owned, at-most: 40 }\n  - { name: each, rule: max-monthly-spend, each: team, limit: "5.00", warn-from: 0.5 }\n  - { rule: no-shrink }\n',
  'rules:\n  - { rule: minimum-headroom, of: file-system, days: 60 }\n  - { rule: minimum-headroom, of: volume-group, size: 9 GiB }\n  - { rule: freeze, from: 2026-02-01, until: 2026-02-20 }\n  - { rule: policy-apart }\n',
  'rules:\n  - { rule: detached-volume-owned, where: { teams: [imagery] } }\n  - { rule: shape, of: volume, schema: { properties: { size-gib: { maximum: 40 } } }, where: { tiers: [bulk] } }\n  - { rule: growth-followed-through, level: error, where: { teams: [imagery] } }\n',
  'rules:\n  - { rule: no-such-rule }\n',
];

const waivers = [
  'waivers:\n  - { rule: detached-volume-owned, subject: master-plates, reason: survey, approved-by: head of imagery, from: 2026-01-01, until: 2026-02-01 }\n',
  'waivers:\n  - { rule: growth-followed-through, subject: plates, reason: survey, approved-by: head of imagery, from: 2026-01-01, until: 2026-12-01 }\n',
];

/** Waivers without a ceiling for what branches do over and over, on many days and on few, in these words and in others. */
const open = (until: string, reason: string): string =>
  `waivers:\n${[
    ['growth-step', 'plates-1'],
    ['no-shrink', 'plates-1'],
    ['no-shrink', 'master-plates'],
    ['detached-volume-owned', 'master-plates'],
    ['limit', 'scope'],
    ['each', 'imagery'],
  ]
    .map(
      ([rule, subject]) =>
        `  - { rule: ${rule}, subject: ${subject}, reason: ${reason}, approved-by: head of imagery, from: 2026-01-01, until: ${until} }\n`,
    )
    .join('')}`;

const openWaivers = [
  open('2026-12-01', 'survey'),
  open('2026-12-01', 'autumn survey'),
  open('2026-02-20', 'survey'),
];

const prices = (bulk: string, from = '2026-01-01', more = ''): string =>
  `from: ${from}\ncurrency: EUR\ntiers:\n  bulk: { rate: "${bulk}", per: GiB-month }\n  steady: { rate: "0.10", per: GiB-month }\n${more}server-types:\n  small: { running: "0.031", stopped: "0.004" }\n`;

const settings = [
  'currency: EUR\nmonth: calendar\n',
  'currency: EUR\nsites:\n  north-quay: { quota: { volumes: 4 }, attachment-slots: 2 }\n  south-quay: {}\n',
  'currency: EUR\npaths: { storage: estates/now }\n',
  'currency: XXQ\n',
];

const reading = (day: number): string => {
  const rows = Array.from({ length: 20 }, (_each, index) => {
    const at = new Date(Date.parse('2025-12-20T06:00:00Z') + index * 86_400_000).toISOString().slice(0, 19);
    return `plate-scanner,/plates,${at}Z,32212254720,${(1 + (index * day) / 4) * 1e9},20000000000\n`;
  });
  return `server,mount,at,size,used,available\n${rows.join('')}`;
};

/** The group of so many GiB, on a partition beside one of 1 GiB, in which a file system of 30 GiB lies. */
const survey = (gib: number): string => {
  const size = BigInt(gib) << 30n;
  const rest = size - (1n << 30n);
  const extents = Number((rest - (1n << 20n)) >> 26n);
  return JSON.stringify({
    format: 'ullage-survey-1',
    server: 'plate-scanner',
    at: '2026-01-05T06:00:00Z',
    tools: {},
    unseen: [],
    devices: [
      { name: 'vda', type: 'disk', size: `${20n << 30n}` },
      { name: 'vdb', type: 'disk', size: `${size}` },
      { name: 'vdb1', type: 'part', on: ['vdb'], size: `${1n << 30n}` },
      { name: 'vdb2', type: 'part', on: ['vdb'], size: `${rest}` },
    ],
    'volume-groups': [
      {
        name: 'plates',
        extent: `${1n << 26n}`,
        extents,
        free: extents - 480,
        missing: 0,
        members: [{ device: 'vdb2', 'device-size': `${rest}`, extents, free: extents - 480 }],
        'logical-volumes': [{ name: 'plates', size: `${30n << 30n}`, layout: 'linear' }],
      },
    ],
    'file-systems': [
      {
        device: 'plates/plates',
        type: 'xfs',
        mounts: ['/plates'],
        usable: `${29n << 30n}`,
        used: `${10n << 30n}`,
        available: `${19n << 30n}`,
      },
    ],
  });
};

/** Each file with all that it may become. */
const choices: Readonly<Record<string, readonly Edits[string][]>> = {
  'storage/imagery.yaml': [...estates, null],
  'storage/sub/soundings.yaml': [...soundings, null],
  'storage/Sub/soundings.yaml': [soundings[0] ?? '', null, null],
  'storage/linked.yaml': [{ link: 'imagery.yaml' }, null, null, null],
  'estates/now/imagery.yaml': [...estates.slice(0, 4), null],
  'policies/storage.yaml': [...packs, null],
  'waivers/2026.yaml': [...waivers, ...openWaivers, null],
  'waivers/more.yaml': [...openWaivers, 'waivers: [broken\n', null],
  'prices/2026.yaml': [
    prices('0.045'),
    prices('0.045', '2026-01-01', '  dear: { rate: "1", per: GiB-month }\n'),
    null,
  ],
  'prices/later.yaml': [prices('0.05', '2026-02-05'), prices('0.06', '2026-01-01'), null, null],
  'ullage.yaml': [...settings, 'currency: EUR\n', 'currency: EUR\n', null],
  'readings/2026.csv': [reading(1), reading(3), null],
  'surveys/plate-scanner.json': [survey(40), survey(80), survey(60), '{broken\n', null],
  'README.md': ['one\n', 'two\n'],
};

const first: Edits = {
  'storage/imagery.yaml': estates[0] ?? '',
  'prices/2026.yaml': prices('0.045'),
  'policies/storage.yaml': packs[0] ?? '',
  'ullage.yaml': settings[0] ?? '',
};

const among = (path: string, sound: number) =>
  fc.oneof(
    // What breaks nothing stands first in each list; what breaks much is chosen now and then.
    { weight: 6, arbitrary: fc.constantFrom(...(choices[path] ?? []).slice(0, sound)) },
    { weight: 1, arbitrary: fc.constantFrom(...(choices[path] ?? [])) },
  );

/** Path, how often it is chosen, how many of its contents are sound. */
const paths: readonly (readonly [string, number, number])[] = [
  ['storage/imagery.yaml', 10, 24],
  ['storage/sub/soundings.yaml', 4, 1],
  ['policies/storage.yaml', 4, 5],
  ['waivers/2026.yaml', 3, 5],
  ['waivers/more.yaml', 3, 3],
  ['prices/later.yaml', 1, 1],
  ['ullage.yaml', 1, 2],
  ['readings/2026.csv', 2, 3],
  ['surveys/plate-scanner.json', 3, 3],
  ['README.md', 1, 2],
];

const anEdit = fc.oneof(
  ...paths.map(([path, weight, sound]) => ({
    weight,
    arbitrary: among(path, sound).map((content) => [path, content] as const),
  })),
  {
    weight: 2,
    arbitrary: fc
      .constantFrom(...Object.keys(choices))
      .chain((path) => fc.constantFrom(...(choices[path] ?? [])).map((content) => [path, content] as const)),
  },
);

/** Mostly onwards, now and then back: clocks are skewed. */
const days = fc.oneof(
  { weight: 5, arbitrary: fc.integer({ min: 0, max: 15 }) },
  fc.integer({ min: -20, max: 0 }),
);

const history: fc.Arbitrary<readonly Step[]> = fc
  .tuple(
    fc.nat({ max: 3 }).map((chance) => chance > 0),
    fc.array(
      fc.record({
        edits: fc.array(anEdit, { minLength: 1, maxLength: 3 }),
        days,
        merges: fc.oneof(
          { weight: 3, arbitrary: fc.constant([]) },
          fc.array(fc.nat({ max: 6 }), { maxLength: 3 }),
        ),
      }),
      { minLength: 4, maxLength: 9 },
    ),
  )
  .map(([adopted, steps]) => {
    let time = Date.parse('2026-01-10T12:00:00Z');
    return [
      { edits: adopted ? first : { 'README.md': 'none yet\n' }, date: new Date(time).toISOString() },
      ...steps.map(({ edits, days: past, merges }): Step => {
        time += past * 86_400_000;
        return { edits: Object.fromEntries(edits), merges, date: new Date(time).toISOString() };
      }),
    ];
  });

/** One that is always tried: a commit that does not read, and the one that mends it. */
const brokenAndMended: readonly Step[] = [
  { edits: first, date: '2026-01-10T12:00:00Z' },
  { edits: { 'ullage.yaml': 'currency: XXQ\n' }, merges: [], date: '2026-01-11T12:00:00Z' },
  { edits: { 'ullage.yaml': 'currency: EUR\n' }, merges: [], date: '2026-01-12T12:00:00Z' },
];

/** Another: a waiver's first use, the same again in the waiver's last week and more, and more than that. */
const grownAgain: readonly Step[] = [
  first,
  { 'waivers/more.yaml': openWaivers[0] ?? '' },
  ...[60, 1000, 40, 80].map((plates) => ({
    'storage/imagery.yaml': imagery({ plates, master: masters[0] ?? '', team: 'imagery' }),
  })),
].map((edits, index) => ({ edits, merges: [], date: `2026-01-1${index}T12:00:00Z` }));

/** What the gate says of a whole judgement, as the record of a commit has it. */
function fromJudged(judged: Judged): ChangeJudged {
  const {
    verdict,
    reasons,
    policyFrom,
    unreadMain,
    findings,
    waivers,
    on,
    cost,
    limits,
    policyChanges,
    proposed,
  } = judged;
  const standing = { error: 0, warning: 0, note: 0 };
  for (const finding of findings) {
    if (finding.baselineState !== 'absent' && finding.about === 'state') standing[finding.level]++;
  }
  return {
    verdict,
    reasons,
    policyFrom,
    unreadMain,
    findings,
    standing,
    renamed: [],
    between: undefined,
    waivers: waiverUses(
      waivers.map(({ waiver }) => waiver),
      findings,
      on,
      (waiver) => waivers.find((use) => use.waiver === waiver)?.written,
    ),
    cost,
    limits,
    policyChanges,
    proposed,
  };
}

let asked = 0;

/** The record of a pair of revisions that are read whole and judged by themselves. */
async function alone(repository: GitRepository, commit: Commit, touched: AuditRecord['touched']) {
  const [parent] = commit.parents;
  const base =
    parent === undefined
      ? emptyTree
      : repository.tree(valueIn(await repository.commit(parent)).tree, {
          revision: parent,
          name: parent.slice(0, 12),
        });
  const head = repository.tree(commit.tree, { revision: commit.id, name: commit.id.slice(0, 12) });
  const on = dayOfCommit(commit);
  const judgement = await judgePair(
    await readPair(base, head),
    { on },
    {
      ancestors: () => firstParentAncestors(repository, parent ?? commit.id),
      approvals: async (waivers) => {
        asked++;
        const found = await approvalsUpTo(repository, { base: parent ?? '', waivers });
        return ok(valueIn(found).own ?? new Map());
      },
    },
  );
  const outcome =
    judgement.verdict === 'not judged'
      ? ({ kind: 'not judged', reasons: judgement.reasons, problems: judgement.problems } as const)
      : ({ kind: 'judged', judged: fromJudged(judgement) } as const);
  return {
    record: recordOf({ commit, on, touched, failOn: 'error', outcome, tried: undefined }),
    stands:
      judgement.verdict === 'not judged'
        ? undefined
        : judgement.findings
            .filter((each) => each.baselineState !== 'absent' && each.about === 'state')
            .map(({ entry, subject, facet }) => keyOf(entry, subject, facet ?? null)),
  };
}

const keyOf = (entry: string, { kind, name }: { kind: string; name: string }, facet: string | null): string =>
  `${entry} | ${kind} ${name} | ${facet ?? ''}`;

/** What one record says came and went, over what stood before it. */
function stand(standing: Set<string>, { between, findings, renamed }: AuditRecord): void {
  for (const { entry, subject, facet } of between?.fixed ?? []) standing.delete(keyOf(entry, subject, facet));
  for (const { entry, subject, facet } of between?.new ?? []) standing.add(keyOf(entry, subject, facet));
  for (const { entry, from } of renamed) standing.delete(keyOf(entry, from.subject, from.facet));
  for (const { entry, to } of renamed) standing.add(keyOf(entry, to.subject, to.facet));
  for (const { entry, subject, facet, baselineState, about } of findings) {
    if (about === 'change') continue;
    if (baselineState === 'absent') standing.delete(keyOf(entry, subject, facet));
    else standing.add(keyOf(entry, subject, facet));
  }
}

it('carried on from commit to commit says what reading and judging each pair whole says', {
  timeout: 120_000,
}, async () => {
  let judged = 0;
  let broken = 0;
  asked = 0;
  let mended = 0;
  await fc.assert(
    fc.asyncProperty(history, async (steps) => {
      const made = historyOf(steps);
      const repository = valueIn(await GitRepository.open(made.dir));
      try {
        const ids = mainOf(made);
        const records = new Map<string, AuditRecord>();
        for await (const record of auditRecords(repository, {
          span: { to: ids.at(-1) ?? '' },
          failOn: 'error',
        })) {
          const value = valueIn(record);
          records.set(value.commit, value);
        }
        const standing = new Set<string>();
        for (const id of ids) {
          const commit = valueIn(await repository.commit(id));
          const record = records.get(id);
          if (record === undefined) {
            const [parent] = commit.parents;
            const changed = made
              .git('diff-tree', '-r', '--name-only', parent ?? '4b825dc642cb6eb9a060e54bf8d69288fbee4904', id)
              .split('\n');
            // Settings that choose another folder make the usual one nobody's business.
            const held = made.git('ls-tree', '--name-only', id, 'ullage.yaml') !== '';
            const moved = held && made.git('show', `${id}:ullage.yaml`).includes('estates');
            const watched = moved
              ? /^(ullage\.yaml|(estates\/now|prices|policies|waivers)\/)/
              : /^(ullage\.yaml|(storage|prices|policies|waivers)\/)/;
            expect(changed.filter((path) => watched.test(path))).toEqual([]);
            continue;
          }
          const { record: expected, stands } = await alone(repository, commit, record.touched);
          // A judgement does not tell as mended what only leaves a scope; on main it stands no longer.
          const told = (each: AuditRecord['findings'][number]): boolean =>
            each.baselineState !== 'absent' ||
            expected.findings.some((other) => JSON.stringify(other) === JSON.stringify(each));
          expect({
            ...record,
            findings: record.findings.filter(told),
            between: null,
            renamed: [],
          }).toEqual(expected);
          if (record.verdict === 'not judged') broken++;
          else judged++;
          if (record.unreadMain !== null) mended++;
          if (record.between === null) continue;
          stand(standing, record);
          expect([...standing].sort()).toEqual([...new Set(stands)].sort());
        }
      } finally {
        await repository.close();
        made.cleanup();
      }
    }),
    {
      numRuns: Number(process.env.RUNS ?? 25),
      examples: [[brokenAndMended], [grownAgain]],
    },
  );
  // Some of those that are judged come after a commit that does not read.
  expect(mended).toBeGreaterThan(0);
  // The histories are worth something only where most of them can be judged, and not all.
  expect(judged).toBeGreaterThan(broken / 2);
  expect(broken).toBeGreaterThan(0);
  expect(asked).toBeGreaterThan(0);
});
