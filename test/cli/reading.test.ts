import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { makeRepository, removeRepositories, type TestRepository } from '../repository.ts';
import { ullage, ullageIn } from './run.ts';

afterAll(removeRepositories);

function office(): TestRepository {
  const repository = makeRepository();
  repository.write({
    'ullage.yaml': 'currency: EUR\n',
    'storage/imagery.yaml': `servers:
  plate-scanner: { boot: plate-scanner-root }
  plate-archive: {}
volumes:
  plate-scanner-root: { size: 20 GiB, tier: steady, file-system: { mount: /, type: ext4 } }
`,
    'prices/2026.yaml':
      'from: 2026-01-01\ncurrency: EUR\ntiers:\n  steady: { rate: "0.10", per: GiB-month }\n',
  });
  return repository;
}

/** What df prints of one file system of so many GiB; df counts blocks of 1,024 bytes. */
const df = (gib: number): string =>
  `Filesystem 1024-blocks Used Available Capacity Mounted on\n/dev/vda1 ${gib * 1024 * 1024} 4096 8192 1% /\n`;

async function add(
  repository: TestRepository,
  gib: number,
  server = 'plate-scanner',
  ...more: readonly string[]
) {
  repository.write({ 'df.txt': df(gib) });
  return ullage(
    'reading',
    'add',
    join(repository.dir, 'df.txt'),
    '--repo',
    repository.dir,
    '--server',
    server,
    '--at',
    '2026-11-20T06:00:00Z',
    ...more,
  );
}

describe('a reading that is added', () => {
  it('under a server that is not declared is refused, with the near name', async () => {
    const repository = office();
    const { code, out } = await add(repository, 20, 'plate-scaner');
    expect(code).toBe(2);
    expect(out).toContain('there is no server plate-scaner');
    expect(out).toContain('Did you mean plate-scanner?');
    const far = await add(repository, 20, '../../nosuch');
    expect(far.out).toContain('there is no server ../../nosuch');
    expect(far.out).toContain('The servers are plate-scanner, plate-archive.');
    expect(existsSync(join(repository.dir, 'readings'))).toBe(false);
  });

  it('of a size at odds with the declared one is refused, and taken when told so', async () => {
    const repository = office();
    const { code, out } = await add(repository, 252);
    expect(code).toBe(2);
    expect(out).toContain('plate-scanner:/ is declared with 20 GiB, and df measured 252 GiB');
    expect(out).toContain('--any-size');
    expect(existsSync(join(repository.dir, 'readings/plate-scanner.csv'))).toBe(false);
    const told = await add(repository, 252, 'plate-scanner', '--any-size');
    expect(told.code).toBe(0);
    expect(told.out).toContain('measured 252 GiB, declared 20 GiB');
    expect(readFileSync(join(repository.dir, 'readings/plate-scanner.csv'), 'utf8')).toContain(
      String(252n << 30n),
    );
  });

  it.each([
    [15, 0],
    [14, 2],
    [20, 0],
    [25, 0],
    [26, 2],
  ])('of %i GiB where 20 are declared ends with %i', async (gib, code) => {
    expect((await add(office(), gib)).code).toBe(code);
  });

  it('from a folder in the repository lands in the readings of the repository', async () => {
    const repository = office();
    repository.write({ 'df.txt': df(20) });
    const folder = join(repository.dir, 'storage');
    const { code, out } = await ullageIn(
      folder,
      ...['reading', 'add', '../df.txt', '--server', 'plate-scanner', '--at', '2026-11-20T06:00:00Z'],
    );
    expect([code, out]).toEqual([0, expect.stringContaining('Added to ../readings/plate-scanner.csv:')]);
    expect(existsSync(join(repository.dir, 'readings/plate-scanner.csv'))).toBe(true);
    expect(existsSync(join(folder, 'readings'))).toBe(false);
    expect((await ullageIn(folder, 'reading', 'summary')).out).toContain('1 reading of 1 file system');
  });
});

describe('a starter layout', () => {
  it('from a folder in a repository is written at its top, where the other commands look', async () => {
    const repository = makeRepository();
    repository.write({ 'notes/plan.txt': 'to come\n' });
    const { code, out } = await ullageIn(join(repository.dir, 'notes'), 'new', '--now', '2026-11-20');
    expect([code, out]).toEqual([0, expect.stringContaining('  ../ullage.yaml\n')]);
    expect(existsSync(join(repository.dir, 'ullage.yaml'))).toBe(true);
    expect(existsSync(join(repository.dir, 'notes/ullage.yaml'))).toBe(false);
    // What is there already is seen there too.
    expect((await ullageIn(join(repository.dir, 'notes'), 'new')).out).toContain('nothing was written');
  });
});

describe('the help', () => {
  it('says what each command does with readings, days and formats', async () => {
    expect((await ullage('--help')).out).toMatch(/reading +keep readings of measured use/);
    const flat = async (...args: readonly string[]) => (await ullage(...args)).out.replace(/\s+/g, ' ');
    expect(await flat('headroom', '--help')).toContain('the day whose prices apply to unallocated capacity');
    expect(await flat('cost', '--help')).toContain('csv and json list every volume and server');
  });
});
