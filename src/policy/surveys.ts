/** Reads a revision's surveys: `surveys/SERVER.json`, and the provider's list in `surveys/provider.json`. */
import { basename } from 'node:path/posix';
import { err, type Outcome, ok, type Problem } from '../base/problem.ts';
import type { Tree } from '../git/tree.ts';
import { readJson } from '../read/json.ts';
import { decodeText } from '../read/text.ts';
import type { Surveys } from '../survey/compare.ts';
import { type ProviderSurvey, readProviderSurvey } from '../survey/provider-survey.ts';
import { readSurvey, type Survey } from '../survey/survey.ts';
import { within } from './files.ts';

/** What the provider's list is kept as; no server has that name. */
const providerFile = 'provider.json';

/** @param folder where surveys are kept, from the root of the repository */
export async function readSurveys(tree: Tree, folder: string): Promise<Outcome<Surveys>> {
  const { files, problems: unread } = await tree.list(folder);
  const problems: Problem[] = [...unread];
  const servers: Survey[] = [];
  let provider: ProviderSurvey | undefined;
  for (const file of files) {
    if (!within(folder, file.path) || !file.path.endsWith('.json')) continue;
    const bytes = await tree.read(file);
    const text = bytes.ok ? decodeText(bytes.value, file.path) : bytes;
    const document = text.ok ? readJson(text.value, file.path) : text;
    if (!document.ok) {
      problems.push(...document.problems);
      continue;
    }
    const isProvider = basename(file.path) === providerFile;
    const read = isProvider ? readProviderSurvey(document.value) : readSurvey(document.value);
    if (!read.ok) problems.push(...read.problems);
    else if ('server' in read.value) servers.push(read.value);
    else provider = read.value;
  }
  return problems.length > 0 ? err(...problems) : ok({ servers, provider });
}
