import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readDocument } from '../../src/read/document.ts';
import { readGathered } from '../../src/survey/gathered.ts';
import { readSurvey } from '../../src/survey/survey.ts';
import { surveyAsText, surveyOf } from '../../src/survey/survey-of.ts';
import { fixture } from './server.ts';

const at = '2026-11-20T06:00:00Z';

function surveyed(gathered: object) {
  const text = JSON.stringify({ format: 'ullage-gathered-1', at, ...gathered });
  const read = readGathered(Buffer.from(text), 'gathered');
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  const made = surveyOf(read.value, 'plate-scanner');
  if (!made.ok) throw new Error(JSON.stringify(made.problems));
  return made.value;
}

describe('what util-linux 2.38.1 and lvm2 2.03.16 print of real disks', () => {
  const real = surveyed(JSON.parse(fixture('util-linux-2.38.1-lvm2-2.03.16.json'))).survey;

  it('gives a group of three 40 GiB members with 64 MiB extents, and its volume of 100 GiB', () => {
    expect(real['volume-groups']).toEqual([
      {
        name: 'plates',
        extent: `${64 << 20}`,
        extents: 1917,
        free: 317,
        missing: 0,
        members: [0, 1, 2].map((number) => ({
          device: `loop${number}`,
          // 40 GiB less what the volume manager keeps for itself: 639 extents of 64 MiB.
          size: `${639n * 64n * 1024n * 1024n}`,
          'device-size': `${40n << 30n}`,
          extents: 639,
          free: number === 2 ? 317 : 0,
        })),
        'logical-volumes': [{ name: 'scans', size: `${100n << 30n}`, layout: 'linear', active: false }],
      },
    ]);
  });

  it('gives the figures of an ext4 and an xfs file system', () => {
    expect(real['file-systems'].filter(({ device }) => device !== 'vda')).toEqual([
      {
        device: 'loop3',
        type: 'ext4',
        id: '5af6e33f-b9d6-437d-ab7c-de1a4b8d4238',
        mounts: ['/soundings'],
        size: `${20n << 30n}`,
        'block-size': '4096',
        metadata: `${(20n << 30n) - 20_466_256n * 1024n}`,
        reserved: `${(20n << 30n) / 20n}`,
        // mke2fs 1.47.0 leaves 20,466,256 KiB of data blocks in 20 GiB.
        usable: `${20_466_256n * 1024n}`,
        used: `${24 * 1024}`,
        available: `${19_401_272n * 1024n}`,
      },
      {
        device: 'loop4',
        type: 'xfs',
        id: 'c213a305-c9d4-4dbb-9847-a81b8382da11',
        mounts: ['/old plates'],
        size: `${4n << 30n}`,
        'block-size': '4096',
        // The log: 16,384 blocks, as mkfs.xfs 6.1.0 makes it.
        metadata: `${16_384 * 4096}`,
        usable: `${4_128_768n * 1024n}`,
        used: `${61_848 * 1024}`,
        available: `${4_066_920n * 1024n}`,
      },
    ]);
  });

  it('says of which versions of the tools it is', () => {
    expect(real.tools).toEqual({
      df: '9.1',
      dumpe2fs: '1.47.0',
      findmnt: '2.38.1',
      lsblk: '2.38.1',
      lvm: '2.03.16(2)',
      xfs_db: '6.1.0',
    });
  });
});

describe('what several versions of lsblk print of the same disks', () => {
  const disks = [
    {
      name: 'mapper/plates-scans',
      type: 'lvm',
      on: ['sdb', 'sdc'],
      size: '75161927680',
      content: 'xfs',
    },
    { name: 'sda', type: 'disk', size: '53687091200', serial: '5000cca0bbce87e7' },
    { name: 'sda1', type: 'part', on: ['sda'], size: '1048576' },
    { name: 'sda2', type: 'part', on: ['sda'], size: '53684994048', content: 'ext4' },
    { name: 'sdb', type: 'disk', size: '42949672960', serial: '5000cca0bbce87e8', content: 'LVM2_member' },
    { name: 'sdc', type: 'disk', size: '42949672960', serial: '5000cca0bbce87e9', content: 'LVM2_member' },
  ];

  it.each(['lsblk-2.31.1.json', 'lsblk-2.34.json'])('%s gives the same devices', (name) => {
    const { survey, leftOut } = surveyed({ lsblk: JSON.parse(fixture(name)) });
    expect(survey.devices).toEqual(disks);
    expect(leftOut).toEqual([{ what: 'sr0', why: 'it is a drive for media that come and go' }]);
    expect(survey['file-systems']).toEqual([
      { device: 'plates/scans', type: 'xfs', id: 'c213a305-c9d4-4dbb-9847-a81b8382da11' },
      { device: 'sda2', type: 'ext4', id: '9d3e5ad2-6f0e-4b5d-9f0c-0d9c3e7b1a11' },
    ]);
  });
});

describe('logical volumes', () => {
  it('are linear, striped, mirrored, or of a kind of their own', () => {
    const { survey } = surveyed({
      lsblk: JSON.parse(fixture('lsblk-2.34.json')),
      lvs: JSON.parse(fixture('lvs-2.03.json')),
      pvs: { report: [{ pv: [] }] },
      vgs: {
        report: [
          {
            vg: [{ vg_name: 'plates', vg_extent_size: '4194304', vg_extent_count: '1', vg_free_count: '0' }],
          },
        ],
      },
    });
    const shown = survey['volume-groups'][0]?.['logical-volumes'].map(
      ({ name, layout, stripes, copies, active }) => [name, layout, stripes ?? copies ?? 1, active],
    );
    expect(shown).toEqual([
      ['before', 'other', 1, true],
      ['copied', 'mirrored', 2, true],
      ['grown', 'other', 1, true],
      ['old-copied', 'mirrored', 2, true],
      ['pool', 'other', 1, true],
      ['promised', 'other', 1, false],
      ['quick', 'striped', 2, false],
      // lvs gives a row for each run of extents, and older versions call a linear one striped on one member.
      ['scans', 'linear', 1, true],
    ]);
  });

  it('of a report that is not whole are not taken for all there are', () => {
    const vg = { vg_name: 'plates', vg_extent_size: '4194304', vg_extent_count: '1', vg_free_count: '0' };
    const { survey } = surveyed({ vgs: { report: [{ vg: [vg] }] }, pvs: { report: [] } });
    expect(survey['volume-groups']).toEqual([]);
    expect(survey.unseen).toContain('volume-groups');
  });

  it('whose member is missing are in a group that says so', () => {
    const row = { vg_name: 'plates', pv_size: '1', dev_size: '0', pv_pe_count: '9', pv_pe_alloc_count: '9' };
    const { survey } = surveyed({
      lvs: { report: [] },
      vgs: {
        report: [
          {
            vg: [{ vg_name: 'plates', vg_extent_size: '4194304', vg_extent_count: '18', vg_free_count: '0' }],
          },
        ],
      },
      pvs: {
        report: [
          {
            pv: [
              { ...row, pv_name: '[unknown]', pv_attr: 'a-m' },
              { ...row, pv_name: '/dev/vdb', pv_attr: 'a--' },
            ],
          },
        ],
      },
    });
    expect(survey['volume-groups'][0]).toMatchObject({
      missing: 1,
      members: [
        { extents: 9, free: 0 },
        { device: 'vdb', extents: 9, free: 0 },
      ],
    });
  });
});

describe('mounts, fstab, swap and use', () => {
  const disk = (name: string, number: number, more: object) => ({
    name,
    kname: name,
    'maj:min': `254:${number}`,
    type: 'disk',
    size: 1 << 30,
    ...more,
  });
  const devices = {
    blockdevices: [
      disk('vda', 0, { fstype: 'ext4', uuid: 'aaaa' }),
      disk('vdb', 16, { fstype: 'swap', uuid: 'bbbb' }),
      disk('vdc', 32, { fstype: 'xfs', uuid: 'cccc' }),
      disk('loop3', 99, { type: 'loop', fstype: 'squashfs' }),
    ],
  };

  it('come together by device: by the kernel’s numbers where the name is another, by UUID in fstab', () => {
    const { survey, leftOut } = surveyed({
      lsblk: devices,
      findmnt: {
        filesystems: [
          // What some kernels call the disk that they started from.
          { source: '/dev/root', 'maj:min': '254:0', target: '/', fstype: 'ext4', fsroot: '/' },
          { source: '/dev/vdc', 'maj:min': '254:32', target: '/plates', fstype: 'xfs', fsroot: '/' },
          { source: '/dev/vdc', 'maj:min': '254:32', target: '/also', fstype: 'xfs', fsroot: '/' },
          { source: '/dev/vdc[/scans]', 'maj:min': '254:32', target: '/srv/scans', fstype: 'xfs' },
          { source: '/dev/loop3', target: '/snap/core/17', fstype: 'squashfs', fsroot: '/' },
        ],
      },
      swaps: '/dev/vdb\n',
      fstab:
        'UUID=aaaa / ext4\n/dev/disk/by-uuid/cccc /plates xfs\n/dev/vdb none swap\nUUID=gone /gone ext4\n',
      df: 'Filesystem 1024-blocks Used Available Capacity Mounted on\n/dev/root 100 50 40 56% /\n',
    });
    expect(survey['file-systems']).toEqual([
      {
        device: 'vda',
        type: 'ext4',
        id: 'aaaa',
        mounts: ['/'],
        'in-fstab': '/',
        usable: '102400',
        used: '51200',
        available: '40960',
      },
      { device: 'vdb', type: 'swap', id: 'bbbb', mounts: ['swap'], 'in-fstab': 'swap' },
      { device: 'vdc', type: 'xfs', id: 'cccc', mounts: ['/plates', '/also'], 'in-fstab': '/plates' },
    ]);
    expect(leftOut).toContainEqual({ what: "fstab's /gone", why: 'its device is not there' });
    expect(leftOut).toContainEqual({
      what: '/srv/scans',
      why: 'it shows a part of what is mounted elsewhere',
    });
  });

  it('leave out swap that lies in memory, and the other disks of a file system on several', () => {
    const { survey, leftOut } = surveyed({
      lsblk: {
        blockdevices: [
          disk('vdd', 48, { fstype: 'btrfs', uuid: 'dddd' }),
          disk('vde', 64, { fstype: 'btrfs', uuid: 'dddd' }),
          disk('vdf', 80, { fstype: 'btrfs', uuid: 'ffff' }),
          disk('zram0', 99, { fstype: 'swap' }),
        ],
      },
      findmnt: {
        filesystems: [
          { source: '/dev/vde[/@]', 'maj:min': '0:45', target: '/', fstype: 'btrfs', fsroot: '/@' },
          {
            source: '/dev/vde[/@log]',
            'maj:min': '0:45',
            target: '/var/log',
            fstype: 'btrfs',
            fsroot: '/@log',
          },
        ],
      },
      swaps: '/dev/zram0',
    });
    expect(survey['file-systems']).toEqual([
      { device: 'vde', type: 'btrfs', id: 'dddd', mounts: ['/', '/var/log'] },
      { device: 'vdf', type: 'btrfs', id: 'ffff' },
    ]);
    expect(leftOut).toEqual([{ what: 'zram0', why: 'it lies in memory' }]);
  });

  it('keep a name with a space, which fstab writes as \\040', () => {
    const { survey } = surveyed({
      lsblk: devices,
      findmnt: { filesystems: [{ source: '/dev/vdc', target: '/old plates', fstype: 'xfs' }] },
      fstab: '/dev/vdc /old\\040plates xfs',
    });
    expect(survey['file-systems'][2]).toMatchObject({ mounts: ['/old plates'], 'in-fstab': '/old plates' });
  });

  it('that df tells in a way of its own are not guessed at, and the survey is kept', () => {
    const { survey, unseen } = surveyed({ lsblk: devices, df: 'Filesystem Size Used\n/dev/vda 1G 2M\n' });
    expect(survey.devices).toHaveLength(3);
    expect(survey.unseen).toContain('use');
    expect(unseen.find(({ what }) => what === 'use')?.why).toContain('not the header that df -P prints');
  });

  it('without a volume manager there are no groups, which is seen where nothing is a member of one', () => {
    const missing = { unseen: [{ what: 'volume-groups', why: 'pvs is not on this server' }] };
    expect(surveyed({ lsblk: devices, ...missing }).survey.unseen).not.toContain('volume-groups');
    const member = { blockdevices: [disk('vdd', 48, { fstype: 'LVM2_member' })] };
    expect(surveyed({ lsblk: member, ...missing }).survey.unseen).toContain('volume-groups');
  });
});

describe('whatever a server calls its things', () => {
  const name = fc.oneof(
    fc.string({ unit: 'binary', maxLength: 12 }),
    fc.constantFrom(
      '__proto__',
      'constructor',
      '',
      '\u001b[31m',
      'a\nb',
      '../..',
      '/dev/mapper/a-b',
      'vda',
      '💾',
    ),
    fc.string({ maxLength: 3, unit: fc.constantFrom('a', '-', '/', "'", '"', '\\', '\u0000', '\u202E') }),
  );
  const value = fc.oneof(name, fc.integer(), fc.constant(null), fc.boolean(), fc.constant('1073741824'));
  const fields = (...keys: readonly string[]) =>
    fc.record(Object.fromEntries(keys.map((key) => [key, value])), { requiredKeys: [] });
  const device = fields(
    'name',
    'kname',
    'pkname',
    'maj:min',
    'type',
    'size',
    'serial',
    'fstype',
    'uuid',
    'label',
  );
  const report = (kind: string, ...keys: readonly string[]) =>
    fc.record({
      report: fc.array(fc.record({ [kind]: fc.array(fields(...keys), { maxLength: 4 }) }), { maxLength: 2 }),
    });
  const gathered = fc.record(
    {
      lsblk: fc.record({
        blockdevices: fc.array(
          fc
            .tuple(device, fc.array(device, { maxLength: 2 }))
            .map(([disk, children]) => ({ ...disk, children })),
          { maxLength: 4 },
        ),
      }),
      findmnt: fc.record({
        filesystems: fc.array(fields('source', 'target', 'fstype', 'fsroot', 'maj:min'), { maxLength: 4 }),
      }),
      df: fc.oneof(
        name,
        name.map(
          (mount) =>
            `Filesystem 1024-blocks Used Available Capacity Mounted on\n/dev/vda 1 1 1 1% /${mount}\n`,
        ),
      ),
      fstab: name.map((text) => `/dev/vda /${text} ext4`),
      swaps: name.map((text) => `/dev/${text}`),
      pvs: report('pv', 'vg_name', 'pv_name', 'pv_attr', 'pv_size', 'dev_size', 'pv_pe_count'),
      vgs: report('vg', 'vg_name', 'vg_extent_size', 'vg_extent_count', 'vg_free_count'),
      lvs: report('lv', 'vg_name', 'lv_name', 'lv_size', 'lv_attr', 'segtype', 'stripes'),
      superblocks: fc.array(fc.record({ device: name, text: name }), { maxLength: 3 }),
      versions: fc.dictionary(name, name, { maxKeys: 3 }),
    },
    { requiredKeys: [] },
  );

  it('the survey is one that reads, has no control character in it, and is the same of the same', () => {
    fc.assert(
      fc.property(gathered, (parts) => {
        const text = JSON.stringify({ format: 'ullage-gathered-1', at, ...parts });
        const read = readGathered(Buffer.from(text), 'gathered');
        if (!read.ok) throw new Error(JSON.stringify(read.problems));
        const made = surveyOf(read.value, 'plate-scanner');
        if (!made.ok) throw new Error(JSON.stringify(made.problems));
        const kept = surveyAsText(made.value.survey);
        expect(kept).not.toMatch(/(?!\n)\p{Cc}|\\u00[01]/u);
        const document = readDocument(kept, 'surveys/plate-scanner.json');
        const again = document.ok ? readSurvey(document.value) : document;
        expect(again.ok ? '' : again.problems).toBe('');
        const twice = surveyOf(read.value, 'plate-scanner');
        expect(twice.ok && surveyAsText(twice.value.survey)).toBe(kept);
      }),
      { numRuns: 1000 },
    );
  });
});
