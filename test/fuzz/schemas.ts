/** What the published schemas allow, asked of a plain ajv: nothing of Ullage's own reader is between. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { Ajv2020 } from 'ajv/dist/2020.js';
import type { SampleFormat } from './samples.ts';

const folder = join(import.meta.dirname, '../../schema');

const ajv = new Ajv2020({ discriminator: true, strict: false });
for (const file of readdirSync(folder).filter((name) => name.endsWith('.json'))) {
  const schema: unknown = JSON.parse(readFileSync(join(folder, file), 'utf8'));
  if (typeof schema === 'object' && schema !== null) ajv.addSchema(schema, file);
}

/** An empty file is an empty mapping, as it is for the reader. */
export const allowedBySchema = (format: SampleFormat, value: unknown): boolean =>
  ajv.validate(`${format}.json`, value ?? {});
