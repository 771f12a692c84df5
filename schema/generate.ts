/**
 * Writes what is derived from the schemas and the rules: the rule pack's schema, the types of every format, and the
 * validators; the reference of every key; and the survey's script as text. With `--check` it writes nothing and fails when what is there differs from what it would write.
 */
import { readdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { Ajv2020 } from 'ajv/dist/2020.js';
import standaloneCode from 'ajv/dist/standalone/index.js';
import { build, type Plugin } from 'esbuild';
import { compile } from 'json-schema-to-typescript';
import { readRulePack } from '../src/policy/pack.ts';
import { readDocument } from '../src/read/document.ts';
import { publishedRulePackSchema, rulePackSchema } from '../src/rules/pack-schema.ts';
import { rules } from '../src/rules/registry.ts';
import { actionOf, isAction } from '../src/runbook/actions.ts';
import { readProcedures } from '../src/runbook/procedure-file.ts';
import { shapesOf } from './mappings.ts';
import { withKeys } from './reference.ts';

const schemaFolder = import.meta.dirname;
const generatedFolder = join(schemaFolder, '../src/read/generated');

/** Formats that users write, and the records that the audit reads back; the judgement is only written. */
const validated = [
  'audit-record',
  'estate',
  'gathered',
  'price-list',
  'procedure',
  'provider-survey',
  'rule-pack',
  'settings',
  'survey',
  'waivers',
];

/** Formats that people write by hand. */
const handWritten = ['estate', 'price-list', 'rule-pack', 'settings', 'waivers'];

const banner = '/* Generated from schema/ and src/rules/ by `npm run generate`; do not edit. */\n';

async function schemas(): Promise<ReadonlyMap<string, { readonly $id: string }>> {
  const files = (await readdir(schemaFolder))
    .filter((name) => name.endsWith('.json') && name !== 'rule-pack.json')
    .sort();
  const read = await Promise.all(
    files.map(async (name) => [name, bare(name, await readFile(join(schemaFolder, name), 'utf8'))] as const),
  );
  return new Map([...read, ['rule-pack.json', rulePackSchema(Object.values(rules))]]);
}

interface ProcedureSchema {
  readonly properties: {
    readonly actions: { readonly properties: Record<string, { readonly $ref: string }> };
  };
}

/**
 * What can be filled in, action by action, for whoever writes procedures: in the published schema alone, since types and
 * validators would say it ninety times.
 */
async function procedureSchema(): Promise<string> {
  const path = join(schemaFolder, 'procedure.json');
  const schema: ProcedureSchema = JSON.parse(await readFile(path, 'utf8'));
  const { properties } = schema.properties.actions;
  const braced = (all: readonly string[]): string => all.map((each) => `{${each}}`).join(', ') || 'nothing';
  for (const name of Object.keys(properties).filter(isAction)) {
    const { at, as, words, fills } = actionOf(name);
    const who = { provider: 'At the provider', guest: 'In the guest', check: 'Made sure of' }[at];
    const description = `${who}. Filled into its sentences: ${braced(words)}; into its commands: ${braced(fills)}.${as === undefined ? '' : ` Where no commands are given for it, those of ${as} are its own.`}`;
    properties[name] = { $ref: '#/$defs/action', ...{ description } };
  }
  return `${JSON.stringify(schema, null, 2)}\n`;
}

/** The schema without what is said of each action. */
function bare(name: string, text: string): { readonly $id: string } {
  return JSON.parse(text, (key, value: unknown) =>
    name === 'procedure.json' && isAction(key) ? { $ref: '#/$defs/action' } : value,
  );
}

async function types(schema: { readonly $id: string }): Promise<string> {
  return compile(structuredClone(schema), schema.$id, {
    cwd: `${schemaFolder}/`,
    bannerComment: banner,
    additionalProperties: false,
    style: { singleQuote: true, printWidth: 110 },
  });
}

/** One self-contained module, so that start-up compiles no schema and loads no ajv. */
async function validators(all: ReadonlyMap<string, { readonly $id: string }>): Promise<string> {
  const ajv = new Ajv2020({
    allErrors: true,
    verbose: true,
    discriminator: true,
    strict: true,
    strictRequired: false,
    allowUnionTypes: true,
    code: { source: true, esm: true },
  });
  for (const [name, schema] of all) ajv.addSchema(schema, name === schema.$id ? undefined : name);
  const names = Object.fromEntries(validated.map((format) => [exportName(format), `${format}.json`]));
  const code = standaloneCode.default(ajv, names);
  const entry = `${code}\nexport const validators = { ${validated.map((format) => `${JSON.stringify(format)}: ${exportName(format)}`).join(', ')} };`;
  const bundled = await build({
    stdin: { contents: entry, resolveDir: schemaFolder, loader: 'js' },
    bundle: true,
    format: 'esm',
    platform: 'neutral',
    mainFields: ['main'],
    write: false,
    minifySyntax: true,
    legalComments: 'none',
    plugins: [sameness],
  });
  return `${banner}${bundled.outputFiles[0]?.text ?? ''}`;
}

/**
 * Whether two values are the same is asked of what a user wrote. The comparison that the validators would bring along
 * calls methods that the reader's values have not, and that a key of the same name hides.
 */
const sameness: Plugin = {
  name: 'sameness',
  setup({ onResolve, onLoad }) {
    onResolve({ filter: /^fast-deep-equal$/ }, ({ path }) => ({ path, namespace: 'sameness' }));
    onLoad({ filter: /.*/, namespace: 'sameness' }, () => ({
      contents: `
        const isObject = (value) => typeof value === 'object' && value !== null;
        module.exports = function same(a, b) {
          if (!isObject(a) || !isObject(b)) return a === b;
          const keys = Object.keys(a);
          return Array.isArray(a) === Array.isArray(b) && keys.length === Object.keys(b).length &&
            keys.every((key) => Object.hasOwn(b, key) && same(a[key], b[key]));
        };
      `,
      loader: 'js',
    }));
  },
};

const written = ['judgement.json', 'steps.json', 'survey-comparison.json'];

/** A format that is only written has its types beside what writes it. */
const typesFolder = (name: string): string =>
  written.includes(name) ? join(schemaFolder, '../src/report/generated') : generatedFolder;

const exportName = (format: string): string => format.replaceAll('-', '_');

const validatorTypes = `${banner}import type { SchemaError, Formats } from '../format.ts';

type Validator<T> = ((value: unknown) => value is T) & { errors?: readonly SchemaError[] | null };

export declare const validators: { readonly [F in keyof Formats]: Validator<Formats[F]> };
`;

/**
 * The packs that ship, as read, so that no file beside the program can change what they say and no run reads them
 * anew. They are read by the validators that were there when this began: a pack that asks for what a rule has only now
 * is written by the next run.
 */
async function shippedPacks(): Promise<string> {
  const folder = join(schemaFolder, '../policies');
  const files = (await readdir(folder)).filter((name) => name.endsWith('.yaml')).sort();
  const packs = await Promise.all(
    files.map(async (file) => {
      const name = file.replace('.yaml', '');
      const document = readDocument(await readFile(join(folder, file), 'utf8'), `shipped pack ${name}`);
      const pack = document.ok ? readRulePack(document.value) : document;
      if (pack.ok) return [name, pack.value] as const;
      const said = pack.problems.map(({ place, message }) => `${file}:${place?.line}: ${message}`);
      throw new Error(`${said.join('\n')}\nIf a rule has it only now, run npm run generate again.`);
    }),
  );
  const value = JSON.stringify(Object.fromEntries(packs), null, 2);
  return `${banner}import type { RulePack } from '../rule-pack.ts';\n\nexport const shippedPacks: Readonly<Record<string, RulePack>> = ${value};\n`;
}

/** The procedures that ship, likewise. */
async function shippedProcedures(): Promise<string> {
  const folder = join(schemaFolder, '../src/runbook/procedures');
  const files = (await readdir(folder)).filter((name) => name.endsWith('.yaml')).sort();
  const read = await Promise.all(
    files.map(async (file) => {
      const document = readDocument(await readFile(join(folder, file), 'utf8'), `shipped procedures ${file}`);
      const procedures = document.ok ? readProcedures(document.value) : document;
      if (procedures.ok) return procedures.value;
      const said = procedures.problems.map(({ place, message }) => `${file}:${place?.line}: ${message}`);
      throw new Error(`${said.join('\n')}\nIf the schema has it only now, run npm run generate again.`);
    }),
  );
  const value = JSON.stringify(read, null, 2);
  return `${banner.replace('schema/ and src/rules/', 'src/runbook/procedures/')}import type { DeclaredProcedures } from '../procedure-file.ts';\n\nexport const shippedProcedures: readonly DeclaredProcedures[] = ${value};\n`;
}

/** The script that surveys a server: kept as what it is, so that it can be read and checked, and built in as text. */
async function surveyScript(): Promise<string> {
  const script = await readFile(join(schemaFolder, '../src/survey/gather.sh'), 'utf8');
  return `${banner.replace('schema/ and src/rules/', 'src/survey/gather.sh')}export const gatheringScript = ${JSON.stringify(script)};\n`;
}

/** A page's style sheet and script, built in as text: what they are by hash must be what is written here. */
async function pageParts(): Promise<string> {
  const part = (name: string) => readFile(join(schemaFolder, '../src/report/page', name), 'utf8');
  const [style, script] = [await part('page.css'), await part('page.js')];
  return `${banner.replace('schema/ and src/rules/', 'src/report/page/')}export const pageStyle = ${JSON.stringify(style)};\n\nexport const pageScript = ${JSON.stringify(script)};\n`;
}

function shapes(all: ReadonlyMap<string, { readonly $id: string }>): string {
  const byFormat = handWritten.map((format) => [format, shapesOf(`${format}.json`, all)] as const);
  return `${banner}import type { Shape } from '../shape.ts';\n\nexport const shapes: Readonly<Record<string, readonly Shape[]>> = ${JSON.stringify(Object.fromEntries(byFormat))};\n`;
}

async function generated(): Promise<ReadonlyMap<string, string>> {
  const all = await schemas();
  const files = new Map<string, string>();
  const published = publishedRulePackSchema(Object.values(rules));
  files.set(join(schemaFolder, 'rule-pack.json'), `${JSON.stringify(published, null, 2)}\n`);
  files.set(join(schemaFolder, 'procedure.json'), await procedureSchema());
  for (const [name, schema] of all) {
    if (name !== 'common.json')
      files.set(join(typesFolder(name), name.replace('.json', '.ts')), await types(schema));
  }
  files.set(join(generatedFolder, 'shapes.ts'), shapes(all));
  files.set(join(generatedFolder, 'validators.js'), await validators(all));
  files.set(join(generatedFolder, 'validators.d.ts'), validatorTypes);
  return files;
}

const checking = process.argv.includes('--check');
const differing: string[] = [];

async function bring(path: string, text: string): Promise<void> {
  if ((await readFile(path, 'utf8').catch(() => undefined)) === text) return;
  differing.push(path);
  if (!checking) await writeFile(path, text);
}

for (const [path, text] of await generated()) await bring(path, text);
const page = join(schemaFolder, 'README.md');
const published = new Map<string, unknown>([
  ...(await schemas()),
  ['procedure.json', JSON.parse(await procedureSchema())],
]);
await bring(page, withKeys(await readFile(page, 'utf8'), published));
await bring(join(schemaFolder, '../src/policy/generated/shipped.ts'), await shippedPacks());
await bring(join(schemaFolder, '../src/runbook/generated/shipped.ts'), await shippedProcedures());
await bring(join(schemaFolder, '../src/survey/generated/script.ts'), await surveyScript());
await bring(join(schemaFolder, '../src/report/generated/page.ts'), await pageParts());
if (checking && differing.length > 0) {
  console.error(`Generated files differ from their sources; run npm run generate:\n${differing.join('\n')}`);
  process.exitCode = 1;
} else console.log(`${differing.length} generated files ${checking ? 'differ' : 'written'}`);
