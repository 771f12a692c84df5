/** Writes the gate's attestation: what it needs of the revisions, the time, the file and its signature. */
import { createHash } from 'node:crypto';
import { rm } from 'node:fs/promises';
import { basename, dirname } from 'node:path';
import { attest, type JudgedRevisions } from '../audit/attest.ts';
import type { Outcome, Problem } from '../base/problem.ts';
import { settingsFile } from '../estate/settings.ts';
import type { RevisionPair } from '../git/compare.ts';
import { shown, type Tree, type TreeFile } from '../git/tree.ts';
import type { Judgement, PolicySource, UnreadMain } from '../policy/judgement.ts';
import type { ReadingPair } from '../policy/pair.ts';
import { pathsOf, type Reading, readNext } from '../policy/reader.ts';
import { reasonOf } from './edge.ts';
import { makeFolder } from './make-folder.ts';
import { replaceFile } from './replace-file.ts';
import { sign } from './signing.ts';

/** What `ullage gate` is told about its attestation. */
export interface AttestFlags {
  readonly attest?: string;
  readonly signWith?: string;
  readonly worktree?: boolean;
}

/** What stands in the way of an attestation before anything is judged. */
export function attestMisuse({ attest: path, signWith, worktree }: AttestFlags): Problem | undefined {
  if (path === undefined && signWith !== undefined) {
    return {
      message: '--sign-with was given, and there is no attestation to sign',
      advice: 'Name one with --attest FILE.',
    };
  }
  if (path !== undefined && worktree) {
    return {
      message: '--attest and --worktree were both given, and uncommitted files have no commit to attest',
      advice: 'Commit them, and judge the branch.',
    };
  }
  return undefined;
}

/** When the judgement is made, as an attestation gives it: as asked for, or the clock's second. */
export function timeOf(now: string | undefined, clock: Date): string {
  const asked = now === undefined ? clock.getTime() : Date.parse(now);
  // What is no date has been refused by the judgement; a bare day is its first second in UTC.
  const date = new Date(Number.isNaN(asked) ? clock.getTime() : asked);
  return `${date.toISOString().slice(0, 19)}Z`;
}

/**
 * What was judged, and by which files; undefined for a work tree, which has no id.
 *
 * @param treeOf the files of a commit
 */
export async function judgedRevisions(
  { headCommit, headTree, baseCommit }: RevisionPair,
  judgement: Judgement,
  readings: ReadingPair,
  treeOf: (commit: string) => Promise<Outcome<Tree>>,
): Promise<JudgedRevisions | undefined> {
  if (headTree === undefined) return undefined;
  const judged = judgement.verdict === 'not judged' ? undefined : judgement;
  const unread = judged?.unreadMain;
  const policyFiles =
    unread === undefined
      ? await filesOf(readings[judged?.policyFrom ?? 'base'], policyParts)
      : await filesOfSources(unread, readings, treeOf);
  return { headCommit, headTree, baseCommit, policyFiles };
}

const policyParts = ['settings', 'prices', 'rules', 'waivers'] as const;

type PolicyPart = (typeof policyParts)[number];

async function filesOf(reading: Reading, parts: readonly PolicyPart[]): Promise<readonly TreeFile[]> {
  const { prices, policies, waivers } = pathsOf(reading);
  const folders = { settings: settingsFile, prices, rules: policies, waivers };
  return parts.length === 0 ? [] : (await reading.tree.list(...parts.map((part) => folders[part]))).files;
}

/** Where main does not read, each part of the policy may be of another revision. */
async function filesOfSources(
  { comparedWith, policy }: UnreadMain,
  { base, head }: ReadingPair,
  treeOf: (commit: string) => Promise<Outcome<Tree>>,
): Promise<readonly TreeFile[]> {
  const from = (source: PolicySource) => policyParts.filter((part) => policy[part] === source);
  const tree = comparedWith === undefined ? undefined : await treeOf(comparedWith.commit);
  const ancestor = tree?.ok ? await readNext(base, tree.value) : undefined;
  const lists = await Promise.all([
    filesOf(base, from('main')),
    filesOf(head, from('branch')),
    ...(ancestor === undefined ? [] : [filesOf(ancestor, from('ancestor'))]),
  ]);
  return lists.flat();
}

export interface AttestationToWrite {
  readonly path: string;
  readonly signWith: string | undefined;
  readonly time: string;
  /** The JSON report of the judgement, and the path it was written to as well, if it was. */
  readonly report: { readonly text: string; readonly path: string | undefined };
}

/** Signs first, then writes: a signature that cannot be made leaves no unsigned attestation behind. */
export async function writeAttestation(
  judgement: Judgement,
  revisions: JudgedRevisions,
  { path, signWith, time, report }: AttestationToWrite,
): Promise<Problem | undefined> {
  const statement = attest(judgement, revisions, {
    time,
    report: {
      sha256: createHash('sha256').update(report.text).digest('hex'),
      name: report.path === undefined ? undefined : basename(report.path),
    },
  });
  const signature = signWith === undefined ? undefined : await sign(statement, signWith);
  if (signature !== undefined && !signature.ok) return signature.problems[0];
  try {
    await makeFolder(dirname(path));
    // A signature left over from an earlier run would make the new attestation look altered.
    if (signature === undefined) await rm(`${path}.sig`, { force: true });
    else await writeWhole(`${path}.sig`, signature.value);
    await writeWhole(path, statement);
    return undefined;
  } catch (error) {
    return {
      message: `the attestation ${shown(path)} cannot be written: ${shown(reasonOf(error))}`,
      advice: 'Name a path that can be written to.',
    };
  }
}

const writeWhole = (path: string, text: string): Promise<void> =>
  replaceFile(path, {}, (handle) => handle.writeFile(text));
