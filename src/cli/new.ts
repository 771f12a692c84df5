/** `ullage new`: writes what a starter repository layout has and a repository lacks, and never over what is there. */
import { lstat, readdir, readFile, realpath, writeFile } from 'node:fs/promises';
import { dirname, join, relative } from 'node:path';
import { err, type Outcome, ok } from '../base/problem.ts';
import { counted } from '../base/wording.ts';
import { bareSettings, readSettings, settingsFile } from '../estate/settings.ts';
import { GitRepository } from '../git/repository.ts';
import { isYaml, readContent } from '../policy/files.ts';
import { readPriceList } from '../price/price-list.ts';
import { dayOf, type Finished, reasonOf } from './edge.ts';
import { writeSchemas } from './editor-schemas.ts';
import { makeFolder } from './make-folder.ts';
import { editorFolder, type StarterChoices, type StarterFile, starterLayout } from './starter-layout.ts';

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

/** The YAML files in a folder, at any depth; none where there is no such folder. */
async function yamlIn(folder: string): Promise<readonly string[]> {
  const names = await readdir(folder, { recursive: true }).catch(() => []);
  return names.filter(isYaml).sort();
}

/** The settings that are there say where everything is and in which currency; without any, a price list does that. */
async function choicesAt(top: string, year: string): Promise<Outcome<StarterChoices>> {
  const content = await readFile(join(top, settingsFile)).catch(() => undefined);
  if (content !== undefined) {
    const settings = readContent(content, settingsFile, readSettings);
    return settings.ok
      ? ok({ year, currency: settings.value.currency, paths: settings.value.paths })
      : err(...settings.problems);
  }
  const { paths } = bareSettings;
  const [list] = await yamlIn(join(top, paths.prices));
  const text = list === undefined ? undefined : await readFile(join(top, paths.prices, list));
  const read = text && readContent(text, `${paths.prices}/${list}`, readPriceList);
  return ok({ year, currency: read?.ok ? read.value.currency : 'EUR', paths });
}

/**
 * What a repository has in place of a file of the layout, in words; undefined where it has nothing. A price list or a
 * rule pack of another name is as good: an invented one beside it would count as well.
 */
async function inPlaceOf({ kind, path }: StarterFile, top: string): Promise<string | undefined> {
  if ((await lstat(join(top, path)).catch(() => undefined)) !== undefined) return path;
  if (kind === 'settings') return undefined;
  const folder = dirname(path);
  const there = await yamlIn(join(top, folder));
  return there.length === 0 ? undefined : `${folder}/ (${counted(there.length, 'file')})`;
}

export async function runNew({ repo, now, schemas = false }: NewFlags): Promise<Finished> {
  const day = dayOf(now);
  if (!day.ok)
    return { output: '', code: 2, reason: `${day.problems[0]?.message}. ${day.problems[0]?.advice}` };
  const top = await topOf(repo);
  if (schemas) return renewSchemas(top);
  const choices = await choicesAt(top, day.value.slice(0, 4));
  if (!choices.ok) {
    const [{ place, message, advice } = { message: '', advice: '' }] = choices.problems;
    const where = place === undefined ? settingsFile : `${place.file}:${place.line}:${place.column}`;
    return { output: '', code: 2, reason: `nothing was written: ${where}: ${message}. ${advice}` };
  }
  const from = (path: string): string => join(top === repo ? '' : top, path);
  const written: string[] = [];
  const kept: string[] = [];
  const layout = starterLayout(choices.value);
  try {
    for (const file of layout) {
      const there = await inPlaceOf(file, top);
      if (there !== undefined) {
        kept.push(there);
        continue;
      }
      await makeFolder(dirname(join(top, file.path)));
      // wx: a file that came between the look and the write is not overwritten either.
      await writeFile(join(top, file.path), file.text, { flag: 'wx' });
      written.push(from(file.path));
    }
    if ((await lstat(join(top, editorFolder)).catch(() => undefined)) === undefined) {
      await writeSchemas(top);
      written.push(`${from(editorFolder)}/ (schemas, by which editors complete and check these files)`);
    } else kept.push(`${editorFolder}/`);
  } catch (error) {
    return { output: '', code: 2, reason: `the layout could not be written completely: ${reasonOf(error)}` };
  }
  if (written.length === 0)
    return {
      output: `Nothing was lacking, and nothing was written. There already: ${kept.join(', ')}.\n`,
      code: 0,
    };
  const isNew = (kind: StarterFile['kind']): boolean =>
    layout.some((file) => file.kind === kind && written.includes(from(file.path)));
  const { storage } = choices.value.paths;
  const lines = [
    'Written:',
    ...written.map((path) => `  ${path}`),
    ...(kept.length === 0 ? [] : ['Kept as it was:', ...kept.map((path) => `  ${from(path)}`)]),
    '',
    `Next: ${isNew('prices') ? 'enter your own prices, ' : ''}commit to main (\`git init\` first, if there is no repository yet), declare your storage`,
    `on a branch${isNew('storage') ? ` as ${storage}/example.yaml shows it` : ''}, and judge the branch with: ullage gate`,
    'For servers that you have already, write existing: true at the top of the file: nothing of them is created.',
    'Until a branch is merged, `ullage cost` and `ullage headroom` read the files as they are.',
    '',
  ];
  return { output: lines.join('\n'), code: 0 };
}
