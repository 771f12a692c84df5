/** What the commits of a span made of the declared estate. */

import { type Outcome, ok } from '../base/problem.ts';
import type { EstateChange } from '../capacity/declared-sizes.ts';
import { settingsFile } from '../estate/settings.ts';
import { firstParentHistory, type HistoryEntry } from '../git/history.ts';
import type { GitRepository } from '../git/repository.ts';
import { emptyReading, readOnlyEstate } from '../policy/reader.ts';
import { dayOfCommit } from './record.ts';
import { pathsInHistory } from './walk.ts';

export interface EstateChanges {
  /** Oldest first. What a commit that does not read changed is told at the next one that reads. */
  readonly changes: readonly EstateChange[];
  /** The day that the clone's history begins with, where that is within the span. */
  readonly cutShort: string | undefined;
}

/** @param since the first day; commits are looked at from `to` back to the first that is older */
export async function estateChanges(
  repository: GitRepository,
  { to, since }: { readonly to: string; readonly since: string },
): Promise<Outcome<EstateChanges>> {
  const choices = await pathsInHistory(repository, to);
  if (!choices.ok) return choices;
  const folders = [settingsFile, ...new Set(choices.value.map(({ storage }) => storage))];
  const entries: HistoryEntry[] = [];
  let cutShort: string | undefined;
  for await (const entry of firstParentHistory(repository, { to, folders })) {
    if (!entry.ok) return entry;
    const { commit } = entry.value;
    entries.unshift(entry.value);
    if (entry.value.cutShort) cutShort = dayOfCommit(commit);
    if (dayOfCommit(commit) < since) break;
  }
  const changes: EstateChange[] = [];
  let reading: Parameters<typeof readOnlyEstate>[0] = emptyReading;
  let last: EstateChange['before'] | undefined;
  for (const { commit } of entries) {
    const tree = repository.tree(commit.tree, { revision: commit.id, name: commit.id.slice(0, 12) });
    reading = await readOnlyEstate(reading, tree);
    const { value: after, problems } = reading.estate;
    if (problems.length > 0 || reading.settings.problems.length > 0) continue;
    if (last !== undefined && last !== after) changes.push({ on: dayOfCommit(commit), before: last, after });
    last = after;
  }
  return ok({ changes, cutShort: cutShort !== undefined && cutShort >= since ? cutShort : undefined });
}
