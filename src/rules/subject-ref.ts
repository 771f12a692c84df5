/**
 * References to subjects within a violation's facet or excess. They are written in one way, so that what a change
 * renames can be followed there and is no new finding.
 */
import { type Subject, subjectKey } from '../estate/estate.ts';

const separator = ' + ';

/** Subjects by kind and name, in a facet or an excess. */
export const subjectRef = (...subjects: readonly Subject[]): string =>
  subjects.map(subjectKey).join(separator);

const renamable = ['server', 'volume', 'volume-group', 'file-system'] as const;

/** A facet or an element of an excess with each subject in it under another name; other text as it is. */
export const renameRefs = (text: string, renamed: (subject: Subject) => Subject): string =>
  text
    .split(separator)
    .map((key) => {
      const [written, ...name] = key.split(' ');
      const kind = renamable.find((each) => each === written);
      return kind === undefined ? key : subjectKey(renamed({ kind, name: name.join(' ') }));
    })
    .join(separator);
