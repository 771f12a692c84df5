/** What the rules say of themselves, as text, Markdown or JSON: nothing here is written twice. */
import type { Parameter, Rule } from '../rules/rule.ts';
import { atLeast, drawHeadline, drawSections, type Screen } from './draw.ts';
import { markdownAdvice, markdownText } from './escape.ts';
import type { Section } from './sections.ts';
import { markdownTable, type TableOf } from './table.ts';

export const ruleFormats = ['text', 'markdown', 'json'] as const;

export type RuleFormat = (typeof ruleFormats)[number];

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
      return `${[...drawHeadline(rule.name, 'plain', atLeast(screen)), ...drawSections(ruleSections(rule), atLeast(screen))].join('\n')}\n`;
  }
}

const json = (value: unknown): string => `${JSON.stringify(value, null, 2)}\n`;

const ruleFacts = ({ name, about, level, refuses, why, advice, parameters, needs }: Rule) => ({
  name,
  about,
  level,
  refuses,
  why,
  advice,
  needs,
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
    sentence('In a pack', exampleEntry(rule)),
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

/** An entry with a value for everything the rule needs, taken from the schemas' own examples. */
function exampleEntry({ name, parameters, needs }: Rule): string {
  const [need] = needs;
  const schema = need === undefined ? undefined : parameters[need]?.schema;
  const value = schema === undefined ? undefined : exampleOf(schema);
  return value === undefined ? `- { rule: ${name} }` : `- { rule: ${name}, ${need}: ${value} }`;
}

function exampleOf(schema: Readonly<Record<string, unknown>>): string {
  const reference = String(schema.$ref ?? '');
  if (reference.endsWith('/size')) return '100 GiB';
  if (reference.endsWith('/amount')) return '"120.00"';
  if (reference.endsWith('/date')) return '2026-12-24';
  const [first] = Array.isArray(schema.enum) ? schema.enum : [];
  if (first !== undefined) return String(first);
  if (schema.type === 'array') return '[]';
  if (schema.type === 'object') return '{}';
  return String(schema.default ?? schema.minimum ?? 10);
}

function ruleMarkdown(rule: Rule): string {
  const parameters = Object.entries(rule.parameters);
  const { head, rows } = markdownTable(parameterTable(parameters));
  return [
    `### ${rule.name}`,
    `**Refuses** ${markdownText(rule.refuses)}`,
    `**Why** ${markdownText(rule.why)}`,
    `**What to do** ${markdownAdvice(rule.advice)}`,
    ...(parameters.length === 0 ? [] : [[head, ...rows].join('\n')]),
    `\`\`\`yaml\n${exampleEntry(rule)}\n\`\`\``,
    '',
  ].join('\n\n');
}
