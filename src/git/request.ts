/** What a caller may ask to have judged. */

/** Which two revisions of a repository to hold against each other. */
export interface RevisionRequest {
  /** The main branch; found out when left out. */
  readonly base?: string | undefined;
  /** The branch to judge; HEAD when left out. */
  readonly head?: string | undefined;
  /** Judge the uncommitted files instead of a branch. */
  readonly worktree?: boolean | undefined;
}

/**
 * Path -> content. A path is from the top of the repository, with `/` between folders: `storage/imagery.yaml`.
 * A string is UTF-8 text; bytes are taken as they are.
 */
export type Files = Readonly<Record<string, string | Uint8Array>>;
