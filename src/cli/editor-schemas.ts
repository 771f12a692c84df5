/** The schemas in `.ullage/schema`, by which editors complete: copies of those that are installed with the program. */
import { lstat, readFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { makeFolder } from './make-folder.ts';
import { replaceFile } from './replace-file.ts';
import { editorFolder, editorSchemas } from './starter-layout.ts';

/** Path from the top of the repository, and text. */
export const schemasForEditors = (): Promise<readonly (readonly [string, string])[]> =>
  Promise.all(
    editorSchemas.map(async (name) => [
      `${editorFolder}/${name}.json`,
      await readFile(new URL(`../../schema/${name}.json`, import.meta.url), 'utf8'),
    ]),
  );

/** Puts them there anew. A link in their way is no folder of ours, and is not followed. */
export async function writeSchemas(top: string): Promise<void> {
  for (const folder of [dirname(editorFolder), editorFolder]) {
    const there = await lstat(join(top, folder)).catch(() => undefined);
    if (there?.isSymbolicLink()) throw new Error(`${folder} is a link to elsewhere`);
  }
  await makeFolder(join(top, editorFolder));
  for (const [path, text] of await schemasForEditors())
    await replaceFile(join(top, path), {}, (handle) => handle.writeFile(text));
}

/** Said where the folder is there and does not hold what this version has. */
export async function staleSchemas(top: string): Promise<readonly string[]> {
  const there = await lstat(join(top, editorFolder)).catch(() => undefined);
  if (there === undefined) return [];
  // Git may give a checkout on Windows other ends of line.
  const written = (path: string) =>
    readFile(join(top, path), 'utf8').then(
      (text) => text.replaceAll('\r\n', '\n'),
      () => undefined,
    );
  // A remark never keeps anything from being judged.
  const installed = await schemasForEditors().catch(() => []);
  const kept = await Promise.all(installed.map(async ([path, text]) => (await written(path)) === text));
  return kept.every(Boolean)
    ? []
    : [
        `The schemas in ${editorFolder}/ are of another version of Ullage, so that an editor may offer and refuse other keys than this one. \`ullage new --schemas\` writes them anew.`,
      ];
}
