/** `ullage steps`: the steps of a change alone, and what of them is done. */
import { readFile } from 'node:fs/promises';
import { text } from 'node:stream/consumers';
import { judgeAgainstMain } from '../audit/against-main.ts';
import { offer } from '../base/nearest.ts';
import { err, type Outcome, ok, outcomeOf, type PartialOutcome, whatHolds } from '../base/problem.ts';
import { counted } from '../base/wording.ts';
import { bareSettings, settingsFile } from '../estate/settings.ts';
import { holdsCommit, isUntouched, resolveRevisions } from '../git/compare.ts';
import { isObjectId } from '../git/object-store.ts';
import type { Tree } from '../git/tree.ts';
import { type Judged, type Judgement, notJudged } from '../policy/judgement.ts';
import type { ReadingPair } from '../policy/pair.ts';
import { readSurveys } from '../policy/surveys.ts';
import { listInForce } from '../price/price-list.ts';
import { report, reportProblems, summaryLine } from '../report/report.ts';
import { type Doer, ofOtherMain, reportSteps, type StepsFormat } from '../report/steps.ts';
import { earlierList, type ListOf, listsIn } from '../runbook/list-of.ts';
import type { Step } from '../runbook/step.ts';
import { surveyedTicks } from '../runbook/surveyed-ticks.ts';
import { type Done, readTicks } from '../runbook/ticks.ts';
import { compareSurveys, type SurveyComparison } from '../survey/compare.ts';
import { dayOf, type Finished, type ReportFlags, reasonOf, terminal } from './edge.ts';
import { notPushedRemark } from './not-pushed.ts';
import { withRepository } from './repository.ts';

export interface StepsFlags extends ReportFlags {
  readonly repo: string;
  readonly base?: string;
  readonly head?: string;
  readonly worktree?: boolean;
  readonly server?: string;
  readonly by?: Doer;
  readonly done?: string;
  readonly now?: string;
  readonly format: StepsFormat;
}

export async function runSteps(flags: StepsFlags): Promise<Finished> {
  const given = flags.done === undefined ? undefined : await givenList(flags.done);
  const found = await judged(flags, given?.ok ? given.value.lists : []);
  return { ...(await told(found, given, flags)), remarks: found.remarks ?? [] };
}

/** A list that somebody gives back, and whose it is. */
interface GivenList {
  readonly said: string;
  readonly file: string;
  readonly lists: readonly ListOf[];
}

async function told(
  { judgement, surveys, earlier = [], lists }: StepsJudged,
  given: Outcome<GivenList> | undefined,
  flags: StepsFlags,
): Promise<Finished> {
  const { format, server, by } = flags;
  if (judgement.verdict === 'not judged') {
    const form = format === 'mermaid' ? 'text' : format;
    const output = await report(form, judgement, terminal(flags));
    return { output, code: 2, reason: summaryLine(judgement) };
  }
  const { runbook, changes } = judgement;
  const ticks = ticksIn(given, earlier, judgement);
  const asked = server === undefined ? ok(undefined) : serverOf(server, runbook);
  const problems = [...(ticks.ok ? [] : ticks.problems), ...(asked.ok ? [] : asked.problems)];
  const done = whatHolds(ticks);
  if (done === undefined || !asked.ok)
    return {
      output: reportProblems(problems, terminal(flags)),
      code: 2,
      reason: done === undefined ? 'what is ticked cannot be read' : 'the server is not known',
    };
  if (surveys?.ok === false)
    return {
      output: reportProblems(surveys.problems, terminal(flags)),
      code: 2,
      reason: 'a survey cannot be read',
    };
  const surveyed =
    surveys === undefined ? [] : surveyedTicks({ steps: runbook, changes, done, ...surveys.value });
  const overview = {
    judged: judgement,
    done,
    problems,
    surveyed,
    ...(given?.ok ? { lists: lists ?? given.value.lists } : {}),
    ...(server === undefined ? {} : { server }),
    ...(by === undefined ? {} : { by }),
  };
  const output = reportSteps(overview, format, terminal(flags));
  if (problems.length > 0)
    return { output, code: 2, reason: `${counted(problems.length, 'problem')} with the ticks` };
  if (judgement.verdict === 'fail') return { output, code: 1, reason: summaryLine(judgement) };
  if (surveyed.length > 0) return { output, code: 1, reason: 'a survey shows otherwise than the ticks' };
  return ofOtherMain(overview).length === 0
    ? { output, code: 0 }
    : { output, code: 1, reason: 'the ticks are of another main' };
}

interface StepsJudged {
  readonly judgement: Judgement;
  /** Beside either revision; only where ticks are to be held against them. */
  readonly surveys?: Outcome<Surveyed>;
  readonly remarks?: readonly string[];
  /** Of the lists that were given, those of a change that the base has already. */
  readonly earlier?: readonly ListOf[];
  /** The lists that were given; of this main where it has not another estate since. */
  readonly lists?: readonly ListOf[];
}

interface Surveyed extends Readonly<Record<'before' | 'after', SurveyComparison>> {
  readonly taken: ReadonlyMap<string | undefined, string>;
}

async function judged(flags: StepsFlags, lists: readonly ListOf[]): Promise<StepsJudged> {
  const day = dayOf(flags.now);
  if (!day.ok) return { judgement: notJudged(day.problems, '') };
  const on = day.value;
  const found = await withRepository(flags.repo, async (repository): Promise<Outcome<StepsJudged>> => {
    const compared = await resolveRevisions(repository, flags);
    if (!compared.ok) return compared;
    const { judgement, readings } = await judgeAgainstMain(repository, compared.value, { on, backTest: 0 });
    const remarks = notPushedRemark(compared.value);
    if (flags.done === undefined) return ok({ judgement, remarks });
    const { baseCommit, head } = compared.value;
    const isEarlier = await Promise.all(
      lists.map(
        (list) =>
          list.base !== baseCommit && isObjectId(list.head) && holdsCommit(repository, list.head, baseCommit),
      ),
    );
    const earlier = lists.filter((_, index) => isEarlier[index]);
    const { paths } = readings.base.revision.settings ?? bareSettings;
    const folders = [settingsFile, paths.storage, paths.procedures];
    // Where main has gone on without a change of its estate, the steps start from what they did.
    const current = await Promise.all(
      lists.map(async (list) =>
        list.base !== baseCommit &&
        isObjectId(list.base) &&
        (await isUntouched(repository, list.base, baseCommit, folders))
          ? { ...list, base: baseCommit }
          : list,
      ),
    );
    return ok({ judgement, remarks, earlier, lists: current, surveys: await surveyedIn(head, readings, on) });
  });
  return found.ok ? found.value : { judgement: notJudged(found.problems, on) };
}

/** The head's surveys, whoever brought them: they judge nothing here, and only tell how it stands. */
async function surveyedIn(tree: Tree, { base, head }: ReadingPair, on: string): Promise<Outcome<Surveyed>> {
  const { settings, priceLists } = head.revision;
  const surveys = await readSurveys(tree, (settings ?? bareSettings).paths.surveys);
  if (!surveys.ok) return surveys;
  const list = listInForce(priceLists, on);
  const beside = ({ revision }: ReadingPair['base']): SurveyComparison =>
    compareSurveys(revision.estate, surveys.value, list);
  const { servers, provider } = surveys.value;
  const taken = new Map<string | undefined, string>([
    ...servers.map(({ server, at }) => [server, at] as const),
    ...(provider === undefined ? [] : [[undefined, provider.at] as const]),
  ]);
  return ok({ before: beside(base), after: beside(head), taken });
}

async function givenList(file: string): Promise<Outcome<GivenList>> {
  try {
    const said = file === '-' ? await text(process.stdin) : await readFile(file, 'utf8');
    return ok({ said, file, lists: listsIn(said, file) });
  } catch (error) {
    return err({
      message: `${file} cannot be read: ${reasonOf(error)}`,
      advice: 'Name the file that `ullage steps --format markdown` or `--format json` was kept in.',
    });
  }
}

/** @param earlier those of the given lists that are of a change which main had before */
function ticksIn(
  given: Outcome<GivenList> | undefined,
  earlier: readonly ListOf[],
  { runbook, on, base }: Judged,
): PartialOutcome<Done> {
  if (given === undefined) return ok(new Map());
  if (!given.ok) return given;
  if (earlier.length > 0)
    return outcomeOf(
      new Map(),
      earlier.map((list) => earlierList(list, base.commit)),
    );
  return readTicks(given.value.said, given.value.file, runbook, on);
}

/** A name with a slip in it would show a server without any step. */
function serverOf(server: string, steps: readonly Step[]): Outcome<undefined> {
  const named = [...new Set(steps.flatMap((step) => step.server ?? []))].sort();
  if (named.includes(server)) return ok(undefined);
  const known =
    named.length === 0 ? 'No step is about a server.' : `There are steps for ${named.join(', ')}.`;
  return err({
    message: `no step is about a server ${server}`,
    advice: `${offer(server, named)}${known}`,
  });
}
