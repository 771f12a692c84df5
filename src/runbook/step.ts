/** One step of a runbook. Everything in it is plain and immutable. */
import type { Subject } from '../estate/estate.ts';

/** A command, as an example, quoted for a POSIX shell: what nobody could know stands in capitals. */
export interface Example {
  readonly command: string;
  /** The manual page and the version read, `memory` where it was not looked up; the file, where that does not say. */
  readonly source: string;
}

/**
 * Why no order of the steps carries a change out, at the step where that shows; of a circle, the steps that it should
 * wait for, and which wait for it.
 */
export type Snag = {
  /** Whether every order was tried, of which there may be too many. */
  readonly isSure: boolean;
} & (
  | { readonly kind: 'circle'; readonly steps: readonly number[] }
  /** It moves what a volume group holds to volumes at another site. */
  | { readonly kind: 'apart'; readonly group: string }
  /** It takes an attachment slot where none is free, and none can be given back before. */
  | { readonly kind: 'no-slot'; readonly server: string }
  /** It takes more of a site's quota than is free, and no more can be freed before. */
  | { readonly kind: 'no-quota'; readonly site: string; readonly of: 'volumes' | 'size' }
);

export interface Step {
  /** From 1. */
  readonly number: number;
  /** What names it among the steps of this branch, whatever its number: `detach plates-1 plate-scanner`. */
  readonly key: string;
  /** What it is ticked off by: of this step alone, and the same as long as the same is to be done. */
  readonly id: string;
  /** The name of the procedure that it is. */
  readonly procedure: string;
  /** What it is done with, as its words have it: names, and sizes exactly as declared. */
  readonly words: Readonly<Record<string, string>>;
  /** Who acts: somebody at the provider's console, somebody inside the guest, or somebody who makes sure. */
  readonly at: 'provider' | 'guest' | 'check';
  /** The server whose guest it is, or which the provider's step is about. */
  readonly server: string | undefined;
  readonly subject: Subject;
  /** What to do, one sentence or two. */
  readonly does: string;
  readonly why: string | undefined;
  /** What is to be seen once it is done; undefined where no procedure says. */
  readonly seen: string | undefined;
  /** How to step back, likewise. */
  readonly back: string | undefined;
  /** Whether it destroys what only a backup brings back. */
  readonly destroys: boolean;
  /** What to make sure of first; never empty where a step cannot be undone. */
  readonly cautions: readonly string[];
  readonly examples: readonly Example[];
  /** The steps that must be done first, in order of number. */
  readonly after: readonly number[];
  readonly snag: Snag | undefined;
  /** The changes that are carried out once this step is done: their places in the list of changes, from 0. */
  readonly carriesOut: readonly number[];
}
