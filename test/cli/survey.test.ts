import { existsSync, mkdirSync, readdirSync, readFileSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { afterAll, describe, expect, it } from 'vitest';
import { runSurveyAdd } from '../../src/cli/survey-add.ts';
import { gatheringScript } from '../../src/survey/generated/script.ts';
import { makeRepository, removeRepositories, type TestRepository } from '../repository.ts';
import { ullage } from './run.ts';

afterAll(removeRepositories);

const gib = 1n << 30n;

/** What the script prints on a scanner with a root disk and one with plates on it. */
const gathered = (more: object = {}) => ({
  format: 'ullage-gathered-1',
  at: '2026-11-20T06:00:00Z',
  versions: { lsblk: '2.38.1' },
  lsblk: {
    blockdevices: [
      { name: 'vda', type: 'disk', size: Number(20n * gib), serial: 'root-1', fstype: 'ext4', uuid: 'aaaa' },
      { name: 'vdb', type: 'disk', size: Number(40n * gib), serial: 'plates-1', fstype: 'xfs', uuid: 'bbbb' },
      { name: 'sr0', type: 'rom', size: 1024 },
    ],
  },
  findmnt: {
    filesystems: [
      { source: '/dev/vda', target: '/', fstype: 'ext4', fsroot: '/' },
      { source: '/dev/vdb', target: '/plates', fstype: 'xfs', fsroot: '/' },
    ],
  },
  df: dfOf(20n),
  swaps: '',
  fstab: 'UUID=aaaa / ext4\nUUID=bbbb /plates xfs',
  pvs: { report: [{ pv: [] }] },
  vgs: { report: [{ vg: [] }] },
  lvs: { report: [{ lv: [] }] },
  superblocks: [],
  unseen: [],
  ...more,
});

const dfOf = (size: bigint): string =>
  `Filesystem 1024-blocks Used Available Capacity Mounted on\n/dev/vda ${size << 20n} 4096 8192 1% /\n/dev/vdb ${40 << 20} 1 2 1% /plates`;

const declared = {
  'ullage.yaml': 'currency: EUR\n',
  'storage/imagery.yaml': `servers:
  plate-scanner: { boot: plate-scanner-root }
volumes:
  plate-scanner-root: { size: 20 GiB, tier: steady, file-system: { mount: /, type: ext4 } }
`,
};

const office = (): TestRepository => makeRepository({ files: declared });

async function add(repository: TestRepository, content: string | Uint8Array, ...more: readonly string[]) {
  const file = join(repository.dir, '..', `${Math.random()}.json`);
  writeFileSync(file, content);
  return addFile(repository, file, ...more);
}

const addFile = (repository: TestRepository, file: string, ...more: readonly string[]) =>
  ullage('survey', 'add', file, '--server', 'plate-scanner', '--repo', repository.dir, ...more);

const text = (more: object = {}): string => JSON.stringify(gathered(more));

const keptIn = (repository: TestRepository): string =>
  readFileSync(join(repository.dir, 'surveys/plate-scanner.json'), 'utf8');

const readingsIn = (repository: TestRepository): readonly string[] => {
  const path = join(repository.dir, 'readings/plate-scanner.csv');
  return existsSync(path) ? readFileSync(path, 'utf8').trim().split('\n').slice(1) : [];
};

describe('ullage survey script', () => {
  it('prints the script, as it is kept to be read', async () => {
    const { code, out } = await ullage('survey', 'script');
    const kept = readFileSync(new URL('../../src/survey/gather.sh', import.meta.url), 'utf8');
    expect([code, out]).toEqual([0, kept]);
    expect(gatheringScript).toBe(kept);
  });
});

describe('a survey that is added', () => {
  it('is kept one value a line, its use is added to the readings, and what is left out is said', async () => {
    const repository = office();
    const { code, out, err } = await add(repository, text());
    expect([code, err]).toEqual([0, '']);
    expect(out).toContain('plate-scanner.json, as of 2026-11-20T06:00:00Z');
    expect(out).toContain('2 block devices, 0 volume groups, 2 file systems');
    expect(out).toContain('sr0: it is a drive for media that come and go');
    expect(out).toContain('/plates: not declared');
    expect(readingsIn(repository)).toEqual([
      `plate-scanner,/,2026-11-20T06:00:00Z,${20n * gib},${4096 * 1024},${8192 * 1024}`,
    ]);
    const lines = keptIn(repository).split('\n');
    expect(lines.every((line) => (line.match(/": "/g) ?? []).length <= 1)).toBe(true);
    expect(JSON.parse(keptIn(repository))).toMatchObject({ server: 'plate-scanner', unseen: [] });
  });

  it('of a server that shows nothing of what is declared is kept, and doubted first', async () => {
    const doubt = 'No disk of it is as large as a volume that is declared on plate-scanner';
    const other = makeRepository({
      files: {
        ...declared,
        'storage/imagery.yaml': declared['storage/imagery.yaml'].replace('20 GiB', '21 GiB'),
      },
    });
    expect((await add(other, text())).out.split('\n')[2]).toContain(doubt);
    expect((await add(office(), text())).out).not.toContain(doubt);
  });

  it('from a file that is not there is told so in words', async () => {
    const { code, out } = await addFile(office(), '/no/such/file.json');
    expect([code, out]).toEqual([
      2,
      expect.stringContaining('cannot be read: there is no such file or folder'),
    ]);
  });

  it('twice is the same file, and changes nothing', async () => {
    const repository = office();
    await add(repository, text());
    const before = keptIn(repository);
    const { code, out } = await add(repository, text());
    expect([code, keptIn(repository)]).toEqual([0, before]);
    expect(out).toContain('holds this survey already');
    expect(out).toContain('already has a reading');
    expect(readingsIn(repository)).toHaveLength(1);
  });

  it('in whatever order the tools listed things is the same file', async () => {
    const [one, other] = [office(), office()];
    const all = gathered();
    await add(one, JSON.stringify(all));
    all.lsblk.blockdevices.reverse();
    all.findmnt.filesystems.reverse();
    await add(other, JSON.stringify(Object.fromEntries(Object.entries(all).reverse()), null, 4));
    expect(keptIn(other)).toBe(keptIn(one));
  });

  it('with a size far from the declared one is kept, and the reading is said to be refused', async () => {
    const repository = office();
    const { code, out } = await add(repository, text({ df: dfOf(60n) }));
    expect(code).toBe(0);
    expect(out).toContain('Not added to the readings:');
    expect(out).toContain('is declared with 20 GiB, and df measured 60 GiB');
    expect(readingsIn(repository)).toEqual([]);
    expect(keptIn(repository)).toContain(`"usable": "${60n * gib}"`);
  });

  it('says what was not seen, and why', async () => {
    const why = 'pvs fails (exit code 5); it may need the superuser';
    const { out } = await add(office(), text({ pvs: undefined, unseen: [{ what: 'volume-groups', why }] }));
    expect(out).toContain(`volume groups: ${why}`);
  });

  it('of a server that is nearly called as a declared one is refused, unless it is meant so', async () => {
    const repository = office();
    const { code, out } = await add(repository, text(), '--server', 'plate-scaner');
    expect(code).toBe(2);
    expect(out).toContain('no server plate-scaner is declared, and plate-scanner is');
    expect(out).toContain('Did you mean plate-scanner?');
    expect(existsSync(join(repository.dir, 'surveys'))).toBe(false);
    const meant = await add(repository, text(), '--server', 'plate-scaner', '--undeclared');
    expect([meant.code, meant.out]).toEqual([0, expect.stringContaining('plate-scaner is not declared yet')]);
    // What is kept already is meant so, too.
    expect((await add(repository, text(), '--server', 'plate-scaner')).code).toBe(0);
    expect(readdirSync(join(repository.dir, 'surveys'))).toEqual(['plate-scaner.json']);
  });

  it.each(['plate-scanner-2', 'plate-printer', 'sounder', 'scanner'])(
    'of an undeclared server %s is kept: it is surveyed first',
    async (server) => {
      const repository = office();
      const { code, out } = await add(repository, text(), '--server', server);
      expect([code, out]).toEqual([0, expect.stringContaining(`${server} is not declared yet`)]);
    },
  );

  it('as a shell of Windows writes it into a file, in UTF-16, is the same', async () => {
    const [one, other] = [office(), office()];
    await add(one, text());
    expect((await add(other, Buffer.from(`\uFEFF${text()}`, 'utf16le'))).code).toBe(0);
    expect(keptIn(other)).toBe(keptIn(one));
  });

  it('with a mount point in bytes that are no text is kept without it', async () => {
    const repository = office();
    const [before = '', ...after] = text().split('/plates"');
    const { code } = await add(
      repository,
      Buffer.concat([
        Buffer.from(`${before}/caf`),
        Buffer.from([0xe9, 0x22]),
        Buffer.from(after.join('/plates"')),
      ]),
    );
    expect(code).toBe(0);
    expect(JSON.parse(keptIn(repository))['file-systems']).toHaveLength(2);
    expect(keptIn(repository)).not.toMatch(/caf|\uFFFD/);
  });

  it('goes where the settings say, and through a symbolic link', async () => {
    const repository = makeRepository({
      files: { ...declared, 'ullage.yaml': 'currency: EUR\npaths: { surveys: what-is-there }\n' },
    });
    mkdirSync(join(repository.dir, 'what-is-there'));
    writeFileSync(join(repository.dir, 'elsewhere.json'), '');
    symlinkSync('../elsewhere.json', join(repository.dir, 'what-is-there/plate-scanner.json'));
    const { code } = await add(repository, text(), '--replace');
    expect(code).toBe(0);
    expect(readFileSync(join(repository.dir, 'elsewhere.json'), 'utf8')).toContain('ullage-survey-1');
  });
});

describe('what is refused leaves the older survey as it was', () => {
  const whole = text();
  it.each([
    ['nothing', '', 'there is nothing in it'],
    ['a table of df', dfOf(20n), 'it is what df prints'],
    ['a table of lsblk', 'NAME MAJ:MIN RM SIZE\nvda 254:0 0 20G\n', 'it is the table that lsblk prints'],
    ['the JSON of lsblk', JSON.stringify(gathered().lsblk), 'it is what lsblk alone prints'],
    ['the JSON of findmnt', JSON.stringify(gathered().findmnt), 'it is what findmnt alone prints'],
    ['the JSON of pvs', JSON.stringify(gathered().pvs), 'it is what the volume manager alone prints'],
    ['a web page', '<!DOCTYPE html><html></html>', 'it is a web page'],
    [
      'a greeting before it',
      `Welcome to plate-scanner\n${JSON.stringify(gathered(), null, 2)}`,
      'something else stands before',
    ],
    ['the script itself', gatheringScript, 'it is the script itself'],
    ['other JSON', '[1]', 'it is JSON, and not what the script prints'],
    ['another format', whole.replace('gathered-1', 'gathered-9'), 'the script of another version of Ullage'],
    ['what was cut off', whole.slice(0, whole.length - 40), 'it is cut off or damaged'],
    ['a key twice', whole.replace('{', '{"at": "2026-11-21T06:00:00Z", '), 'the key at is there twice'],
    ['a key that is none', whole.replace('{', '{"hostname": "archive", '), 'hostname is not a key of'],
    ['a prototype', whole.replace('{', '{"__proto__": {}, '), '__proto__ is not a key of'],
    ['a time that there is not', whole.replace('11-20T06', '13-40T06'), 'is no time that there is'],
    ['a time to come', whole.replace('2026', '2036'), 'is in the future'],
    ['an older one', whole.replace('11-20', '11-19'), 'holds a newer survey, of 2026-11-20T06:00:00Z'],
    [
      'what is deeply nested',
      `${whole.slice(0, -1)}, "x": ${'['.repeat(5000)}${']'.repeat(5000)}}`,
      'values nest more than',
    ],
  ])('%s', async (_, content, said) => {
    const repository = office();
    await add(repository, whole);
    const before = keptIn(repository);
    const { code, out, err } = await add(repository, content);
    expect([code, err]).toEqual([2, 'nothing was kept\n']);
    expect(out.replace(/\s+/g, ' ')).toContain(said);
    expect(keptIn(repository)).toBe(before);
    expect(readdirSync(join(repository.dir, 'surveys'))).toEqual(['plate-scanner.json']);
    expect(readingsIn(repository)).toHaveLength(1);
  });

  it('more than a server can print', async () => {
    const { code, out } = await add(office(), Buffer.alloc((8 << 20) + 1, 0x20));
    expect([code, out]).toEqual([2, expect.stringContaining('it is larger than 8 MiB')]);
  });

  it('a file without end is not read to its end', async () => {
    const { code, out } = await addFile(office(), '/dev/zero');
    expect([code, out]).toEqual([2, expect.stringContaining('it is larger than 8 MiB')]);
  });

  it('where a folder is in its place', async () => {
    const repository = office();
    mkdirSync(join(repository.dir, 'surveys/plate-scanner.json'), { recursive: true });
    const { code, out } = await add(repository, whole);
    expect([code, out]).toEqual([2, expect.stringContaining('plate-scanner.json cannot be read')]);
  });

  it('a file that is not there', async () => {
    const { code, out } = await addFile(office(), '/nosuch/file');
    expect([code, out]).toEqual([2, expect.stringContaining('/nosuch/file cannot be read')]);
  });

  it.each(['../escape', '-', '__proto__', 'a/b', '', 'a\nb', '.hidden', 'provider'])(
    'under the name %j',
    async (name) => {
      const repository = office();
      const { code } = await add(repository, whole, `--server=${name}`);
      expect(code).toBe(2);
      expect(existsSync(join(repository.dir, 'surveys'))).toBe(false);
    },
  );

  it('where it was cut off, at any place', async () => {
    const repository = office();
    const file = join(repository.dir, 'cut.json');
    await fc.assert(
      fc.asyncProperty(fc.integer({ min: 0, max: whole.length - 1 }), async (length) => {
        writeFileSync(file, whole.slice(0, length));
        const { code } = await addFile(repository, file);
        expect(code).toBe(2);
        expect(existsSync(join(repository.dir, 'surveys'))).toBe(false);
      }),
      { numRuns: 50 },
    );
  });
});

describe('told to replace', () => {
  it('an older survey takes the place of a newer one', async () => {
    const repository = office();
    await add(repository, text());
    const { code } = await add(repository, text({ at: '2026-11-19T06:00:00Z' }), '--replace');
    expect([code, JSON.parse(keptIn(repository)).at]).toEqual([0, '2026-11-19T06:00:00Z']);
  });

  it('a survey takes the place of what is none, and of nothing else without being told', async () => {
    const repository = office();
    repository.write({ 'surveys/plate-scanner.json': '<<<<<<< ours\n' });
    const { code, out } = await add(repository, text());
    expect([code, out]).toEqual([2, expect.stringContaining('is there, and is no survey')]);
    expect(keptIn(repository)).toBe('<<<<<<< ours\n');
    expect((await add(repository, text(), '--replace')).code).toBe(0);
    expect(keptIn(repository)).toContain('ullage-survey-1');
  });
});

describe('hostile names', () => {
  const hostile = [
    '\u001b[31mred',
    'a\nb',
    '"quoted\' `name`',
    '::error::',
    '##[group]',
    '\u202Egnp',
    '__proto__',
    '$HOME',
    '| a |',
    '<b>',
  ];

  it('stay in their place on the terminal and in the file', async () => {
    const repository = office();
    const blockdevices = hostile.map((name) => ({ name, type: 'rom', size: 1, serial: name, fstype: name }));
    const disks = hostile.map((name, number) => ({
      name: `vd${number}`,
      type: 'disk',
      size: 1,
      serial: name,
      fstype: name,
      uuid: name,
    }));
    const filesystems = hostile.map((name, number) => ({
      source: `/dev/vd${number}`,
      target: `/${name}`,
      fstype: name,
      fsroot: name,
    }));
    const { code, out } = await add(
      repository,
      text({
        lsblk: { blockdevices: [...blockdevices, ...disks] },
        findmnt: { filesystems },
        fstab: hostile.map((name) => `/dev/vdx /${name} ext4`).join('\n'),
        df: `Filesystem 1024-blocks Used Available Capacity Mounted on\n${hostile.map((name) => `/dev/vda 1 1 1 1% /${name.replace('\n', ' ')}`).join('\n')}`,
        unseen: hostile.map((why) => ({ what: 'superblocks', why })),
      }),
    );
    expect(code).toBe(0);
    expect(out).not.toMatch(/(?!\n)\p{Cc}|\u202E/u);
    expect(out).not.toMatch(/^::/m);
    expect(out).not.toContain('##[');
    const kept: unknown = JSON.parse(keptIn(repository));
    expect(Object.keys(Object(kept))).toEqual([
      'format',
      'server',
      'at',
      'tools',
      'unseen',
      'devices',
      'volume-groups',
      'file-systems',
    ]);
    expect(keptIn(repository)).not.toMatch(/(?!\n)\p{Cc}|\\u00[01]|\\n/u);
  });
});

it('a clock of its own decides what is in the future', async () => {
  const repository = office();
  const file = join(repository.dir, '..', 'early.json');
  writeFileSync(file, text());
  const flags = { repo: repository.dir, server: 'plate-scanner' };
  const early = await runSurveyAdd(file, flags, () => new Date('2026-11-18T06:00:00Z'));
  expect([early.code, early.output]).toEqual([2, expect.stringContaining('is in the future')]);
  expect((await runSurveyAdd(file, flags, () => new Date('2026-11-20T06:00:00Z'))).code).toBe(0);
});
