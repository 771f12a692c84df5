/** Judgements of small estates of Gannet Point's, made by the real judge from files in memory. */
import type { Finding, Judged, Judgement, NotJudged } from '../../src/policy/judgement.ts';
import { type Files, gannetPoint, judgeFiles, line } from '../estate/builder.ts';

/** One side of a sample: its estate files, over Gannet Point's settings, prices and policy. */
export const sampleSide = (files: Files, policy: Files = {}): Files => ({
  ...gannetPoint,
  ...policy,
  ...files,
});

/** Judges the head's estate files against the base's, by one policy that both sides carry. */
export async function judged(sample: {
  readonly base: Files;
  readonly head: Files;
  readonly policy?: Files;
}): Promise<Judged> {
  const { base, head, policy } = sample;
  const judgement = await judgeFiles(sampleSide(base, policy), sampleSide(head, policy));
  if (judgement.verdict === 'not judged') throw new Error(judgement.problems.map(line).join('\n'));
  return judgement;
}

const storage = 'storage/imagery.yaml';

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
  judged({ base: { [storage]: before }, head: { [storage]: after }, policy });

/** A branch that raises its own limit beside what it buys with it. */
export const ownLimit = async (): Promise<Judged> => {
  const raised = {
    ...policy,
    'policies/storage.yaml': policy['policies/storage.yaml']?.replace('"60.00"', '"900.00"') ?? '',
  };
  const judgement = await judgeFiles(
    sampleSide({ [storage]: before }, policy),
    sampleSide({ [storage]: before.replaceAll(': { size: 40 GiB', ': { size: 400 GiB') }, raised),
  );
  if (judgement.verdict === 'not judged') throw new Error(judgement.problems.map(line).join('\n'));
  return judgement;
};

/** Nothing changes. */
export const still = (): Promise<Judged> =>
  judged({ base: { [storage]: before }, head: { [storage]: before }, policy });

/** A tier that no price list prices, and an attachment that leads nowhere. */
export async function unjudged(): Promise<NotJudged> {
  const broken = before
    .replace('plates-2: { size: 40 GiB, tier: bulk', 'plates-2: { size: 40, tier: bulk')
    .replace('volume: plates-3, server', 'volume: plates-33, server');
  const judgement: Judgement = await judgeFiles(
    sampleSide({ [storage]: before }, policy),
    sampleSide({ [storage]: broken }, policy),
  );
  if (judgement.verdict !== 'not judged') throw new Error('judged after all');
  return judgement;
}

/** The judgement with one text wherever a finding can carry any, in as many findings as there are texts. */
export function withHostile(judgement: Judged, texts: readonly string[]): Judged {
  const [sample] = judgement.findings;
  const [rule] = judgement.rules;
  const [team] = judgement.cost.teams;
  if (sample === undefined || rule === undefined || team === undefined)
    throw new Error('the sample has no finding, no rule or no team');
  const findings = texts.map((text, index): Finding => {
    const waiver = {
      rule: text,
      subject: text,
      kind: undefined,
      reason: text,
      approvedBy: text,
      from: '2026-11-01',
      until: '2026-12-01',
      place: { file: text, line: 1, column: 1 },
    };
    return {
      ...sample,
      entry: text,
      message: text,
      advice: text,
      facet: text,
      subject: { kind: 'volume', name: text },
      place: { revision: index % 2 === 0 ? 'head' : 'base', file: text, line: 3, column: 4 },
      waiver: index % 3 === 0 ? waiver : undefined,
      fails: index % 3 !== 0,
    };
  });
  return {
    ...judgement,
    reasons: texts,
    findings,
    rules: texts.map((name) => ({ ...rule, name })),
    cost: { ...judgement.cost, teams: texts.map((name) => ({ ...team, team: name })) },
  };
}

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
