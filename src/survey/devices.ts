/** What `lsblk` shows: the block devices, what each lies on and what is on it. */
import { byText } from '../base/order.ts';
import type { GatheredFile } from '../read/generated/gathered.ts';
import type { SurveyedDevice } from '../read/generated/survey.ts';
import { bytesIn, type Fields, nameIn, recordsIn, textIn } from './fields.ts';
import type { LeftOut } from './left-out.ts';

/** A device while the rest is being gathered: with the ways in which other tools name it. */
export interface FoundDevice {
  /** Under /dev: `vdb`, `mapper/plates-scans`. */
  readonly name: string;
  readonly type: string;
  readonly on: readonly string[];
  readonly size: string;
  readonly serial: string | undefined;
  readonly content: string | undefined;
  /** The identifier of what is on it. */
  readonly uuid: string | undefined;
}

export interface FoundDevices {
  readonly list: readonly FoundDevice[];
  readonly leftOut: readonly LeftOut[];
  /** The device of the list that a tool means by a path or a name under /dev, or by the kernel's two numbers for it. */
  readonly named: (name: string | undefined) => FoundDevice | undefined;
}

/** @param inUse the paths of the devices that something is mounted from or a volume group lies on, and what that is */
export function devicesOf(gathered: GatheredFile, inUse: ReadonlyMap<string, string>): FoundDevices {
  const nodes = [...nodesOf(gathered.lsblk?.blockdevices, undefined)];
  const kernelNames = new Map<string, string>();
  for (const { fields } of nodes) {
    const name = deviceName(fields);
    const kernel = kernelName(fields);
    if (name !== undefined && kernel !== undefined) kernelNames.set(kernel, name);
  }
  const contents = new Map(
    recordsIn(gathered.contents).map((fields) => [underDev(textIn(fields, 'name') ?? ''), fields]),
  );
  const serials = new Map((gathered.serials ?? []).map((each) => [each.device, each]));
  const found = new Map<string, FoundDevice>();
  const other = new Map<string, string>();
  const leftOut: LeftOut[] = [];
  for (const { fields, parent } of nodes) {
    const name = deviceName(fields);
    const size = bytesIn(fields, 'size');
    if (name === undefined || size === undefined) {
      leftOut.push({
        what: textIn(fields, 'name') ?? 'a device',
        why: 'its name or its size is none that can be kept',
      });
      continue;
    }
    const kernel = kernelName(fields) ?? name;
    const parentKernel = kernelName(fields, 'pkname');
    const on =
      parent ??
      kernelNames.get(parentKernel ?? '') ??
      (textIn(fields, 'type') === 'part' ? diskOf(name) : undefined);
    const before = found.get(name);
    const beside = contents.get(kernel) ?? contents.get(name) ?? {};
    found.set(name, {
      name,
      type: nameIn(fields, 'type') ?? 'disk',
      // One that lies on several is shown beneath each of them.
      on: [...new Set([...(before?.on ?? []), ...(on === undefined || on === name ? [] : [on])])].sort(
        byText,
      ),
      size,
      serial: nameIn(fields, 'serial') ?? nameIn({ ...serials.get(kernel) }, 'serial'),
      content: nameIn(fields, 'fstype') ?? nameIn(beside, 'type'),
      uuid: nameIn(fields, 'uuid') ?? nameIn(beside, 'uuid'),
    });
    for (const known of [kernel, textIn(fields, 'maj:min')]) if (known !== undefined) other.set(known, name);
  }
  const anyNamed = (name: string | undefined): FoundDevice | undefined => {
    const short = underDev(name ?? '');
    return found.get(short) ?? found.get(other.get(short) ?? '') ?? found.get(mapperName(short) ?? '');
  };
  const used = new Map([...inUse].map(([path, content]) => [anyNamed(path)?.name, content]));
  const carriers = new Set([...found.values()].flatMap(({ on }) => on));
  const list: FoundDevice[] = [];
  for (const device of [...found.values()].sort((a, b) => byText(a.name, b.name))) {
    const content = device.content ?? used.get(device.name);
    const isNeeded = used.has(device.name) || carriers.has(device.name);
    const why = inMemory(device) ?? (isNeeded ? undefined : whyNot(device));
    if (why === undefined) list.push({ ...device, content });
    else leftOut.push({ what: device.name, why });
  }
  const kept = new Map(list.map((device) => [device.name, device]));
  return {
    list: list.map((device) => ({ ...device, on: device.on.filter((below) => kept.has(below)) })),
    leftOut,
    named: (name) => kept.get(anyNamed(name)?.name ?? ''),
  };
}

export const asSurveyed = ({
  name,
  type,
  on: [first, ...more],
  size,
  serial,
  content,
}: FoundDevice): SurveyedDevice => ({
  name,
  type,
  ...(first === undefined ? {} : { on: [first, ...more] }),
  size,
  ...(serial === undefined ? {} : { serial }),
  ...(content === undefined ? {} : { content }),
});

/** A name under /dev, of a path in it; any other text as it is. */
export const underDev = (path: string): string => path.replace(/^\/dev\//, '');

/** The name under /dev that the device mapper has for `group/logical volume`. */
export function mapperName(name: string): string | undefined {
  const [group, volume, ...more] = name.split('/');
  if (group === undefined || volume === undefined || group === 'mapper' || more.length > 0) return undefined;
  return `mapper/${[group, volume].map((part) => part.replaceAll('-', '--')).join('-')}`;
}

/** `group/logical volume` of the device mapper's name for it, in which a hyphen of either is doubled. */
export function logicalVolumeName(name: string): string | undefined {
  const [, group, volume] = /^mapper\/((?:[^-]|--)+)-((?:[^-]|--)+)$/.exec(name) ?? [];
  return group === undefined || volume === undefined
    ? undefined
    : `${group.replaceAll('--', '-')}/${volume.replaceAll('--', '-')}`;
}

/** What lies on a disk for good and is no storage of an estate's. */
const images: ReadonlySet<string> = new Set(['squashfs', 'erofs', 'iso9660', 'udf', 'cramfs', 'romfs']);

export const isImage = (content: string | undefined): boolean => content !== undefined && images.has(content);

const inMemory = ({ name }: FoundDevice): string | undefined =>
  /^z?ram[0-9]+$/.test(name) ? 'it lies in memory' : undefined;

function whyNot({ type, size, content }: FoundDevice): string | undefined {
  if (size === '0') return 'it is empty';
  if (isImage(content)) return `it holds an image (${content})`;
  if (type === 'rom') return 'it is a drive for media that come and go';
  return type === 'loop' && content === undefined
    ? 'it stands for a file, and holds nothing that is mounted'
    : undefined;
}

interface Node {
  readonly fields: Fields;
  readonly parent: string | undefined;
}

function* nodesOf(list: unknown, parent: string | undefined): Generator<Node> {
  for (const fields of recordsIn(list)) {
    yield { fields, parent };
    yield* nodesOf(fields.children, deviceName(fields));
  }
}

/** Older versions do not say what a partition is of: vda1 is of vda, nvme0n1p1 of nvme0n1. */
const diskOf = (partition: string): string | undefined =>
  /^(.*[0-9])p[0-9]+$/.exec(partition)?.[1] ?? /^(.*[^0-9])[0-9]+$/.exec(partition)?.[1];

/** lsblk may have been asked for whole paths. */
function kernelName(fields: Fields, key: 'kname' | 'pkname' = 'kname'): string | undefined {
  const name = nameIn(fields, key);
  return name === undefined ? undefined : underDev(name);
}

const mapped: ReadonlySet<string> = new Set(['lvm', 'crypt', 'mpath', 'dm']);

/** The name under /dev: what the device mapper makes lies beneath mapper/. */
function deviceName(fields: Fields): string | undefined {
  const name = nameIn(fields, 'name');
  const kernel = kernelName(fields);
  if (name === undefined) return undefined;
  const isMapped =
    kernel === undefined ? mapped.has(textIn(fields, 'type') ?? '') : /^dm-[0-9]+$/.test(kernel);
  const short = underDev(name);
  return isMapped && !short.startsWith('mapper/') ? `mapper/${short}` : short;
}
