import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { makeRepository, removeRepositories, type TestRepository } from '../repository.ts';
import { ullage } from './run.ts';

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

async function add(repository: TestRepository, gib: number, server = 'plate-scanner') {
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

  it('of a size far from the declared one is taken, with the question whether the server is the right one', async () => {
    const repository = office();
    const { code, out } = await add(repository, 252);
    expect(code).toBe(0);
    expect(out).toContain('measured 252 GiB, declared 20 GiB: is this the right server?');
    expect(readFileSync(join(repository.dir, 'readings/plate-scanner.csv'), 'utf8')).toContain(
      String(252n << 30n),
    );
  });

  it.each([
    [15, false],
    [14, true],
    [20, false],
    [25, false],
    [26, true],
  ])('of %i GiB where 20 are declared: asked %s', async (gib, asked) => {
    const { code, out } = await add(office(), gib);
    expect([code, out.includes('right server?')]).toEqual([0, asked]);
  });
});

describe('the help', () => {
  it('says what each command does with readings, days and formats', async () => {
    expect((await ullage('--help')).out).toMatch(/reading +keep readings of measured use/);
    const flat = async (...args: readonly string[]) => (await ullage(...args)).out.replace(/\s+/g, ' ');
    expect(await flat('headroom', '--help')).toContain('the day whose prices value idle capacity');
    expect(await flat('cost', '--help')).toContain('csv and json list every volume and server');
  });
});
