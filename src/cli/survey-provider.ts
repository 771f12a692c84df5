/** `ullage survey provider`: keeps what matters of the provider's own list of volumes and servers. */
import { readFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { err, type Outcome, ok, type Problem } from '../base/problem.ts';
import { visible } from '../base/visible.ts';
import { counted } from '../base/wording.ts';
import { readingTime } from '../capacity/readings.ts';
import type { ProviderSurveyFile } from '../read/generated/provider-survey.ts';
import { jsonText, readJson } from '../read/json.ts';
import { decodeText } from '../read/text.ts';
import { reportProblems } from '../report/report.ts';
import {
  ledNowhere,
  type ProviderList,
  readProviderList,
  together,
  type UnknownWords,
} from '../survey/provider-list.ts';
import { type ProviderSurvey, readProviderSurvey } from '../survey/provider-survey.ts';
import { type Finished, type ReportFlags, reasonOf, terminal } from './edge.ts';
import { makeFolder } from './make-folder.ts';
import { shortest } from './reading.ts';
import { replaceFile } from './replace-file.ts';
import { withFilesOnDisk } from './repository.ts';

export interface SurveyProviderFlags extends ReportFlags {
  readonly repo: string;
  readonly at?: string;
}

interface Kept {
  readonly path: string;
  readonly survey: ProviderSurveyFile;
  readonly unknown: UnknownWords;
  readonly absent: readonly string[];
  /** What else is to be told of the files; sentences. */
  readonly said: readonly string[];
  /** What this takes the place of. */
  readonly before: ProviderSurvey | undefined;
}

export async function runSurveyProvider(
  files: readonly string[],
  flags: SurveyProviderFlags,
  clock: () => Date = () => new Date(),
): Promise<Finished> {
  const kept = await keep(files, flags, clock().toISOString());
  if (!kept.ok) {
    return { output: reportProblems(kept.problems, terminal(flags)), code: 2, reason: 'nothing was kept' };
  }
  const { path, survey, unknown, absent, said, before } = kept.value;
  const lines = [
    `Kept in ${path}, as of ${survey.at}:`,
    `  ${counted(survey.volumes.length, 'volume')}, ${counted(survey.servers.length, 'server')}`,
    ...(unknown.size === 0
      ? []
      : [
          'Words that provider-list: in ullage.yaml does not translate, kept as they are:',
          ...[...unknown].map(([word, times]) => `  ${word}, ${times === 1 ? 'once' : `${times} times`}`),
        ]),
    ...(absent.length === 0 ? [] : [`No row has a value for ${absent.join(', ')}.`]),
    ...said,
    ...beforeLines(survey, before),
  ];
  return { output: `${lines.map(visible).join('\n')}\n`, code: 0 };
}

/** Whether what is gone said more, or was newer: it is in the history, if it was committed. */
function beforeLines(survey: ProviderSurveyFile, before: ProviderSurvey | undefined): readonly string[] {
  if (before === undefined) return [];
  const lost = before.lists.filter((kind) => !survey.lists.includes(kind));
  const said = [
    ...(before.at > survey.at ? ['was newer'] : []),
    ...(lost.length === 0 ? [] : [`also listed ${lost.join(' and ')}`]),
  ];
  if (said.length === 0) return [];
  return [
    `What was kept before, of ${before.at}, ${said.join(', and ')}. It has been replaced${lost.length === 0 ? '' : '; give all lists together'}.`,
  ];
}

const dayInMilliseconds = 86_400_000;

async function keep(
  files: readonly string[],
  { repo, at }: SurveyProviderFlags,
  now: string,
): Promise<Outcome<Kept>> {
  const time = readingTime(at ?? now);
  if (time === undefined) {
    return err({
      message: `--at ${at} is not a time`,
      advice: 'Write it as in RFC 3339, such as 2026-11-20T06:00:00Z.',
    });
  }
  if (Date.parse(time) > Date.parse(now) + dayInMilliseconds) {
    return err({
      message: `--at ${time} is in the future`,
      advice: 'Give the time at which the lists were taken.',
    });
  }
  return withFilesOnDisk(repo, async ({ top, revision: { settings }, paths }) => {
    if (settings?.providerList === undefined) {
      return err({
        message: 'ullage.yaml does not say which field of the list is which',
        advice:
          'Say so under provider-list:, such as volumes: { id: Volume ID, size: { field: Size, unit: GiB }, tier: Class }.',
      });
    }
    const problems: Problem[] = [];
    const lists: ProviderList[] = [];
    const unknown = new Map<string, number>();
    const absent = new Set<string>();
    // A file that is given twice is one.
    for (const file of new Set(files)) {
      const text = await textOf(file);
      const list = text.ok ? readProviderList(text.value, file, settings.providerList, time) : text;
      if (!list.ok) problems.push(...list.problems);
      else {
        lists.push(list.value);
        for (const name of list.value.absent) absent.add(name);
        for (const [word, times] of list.value.unknown) unknown.set(word, (unknown.get(word) ?? 0) + times);
      }
    }
    const nowhere = ledNowhere(lists, settings.providerRows);
    problems.push(...nowhere.problems);
    if (problems.length > 0) return err(...problems);
    const survey = together(
      lists.map((list) => list.survey),
      time,
    );
    if (!survey.ok) return survey;
    const path = join(top, paths.surveys, 'provider.json');
    const before = await keptBefore(path);
    try {
      await makeFolder(dirname(path));
      await replaceFile(path, {}, (handle) => handle.writeFile(jsonText(survey.value)));
    } catch (error) {
      return err({
        message: `${path} cannot be written: ${reasonOf(error)}`,
        advice: 'Mend that, and run it again.',
      });
    }
    const said = [...nowhere.said, ...lists.flatMap(({ cut }) => cut ?? [])];
    return ok({ path: shortest(path), survey: survey.value, unknown, absent: [...absent], said, before });
  });
}

/** Undefined where there is none, or none that reads. */
async function keptBefore(path: string): Promise<ProviderSurvey | undefined> {
  const content = await readFile(path).catch(() => undefined);
  const text = content === undefined ? undefined : decodeText(content, path);
  const document = text?.ok ? readJson(text.value, path) : undefined;
  const survey = document?.ok ? readProviderSurvey(document.value) : undefined;
  return survey?.ok ? survey.value : undefined;
}

async function textOf(file: string): Promise<Outcome<string>> {
  try {
    return decodeText(await readFile(file), file);
  } catch (error) {
    return err({
      message: `${file} cannot be read: ${reasonOf(error)}`,
      advice: "Name a file that holds the provider's list.",
    });
  }
}
