import { execFileSync } from 'node:child_process';
import { readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { Decimal } from 'decimal.js';
import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { shippedNames } from '../../src/policy/pack.ts';
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
  const started = async () => {
    const repository = makeRepository();
    expect((await ullage('new', '--repo', repository.dir, '--now', demoDay)).code).toBe(0);
    repository.commit('the layout');
    repository.branch('ours');
    return repository;
  };
  const gate = async (dir: string) => {
    const run = await ullage('gate', '--base', 'main', '--repo', dir, '--now', demoDay, '--format', 'json');
    return { code: run.code, judgement: JSON.parse(run.out) };
  };
  const example = 'storage/example.yaml';

  it('writes a layout that reads and declares nothing yet', async () => {
    const { dir } = await started();
    for (const command of [['cost'], ['headroom'], ['policy', 'check'], ['gate', '--base', 'main']]) {
      const { code, out, err } = await ullage(...command, '--repo', dir, '--now', demoDay);
      expect([command, code, code === 0 ? '' : out + err]).toEqual([command, 0, '']);
    }
  });

  it('is followed by the README for servers that are there: its file passes as it is shown', async () => {
    const repository = await started();
    const readme = readFileSync(join(import.meta.dirname, '../../README.md'), 'utf8');
    const [, shown = ''] = /```yaml\n(# storage\/ours\.yaml\n[\s\S]*?)```/.exec(readme) ?? [];
    repository.write({ 'storage/ours.yaml': shown });
    repository.commit('what we have');
    const { code, judgement } = await gate(repository.dir);
    expect([code, judgement.question, judgement.cost.alreadyPaid]).toEqual([0, null, '9.00']);
    expect(judgement.runbook.map(({ at }: { at: string }) => at)).toEqual(['provider', 'guest']);
  });

  it.each(['', 'existing: true\n'])(
    'whose example gives way to an estate of two volumes without a deletion: %j',
    async (top) => {
      const repository = await started();
      repository.write({
        [example]: `${top}team: ours\nservers:\n  files: { boot: files-root }\nvolumes:\n  files-root: { size: 30 GiB, tier: standard, file-system: { mount: /, type: ext4 } }\n  papers: { size: 60 GiB, tier: standard, file-system: { mount: /srv, type: xfs } }\nattachments:\n  - { volume: papers, server: files }\n`,
      });
      repository.commit('our estate in its place');
      const { code, judgement } = await gate(repository.dir);
      expect([code, judgement.verdict, judgement.cost.after]).toEqual([0, 'pass', '9.00']);
      const kinds: readonly string[] = judgement.changes.map(({ kind }: { kind: string }) => kind);
      expect(kinds.filter((kind) => !/-(created|adopted)$|^attached$/.test(kind))).toEqual([]);
      const rules: readonly string[] = judgement.findings.map(({ rule }: { rule: string }) => rule);
      expect(rules).not.toContain('deletion-prepared');
      expect(judgement.question === null).toBe(top !== '');
    },
  );

  it('whose example is right: without its comment signs it is priced, has room, and passes', async () => {
    const repository = await started();
    const uncommented = (path: string, from: string): string => {
      const text = readFileSync(join(repository.dir, path), 'utf8');
      const at = text.indexOf(from);
      return (
        text.slice(0, at) +
        text
          .slice(at)
          .replaceAll(/^# /gm, '')
          .replaceAll(/^(A deletion|retired| {2}- .*shared-0)/gm, '# $1')
      );
    };
    repository.write({
      [example]: uncommented(example, '# existing'),
      'ullage.yaml': uncommented('ullage.yaml', '# sites'),
    });
    repository.commit('the example');
    const { code, judgement } = await gate(repository.dir);
    expect([code, judgement.verdict, judgement.changes.length]).toEqual([0, 'pass', 10]);
    expect(judgement.findings.filter(({ level }: { level: string }) => level === 'error')).toEqual([]);
  });

  const gbp = 'from: 2026-01-01\ncurrency: GBP\ntiers: { bulk: { rate: "0.045", per: GiB-month } }\n';

  it('overwrites nothing, and writes what is lacking to fit it', async () => {
    const files = {
      'ullage.yaml': 'currency: GBP\npaths: { storage: estates/storage }\n',
      'policies/ours.yml': 'use: [strict]\n',
    };
    const repository = makeRepository({ files });
    const { code, out } = await ullage('new', '--repo', repository.dir, '--now', demoDay);
    expect(code).toBe(0);
    expect(out).toMatch(/Kept as it was:\n {2}\S*ullage.yaml\n {2}\S*policies\/ \(1 file\)\n\n/);
    expect(repository.git('status', '--porcelain', '--untracked-files=all').split('\n').sort()).toEqual(
      [
        ...['common', 'estate', 'price-list', 'procedure', 'rule-pack', 'settings', 'waivers'].map(
          (name) => `?? .ullage/schema/${name}.json`,
        ),
        '?? estates/storage/example.yaml',
        '?? prices/2026.yaml',
        '?? waivers/README.md',
      ].sort(),
    );
    const checked = await ullage('policy', 'check', '--repo', repository.dir, '--now', demoDay);
    expect([checked.code, checked.out]).toEqual([0, expect.not.stringContaining('currency')]);
  });

  it('takes the currency of the price list that is there', async () => {
    const repository = makeRepository({ files: { 'prices/ours.yaml': gbp } });
    const { code, out } = await ullage('new', '--repo', repository.dir, '--now', demoDay);
    expect([code, out]).toEqual([0, expect.not.stringContaining('enter your own prices')]);
    expect(readFileSync(join(repository.dir, 'ullage.yaml'), 'utf8')).toContain('currency: GBP');
    expect((await ullage('cost', '--repo', repository.dir, '--now', demoDay)).code).toBe(0);
  });

  it('writes nothing beside settings that do not read, and nothing where nothing is lacking', async () => {
    const repository = makeRepository({ files: { 'ullage.yaml': 'currency: [EUR]\n' } });
    const { code, err } = await ullage('new', '--repo', repository.dir, '--now', demoDay);
    expect([code, err]).toEqual([2, expect.stringContaining('nothing was written: ullage.yaml:1:11')]);
    expect(repository.git('status', '--porcelain')).toBe('');
    const { dir } = await started();
    expect(await ullage('new', '--repo', dir, '--now', demoDay)).toMatchObject({
      code: 0,
      out: expect.stringContaining('Nothing was lacking'),
    });
  });

  it('whatever of its files are there, leaves them byte for byte and adds the rest', async () => {
    const whole = await started();
    const paths = whole.git('ls-files').split('\n');
    const read = ({ dir }: { readonly dir: string }, path: string) => readFileSync(join(dir, path), 'utf8');
    await fc.assert(
      fc.asyncProperty(fc.subarray(paths.filter((path) => !path.startsWith('.ullage/'))), async (kept) => {
        const mine = Object.fromEntries(kept.map((path) => [path, `${read(whole, path)}# mine\n`]));
        const repository = makeRepository({ files: { 'README.md': 'ours\n', ...mine } });
        expect((await ullage('new', '--repo', repository.dir, '--now', demoDay)).code).toBe(0);
        for (const path of paths) expect(read(repository, path)).toBe(mine[path] ?? read(whole, path));
        repository.cleanup();
      }),
      { numRuns: 12 },
    );
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

  it.each(shippedNames)('shows what the pack %s holds, as it applies', async (name) => {
    const [list, table, json] = await Promise.all([
      ullage('rules', '--help'),
      ullage('rules', '--pack', name),
      ullage('rules', '--pack', name, '--format', 'json'),
    ]);
    expect(list.out).toContain(name);
    const repository = makeRepository({
      files: { 'ullage.yaml': 'currency: EUR\n', 'policies/a.yaml': `use: [${name}]\n` },
    });
    const inForce = await ullage(
      ...['audit', '--policy-on', demoDay, '--format', 'ndjson', '--repo', repository.dir],
    );
    const rows = inForce.out
      .trim()
      .split('\n')
      .map((line) => JSON.parse(line));
    expect(
      JSON.parse(json.out).map(({ name, rule, level }: Record<string, string>) => [name, rule, level]),
    ).toEqual(rows.map((row) => [row.name, row.rule, row.level]));
    for (const { name, level, parameters } of rows) {
      const row = table.out.split('\n').find((line) => line.trim().startsWith(`${name} `)) ?? '';
      expect(row).toContain(level);
      expect(row).toContain(parameters);
    }
  });

  it('offers the nearest for a misspelt pack, and takes no rule beside one', async () => {
    const { code, err } = await ullage('rules', '--pack', 'strickt');
    expect([code, err]).toEqual([
      2,
      expect.stringContaining('Did you mean strict? The packs are starter, strict.'),
    ]);
    expect((await ullage('rules', 'no-shrink', '--pack', 'strict')).code).toBe(2);
  });

  it('offers the nearest for a misspelt one', async () => {
    expect(await ullage('rules', 'group-headroom')).toMatchObject({
      code: 2,
      err: 'group-headroom is no rule but an entry of the starter pack, of the rule minimum-headroom: `ullage rules minimum-headroom` explains that.\n',
    });
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
