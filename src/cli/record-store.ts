/**
 * A folder in which the audit keeps its records between runs. Each is one file, named after what it is a record of,
 * with a checksum and with the program that wrote it. A file that is damaged, or that another program wrote, counts
 * as not there. An interrupted run leaves nothing half written, and two runs at once do each other no harm.
 *
 * Whoever may write to the folder may write records that look right: keep it where only you can.
 */
import { createHash } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { RecordStore } from '../audit/audit.ts';
import { err, type Outcome, ok } from '../base/problem.ts';
import { isAuditRecord } from '../read/validate.ts';
import { version } from '../version.ts';
import { reasonOf } from './edge.ts';
import { makeFolder } from './make-folder.ts';
import { replaceFile } from './replace-file.ts';

const digest = (text: string | Uint8Array): string => createHash('sha256').update(text).digest('hex');

/**
 * Names this very program: its version, and what the file holds that it was started from. An installed program names
 * all its parts in that file, by what they hold.
 */
export async function programId(): Promise<string> {
  const files = [process.argv[1] ?? '', fileURLToPath(import.meta.url)];
  const held = await Promise.all(files.map((file) => readFile(file).catch(() => Buffer.alloc(0))));
  return [version, ...held.map(digest)].join(' ');
}

/**
 * Opens the folder, making it where it is not there.
 *
 * @param program what the records are computed by; those of any other are ignored
 */
export async function openRecordStore(folder: string, program: string): Promise<Outcome<RecordStore>> {
  try {
    await makeFolder(folder);
  } catch (error) {
    return err({
      message: `the cache ${folder} cannot be created: ${reasonOf(error)}`,
      advice: 'Name a folder that can be written to, or leave out --cache.',
    });
  }
  const pathOf = (key: string): string => {
    const name = digest(JSON.stringify([program, key]));
    return join(folder, name.slice(0, 2), `${name}.json`);
  };
  return ok({
    async get(key) {
      const text = await readFile(pathOf(key), 'utf8').catch(() => undefined);
      return text === undefined ? undefined : readBack(text, program, key);
    },
    async put(key, record) {
      const path = pathOf(key);
      const body = JSON.stringify({ program, key, record });
      try {
        await makeFolder(dirname(path));
        // What a power cut takes is computed again.
        await replaceFile(path, { waitFor: 'nothing' }, (handle) =>
          handle.writeFile(`${digest(body)}\n${body}`),
        );
      } catch {
        // A full disk costs the next run its time, and this one nothing.
      }
    },
  });
}

function readBack(text: string, program: string, key: string) {
  const end = text.indexOf('\n');
  const body = text.slice(end + 1);
  if (end === -1 || text.slice(0, end) !== digest(body)) return undefined;
  let value: unknown;
  try {
    value = JSON.parse(body);
  } catch {
    return undefined;
  }
  if (typeof value !== 'object' || value === null) return undefined;
  if (!('program' in value && 'key' in value && 'record' in value)) return undefined;
  if (value.program !== program || value.key !== key) return undefined;
  const { record } = value;
  return record === null || isAuditRecord(record) ? record : undefined;
}
