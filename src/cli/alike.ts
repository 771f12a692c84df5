/** A name that is to be written into a folder beside names that some disks do not tell from it. */
import { readdir } from 'node:fs/promises';
import { alike } from '../git/tree.ts';

/** The entry that a disk without case would take for this name; undefined where there is none. */
export async function takenAs(folder: string, name: string): Promise<string | undefined> {
  const entries = await readdir(folder).catch((): readonly string[] => []);
  return entries.includes(name) ? name : [...entries].sort().find((entry) => alike(entry) === alike(name));
}
