/** What a step finds where it is done. */
import type { FileSystem } from '../estate/estate.ts';
import type { Wanted } from './draft.ts';
import type { Sides } from './sides.ts';

/** The file system as it was at a mount point of what the step is about; undefined where none was. */
export function formerSystem(
  sides: Sides,
  { subject, words }: Pick<Wanted, 'subject' | 'words'>,
  mount: string,
): FileSystem | undefined {
  const on = words.on ?? words.group ?? words.volume ?? '';
  const names = [
    sides.baseName('fileSystems', subject.name),
    `${sides.baseName('groups', on)}:${mount}`,
    `${sides.baseName('volumes', on)}:${mount}`,
  ];
  return names.flatMap((name) => sides.base.fileSystems.get(name) ?? [])[0];
}
