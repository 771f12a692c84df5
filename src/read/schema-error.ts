/** What is found in an error of ajv's, and in the schema that it names. */

import type { SchemaError } from './format.ts';

const keyParameter: Readonly<Record<string, string>> = {
  additionalProperties: 'additionalProperty',
  unevaluatedProperties: 'unevaluatedProperty',
  required: 'missingProperty',
  propertyNames: 'propertyName',
};

/** The key that an error is about, where it is about one. */
export const parameterOf = ({ keyword, params }: SchemaError): string =>
  String(params[keyParameter[keyword] ?? ''] ?? '');

export const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

export const propertiesOf = (schema: Readonly<Record<string, unknown>>): Readonly<Record<string, unknown>> =>
  isRecord(schema.properties) ? schema.properties : {};

/** The keys of which exactly one is wanted. */
export const choicesOf = (schema: Readonly<Record<string, unknown>>): readonly string[] =>
  Array.isArray(schema.oneOf)
    ? schema.oneOf.flatMap((branch: unknown) =>
        isRecord(branch) && Array.isArray(branch.required) ? branch.required.map(String) : [],
      )
    : [];
