/** What is there beside what is declared, as text, Markdown or JSON. */
import { counted, listed } from '../base/wording.ts';
import { layersOf } from '../capacity/layers.ts';
import { daysBetween } from '../estate/dates.ts';
import type { Estate } from '../estate/estate.ts';
import { exactSize } from '../estate/size.ts';
import type { SurveyComparison, Surveys, Untold } from '../survey/compare.ts';
import type { Difference } from '../survey/difference.ts';
import { drawReport, type Screen } from './draw.ts';
import { drawMarkdown } from './markdown.ts';
import { showAmount } from './model/amounts.ts';
import { entries, line, sentence, table, words } from './model/blocks.ts';
import { estateSection, keysOf } from './model/estate.ts';
import type { Entry, ReportModel, Section } from './model/model.ts';
import { drawPage } from './page/document.ts';

export type SurveyFormat = 'text' | 'markdown' | 'json' | 'html';

export interface SurveyOverview {
  readonly on: string;
  readonly currency: string | undefined;
  readonly surveys: Surveys;
  readonly comparison: SurveyComparison;
  readonly estate: Estate;
}

/** `undetermined` where nothing is surveyed, or something cannot be told and nothing else differs. */
export type SurveyOutcome = 'same' | 'different' | 'undetermined';

export function outcomeOfSurvey({
  surveys,
  comparison,
}: Pick<SurveyOverview, 'surveys' | 'comparison'>): SurveyOutcome {
  if (comparison.differences.length > 0) return 'different';
  const isSurveyed = surveys.servers.length > 0 || surveys.provider !== undefined;
  return isSurveyed && comparison.untold.length === 0 ? 'same' : 'undetermined';
}

export function reportSurvey(overview: SurveyOverview, format: SurveyFormat, screen: Screen): string {
  switch (format) {
    case 'text':
      return drawReport(surveyModel(overview), screen);
    case 'markdown':
      return drawMarkdown(surveyModel(overview));
    case 'json':
      return surveyJson(overview);
    case 'html':
      return surveyPage(overview);
  }
}

function surveyPage(overview: SurveyOverview): string {
  const model = surveyModel(overview);
  const { estate, comparison } = overview;
  const drawn = estateSection({
    estate,
    accounts: layersOf(estate),
    touched: new Set(),
    disputed: keysOf(comparison.differences),
  });
  return drawPage(
    { ...model, sections: [...model.sections, ...drawn] },
    'ullage survey compare --format json',
  );
}

interface Age {
  readonly server: string | undefined;
  readonly at: string;
  readonly days: number;
  readonly unseen: readonly string[];
}

const agesOf = ({ surveys, on }: SurveyOverview): readonly Age[] => {
  const age = (at: string): number => Math.max(0, daysBetween(at.slice(0, 10), on));
  const { provider, servers } = surveys;
  return [
    ...(provider === undefined
      ? []
      : [{ server: undefined, at: provider.at, days: age(provider.at), unseen: [] }]),
    ...servers.map(({ server, at, unseen }) => ({ server, at, days: age(at), unseen })),
  ];
};

function surveyModel(overview: SurveyOverview): ReportModel {
  const { differences, untold, notSurveyed } = overview.comparison;
  const outcome = outcomeOfSurvey(overview);
  return {
    tone: outcome === 'same' ? 'plain' : 'caution',
    headline: headlineOf(outcome, differences, untold.length),
    fields: [],
    sections: [
      ...bySide(differences).map(
        ([title, those]): Section => ({
          title,
          blocks: [entries(those.map((each) => entryOf(each, overview)))],
        }),
      ),
      ...(untold.length === 0
        ? []
        : [
            {
              title: 'What could not be told',
              blocks: [entries(untold.flatMap(untoldEntries))],
            },
          ]),
      ...(notSurveyed.length === 0
        ? []
        : [
            {
              title: 'Not surveyed',
              blocks: [sentence(`Of ${notSurveyed.join(', ')} there is no survey, and nothing is said.`)],
            },
          ]),
      {
        title: 'The surveys',
        blocks: [
          table(
            [words('of'), words('taken'), words('age'), words('not seen')],
            agesOf(overview).map(({ server, at, days, unseen }) => [
              server ?? "the provider's list",
              at,
              counted(days, 'day'),
              unseen.join(', '),
            ]),
          ),
        ],
      },
    ],
  };
}

const untoldEntries = (each: Untold): readonly Entry[] => [
  ...(each.candidates.length + each.rows.length === 0
    ? []
    : [
        {
          text: `${each.volume} may be ${candidatesOf(each)}`,
          fields: [line('to tell', 'Write its id, as the provider has it, on the volume.')],
        },
      ]),
  ...(each.holders.length === 0
    ? []
    : [
        {
          text: `${each.volume} is attached to ${listed(each.holders)} at the provider, which may be a declared server under another name, or another server`,
          fields: [
            line('to tell', 'Write the ids of the servers, as the provider has them, on the servers.'),
          ],
        },
      ]),
];

/** So many are named; the JSON report has all. */
const mostNamed = 8;

function candidatesOf({ candidates, rows }: Untold): string {
  const all = [
    ...candidates.map(
      ({ survey, disk: { name, size, serial } }) =>
        `${name} (${exactSize(size)}${serial === undefined ? '' : `, serial number ${serial}`}) on ${survey.server}`,
    ),
    ...rows.map(
      ({ id, name, size }) =>
        `the provider's ${[name, id].filter(Boolean).join(', ') || 'one without a name'} (${exactSize(size)})`,
    ),
  ];
  const others = all.length - mostNamed;
  return [...all.slice(0, mostNamed), ...(others > 0 ? [`one of ${counted(others, 'other')}`] : [])].join(
    ', or ',
  );
}

function headlineOf(outcome: SurveyOutcome, differences: readonly Difference[], untold: number): string {
  switch (outcome) {
    case 'same':
      return 'What is there is as it is declared';
    case 'different':
      return `${counted(differences.length, 'difference')} between what is there and what is declared`;
    case 'undetermined':
      return untold > 0
        ? `It could not be told of ${counted(untold, 'volume')} which disk, or which of the provider's volumes, it is, or who holds it`
        : 'Nothing has been surveyed yet: `ullage survey script` gathers what a server shows, and `ullage survey add` keeps it';
  }
}

function bySide(differences: readonly Difference[]): readonly (readonly [string, readonly Difference[]])[] {
  const sides = new Map<string, Difference[]>();
  for (const each of differences) {
    const title = each.server ?? "The provider's list";
    sides.set(title, [...(sides.get(title) ?? []), each]);
  }
  return [...sides];
}

const entryOf = (
  { kind, message, meaning, monthly }: Difference,
  { currency = '' }: SurveyOverview,
): Entry => ({
  tag: { word: kind === 'other' ? 'differs' : kind, tone: 'caution' },
  text: message,
  fields: [
    ...(meaning === undefined ? [] : [line('meaning', meaning)]),
    ...(monthly === undefined ? [] : [line('monthly cost', showAmount(monthly, currency))]),
  ],
});

function surveyJson(overview: SurveyOverview): string {
  const { on, currency = null, comparison } = overview;
  return `${JSON.stringify(
    {
      format: 'ullage-survey-comparison-1',
      on,
      outcome: outcomeOfSurvey(overview),
      currency,
      surveys: agesOf(overview).map(({ server = null, ...age }) => ({ server, ...age })),
      differences: comparison.differences.map(
        ({ layer, kind, subject, server, message, meaning, declared, surveyed, monthly }) => ({
          layer,
          kind,
          subject,
          server: server ?? null,
          message,
          meaning: meaning ?? null,
          declared: declared ?? null,
          surveyed: surveyed ?? null,
          monthly: monthly?.toFixed() ?? null,
        }),
      ),
      untold: comparison.untold.map(({ volume, candidates, rows, holders }) => ({
        volume,
        holders,
        candidates: candidates.map(({ survey, disk }) => ({
          server: survey.server,
          disk: disk.name,
          size: `${disk.size}`,
        })),
        rows: rows.map(({ id, name, size }) => ({ id: id ?? null, name: name ?? null, size: `${size}` })),
      })),
      notSurveyed: comparison.notSurveyed,
    },
    null,
    2,
  )}\n`;
}
