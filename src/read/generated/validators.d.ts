/* Generated from schema/ and src/rules/ by `npm run generate`; do not edit. */
import type { SchemaError, Formats } from '../format.ts';

type Validator<T> = ((value: unknown) => value is T) & { errors?: readonly SchemaError[] | null };

export declare const validators: { readonly [F in keyof Formats]: Validator<Formats[F]> };
