/** What mounts, `df`, fstab and superblocks tell of the file systems, put together by device. */

import { byText } from '../base/order.ts';
import { err, type Outcome, ok } from '../base/problem.ts';
import { type DfRow, readDf } from '../capacity/df.ts';
import type { GatheredFile } from '../read/generated/gathered.ts';
import type { SurveyedFileSystem } from '../read/generated/survey.ts';
import { type FoundDevice, type FoundDevices, isImage, logicalVolumeName } from './devices.ts';
import { type Fields, nameIn, pathOf, recordsIn, textIn } from './fields.ts';
import type { LeftOut } from './left-out.ts';
import { readSuperblock } from './superblock.ts';

/** A mount of a block device. */
export interface Mount {
  readonly device: string;
  readonly numbers: string | undefined;
  readonly target: string;
  readonly type: string;
}

/** The mounts that a survey may keep, whatever else was gathered. */
export function mountsOf(gathered: GatheredFile): {
  readonly mounts: readonly Mount[];
  readonly leftOut: readonly LeftOut[];
} {
  const mounts: Mount[] = [];
  const leftOut: LeftOut[] = [];
  const isTold = targetsToTell(gathered);
  for (const fields of nestedIn(gathered.findmnt?.filesystems)) {
    const [target, type] = [pathOf(textIn(fields, 'target')), nameIn(fields, 'fstype')];
    // A part of a file system that is mounted by itself is told in brackets.
    const [, device = '', part] = /^(\/dev\/[^[]*)(?:\[(.*)\])?$/.exec(nameIn(fields, 'source') ?? '') ?? [];
    const root = textIn(fields, 'fsroot') ?? part ?? '/';
    if (device === '' || type === undefined || isImage(type)) {
      leftOut.push({ what: 'mounts', why: 'they are of no block device that belongs to an estate' });
    } else if (target === undefined || !isTold(target)) {
      leftOut.push({ what: 'mounts', why: 'their names are not for a survey' });
    } else if (root !== '/' && type !== 'btrfs') {
      leftOut.push({ what: target, why: 'it shows a part of what is mounted elsewhere' });
    } else {
      mounts.push({ device, numbers: textIn(fields, 'maj:min'), target, type });
    }
  }
  return { mounts, leftOut };
}

/** What the script leaves out is left out here, too: not everything that is added comes from it. */
const targetsToTell =
  ({ asked = [] }: GatheredFile) =>
  (target: string): boolean =>
    !/^\/(run|media|snap|var\/run|var\/snap)\//.test(target) &&
    !/^\/var\/lib\/(containerd|containers|docker|kubelet|lxc|lxd|machines)\//.test(target) &&
    (asked.includes('homes') || !target.startsWith('/home/'));

export const swapPaths = ({ swaps = '' }: GatheredFile): readonly string[] =>
  swaps.split('\n').filter((line) => line.startsWith('/dev/'));

/** A file system while it is being put together. */
interface Found {
  readonly device: FoundDevice;
  type: string;
  readonly mounts: string[];
  inFstab?: string;
  figures?: Pick<SurveyedFileSystem, 'size' | 'block-size' | 'metadata' | 'reserved'>;
  use?: Pick<SurveyedFileSystem, 'usable' | 'used' | 'available'>;
}

export interface FoundFileSystems {
  readonly list: readonly SurveyedFileSystem[];
  readonly leftOut: readonly LeftOut[];
}

export function fileSystemsOf(
  gathered: GatheredFile,
  devices: FoundDevices,
  mounts: readonly Mount[],
  rows: readonly DfRow[],
): FoundFileSystems {
  const leftOut: LeftOut[] = [];
  const found = new Map<string, Found>();
  for (const device of devices.list) {
    const { content } = device;
    if (content !== undefined && isFileSystem(content)) {
      found.set(device.name, { device, type: content, mounts: [] });
    }
  }
  const of = (path: string | undefined, type: string): Found | undefined => {
    const device = devices.named(path);
    if (device === undefined) return undefined;
    const system = found.get(device.name) ?? { device, type, mounts: [] };
    found.set(device.name, system);
    return system;
  };
  for (const { device, numbers, target, type } of mounts) {
    const system = of(device, type) ?? of(numbers, type);
    if (system === undefined)
      leftOut.push({ what: target, why: 'its device is not among those that are shown' });
    else system.mounts.push(target);
  }
  for (const path of swapPaths(gathered)) of(path, 'swap')?.mounts.push('swap');
  const byMount = new Map([...found.values()].flatMap((each) => each.mounts.map((mount) => [mount, each])));
  const byId = new Map([...found.values()].map((each) => [each.device.uuid, each]));
  const isTold = targetsToTell(gathered);
  for (const { source, target, type } of fstabOf(gathered)) {
    const place = type === 'swap' ? 'swap' : pathOf(target);
    if (place === undefined || !isTold(place) || isImage(type)) continue;
    const id = /^(?:UUID=|\/dev\/disk\/by-uuid\/)(.+)$/.exec(source)?.[1];
    const device = devices.named(source);
    const system =
      (id === undefined ? undefined : byId.get(id)) ??
      (device === undefined ? undefined : found.get(device.name)) ??
      (place === 'swap' ? undefined : byMount.get(place));
    if (system === undefined) leftOut.push({ what: `fstab's ${place}`, why: 'its device is not there' });
    else system.inFstab ??= place;
  }
  for (const { device, text } of gathered.superblocks ?? []) {
    const system = found.get(devices.named(device)?.name ?? '');
    const superblock = readSuperblock(text);
    if (system === undefined || superblock === undefined) continue;
    const { size, blockSize, metadata, reserved } = superblock;
    system.figures = {
      size,
      'block-size': blockSize,
      ...(metadata === undefined ? {} : { metadata }),
      ...(reserved === undefined ? {} : { reserved }),
    };
  }
  for (const { mount, use } of rows) {
    const system = byMount.get(mount);
    if (system !== undefined && use !== undefined) {
      system.use = { usable: `${use.size}`, used: `${use.used}`, available: `${use.available}` };
    }
  }
  // Of one that lies on several devices, the one that it is mounted by stands for all.
  const isTwin = ({ type, mounts: [mount], device }: Found): boolean =>
    type === 'btrfs' && mount === undefined && mountedIds.has(device.uuid);
  const mountedIds = new Set(
    [...found.values()].flatMap((each) => (each.mounts.length > 0 ? [each.device.uuid] : [])),
  );
  return {
    list: [...found.values()]
      .filter((each) => !isTwin(each))
      .map(asSurveyed)
      .sort((a, b) => byText(a.device, b.device)),
    leftOut,
  };
}

function asSurveyed({ device, type, mounts, inFstab, figures, use }: Found): SurveyedFileSystem {
  // The one it is known by first: that which it has after every start, then in the order of the names.
  const first = inFstab !== undefined && mounts.includes(inFstab) ? [inFstab] : [];
  const inOrder = [...new Set([...first, ...mounts.sort(byText)])];
  return {
    device: device.type === 'lvm' ? (logicalVolumeName(device.name) ?? device.name) : device.name,
    type,
    ...(device.uuid === undefined ? {} : { id: device.uuid }),
    ...(inOrder.length === 0 ? {} : { mounts: inOrder }),
    ...(inFstab === undefined ? {} : { 'in-fstab': inFstab }),
    ...figures,
    // What df does not count is what it keeps for itself, whatever its superblock says.
    ...(figures?.size === undefined || use?.usable === undefined || BigInt(use.usable) > BigInt(figures.size)
      ? {}
      : { metadata: `${BigInt(figures.size) - BigInt(use.usable)}` }),
    ...use,
  };
}

/** The lines of `df -P`, those of no mount point that a survey keeps among them. */
export function useOf({ df = '' }: GatheredFile): Outcome<readonly DfRow[]> {
  if (df.trim() === '') return ok([]);
  const rows = readDf(df, 'df');
  return rows.ok ? rows : err(...rows.problems);
}

/** Members of a group or of an array, what is encrypted, and the like are no file systems. */
const isFileSystem = (content: string): boolean =>
  !isImage(content) && !/_member$|^crypto_|^BitLocker$|^DM_|^bcache$|^drbd$|^swsuspend$|^jbd$/.test(content);

interface FstabLine {
  readonly source: string;
  readonly target: string;
  readonly type: string;
}

function fstabOf({ fstab = '' }: GatheredFile): readonly FstabLine[] {
  return fstab.split('\n').flatMap((line) => {
    const [source = '', target = '', type = ''] = line
      .trim()
      .split(/[ \t]+/)
      .map(unescaped);
    return target === '' || source.startsWith('#') ? [] : [{ source, target, type }];
  });
}

/** fstab(5) writes a space as \040, a tab as \011. */
const unescaped = (text: string): string =>
  text.replace(/\\([0-7]{3})/g, (_, digits: string) => String.fromCharCode(Number.parseInt(digits, 8)));

function* nestedIn(list: unknown): Generator<Fields> {
  for (const fields of recordsIn(list)) {
    yield fields;
    yield* nestedIn(fields.children);
  }
}
