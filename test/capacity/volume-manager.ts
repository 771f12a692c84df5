/**
 * The volume manager of this machine, on loop devices over sparse files: it writes and reads its metadata, and no
 * device mapper is needed (`--driverloaded n`). It wants root, loop devices and lvm2.
 */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, truncateSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** In the extents of the group: making, growing and removing, one command after another. */
export type Step =
  | { readonly make: string; readonly extents: number }
  | { readonly grow: string; readonly extents: number }
  | { readonly cut: string; readonly extents: number }
  | { readonly remove: string };

export interface GroupCase {
  /** The extents of each member. */
  readonly members: readonly number[];
  /** 1 is linear. */
  readonly stripes: number;
  readonly steps: readonly Step[];
}

/** For each lane of a volume, its runs as `member:first-last`, in order. */
export type Lanes = readonly (readonly string[])[];

export interface GroupResult {
  /** After all steps, those that were refused left out; by name. */
  readonly lanes: Readonly<Record<string, Lanes>>;
  /** By the number of the step: the extents it found no place for, as the program prints them. */
  readonly refused: Readonly<Record<string, string>>;
  /** What `--extents 100%FREE` then gives one more volume. */
  readonly left: number;
}

const environment = { ...process.env, LVM_SUPPRESS_FD_WARNINGS: '1', LC_ALL: 'C' };

function run(program: string, args: readonly string[]): { ok: boolean; out: string; err: string } {
  const { status, stdout, stderr } = spawnSync(program, args, { encoding: 'utf8', env: environment });
  return { ok: status === 0, out: stdout ?? '', err: stderr ?? '' };
}

/** Such as `2.03.16(2) (2022-05-18)`; `undefined` where there is none. */
export const volumeManagerVersion = (): string | undefined =>
  /LVM version:\s+(.+)/.exec(run('lvm', ['version']).out)?.[1];

export class VolumeManager {
  readonly #folder = mkdtempSync(join(tmpdir(), 'ullage-lvm-'));
  readonly #devices: string[] = [];
  #count = 0;

  /** Why it cannot be had here, or nothing where it can. */
  static missing(): string | undefined {
    if (process.getuid?.() !== 0) return 'loop devices want the superuser';
    if (volumeManagerVersion() === undefined) return 'lvm2 is not installed';
    const manager = new VolumeManager();
    try {
      return manager.#device(0, 64n << 20n) === undefined ? 'there are no loop devices' : undefined;
    } finally {
      manager.close();
    }
  }

  close(): void {
    for (const device of this.#devices) run('losetup', ['--detach', device]);
    rmSync(this.#folder, { recursive: true, force: true });
  }

  /** Makes a group of devices of these sizes; the program's own complaint where it refuses. */
  extentsOf(device: bigint, extent: bigint): number | string {
    const path = this.#device(0, device);
    if (path === undefined) return 'no loop device';
    const group = this.#name();
    const made = this.#lvm('vgcreate', '--physicalextentsize', `${extent}b`, group, path);
    const counted = this.#lvm('vgs', '--noheadings', '--options', 'vg_extent_count', group);
    this.#lvm('vgremove', '--yes', '--force', group);
    // A refused group may have made its member already, which would keep its size.
    this.#lvm('pvremove', '--yes', '--force', path);
    return made.ok ? Number(counted.out.trim()) : complaint(made.err);
  }

  place({ members, stripes, steps }: GroupCase): GroupResult {
    const devices = members.map((extents, index) => this.#device(index, mebibytes(1 + 4 * extents)) ?? '');
    const group = this.#name();
    this.#must('vgcreate', '--physicalextentsize', '4m', group, ...devices);
    const refused: Record<string, string> = {};
    for (const [index, step] of steps.entries()) {
      const done = this.#step(group, stripes, step);
      if (!done.ok) refused[`${index}`] = complaint(done.err);
    }
    const lanes = this.#lanes(group, devices);
    const rest = this.#lvm(...this.#create(group, stripes, 'the-rest', '100%FREE'));
    const left = rest.ok ? Number(/^\s*(\d+)/.exec(this.#sizeOf(group, 'the-rest'))?.[1]) : 0;
    this.#must('vgremove', '--yes', '--force', group);
    for (const device of devices) this.#must('pvremove', '--yes', '--force', device);
    return { lanes, refused, left };
  }

  #step(group: string, stripes: number, step: Step) {
    if ('make' in step) return this.#lvm(...this.#create(group, stripes, step.make, `${step.extents}`));
    if ('grow' in step) return this.#lvm('lvextend', '--extents', `${step.extents}`, `${group}/${step.grow}`);
    if ('cut' in step)
      return this.#lvm('lvreduce', '--force', '--extents', `${step.extents}`, `${group}/${step.cut}`);
    return this.#lvm('lvremove', '--yes', '--force', `${group}/${step.remove}`);
  }

  #create(group: string, stripes: number, name: string, extents: string): [string, ...string[]] {
    const quiet = ['--activate', 'n', '--zero', 'n', '--wipesignatures', 'n'];
    const striped = stripes > 1 ? ['--stripes', `${stripes}`] : [];
    return ['lvcreate', ...quiet, ...striped, '--extents', extents, '--name', name, group];
  }

  #sizeOf(group: string, name: string): string {
    const options = ['--noheadings', '--units', '4m', '--nosuffix', '--options', 'lv_size'];
    return this.#lvm('lvs', ...options, `${group}/${name}`).out;
  }

  #lanes(group: string, devices: readonly string[]): Record<string, string[][]> {
    const options = [
      '--noheadings',
      '--options',
      'lv_name,seg_start_pe,seg_pe_ranges',
      '--sort',
      'lv_name,seg_start_pe',
    ];
    const lanes: Record<string, string[][]> = {};
    for (const line of this.#must('lvs', '--segments', ...options, group).split('\n')) {
      const [name, , ...ranges] = line.trim().split(/\s+/);
      if (name === undefined || name === '') continue;
      const of = lanes[name] ?? ranges.map(() => []);
      lanes[name] = of;
      for (const [lane, range] of ranges.entries()) {
        const [device = '', extents = ''] = range.split(':');
        of[lane]?.push(`${devices.indexOf(device)}:${extents}`);
      }
    }
    return lanes;
  }

  /** The loop device at this place, over a sparse file of this size. */
  #device(index: number, size: bigint): string | undefined {
    const file = join(this.#folder, `member-${index}`);
    writeFileSync(file, '', { flag: 'a' });
    truncateSync(file, Number(size));
    const known = this.#devices[index];
    if (known !== undefined) {
      run('losetup', ['--set-capacity', known]);
      return known;
    }
    const made = run('losetup', ['--find', '--show', file]);
    if (!made.ok) return undefined;
    const device = made.out.trim();
    this.#devices[index] = device;
    return device;
  }

  #name(): string {
    this.#count += 1;
    return `ullage-${process.pid}-${this.#count}`;
  }

  #lvm(command: string, ...args: readonly string[]) {
    // Nothing beside our own devices is looked at, and nothing is kept of what was done.
    const devices = this.#devices.join(',');
    const config =
      'backup { backup = 0 archive = 0 } devices { hints = "none" } global { event_activation = 0 }';
    return run('lvm', [command, '--driverloaded', 'n', '--devices', devices, '--config', config, ...args]);
  }

  #must(command: string, ...args: readonly string[]): string {
    const { ok, out, err } = this.#lvm(command, ...args);
    if (!ok) throw new Error(`${command} ${args.join(' ')}: ${err}`);
    return out;
  }
}

const mebibytes = (count: number): bigint => BigInt(count) << 20n;

/** What it says of why, without its remarks about the missing device mapper. */
const complaint = (err: string): string =>
  err
    .split('\n')
    .map((line) => line.trim())
    .filter((line) => line !== '' && !line.startsWith('WARNING') && !line.startsWith('Run `'))
    .at(-1) ?? 'refused';
