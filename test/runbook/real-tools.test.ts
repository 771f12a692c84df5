/**
 * The shipped commands, run as they are shown, by a shell: the volume manager's on loop devices over sparse files, with
 * its real metadata; the file systems' on loop devices, made, grown, shrunk and checked. Where the machine lacks a tool,
 * or loop devices, the story says so and is skipped.
 *
 * The volume manager is asked to do without the kernel's device mapper, as most test machines have none: what it would
 * activate is not activated, no volume is mirrored (lvcreate with raid1, lvconvert), and nothing is moved off a member
 * that is in use (pvmove). e2fsck is told to mend what it
 * safely can (-p), since nobody is at a terminal to be asked.
 */
import { spawnSync } from 'node:child_process';
import { chmodSync, mkdirSync, mkdtempSync, rmSync, truncateSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { ActionName } from '../../src/runbook/actions.ts';
import { examplesOf, type Fills } from '../../src/runbook/commands.ts';
import { plainProcedures, procedureFor } from '../../src/runbook/procedures.ts';

const MiB = 1n << 20n;
const GiB = 1n << 30n;

const has = (program: string): boolean => spawnSync(program, ['--help']).error === undefined;

/** Loop devices over sparse files, and a folder with the volume manager's commands bound to them. */
class Machine {
  readonly folder = mkdtempSync(join(tmpdir(), 'ullage-commands-'));
  readonly devices: string[] = [];

  static missing(): string | undefined {
    if (process.platform !== 'linux') return 'it is no Linux';
    if (process.getuid?.() !== 0) return 'loop devices want the superuser';
    if (!has('losetup')) return 'there is no losetup';
    const machine = new Machine();
    try {
      return machine.device(64n * MiB) === undefined ? 'there are no loop devices' : undefined;
    } finally {
      machine.close();
    }
  }

  /** A new device of this size. */
  device(size: bigint): string | undefined {
    const file = join(this.folder, `disk-${this.devices.length}`);
    writeFileSync(file, '');
    truncateSync(file, Number(size));
    const { status, stdout } = spawnSync('losetup', ['--find', '--show', file], { encoding: 'utf8' });
    if (status !== 0) return undefined;
    const device = stdout.trim();
    this.devices.push(device);
    return device;
  }

  must(size: bigint): string {
    const device = this.device(size);
    if (device === undefined) throw new Error('there are no loop devices left');
    return device;
  }

  /** As a provider grows a disk. */
  grow(device: string, size: bigint): void {
    truncateSync(join(this.folder, `disk-${this.devices.indexOf(device)}`), Number(size));
    this.sh(`losetup --set-capacity ${device}`);
  }

  /** As the volume manager's programs, but that nothing else on the machine is looked at, kept or activated. */
  bindVolumeManager(): void {
    const config =
      'backup { backup = 0 archive = 0 } devices { hints = "none" } global { event_activation = 0 }';
    const shared = `--driverloaded n --devices ${this.devices.join(',')} --config '${config}'`;
    for (const name of [
      'vgs',
      'pvs',
      'lvs',
      'vgcreate',
      'vgextend',
      'vgreduce',
      'vgremove',
      'vgrename',
      'vgchange',
      'vgexport',
      'vgimport',
      'pvresize',
      'lvcreate',
      'lvextend',
      'lvreduce',
      'lvremove',
    ]) {
      const more = name === 'lvcreate' ? '--activate n --zero n --wipesignatures n' : '';
      this.#bind(name, `exec lvm ${name} ${shared} ${more} "$@"`);
    }
  }

  /** Whether a device can be mounted; it is not mounted afterwards. */
  mounts(device: string): boolean {
    const at = join(this.folder, 'once');
    mkdirSync(at, { recursive: true });
    return spawnSync('mount', [device, at]).status === 0 && spawnSync('umount', [at]).status === 0;
  }

  /** What would ask somebody at a terminal does not. */
  bindCheck(): void {
    this.#bind('e2fsck', `exec ${this.sh('command -v e2fsck')} -p "$@"`);
  }

  #bind(name: string, line: string): void {
    const bin = join(this.folder, 'bin');
    mkdirSync(bin, { recursive: true });
    writeFileSync(join(bin, name), `#!/bin/sh\n${line}\n`);
    chmodSync(join(bin, name), 0o755);
  }

  sh(line: string): string {
    const { status, stdout, stderr } = spawnSync('sh', ['-c', line], {
      encoding: 'utf8',
      // What asks whether one is sure is told yes.
      input: 'y\ny\ny\n',
      env: {
        ...process.env,
        PATH: `${join(this.folder, 'bin')}:${process.env.PATH ?? ''}`,
        LC_ALL: 'C',
        LVM_SUPPRESS_FD_WARNINGS: '1',
      },
    });
    if (status !== 0) throw new Error(`${line}: ${stderr}${stdout}`);
    return stdout.trim();
  }

  /** The shipped commands of an action, run one after another; what the last of them prints. */
  carryOut(action: ActionName, fills: Fills, type?: string): string {
    const { commands } = procedureFor(plainProcedures, action, { guest: 'linux-lvm', site: undefined });
    const lines = examplesOf(commands, fills, type).map(({ command }) => command);
    expect(lines, action).not.toEqual([]);
    let printed = '';
    for (const line of lines) printed = this.sh(line);
    return printed;
  }

  close(): void {
    for (const device of this.devices) spawnSync('losetup', ['--detach', device]);
    rmSync(this.folder, { recursive: true, force: true });
  }
}

const missing = Machine.missing();
const why = (...programs: readonly string[]): string | undefined =>
  missing ??
  programs.map((each) => (has(each) ? '' : `${each} is not installed`)).find((each) => each !== '');

/** Says why a story is not told here. */
const told = (lacks: string | undefined, name: string): string =>
  lacks === undefined ? name : `${name} (skipped: ${lacks})`;

const machine = new Machine();
afterAll(() => machine.close());

const noGroups = why('lvm');
describe.skipIf(noGroups !== undefined)(told(noGroups, 'a volume group'), () => {
  const group = 'plates';
  let members: readonly string[] = [];
  const counted = (options: string): string =>
    machine.sh(`vgs --noheadings --nosuffix --units b --options ${options} ${group}`).replace(/\s+/g, ' ');
  const sizeOf = (name: string): string =>
    machine.sh(`lvs --noheadings --nosuffix --units b --options lv_size ${group}/${name}`);

  beforeAll(() => {
    members = [1, 2, 3].map(() => machine.must(1n * GiB));
    machine.device(2n * GiB);
    machine.bindVolumeManager();
  });

  it('is made with the extents declared, and shows them', () => {
    machine.carryOut('make-group', { extent: '64M', group, devices: members });
    // 1 GiB with 64 MiB extents gives 15, since the metadata takes the first mebibyte.
    expect(counted('vg_extent_size,vg_extent_count')).toBe(`${64n * MiB} 45`);
    expect(machine.carryOut('check-group', { group })).toContain('45');
  });

  it('holds logical volumes of exactly the sizes declared, end to end and in stripes', () => {
    const make = (name: string, size: string, more: Fills = {}) =>
      machine.carryOut('make-logical-volume', { size, 'logical-volume-name': name, group, ...more });
    make('scans', '512M');
    make('index', '384M', { stripes: '3' });
    expect([sizeOf('scans'), sizeOf('index')]).toEqual([`${512n * MiB}`, `${384n * MiB}`]);
    expect(machine.sh(`lvs --noheadings --options stripes ${group}/index`)).toBe('3');
  });

  it('takes up a member that has grown', () => {
    const [first = ''] = members;
    machine.grow(first, 2n * GiB);
    machine.carryOut('grow-member', { device: first });
    expect(counted('vg_extent_count')).toBe('61');
  });

  it('has logical volumes extended and reduced to exactly the size declared', () => {
    const device = `/dev/${group}/scans`;
    machine.carryOut('extend-logical-volume', { size: '1G', device });
    expect(sizeOf('scans')).toBe(`${GiB}`);
    machine.carryOut('cut-logical-volume', { size: '256M', device });
    expect(sizeOf('scans')).toBe(`${256n * MiB}`);
  });

  it('takes in a member, and lets an empty one go', () => {
    const device = machine.devices[3] ?? '';
    machine.carryOut('join-group', { group, device });
    expect(counted('vg_extent_count,pv_count')).toBe('92 4');
    machine.sh(`vgreduce ${group} ${device}`);
    expect(counted('pv_count')).toBe('3');
  });

  it('is deactivated, exported, imported and renamed', () => {
    machine.carryOut('deactivate', { group });
    machine.carryOut('export', { group });
    expect(counted('vg_exported')).toBe('exported');
    machine.carryOut('import', { group });
    machine.carryOut('rename-group', { old: group, group: 'scans' });
    expect(machine.sh('vgs --noheadings --options vg_name')).toBe('scans');
    machine.carryOut('rename-group', { old: 'scans', group });
    machine.carryOut('re-extent', { extent: '32M', group });
    expect(counted('vg_extent_size')).toBe(`${32n * MiB}`);
  });

  it('is emptied and removed', () => {
    machine.carryOut('remove-file-system', { device: `/dev/${group}/scans` });
    machine.carryOut('remove-file-system', { device: `/dev/${group}/index` });
    expect(counted('lv_count')).toBe('0');
    machine.carryOut('remove-group', { group });
    expect(machine.sh('vgs --noheadings --options vg_name')).toBe('');
  });
});

if (missing === undefined && has('e2fsck')) machine.bindCheck();

const noExt = why('mke2fs', 'resize2fs', 'e2fsck', 'tune2fs', 'dumpe2fs');
describe.skipIf(noExt !== undefined)(told(noExt, 'an ext file system'), () => {
  const numbers = (device: string) => {
    const printed = machine.sh(`dumpe2fs -h ${device} 2>/dev/null`);
    const number = (label: string) =>
      BigInt(new RegExp(`^${label}:\\s+(\\d+)$`, 'm').exec(printed)?.[1] ?? '-1');
    return {
      size: number('Block count') * number('Block size'),
      block: number('Block size'),
      blocks: number('Block count'),
      reserved: number('Reserved block count'),
    };
  };

  it.each(['ext2', 'ext3', 'ext4'])(
    '%s is made as declared, grown to the end of its device, and shrunk to a size, all of it sound',
    (type) => {
      const device = machine.must(256n * MiB);
      machine.carryOut(
        'make-file-system',
        { type, reserve: '1', 'block-size': '1024', 'inode-ratio': '8192', device },
        type,
      );
      expect(numbers(device)).toMatchObject({
        size: 256n * MiB,
        block: 1024n,
        reserved: (256n * 1024n) / 100n,
      });
      // What has been mounted since it was checked is not grown without another check.
      const mounted = machine.mounts(device);
      // Its clock counts in seconds.
      machine.sh(`tune2fs -T 20200101 ${device}`);
      machine.grow(device, 512n * MiB);
      if (mounted) expect(() => machine.sh(`resize2fs ${device}`)).toThrow(/run 'e2fsck -f/);
      machine.carryOut('grow-unmounted', { device }, type);
      expect(numbers(device).size).toBe(512n * MiB);
      machine.carryOut('set-reserve', { reserve: '2.5', device }, type);
      machine.carryOut('shrink-unmounted', { device, size: '192M' }, type);
      expect(numbers(device).size).toBe(192n * MiB);
      machine.sh(`e2fsck -f ${device}`);
      machine.carryOut('make-anew', { type, device }, type);
      expect(numbers(device).size).toBe(512n * MiB);
    },
  );

  it('ext4 is mounted, grown while it is, looked at and unmounted', (context) => {
    const device = machine.must(256n * MiB);
    const mount = join(machine.folder, "a captain's plates");
    mkdirSync(mount);
    machine.carryOut('make-file-system', { type: 'ext4', device }, 'ext4');
    if (!machine.mounts(device)) return context.skip('nothing can be mounted here');
    machine.carryOut('mount', { device, mount });
    try {
      machine.grow(device, 512n * MiB);
      machine.carryOut('see-device', {});
      machine.carryOut('grow-mounted', { device, mount }, 'ext4');
    } catch (error) {
      // Growing a mounted ext4 wants CAP_SYS_RESOURCE, which a container may not have.
      if (`${error}`.includes('Permission denied to resize'))
        return context.skip('the kernel does not let us');
      throw error;
    } finally {
      machine.carryOut('unmount', { mount });
    }
    expect(numbers(device).size).toBe(512n * MiB);
    expect(spawnSync('findmnt', [mount]).status).toBe(1);
  });
});

const noXfs = why('mkfs.xfs', 'xfs_growfs', 'xfs_repair');
describe.skipIf(noXfs !== undefined)(told(noXfs, 'an xfs file system'), () => {
  it('is made as declared, mounted, grown to the end of its device, and sound', (context) => {
    const device = machine.must(400n * MiB);
    const mount = join(machine.folder, 'scans');
    mkdirSync(mount);
    machine.carryOut(
      'make-file-system',
      { type: 'xfs', 'block-size': '1024', 'reverse-map': '0', device },
      'xfs',
    );
    if (!machine.mounts(device)) return context.skip('nothing can be mounted here');
    machine.carryOut('mount', { device, mount });
    try {
      machine.grow(device, 800n * MiB);
      machine.carryOut('grow-mounted', { device, mount }, 'xfs');
      const printed = machine.sh(`xfs_growfs -n '${mount}'`);
      expect(printed).toMatch(/bsize=1024 +blocks=819200,/);
      expect(printed).toContain('rmapbt=0');
    } finally {
      machine.carryOut('unmount', { mount });
    }
    machine.sh(`xfs_repair -n ${device}`);
    // What would overwrite is refused unless the step is one that says so.
    expect(() => machine.carryOut('make-file-system', { type: 'xfs', device }, 'xfs')).toThrow(
      /appears to contain/,
    );
    machine.carryOut('make-anew', { type: 'xfs', device }, 'xfs');
  });
});

const noSwap = why('mkswap');
describe.skipIf(noSwap !== undefined)(told(noSwap, 'swap space'), () => {
  it('is made', () => {
    const device = machine.must(64n * MiB);
    machine.carryOut('make-file-system', { type: 'swap', device }, 'swap');
    expect(machine.sh(`blkid -p -s TYPE -o value ${device}`)).toBe('swap');
  });
});

const noBtrfs = why('mkfs.btrfs', 'btrfs');
describe.skipIf(noBtrfs !== undefined)(told(noBtrfs, 'a btrfs file system'), () => {
  it('is made', () => {
    const device = machine.must(512n * MiB);
    machine.carryOut('make-file-system', { type: 'btrfs', device }, 'btrfs');
    expect(machine.sh(`blkid -p -s TYPE -o value ${device}`)).toBe('btrfs');
  });
});
