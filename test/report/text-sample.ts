/** Judgements of Gannet Point's estate, made by the real judge from files in memory. */
import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { ok } from '../../src/base/problem.ts';
import type { Tree } from '../../src/git/tree.ts';
import type { Finding, Judged, Judgement, NotJudged } from '../../src/policy/judgement.ts';
import { judgeTrees, ParsedFiles } from '../../src/policy/revision.ts';

export const day = '2026-11-20';

export type Files = Readonly<Record<string, string>>;

const main = join(import.meta.dirname, '../demo/main');

/** Main's files as the demo has them. */
export const mainFiles: Files = Object.fromEntries(
  readdirSync(main, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name))
    .map((path) => [path.slice(main.length + 1), readFileSync(path, 'utf8')]),
);

/** One replacement in one file; refuses one that changes nothing. */
export function edited(files: Files, file: string, from: string, to: string): Files {
  const text = files[file] ?? '';
  if (!text.includes(from)) throw new Error(`${file} does not hold: ${from}`);
  return { ...files, [file]: text.replaceAll(from, () => to) };
}

function treeOf(files: Files, revision: string): Tree {
  const listed = Object.entries(files).sort(([a], [b]) => (a < b ? -1 : 1));
  return {
    label: { revision, name: revision },
    list: async (...folders) => ({
      files: listed
        .filter(([path]) => folders.some((folder) => path === folder || path.startsWith(`${folder}/`)))
        .map(([path, text]) => ({ path, blob: createHash('sha1').update(text).digest('hex') })),
      problems: [],
    }),
    read: async ({ path }) => ok(new TextEncoder().encode(files[path])),
  };
}

export const judgementOf = (
  base: Files,
  head: Files,
  failOn: 'error' | 'warning' = 'error',
): Promise<Judgement> =>
  judgeTrees(treeOf(base, '1'.repeat(40)), treeOf(head, '2'.repeat(40)), new ParsedFiles(), {
    on: day,
    failOn,
  });

export async function judged(base: Files, head: Files): Promise<Judged> {
  const judgement = await judgementOf(base, head);
  if (judgement.verdict === 'not judged') throw new Error(`not judged: ${judgement.reasons.join('; ')}`);
  return judgement;
}

export async function unjudged(base: Files, head: Files): Promise<NotJudged> {
  const judgement = await judgementOf(base, head);
  if (judgement.verdict !== 'not judged') throw new Error('judged after all');
  return judgement;
}

const imagery = 'storage/imagery.yaml';

/** A volume shrunk by a slip of the unit. */
export const unitsTidied = edited(
  mainFiles,
  imagery,
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
  edited(mainFiles, imagery, ': { size: 40 GiB', ': { size: 50 GiB'),
  imagery,
  '/plates: { size: 100 GiB',
  '/plates: { size: 120 GiB',
);

/** A team raises its own limit and spends it. */
export const ownLimit = edited(
  edited(
    edited(mainFiles, 'policies/storage.yaml', 'limit: "70.00"', 'limit: "170.00"'),
    imagery,
    '  plates-1: {',
    '  scans-1: { size: 1 TiB, tier: bulk }\n  plates-1: {',
  ),
  imagery,
  'attachments:\n',
  'attachments:\n  - { volume: scans-1, server: plate-archive }\n',
);

/** A finding with everything in it that hostile text can be put into. */
export const withHostile = (judgement: Judged, hostile: string): Judged => {
  const [change] = judgement.changes;
  const [sample] = judgement.findings;
  if (change === undefined || sample === undefined) throw new Error('the sample has no change or no finding');
  const waiver = {
    rule: hostile,
    subject: hostile,
    kind: undefined,
    reason: hostile,
    approvedBy: hostile,
    from: day,
    until: day,
    place: { file: hostile, line: 1, column: 1 },
  };
  const finding: Finding = {
    ...sample,
    entry: hostile,
    message: `the file system ${hostile} is too full`,
    advice: hostile,
    subject: { kind: 'team', name: hostile },
    place: { revision: 'base', file: hostile, line: 3, column: 4 },
  };
  return {
    ...judgement,
    reasons: [hostile],
    findings: [finding, { ...finding, waiver, fails: false }],
    cost: { ...judgement.cost, teams: judgement.cost.teams.map((team) => ({ ...team, team: hostile })) },
    limits: judgement.limits.map((limit) => ({
      ...limit,
      entry: hostile,
      subject: { kind: 'team', name: hostile },
    })),
    headroom: judgement.headroom.map(({ after }) => ({
      before: undefined,
      after: after === undefined ? undefined : { ...after, subject: { ...after.subject, name: hostile } },
    })),
    changes: [{ ...change, place: { revision: 'head', file: hostile, line: 1, column: 1 } }],
    policyChanges: [
      {
        direction: 'looser',
        of: 'rule',
        name: hostile,
        key: hostile,
        from: hostile,
        to: hostile,
        place: undefined,
      },
    ],
    proposed: { verdict: 'pass', reasons: [hostile] },
    waivers: [{ waiver, state: 'unused' }],
  };
};
