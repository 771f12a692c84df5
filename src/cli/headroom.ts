/** `ullage headroom`: what headroom is left, layer by layer. */
import { type EstateChanges, estateChanges } from '../audit/estate-changes.ts';
import { ok } from '../base/problem.ts';
import { headroomOf } from '../capacity/headroom.ts';
import { idleOf } from '../capacity/idle.ts';
import { layersOf } from '../capacity/layers.ts';
import { type Usage, usageOf } from '../capacity/usage.ts';
import type { GitRepository } from '../git/repository.ts';
import { readUses } from '../policy/reader.ts';
import { readSurveys } from '../policy/surveys.ts';
import { listInForce } from '../price/price-list.ts';
import { type HeadroomFormat, reportHeadroom } from '../report/headroom.ts';
import { capacityIn } from '../survey/measured.ts';
import { type Finished, type ReportFlags, terminal } from './edge.ts';
import { notTold } from './not-told.ts';
import { readFromHere, shownOn, withRepository } from './repository.ts';

export interface HeadroomFlags extends ReportFlags {
  readonly repo: string;
  readonly at?: string;
  readonly now?: string;
  readonly format: HeadroomFormat;
}

export async function runHeadroom(flags: HeadroomFlags): Promise<Finished> {
  const { repo, format } = flags;
  const overview = await withRepository(repo, async (repository) => {
    const shown = await shownOn(repository, flags);
    if (!shown.ok) return shown;
    const { on, tree, settings, revision } = shown.value;
    const { estate, priceLists } = revision;
    const uses = await readUses(tree, settings.paths.readings);
    if (!uses.ok) return uses;
    const surveys = await readSurveys(tree, settings.paths.surveys);
    if (!surveys.ok) return surveys;
    const measured = capacityIn(estate, surveys.value);
    // Room is room without prices too; only what idle capacity costs needs a list.
    const list = listInForce(priceLists, on);
    const usage = usageOf(estate, uses.value).bySystem;
    return ok({
      on,
      estate,
      history: format === 'html' ? await historyOf(repository, flags.at, usage) : undefined,
      currency: settings.currency,
      rooms: headroomOf(estate, settings, undefined, measured).rooms,
      accounts: layersOf(estate, usage, measured),
      idle: list === undefined ? [] : idleOf(estate, list, undefined, measured),
    });
  });
  if (!overview.ok) {
    return notTold(overview.problems, flags, 'not judged: the estate cannot be read');
  }
  const output = reportHeadroom(overview.value, format, terminal(flags));
  return { output, code: 0, remarks: readFromHere(flags.at) };
}

/** What commits made of the estate since the first reading; undefined where it cannot be told, and without readings. */
async function historyOf(
  repository: GitRepository,
  at: string | undefined,
  usage: ReadonlyMap<string, Usage>,
): Promise<EstateChanges | undefined> {
  const [since] = [...usage.values()]
    .flatMap(({ summary: { highest } }) => highest[0]?.at.slice(0, 10) ?? [])
    .sort();
  if (since === undefined || repository.head === undefined) return undefined;
  const to = await repository.resolveCommit(at ?? 'HEAD');
  const found = to.ok ? await estateChanges(repository, { to: to.value, since }) : to;
  return found.ok ? found.value : undefined;
}
