/**
 * The script on the machine itself, with its own tools: on what is there, and, where the machine lets it, on disks that
 * are made for it: loop devices over sparse files, with the volume manager's real metadata, ext4, xfs and partitions.
 */
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, rmSync, truncateSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { SurveyFile } from '../../src/read/generated/survey.ts';
import { readGathered } from '../../src/survey/gathered.ts';
import { gatheringScript } from '../../src/survey/generated/script.ts';
import { surveyOf } from '../../src/survey/survey-of.ts';

const environment = { ...process.env, LC_ALL: 'C', LVM_SUPPRESS_FD_WARNINGS: '1' };

const run = (program: string, ...args: readonly string[]) =>
  spawnSync(program, args, { encoding: 'utf8', env: environment });

function must(program: string, ...args: readonly string[]): string {
  const { status, stdout, stderr } = run(program, ...args);
  if (status !== 0) throw new Error(`${program} ${args.join(' ')}: ${stderr}`);
  return stdout.trim();
}

function surveyOfThisMachine() {
  // What udev has not looked at yet, lsblk does not know of.
  run('udevadm', 'settle');
  const { status, stdout, stderr } = spawnSync('sh', ['-s'], {
    input: gatheringScript,
    encoding: 'utf8',
    env: { ...process.env },
  });
  expect([status, stderr]).toEqual([0, '']);
  const gathered = readGathered(Buffer.from(stdout), 'gathered');
  if (!gathered.ok) throw new Error(JSON.stringify(gathered.problems));
  const made = surveyOf(gathered.value, 'plate-scanner');
  if (!made.ok) throw new Error(JSON.stringify(made.problems));
  return made.value;
}

const isLinux = process.platform === 'linux';

describe.skipIf(!isLinux)('on the machine itself', () => {
  it('says of each part that it was seen, or why it was not', () => {
    const { survey, unseen } = surveyOfThisMachine();
    expect(new Set(unseen.map(({ what }) => what))).toEqual(new Set(survey.unseen));
    if (!survey.unseen.includes('devices')) {
      const sizes = run(
        'lsblk',
        '--bytes',
        '--noheadings',
        '--raw',
        '--nodeps',
        '--output',
        'NAME,SIZE',
      ).stdout;
      const shown = new Map(survey.devices.map(({ name, size }) => [name, size]));
      for (const line of sizes.trim().split('\n')) {
        const [name = '', size = ''] = line.trim().split(/\s+/);
        if (/^[sv]d[a-z]+$|^nvme/.test(name)) expect([name, shown.get(name)]).toEqual([name, size]);
      }
    }
  });
});

describe.skipIf(!isLinux || process.getuid?.() !== 0)('as the superuser', () => {
  it('leaves nothing behind where the tools keep locks, caches and hints', (context) => {
    // In a namespace of its own, where these folders are empty and nobody else writes to them.
    const empty = 'mount -t tmpfs none /etc/lvm && mount -t tmpfs none /run && mkdir -p /run/lock/lvm';
    const state = `find /run /etc/lvm -printf '%p %T@\\n'`;
    const { status, stdout } = spawnSync(
      'unshare',
      [
        '--mount',
        'sh',
        '-c',
        `${empty} || exit; ${state}; sh -s >/dev/null; code=$?; echo; ${state}; exit $code`,
      ],
      { input: gatheringScript, encoding: 'utf8' },
    );
    if (status !== 0) return context.skip('there are no mount namespaces here');
    const [before, after] = stdout.split('\n\n');
    expect(before).toContain('/run/lock/lvm');
    expect(after?.trim()).toBe(before?.trim());
  });
});

describe.skipIf(!isLinux)('as somebody without privilege', () => {
  it.skipIf(process.getuid?.() !== 0)('says what needs the superuser, and shows the rest', () => {
    const { status, stdout, stderr } = spawnSync('/bin/sh', ['-s'], {
      input: gatheringScript,
      encoding: 'utf8',
      uid: 65534,
      gid: 65534,
      cwd: '/',
    });
    expect([status, stderr]).toEqual([0, '']);
    const gathered = readGathered(Buffer.from(stdout), 'gathered');
    if (!gathered.ok) throw new Error(JSON.stringify(gathered.problems));
    for (const { why } of gathered.value.unseen ?? []) {
      expect(why).toMatch(/is not on this server|it may need the superuser/);
    }
  });
});

/** Why disks cannot be made here; undefined where they can. */
function whyNoDisks(): string | undefined {
  if (!isLinux) return 'this is no Linux';
  if (process.getuid?.() !== 0) return 'loop devices want the superuser';
  for (const tool of [
    'losetup',
    'lvm',
    'mke2fs',
    'mkfs.xfs',
    'dumpe2fs',
    'xfs_db',
    'blkid',
    'lsblk',
    'findmnt',
  ]) {
    if (run('sh', '-c', `command -v ${tool}`).status !== 0) return `${tool} is not installed`;
  }
  const folder = mkdtempSync(join(tmpdir(), 'ullage-disk-'));
  try {
    const file = join(folder, 'disk');
    writeFileSync(file, '');
    truncateSync(file, 1 << 20);
    const made = run('losetup', '--find', '--show', file);
    if (made.status !== 0) return `there are no loop devices: ${made.stderr.trim()}`;
    run('losetup', '--detach', made.stdout.trim());
    return undefined;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

const noDisks = whyNoDisks();
if (noDisks !== undefined) console.warn(`The script is not tried on disks made for it: ${noDisks}.`);

const gib = 1n << 30n;

describe.skipIf(noDisks !== undefined)('on disks that are made for it', () => {
  const folder = mkdtempSync(join(tmpdir(), 'ullage-disks-'));
  const group = `ullage-${process.pid}`;
  const devices: string[] = [];
  const mounted: string[] = [];
  let survey: SurveyFile;

  const disk = (size: bigint, ...flags: readonly string[]): string => {
    const file = join(folder, `disk-${devices.length}`);
    writeFileSync(file, '', { flag: 'a' });
    truncateSync(file, Number(size));
    const device = must('losetup', ...flags, '--find', '--show', file);
    devices.push(device);
    return basename(device);
  };
  const lvm = (command: string, ...args: readonly string[]): string => {
    const ours = devices.slice(0, 3).join(',');
    const config =
      'backup { backup = 0 archive = 0 } devices { hints = "none" } global { event_activation = 0 }';
    return must('lvm', command, '--driverloaded', 'n', '--devices', ours, '--config', config, ...args);
  };
  const mount = (device: string, target: string): string => {
    const at = join(folder, target);
    mkdirSync(at);
    must('mount', `/dev/${device}`, at);
    mounted.push(at);
    return at;
  };

  beforeAll(() => {
    for (let member = 0; member < 3; member += 1) disk(40n * gib);
    lvm('vgcreate', '--physicalextentsize', '64m', group, ...devices);
    const quiet = ['--activate', 'n', '--zero', 'n', '--wipesignatures', 'n'];
    lvm('lvcreate', ...quiet, '--size', '50g', '--name', 'scans', group);
    lvm('lvcreate', ...quiet, '--size', '10g', '--stripes', '2', '--name', 'strip-ed', group);
    lvm('lvextend', '--size', '60g', `${group}/scans`);
    survey = surveyOfThisMachine().survey;
  });

  afterAll(() => {
    for (const at of mounted.reverse()) run('umount', at);
    if (devices.length > 0) lvm('vgremove', '--yes', '--force', group);
    for (const device of devices) run('losetup', '--detach', device);
    rmSync(folder, { recursive: true, force: true });
  });

  it('the group, its members and its logical volumes are as the volume manager made them', (context) => {
    const found = survey['volume-groups'].find(({ name }) => name === group);
    if (survey.unseen.includes('volume-groups'))
      return context.skip('the volume manager does not report here');
    expect(found).toMatchObject({
      extent: `${64 << 20}`,
      // Each of 40 GiB gives 639 extents of 64 MiB, by the volume manager's own count.
      extents: 1917,
      free: 1917 - 60 * 16 - 10 * 16,
      missing: 0,
    });
    expect(found?.members.map((member) => [member['device-size'], member.extents])).toEqual(
      Array.from({ length: 3 }, () => [`${40n * gib}`, 639]),
    );
    expect(
      found?.['logical-volumes'].map(({ name, size, layout, stripes }) => [name, size, layout, stripes]),
    ).toEqual([
      ['scans', `${60n * gib}`, 'linear', undefined],
      ['strip-ed', `${10n * gib}`, 'striped', 2],
    ]);
    const holding = survey.devices.filter(({ name }) => devices.slice(0, 3).includes(`/dev/${name}`));
    expect(holding.map(({ content }) => content)).toEqual(['LVM2_member', 'LVM2_member', 'LVM2_member']);
  });

  it('file systems have the figures of their superblocks, mounted or not, and df’s where they are mounted', () => {
    const [ext, xfs] = [disk(20n * gib), disk(4n * gib)];
    must(
      'mke2fs',
      '-t',
      'ext4',
      '-q',
      '-L',
      'margaret',
      '-E',
      'lazy_itable_init=1,lazy_journal_init=1,nodiscard',
      `/dev/${ext}`,
    );
    must('mkfs.xfs', '-q', '-K', '-L', 'margaret', `/dev/${xfs}`);
    const of = (all: SurveyFile, device: string) =>
      all['file-systems'].find((each) => each.device === device);
    const before = surveyOfThisMachine().survey;
    const [extAt, xfsAt] = [mount(ext, 'soundings 100%'), mount(xfs, 'plates')];
    const { survey: after } = surveyOfThisMachine();
    expect(JSON.stringify([before, after])).not.toContain('margaret');
    for (const [all, isMounted] of [
      [before, false],
      [after, true],
    ] as const) {
      expect(of(all, ext)).toMatchObject({
        type: 'ext4',
        size: `${20n * gib}`,
        'block-size': '4096',
        reserved: `${gib}`,
      });
      expect(of(all, xfs)).toMatchObject({ type: 'xfs', size: `${4n * gib}`, 'block-size': '4096' });
      expect([of(all, ext)?.mounts, of(all, xfs)?.mounts]).toEqual(
        isMounted ? [[extAt], [xfsAt]] : [undefined, undefined],
      );
    }
    for (const [device, at] of [
      [ext, extAt],
      [xfs, xfsAt],
    ] as const) {
      const [, size = ''] = /\n\S+\s+(\d+)/.exec(must('df', '-P', at)) ?? [];
      const system = of(after, device);
      expect(system?.usable).toBe(`${BigInt(size) * 1024n}`);
      expect(BigInt(system?.metadata ?? 0) + BigInt(system?.usable ?? 0)).toBe(BigInt(system?.size ?? 0));
      // What the superblock says of its own overhead is what df then leaves out.
      expect(of(before, device)?.metadata).toBe(system?.metadata);
    }
  });

  it('a partition lies on its disk', (context) => {
    const device = disk(gib, '--partscan');
    const file = join(folder, `disk-${devices.length - 1}`);
    if (run('sh', '-c', 'command -v sfdisk').status !== 0) return context.skip('sfdisk is not installed');
    spawnSync('sfdisk', ['--quiet', file], { input: 'label: gpt\n,512MiB,L\n,,L\n', encoding: 'utf8' });
    run('partx', '--update', `/dev/${device}`);
    if (!existsSync(`/dev/${device}p1`))
      return context.skip('the kernel shows no partitions of loop devices');
    must('mke2fs', '-t', 'ext4', '-q', `/dev/${device}p1`);
    const { survey: all } = surveyOfThisMachine();
    const partition = all.devices.find(({ name }) => name === `${device}p1`);
    expect(partition).toMatchObject({ type: 'part', on: [device], size: `${512n << 20n}` });
    expect(all['file-systems'].find((each) => each.device === `${device}p1`)?.type).toBe('ext4');
  });
});
