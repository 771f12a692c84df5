/** Makes a folder and those above it that lack. */
import { mkdir, stat } from 'node:fs/promises';
import { dirname } from 'node:path';

/**
 * One folder at a time: where a folder that is there takes no other, as under /proc, the system's own way of making all
 * at once never ends (Node.js 20).
 */
export async function makeFolder(folder: string): Promise<void> {
  try {
    await mkdir(folder);
  } catch (error) {
    const code = error instanceof Error && 'code' in error ? error.code : undefined;
    if (await isFolder(folder)) return;
    if (code !== 'ENOENT') throw error;
    // Another report may have made the one above since; where that takes no folder, this fails again.
    if (!(await isFolder(dirname(folder)))) await makeFolder(dirname(folder));
    await mkdir(folder).catch(async (again: unknown) => {
      if (!(await isFolder(folder))) throw again;
    });
  }
}

const isFolder = async (path: string): Promise<boolean> =>
  (await stat(path).catch(() => undefined))?.isDirectory() ?? false;
