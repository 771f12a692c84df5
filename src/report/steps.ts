/** The steps of a judged branch alone: as text, a check-list in Markdown, JSON, a page, or a graph. */
import type { Problem } from '../base/problem.ts';
import { cautions, counted } from '../base/wording.ts';
import type { Judged } from '../policy/judgement.ts';
import { courseOf } from '../runbook/course.ts';
import type { ListOf } from '../runbook/list-of.ts';
import { isFinal, returningOf } from '../runbook/returning.ts';
import type { Step } from '../runbook/step.ts';
import type { SurveyedTick } from '../runbook/surveyed-ticks.ts';
import { type Done, remaining } from '../runbook/ticks.ts';
import { drawReport, type Screen } from './draw.ts';
import type { StepsReport } from './generated/steps.ts';
import { problemReport, stepReport } from './json.ts';
import { jsonText } from './json-text.ts';
import { drawMarkdown } from './markdown.ts';
import { mermaid } from './mermaid.ts';
import { advice, line, sentence } from './model/blocks.ts';
import type { Field, ReportModel, Section } from './model/model.ts';
import { problemSections } from './model/problems.ts';
import { stepsQuestion } from './model/question.ts';
import { stepBackSection } from './model/step-back.ts';
import { fullStepEntries } from './model/step-entries.ts';
import { checklistOf, courseSentences, opening, stepEntries, waitsOf } from './model/steps.ts';
import { shortCommit } from './model/subjects.ts';
import { surveyedSection } from './model/surveyed-ticks.ts';
import { judgedSentence } from './model/verdict.ts';
import { drawPage } from './page/document.ts';

export type StepsFormat = 'text' | 'markdown' | 'json' | 'html' | 'mermaid';

/** Who does a step: somebody at the provider, somebody in a guest, or people who make sure. */
export type Doer = 'provider' | 'guest' | 'people';

export interface StepsOverview {
  readonly judged: Judged;
  readonly done: Done;
  /** What is wrong with the ticks, which are taken as far as they hold. */
  readonly problems?: readonly Problem[];
  /** Of which main and which branch the lists are that the ticks were given in, as far as they say. */
  readonly lists?: readonly ListOf[];
  /** What surveys show against the ticks, where ticks were given. */
  readonly surveyed?: readonly SurveyedTick[];
  /** Of which server steps are wanted, and by whom; all where left out. */
  readonly server?: string;
  readonly by?: Doer;
}

export function reportSteps(overview: StepsOverview, format: StepsFormat, screen: Screen): string {
  switch (format) {
    case 'text':
      return drawReport(stepsModel(overview), screen);
    case 'markdown':
      return drawMarkdown(stepsModel(overview, [listField(overview.judged)]));
    case 'json':
      return jsonText(stepsJson(overview));
    case 'html':
      return drawPage(stepsModel(overview), 'ullage steps --format json');
    case 'mermaid':
      return mermaid(wanted(overview), overview.done);
  }
}

/** The lists that were printed for main as it was at another commit, where any tick is of them. */
export const ofOtherMain = ({ judged, done, lists = [] }: StepsOverview): readonly ListOf[] =>
  done.size === 0 ? [] : lists.filter(({ base }) => base !== judged.base.commit);

const doerOf = ({ at }: Step): Doer => (at === 'check' ? 'people' : at);

/** The steps that are asked for, in order. */
export const wanted = ({ judged, server, by }: StepsOverview): readonly Step[] =>
  judged.runbook.filter(
    (step) => (server === undefined || step.server === server) && (by === undefined || doerOf(step) === by),
  );

/** @param ofList what a list says of itself, so that its ticks can be told from another's */
function stepsModel(overview: StepsOverview, ofList: readonly Field[] = []): ReportModel {
  const { judged, done, server, by, problems = [], surveyed = [] } = overview;
  const { verdict, runbook, question } = judged;
  const shown = wanted(overview);
  const { left, next } = remaining(runbook, done);
  const foreign = ofOtherMain(overview);
  const isOver = isCarriedOut(overview);
  const isWhole = server === undefined && by === undefined;
  return {
    tone: verdict === 'fail' || problems.length > 0 ? 'fails' : 'plain',
    headline: headlineOf(overview),
    fields: [
      ...(done.size + surveyed.length === 0
        ? []
        : [
            advice(
              'Now',
              !isSettled(overview)
                ? 'Settle first what speaks against the ticks, below.'
                : left.length === 0
                  ? `All is done. ${confirmedBy(runbook)} confirms it: \`ullage survey compare\`.`
                  : `${left.length} left. Next: ${next.length === 1 ? 'step' : 'any of the steps'} ${next.map(({ number }) => number).join(', ')}.`,
            ),
          ]),
      ...(runbook.length > 0
        ? []
        : [
            advice(
              'To do',
              'Where the change is merged already, name main as it was before with --base, and main with --head.',
            ),
          ]),
      ...(runbook.length < 2 || isOver ? [] : [line('Course', courseSentences(runbook).join(' '))]),
      ...(isWhole ? [] : [line('Shown', `${shown.length} of ${counted(runbook.length, 'step')}.`)]),
      line('Judged', judgedSentence(judged)),
      ...ticksFields(overview),
      ...ofList,
    ],
    sections:
      runbook.length === 0
        ? problemSections(problems)
        : [
            ...problemSections(problems),
            ...otherMainSection(foreign, judged),
            ...surveyedSection(surveyed),
            ...cautionSection(openOf(overview, shown)),
            ...elsewhere(overview, shown),
            listed(overview, shown, question),
            ...stepBackSection(runbook, done, isSettled(overview)),
          ],
  };
}

/** A tick counts on another main only where somebody says so, by printing the list anew. */
const listField = ({ base, head }: Judged): Field =>
  advice(
    'List',
    `Of main at \`${base.commit}\` and the branch at \`${head.commit}\`. Leave this line in: by it the ticks are told from those of another change.`,
  );

/** What can be said of ticks that count, and were not given for just what is judged. */
function ticksFields({ judged: { base, head }, done, lists }: StepsOverview): readonly Field[] {
  if (lists === undefined || done.size === 0) return [];
  if (lists.length === 0)
    return [line('Ticks', 'They do not say of which main they are: make sure that they are of this change.')];
  const heads = new Set(lists.flatMap((list) => (list.base === base.commit ? [list.head] : [])));
  heads.delete(head.commit);
  return heads.size === 0
    ? []
    : [
        line(
          'Ticks',
          `They are from a list of the same main with the branch at ${[...heads].map(shortCommit).join(', ')}; the steps that are ticked are the same.`,
        ),
      ];
}

const otherMainSection = (foreign: readonly ListOf[], { base }: Judged): readonly Section[] =>
  foreign.length === 0
    ? []
    : [
        {
          title: 'Ticks of another main',
          blocks: [
            sentence(
              `The list was printed for main at ${[...new Set(foreign.map((list) => shortCommit(list.base)))].join(', ')}, and this is main at ${shortCommit(base.commit)}: what was done then may have been done for another change, or undone since.`,
            ),
            sentence(
              'Make sure of each tick. Then print the list anew with those that hold, with `--format markdown` and the same `--done`: it is of this main from then on.',
            ),
          ],
        },
      ];

/** Whether nothing speaks against what is ticked. */
const isSettled = (overview: StepsOverview): boolean =>
  (overview.problems ?? []).length + (overview.surveyed ?? []).length + ofOtherMain(overview).length === 0;

/** The steps that are not known to be done. */
const openOf = (overview: StepsOverview, shown: readonly Step[]): readonly Step[] =>
  isSettled(overview) ? shown.filter(({ number }) => !overview.done.has(number)) : shown;

const isCarriedOut = (overview: StepsOverview): boolean =>
  overview.judged.verdict === 'pass' &&
  overview.judged.runbook.every(({ number }) => overview.done.has(number)) &&
  isSettled(overview);

const confirmedBy = (runbook: readonly Step[]): string =>
  runbook.some(({ at }) => at === 'guest')
    ? 'A survey of each server that was worked on'
    : "The provider's list, kept anew,";

function headlineOf({ judged: { verdict, runbook }, done, problems = [] }: StepsOverview): string {
  if (runbook.length === 0 && problems.length === 0) return 'There is nothing to carry out';
  if (problems.length > 0)
    return `${counted(problems.length, 'problem')} with the ticks: what is left is shown as far as they hold`;
  if (verdict === 'fail') return `The verdict is fail: do not carry out any of these ${runbook.length} steps`;
  return done.size === 0
    ? `${counted(runbook.length, 'step')} to carry out`
    : `${done.size} of ${counted(runbook.length, 'step')} done`;
}

/** What others do first: who carries out the steps of one server has to know what to wait for. */
function elsewhere({ judged, done }: StepsOverview, shown: readonly Step[]): readonly Section[] {
  const numbers = new Set(shown.map(({ number }) => number));
  const awaited = new Set(shown.flatMap(({ after }) => after));
  const first = judged.runbook.filter(
    ({ number }) => awaited.has(number) && !numbers.has(number) && !done.has(number),
  );
  return first.length === 0
    ? []
    : [
        {
          title: 'First, elsewhere',
          blocks: [{ kind: 'entries', entries: stepEntries(first).map((each) => ({ ...each, fields: [] })) }],
        },
      ];
}

const cautionSection = (shown: readonly Step[]): readonly Section[] =>
  shown.some((step) => step.cautions.includes(cautions))
    ? [{ title: 'Cautions', blocks: [sentence(cautions)] }]
    : [];

function listed(overview: StepsOverview, shown: readonly Step[], question: Judged['question']): Section {
  const { judged, done } = overview;
  const checklist = checklistOf(judged);
  return {
    title: 'Steps, in order',
    blocks: [
      ...(question === undefined ? [] : [sentence(stepsQuestion(question))]),
      ...(isCarriedOut(overview)
        ? []
        : opening(judged.verdict, openOf(overview, shown), 'in a section of their own')),
      {
        kind: 'entries',
        entries: fullStepEntries(judged, shown, done, isSettled(overview)),
        ...(checklist === undefined ? {} : { checklist }),
      },
      ...waitsOf(shown),
    ],
  };
}

function stepsJson(overview: StepsOverview): StepsReport {
  const { judged, done } = overview;
  const { verdict, base, head, on, runbook, billing, cost } = judged;
  const { longest, turns, standing } = courseOf(runbook);
  const returning = returningOf(runbook);
  return {
    format: 'ullage-steps-1',
    verdict,
    base: { commit: base.commit },
    head: { commit: head.commit },
    on,
    currency: cost.currencyBefore,
    done: runbook.filter(({ number }) => done.has(number)).map(({ id }) => id),
    doneOn: Object.fromEntries(
      runbook.flatMap((step) => {
        const on = done.get(step.number);
        return on === undefined ? [] : [[step.id, on]];
      }),
    ),
    next: isSettled(overview) ? remaining(runbook, done).next.map(({ number }) => number) : [],
    ticksOf: (overview.lists ?? []).map(({ base: main, head: branch }) => ({
      base: main,
      head: branch,
      main: main === base.commit ? 'this' : 'another',
    })),
    problems: (overview.problems ?? []).map(problemReport),
    surveyed: (overview.surveyed ?? []).map(({ number, kind, shown, on: day }) => ({
      number,
      kind,
      on: day,
      server: shown.server ?? null,
      message: shown.message,
    })),
    longest: [...longest],
    turns: turns.map((turn) => [...turn]),
    standing: standing.map(({ server, from, to = null }) => ({ server, from, to })),
    steps: wanted(overview).map((step) => {
      const billed = billing.get(step.number);
      const { until = null, past = false } = returning.get(step.number) ?? {};
      return {
        step: stepReport(step),
        done: done.has(step.number),
        final: isFinal(step),
        until,
        past,
        billing:
          billed === undefined
            ? null
            : {
                kind: billed.kind,
                name: billed.name,
                from: billed.kind === 'changes' ? billed.from.toFixed() : null,
                monthly: billed.monthly.toFixed(),
              },
      };
    }),
  };
}
