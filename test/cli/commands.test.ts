import { execFileSync } from 'node:child_process';
import { readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { Decimal } from 'decimal.js';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { ruleNames } from '../../src/rules/registry.ts';
import { buildDemo, demoDay } from '../demo/gannet-point.ts';
import { makeRepository, removeRepositories } from '../repository.ts';
import { ullage } from './run.ts';

let demo = '';
beforeAll(() => {
  demo = buildDemo();
});
afterAll(() => {
  rmSync(demo, { recursive: true });
  removeRepositories();
});

describe('ullage new', () => {
  it('writes a layout that is priced, has room, and judges its first branch', async () => {
    const repository = makeRepository();
    expect((await ullage('new', '--repo', repository.dir, '--now', demoDay)).code).toBe(0);
    repository.commit('the estate');
    repository.branch('grow');
    const path = join(repository.dir, 'storage/example.yaml');
    writeFileSync(path, readFileSync(path, 'utf8').replaceAll(/(shared-[12]: \{ size: )40/g, '$150'));
    repository.commit('grow both');
    for (const command of [['cost'], ['headroom'], ['policy', 'check'], ['gate', '--base', 'main']]) {
      const { code, out, err } = await ullage(...command, '--repo', repository.dir, '--now', demoDay);
      expect([command, code, code === 0 ? '' : out + err]).toEqual([command, 0, '']);
    }
  });

  it('overwrites nothing, and then writes nothing', async () => {
    const repository = makeRepository({ files: { 'prices/2026.yaml': 'mine\n' } });
    const { code, err } = await ullage('new', '--repo', repository.dir, '--now', demoDay);
    expect([code, err]).toEqual([2, expect.stringContaining('prices/2026.yaml would be overwritten')]);
    expect(repository.git('status', '--porcelain')).not.toContain('ullage.yaml');
  });
});

describe('ullage cost', () => {
  it.each(['team', 'site', 'tier', 'server', 'volume'])('adds up by %s to the same total', async (by) => {
    const { code, out } = await ullage(
      'cost',
      '--repo',
      demo,
      '--at',
      'main',
      '--now',
      demoDay,
      '--by',
      by,
      '--format',
      'json',
    );
    const report: { total: string; sums: { monthly: string }[]; lines: { monthly: string }[] } =
      JSON.parse(out);
    const total = (rows: readonly { monthly: string }[]) =>
      rows.reduce((sum, row) => sum.plus(row.monthly), new Decimal(0)).toFixed();
    expect([code, total(report.sums), total(report.lines)]).toEqual([0, report.total, report.total]);
    // 62.16 for imagery, 127.63 for soundings, 49.13 for ledger: worked out by hand from the demo's price list.
    expect(report.total).toBe('238.92');
  });

  it('says what of it is for volumes that nobody holds', async () => {
    const { out } = await ullage('cost', '--repo', demo, '--at', 'main', '--now', demoDay);
    expect(out).toContain('4.50 EUR');
    expect(out.replace(/\s+/g, ' ')).toContain('billed until it is deleted');
  });

  it('keeps a spreadsheet from taking a name for a formula', async () => {
    const repository = makeRepository({
      files: {
        'ullage.yaml': 'currency: EUR\n',
        'prices/2026.yaml':
          'from: 2026-01-01\ncurrency: EUR\ntiers:\n  bulk: { rate: "0.045", per: GiB-month }\n',
        'storage/a.yaml': 'volumes:\n  plates-1: { size: 1 GiB, tier: bulk }\n',
      },
    });
    const { code, out } = await ullage('cost', '--repo', repository.dir, '--format', 'csv', '--now', demoDay);
    expect(code).toBe(0);
    expect(out.split('\n')[1]).toMatch(/^volume,plates-1,/);
  });
});

describe('ullage headroom', () => {
  it('shows each layer, and bars that need no colour', async () => {
    const { code, out } = await ullage('headroom', '--repo', demo, '--at', 'main', '--now', demoDay);
    expect(code).toBe(0);
    for (const part of [
      'Quota of each site',
      'Attachment slots',
      'Volume groups',
      'Provisioned, in GiB',
      'Allocated to file systems',
      'Unallocated',
      '█',
    ]) {
      expect(out).toContain(part);
    }
  });

  it('knows that three 40 GiB volumes in a group of 64 MiB extents come to 1,917 extents', async () => {
    const { out } = await ullage(
      'headroom',
      '--repo',
      demo,
      '--at',
      'main',
      '--now',
      demoDay,
      '--format',
      'json',
    );
    const report: { headroom: { layer: string; subject: { name: string }; capacity: string }[] } =
      JSON.parse(out);
    const plates = report.headroom.find(
      ({ layer, subject }) => layer === 'volume-group' && subject.name === 'plates',
    );
    // floor((40 GiB - 1 MiB) / 64 MiB) = 639 a member, as the open-source Linux volume manager reports it.
    expect(plates?.capacity).toBe(String(3n * 639n * 64n * 1024n * 1024n));
  });
});

describe('ullage rules', () => {
  it('lists every rule and explains each', async () => {
    const { out } = await ullage('rules');
    for (const name of ruleNames) {
      expect(out).toContain(name);
      const page = await ullage('rules', name);
      expect([page.code, page.out.includes('A branch that it refuses')]).toEqual([0, true]);
    }
  });

  it('offers the nearest for a misspelt one', async () => {
    expect(await ullage('rules', 'no-shrnk')).toMatchObject({
      code: 2,
      err: expect.stringContaining('no-shrink'),
    });
  });
});

describe('ullage reading', () => {
  it("takes in the machine's own df -P, once", async () => {
    const repository = makeRepository({
      files: {
        'ullage.yaml': 'currency: EUR\n',
        'storage/a.yaml':
          'servers:\n  here: { boot: root }\nvolumes:\n  root: { size: 50 GiB, tier: bulk, file-system: { mount: /, type: ext4 } }\n',
      },
    });
    const df = join(repository.dir, 'df.txt');
    writeFileSync(
      df,
      execFileSync('df', ['-P', '/'], { encoding: 'utf8', env: { ...process.env, LC_ALL: 'C' } }),
    );
    const add = () =>
      ullage(
        'reading',
        'add',
        df,
        '--server',
        'here',
        '--at',
        '2026-11-20T06:00:00Z',
        // Whatever this machine's disk is, it is none of 50 GiB.
        '--any-size',
        '--repo',
        repository.dir,
      );
    expect((await add()).code).toBe(0);
    const kept = readFileSync(join(repository.dir, 'readings/here.csv'), 'utf8');
    expect(kept.split('\n')).toHaveLength(3);
    expect((await add()).code).toBe(2);
    expect(readFileSync(join(repository.dir, 'readings/here.csv'), 'utf8')).toBe(kept);
    const { out } = await ullage('reading', 'summary', '--repo', repository.dir);
    expect(out).toContain('1 reading of 1 file system');
  });
});

describe('ullage policy check', () => {
  it('tells of a waiver that is over', async () => {
    const { code, out } = await ullage('policy', 'check', '--repo', demo, '--at', 'main', '--now', demoDay);
    expect([code, out]).toEqual([0, expect.stringContaining('expired on 2026-06-01')]);
  });
});
