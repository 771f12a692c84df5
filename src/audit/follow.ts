/**
 * A revision followed from commit to commit: what a commit changed is read and put over what was there before, and
 * nothing else is looked at. Only revisions that hold together are followed. Of any other the gate's own way of
 * reading says what is wrong, so that there are not two ways of saying it.
 */

import type { Outcome } from '../base/problem.ts';
import { assembleOver } from '../estate/assemble.ts';
import { type EstatePart, emptyEstate } from '../estate/estate.ts';
import { layered } from '../estate/layered.ts';
import { readEstatePart } from '../estate/part.ts';
import { type Paths, readSettings, type Settings, settingsFile } from '../estate/settings.ts';
import type { ChangedPath } from '../git/history.ts';
import { ListingBuilder, type Tree, type TreeFile } from '../git/tree.ts';
import { gatherRules, type RulePack, readRulePack } from '../policy/pack.ts';
import type { Waiver } from '../policy/policy.ts';
import {
  anyAsksForUse,
  bareSettings,
  isYaml,
  ParsedFiles,
  parse,
  type Revision,
  readUses,
  within,
} from '../policy/revision.ts';
import { readWaivers } from '../policy/waiver.ts';
import { gatherPriceLists, type PriceList, readPriceList } from '../price/price-list.ts';
import type { ReadDocument } from '../read/document.ts';

/** A revision that holds together, and the pieces that the next one is made of. */
export interface Snapshot {
  readonly revision: Revision;
  readonly priceLists: ReadonlyMap<string, PriceList>;
  readonly packs: ReadonlyMap<string, RulePack>;
  readonly waivers: ReadonlyMap<string, readonly Waiver[]>;
  /** Every file in the folders, by its path as a disk that tells neither case nor accents apart sees it. */
  readonly files: ReadonlyMap<string, TreeFile>;
}

/** What lies at a path after some commits; no blob where nothing does. */
export interface PathNow {
  readonly mode: string;
  readonly blob: string;
}

/** The paths that some commits changed. */
export type Changes = ReadonlyMap<string, PathNow>;

export const changesOf = (changed: readonly ChangedPath[]): Changes =>
  new Map(changed.map(({ path, after }) => [path, after]));

/** Nothing at all: what the first commit of all is held against. */
export const emptyTree: Tree = {
  label: { revision: 'nothing', name: 'nothing' },
  list: async () => ({ files: [], problems: [] }),
  read: async () => ({ ok: false, problems: [] }),
};

const kinds = ['storage', 'prices', 'policies', 'waivers'] as const;

export type Touching = (typeof kinds)[number] | 'settings' | 'readings';

/** What a path is to a judgement under these paths; nothing where it is none of its business. */
export const touching = (path: string, paths: Paths): readonly Touching[] =>
  path === settingsFile
    ? ['settings']
    : ([...kinds, 'readings'] as const).filter((kind) => isIn(paths[kind], path));

const isIn = (folder: string, path: string): boolean => folder === '.' || within(folder, { path, blob: '' });

export const pathsOf = ({ revision }: Snapshot): Paths => (revision.settings ?? bareSettings).paths;

const emptyRevision = (settings: Settings | undefined): Snapshot => ({
  revision: {
    label: { commit: 'nothing' },
    settings,
    estate: emptyEstate,
    priceLists: [],
    rules: [],
    packs: [],
    hasPacks: false,
    waivers: [],
    uses: new Map(),
  },
  priceLists: new Map(),
  packs: new Map(),
  waivers: new Map(),
  files: new Map(),
});

export const emptySnapshot: Snapshot = emptyRevision(undefined);

const regular: readonly string[] = ['100644', '100755', '100664'];

/**
 * Reads a revision whole.
 *
 * @param earlier one that may hold some of the same files, which are then not read again
 * @returns undefined where it does not hold together
 */
export async function readWhole(tree: Tree, earlier: Snapshot | undefined): Promise<Snapshot | undefined> {
  const top = await tree.list(settingsFile);
  const [file] = top.files;
  const settings = file === undefined ? undefined : await parse(tree, file, readSettings);
  if (top.problems.length > 0 || settings?.ok === false) return undefined;
  const bare = emptyRevision(settings?.value);
  const paths = pathsOf(bare);
  const listing = await tree.list(paths.storage, paths.prices, paths.policies, paths.waivers);
  if (listing.problems.length > 0) return undefined;
  const changes = new Map(listing.files.map(({ path, blob }) => [path, { mode: '100644', blob }]));
  return followed(bare, changes, tree, earlier, true);
}

/**
 * Follows a revision over some commits.
 *
 * @param tree of the commit that it is followed to
 * @returns undefined where that does not hold together
 */
export async function follow(before: Snapshot, changes: Changes, tree: Tree): Promise<Snapshot | undefined> {
  // Other settings may move every folder, and lists of sites judge every file.
  if (changes.has(settingsFile)) return readWhole(tree, before);
  return followed(before, changes, tree, before, false);
}

async function followed(
  before: Snapshot,
  changes: Changes,
  tree: Tree,
  earlier: Snapshot | undefined,
  whole: boolean,
): Promise<Snapshot | undefined> {
  const paths = pathsOf(before);
  if ([...changes].some((change) => isOdd(change, paths))) return undefined;
  const ofKind = (kind: keyof Paths) => [...changes].filter(([path]) => isIn(paths[kind], path));
  const files = filesAfter(
    before.files,
    [...changes].filter(([path]) => kinds.some((kind) => isIn(paths[kind], path))),
  );
  if (files === undefined) return undefined;
  const piecesOf = async <T>(
    kind: (typeof kinds)[number],
    reader: (document: ReadDocument) => Outcome<T>,
    known: (file: TreeFile) => T | undefined,
  ): Promise<Pieces<T> | undefined> => {
    const coming: [string, T][] = [];
    const leaving: string[] = [];
    const read = await Promise.all(
      ofKind(kind).map(async ([path, { blob }]) => {
        const file = { path, blob };
        if (!isYaml(file)) return undefined;
        if (isGone(blob)) return { file, outcome: undefined };
        const already = known(file);
        return { file, outcome: already === undefined ? await parse(tree, file, reader) : already };
      }),
    );
    for (const each of read) {
      if (each === undefined) continue;
      const { file, outcome } = each;
      if (outcome === undefined) leaving.push(file.path);
      else if (!isOutcome(outcome)) coming.push([file.path, outcome]);
      else if (outcome.ok) coming.push([file.path, outcome.value]);
      else return undefined;
    }
    return { coming, leaving };
  };
  const knownPart = ({ path, blob }: TreeFile): EstatePart | undefined =>
    earlier?.files.get(alike(path))?.blob === blob ? earlier.revision.estate.parts.get(path) : undefined;
  const [storage, prices, policies, waived] = await Promise.all([
    piecesOf('storage', readEstatePart, knownPart),
    piecesOf('prices', readPriceList, () => undefined),
    piecesOf('policies', readRulePack, () => undefined),
    piecesOf('waivers', readWaivers, () => undefined),
  ]);
  if (storage === undefined || prices === undefined || policies === undefined || waived === undefined)
    return undefined;
  const { revision } = before;
  const settings = revision.settings ?? bareSettings;
  const estate = isNothing(storage)
    ? revision.estate
    : assembleOver(
        revision.estate,
        { coming: storage.coming.map(([, part]) => part), leaving: storage.leaving },
        settings,
      );
  const assembled = 'ok' in estate ? estate : { ok: true as const, value: estate };
  if (!assembled.ok) return undefined;
  const priceLists = over(before.priceLists, prices);
  const lists = [...priceLists.values()];
  const priced = isNothing(prices)
    ? { ok: true as const, value: revision.priceLists }
    : gatherPriceLists(
        lists,
        revision.settings === undefined ? { ...settings, currency: lists[0]?.currency ?? '' } : settings,
      );
  const packs = over(before.packs, policies);
  const rules = isNothing(policies)
    ? { ok: true as const, value: revision.rules }
    : gatherRules([...packs.values()]);
  if (!priced.ok || !rules.ok) return undefined;
  const waivers = over(before.waivers, waived);
  const readAgain = whole || !isNothing(policies) || ofKind('readings').length > 0;
  const uses = !anyAsksForUse(rules.value)
    ? { ok: true as const, value: new Map() }
    : readAgain
      ? await readUses(tree, new ParsedFiles(), paths.readings)
      : { ok: true as const, value: revision.uses };
  if (!uses.ok) return undefined;
  return {
    revision: {
      label: { commit: tree.label.revision },
      settings: revision.settings,
      estate: assembled.value,
      priceLists: priced.value,
      rules: rules.value,
      packs: isNothing(policies) ? revision.packs : [...packs.values()],
      hasPacks: packs.size > 0,
      waivers: isNothing(waived) ? revision.waivers : [...waivers.values()].flat(),
      uses: uses.value,
    },
    priceLists,
    packs,
    waivers,
    files,
  };
}

/** What came or changed, with its path, and the paths that went. */
interface Pieces<T> {
  readonly coming: readonly (readonly [string, T])[];
  readonly leaving: readonly string[];
}

const isNothing = ({ coming, leaving }: Pieces<unknown>): boolean =>
  coming.length === 0 && leaving.length === 0;

const isOutcome = <T>(value: T | Outcome<T>): value is Outcome<T> =>
  typeof value === 'object' && value !== null && 'ok' in value;

/** In byte order of the path, as a listing is. */
function over<T>(before: ReadonlyMap<string, T>, pieces: Pieces<T>): ReadonlyMap<string, T> {
  if (isNothing(pieces)) return before;
  const after = new Map(before);
  for (const path of pieces.leaving) after.delete(path);
  for (const [path, piece] of pieces.coming) after.set(path, piece);
  const bytes = new Map([...after.keys()].map((path) => [path, Buffer.from(path)]));
  const none = Buffer.alloc(0);
  return new Map([...after].sort(([a], [b]) => Buffer.compare(bytes.get(a) ?? none, bytes.get(b) ?? none)));
}

const isGone = (blob: string): boolean => /^0+$/.test(blob);

const alike = (path: string): string => path.normalize('NFC').toLowerCase();

/** The files there are now; undefined where two of them could take each other's place on a disk. */
function filesAfter(
  before: Snapshot['files'],
  changed: readonly (readonly [string, PathNow])[],
): Snapshot['files'] | undefined {
  const deleted = new Set<string>();
  for (const [path, { blob }] of changed) {
    if (isGone(blob) && before.get(alike(path))?.path === path) deleted.add(alike(path));
  }
  const set = new Map<string, TreeFile>();
  for (const [path, { blob }] of changed) {
    if (isGone(blob)) continue;
    const key = alike(path);
    const other = set.get(key) ?? (deleted.has(key) ? undefined : before.get(key));
    if (other !== undefined && other.path !== path) return undefined;
    set.set(key, { path, blob });
  }
  return layered(before, { set, deleted });
}

/** Whether a path holds what is no file, or has a name that a listing refuses. */
function isOdd([path, { mode, blob }]: readonly [string, PathNow], paths: Paths): boolean {
  if (isGone(blob)) return false;
  const folders = Object.values(paths);
  const above = folders.some((folder) => folder === path || folder.startsWith(`${path}/`));
  if (above) return !regular.includes(mode);
  if (touching(path, paths).length === 0) return false;
  return !regular.includes(mode) || new ListingBuilder().name(Buffer.from(path)) === undefined;
}

/** Paths that history cannot tell exactly: their bytes are no UTF-8. */
export const isUntold = (path: string): boolean => path.includes('\uFFFD');
