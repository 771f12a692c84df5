/**
 * What main is compared with where main itself does not read.
 *
 * Its estate is that of the nearest first-parent ancestor that reads, so everything since is judged as one change, and
 * no branch can choose another. Its policy is main's own, part by part, where that part reads, and the ancestor's where
 * it does not. Where no ancestor reads there is nothing to compare with, and the head is judged alone, as a first
 * adoption.
 */

import { err, type Outcome, ok, type Problem } from '../base/problem.ts';
import { usageOf } from '../capacity/usage.ts';
import type { Estate } from '../estate/estate.ts';
import { type Settings, settingsFile } from '../estate/settings.ts';
import { emptyTree, type Tree } from '../git/tree.ts';
import { listInForce, type PriceList } from '../price/price-list.ts';
import { capacityIn } from '../survey/measured.ts';
import { isOfThisClone } from './elsewhere.ts';
import { within } from './files.ts';
import type { PolicySource, UnreadMain } from './judgement.ts';
import type { Waiver } from './policy.ts';
import { priced } from './priced.ts';
import { emptyReading, type Part, pathsOf, problemsIn, type Reading, readNext } from './reader.ts';
import { nothingToJudgeBy, policyOf, type Revision, type Sides, sidesOf } from './revision.ts';

/**
 * Whether a revision reads: nothing in it is wrong, and by its own prices it can be priced on the day. One that has no
 * price list is priced by the other side's.
 */
export function readsOn(reading: Reading, on: string): boolean {
  if (problemsIn(reading).length > 0) return false;
  const { revision } = reading;
  return !revision.hasPriceLists || priced(revision.estate, policyOf(revision, revision), on).ok;
}

/** What of a policy a main that reads has none of, and the head has: unless it is adopted, main has lost it. */
type Lacked = 'rule pack' | 'price list' | 'settings';

/** What main may have lost: two branches that each take one of two packs away leave none, and neither took the last. */
export function lackedBy(main: Reading, head: Reading): Lacked | undefined {
  const [base, its] = [main.revision, head.revision];
  if (main.tree === emptyTree || !isSound(main) || !isSound(head)) return undefined;
  if (!its.hasPacks || its.settings === undefined) return undefined;
  if (!base.hasPacks) return 'rule pack';
  if (!base.hasPriceLists && its.hasPriceLists) return 'price list';
  return base.settings === undefined ? 'settings' : undefined;
}

const isSound = (reading: Reading): boolean => problemsIn(reading).length === 0;

function hasOwn({ revision }: Reading, lacked: Lacked): boolean {
  switch (lacked) {
    case 'rule pack':
      return revision.hasPacks;
    case 'price list':
      return revision.hasPriceLists;
    case 'settings':
      return revision.settings !== undefined;
  }
}

interface Found {
  /** The ancestor; of nothing where none reads. */
  readonly sound: Reading;
  /** How many commits of main do not read, its tip among them. */
  readonly commits: number;
  /** Whether any ancestor had what main lacks. */
  readonly had: boolean;
}

/** @param ancestors of main's tip, nearest first */
async function nearestThatReads(
  main: Reading,
  ancestors: AsyncIterable<Outcome<Tree>>,
  on: string,
  lacked: Lacked | undefined,
): Promise<Outcome<Found>> {
  const serves = (reading: Reading): boolean =>
    readsOn(reading, on) && (lacked === undefined || hasOwn(reading, lacked));
  let had = false;
  let commits = 1;
  let reading = main;
  for await (const tree of ancestors) {
    if (!tree.ok) return tree;
    reading = await readNext(reading, tree.value);
    // Whether it reads cannot be told; a still older one would judge by an older policy.
    const missing = problemsIn(reading).find(isOfThisClone);
    if (missing !== undefined) return err(inAncestor(missing, tree.value.label.revision));
    if (serves(reading)) return ok({ sound: reading, commits, had: true });
    had ||= lacked === undefined || hasOwn(reading, lacked);
    commits += 1;
  }
  return ok({ sound: emptyReading, commits, had });
}

const inAncestor = ({ message, advice }: Problem, commit: string): Problem => ({
  message: `main does not read, and what stands in for it may be ${commit}, of which this is not known: ${message}`,
  advice,
});

/**
 * The two sides of a judgement where main does not read, or has lost a part of its policy, and the head does not lack it.
 *
 * @returns undefined where main never had what it lacks
 */
export async function sidesInstead(
  main: Reading,
  head: Reading,
  ancestors: AsyncIterable<Outcome<Tree>>,
  on: string,
  lacked?: Lacked,
): Promise<Outcome<Sides | undefined>> {
  const found = await nearestThatReads(main, ancestors, on, lacked);
  if (!found.ok) return found;
  if (!found.value.had && lacked !== undefined) return ok(undefined);
  const { sound, commits } = found.value;
  const { revision, sources } = revisionInstead(main, sound, on);
  const lacking = nothingToJudgeBy(revision, head.revision);
  if (lacking !== undefined) return err(lacking);
  const sides = sidesOf(revision, head.revision);
  const { policy, filled } = withPricesFilled(main.estate.value, sides, on);
  const ancestor = sound === emptyReading ? undefined : sound.revision.label;
  const unreadMain: UnreadMain = {
    comparedWith: ancestor,
    commits,
    problem: lacked === undefined ? whyUnread(main, on) : lostIn(main, lacked),
    policy: {
      settings: revision.settings === undefined ? 'branch' : sources.settings,
      prices: revision.priceLists.length === 0 ? 'branch' : sources.prices,
      rules: revision.hasPacks ? sources.rules : 'branch',
      waivers: revision.hasPacks ? sources.waivers : 'branch',
    },
    pricedByBranch: filled,
  };
  return ok({ ...sides, policy, unreadMain });
}

/** The first of what is wrong with main. */
function whyUnread(main: Reading, on: string): Problem {
  const [first] = problemsIn(main);
  if (first !== undefined) return first;
  const cost = priced(main.estate.value, policyOf(main.revision, main.revision), on);
  const [unpriced] = cost.ok ? [] : cost.problems;
  return unpriced ?? { message: 'main cannot be read', advice: 'Run `ullage gate --worktree` on main.' };
}

function lostIn(main: Reading, lacked: Lacked): Problem {
  const { prices, policies } = pathsOf(main);
  const what = {
    'rule pack': `there is no rule pack left in ${policies}/`,
    'price list': `there is no price list left in ${prices}/`,
    settings: `${settingsFile} is gone`,
  }[lacked];
  return { message: what, advice: 'Put it back in a branch of its own, as it was or as it is to be.' };
}

/** The estate of an ancestor, with each part of the policy main's own where that reads. */
function revisionInstead(main: Reading, sound: Reading, on: string) {
  const source = (reads: boolean): PolicySource => (reads ? 'main' : 'ancestor');
  const ownSettings = main.settings.value !== undefined && main.settings.problems.length === 0;
  const paths = pathsOf(main);
  const ownPrices =
    ownSettings &&
    main.revision.hasPriceLists &&
    partReads(main, main.prices, paths.prices) &&
    [main.revision.estate, sound.revision.estate].every(
      (estate) => priced(estate, policyOf(main.revision, main.revision), on).ok,
    );
  const ownRules =
    main.revision.hasPacks &&
    partReads(main, main.rules, paths.policies) &&
    main.elsewhere.problems.length === 0 &&
    main.uses.problems.length === 0 &&
    main.settings.problems.length === 0;
  const waivers = waiversThatRead(main);
  const settings = settingsBeside(ownPrices, main, sound);
  const rules = ownRules ? main.revision : sound.revision;
  const uses = main.uses.value;
  const usage = ownRules
    ? uses.size === 0
      ? undefined
      : usageOf(sound.revision.estate, uses)
    : sound.revision.usage;
  const { surveys } = (ownRules ? main : sound).revision;
  const revision: Revision = {
    label: main.revision.label,
    settings,
    estate: sound.revision.estate,
    priceLists: (ownPrices ? main : sound).revision.priceLists,
    hasPriceLists: (ownPrices ? main : sound).revision.hasPriceLists,
    rules: rules.rules,
    packs: rules.packs,
    elsewhere: rules.elsewhere,
    hasPacks: rules.hasPacks,
    waivers: waivers ?? sound.revision.waivers,
    usage,
    surveys,
    measured: capacityIn(sound.revision.estate, surveys),
    procedures: (partReads(main, main.procedures, paths.procedures) ? main : sound).revision.procedures,
  };
  const sources = {
    settings: source(settings === main.settings.value),
    prices: source(ownPrices),
    rules: source(ownRules),
    waivers: source(waivers !== undefined),
  };
  return { revision, sources };
}

/** Main's own settings where they read; but prices of another currency bring theirs with them. */
function settingsBeside(ownPrices: boolean, main: Reading, sound: Reading): Settings | undefined {
  const own = main.settings.problems.length === 0 ? main.settings.value : undefined;
  const old = sound.revision.settings;
  if (own === undefined) return old;
  const fits = ownPrices || old === undefined || old.currency === own.currency;
  return fits ? own : old;
}

/** The waivers of a revision; undefined where not all of them read. */
export const waiversThatRead = (
  reading: Pick<Reading, 'settings' | 'files' | 'waivers'>,
): readonly Waiver[] | undefined =>
  reading.settings.problems.length === 0 && partReads(reading, reading.waivers, pathsOf(reading).waivers)
    ? reading.waivers.value
    : undefined;

/** Whether all files of a part read, and nothing lies among them that is no file. */
function partReads({ files }: Pick<Reading, 'files'>, { problems }: Part<unknown>, folder: string): boolean {
  const isThere = ({ place }: Problem): boolean =>
    place === undefined ||
    place.file === folder ||
    within(folder, place.file) ||
    folder.startsWith(`${place.file}/`);
  return problems.length === 0 && !files.problems.some(isThere);
}

/**
 * The judging policy, with the branch's prices for what main declares and no list on main prices. Without them a price
 * that went too early could never be put back. All else keeps the price of main's list, whatever the branch says.
 */
function withPricesFilled({ volumes, servers }: Estate, { policy, head }: Sides, on: string) {
  const list = listInForce(policy.priceLists, on);
  const proposed = listInForce(head.policy.priceLists, on);
  const none = { policy, filled: [] };
  if (list === undefined || proposed === undefined || list.currency !== proposed.currency) return none;
  const tiers = lacking(
    [...volumes.values()].map(({ tier }) => tier),
    list.tiers,
    proposed.tiers,
  );
  const types = lacking(
    [...servers.values()].flatMap(({ type }) => type ?? []),
    list.serverTypes,
    proposed.serverTypes,
  );
  if (tiers.length + types.length === 0) return none;
  const filledIn: PriceList = {
    ...list,
    tiers: new Map([...list.tiers, ...tiers]),
    serverTypes: new Map([...list.serverTypes, ...types]),
  };
  return {
    policy: { ...policy, priceLists: policy.priceLists.map((each) => (each === list ? filledIn : each)) },
    filled: [...tiers, ...types].map(([name]) => name),
  };
}

const lacking = <T>(
  names: readonly string[],
  there: ReadonlyMap<string, T>,
  proposed: ReadonlyMap<string, T>,
): readonly (readonly [string, T])[] =>
  [...new Set(names)].sort().flatMap((name): readonly (readonly [string, T])[] => {
    const price = proposed.get(name);
    return there.has(name) || price === undefined ? [] : [[name, price]];
  });
