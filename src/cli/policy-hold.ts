/** `ullage policy hold`: prints the lines with which `ullage.yaml` lists a rule pack of another repository. */
import { createHash } from 'node:crypto';
import { err, type Outcome, ok, type PartialOutcome, type Problem } from '../base/problem.ts';
import { type ListedPack, readSettings, type Settings, settingsFile } from '../estate/settings.ts';
import { runOnNetwork } from '../git/network.ts';
import { isObjectId } from '../git/object-store.ts';
import { shown } from '../git/tree.ts';
import { elsewhereAfter, nothingElsewhere } from '../policy/elsewhere.ts';
import { readContent } from '../policy/files.ts';
import { gatherRules } from '../policy/pack.ts';
import { reportProblems } from '../report/report.ts';
import { type Finished, terminal } from './edge.ts';
import { commitElsewhere, fetchPack, packProtocols } from './fetch-packs.ts';
import { withRepository } from './repository.ts';

export interface PolicyHoldFlags {
  readonly repo: string;
  readonly commit: string;
}

interface Named {
  readonly name: string;
  readonly url: string;
  readonly path: string;
}

export async function runPolicyHold(named: Named, flags: PolicyHoldFlags): Promise<Finished> {
  const entry = await entryOf(named, flags);
  if (entry.ok) return { output: entry.value, code: 0 };
  // What is printed is to be put at the end of a file.
  const remarks = reportProblems(entry.problems, terminal(flags)).trimEnd().split('\n');
  return { output: '', code: 2, remarks, reason: 'the pack cannot be held' };
}

const unread = { commit: '0'.repeat(40), sha256: '0'.repeat(64) };

async function entryOf({ name, url, path }: Named, flags: PolicyHoldFlags): Promise<Outcome<string>> {
  const { repo, commit: revision } = flags;
  // Whatever the format refuses is refused before git is told of it.
  const fit = listed(linesOf({ name, repository: url, path, ...unread }));
  if (!fit.ok) return fit;
  const onNetwork = (args: readonly string[]) =>
    runOnNetwork(args, { dir: repo, environment: process.env, protocols: packProtocols });
  if (!isObjectId(revision) && (!/^[\w][\w./-]*$/.test(revision) || revision.includes('..'))) {
    return err({
      message: `${shown(revision)} is no commit id, and no plain name of a branch or a tag`,
      advice: 'Name one of those with --commit.',
    });
  }
  const id = isObjectId(revision) ? ok(revision) : await commitElsewhere(url, revision, onNetwork);
  if (!id.ok) return id;
  const commit = id.value;
  const failed = await fetchPack({ name, repository: url, commit }, onNetwork);
  if (failed !== undefined) return err(failed);
  return withRepository(repo, async (repository) => {
    const found = await repository.fileAt(commit, path);
    if (found.kind !== 'found') {
      const why = found.kind === 'missing' ? 'it is not at hand' : found.why;
      return err({ message: `in the commit ${commit} of ${url}, ${why}`, advice: 'Name a file of it.' });
    }
    const sha256 = createHash('sha256').update(found.content).digest('hex');
    const lines = linesOf({ name, repository: url, path, commit, sha256 });
    const settings = listed(lines);
    if (!settings.ok) return settings;
    // As a repository would take it whose only pack is this one.
    const using = { file: settingsFile, use: [{ name, place: settings.value.place }], entries: [] };
    const part = { value: settings.value, problems: [] };
    const { value, problems } = await elsewhereAfter(nothingElsewhere, [using], part, repository);
    if (problems.length > 0) return err(...problems.map(unplaced));
    const rules = gatherRules([using], value);
    return rules.ok ? ok(lines) : err(...rules.problems.map(unplaced));
  });
}

/** JSON's strings are YAML's as well, whatever they hold. */
const linesOf = ({ name, repository, commit, path, sha256 }: Omit<ListedPack, 'place'>): string =>
  `packs:
  ${JSON.stringify(name)}:
    repository: ${JSON.stringify(repository)}
    commit: ${JSON.stringify(commit)}
    path: ${JSON.stringify(path)}
    sha256: ${JSON.stringify(sha256)}
`;

function listed(lines: string): PartialOutcome<Settings> {
  const settings = readContent(Buffer.from(`currency: EUR\n${lines}`), settingsFile, readSettings);
  return settings.ok ? settings : err(...settings.problems.map(unplaced));
}

/** The lines are not in any file yet. */
const unplaced = ({ message, advice }: Problem): Problem => ({ message, advice });
