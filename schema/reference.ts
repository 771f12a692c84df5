/** The reference of every format, from its schema: a table with a row for each key, in the page beside the schemas. */
import { isSchema, type Schema, schemaReader } from './mappings.ts';

/** Every published format, those that people write first; each with what it is, for its heading. */
const formats = [
  ['settings', 'Settings: ullage.yaml'],
  ['estate', 'Estate file: storage/**.yaml'],
  ['price-list', 'Price list: prices/*.yaml'],
  ['rule-pack', 'Rule pack: policies/*.yaml'],
  ['waivers', 'Waivers: waivers/*.yaml'],
  ['procedure', 'Procedures: procedures/*.yaml'],
  ['survey', "A server's survey: surveys/*.json"],
  ['gathered', "What the survey's script prints on a server"],
  ['provider-survey', "The provider's list, as kept: surveys/provider.json"],
  ['judgement', 'What gate prints as JSON'],
  ['steps', 'What steps prints as JSON'],
  ['audit-record', 'A record of the audit'],
  ['survey-comparison', 'What survey compare prints as JSON'],
] as const;

const block = /(<!-- keys: [^\n]* -->\n)[\s\S]*?(<!-- end of keys -->)/;

/** The page with the tables as they should be now. */
export const withKeys = (page: string, files: ReadonlyMap<string, unknown>): string =>
  page.replace(block, (_, from: string, to: string) => `${from}\n${reference(files)}\n\n${to}`);

const cell = (text: string): string => text.replaceAll('|', '\\|').replaceAll('<', '&lt;');
const code = (text: string): string => (text === '' ? '' : `\`${text.replaceAll('|', '\\|')}\``);

function reference(files: ReadonlyMap<string, unknown>): string {
  const { all, resolved, exampleOf, requiredOf, flow } = schemaReader(files);

  /** What a value is, in words. */
  function typeOf(schema: Schema): string {
    if (schema.const !== undefined) return `\`${String(schema.const)}\``;
    if (Array.isArray(schema.enum)) return schema.enum.map((each) => `\`${String(each)}\``).join(', ');
    const alternatives = [schema.oneOf, schema.anyOf].filter(Array.isArray).flat().filter(isSchema);
    if (alternatives.length > 0 && alternatives.every(({ $ref, type }) => $ref ?? type)) {
      return [...new Set(alternatives.map((each) => typeOf(resolved(each))))].join(', or ');
    }
    if (isSchema(schema.items) && schema.type === 'array') return `list: ${typeOf(resolved(schema.items))}`;
    if (isSchema(schema.additionalProperties)) return 'mapping by name';
    if (isSchema(schema.properties) || alternatives.length > 0) return 'mapping';
    const { title, type } = schema;
    if (typeof title === 'string' && type === 'string') return words(title);
    const types = Array.isArray(type) ? type : [type ?? 'any value'];
    return types.map((each) => typeWords[String(each)] ?? String(each)).join(' or ');
  }

  const wantedIn = (schema: Schema, key: string): '' | '*required*' =>
    requiredOf(schema).includes(key) ? '*required*' : '';

  /** Keys of which one or another is wanted. */
  const alternativeKeys = (schema: Schema): readonly string[] =>
    (Array.isArray(schema.oneOf) ? schema.oneOf : []).flatMap((each: unknown) =>
      isSchema(each) && !isSchema(each.properties) && Array.isArray(each.required)
        ? each.required.map(String)
        : [],
    );

  function tableOf(top: Schema): readonly string[] {
    const seen = new Map<string, string>();
    const rows: string[] = [];

    function row(path: string, schema: Schema, wanted: '' | '*required*' | '*one of these*'): void {
      const whole = resolved(schema);
      const fallback = wanted || code(flow(whole.default));
      // What a key defaults to shows it better than the example that its type has for all keys of its kind.
      const example = flow(
        schema.examples === undefined && schema.default !== undefined ? schema.default : exampleOf(whole),
      );
      const description = typeof whole.description === 'string' ? whole.description : '';
      const shown = example.length > 60 ? '' : code(example);
      rows.push(`| ${code(path)} | ${cell(typeOf(whole))} | ${fallback} | ${shown} | ${cell(description)} |`);
    }

    function keysOf(schema: Schema, path: string): void {
      const whole = resolved(schema);
      const ref = typeof schema.$ref === 'string' ? schema.$ref : undefined;
      if (ref !== undefined && isSchema(whole.properties)) {
        const before = seen.get(ref);
        if (before !== undefined) {
          rows.push(`| ${code(`${path}.…`)} | | | | As under ${code(before)}. |`);
          return;
        }
        seen.set(ref, path);
      }
      const eitherOr = alternativeKeys(whole);
      for (const [key, below] of Object.entries(isSchema(whole.properties) ? whole.properties : {})) {
        if (!isSchema(below)) continue;
        const at = path === '' ? key : `${path}.${key}`;
        row(at, below, eitherOr.includes(key) ? '*one of these*' : wantedIn(whole, key));
        keysOf(below, at);
      }
      if (isSchema(whole.items)) keysOf(whole.items, `${path}[]`);
      if (isSchema(whole.additionalProperties)) keysOf(whole.additionalProperties, `${path}.NAME`);
      alternativesOf(whole, path);
    }

    /** What is in every alternative once, and then what each has of its own. */
    function alternativesOf(whole: Schema, path: string): void {
      const branches = [whole.oneOf, whole.anyOf].filter(Array.isArray).flat().filter(isSchema);
      const many = branches.filter((branch) => isSchema(branch.properties));
      const common = (key: string, below: unknown): boolean =>
        many.every(
          ({ properties }) =>
            isSchema(properties) && JSON.stringify(properties[key]) === JSON.stringify(below),
        );
      const [first] = many;
      for (const [index, branch] of many.entries()) {
        const rule = isSchema(branch.properties) ? branch.properties.rule : undefined;
        const named = isSchema(rule) && rule.const !== undefined ? ` (${String(rule.const)})` : '';
        for (const [key, below] of Object.entries(isSchema(branch.properties) ? branch.properties : {})) {
          if (!isSchema(below) || (common(key, below) && (index > 0 || branch !== first))) continue;
          const at = `${path}.${key}${common(key, below) ? '' : named}`;
          row(at, below, wantedIn(branch, key));
          keysOf(below, at);
        }
      }
      for (const branch of branches.filter(({ $ref }) => $ref !== undefined)) keysOf(branch, path);
    }

    keysOf(top, '');
    return rows;
  }

  const listed: readonly string[] = ['common.json', ...formats.map(([name]) => `${name}.json`)];
  const missing = [...all.keys()].filter((name) => !listed.includes(name));
  if (missing.length > 0) throw new Error(`schema/reference.ts does not list ${missing.join(', ')}`);
  const page = formats.flatMap(([name, title]) => {
    const top = all.get(`${name}.json`);
    if (!isSchema(top)) throw new Error(`There is no schema of ${name}`);
    return [
      `### ${title}`,
      '',
      `${String(top.description)} Schema: [${name}.json](${name}.json).`,
      '',
      '| key | type | default | example | what it is |',
      '| --- | --- | --- | --- | --- |',
      ...tableOf(top),
      '',
    ];
  });
  return page.join('\n').trim();
}

/** A title such as ProviderSizeField in words. */
const words = (title: string): string =>
  title.replaceAll(/(?<=[a-z])[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`).toLowerCase();

const typeWords: Readonly<Record<string, string>> = {
  string: 'text',
  boolean: 'true or false',
  integer: 'whole number',
  number: 'number',
  array: 'list',
  object: 'mapping',
  null: 'null',
};
