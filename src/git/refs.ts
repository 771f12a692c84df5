/** What refs point at, as one `git for-each-ref` tells it, and how a person names a commit by them. */
import { err, type Outcome, ok, type Problem } from '../base/problem.ts';
import { isObjectId } from './object-store.ts';
import { shown } from './tree.ts';

export interface Ref {
  /** What it points at: a commit, or a tag of one. */
  readonly id: string;
  /** The ref that it stands for, where it is a symbolic one. */
  readonly target: string | undefined;
}

/** By full name. */
export type Refs = ReadonlyMap<string, Ref>;

export const noRefs: Refs = new Map();

/** @param patterns full names, or patterns with `*` */
export const listRefs = (patterns: readonly string[]): readonly string[] => [
  'for-each-ref',
  '--format=%(refname) %(objectname) %(symref)',
  ...patterns,
];

export function refsIn(output: Buffer): Refs {
  const refs = new Map<string, Ref>();
  for (const line of output.toString('utf8').split('\n')) {
    const [name = '', id = '', target = ''] = line.split(' ');
    if (!isObjectId(id)) continue;
    refs.set(name, { id, target: target === '' ? undefined : target });
    // What a symbolic ref stands for need not have been asked for.
    if (target !== '' && !refs.has(target)) refs.set(target, { id, target: undefined });
  }
  return refs;
}

/** A commit as a person writes it: where to start, and the steps from there. */
export interface CommitName {
  readonly start: string;
  /** Such as `~2^1`; empty for the start itself. */
  readonly steps: string;
}

export function parseCommitName(ref: string): Outcome<CommitName> {
  const bad = badRef(ref);
  if (bad !== undefined) return err(bad);
  const [, start = '', steps = ''] = /^(.*?)((?:[~^][0-9]*)*)$/u.exec(ref) ?? [];
  return ok({ start, steps });
}

/** The full names that a short one can stand for, in Git's own order of preference. A full one stands for itself. */
export const spellings = (name: string): readonly string[] =>
  name.startsWith('refs/')
    ? [name]
    : ['refs/', 'refs/tags/', 'refs/heads/', 'refs/remotes/'].map((place) => `${place}${name}`);

/** What of Git's revision syntax could be an option, a range, a search, or a file in place of a commit. */
function badRef(ref: string): Problem | undefined {
  const why =
    ref === ''
      ? 'is empty'
      : ref.startsWith('-')
        ? 'begins with -'
        : ref.startsWith('^')
          ? 'begins with ^'
          : /\s|\p{C}/u.test(ref)
            ? 'holds a space or a control character'
            : ['..', '@{', ':', '^{', '^@', '^!', '^-', '*', '?', '[', '\\'].find((part) =>
                ref.includes(part),
              );
  if (why === undefined) return undefined;
  return {
    message: `${ref === '' ? 'a ref' : shown(ref)} ${/^[a-z]/.test(why) ? why : `holds ${why}`}, so it names no single commit`,
    advice: 'Name a branch, a tag or a commit id, such as main or origin/main.',
  };
}
