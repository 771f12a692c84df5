/**
 * Which key belongs to which mapping of a format, and what is written for it: made from the schemas, so that a message
 * about a key in the wrong place can say where it belongs, and one about a word where a mapping is wanted can show one.
 */
import { stringify } from 'yaml';
import type { Mapping, Shape } from '../src/read/shape.ts';

export type Schema = Readonly<Record<string, unknown>>;

export const isSchema = (value: unknown): value is Schema =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** What is asked of schemas that refer to each other. */
export function schemaReader(files: ReadonlyMap<string, unknown>) {
  const all = new Map([...files].map(([name, schema]) => [name, withWholeReferences(name, schema)]));
  const resolved = (schema: Schema): Schema => {
    if (typeof schema.$ref !== 'string') return schema;
    const [file = '', pointer = ''] = schema.$ref.split('#');
    let target = all.get(file);
    for (const step of pointer.split('/').slice(1)) target = isSchema(target) ? target[step] : undefined;
    if (!isSchema(target)) throw new Error(`${schema.$ref} leads nowhere`);
    const { $ref: _, ...own } = schema;
    return { ...resolved(target), ...own };
  };
  const propertiesOf = (schema: Schema): readonly (readonly [string, Schema])[] =>
    Object.entries(isSchema(schema.properties) ? schema.properties : {}).flatMap(([key, below]) =>
      isSchema(below) ? [[key, resolved(below)] as const] : [],
    );
  const requiredOf = (schema: Schema): readonly string[] => {
    const required = Array.isArray(schema.required) ? schema.required.map(String) : [];
    const [first] = Array.isArray(schema.oneOf) ? schema.oneOf.filter(isSchema) : [];
    return first === undefined || isSchema(first.properties) ? required : [...required, ...requiredOf(first)];
  };

  /** A value that the schema takes; undefined where it names none. */
  function exampleOf(schema: Schema): unknown {
    const [written] = Array.isArray(schema.examples) ? schema.examples : [];
    if (written !== undefined) return written;
    if (schema.const !== undefined) return schema.const;
    if (Array.isArray(schema.enum)) return schema.enum[0];
    if (schema.default !== undefined) return schema.default;
    if (isSchema(schema.items)) {
      const item = exampleOf(resolved(schema.items));
      return item === undefined ? undefined : [item];
    }
    const properties = propertiesOf(schema);
    if (properties.length > 0) {
      const required = requiredOf(schema);
      const named = properties.filter(([key]) => required.includes(key));
      const chosen = named.length > 0 ? named : properties.slice(0, 1);
      const entries = chosen.map(([key, below]) => [key, exampleOf(below)] as const);
      return entries.some(([, value]) => value === undefined) ? undefined : Object.fromEntries(entries);
    }
    if (isSchema(schema.additionalProperties) && isSchema(schema.propertyNames)) {
      const name = exampleOf(resolved(schema.propertyNames));
      const value = exampleOf(resolved(schema.additionalProperties));
      return name === undefined || value === undefined ? undefined : { [String(name)]: value };
    }
    switch (schema.type) {
      case 'boolean':
        return true;
      case 'integer':
      case 'number':
        return typeof schema.minimum === 'number' ? Math.max(schema.minimum, 1) : 1;
      default: // text of any kind
        return undefined;
    }
  }

  const flow = (value: unknown): string =>
    value === undefined ? '' : stringify(value, { collectionStyle: 'flow', lineWidth: 0 }).trim();

  return { all, resolved, propertiesOf, requiredOf, exampleOf, flow };
}

/** The shapes of one format: each mapping with its keys, and each list and mapping of names with an example. */
export function shapesOf(format: string, files: ReadonlyMap<string, unknown>): readonly Shape[] {
  const { all, resolved, propertiesOf, requiredOf, exampleOf, flow } = schemaReader(files);

  function walk(schema: Schema, path: readonly string[], namedBy: string | undefined): readonly Shape[] {
    const properties = propertiesOf(schema);
    const branches = (Array.isArray(schema.oneOf) ? schema.oneOf : []).filter(
      (branch): branch is Schema => isSchema(branch) && isSchema(branch.properties),
    );
    const rule = properties.find(([key]) => key === 'rule')?.[1].const;
    const mapping: Mapping = {
      keys: Object.fromEntries(properties.map(([key, below]) => [key, flow(exampleOf(below))])),
      required: requiredOf(schema),
      ...(namedBy === undefined ? {} : { namedBy }),
      ...(typeof rule === 'string' ? { rule } : {}),
    };
    const isNest = isSchema(schema.items) || isSchema(schema.additionalProperties);
    const own: readonly Shape[] =
      properties.length > 0 && branches.length === 0
        ? [{ path, mapping }]
        : isNest && flow(exampleOf(schema)) !== ''
          ? [{ path, example: flow(exampleOf(schema)) }]
          : [];
    const names = isSchema(schema.propertyNames) ? resolved(schema.propertyNames).title : undefined;
    return [
      ...own,
      ...branches.flatMap((branch) => walk(resolved(branch), path, namedBy)),
      ...(branches.length > 0
        ? []
        : properties.flatMap(([key, below]) => walk(below, [...path, key], undefined))),
      ...(isSchema(schema.items) ? walk(resolved(schema.items), [...path, '*'], undefined) : []),
      ...(isSchema(schema.additionalProperties)
        ? walk(
            resolved(schema.additionalProperties),
            [...path, '*'],
            typeof names === 'string' ? names : undefined,
          )
        : []),
    ];
  }
  const top = all.get(format);
  const shapes = isSchema(top) ? walk(top, [], undefined) : [];
  // What every rule takes is the same in each.
  return [...new Map(shapes.map((shape) => [JSON.stringify(shape), shape])).values()];
}

/** A schema whose references within itself name the file as well, so that they hold from anywhere. */
function withWholeReferences(name: string, schema: unknown): unknown {
  if (Array.isArray(schema)) return schema.map((each) => withWholeReferences(name, each));
  if (!isSchema(schema)) return schema;
  return Object.fromEntries(
    Object.entries(schema).map(([key, below]) => [
      key,
      key === '$ref' && typeof below === 'string' && below.startsWith('#')
        ? `${name}${below}`
        : withWholeReferences(name, below),
    ]),
  );
}
