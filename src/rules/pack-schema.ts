/** The JSON Schema of a rule pack, put together from the rules' own definitions. */
import { levels, type Parameter, type Rule } from './rule.ts';

const pascal = (name: string): string =>
  name.replace(/(^|-)([a-z])/g, (_match, _dash, letter: string) => letter.toUpperCase());

/** What a scope may choose by: equality and lists, no query language. */
const scopeSchema = {
  title: 'ScopeDeclaration',
  type: 'object',
  additionalProperties: false,
  description: 'What the rule applies to; everything if left out. All keys given must match.',
  properties: {
    teams: {
      $ref: '#/$defs/names',
      description: 'Only what belongs to one of these teams.',
      examples: [['imagery']],
    },
    sites: {
      $ref: '#/$defs/names',
      description: 'Only what is at one of these sites.',
      examples: [['north-quay']],
    },
    tiers: {
      $ref: '#/$defs/names',
      description: 'Only volumes of one of these tiers.',
      examples: [['bulk']],
    },
    labels: {
      type: 'object',
      propertyNames: { $ref: 'common.json#/$defs/name' },
      additionalProperties: { type: ['string', 'array'], items: { type: 'string' }, minItems: 1 },
      description: 'Only what has each of these labels, with the value or one of the values.',
    },
  },
};

export function rulePackSchema(rules: readonly Rule[]) {
  return {
    $schema: 'https://json-schema.org/draft/2020-12/schema',
    $id: 'rule-pack.json',
    title: 'RulePackFile',
    description: 'A rule pack: rules with their parameters, limits and scope.',
    type: 'object',
    additionalProperties: false,
    properties: {
      use: {
        type: 'array',
        items: { $ref: 'common.json#/$defs/name' },
        examples: [['starter']],
        description:
          'Packs by name: those that ship with Ullage, and those that `packs` in ullage.yaml lists, which override them by name. What follows adds to them or overrides them.',
      },
      rules: {
        type: 'array',
        items: { $ref: '#/$defs/entry' },
        description: 'The rules of this pack.',
      },
    },
    $defs: {
      names: { type: 'array', minItems: 1, items: { $ref: 'common.json#/$defs/name' } },
      scope: scopeSchema,
      entry: {
        title: 'RuleEntry',
        type: 'object',
        required: ['rule'],
        examples: [{ rule: 'no-shrink' }],
        discriminator: { propertyName: 'rule' },
        oneOf: rules.map(entrySchema),
      },
    },
  };
}

/**
 * The schema as it is published: the names of all rules in one list as well, since an editor offers of a choice only
 * what fits the entry already. For validation that is the discriminator's to say, and it is said once.
 */
export function publishedRulePackSchema(rules: readonly Rule[]): Readonly<Record<string, unknown>> {
  const { $defs, ...schema } = rulePackSchema(rules);
  const entry = { ...$defs.entry, properties: { rule: { enum: rules.map(({ name }) => name) } } };
  return { ...schema, $defs: { ...$defs, entry } };
}

function entrySchema(rule: Rule): Readonly<Record<string, unknown>> {
  const [only, ...others] = rule.needs;
  return {
    title: `${pascal(rule.name)}Entry`,
    type: 'object',
    description: rule.refuses,
    additionalProperties: false,
    required: [
      'rule',
      ...(only !== undefined && others.length === 0 ? [only] : []),
      ...(rule.requires ?? []),
    ],
    ...(others.length > 0 ? { minProperties: 2 } : {}),
    properties: {
      rule: { const: rule.name, description: rule.refuses },
      name: {
        $ref: 'common.json#/$defs/name',
        description:
          "The name by which a waiver or another pack refers to this entry; the rule's own if left out.",
      },
      level: {
        type: 'string',
        enum: [...levels],
        description: `The level of a finding; ${rule.level} if left out. Only error fails.`,
      },
      enabled: {
        type: 'boolean',
        default: true,
        description: 'false switches off the entry of the same name in a pack listed under use.',
      },
      where: { $ref: '#/$defs/scope', description: 'What the rule applies to; everything if left out.' },
      ...Object.fromEntries(
        Object.entries(rule.parameters).map(([name, parameter]) => [name, parameterSchema(parameter)]),
      ),
    },
  };
}

const parameterSchema = ({ schema }: Parameter): Readonly<Record<string, unknown>> => schema;
