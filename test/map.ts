/** The map of the source, drawn from its imports: which folder of the pipeline imports from which. */
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join, posix } from 'node:path';
import { fileURLToPath } from 'node:url';

/** The pipeline, left to right. */
export const pipeline = [
  'base',
  'git',
  'read',
  'estate',
  'change',
  'price',
  'capacity',
  'survey',
  'runbook',
  'rules',
  'policy',
  'audit',
  'report',
  'cli',
  'action',
];

const top = join(import.meta.dirname, '..');
export const source = join(top, 'src');

/** Every file of a folder, what is generated aside; its path from `src/`. */
export const files: readonly string[] = readdirSync(source, { recursive: true, encoding: 'utf8' })
  .map((file) => file.replaceAll('\\', '/'))
  .filter((file) => file.endsWith('.ts') && file.includes('/') && !file.includes('generated/'));

export const text = (file: string): string => readFileSync(join(source, file), 'utf8');

/** What a file imports, types too, as it names it. */
export const imports = (file: string): readonly string[] =>
  [...text(file).matchAll(/(?:from|import)\s*\(?\s*'([^']+)'/g)].flatMap(([, name]) => name ?? []);

export const folderOf = (file: string): string => file.split('/')[0] ?? '';

/** The files of the source that a file imports, each by its path from `src/`. */
export const filesFrom = (file: string): readonly string[] =>
  imports(file)
    .filter((name) => name.startsWith('.'))
    .map((name) => posix.join(posix.dirname(file), name));

/** The other folders that a file imports from. */
export const foldersFrom = (file: string): readonly string[] =>
  filesFrom(file)
    .map(folderOf)
    .filter((folder) => folder !== folderOf(file));

/** One row a folder, one column for each to its left, marked where the row imports from it. */
export function drawnMap(): string {
  const width = Math.max(...pipeline.map(({ length }) => length));
  const rows = pipeline.map((folder, index) => {
    const from = new Set(files.filter((file) => folderOf(file) === folder).flatMap(foldersFrom));
    const cells = pipeline.slice(0, index).map((other) => (from.has(other) ? '×' : '·').padEnd(other.length));
    return [folder.padEnd(width), ...cells].join('  ').trimEnd();
  });
  return [[''.padEnd(width), ...pipeline.slice(0, -1)].join('  '), ...rows].join('\n');
}

const guide = join(top, 'DEVELOPERS.md');
const [begin, end] = ['<!-- map: npm run map -->\n```\n', '\n```\n<!-- end of map -->'];

/** The guide as it is, and as it has to be. */
export function guideWithMap(): { readonly is: string; readonly wanted: string } {
  const is = readFileSync(guide, 'utf8');
  const [from, to] = [is.indexOf(begin), is.indexOf(end)];
  if (from === -1 || to < from) throw new Error('DEVELOPERS.md has no place for the map');
  return { is, wanted: `${is.slice(0, from + begin.length)}${drawnMap()}${is.slice(to)}` };
}

if (process.argv[1] === fileURLToPath(import.meta.url)) writeFileSync(guide, guideWithMap().wanted);
