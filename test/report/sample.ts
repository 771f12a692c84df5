/** Judgements of Gannet Point's estate, the demo's and a smaller one, made by the real judge from files in memory. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Finding, Judged, NotJudged } from '../../src/policy/judgement.ts';
import {
  exampleDay,
  type Files,
  gannetPoint,
  judgedFiles,
  judged as judgedOver,
  unjudgedFiles,
} from '../estate/builder.ts';

const storage = 'storage/imagery.yaml';

const demo = join(import.meta.dirname, '../demo/main');

/** Main's files as the demo has them. */
export const mainFiles: Files = Object.fromEntries(
  readdirSync(demo, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name))
    .map((path) => [path.slice(demo.length + 1), readFileSync(path, 'utf8')]),
);

/** One replacement in one file; refuses one that changes nothing. */
export function edited(files: Files, file: string, from: string, to: string): Files {
  const text = files[file] ?? '';
  if (!text.includes(from)) throw new Error(`${file} does not hold: ${from}`);
  return { ...files, [file]: text.replaceAll(from, () => to) };
}

/** Judges two sets of files as they stand, on the demo's day. */
export const judged = (base: Files, head: Files): Promise<Judged> =>
  judgedFiles(base, head, { on: exampleDay });

export const unjudged = (base: Files, head: Files): Promise<NotJudged> =>
  unjudgedFiles(base, head, { on: exampleDay });

/** A volume shrunk by a slip of the unit. */
export const unitsTidied = edited(
  mainFiles,
  storage,
  'plate-scanner-root: { size: 50 GiB',
  'plate-scanner-root: { size: 50 GB',
);

/** The volume that an expired waiver is for. */
export const depthsGrown = edited(
  mainFiles,
  'storage/soundings.yaml',
  'depths-1: { size: 200 GiB',
  'depths-1: { size: 210 GiB',
);

/** Three volumes grown, and the file system that lies on them. */
export const platesGrown = edited(
  edited(mainFiles, storage, ': { size: 40 GiB', ': { size: 50 GiB'),
  storage,
  '/plates: { size: 100 GiB',
  '/plates: { size: 120 GiB',
);

/** A team raises its own limit and spends it. */
export const limitRaised = edited(
  edited(
    edited(mainFiles, 'policies/storage.yaml', 'limit: "70.00"', 'limit: "170.00"'),
    storage,
    '  plates-1: {',
    '  scans-1: { size: 1 TiB, tier: bulk }\n  plates-1: {',
  ),
  storage,
  'attachments:\n',
  'attachments:\n  - { volume: scans-1, server: plate-archive }\n',
);

const before = `
team: imagery
site: north-quay
servers:
  plate-scanner: { power: running, boot: plate-scanner-root, guest: linux-lvm, type: small }
  plate-archive: { power: stopped, type: small }
volumes:
  plate-scanner-root: { size: 50 GiB, tier: steady }
  plates-1: { size: 40 GiB, tier: bulk }
  plates-2: { size: 40 GiB, tier: bulk }
  plates-3: { size: 40 GiB, tier: bulk }
  master-plates: { size: 100 GiB, tier: bulk }
  stray-plates: { size: 10 GiB, tier: bulk }
attachments:
  - { volume: plates-1, server: plate-scanner }
  - { volume: plates-2, server: plate-scanner }
  - { volume: plates-3, server: plate-scanner }
volume-groups:
  plates:
    extent: 64 MiB
    members: [plates-1, plates-2, plates-3]
    file-systems:
      /plates: { size: 100 GiB, type: xfs }
`;

/**
 * A boot volume shrunk by a slip of the unit, a volume grown a hundred times (waived), a stray volume deleted, another
 * left as it was, and a volume moved to the other server.
 */
const after = before
  .replace('plate-scanner-root: { size: 50 GiB', 'plate-scanner-root: { size: 50 GB')
  .replace('plates-1: { size: 40 GiB', 'plates-1: { size: 4000 GiB')
  .replace('  stray-plates: { size: 10 GiB, tier: bulk }\n', '')
  .replace('plates-3, server: plate-scanner', 'plates-3, server: plate-archive');

const policy: Files = {
  'policies/storage.yaml': `
rules:
  - { rule: no-shrink, level: error }
  - { rule: growth-step, level: error, times: 10 }
  - { rule: detached-volume-owned, level: error }
  - { rule: group-travels-whole, level: error }
  - { rule: deletion-prepared, level: warning }
  - { rule: same-site, level: error }
  - { name: imagery-limit, rule: max-monthly-spend, level: error, where: { teams: [imagery] }, limit: "60.00", warn-from: 0.8 }
`,
  'waivers/2026-imagery.yaml': `
waivers:
  - { rule: growth-step, subject: plates-1, reason: one-off import of the spring survey, approved-by: head of imagery, from: 2026-11-01, until: 2026-12-01 }
  - { rule: no-shrink, subject: plates-9, reason: it was rebuilt, approved-by: head of imagery, from: 2026-01-01, until: 2026-02-01 }
`,
};

/** Every kind of finding at once: new and failing, waived, a warning, unchanged and absent. */
export const mixed = (): Promise<Judged> =>
  judgedOver({ ...policy, [storage]: before }, { [storage]: after });

/** A branch that raises its own limit beside what it buys with it. */
export const ownLimit = (): Promise<Judged> =>
  judgedOver(
    { ...policy, [storage]: before },
    {
      'policies/storage.yaml': policy['policies/storage.yaml']?.replace('"60.00"', '"900.00"') ?? '',
      [storage]: before.replaceAll(': { size: 40 GiB', ': { size: 400 GiB'),
    },
  );

/** Nothing changes. */
export const still = (): Promise<Judged> => judgedOver({ ...policy, [storage]: before }, {});

/** A size without a unit, and an attachment that leads nowhere. */
export const unjudgedSample = (): Promise<NotJudged> => {
  const main = { ...gannetPoint, ...policy, [storage]: before };
  const broken = before
    .replace('plates-2: { size: 40 GiB, tier: bulk', 'plates-2: { size: 40, tier: bulk')
    .replace('volume: plates-3, server', 'volume: plates-33, server');
  return unjudgedFiles(main, { ...main, [storage]: broken });
};

/** The judgement with each text wherever one can come in: in as many findings, changes and rows as there are texts. */
export function withHostile(judgement: Judged, texts: readonly string[]): Judged {
  const [sample] = judgement.findings;
  const [rule] = judgement.rules;
  const [team] = judgement.cost.teams;
  const [change] = judgement.changes;
  if (sample === undefined || rule === undefined || team === undefined || change === undefined)
    throw new Error('the sample has no finding, no rule, no team or no change');
  const waiverOf = (text: string) => ({
    rule: text,
    subject: text,
    kind: undefined,
    reason: text,
    approvedBy: text,
    from: '2026-11-01',
    until: '2026-12-01',
    place: { file: text, line: 1, column: 1 },
  });
  const findings = texts.map(
    (text, index): Finding => ({
      ...sample,
      entry: text,
      message: text,
      advice: text,
      facet: text,
      subject: { kind: index % 2 === 0 ? 'volume' : 'team', name: text },
      place: { revision: index % 2 === 0 ? 'head' : 'base', file: text, line: 3, column: 4 },
      waiver: index % 3 === 0 ? waiverOf(text) : undefined,
      fails: index % 3 !== 0,
    }),
  );
  return {
    ...judgement,
    reasons: texts,
    findings,
    rules: texts.map((name) => ({ ...rule, name })),
    cost: { ...judgement.cost, teams: texts.map((name) => ({ ...team, team: name })) },
    limits: texts.flatMap((name) =>
      judgement.limits.map((limit) => ({ ...limit, entry: name, subject: { kind: 'team', name } })),
    ),
    headroom: texts.flatMap((name) =>
      judgement.headroom.map(({ after }) => ({
        before: undefined,
        after: after === undefined ? undefined : { ...after, subject: { ...after.subject, name } },
      })),
    ),
    changes: texts.map((file) => ({ ...change, place: { revision: 'head', file, line: 1, column: 1 } })),
    policyChanges: texts.map((text) => ({
      direction: 'looser',
      of: 'rule',
      name: text,
      key: text,
      from: text,
      to: text,
      place: undefined,
      written: undefined,
      monthly: undefined,
    })),
    proposed: { verdict: 'pass', reasons: texts },
    waivers: texts.map((text) => ({ waiver: waiverOf(text), state: 'unused' })),
  };
}

/** The same for one text, which stands alone in one place and amid a sentence in another. */
export const withHostileText = (judgement: Judged, text: string): Judged =>
  withHostile(judgement, [text, `the file system ${text} is too full`]);

/** The judgement that could not be made, with hostile problems. */
export const withHostileProblems = (judgement: NotJudged, texts: readonly string[]): NotJudged => ({
  ...judgement,
  reasons: texts,
  problems: texts.map((text) => ({
    place: { file: text, line: 1, column: 1 },
    message: text,
    advice: text,
    excerpt: text,
  })),
});
