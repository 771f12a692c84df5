/** What things are called in a sentence. */
import type { Room } from '../../capacity/headroom.ts';
import type { Subject } from '../../estate/estate.ts';

export function subjectWords({ kind, name }: Subject): string {
  switch (kind) {
    case 'estate':
      return 'the estate';
    case 'branch':
      return 'the branch';
    case 'scope':
      return 'everything in scope';
    case 'volume-group':
      return `volume group ${name}`;
    case 'file-system':
      return `file system ${name}`;
    case 'server':
    case 'volume':
    case 'site':
    case 'team':
    case 'label':
      return `${kind} ${name}`;
  }
}

/** The layer that something has headroom at. */
export function layerWords({ layer, subject, measure }: Room): string {
  switch (layer) {
    case 'quota':
      return `quota of ${subject.name}, ${measure === 'bytes' ? 'size' : measure}`;
    case 'attachment-slots':
      return `attachment slots of ${subject.name}`;
    case 'volume-group':
    case 'file-system':
      return subjectWords(subject);
  }
}

/** A commit's id as it is usually shortened; anything else, such as `worktree`, as it is. */
export const shortCommit = (commit: string): string =>
  /^[0-9a-f]{40,64}$/.test(commit) ? commit.slice(0, 12) : commit === 'worktree' ? 'the work tree' : commit;

/** Beside a figure that a survey tells: `surveyed 2026-11-20`. */
export const surveyedOn = (at: string): string => `surveyed ${at.slice(0, 10)}`;
