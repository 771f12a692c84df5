/** `ullage survey declare`: what is there and not declared, as estate files. */
import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { err, type Outcome, ok } from '../base/problem.ts';
import { visible } from '../base/visible.ts';
import { counted } from '../base/wording.ts';
import { exactSize } from '../estate/size.ts';
import { readSurveys } from '../policy/surveys.ts';
import { unknownTier } from '../price/price-list.ts';
import { reportProblems } from '../report/report.ts';
import { type Declaration, declareSurveys, type EstateText } from '../survey/declare.ts';
import { match } from '../survey/match.ts';
import { asWritten } from '../survey/own-system.ts';
import { takenAs } from './alike.ts';
import { type Finished, type ReportFlags, reasonOf, terminal } from './edge.ts';
import { makeFolder } from './make-folder.ts';
import { shortest } from './reading.ts';
import { withFilesOnDisk } from './repository.ts';

export interface SurveyDeclareFlags extends ReportFlags {
  readonly repo: string;
  readonly into?: string;
}

interface Declared extends Declaration {
  /** How many disks cannot be told from volumes that are declared. */
  readonly undecided: number;
  readonly top: string;
}

export async function runSurveyDeclare(flags: SurveyDeclareFlags): Promise<Finished> {
  const { repo, into } = flags;
  const found = await declared(repo);
  if (!found.ok) {
    return {
      output: reportProblems(found.problems, terminal(flags)),
      code: 2,
      reason: 'nothing was written',
    };
  }
  const { files, leftOut, without, undecided, top } = found.value;
  const untold = [
    ...(undecided === 0
      ? []
      : [
          `${counted(undecided, 'disk')} may be volumes that are declared, and are left out; ullage survey compare names them.`,
        ]),
    ...(leftOut.length === 0
      ? []
      : [
          `${counted(leftOut.length, 'volume')} of the provider's list may be declared already, or be told of here, and ${leftOut.length === 1 ? 'is' : 'are'} left out: ${leftOut.map(({ name, id, size }) => `${id ?? name ?? 'one without a name'} (${exactSize(size)})`).join(', ')}.`,
          'Write the id of each where it belongs, and run it again.',
        ]),
    ...without.map(
      ({ volume: { name, place }, system }) =>
        `${name} is declared without what is on it: write ${asWritten(system)} there, at ${place.file}:${place.line}.`,
    ),
  ];
  if (files.length === 0)
    return {
      output: `${(untold.length > 0 ? untold : ['Nothing is there that is not declared.']).map(visible).join('\n')}\n`,
      code: 0,
    };
  if (into === undefined)
    return {
      output: `${untold.map((line) => `# ${visible(line)}\n`).join('')}${files.map(({ name, text }) => `# ${name}\n${text}`).join('---\n')}`,
      code: 0,
    };
  const written = await writeNew(join(top, into), files);
  if (!written.ok)
    return {
      output: reportProblems(written.problems, terminal(flags)),
      code: 2,
      reason: 'not all was written',
    };
  const asks = files.some(({ text }) => text.includes(unknownTier));
  const lines = [
    'Written:',
    ...written.value.map((path) => `  ${shortest(path)}`),
    ...untold,
    ...(asks ? [`Where the tier is ${unknownTier}, write which it is; the gate names each place.`] : []),
    'Review them, say whose each is, and commit them on a branch.',
  ];
  return { output: `${lines.map(visible).join('\n')}\n`, code: 0 };
}

async function declared(repo: string): Promise<Outcome<Declared>> {
  return withFilesOnDisk(repo, async ({ top, tree, revision: { estate }, paths }) => {
    const surveys = await readSurveys(tree, paths.surveys);
    if (!surveys.ok) return surveys;
    const { servers, provider } = surveys.value;
    if (servers.length === 0 && provider === undefined) {
      return err({
        message: 'nothing has been surveyed yet',
        advice:
          '`ullage survey script` prints what to run on a server, and `ullage survey add` keeps what it finds.',
      });
    }
    const matches = match(estate, servers, provider);
    return ok({
      ...declareSurveys(estate, surveys.value, matches),
      undecided: matches.undecided.length,
      top,
    });
  });
}

/** Writes each to a file of its own, beside any that is there. */
async function writeNew(folder: string, files: readonly EstateText[]): Promise<Outcome<readonly string[]>> {
  const paths: string[] = [];
  try {
    await makeFolder(folder);
    for (const { name, text } of files) paths.push(await writeBeside(folder, name, text));
    return ok(paths);
  } catch (error) {
    return err({
      message: `${folder} cannot be written to: ${reasonOf(error)}`,
      advice: `Written so far: ${paths.length === 0 ? 'nothing' : paths.join(', ')}. Mend that, and run it again.`,
    });
  }
}

async function writeBeside(folder: string, name: string, text: string): Promise<string> {
  for (let number = 1; ; number++) {
    const other = number === 1 ? name : name.replace(/\.yaml$/, `-surveyed-${number}.yaml`);
    if ((await takenAs(folder, other)) !== undefined) continue;
    const path = join(folder, other);
    try {
      await writeFile(path, text, { flag: 'wx' });
      return path;
    } catch (error) {
      if (!(error instanceof Error && 'code' in error && error.code === 'EEXIST')) throw error;
    }
  }
}
