/** One revision's files -> its estate and its policy. What two revisions share is parsed once. */

import { byPlace, err, type Outcome, ok, type Problem, problemKey } from '../base/problem.ts';
import { summariseReadings, type UseSummary } from '../capacity/readings.ts';
import { type Usage, usageOf } from '../capacity/usage.ts';
import { assembleWhatHolds } from '../estate/assemble.ts';
import type { Estate } from '../estate/estate.ts';
import { readEstatePart } from '../estate/part.ts';
import { type Paths, readSettings, type Settings, settingsFile, usualPaths } from '../estate/settings.ts';
import type { Tree, TreeFile } from '../git/tree.ts';
import { priceEstate } from '../price/cost.ts';
import { gatherPriceLists, listInForce, type PriceList, readPriceList } from '../price/price-list.ts';
import { type ReadDocument, readDocument } from '../read/document.ts';
import { decodeText } from '../read/text.ts';
import { noPriceList, usesReadings } from './evaluation.ts';
import { type JudgeOptions, judge, type Side } from './judge.ts';
import { type Judgement, notJudged, type RevisionLabel } from './judgement.ts';
import { gatherRules, type RulePack, readRulePack } from './pack.ts';
import type { Policy, PolicyRule, Waiver } from './policy.ts';
import { readWaivers } from './waiver.ts';

/** One revision, read whole. Settings, prices and rules may be missing: a first adoption has none on its base. */
export interface Revision {
  readonly label: RevisionLabel;
  readonly settings: Settings | undefined;
  readonly estate: Estate;
  readonly priceLists: readonly PriceList[];
  readonly rules: readonly PolicyRule[];
  /** Its own packs, from which the rules were gathered. */
  readonly packs: readonly RulePack[];
  /** Whether the revision has any rule pack, be it an empty one. */
  readonly hasPacks: boolean;
  readonly waivers: readonly Waiver[];
  /** Its readings, summarised by server and mount point; empty where no rule of its own asks for them. */
  readonly uses: ReadonlyMap<string, UseSummary>;
}

type Reader<T> = (document: ReadDocument) => Outcome<T>;

/** What has been parsed, by what it was parsed as, its path and its content. */
export class ParsedFiles {
  readonly #parsed = new Map<string, Promise<Outcome<unknown>>>();

  /** Reads a file as one format; a file of the same path and content is read once and is the same object after. */
  read<T>(
    tree: Tree,
    file: TreeFile,
    format: keyof Paths | 'settings',
    reader: Reader<T>,
  ): Promise<Outcome<T>> {
    const key = `${format} ${file.blob} ${file.path}`;
    // The key names the format, and a format has one reader: what is found under it is what the reader made.
    const known = this.#parsed.get(key) as Promise<Outcome<T>> | undefined;
    if (known !== undefined) return known;
    const reading = parse(tree, file, reader);
    this.#parsed.set(key, reading);
    return reading;
  }

  /** Takes in what was made of a file elsewhere by its format's own reader. */
  know(file: TreeFile, format: keyof Paths, value: unknown): void {
    this.#parsed.set(`${format} ${file.blob} ${file.path}`, Promise.resolve(ok(value)));
  }

  /** Summarises files of readings, taken together; the same files are summarised once. */
  readings(tree: Tree, files: readonly TreeFile[]): Promise<Outcome<Uses>> {
    const key = `readings ${files.map(({ blob, path }) => `${blob} ${path}`).join('\n')}`;
    // As above: what is found under the key is what `summarise` made.
    const known = this.#parsed.get(key) as Promise<Outcome<Uses>> | undefined;
    if (known !== undefined) return known;
    const reading = summarise(tree, files);
    this.#parsed.set(key, reading);
    return reading;
  }
}

type Uses = ReadonlyMap<string, UseSummary>;

/** A row that does not read stands in the way, as a line of any other file does: half a trend is none. */
async function summarise(tree: Tree, files: readonly TreeFile[]): Promise<Outcome<Uses>> {
  const contents = await Promise.all(files.map((file) => tree.read(file)));
  const problems = contents.flatMap((content) => (content.ok ? [] : content.problems));
  if (problems.length > 0) return err(...problems);
  const { fileSystems, problems: rows } = await summariseReadings(
    contents.flatMap((content, index) => {
      const file = files[index]?.path ?? '';
      return content.ok ? [{ file, chunks: [content.value] }] : [];
    }),
  );
  return rows.length > 0 ? err(...rows) : ok(fileSystems);
}

export async function parse<T>(tree: Tree, file: TreeFile, reader: Reader<T>): Promise<Outcome<T>> {
  const content = await tree.read(file);
  if (!content.ok) return content;
  const text = decodeText(content.value, file.path);
  if (!text.ok) return text;
  const document = readDocument(text.value, file.path);
  return document.ok ? reader(document.value) : document;
}

export const isYaml = ({ path }: TreeFile): boolean => /\.ya?ml$/i.test(path);

const isCsv = ({ path }: TreeFile): boolean => /\.csv$/i.test(path);

/** Whether any rule asks for measured use. Readings are many and large; without such a rule none is read. */
export const anyAsksForUse = (rules: readonly PolicyRule[]): boolean =>
  rules.some(({ entry }) => usesReadings(entry));

export const within = (folder: string, { path }: TreeFile): boolean => path.startsWith(`${folder}/`);

/** Settings that stand in where a revision has none: the usual places, no sites, no currency of its own. */
export const bareSettings: Settings = {
  currency: '',
  month: '730 h',
  paths: usualPaths,
  sites: new Map(),
  teams: [],
  place: { file: settingsFile, line: 1, column: 1 },
};

/** What could be read of a revision, and everything that is wrong with it; it is judged only where nothing is. */
export interface Reading {
  readonly revision: Revision;
  /** Whether any price list is there, be it one that does not read. */
  readonly hasPriceLists: boolean;
  readonly problems: readonly Problem[];
}

/** Reads a revision whole, or says everything that is wrong with it. */
export async function readRevision(tree: Tree, parsed: ParsedFiles): Promise<Outcome<Revision>> {
  const { revision, problems } = (await readFiles(tree, parsed))(undefined);
  return problems.length > 0 ? err(...(await withExcerpts(problems, () => tree))) : ok(revision);
}

/**
 * Gives problems the source line that they point at. What is wrong between files is found when their text is gone,
 * so it is read again, and only then.
 *
 * @param treeOf the tree that a problem's place is in
 */
export async function withExcerpts(
  problems: readonly Problem[],
  treeOf: (problem: Problem) => Tree,
): Promise<readonly Problem[]> {
  const wanting = new Map<Tree, Set<string>>();
  for (const problem of problems) {
    if (problem.place === undefined || problem.excerpt !== undefined) continue;
    const files = wanting.get(treeOf(problem)) ?? new Set();
    wanting.set(treeOf(problem), files.add(problem.place.file));
  }
  const lines = new Map<Tree, ReadonlyMap<string, readonly string[]>>();
  for (const [tree, files] of wanting) lines.set(tree, await linesOf(tree, files));
  return problems.map((problem) => {
    const { place } = problem;
    if (place === undefined || problem.excerpt !== undefined) return problem;
    const excerpt = lines.get(treeOf(problem))?.get(place.file)?.[place.line - 1];
    return excerpt === undefined ? problem : { ...problem, excerpt };
  });
}

/** The lines of some files. A place may name what is no file of the tree, or no text; it has no line to show. */
async function linesOf(
  tree: Tree,
  paths: ReadonlySet<string>,
): Promise<ReadonlyMap<string, readonly string[]>> {
  const { files } = await tree.list(...paths);
  const read = await Promise.all(
    files
      .filter(({ path }) => paths.has(path))
      .map(async (file) => {
        const content = await tree.read(file);
        const text = content.ok ? decodeText(content.value, file.path) : content;
        return text.ok ? ([[file.path, text.value.split(/\r?\n/)]] as const) : [];
      }),
  );
  return new Map(read.flat());
}

/**
 * Reads the files of a revision; what comes back puts them together, over an earlier revision where there is one
 * that shares most of them.
 */
async function readFiles(
  tree: Tree,
  parsed: ParsedFiles,
): Promise<(previous: Reading | undefined) => Reading> {
  const label = { commit: tree.label.revision };
  const top = await tree.list(settingsFile);
  const [file] = top.files;
  const settings = file === undefined ? undefined : await parsed.read(tree, file, 'settings', readSettings);
  const inForce = settings?.ok ? settings.value : bareSettings;
  const { paths } = inForce;
  const listing = await tree.list(paths.storage, paths.prices, paths.policies, paths.waivers);
  const all = async <T>(kind: keyof Paths, reader: Reader<T>): Promise<readonly Outcome<T>[]> =>
    Promise.all(
      listing.files
        .filter((each) => isYaml(each) && within(paths[kind], each))
        .map((each) => parsed.read(tree, each, kind, reader)),
    );
  const [parts, lists, packs, waivers] = await Promise.all([
    all('storage', readEstatePart),
    all('prices', readPriceList),
    all('policies', readRulePack),
    all('waivers', readWaivers),
  ]);
  const ownPacks = packs.flatMap((pack) => (pack.ok ? [pack.value] : []));
  const gathered = gatherRules(ownPacks);
  const uses =
    gathered.ok && anyAsksForUse(gathered.value)
      ? await readUses(tree, parsed, paths.readings)
      : ok(new Map());
  return (previous) => {
    const problems: Problem[] = [...top.problems, ...listing.problems];
    if (settings !== undefined && !settings.ok) problems.push(...settings.problems);
    const declared = those(parts, problems);
    // An earlier estate serves only if it held together, under the very settings that this one is read by.
    const sound =
      previous?.problems.length === 0 &&
      previous.revision.settings === (settings?.ok ? settings.value : undefined);
    const { estate, problems: loose } = assembleWhatHolds(
      declared,
      inForce,
      sound ? previous.revision.estate : undefined,
    );
    problems.push(...(declared.length === parts.length ? loose : loose.map(inPart)));
    const priceLists = those(lists, problems);
    const priced = gatherPriceLists(
      priceLists,
      settings === undefined ? { ...inForce, currency: priceLists[0]?.currency ?? '' } : inForce,
    );
    if (!priced.ok && (settings === undefined || settings.ok)) problems.push(...priced.problems);
    for (const pack of packs) if (!pack.ok) problems.push(...pack.problems);
    if (!gathered.ok) problems.push(...gathered.problems);
    if (!uses.ok) problems.push(...uses.problems);
    const revision: Revision = {
      label,
      settings: settings?.ok ? settings.value : undefined,
      estate,
      priceLists: priced.ok ? priced.value : [],
      rules: gathered.ok ? gathered.value : [],
      packs: ownPacks,
      hasPacks: packs.length > 0,
      waivers: those(waivers, problems).flat(),
      uses: uses.ok ? uses.value : new Map(),
    };
    return { revision, hasPriceLists: lists.length > 0, problems: problems.sort(byPlace) };
  };
}

/** The readings of a revision, as the rules want them; also for a command that shows them. */
export async function readUses(tree: Tree, parsed: ParsedFiles, folder: string): Promise<Outcome<Uses>> {
  const listing = await tree.list(folder);
  if (listing.problems.length > 0) return err(...listing.problems);
  const files = listing.files.filter((file) => isCsv(file) && within(folder, file));
  return files.length === 0 ? ok(new Map()) : parsed.readings(tree, files);
}

/** What could be read; what could not is among the problems. */
function those<T>(outcomes: readonly Outcome<T>[], problems: Problem[]): readonly T[] {
  return outcomes.flatMap((outcome) => {
    if (outcome.ok) return [outcome.value];
    problems.push(...outcome.problems);
    return [];
  });
}

/** With a file unread, a name that is missed may be declared in it. */
const inPart = (problem: Problem): Problem => ({
  ...problem,
  advice: `${problem.advice} It may stand in a file that does not read; mend that first.`,
});

/** The policy that a revision carries, with what it lacks taken from another. */
function policyOf(revision: Revision, other: Revision): Policy {
  const settings = revision.settings ?? other.settings ?? bareSettings;
  const priceLists = revision.priceLists.length > 0 ? revision.priceLists : other.priceLists;
  const policy = { settings, priceLists, rules: revision.rules, waivers: revision.waivers };
  // Readings are evidence, and come with the policy: from the base, where the branch cannot bend them.
  return revision.uses.size === 0 ? policy : { ...policy, usage: usageIn(revision) };
}

const usages = new WeakMap<Revision, ReadonlyMap<string, Usage>>();

/** A revision is the head of one change and the base of the next; its use is worked out once. */
function usageIn(revision: Revision): ReadonlyMap<string, Usage> {
  const known = usages.get(revision);
  if (known !== undefined) return known;
  const usage = usageOf(revision.estate, revision.uses);
  usages.set(revision, usage);
  return usage;
}

/** Two revisions as they are held against each other, and the policy that judges. */
export interface Sides {
  readonly base: Side;
  readonly head: Side;
  readonly policy: Policy;
  readonly policyFrom: 'base' | 'head';
}

export function sidesOf(base: Revision, head: Revision): Sides {
  const policy = policyOf(base, head);
  const own = policyOf(head, base);
  const same =
    policy.settings === own.settings &&
    policy.priceLists === own.priceLists &&
    policy.rules === own.rules &&
    policy.waivers === own.waivers;
  return {
    base: { label: base.label, estate: base.estate, policy },
    head: { label: head.label, estate: head.estate, policy: same ? policy : own },
    ...(base.hasPacks ? { policy, policyFrom: 'base' } : { policy: own, policyFrom: 'head' }),
  };
}

/**
 * Judges two revisions as the gate does: by the base's policy; by the head's only where the base has no rule pack
 * at all.
 */
export function judgeRevisions(
  base: Revision,
  head: Revision,
  options: Omit<JudgeOptions, 'policyFrom'>,
): Judgement {
  const lacking = nothingToJudgeBy(base, head);
  if (lacking !== undefined) return notJudged([lacking], options.on, { base: base.label, head: head.label });
  const sides = sidesOf(base, head);
  return judge(sides.base, sides.head, sides.policy, { ...options, policyFrom: sides.policyFrom });
}

/** What two revisions that read well still lack. */
export function nothingToJudgeBy(base: Revision, head: Revision): Problem | undefined {
  if (!base.hasPacks && !head.hasPacks) {
    const folder = (head.settings ?? base.settings)?.paths.policies ?? usualPaths.policies;
    return {
      message: `there is no rule pack in ${folder}/, so there is nothing to judge by`,
      advice: 'Run `ullage new` for a starter layout, or write a pack with `use: [starter]`.',
    };
  }
  if (base.settings === undefined && head.settings === undefined) {
    return {
      message: `there is no ${settingsFile} at the top of the repository`,
      advice: "Write one with the estate's currency, such as `currency: EUR`.",
    };
  }
  // What a branch takes away, main lacks after the merge, and every later change with it.
  if (base.settings !== undefined && head.settings === undefined) {
    return {
      message: `the branch takes ${settingsFile} away, and main could not be judged after the merge`,
      advice: 'Put it back.',
    };
  }
  if (base.priceLists.length > 0 && head.priceLists.length === 0) {
    const folder = (base.settings ?? bareSettings).paths.prices;
    return {
      message: `the branch takes the last price list in ${folder}/ away, and main could not be judged after the merge`,
      advice: 'Leave a price list in place.',
    };
  }
  if (base.hasPacks && !head.hasPacks) {
    const folder = (base.settings ?? bareSettings).paths.policies;
    return {
      message: `the branch takes the last rule pack in ${folder}/ away, and main could not be judged after the merge`,
      advice: 'Leave a pack in place, if only one without rules, so that what is let through is on record.',
    };
  }
  return undefined;
}

/** Reads and judges two trees; whatever stands in the way of either is reported together. */
export async function judgeTrees(
  base: Tree,
  head: Tree,
  parsed: ParsedFiles,
  options: Omit<JudgeOptions, 'policyFrom'>,
): Promise<Judgement> {
  const [before, after] = await Promise.all([readFiles(base, parsed), readFiles(head, parsed)]);
  const onBase = before(undefined);
  const onHead = after(onBase);
  const labels = { base: onBase.revision.label, head: onHead.revision.label };
  const shownIn = ({ revision }: Problem): Tree => (revision === 'base' ? base : head);
  const told = async (problems: readonly Problem[]): Promise<Judgement> =>
    notJudged(await withExcerpts(problems, shownIn), options.on, labels);
  if (onBase.problems.length > 0 || onHead.problems.length > 0)
    return told(problemsOfBoth(onBase, onHead, options.on));
  const judgement = judgeRevisions(onBase.revision, onHead.revision, options);
  if (judgement.verdict !== 'not judged' || judgement.problems.every(({ place }) => place === undefined))
    return judgement;
  // The judge tells no revision apart; what each of the two lacks by itself can be told.
  const known = problemsOfBoth(onBase, onHead, options.on);
  const keys = new Set(known.map(problemKey));
  return told([...known, ...judgement.problems.filter((problem) => !keys.has(problemKey(problem)))]);
}

/** The head's problems, then the base's own; what both have is the base's, and is said to be there already. */
function problemsOfBoth(base: Reading, head: Reading, on: string): readonly Problem[] {
  const onBase = [...base.problems, ...unpricedIn(base, head, on)].map(
    (problem): Problem => ({ ...problem, revision: 'base' }),
  );
  const known = new Set(onBase.map(problemKey));
  const onHead = [...head.problems, ...unpricedIn(head, base, on)]
    .filter((problem) => !known.has(problemKey(problem)))
    .map((problem): Problem => ({ ...problem, revision: 'head' }));
  return [...onHead, ...onBase];
}

/** What no price list prices, of a revision that has other problems too: they are to be mended in one go. */
function unpricedIn({ revision, hasPriceLists }: Reading, other: Reading, on: string): readonly Problem[] {
  const policy = policyOf(revision, other.revision);
  const list = listInForce(policy.priceLists, on);
  if (list === undefined) {
    const unread = policy.priceLists.length === 0 && (hasPriceLists || other.hasPriceLists);
    return unread ? [] : [noPriceList(policy, on)];
  }
  const cost = priceEstate(revision.estate, list, policy.settings, on);
  return cost.ok ? [] : cost.problems;
}
