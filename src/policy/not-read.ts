/**
 * Files that a branch brings or alters which look like Ullage's own and lie where nothing is read: without a word, what
 * they declare would seem to have been judged.
 */
import { settingsFile } from '../estate/settings.ts';
import { readDocument } from '../read/document.ts';
import { looksLike, mayLookLike } from '../read/looks-like.ts';
import { decodeText } from '../read/text.ts';
import { isYaml, within } from './files.ts';
import type { NotRead } from './judgement.ts';
import { pathsOf, type Reading } from './reader.ts';

/** So many changed files are looked at; more are another program's. */
const lookedAtMost = 1_000;

const folderOf = {
  estate: 'storage',
  'price-list': 'prices',
  'rule-pack': 'policies',
  waivers: 'waivers',
} as const;

const ourFolders = [...Object.values(folderOf), 'procedures'] as const;

/** In the order of their paths. */
export async function filesNotRead(
  base: Pick<Reading, 'tree'>,
  head: Pick<Reading, 'tree' | 'settings'>,
): Promise<readonly NotRead[]> {
  const paths = pathsOf(head);
  const isWanted = (path: string): boolean => {
    if (path === settingsFile || within(paths.readings, path) || within(paths.surveys, path)) return false;
    const isOurs = ourFolders.some((kind) => within(paths[kind], path));
    return isOurs ? !isYaml(path) : isYaml(path) || /\.json$/i.test(path);
  };
  const changed = (await head.tree.changedFrom(base.tree, isWanted)).slice(0, lookedAtMost);
  const looked = await Promise.all(
    changed.map(async (file): Promise<readonly NotRead[]> => {
      const { path } = file;
      if (/^\.?ullage\.(?:ya?ml|json)$/i.test(path)) return [{ file: path, format: 'settings', folder: '' }];
      const content = await head.tree.read(file);
      const text = content.ok ? decodeText(content.value, path) : content;
      if (!text.ok || !mayLookLike(text.value)) return [];
      const document = readDocument(text.value, path);
      const format = document.ok ? looksLike(document.value.value) : undefined;
      return format === undefined ? [] : [{ file: path, format, folder: paths[folderOf[format]] }];
    }),
  );
  return looked.flat().sort((a, b) => (a.file < b.file ? -1 : 1));
}
