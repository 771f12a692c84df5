/**
 * Puts a file in place whole: it is written beside its place, brought to the disk, and moved there in one step, so
 * that a reader never sees half of it, whatever happens meanwhile.
 */
import { randomUUID } from 'node:crypto';
import { constants } from 'node:fs';
import { copyFile, type FileHandle, open, rename, rm } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';

export interface Replacing {
  /** What it is written as meanwhile; a hidden name that no other writer has, if left out. */
  readonly draft?: string;
  /** A file to begin with, whose mode is kept too. */
  readonly copyOf?: string | undefined;
  /** Whether it waits for the disk, so that it outlasts a power cut; it does if left out. */
  readonly waitFor?: 'disk' | 'nothing';
}

/** @param write puts the content in, at and from any position; what it throws leaves the old file as it was */
export async function replaceFile(
  path: string,
  { draft = join(dirname(path), `.${basename(path)}.${randomUUID()}`), copyOf, waitFor = 'disk' }: Replacing,
  write: (handle: FileHandle) => Promise<unknown>,
): Promise<void> {
  try {
    // A copy costs nothing where the file system can share blocks.
    if (copyOf !== undefined) await copyFile(copyOf, draft, constants.COPYFILE_FICLONE);
    const handle = await open(draft, copyOf === undefined ? 'wx' : 'r+');
    try {
      await write(handle);
      if (waitFor === 'disk') await handle.sync();
    } finally {
      await handle.close();
    }
    await rename(draft, path);
  } catch (error) {
    await rm(draft, { force: true });
    throw error;
  }
  if (waitFor === 'nothing') return;
  // The new name reaches the disk only with its folder. Not every system lets a folder be opened.
  const folder = await open(dirname(path), 'r').catch(() => undefined);
  await folder?.sync().catch(() => undefined);
  await folder?.close();
}
