/**
 * JSON Schemas (2020-12) that users write in a rule pack. Whoever proposes a branch proposes its packs too, so a
 * schema is held to bounds before it is compiled: patterns run in linear time, nothing is fetched, and no schema can
 * ask for more work than its length.
 */
import { Ajv2020, type ErrorObject, type Options, type ValidateFunction } from 'ajv/dist/2020.js';
import type { Decimal } from 'decimal.js';
import { offer, quoted } from '../base/nearest.ts';
import { stepsOfFragment, stepsOfPointer } from '../base/pointer.ts';
import { isDay } from '../estate/dates.ts';
import type { Step } from '../read/document.ts';
import type { Facts } from './facts.ts';
import { ExactDecimal } from './parameter.ts';
import { compilePattern, patternAdvice, patternOf } from './pattern.ts';
import type { EntryFault } from './rule.ts';

export type UserSchema = Readonly<Record<string, unknown>>;

/** One thing in which facts miss a schema. */
export interface Miss {
  /** From the facts to what misses, as a JSON pointer (RFC 6901); empty for the whole. */
  readonly path: string;
  readonly message: string;
  /** How far beyond a bound; the same amount for every miss of what has none. */
  readonly beyond: Decimal;
}

/** More parts than this, each `$ref` counted as what it stands for, is no shape but a program. */
const mostParts = 2_000;

const deepestSchema = 20;

/** Where a keyword holds schemas: none, one, a list of them, or one for each of its keys. */
type Holds = (typeof kindsOfHolding)[number];

const keywordsThatHold: Readonly<Record<Holds, string>> = {
  nothing:
    'type enum const pattern format minLength maxLength minimum maximum exclusiveMinimum exclusiveMaximum multipleOf ' +
    'minItems maxItems uniqueItems minContains maxContains minProperties maxProperties required dependentRequired ' +
    '$ref $schema $comment title description default examples deprecated',
  schema:
    'additionalProperties unevaluatedProperties propertyNames items unevaluatedItems contains not if then else',
  schemas: 'allOf anyOf oneOf prefixItems',
  keyed: 'properties $defs dependentSchemas',
  patterned: 'patternProperties',
};

const kindsOfHolding = ['nothing', 'schema', 'schemas', 'keyed', 'patterned'] as const;

const keywords: ReadonlyMap<string, Holds> = new Map(
  kindsOfHolding.flatMap((holds) => keywordsThatHold[holds].split(' ').map((name) => [name, holds] as const)),
);

const dialect = 'https://json-schema.org/draft/2020-12/schema';

const isSchema = (value: unknown): value is UserSchema =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** The schemas directly within one, each with the steps to it. What is no schema is left for the metaschema. */
function* within(
  schema: UserSchema,
): Iterable<{ readonly steps: readonly Step[]; readonly inner: UserSchema }> {
  for (const [key, value] of Object.entries(schema)) {
    const holds = keywords.get(key);
    if (holds === 'schema' && isSchema(value)) yield { steps: [key], inner: value };
    const many =
      holds === 'schemas' && Array.isArray(value)
        ? [...value.entries()]
        : (holds === 'keyed' || holds === 'patterned') && isSchema(value)
          ? Object.entries(value)
          : [];
    for (const [step, inner] of many) if (isSchema(inner)) yield { steps: [key, step], inner };
  }
}

/** What stands in the way of using a schema, each with the steps to its place. */
export function schemaFaults(schema: UserSchema): readonly EntryFault[] {
  const faults = [...keywordFaults(schema, [], 0)];
  if (faults.length > 0) return faults;
  const tooMuch = expansionFault(schema);
  if (tooMuch !== undefined) return [tooMuch];
  const copy = copyOf(schema);
  const misused = metaschemaFaults(copy);
  if (misused.length > 0) return misused;
  try {
    compile(copy);
    return [];
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    return [{ path: [], message: `the schema cannot be used: ${why}`, advice: 'See JSON Schema 2020-12.' }];
  }
}

function* keywordFaults(schema: UserSchema, path: readonly Step[], depth: number): Iterable<EntryFault> {
  if (depth > deepestSchema) {
    yield {
      path,
      message: `the schema nests more than ${deepestSchema} levels deep`,
      advice: 'Flatten it, with allOf or $defs.',
    };
    return;
  }
  for (const [key, value] of Object.entries(schema)) {
    const at = [...path, key];
    const holds = keywords.get(key);
    if (holds === undefined) {
      yield {
        path: at,
        message: `${quoted(key)} is not a keyword that a shape can use`,
        advice: `${offer(key, [...keywords.keys()])}A shape uses the keywords of JSON Schema 2020-12 that need no other document.`,
      };
    } else if (key === '$schema' && value !== dialect) {
      yield {
        path: at,
        message: `a shape is JSON Schema 2020-12, not ${quoted(value)}`,
        advice: `Leave $schema out, or write ${dialect}.`,
      };
    } else if (key === '$ref') {
      if (typeof value !== 'string' || !/^#(\/|$)/.test(value)) {
        yield {
          path: at,
          message: `$ref ${quoted(value)} leads out of this schema`,
          advice: 'Only parts of the same schema can be referred to, as in #/$defs/owner.',
        };
      }
    } else if (key === 'format' && value !== 'date') {
      yield {
        path: at,
        message: `the format ${quoted(value)} is not checked here`,
        advice: 'Use date, or a pattern.',
      };
    } else if (key === 'pattern') yield* patternFault(value, at);
    else if ((holds === 'patterned' || holds === 'keyed') && isSchema(value)) {
      for (const name of Object.keys(value)) {
        if (holds === 'patterned') yield* patternFault(name, [...at, name]);
        else if (name === '__proto__')
          yield { path: at, message: '__proto__ cannot be used', advice: 'Take it out.' };
      }
    }
  }
  for (const { steps, inner } of within(schema)) yield* keywordFaults(inner, [...path, ...steps], depth + 1);
}

function* patternFault(source: unknown, path: readonly Step[]): Iterable<EntryFault> {
  if (typeof source !== 'string') return;
  const pattern = compilePattern(source);
  if ('why' in pattern)
    yield { path, message: `${source} is not a valid pattern: ${pattern.why}`, advice: patternAdvice };
}

/**
 * Counts what a schema asks for with every `$ref` followed: twenty definitions that each refer twice to the next ask
 * for a million checks. One that comes back to itself asks for no end of them, and facts are too shallow to need it.
 */
function expansionFault(root: UserSchema): EntryFault | undefined {
  const sizes = new Map<UserSchema, number>();
  const open = new Set<UserSchema>();
  let fault: EntryFault | undefined;
  const sizeOf = (schema: UserSchema, path: readonly Step[]): number => {
    const known = sizes.get(schema);
    if (known !== undefined || fault !== undefined) return known ?? 0;
    if (open.has(schema)) {
      fault = {
        path,
        message: 'the schema refers back to itself',
        advice: 'Write out each level; what a shape checks has only a few.',
      };
      return 0;
    }
    open.add(schema);
    let size = 1;
    for (const { steps, inner } of within(schema))
      if (steps[0] !== '$defs') size += sizeOf(inner, [...path, ...steps]);
    if (typeof schema.$ref === 'string') {
      const target = resolve(root, schema.$ref);
      if (target === undefined) {
        fault ??= {
          path: [...path, '$ref'],
          message: `there is nothing at ${schema.$ref} in this schema`,
          advice: 'Refer to a part of it, as in #/$defs/owner.',
        };
      } else size += sizeOf(target, [...path, '$ref']);
    }
    open.delete(schema);
    sizes.set(schema, size);
    return size;
  };
  const size = sizeOf(root, []);
  if (fault === undefined && size > mostParts) {
    fault = {
      path: [],
      message: `the schema has ${size} parts with its references followed, and at most ${mostParts} are allowed`,
      advice: 'Split it into several rules, each with its own message.',
    };
  }
  return fault;
}

/** What a local reference leads to, where that is a schema. `true` and `false` are schemas of no parts. */
function resolve(root: UserSchema, reference: string): UserSchema | undefined {
  const steps = stepsOfFragment(reference);
  if (steps === undefined) return undefined;
  let here: unknown = root;
  for (const key of steps) {
    if (typeof here !== 'object' || here === null || !Object.hasOwn(here, key)) return undefined;
    here = new Map<string, unknown>(Object.entries(here)).get(key);
  }
  return isSchema(here) ? here : undefined;
}

const options: Options = {
  allErrors: true,
  // A label that nobody gave is not there, be it called constructor.
  ownProperties: true,
  strictTypes: false,
  strictTuples: false,
  logger: false,
  // A miss says what missed, by which it is told how far.
  verbose: true,
  formats: { date: isDay },
};

/** The one thing that is kept: JSON Schema's own schema, which takes longer to compile than any shape. */
let metaschema: Ajv2020 | undefined;

/** What JSON Schema itself has to say against a schema. */
function metaschemaFaults(schema: UserSchema): readonly EntryFault[] {
  metaschema ??= new Ajv2020(options);
  if (metaschema.validateSchema(schema) === true) return [];
  return distinct(
    (metaschema.errors ?? []).map((error) => ({
      path: stepsOfPointer(error.instancePath),
      ...schemaError(error),
    })),
  );
}

function compile(schema: UserSchema): ValidateFunction {
  const ajv = new Ajv2020({ ...options, meta: false, validateSchema: false, code: { regExp: linearTime } });
  return ajv.compile(schema);
}

/** The reader's values have no prototype, which the library does not expect of a schema. */
const copyOf = (schema: UserSchema): UserSchema => JSON.parse(JSON.stringify(schema));

const schemaError = ({
  instancePath,
  message,
}: ErrorObject): { readonly message: string; readonly advice: string } => ({
  message: `${stepsOfPointer(instancePath).at(-1) ?? 'the schema'} ${message ?? 'is not valid JSON Schema'}`,
  advice: 'See this keyword in JSON Schema 2020-12.',
});

/** One fault a place: each branch of the metaschema that a value misses would say so by itself. */
const distinct = (faults: readonly EntryFault[]): readonly EntryFault[] =>
  [...new Map(faults.map((fault) => [fault.path.join('/'), fault] as const).reverse()).values()].reverse();

/** The library's door for another regular-expression engine. */
const linearTime = Object.assign(
  (source: string) => {
    const pattern = patternOf(source);
    // The library tells patterns apart by their text, and would run one in place of another without it.
    return { test: (text: string) => pattern.matches(text), toString: () => source };
  },
  { code: 'linearTime' },
);

/** That a branch of an `if` failed says nothing beside what failed in it. */
const saysSomething = ({ keyword }: ErrorObject): boolean => keyword !== 'if';

/** Keywords that miss at something named in `params`: under which key, and what is said of it. */
const missesAt: ReadonlyMap<string, readonly [key: string, message: string]> = new Map([
  ['required', ['missingProperty', 'is missing']],
  ['dependentRequired', ['missingProperty', 'is missing']],
  ['additionalProperties', ['additionalProperty', 'is not allowed']],
  ['unevaluatedProperties', ['unevaluatedProperty', 'is not allowed']],
  ['propertyNames', ['propertyName', 'is not allowed as a name']],
]);

function missOf(error: ErrorObject): Miss {
  const { instancePath, keyword, params, message = 'does not fit' } = error;
  const beyond = beyondBound(error);
  const at = missesAt.get(keyword);
  if (at !== undefined) return { path: `${instancePath}/${params[at[0]]}`, message: at[1], beyond };
  if (keyword === 'enum')
    return { path: instancePath, message: `must be one of ${allowedOf(params.allowedValues)}`, beyond };
  if (keyword === 'const')
    return { path: instancePath, message: `must be ${JSON.stringify(params.allowedValue)}`, beyond };
  return { path: instancePath, message: keyword === 'false schema' ? 'is not allowed' : message, beyond };
}

/** Keywords that set a bound, and how what they measure is read from a value. */
const bounds: ReadonlyMap<string, (value: unknown) => number | undefined> = new Map([
  ...['minimum', 'maximum', 'exclusiveMinimum', 'exclusiveMaximum'].map(
    (keyword) => [keyword, (value: unknown) => (typeof value === 'number' ? value : undefined)] as const,
  ),
  // As the library counts: code points, not UTF-16 units.
  ...['minLength', 'maxLength'].map(
    (keyword) =>
      [keyword, (value: unknown) => (typeof value === 'string' ? [...value].length : undefined)] as const,
  ),
  ...['minItems', 'maxItems'].map(
    (keyword) => [keyword, (value: unknown) => (Array.isArray(value) ? value.length : undefined)] as const,
  ),
  ...['minProperties', 'maxProperties'].map(
    (keyword) =>
      [keyword, (value: unknown) => (isSchema(value) ? Object.keys(value).length : undefined)] as const,
  ),
]);

const unbounded = new ExactDecimal(1);

function beyondBound({ keyword, params, data }: ErrorObject): Decimal {
  const measure = bounds.get(keyword)?.(data);
  const limit: unknown = params.limit;
  if (measure === undefined || typeof limit !== 'number') return unbounded;
  return new ExactDecimal(measure).minus(limit).abs();
}

const allowedOf = (values: unknown): string =>
  Array.isArray(values) ? values.map((value) => JSON.stringify(value)).join(', ') : JSON.stringify(values);

/** Compiles a schema that `schemaFaults` has nothing against, to what tells everything in which facts miss it. */
export function missesOf(schema: UserSchema): (facts: Facts) => readonly Miss[] {
  const validate = compile(copyOf(schema));
  return (facts) => {
    try {
      return validate(facts) ? [] : (validate.errors ?? []).filter(saysSomething).map(missOf);
    } catch {
      // The library compares mappings by methods that a label may hide by its name. What cannot be told is a miss.
      return [{ path: '', message: 'cannot be compared with the schema', beyond: unbounded }];
    }
  };
}
