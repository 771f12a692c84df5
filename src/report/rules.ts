/** What the rules say of themselves, as text, Markdown or JSON: nothing here is written twice. */
import type { Example } from '../rules/example.ts';
import type { Parameter, Rule } from '../rules/rule.ts';
import { atLeast, drawHeadline, drawSections, type Screen } from './draw.ts';
import { markdownAdvice, markdownText } from './escape.ts';
import type { Section } from './sections.ts';
import { markdownTable, type TableOf } from './table.ts';

export type RuleFormat = 'text' | 'markdown' | 'json';

/** The list of all rules: each with what it refuses. */
export function reportRules(rules: readonly Rule[], format: RuleFormat, screen: Screen): string {
  const table: TableOf = {
    columns: [
      { title: 'rule', align: 'left' },
      { title: 'refuses', align: 'left' },
    ],
    rows: rules.map(({ name, refuses }) => [name, refuses]),
  };
  switch (format) {
    case 'json':
      return json(rules.map(ruleFacts));
    case 'markdown': {
      const { head, rows } = markdownTable(table);
      return `${[head, ...rows].join('\n')}\n`;
    }
    case 'text': {
      const sections: readonly Section[] = [
        ...rules.map(
          ({ name, refuses }): Section => ({ title: name, blocks: [{ kind: 'sentence', text: refuses }] }),
        ),
        { title: '', blocks: [{ kind: 'sentence', text: 'ullage rules NAME explains one in full.' }] },
      ];
      return `${[...drawHeadline(`${rules.length} rules`, 'plain', atLeast(screen)), ...drawSections(sections, atLeast(screen))].join('\n')}\n`;
    }
  }
}

/** One rule in full. */
export function reportRule(rule: Rule, format: RuleFormat, screen: Screen): string {
  switch (format) {
    case 'json':
      return json(ruleFacts(rule));
    case 'markdown':
      return ruleMarkdown(rule);
    case 'text':
      return `${[...drawHeadline(rule.name, 'plain', atLeast(screen)), ...drawSections(ruleSections(rule), atLeast(screen)), ...exampleText(rule)].join('\n')}\n`;
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
  const sentence = (title: string, text: string): Section => ({
    title,
    blocks: [{ kind: 'sentence', text }],
  });
  const parameters = Object.entries(rule.parameters);
  return [
    sentence('What it refuses', rule.refuses),
    sentence('Why', rule.why),
    sentence('What to do about a finding', rule.advice),
    parameters.length === 0
      ? sentence('Parameters', 'None but name, level, where and enabled, which every rule takes.')
      : { title: 'Parameters', blocks: [{ kind: 'table', table: parameterTable(parameters) }] },
    sentence('Level', `${rule.level}, unless the entry sets another.`),
  ];
}

const parameterTable = (parameters: readonly (readonly [string, Parameter])[]): TableOf => ({
  columns: [
    { title: 'parameter', align: 'left' },
    { title: 'what it is', align: 'left' },
    { title: 'looser when', align: 'left' },
  ],
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
  unknown: 'cannot be told',
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
  const { head, rows } = markdownTable(parameterTable(parameters));
  return [
    `### ${rule.name}`,
    `**Refuses** ${markdownText(rule.refuses)}`,
    `**Why** ${markdownText(rule.why)}`,
    `**What to do** ${markdownAdvice(rule.advice)}`,
    ...(parameters.length === 0 ? [] : [[head, ...rows].join('\n')]),
    ...exampleMarkdown(rule),
    '',
  ].join('\n\n');
}
