/** `ullage survey add`: keeps what the survey's script printed on a server, in a file that is fit for review. */
import { open, readFile, realpath } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import type { Readable } from 'node:stream';
import { distance } from 'fastest-levenshtein';
import { nearestWord, quoted } from '../base/nearest.ts';
import { err, type Outcome, ok } from '../base/problem.ts';
import { visible } from '../base/visible.ts';
import { counted } from '../base/wording.ts';
import type { Estate } from '../estate/estate.ts';
import { readJson } from '../read/json.ts';
import { decodeText } from '../read/text.ts';
import { reportProblems } from '../report/report.ts';
import { mostGathered, readGathered } from '../survey/gathered.ts';
import type { LeftOut } from '../survey/left-out.ts';
import { readSurvey } from '../survey/survey.ts';
import { type Surveyed, surveyAsText, surveyOf } from '../survey/survey-of.ts';
import { takenAs } from './alike.ts';
import { type Finished, type ReportFlags, reasonOf, terminal } from './edge.ts';
import { makeFolder } from './make-folder.ts';
import { addRows, shortest, told } from './reading.ts';
import { replaceFile } from './replace-file.ts';
import { withFilesOnDisk } from './repository.ts';

export interface SurveyAddFlags extends ReportFlags {
  readonly repo: string;
  readonly server: string;
  /** Whether what is kept may be newer, or no survey at all. */
  readonly replace?: boolean;
  /** Whether the server is meant as it is written, though one of nearly that name is declared. */
  readonly undeclared?: boolean;
}

export async function runSurveyAdd(
  file: string,
  flags: SurveyAddFlags,
  clock: () => Date = () => new Date(),
): Promise<Finished> {
  const now = clock().toISOString();
  const kept = await keep(file, flags, now);
  if (!kept.ok) {
    return { output: reportProblems(kept.problems, terminal(flags)), code: 2, reason: 'nothing was kept' };
  }
  const lines = [...keptLines(kept.value), ...(await readingLines(kept.value, flags, now))];
  return { output: `${lines.map(visible).join('\n')}\n`, code: 0 };
}

interface Kept {
  readonly path: string;
  readonly surveyed: Surveyed;
  /** Whether the same survey was there already. */
  readonly wasThere: boolean;
  readonly estate: Estate;
}

async function keep(
  file: string,
  { repo, server, replace = false, undeclared = false }: SurveyAddFlags,
  now: string,
): Promise<Outcome<Kept>> {
  const named = nameProblem(server);
  if (named !== undefined) return err(named);
  const given = await contentOf(file);
  if (!given.ok) return given;
  const gathered = readGathered(given.value, file === '-' ? '<standard input>' : file);
  if (!gathered.ok) return gathered;
  const surveyed = surveyOf(gathered.value, server);
  if (!surveyed.ok) return surveyed;
  const { at } = surveyed.value.survey;
  if (Date.parse(at) > Date.parse(now) + dayInMilliseconds) {
    // It would stand in the way of every survey until then.
    return err({
      message: `${at} is in the future`,
      advice: `Set the clock of ${server}, and run the script again.`,
    });
  }
  return withFilesOnDisk(repo, async ({ top, revision: { estate }, paths }) => {
    const path = shortest(join(top, paths.surveys, `${server}.json`));
    const text = surveyAsText(surveyed.value.survey);
    const other = await takenAs(dirname(path), basename(path));
    if (other !== undefined && other !== basename(path)) {
      return err({
        message: `${shortest(join(dirname(path), other))} is there, and some disks do not tell ${path} from it`,
        advice:
          'Write the name of the server as the estate has it. Of two servers whose names differ only in case, one needs another name.',
      });
    }
    const before = await keptBefore(path, replace);
    if (!before.ok) return before;
    if (before.value !== undefined && !replace && at < before.value.at) {
      return err({
        message: `${path} holds a newer survey, of ${before.value.at}; this one is of ${at}`,
        advice: 'Run the script again, or put this one in its place with --replace.',
      });
    }
    const meant = undeclared || before.value !== undefined ? undefined : misspelt(server, estate);
    if (meant !== undefined) {
      return err({
        message: `no server ${server} is declared, and ${meant} is`,
        advice: `Did you mean ${meant}? A server that is still to be declared is kept with --undeclared.`,
      });
    }
    const wasThere = before.value?.text === text;
    const problem = wasThere ? undefined : await written(path, text);
    return problem === undefined ? ok({ path, surveyed: surveyed.value, wasThere, estate }) : err(problem);
  });
}

/** As far as one slip goes: two letters that changed places count as two. */
const slip = 2;

/**
 * The declared server that was most likely meant. Names that differ in a number alone are those of neighbours; one
 * that is near to none is of a server that is surveyed first and declared from that.
 */
function misspelt(server: string, { servers }: Estate): string | undefined {
  if (servers.has(server)) return undefined;
  const nearest = nearestWord(server, [...servers.keys()]);
  if (nearest === undefined || distance(server, nearest) > slip) return undefined;
  const withoutNumber = (name: string): string => name.replace(/[._-]?[0-9]+/g, '');
  return withoutNumber(nearest) === withoutNumber(server) ? undefined : nearest;
}

const dayInMilliseconds = 86_400_000;

/** What the schema of an estate takes for a name; anything else could be a path. */
function nameProblem(server: string) {
  if (!/^[A-Za-z0-9][A-Za-z0-9._-]{0,127}$/.test(server)) {
    return {
      message: `${quoted(server)} cannot be the name of a server`,
      advice: 'Write it as the estate does: letters, digits, dot, underscore and hyphen.',
    };
  }
  return server.toLowerCase() === 'provider'
    ? {
        message: "surveys/provider.json is for the provider's list",
        advice: 'Give the server another name; with `formerly:` that is a renaming.',
      }
    : undefined;
}

/** No more of it than a survey can be, so that a device or a pipe without end is not read to its end. */
async function contentOf(file: string): Promise<Outcome<Uint8Array>> {
  try {
    const input: Readable = file === '-' ? process.stdin : (await open(file)).createReadStream();
    const chunks: Buffer[] = [];
    let length = 0;
    for await (const chunk of input) {
      chunks.push(Buffer.from(chunk));
      length += chunks.at(-1)?.length ?? 0;
      if (length > mostGathered) break;
    }
    return ok(Buffer.concat(chunks));
  } catch (error) {
    return err({
      message: `${file} cannot be read: ${reasonOf(error)}`,
      advice:
        'Name a file that holds what the script of `ullage survey script` printed, or - for standard input.',
    });
  }
}

/** The survey that is kept so far; refused where something else is. */
async function keptBefore(
  path: string,
  replace: boolean,
): Promise<Outcome<{ readonly at: string; readonly text: string } | undefined>> {
  let content: Uint8Array;
  try {
    content = await readFile(path);
  } catch (error) {
    if (error instanceof Error && 'code' in error && error.code === 'ENOENT') return ok(undefined);
    return err({ message: `${path} cannot be read: ${reasonOf(error)}`, advice: 'Move away what is there.' });
  }
  const text = decodeText(content, path);
  const document = text.ok ? readJson(text.value, path) : text;
  const survey = document.ok ? readSurvey(document.value) : document;
  if (text.ok && survey.ok) return ok({ at: survey.value.at, text: text.value });
  return replace
    ? ok(undefined)
    : err(...(survey.ok ? [] : survey.problems), {
        message: `${path} is there, and is no survey`,
        advice: 'Mend it or move it away, or put this one in its place with --replace.',
      });
}

async function written(path: string, text: string) {
  try {
    await makeFolder(dirname(path));
    // Through a symbolic link the file it names is replaced, not the link.
    const file = await realpath(path).catch(() => path);
    await replaceFile(file, {}, (handle) => handle.writeFile(text));
    return undefined;
  } catch (error) {
    return {
      message: `${path} cannot be written: ${reasonOf(error)}`,
      advice: 'Check the disk and the folder, and add it again.',
    };
  }
}

function keptLines({ path, surveyed, wasThere, estate }: Kept): readonly string[] {
  const { survey, leftOut, unseen } = surveyed;
  const isDeclared = estate.servers.has(survey.server);
  return [
    wasThere ? `${path} holds this survey already, of ${survey.at}.` : `Kept in ${path}, as of ${survey.at}:`,
    `  ${counted(survey.devices.length, 'block device')}, ${counted(survey['volume-groups'].length, 'volume group')}, ${counted(survey['file-systems'].length, 'file system')}`,
    ...(isDeclared && isElsewhere(survey, estate)
      ? [
          `No disk of it is as large as a volume that is declared on ${survey.server}: make sure that the script ran there before you go by it.`,
        ]
      : []),
    ...(isDeclared
      ? []
      : [`${survey.server} is not declared yet; \`ullage survey declare\` writes what is there.`]),
    ...(unseen.length === 0 ? [] : ['Not seen, so that nothing is said of it:', ...unseenLines(unseen)]),
    ...(leftOut.length === 0 ? [] : ['Left out:', ...leftOutLines(leftOut)]),
  ];
}

/** Nothing of what is declared is there: most often it is the survey of another server. */
function isElsewhere({ server, devices }: Surveyed['survey'], { held, volumes }: Estate): boolean {
  const sizes = new Set(devices.map(({ size }) => size));
  const declared = (held.get(server) ?? []).flatMap(({ volume }) => volumes.get(volume) ?? []);
  return declared.length > 0 && declared.every(({ size }) => !sizes.has(`${size}`));
}

const unseenLines = (unseen: Surveyed['unseen']): readonly string[] => [
  ...new Set(unseen.map(({ what, why }) => `  ${partNames[what]}: ${why.slice(0, 200)}`)),
];

const partNames: Readonly<Record<Surveyed['unseen'][number]['what'], string>> = {
  devices: 'block devices',
  mounts: 'mounts',
  use: 'use of file systems',
  'volume-groups': 'volume groups',
  fstab: 'fstab',
  superblocks: 'superblocks',
};

/** As many names as a line takes. */
const namedAtMost = 6;

/** Those with the same reason on one line. */
function leftOutLines(leftOut: readonly LeftOut[]): readonly string[] {
  const byReason = new Map<string, string[]>();
  for (const { what, why } of leftOut) byReason.set(why, [...(byReason.get(why) ?? []), what.slice(0, 80)]);
  return [...byReason].map(([why, all]) => {
    const names = [...new Set(all)];
    const more = names.length - namedAtMost;
    return `  ${names.slice(0, namedAtMost).join(', ')}${more > 0 ? ` and ${more} more` : ''}: ${why}`;
  });
}

/** Adds what df measured to the readings. What keeps it from being added keeps nobody from having the survey. */
async function readingLines(
  { surveyed: { survey, use }, estate }: Kept,
  { repo }: SurveyAddFlags,
  now: string,
): Promise<readonly string[]> {
  if (use.length === 0 || !estate.servers.has(survey.server)) return [];
  const added = await addRows(use, { repo, server: survey.server, at: survey.at, now, anySize: false });
  if (added.ok) return told(added.value);
  return [
    'Not added to the readings:',
    ...added.problems.map(({ message, advice }) => `  ${message}. ${advice}`),
  ];
}
