/**
 * Revisions made in memory from files as a user writes them, read and judged by the very path that the gate takes.
 */
import { createHash } from 'node:crypto';
import { type Outcome, ok, type Problem } from '../../src/base/problem.ts';
import { assemble } from '../../src/estate/assemble.ts';
import type { Estate, EstatePart } from '../../src/estate/estate.ts';
import { readEstatePart } from '../../src/estate/part.ts';
import { readSettings, type Settings } from '../../src/estate/settings.ts';
import type { Tree, TreeFile } from '../../src/git/tree.ts';
import type { JudgeOptions } from '../../src/policy/judge.ts';
import type { Finding, Judged, Judgement, NotJudged } from '../../src/policy/judgement.ts';
import { readRulePack } from '../../src/policy/pack.ts';
import { judgePair, readPair } from '../../src/policy/pair.ts';
import { readRevision } from '../../src/policy/reader.ts';
import type { Revision } from '../../src/policy/revision.ts';
import { type PriceList, readPriceList } from '../../src/price/price-list.ts';
import { type ReadDocument, readDocument } from '../../src/read/document.ts';

/** The day on which every example of a rule is judged. */
export const exampleDay = '2026-11-20';

/** The settings that every example of a rule goes by. */
export const exampleSettings = 'currency: EUR\n';

/** The price list that every example of a rule goes by; it is invented. */
export const examplePrices = `from: 2026-01-01
currency: EUR
tiers:
  bulk:   { rate: "0.045", per: GiB-month, minimum: 1 GiB, maximum: 16 TiB, step: 1 GiB, iops-per-gib: 3 }
  steady: { rate: "0.10", per: GiB-month, iops-per-gib: 10, iops-maximum: 5000 }
  brisk:  { per: GiB-month, flat: "1.50", bands: [ { up-to: 1 TiB, rate: "0.25" }, { rate: "0.22" } ] }
server-types:
  small: { running: "0.031", stopped: "0.004" }
`;

/** Path -> what the file holds. */
export type Files = Readonly<Record<string, string>>;

/** The day on which the tests judge, unless they say otherwise. */
export const today = '2026-11-25';

/** Gannet Point's settings, prices and shipped starter pack; a test lays its own files over them. */
export const gannetPoint: Files = {
  'ullage.yaml': `
currency: EUR
`,
  'prices/2026.yaml': `
from: 2026-01-01
currency: EUR
tiers:
  bulk: { rate: "0.045", per: GiB-month }
  steady: { rate: "0.10", per: GiB-month }
  brisk: { per: GiB-month, flat: "1.50", bands: [ { up-to: 1 TiB, rate: "0.25" }, { rate: "0.22" } ] }
server-types:
  small: { running: "0.031", stopped: "0.004" }
`,
  'policies/storage.yaml': 'use: [starter]\n',
};

/** A tree whose files are kept in memory. */
export function treeOf(files: Files, revision: string): Tree {
  const blob = (text: string): string => createHash('sha256').update(text).digest('hex');
  const all = Object.keys(files).sort();
  return {
    label: { revision, name: revision },
    list: async (...folders) => ({
      files: all
        .filter((path) => folders.some((folder) => path === folder || path.startsWith(`${folder}/`)))
        .map((path): TreeFile => ({ path, blob: blob(files[path] ?? '') })),
      problems: [],
    }),
    read: async ({ path }) => ok(new TextEncoder().encode(files[path] ?? '')),
    changedFrom: async () => [],
  };
}

/** A problem as the person at the keyboard finds it. */
export const line = ({ place, message }: Problem): string =>
  place === undefined ? message : `${place.file}:${place.line}:${place.column}: ${message}`;

/** The value, or a test that fails with every problem. */
export function valueIn<T>(outcome: Outcome<T>): T {
  if (outcome.ok) return outcome.value;
  throw new Error(outcome.problems.map(line).join('\n'));
}

export const problemsOf = (outcome: Outcome<unknown>): readonly Problem[] =>
  outcome.ok ? [] : outcome.problems;

export const documentOf = (text: string, file = 'storage/imagery.yaml'): ReadDocument =>
  valueIn(readDocument(text, file));

export const partOf = (text: string, file = 'storage/imagery.yaml'): EstatePart =>
  valueIn(readEstatePart(documentOf(text, file)));

export const settingsOf = (text = gannetPoint['ullage.yaml'] ?? ''): Settings =>
  valueIn(readSettings(documentOf(text, 'ullage.yaml')));

export const pricesOf = (text = gannetPoint['prices/2026.yaml'] ?? ''): PriceList =>
  valueIn(readPriceList(documentOf(text, 'prices/2026.yaml')));

/** The estate that files declare, or every problem that the whole of them has. */
export const assembled = (files: Files, settings = settingsOf('currency: EUR\n')): Outcome<Estate> =>
  assemble(
    Object.entries(files).map(([file, text]) => partOf(text, file)),
    settings,
  );

export const estateOf = (files: Files | string, settings?: Settings): Estate =>
  valueIn(assembled(typeof files === 'string' ? { 'storage/imagery.yaml': files } : files, settings));

/** A revision of Gannet Point's with these files over its own. */
export const revisionOf = async (files: Files): Promise<Revision> =>
  valueIn(await readRevision(treeOf({ ...gannetPoint, ...files }, 'head')));

type Options = Partial<JudgeOptions>;

/** Judges two sets of files as they stand, with nothing laid under them. */
export const judgeFiles = async (base: Files, head: Files, options: Options = {}): Promise<Judgement> =>
  judgePair(await readPair(treeOf(base, 'base'), treeOf(head, 'head')), { on: today, ...options });

/** The same for what can be judged; a test that fails with every problem where it cannot. */
export async function judgedFiles(base: Files, head: Files, options: Options = {}): Promise<Judged> {
  const judgement = await judgeFiles(base, head, options);
  if (judgement.verdict === 'not judged') throw new Error(judgement.problems.map(line).join('\n'));
  return judgement;
}

/** The same for what cannot be judged. */
export async function unjudgedFiles(base: Files, head: Files, options: Options = {}): Promise<NotJudged> {
  const judgement = await judgeFiles(base, head, options);
  if (judgement.verdict !== 'not judged') throw new Error('judged after all');
  return judgement;
}

/** Judges a change of Gannet Point's: files of the base over its own, and the head's over those. */
export function judged(base: Files, head: Files, options: Options = {}): Promise<Judged> {
  const before = { ...gannetPoint, ...base };
  return judgedFiles(before, { ...before, ...head }, options);
}

/** A rule pack of the entries given, in flow style, one a line. */
export const pack = (...entries: readonly string[]): Files => ({
  'policies/storage.yaml': `rules:\n${entries.map((entry) => `  - { ${entry} }\n`).join('')}`,
});

const storage = 'storage/imagery.yaml';

/** Judges one estate file before and after, by one rule entry alone. */
export const underRule = (
  entry: string,
  before: string,
  after: string,
  more: { readonly files?: Files; readonly on?: string } = {},
): Promise<Judged> =>
  judged(
    { ...pack(entry), ...more.files, [storage]: before },
    { [storage]: after },
    more.on === undefined ? {} : { on: more.on },
  );

/** A branch told in YAML, for tests of rules: on the day, with the settings and the prices that rules' examples go by. */
export interface Branch {
  /** One estate file; where main's is left out, nothing is declared there. */
  readonly main?: string;
  readonly branch: string;
  /** Entries of the rule pack on main, each in YAML's flow or block style. */
  readonly entries: readonly string[];
  /** Entries of the branch's own pack, where they differ. */
  readonly branchEntries?: readonly string[];
  readonly readings?: string;
  readonly prices?: string;
  readonly settings?: string;
  readonly on?: string;
}

/** A pack of entries as text; an entry of several lines is set in. */
export const packOf = (entries: readonly string[]): string =>
  `rules:\n${entries.map((entry) => `  - ${entry.trim().replaceAll('\n', '\n    ')}\n`).join('')}`;

export const readPack = (text: string, file = 'policies/storage.yaml') =>
  readRulePack(documentOf(text, file));

export function judgedBranch(told: Branch): Promise<Judged> {
  const { main, branch, entries, branchEntries = entries, readings, on = exampleDay } = told;
  const common: Files = {
    'ullage.yaml': told.settings ?? exampleSettings,
    'prices/2026.yaml': told.prices ?? examplePrices,
    ...(readings === undefined ? {} : { 'readings/2026.csv': readings }),
  };
  const policies = 'policies/storage.yaml';
  return judgedFiles(
    { ...common, [policies]: packOf(entries), ...(main === undefined ? {} : { [storage]: main }) },
    { ...common, [policies]: packOf(branchEntries), [storage]: branch },
    { on },
  );
}

/** What was found, in order: `error new plates-1: message`. */
export const said = ({ findings }: { readonly findings: readonly Finding[] }): readonly string[] =>
  findings.map(
    ({ level, baselineState, subject, message }) => `${level} ${baselineState} ${subject.name}: ${message}`,
  );

/** What a pack of these entries is refused for: `line:column message`. */
export const refusedFor = (...entries: readonly string[]): readonly string[] =>
  problemsOf(readPack(packOf(entries))).map(
    ({ place, message }) => `${place?.line}:${place?.column} ${message}`,
  );

/** Findings that stand on the head, each in short: whether it fails, its state and its subject. */
export const standing = ({ findings }: Judged): readonly string[] =>
  findings
    .filter(({ baselineState }) => baselineState !== 'absent')
    .map(
      ({ fails, baselineState, level, subject }) =>
        `${fails ? 'fails' : 'stands'}: ${level} ${baselineState} ${subject.kind} ${subject.name}`,
    );

/** The only finding that stands; a test that fails where there are more, or none. */
export function onlyFinding(judgement: Judged): Finding {
  const standingOnes = judgement.findings.filter(({ baselineState }) => baselineState !== 'absent');
  const [only] = standingOnes;
  if (only === undefined || standingOnes.length > 1) {
    throw new Error(
      `${standingOnes.length} findings: ${standingOnes.map(({ message }) => message).join('; ')}`,
    );
  }
  return only;
}
