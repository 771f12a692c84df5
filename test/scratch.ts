/** One folder for everything that a run of the tests puts on the disk, which goes with it, whatever a test has left there. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

export function setup(): () => void {
  const folder = mkdtempSync(join(tmpdir(), 'ullage-tests-'));
  // As POSIX and Windows name it; the workers that run the tests inherit it.
  for (const name of ['TMPDIR', 'TEMP', 'TMP']) process.env[name] = folder;
  return () => rmSync(folder, { recursive: true, force: true, maxRetries: 3 });
}
