/**
 * The one reader: a revision is read as the one before it and what differs. The first of all stands on nothing. Each
 * part is read by itself, so that a fault in one does not hide what the others say, nor the faults in them.
 */

import { byPlace, err, type Outcome, ok, type Problem, whatHolds } from '../base/problem.ts';
import { type EstateUsage, usageOf } from '../capacity/usage.ts';
import { readAgain } from '../estate/again.ts';
import { assembleOver } from '../estate/assemble.ts';
import { type Estate, type EstatePart, emptyEstate } from '../estate/estate.ts';
import { mayDiffer } from '../estate/layered.ts';
import { readEstatePart } from '../estate/part.ts';
import { missedBeside } from '../estate/references.ts';
import { bareSettings, type Paths, readSettings, type Settings, settingsFile } from '../estate/settings.ts';
import { emptyTree, type Tree } from '../git/tree.ts';
import { gatherPriceLists, type PriceList, readPriceList } from '../price/price-list.ts';
import { type DeclaredProcedures, readProcedures } from '../runbook/procedure-file.ts';
import {
  gatherProcedures,
  guestProblems,
  type Procedures,
  plainProcedures,
  siteProblems,
} from '../runbook/procedures.ts';
import { capacityIn, type SurveyedCapacity } from '../survey/measured.ts';
import { type ElsewhereRead, elsewhereAfter, nothingElsewhere } from './elsewhere.ts';
import { withExcerpts } from './excerpts.ts';
import {
  type ChangedPaths,
  type FileList,
  inOrder,
  listFiles,
  type Pieces,
  readFile,
  readPieces,
} from './files.ts';
import { gatherRules, readRulePack } from './pack.ts';
import { type PolicyRule, usesReadings, usesSurveys, type Waiver } from './policy.ts';
import type { Revision } from './revision.ts';
import type { RulePack } from './rule-pack.ts';
import { type SurveysRead, surveysAfter } from './surveys.ts';
import { type Uses, type UsesRead, usesAfter } from './uses.ts';
import { readWaivers } from './waiver.ts';

/** A part of a revision: what could be read of it, and all that is wrong with it. Sound where nothing is. */
export interface Part<T> {
  readonly value: T;
  readonly problems: readonly Problem[];
}

/** A part that is made of several files. */
interface PartOfFiles<T, P> extends Part<T> {
  readonly pieces: Pieces<P>;
}

interface SettingsPart extends Part<Settings | undefined> {
  /** The blob id of the file; `undefined` where there is none. */
  readonly blob: string | undefined;
}

interface EstateRead extends PartOfFiles<Estate, EstatePart> {
  /** What is wrong with each file that does not read, by its path. */
  readonly unread: ReadonlyMap<string, readonly Problem[]>;
  /** The last estate under the same settings that held together: what the next is assembled over. */
  readonly sound: {
    readonly settings: Settings | undefined;
    readonly estate: Estate;
    readonly pieces: Pieces<EstatePart>;
  };
}

interface Rules {
  readonly entries: readonly PolicyRule[];
  readonly packs: readonly RulePack[];
}

/** One revision as it was read, part by part. */
export interface Reading {
  readonly tree: Tree;
  readonly files: FileList;
  readonly settings: SettingsPart;
  readonly estate: EstateRead;
  readonly prices: PartOfFiles<readonly PriceList[], PriceList>;
  readonly rules: PartOfFiles<Rules, RulePack>;
  /** The packs of other repositories. */
  readonly elsewhere: ElsewhereRead;
  readonly waivers: PartOfFiles<readonly Waiver[], readonly Waiver[]>;
  readonly procedures: PartOfFiles<Procedures, DeclaredProcedures>;
  /** Servers whose guest has no procedures, and procedures of sites that there are not. */
  readonly guests: Part<undefined>;
  /** Readings, summarised by server and mount point. They are many and large: without a rule that asks none is read. */
  readonly uses: UsesRead;
  /** Measured use by file system, by the revision's own readings; `undefined` where there are none. */
  readonly usage: EstateUsage | undefined;
  readonly surveys: SurveysRead;
  /** What they measure of the revision's own estate. */
  readonly measured: SurveyedCapacity | undefined;
  /** What holds of all parts together; it is judged only where `problemsIn` finds none. */
  readonly revision: Revision;
}

/** The revision of nothing, on which the first one stands. */
export const emptyReading: Reading = withRevision({
  tree: emptyTree,
  files: { files: new Map(), problems: [] },
  settings: { value: undefined, problems: [], blob: undefined },
  estate: {
    value: emptyEstate,
    problems: [],
    pieces: new Map(),
    unread: new Map(),
    sound: { settings: undefined, estate: emptyEstate, pieces: new Map() },
  },
  prices: { value: [], problems: [], pieces: new Map() },
  rules: { value: { entries: [], packs: [] }, problems: [], pieces: new Map() },
  elsewhere: nothingElsewhere,
  waivers: { value: [], problems: [], pieces: new Map() },
  procedures: { value: plainProcedures, problems: [], pieces: new Map() },
  guests: { value: undefined, problems: [] },
  uses: { value: new Map(), problems: [], key: undefined },
  usage: undefined,
  surveys: { value: undefined, problems: [], key: undefined },
  measured: undefined,
});

/**
 * Reads a revision.
 *
 * @param previous a revision that may share files with it
 * @param changed the paths that differ from `previous`; where left out, the tree is listed
 */
export async function readNext(previous: Reading, tree: Tree, changed?: ChangedPaths): Promise<Reading> {
  const settings = await settingsAfter(previous.settings, tree, changed);
  const { paths } = settings.value ?? bareSettings;
  // Other settings may move every folder.
  const told = settings === previous.settings ? changed : undefined;
  const { list, change } = await listFiles(previous.files, tree, paths, told);
  const [parts, lists, packs, waived, written] = await Promise.all([
    readPieces(previous.estate.pieces, change, paths.storage, tree, {
      whole: readEstatePart,
      again: readAgain,
    }),
    readPieces(previous.prices.pieces, change, paths.prices, tree, { whole: readPriceList }),
    readPieces(previous.rules.pieces, change, paths.policies, tree, { whole: readRulePack }),
    readPieces(previous.waivers.pieces, change, paths.waivers, tree, { whole: readWaivers }),
    readPieces(previous.procedures.pieces, change, paths.procedures, tree, { whole: readProcedures }),
  ]);
  const same = settings === previous.settings;
  const estate =
    same && parts === previous.estate.pieces
      ? previous.estate
      : estateAfter(previous.estate, parts, settings);
  const elsewhere = await elsewhereAfter(previous.elsewhere, gathered(packs).values, settings, tree);
  const rules =
    packs === previous.rules.pieces && elsewhere === previous.elsewhere
      ? previous.rules
      : rulesIn(packs, elsewhere);
  const procedures = written === previous.procedures.pieces ? previous.procedures : proceduresIn(written);
  const asked = rules.value.entries.some(({ entry }) => usesReadings(entry));
  const uses = asked ? await usesAfter(previous.uses, tree, paths.readings, told) : emptyReading.uses;
  const surveyed = rules.value.entries.some(({ entry }) => usesSurveys(entry));
  const surveys = surveyed ? await surveysAfter(previous.surveys, tree, paths.surveys) : emptyReading.surveys;
  const sameUse = estate.value === previous.estate.value && uses.value === previous.uses.value;
  return withRevision({
    tree,
    files: list,
    settings,
    estate,
    prices: same && lists === previous.prices.pieces ? previous.prices : pricesIn(lists, settings),
    rules,
    elsewhere,
    waivers: waived === previous.waivers.pieces ? previous.waivers : waiversIn(waived),
    procedures,
    guests:
      same && estate.value === previous.estate.value && procedures === previous.procedures
        ? previous.guests
        : guestsIn(estate.value, settings.value ?? bareSettings, procedures),
    uses,
    usage: sameUse
      ? previous.usage
      : uses.value.size === 0
        ? undefined
        : usageOf(estate.value, uses.value, previous.usage),
    surveys,
    measured: capacityIn(estate.value, surveys.value, previous.measured),
  });
}

/** Where a revision's files are. */
export const pathsOf = ({ settings }: Pick<Reading, 'settings'>): Paths =>
  (settings.value ?? bareSettings).paths;

/** Everything that is wrong with a revision. */
export const problemsIn = (reading: Reading) =>
  partsOf(reading)
    .flatMap(({ problems }): readonly Problem[] => problems)
    .sort(byPlace);

const partsOf = (reading: Reading): readonly Pick<Part<unknown>, 'problems'>[] => {
  const { settings, files, estate, prices, rules, elsewhere, uses, surveys, waivers, procedures, guests } =
    reading;
  return [settings, files, estate, prices, rules, elsewhere, uses, surveys, waivers, procedures, guests];
};

/** Reads a revision by itself, or says everything that is wrong with it. */
export async function readRevision(tree: Tree): Promise<Outcome<Revision>> {
  const reading = await readNext(emptyReading, tree);
  const problems = problemsIn(reading);
  return problems.length > 0 ? err(...(await withExcerpts(problems, () => tree))) : ok(reading.revision);
}

/** The waivers of a revision, where nothing else of it is wanted. */
export async function readOnlyWaivers(tree: Tree): Promise<Pick<Reading, 'settings' | 'files' | 'waivers'>> {
  const settings = await settingsAfter(emptyReading.settings, tree, undefined);
  const { paths } = settings.value ?? bareSettings;
  const { list, change } = await listFiles(emptyReading.files, tree, paths, undefined);
  const pieces = await readPieces(emptyReading.waivers.pieces, change, paths.waivers, tree, {
    whole: readWaivers,
  });
  return { settings, files: list, waivers: waiversIn(pieces) };
}

/** The estate of a revision, over what was read of one before it, where nothing else of it is wanted. */
export async function readOnlyEstate(
  previous: Pick<Reading, 'settings' | 'files' | 'estate'>,
  tree: Tree,
): Promise<Pick<Reading, 'settings' | 'files' | 'estate'>> {
  const settings = await settingsAfter(previous.settings, tree, undefined);
  const { paths } = settings.value ?? bareSettings;
  const { list, change } = await listFiles(previous.files, tree, paths, undefined);
  const parts = { whole: readEstatePart, again: readAgain };
  const pieces = await readPieces(previous.estate.pieces, change, paths.storage, tree, parts);
  return { settings, files: list, estate: estateAfter(previous.estate, pieces, settings) };
}

/** The settings of a revision, where nothing else of it is wanted; undefined where it has none. */
export async function readSettingsOf(tree: Tree): Promise<Outcome<Settings | undefined>> {
  const { value, problems } = await settingsAfter(emptyReading.settings, tree, undefined);
  return problems.length === 0 ? ok(value) : err(...(await withExcerpts(problems, () => tree)));
}

/** The rules of a pack that is not a revision's own, with those of the packs that it uses, as the revision lists them. */
export async function rulesUsing(pack: RulePack, tree: Tree): Promise<Outcome<readonly PolicyRule[]>> {
  const settings = await settingsAfter(emptyReading.settings, tree, undefined);
  const { value, problems } = await elsewhereAfter(nothingElsewhere, [pack], settings, tree);
  const all = [...settings.problems, ...problems];
  return all.length > 0 ? err(...(await withExcerpts(all, () => tree))) : gatherRules([pack], value);
}

/** The readings of a revision, for a command that shows them whether a rule asks or not. */
export async function readUses(tree: Tree, folder: string): Promise<Outcome<Uses>> {
  const { value, problems } = await usesAfter(emptyReading.uses, tree, folder, undefined);
  return problems.length > 0 ? err(...problems) : ok(value);
}

function withRevision(reading: Omit<Reading, 'revision'>): Reading {
  const { tree, settings, estate, prices, rules, elsewhere, waivers, procedures, usage, surveys, measured } =
    reading;
  return {
    ...reading,
    revision: {
      label: { commit: tree.label.revision },
      settings: settings.value,
      estate: estate.value,
      priceLists: prices.value,
      hasPriceLists: prices.pieces.size > 0,
      rules: rules.value.entries,
      packs: rules.value.packs,
      elsewhere: elsewhere.value === 'unread' ? new Map() : elsewhere.value,
      hasPacks: rules.pieces.size > 0,
      waivers: waivers.value,
      procedures: procedures.value,
      usage,
      surveys: surveys.value,
      measured,
    },
  };
}

async function settingsAfter(
  before: SettingsPart,
  tree: Tree,
  changed: ChangedPaths | undefined,
): Promise<SettingsPart> {
  const isListed = before.blob !== undefined || before.problems.length === 0;
  if (changed?.has(settingsFile) === false && isListed) return before;
  const { files, problems } = await tree.list(settingsFile);
  const [file] = files;
  if (file?.blob === before.blob && problems.length === 0 && isListed) return before;
  if (file === undefined) return { value: undefined, problems, blob: undefined };
  const settings = await readFile(tree, file, readSettings);
  return {
    value: whatHolds(settings),
    problems: settings.ok ? problems : [...problems, ...settings.problems],
    blob: file.blob,
  };
}

/** Only what differs from the last estate that held together is put over it. */
function estateAfter(
  before: EstateRead,
  pieces: Pieces<EstatePart>,
  { value: settings }: SettingsPart,
): EstateRead {
  const unread = new Map(before.unread);
  for (const path of mayDiffer(before.pieces, pieces)) {
    const outcome = pieces.get(path)?.outcome;
    if (outcome?.ok === false) unread.set(path, outcome.problems);
    else unread.delete(path);
  }
  const sound =
    before.sound.settings === settings
      ? before.sound
      : { settings, estate: emptyEstate, pieces: emptyReading.estate.pieces };
  const coming: EstatePart[] = [];
  const leaving: string[] = [];
  for (const path of mayDiffer(sound.pieces, pieces)) {
    const was = sound.pieces.get(path);
    const now = pieces.get(path);
    if (now === was) continue;
    const part = now === undefined ? undefined : whatHolds(now.outcome);
    if (part !== undefined) coming.push(part);
    else if (was !== undefined) leaving.push(path);
  }
  const {
    estate,
    problems: loose,
    dangling,
  } = assembleOver(
    sound.estate,
    { coming: coming.sort((a, b) => (a.file < b.file ? -1 : 1)), leaving },
    settings ?? bareSettings,
  );
  const unheld = [...unread.keys()].flatMap((path) => {
    const piece = pieces.get(path);
    return piece !== undefined && whatHolds(piece.outcome) !== undefined ? [] : [piece?.text ?? ''];
  });
  const problems = [...[...unread.values()].flat(), ...loose, ...missedBeside(dangling, unheld)];
  return {
    value: estate,
    problems,
    pieces,
    unread,
    sound: problems.length === 0 ? { settings, estate, pieces } : sound,
  };
}

/** What could be read, file by file, and what is wrong with the rest. */
function gathered<T>(pieces: Pieces<T>): {
  readonly values: readonly T[];
  readonly problems: readonly Problem[];
} {
  const outcomes = inOrder(pieces);
  return {
    values: outcomes.flatMap((outcome) => {
      const value = whatHolds(outcome);
      return value === undefined ? [] : [value];
    }),
    problems: outcomes.flatMap((outcome) => (outcome.ok ? [] : outcome.problems)),
  };
}

function pricesIn(pieces: Pieces<PriceList>, settings: SettingsPart): Reading['prices'] {
  const { values, problems } = gathered(pieces);
  // Without settings the first list says the currency; where they are there and do not read, nothing does.
  const currency = settings.blob === undefined ? (values[0]?.currency ?? '') : settings.value?.currency;
  const lists = gatherPriceLists(values, { ...bareSettings, currency: currency ?? '' });
  const ofAll = lists.ok || currency === undefined ? [] : lists.problems;
  return { value: lists.ok ? lists.value : [], problems: [...problems, ...ofAll], pieces };
}

function rulesIn(pieces: Pieces<RulePack>, elsewhere: ElsewhereRead): Reading['rules'] {
  const { values: packs, problems } = gathered(pieces);
  const entries = gatherRules(packs, elsewhere.value);
  return entries.ok
    ? { value: { entries: entries.value, packs }, problems, pieces }
    : { value: { entries: [], packs }, problems: [...problems, ...entries.problems], pieces };
}

function waiversIn(pieces: Pieces<readonly Waiver[]>): Reading['waivers'] {
  const { values, problems } = gathered(pieces);
  return { value: values.flat(), problems, pieces };
}

function proceduresIn(pieces: Pieces<DeclaredProcedures>): Reading['procedures'] {
  const { values, problems } = gathered(pieces);
  const { value, problems: ofAll } = gatherProcedures(values);
  return { value, problems: [...problems, ...ofAll], pieces };
}

/** A kind of guest that is not known may be in a file that does not read, which is told of by itself. */
const guestsIn = (
  estate: Estate,
  settings: Settings,
  { value, problems }: Reading['procedures'],
): Reading['guests'] => ({
  value: undefined,
  problems: [...(problems.length > 0 ? [] : guestProblems(estate, value)), ...siteProblems(settings, value)],
});
