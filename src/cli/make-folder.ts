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
    if (code !== 'ENOENT' || (await isFolder(dirname(folder)))) throw error;
    await makeFolder(dirname(folder));
    await makeFolder(folder);
  }
}

const isFolder = async (path: string): Promise<boolean> =>
  (await stat(path).catch(() => undefined))?.isDirectory() ?? false;
