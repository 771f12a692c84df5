/** What the rules say of themselves, as text, Markdown or JSON: nothing here is written twice. */
import { counted } from '../base/wording.ts';
import type { PolicyRule } from '../policy/policy.ts';
import type { Example } from '../rules/example.ts';
import type { Parameter, Rule } from '../rules/rule.ts';
import { shownTable } from './cells.ts';
import { drawReport, type Screen } from './draw.ts';
import { markdownAdvice, markdownText } from './markdown-text.ts';
import { sentence, words } from './model/blocks.ts';
import type { Block, Section, Table } from './model/model.ts';
import { parametersOf } from './model/parameters.ts';
import { markdownTable } from './table.ts';

export type RuleFormat = 'text' | 'markdown' | 'json';

/** The list of all rules: each with what it refuses. */
export function reportRules(rules: readonly Rule[], format: RuleFormat, screen: Screen): string {
  switch (format) {
    case 'json':
      return json(rules.map(ruleFacts));
    case 'markdown':
      return `${markdownOf({
        columns: [words('rule'), words('refuses')],
        rows: rules.map(({ name, refuses }) => [name, refuses]),
      })}\n`;
    case 'text':
      return drawReport(
        {
          tone: 'plain',
          headline: `${rules.length} rules`,
          fields: [],
          sections: [
            { title: '', blocks: [sentence('`ullage rules NAME` explains one of them in full.')] },
            ...rules.map(({ name, refuses }) => titled(name, sentence(refuses))),
          ],
        },
        screen,
      );
  }
}

/** A pack that ships: each of its entries as it applies, in order of name. */
export function reportPack(
  pack: string,
  rules: readonly PolicyRule[],
  format: RuleFormat,
  screen: Screen,
): string {
  const entries: Table = {
    columns: [words('name'), words('rule'), words('level'), words('parameters')],
    rows: rules.map(({ name, entry, level }) => [name, entry.rule, level, parametersOf(entry)]),
  };
  const use = `Use it in a pack of your own with \`use: [${pack}]\`; an entry of yours takes the place of the one of the same name. \`ullage rules RULE\` explains a rule.`;
  switch (format) {
    case 'json':
      return json(rules.map(({ name, entry, level }) => ({ name, ...entry, level })));
    case 'markdown':
      return `${markdownAdvice(use)}\n\n${markdownOf(entries)}\n`;
    case 'text':
      return drawReport(
        {
          tone: 'plain',
          headline: `The pack ${pack}: ${counted(rules.length, 'entry', 'entries')}`,
          fields: [],
          sections: [{ title: '', blocks: [sentence(use), { kind: 'table', table: entries }] }],
        },
        screen,
      );
  }
}

const titled = (title: string, block: Block): Section => ({ title, blocks: [block] });

function markdownOf(of: Table): string {
  const { head, rows } = markdownTable(shownTable(of));
  return [head, ...rows].join('\n');
}

/** One rule in full. */
export function reportRule(rule: Rule, format: RuleFormat, screen: Screen): string {
  switch (format) {
    case 'json':
      return json(ruleFacts(rule));
    case 'markdown':
      return ruleMarkdown(rule);
    case 'text': {
      const report = {
        tone: 'plain',
        headline: rule.name,
        fields: [],
        sections: ruleSections(rule),
      } as const;
      return `${drawReport(report, screen)}${exampleText(rule).join('\n')}\n`;
    }
  }
}

const json = (value: unknown): string => `${JSON.stringify(value, null, 2)}\n`;

const ruleFacts = ({ name, about, level, refuses, why, advice, parameters, needs, examples }: Rule) => ({
  name,
  about,
  level,
  refuses,
  why,
  advice,
  needs,
  examples,
  parameters: Object.entries(parameters).map(([key, { schema, looser }]) => ({
    name: key,
    looser,
    ...schema,
  })),
});

function ruleSections(rule: Rule): readonly Section[] {
  const parameters = Object.entries(rule.parameters);
  return [
    titled('What it refuses', sentence(rule.refuses)),
    titled('Why', sentence(rule.why)),
    titled('What to do about a finding', sentence(rule.advice)),
    titled(
      'Parameters',
      parameters.length === 0
        ? sentence('Only name, level, where and enabled, which every rule takes.')
        : { kind: 'table', table: parameterTable(parameters) },
    ),
    titled(
      'The ceiling of a waiver (up-to)',
      sentence(
        rule.measures === undefined
          ? 'None: the rule measures nothing, and a waiver with a ceiling would cover nothing. Leave up-to out.'
          : ceilingWords(rule.measures),
      ),
    ),
    titled('Level', sentence(`${rule.level}, unless the entry sets another.`)),
  ];
}

/** What each kind of ceiling is held against. */
const ceilingWords = (measures: NonNullable<Rule['measures']>): string =>
  `${(['size', 'amount', 'number'] as const)
    .flatMap((measure) => {
      const what = measures[measure];
      return what === undefined ? [] : [`${measure === 'amount' ? 'an' : 'a'} ${measure}: ${what}`];
    })
    .join('; ')}.`;

const parameterTable = (parameters: readonly (readonly [string, Parameter])[]): Table => ({
  columns: [words('parameter'), words('what it is'), words('looser when')],
  rows: parameters.map(([name, { schema, looser }]) => [name, schema.description, looserWords[looser]]),
});

const looserWords: { readonly [L in Parameter['looser']]: string } = {
  higher: 'higher',
  lower: 'lower',
  true: 'true',
  false: 'false',
  longer: 'longer',
  shorter: 'shorter',
  neither: 'never',
  unknown: 'undetermined',
};

/** A part of an example, and what it is. */
interface Listing {
  readonly title: string;
  readonly yaml: string;
}

/** An entry as an item of a list, its further lines beneath its beginning. */
const item = (entry: string): string => `- ${entry.trim().replaceAll('\n', '\n  ')}`;

/** The entry, main and the branch of an example; what is the same for all of them is left out. */
const listings = ({ entry, main, branch, altered, readings }: Example): readonly Listing[] => [
  { title: 'the entry in a pack', yaml: item(entry) },
  ...(altered === undefined
    ? []
    : [
        { title: 'another entry, on main', yaml: item(altered.main) },
        { title: 'the same entry, on the branch', yaml: item(altered.branch) },
      ]),
  ...(main === undefined ? [] : [{ title: 'main', yaml: main.trim() }]),
  ...(readings === undefined ? [] : [{ title: 'readings on main', yaml: readings.trim() }]),
  { title: main === branch ? 'the branch, the same' : 'the branch', yaml: branch.trim() },
];

const exampleTitles = [
  ['fails', 'A branch that it refuses'],
  ['passes', 'A branch that it lets pass'],
] as const;

const exampleText = ({ examples }: Rule): readonly string[] =>
  exampleTitles.flatMap(([outcome, title]) => [
    '',
    `${title}`,
    `  ${examples[outcome].story}`,
    ...listings(examples[outcome]).flatMap(({ title: part, yaml }) => [
      `  ${part}`,
      ...yaml.split('\n').map((line) => `    ${line}`.trimEnd()),
    ]),
  ]);

const exampleMarkdown = ({ examples }: Rule): readonly string[] =>
  exampleTitles.map(([outcome, title]) => {
    const parts = listings(examples[outcome]).map(({ title: part, yaml }) => `# ${part}\n${yaml}`);
    return `**${title}.** ${markdownText(examples[outcome].story)}\n\n\`\`\`yaml\n${parts.join('\n\n')}\n\`\`\``;
  });

function ruleMarkdown(rule: Rule): string {
  const parameters = Object.entries(rule.parameters);
  return [
    `### ${rule.name}`,
    `**Refuses** ${markdownText(rule.refuses)}`,
    `**Why** ${markdownText(rule.why)}`,
    `**What to do** ${markdownAdvice(rule.advice)}`,
    ...(parameters.length === 0 ? [] : [markdownOf(parameterTable(parameters))]),
    ...exampleMarkdown(rule),
    '',
  ].join('\n\n');
}
