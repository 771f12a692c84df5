/** What a branch brings that looks like Ullage's own and was not read. */
import type { NotRead } from '../../policy/judgement.ts';
import { advice } from './blocks.ts';
import type { Field } from './model.ts';

const called = {
  estate: { one: 'an estate file', many: 'estate files', path: 'storage' },
  'price-list': { one: 'a price list', many: 'price lists', path: 'prices' },
  'rule-pack': { one: 'a rule pack', many: 'rule packs', path: 'policies' },
  waivers: { one: 'a waivers file', many: 'waivers', path: 'waivers' },
} as const;

/** That it was not read, where such files are looked for, and what to do. */
export function notReadSentence({ file, format, folder }: NotRead): string {
  if (format === 'settings')
    return `${file} looks like the settings and is not read: they are in ullage.yaml, at the top of the repository. Rename it.`;
  const { one, many, path } = called[format];
  const what = `${file} looks like ${one} and is not read: ${many} are the files in ${folder}/ whose names end in .yaml or .yml.`;
  return file.startsWith(`${folder}/`)
    ? `${what} Rename it.`
    : `${what} Move it there, or name its folder in \`ullage.yaml\` as \`paths: { ${path}: FOLDER }\`.`;
}

/** So many are named; the JSON report names all. */
const named = 3;

export function notReadFields(files: readonly NotRead[] = []): readonly Field[] {
  const more = files.length - named;
  return files
    .slice(0, named)
    .map((file, index) =>
      advice(
        'Not read',
        more > 0 && index === named - 1
          ? `${notReadSentence(file)} So it is with ${more} more.`
          : notReadSentence(file),
      ),
    );
}
