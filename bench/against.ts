/**
 * Holds this checkout against an earlier one: both judge the same branches, and what their JSON reports say is compared
 * but for the words. `npm run against -- --before FOLDER [--branches 1000] [--seed 1]`, where FOLDER is a checkout with
 * its packages installed. Exits 1 where anything differs.
 */
import { execFileSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { parseArgs } from 'node:util';
import { build } from 'esbuild';
import fc from 'fast-check';
import { buildDemo, proposals } from '../test/demo/gannet-point.ts';
import { treeOf } from '../test/estate/builder.ts';
import { change, filesOf } from '../test/estate/random.ts';
import { estateFiles, type Files, grown } from './estate.ts';
import { buildRepository, type Commit } from './repository.ts';

type Json = null | boolean | number | string | readonly Json[] | { readonly [key: string]: Json };

interface Branch {
  readonly name: string;
  readonly main: Files;
  readonly head: Files;
}

/**
 * How earlier formats wrote what these files say, each where a schema of the earlier checkout shows that it was so. Each
 * has its own line, so that no place moves.
 */
const formerFormats: readonly {
  readonly schema: string;
  /** What the schema has where things were written as they were then, or lacks where they could not be. */
  readonly has?: string;
  readonly lacks?: string;
  readonly writes: readonly (readonly [RegExp, string])[];
}[] = [
  { schema: 'price-list', has: 'machines', writes: [[/\bserver-types:/g, 'machines:']] },
  {
    schema: 'price-list',
    has: 'io-per-gib',
    writes: [
      [/\biops-per-gib:/g, 'io-per-gib:'],
      [/\biops-maximum:/g, 'io-maximum:'],
    ],
  },
  {
    schema: 'estate',
    has: 'machine',
    writes: [
      [/"type": "small"/g, '"machine": "small"'],
      [/\btype: small\b/g, 'machine: small'],
    ],
  },
  { schema: 'settings', lacks: 'teams', writes: [[/^teams: /gm, '# teams: ']] },
];

const top = join(import.meta.dirname, '..');

/** The rules that a checkout knows. */
const rulesOf = (checkout: string): readonly string[] =>
  [
    ...readFileSync(join(checkout, 'schema/rule-pack.json'), 'utf8').matchAll(/"const": ?"([a-z-]+)"/g),
  ].flatMap(([, name]) => name ?? []);

/** Every key that a checkout's JSON report may have. */
function reportedBy(checkout: string): readonly string[] {
  const keys: string[] = [];
  JSON.parse(readFileSync(join(checkout, 'schema/judgement.json'), 'utf8'), (key, value: Json) => {
    if (key === 'properties' && isObject(value)) keys.push(...Object.keys(value));
    return value;
  });
  return keys;
}

/** How a checkout writes what these files say. */
function writingOf(checkout: string): (text: string) => string {
  const knows = (schema: string, key: string): boolean =>
    readFileSync(join(checkout, 'schema', `${schema}.json`), 'utf8').includes(`"${key}"`);
  const unknown = rulesOf(top).filter((rule) => !knows('rule-pack', rule));
  // An entry of a rule that came since, on a line of its own, is none; what it says is left out of the comparison.
  const since = unknown.map(
    (rule) => [new RegExp(`^( *)- (\\{.*\\brule: ${rule}\\b.*\\})$`, 'gm'), '$1# $2'] as const,
  );
  const writes = formerFormats
    .filter(
      ({ schema, has, lacks }) =>
        (has === undefined || knows(schema, has)) && (lacks === undefined || !knows(schema, lacks)),
    )
    .flatMap((each) => each.writes)
    .concat(since);
  return (text) => writes.reduce((written, [now, then]) => written.replace(now, then), text);
}

/** What reports call otherwise than they did: a key, or the whole of a string. */
const formerWords: Readonly<Record<string, string>> = {
  detached: 'unattached',
  afterAtJudgingPrices: 'afterAtBasePrices',
  destroys: 'losesData',
  taken: 'used',
  onPast: 'backTest',
  machine: 'type',
  io: 'iops',
};
const renamedValues: Readonly<Record<string, string>> = {
  machine: 'type',
  'server-changed-machine': 'server-changed-type',
  taken: 'used',
  detached: 'unattached',
};

/** Words, which are meant to differ, and the commits, which do since the formats do. */
const notCompared = new Set(
  [
    'message',
    'advice',
    'reasons',
    'description',
    'instruction',
    'does',
    'commit',
    'why',
    'cautions',
    'examples',
    'excerpt',
  ].concat(['base', 'head', 'cause', 'order']),
);

/** Rules and keys that came since: what they say is left out, and with it where the shipped packs have moved to. */
const newRules = new Set<string>();
const newKeys = new Set<string>();

const isNew = (each: Json): boolean =>
  isObject(each) &&
  ([each.rule, each.entry, each.name].some((name) => newRules.has(String(name))) ||
    // Another month had no cause of its own; none of these branches is priced over two.
    each.cause === 'month-change');

const isShipped = (place: Json): boolean => isObject(place) && String(place.file).startsWith('shipped pack');

const isObject = (value: Json): value is { readonly [key: string]: Json } =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** A report in the words of today; lists of things by what they are, so that one more is one difference. */
function comparable(value: Json): Json {
  if (Array.isArray(value)) {
    if (!value.every(isObject)) return value.map(comparable);
    const seen = new Map<string, number>();
    const keyed = value
      .filter((each) => !isNew(each))
      .map(comparable)
      .map((each): readonly [string, Json] => {
        if (!isObject(each)) return ['', each];
        const { rule = null, entry = null, kind = null, layer = null, team = null, subject = null } = each;
        const { facet = null, name = null, at = null, server = null } = each;
        const identity = JSON.stringify([rule, entry, kind, layer, team, subject, facet, name, at, server]);
        const times = (seen.get(identity) ?? 0) + 1;
        seen.set(identity, times);
        return [`${identity}#${times}`, each];
      });
    return Object.fromEntries([...keyed, ['order', keyed.map(([identity]) => identity)]]);
  }
  if (typeof value === 'string') return renamedValues[value] ?? value;
  if (!isObject(value)) return value;
  return Object.fromEntries(
    Object.entries(value)
      .filter(([key, each]) => !notCompared.has(key) && !newKeys.has(key) && !isShipped(each))
      .map(([key, each]) => [formerWords[key] ?? key, comparable(each)]),
  );
}

/** Where two values differ: the path, and both. */
function* differences(before: Json, after: Json, path = ''): Generator<readonly [string, Json, Json]> {
  if (!isObject(before) || !isObject(after)) {
    if (JSON.stringify(before) !== JSON.stringify(after)) yield [path, before, after];
    return;
  }
  for (const key of new Set([...Object.keys(before), ...Object.keys(after)])) {
    yield* differences(before[key] ?? null, after[key] ?? null, `${path}/${key}`);
  }
}

interface Side {
  readonly judge: (branch: Branch) => Promise<Json>;
  readonly close: () => void;
}

/** What a checkout is asked for. Trees are judged by what it reads and judges with, which had one name before. */
const entryOf = (checkout: string): string => `
export { main } from './src/cli/main.ts';
export { reportJson } from './src/report/json.ts';
${
  existsSync(join(checkout, 'src/policy/pair.ts'))
    ? `import { judgePair, readPair } from './src/policy/pair.ts';
export const judge = async (base, head, options) => judgePair(await readPair(base, head), options);`
    : `import { judgeTrees, ParsedFiles } from './src/policy/revision.ts';
export const judge = (base, head, options) => judgeTrees(base, head, new ParsedFiles(), options);`
}`;

/**
 * One checkout's code, loaded into this process. The demo and the bench estates are judged by its whole command, in a
 * repository in its own formats; the many random branches from memory, since most of a command's time is Git's.
 */
async function sideOf(
  checkout: string,
  repositories: readonly Branch[],
  translate: (text: string) => string,
) {
  const folder = mkdtempSync(join(tmpdir(), 'ullage-against-'));
  const outfile = join(folder, 'side.mjs');
  await build({
    stdin: { contents: entryOf(checkout), resolveDir: checkout, loader: 'ts' },
    bundle: true,
    platform: 'node',
    format: 'esm',
    outfile,
    logLevel: 'error',
    banner: {
      js: "import { createRequire } from 'node:module'; const require = createRequire(import.meta.url);",
    },
  });
  const { main, judge, reportJson } = await import(pathToFileURL(outfile).href);
  const written = (files: Files): Files =>
    Object.fromEntries(Object.entries(files).map(([path, text]) => [path, translate(text)]));
  const repository = buildRepository(
    repositories.flatMap(({ name, main: base, head }): readonly Commit[] => {
      const gone = Object.keys(base).filter((path) => head[path] === undefined);
      const removed = Object.fromEntries(gone.map((path) => [path, null]));
      return [
        { branch: `${name}-main`, files: written(base) },
        { branch: name, from: `${name}-main`, files: { ...written(head), ...removed } },
      ];
    }),
  );
  // What a branch leaves as it was is reported only where it is asked for, since there is an option for it.
  const table = join(checkout, 'src/cli/commands.ts');
  const whole = existsSync(table) && readFileSync(table, 'utf8').includes("'--all'") ? ['--all'] : [];
  const inRepository = new Set(repositories.map(({ name }) => name));
  const byCommand = async (branch: string): Promise<string> => {
    let out = '';
    let err = '';
    const args = ['gate', '--repo', repository, '--base', `${branch}-main`, '--head', branch];
    await main([...args, '--now', day, '--format', 'json', ...whole], {
      out: (text: string) => {
        out += text;
      },
      err: (text: string) => {
        err += text;
      },
    });
    if (out === '') throw new Error(`${checkout} says nothing of ${branch}: ${err}`);
    return out;
  };
  const side: Side = {
    async judge({ name, main: base, head }) {
      if (inRepository.has(name)) return comparable(JSON.parse(await byCommand(name)));
      const [before, after] = [treeOf(written(base), 'base'), treeOf(written(head), 'head')];
      return comparable(
        JSON.parse(reportJson(await judge(before, after, { on: day, failOn: 'error' }), { all: true })),
      );
    },
    close() {
      rmSync(folder, { recursive: true });
      rmSync(repository, { recursive: true });
    },
  };
  return side;
}

/** The day on which all are judged. */
const day = '2026-11-20';

const settings = `currency: EUR
sites:
  north-quay: { quota: { volumes: 5, size: 8 TiB }, attachment-slots: 3 }
  south-quay: {}
`;
const prices = (bulk: string): string => `from: 2026-01-01
currency: EUR
tiers:
  bulk: { rate: "${bulk}", per: GiB-month, minimum: 4 GiB, maximum: 2 TiB, step: 2 GiB, iops-per-gib: 3 }
  steady: { rate: "0.10", per: GiB-month }
  brisk: { per: GiB-month, flat: "1.50", bands: [ { up-to: 1 TiB, rate: "0.25" }, { rate: "0.22" } ] }
server-types:
  small: { running: "0.031", stopped: "0.004" }
`;
const policies = (limit: number): readonly string[] => [
  `use: [starter]\nrules:\n  - { name: whole, rule: max-monthly-spend, limit: "${limit}" }\n  - { name: teams, rule: max-monthly-spend, level: warning, each: team, limit: "${Math.ceil(limit / 4)}", warn-from: 0.8 }\n`,
  `use: [strict]\nrules:\n  - { name: imagery-limit, rule: max-monthly-spend, where: { teams: [imagery] }, limit: "${Math.ceil(limit / 2)}" }\n  - { rule: naming, volume: 'v[0-4]' }\n  - { rule: freeze, from: 2026-11-18, until: 2026-11-22, level: warning }\n`,
  `rules:\n  - { rule: shape, of: volume, schema: { properties: { tier: { enum: [bulk, steady] } } } }\n  - { rule: growth-step, times: 2, by: 100 GiB, where: { sites: [north-quay] } }\n  - { rule: no-shrink }\n  - { rule: deletion-prepared, level: warning }\n  - { name: few, rule: destructive-changes-few, at-most: 1 }\n`,
];

/** Each declaration on lines of its own. */
const spread = (files: Files): Files =>
  Object.fromEntries(
    Object.entries(files).map(([path, text]) => [path, JSON.stringify(JSON.parse(text), null, 2)]),
  );

function demoBranches(): readonly Branch[] {
  const folder = buildDemo();
  const git = (...args: readonly string[]): string =>
    execFileSync('git', args, { cwd: folder, encoding: 'utf8' });
  const filesAt = (ref: string): Files =>
    Object.fromEntries(
      git('ls-tree', '-r', '--name-only', ref)
        .trim()
        .split('\n')
        .map((path) => [path, git('show', `${ref}:${path}`)]),
    );
  const main = filesAt('main');
  const branches = proposals.map(({ branch }) => ({ name: branch, main, head: filesAt(branch) }));
  rmSync(folder, { recursive: true });
  return branches;
}

/** The estates that are measured on, at their sizes, with few changes and with many. */
const benchBranches = (): readonly Branch[] =>
  [
    { volumes: 150, files: 3, changed: 3 },
    { volumes: 10_000, files: 200, changed: 3 },
    { volumes: 2_000, files: 400, changed: 200 },
    { volumes: 20_000, files: 1, changed: 1 },
  ].map(({ changed, ...size }, index) => {
    const main = estateFiles(size);
    return { name: `bench-${index}`, main, head: { ...main, ...grown(main, changed) } };
  });

/** Branches over small random estates: most alter the estate alone, some rename, some alter prices or the policy. */
function randomBranches(count: number, seed: number): readonly Branch[] {
  const drawn = fc.record({
    models: change,
    limit: fc.integer({ min: 10, max: 900 }),
    pack: fc.nat({ max: 2 }),
    otherPack: fc.nat({ max: 11 }),
    otherPrice: fc.nat({ max: 9 }),
    renamed: fc.subarray(['v0', 'v1', 's0', 'g0'], { maxLength: 2 }),
    renames: fc.nat({ max: 4 }),
  });
  return fc.sample(drawn, { numRuns: count, seed }).map((each, index) => {
    const pack = policies(each.limit)[each.pack] ?? '';
    const renamed = new Set(each.renames === 0 ? each.renamed : []);
    const common = { 'ullage.yaml': settings, 'prices/2026.yaml': prices('0.045'), 'policies/a.yaml': pack };
    const [before, after] = each.models;
    return {
      name: `random-${index}`,
      main: { ...common, ...spread(filesOf(before)) },
      head: {
        ...common,
        ...(each.otherPrice === 0 ? { 'prices/2026.yaml': prices('0.09') } : {}),
        ...(each.otherPack < 3 ? { 'policies/a.yaml': policies(each.limit + 50)[each.otherPack] ?? '' } : {}),
        ...spread(filesOf(after, { renamed })),
      },
    };
  });
}

const { values: flags } = parseArgs({
  options: {
    before: { type: 'string' },
    branches: { type: 'string', default: '1000' },
    seed: { type: 'string', default: '1' },
    show: { type: 'string', default: '2' },
  },
});
if (flags.before === undefined) throw new Error('give --before FOLDER, a checkout of the earlier commit');

const known = new Set(rulesOf(resolve(flags.before)));
for (const rule of rulesOf(top)) if (!known.has(rule)) newRules.add(rule);
const reported = new Set(reportedBy(resolve(flags.before)).map((key) => formerWords[key] ?? key));
for (const key of reportedBy(top)) if (!reported.has(key)) newKeys.add(key);

const inRepositories = [...demoBranches(), ...benchBranches()];
const branches: readonly Branch[] = [
  ...inRepositories,
  ...randomBranches(Number(flags.branches), Number(flags.seed)),
];
const before = await sideOf(resolve(flags.before), inRepositories, writingOf(resolve(flags.before)));
const after = await sideOf(top, inRepositories, (text) => text);

const found = new Map<string, string[]>();
const verdicts = new Map<string, number>();
let alike = 0;
let done = 0;
for (const branch of branches) {
  const { name } = branch;
  if (++done % 100 === 0) process.stderr.write(`${done} of ${branches.length}\n`);
  const [one, other] = [await before.judge(branch), await after.judge(branch)];
  const verdict = isObject(other) ? String(other.verdict) : 'nothing';
  verdicts.set(verdict, (verdicts.get(verdict) ?? 0) + 1);
  const differing = [...differences(one, other)];
  if (differing.length === 0) alike++;
  for (const [path, was, is] of differing) {
    const kind = path.replace(/"(?:name|subject)":[^,\]]*/g, '').replace(/\[[^\]]*\](?:#\d+)?/g, '[]');
    const seen = found.get(kind) ?? [];
    seen.push(`${name}${path}: ${JSON.stringify(was)} -> ${JSON.stringify(is)}`);
    found.set(kind, seen);
  }
}
before.close();
after.close();
const tally = [...verdicts].map(([verdict, count]) => `${count} ${verdict}`).join(', ');
console.log(`${branches.length} branches (${tally}): ${alike} alike, ${branches.length - alike} that differ`);
for (const [kind, seen] of [...found].sort(([, a], [, b]) => b.length - a.length)) {
  console.log(`${seen.length} times ${kind}`);
  for (const each of seen.slice(0, Number(flags.show))) console.log(`    ${each.slice(0, 600)}`);
}
process.exitCode = alike === branches.length ? 0 : 1;
