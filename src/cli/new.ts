/** `ullage new`: writes a starter repository layout, and never over what is there. */
import { realpath, stat, writeFile } from 'node:fs/promises';
import { dirname, join, relative } from 'node:path';
import { GitRepository } from '../git/repository.ts';
import { dayOf, type Finished, reasonOf } from './edge.ts';
import { schemasForEditors, writeSchemas } from './editor-schemas.ts';
import { makeFolder } from './make-folder.ts';
import { editorFolder, starterLayout } from './starter-layout.ts';

export interface NewFlags {
  readonly repo: string;
  readonly now?: string;
  readonly schemas?: boolean;
}

/** Where the layout belongs: at the top of the repository that a folder is in, where the other commands look for it. */
async function topOf(dir: string): Promise<string> {
  const opened = await GitRepository.open(dir);
  if (!opened.ok) return dir;
  const top = await opened.value.top();
  await opened.value.close();
  if (!top.ok || top.value === (await realpath(dir))) return dir;
  return relative('.', top.value) || '.';
}

/** `ullage new --schemas`: only what editors complete by, over what is there. */
async function renewSchemas(top: string): Promise<Finished> {
  try {
    await writeSchemas(top);
  } catch (error) {
    return { output: '', code: 2, reason: `the schemas could not be written: ${reasonOf(error)}` };
  }
  return { output: `Written: ${editorFolder}/, the schemas of this version of Ullage\n`, code: 0 };
}

export async function runNew({ repo, now, schemas = false }: NewFlags): Promise<Finished> {
  const day = dayOf(now);
  if (!day.ok)
    return { output: '', code: 2, reason: `${day.problems[0]?.message}. ${day.problems[0]?.advice}` };
  const top = await topOf(repo);
  if (schemas) return renewSchemas(top);
  const files = Object.entries(starterLayout(day.value.slice(0, 4)));
  const layout = [...files, ...(await schemasForEditors())];
  const there = (
    await Promise.all(
      layout.map(async ([path]) =>
        stat(join(top, path)).then(
          () => path,
          () => undefined,
        ),
      ),
    )
  ).filter((path) => path !== undefined);
  if (there.length > 0) {
    return {
      output: '',
      code: 2,
      reason: `nothing was written: ${there.join(', ')} would be overwritten. Move ${there.length === 1 ? 'it' : 'them'} away, or start in an empty folder with --repo DIR.`,
    };
  }
  try {
    for (const [path, text] of layout) {
      await makeFolder(dirname(join(top, path)));
      // wx: a file that came between the look and the write is not overwritten either.
      await writeFile(join(top, path), text, { flag: 'wx' });
    }
  } catch (error) {
    return { output: '', code: 2, reason: `the layout could not be written completely: ${reasonOf(error)}` };
  }
  const lines = [
    'Written:',
    ...files.map(([path]) => `  ${join(top === repo ? '' : top, path)}`),
    `  ${join(top === repo ? '' : top, editorFolder)}/ (schemas, by which editors complete and check these files)`,
    '',
    'Next: enter your own prices, commit to main (`git init` first, if there is no repository yet), declare your storage',
    'on a branch as storage/example.yaml shows it, and judge the branch with: ullage gate',
    'For servers that you have already, write existing: true at the top of the file: nothing of them is created.',
    'Until a branch is merged, `ullage cost` and `ullage headroom` read the files as they are.',
    '',
  ];
  return { output: lines.join('\n'), code: 0 };
}
