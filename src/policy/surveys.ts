/** Reads a revision's surveys: `surveys/SERVER.json`, and the provider's list in `surveys/provider.json`. */
import { basename } from 'node:path/posix';
import { at, err, type Outcome, ok, type Problem } from '../base/problem.ts';
import type { Tree } from '../git/tree.ts';
import { readJson } from '../read/json.ts';
import { decodeText } from '../read/text.ts';
import type { Surveys } from '../survey/compare.ts';
import { type ProviderSurvey, readProviderSurvey } from '../survey/provider-survey.ts';
import { readSurvey, type Survey } from '../survey/survey.ts';
import { within } from './files.ts';

/** What the provider's list is kept as; no server has that name. */
const providerFile = 'provider.json';

/** The surveys of a revision; the same object where the files are the same. */
export interface SurveysRead {
  /** Undefined where nobody asked. */
  readonly value: Surveys | undefined;
  readonly problems: readonly Problem[];
  /** Names the files that were read; `undefined` where nobody asked. */
  readonly key: string | undefined;
}

/** @param folder where surveys are kept, from the root of the repository */
export async function surveysAfter(before: SurveysRead, tree: Tree, folder: string): Promise<SurveysRead> {
  const { files, problems: unread } = await tree.list(folder);
  const ours = files.filter(({ path }) => within(folder, path) && path.endsWith('.json'));
  const key = JSON.stringify([
    ours.map(({ path, blob }) => [path, blob]),
    unread.map(({ message }) => message),
  ]);
  if (before.key === key) return before;
  const problems: Problem[] = [...unread];
  const servers = new Map<string, Survey>();
  let provider: ProviderSurvey | undefined;
  for (const file of ours) {
    const bytes = await tree.read(file);
    const text = bytes.ok ? decodeText(bytes.value, file.path) : bytes;
    const document = text.ok ? readJson(text.value, file.path) : text;
    if (!document.ok) {
      problems.push(...document.problems);
      continue;
    }
    const isProvider = basename(file.path) === providerFile;
    const read = isProvider ? readProviderSurvey(document.value) : readSurvey(document.value);
    if (!read.ok) {
      problems.push(...read.problems);
      continue;
    }
    const { value } = read;
    const known = 'server' in value ? servers.get(value.server) : provider;
    if (known?.at === value.at) problems.push(twin(value, known));
    // Earlier surveys may be kept beside the newest, which alone says how it is.
    if (known !== undefined && known.at >= value.at) continue;
    if ('server' in value) servers.set(value.server, value);
    else provider = value;
  }
  return { value: { servers: [...servers.values()], provider }, problems, key };
}

const twin = (one: Survey | ProviderSurvey, other: Survey | ProviderSurvey): Problem => ({
  place: one.place,
  message: `this survey and the one at ${at(other.place)} are of the same time, ${one.at}`,
  advice: 'Keep one of the two: nothing tells which of them shows how it is.',
});

/** The surveys of a revision, for a command that shows them whether a rule asks or not. */
export async function readSurveys(tree: Tree, folder: string): Promise<Outcome<Surveys>> {
  const { value, problems } = await surveysAfter(nothingSurveyed, tree, folder);
  return problems.length > 0 || value === undefined ? err(...problems) : ok(value);
}

const nothingSurveyed: SurveysRead = { value: undefined, problems: [], key: undefined };
