/**
 * A declared estate as the servers' own tools and the provider's list would tell it. It shares no code with what reads
 * either. The outputs' shapes are those of util-linux 2.38.1 and (with sizes as text, and fewer columns) 2.31.1, of
 * lvm2 2.03.16, GNU df 9.1, e2fsprogs 1.47.0 and xfsprogs 6.1.0, as the fixtures beside this file hold them. A group's
 * first extent begins 1 MiB into its device, as pvcreate(8) of lvm2 2.03.16 has it. What a file system takes for itself
 * is invented: 1 % of it.
 */
import type { Estate, FileSystem, Server } from '../../src/estate/estate.ts';

const MiB = 1n << 20n;
const block = 4096n;

/** Which version's shape the outputs have, and what only other tools know. */
export interface Shape {
  /** Sizes are text, and no column names what a device lies on but by nesting. */
  readonly isOld: boolean;
  /** lsblk has no udev to ask: contents come from blkid, serial numbers from the kernel. */
  readonly isBare: boolean;
  /** A boot volume has a small first partition that holds nothing. */
  readonly hasBootPartition: boolean;
  /** The host numbers the disks of each server, and shows no identifier. */
  readonly isNumbered?: boolean;
  /** A group's members lie each in a partition, behind another one of a gibibyte that holds nothing. */
  readonly hasOtherPartitions?: boolean;
  /** In MiB: pvcreate(8) was told an alignment, or more room for metadata, than it takes by itself. */
  readonly firstExtent?: number;
}

export interface PlayedSurvey {
  readonly server: string;
  /** What the gathering script prints there. */
  readonly text: string;
}

interface Node {
  readonly name: string;
  readonly kname: string;
  readonly type: 'disk' | 'part' | 'lvm';
  readonly size: bigint;
  readonly serial: string | undefined;
  readonly fstype: string | undefined;
  readonly uuid: string | undefined;
  readonly children: Node[];
}

interface Mounted {
  readonly system: FileSystem;
  readonly path: string;
  readonly size: bigint;
  readonly uuid: string;
}

/** One for each server that runs: one that is stopped runs no script. */
export const playServers = (estate: Estate, shape: Shape): readonly PlayedSurvey[] =>
  [...estate.servers.values()]
    .filter(({ power }) => power === 'running')
    .map((server) => ({ server: server.name, text: JSON.stringify(gathered(estate, server, shape)) }));

const numbered = (number: number, digits: number): string => `${number}`.padStart(digits, '0');

function gathered(estate: Estate, server: Server, shape: Shape): object {
  const held = (estate.held.get(server.name) ?? []).map(({ volume }) => volume).sort();
  const at = [...estate.servers.keys()].indexOf(server.name);
  const mounted: Mounted[] = [];
  const disks = new Map<string, Node>();
  /** What a group has of each volume. */
  const beds = new Map<string, Node>();
  const lay = (system: FileSystem, path: string, size: bigint): Pick<Node, 'fstype' | 'uuid'> => {
    const uuid = `5af6e33f-b9d6-437d-${numbered(at, 4)}-${numbered(mounted.length, 12)}`;
    mounted.push({ system, path, size, uuid });
    return { fstype: system.type, uuid };
  };
  const empty = { serial: undefined, fstype: undefined, uuid: undefined };
  for (const [index, name] of held.entries()) {
    const volume = estate.volumes.get(name);
    if (volume === undefined) continue;
    const { size, fileSystem, id } = volume;
    const device = `vd${String.fromCharCode(97 + index)}`;
    const disk = { ...empty, name: device, kname: device, type: 'disk' as const, size };
    // VIRTIO_BLK_ID_BYTES: at most the first 20 bytes of the identifier.
    const serial = shape.isNumbered
      ? `drive-scsi${index}`
      : id === undefined
        ? undefined
        : Buffer.from(id).subarray(0, 20).toString();
    const isGrouped = estate.groupOf.has(name);
    if (server.boot === name && fileSystem !== undefined) {
      const first = shape.hasBootPartition ? MiB : 0n;
      const root = `${device}${shape.hasBootPartition ? 2 : 1}`;
      const rest = size - 2n * MiB - first;
      const part = (called: string, of: bigint, on: Partial<Node>): Node => ({
        ...empty,
        ...on,
        name: called,
        kname: called,
        type: 'part',
        size: of,
        children: [],
      });
      const children = [
        ...(shape.hasBootPartition ? [part(`${device}1`, first, {})] : []),
        part(root, rest, lay(fileSystem, `/dev/${root}`, rest)),
      ];
      disks.set(name, { ...disk, serial, children });
    } else {
      const content = isGrouped
        ? { fstype: 'LVM2_member', uuid: `member-${name}` }
        : fileSystem === undefined
          ? {}
          : lay(fileSystem, `/dev/${device}`, size);
      const isParted = isGrouped && shape.hasOtherPartitions === true;
      const parts = isParted
        ? ([MiB << 10n, size - (MiB << 10n) - 2n * MiB] as const).map((of, number): Node => {
            const called = `${device}${number + 1}`;
            const on = number === 0 ? {} : content;
            return { ...empty, ...on, name: called, kname: called, type: 'part', size: of, children: [] };
          })
        : [];
      disks.set(name, { ...disk, ...(isParted ? {} : content), serial, children: parts });
    }
    const whole = disks.get(name);
    const bed = isGrouped ? (whole?.children[1] ?? whole) : whole;
    if (bed !== undefined) beds.set(name, bed);
  }
  const pv: object[] = [];
  const vg: object[] = [];
  const lv: object[] = [];
  let mapped = 0;
  for (const group of estate.groups.values()) {
    const members = group.members.flatMap((member) => beds.get(member) ?? []);
    if (members.length !== group.members.length) continue;
    const { extent } = group;
    const first = MiB * BigInt(shape.firstExtent ?? 1);
    const free = members.map(({ size }) => (size - first) / extent);
    const all = free.reduce((sum, each) => sum + each, 0n);
    for (const [index, system] of group.fileSystems.entries()) {
      const called = `lv-${index}`;
      const wanted = (system.size + extent - 1n) / extent;
      const lanes = BigInt(members.length);
      // lvcreate(8) rounds up to whole rows of a striped one; here every member has its part in one that is not linear.
      const extents = group.layout.kind === 'striped' ? ((wanted + lanes - 1n) / lanes) * lanes : wanted;
      const size = extents * extent;
      const mapper = `${group.name.replaceAll('-', '--')}-${called.replaceAll('-', '--')}`;
      const mappedNode = (name: string, of: bigint, more: Partial<Node>): Node => ({
        ...empty,
        name,
        kname: `dm-${mapped++}`,
        type: 'lvm',
        size: of,
        children: [],
        ...more,
      });
      const node = mappedNode(mapper, size, lay(system, `/dev/mapper/${mapper}`, size));
      const row = (segtype: string, stripes: bigint, lv_attr = '-wi-ao----'): number =>
        lv.push({
          vg_name: group.name,
          lv_name: called,
          lv_size: `${size}`,
          lv_attr,
          segtype,
          stripes: `${stripes}`,
        });
      const take = (of: number, count: bigint): void => {
        free[of] = (free[of] ?? 0n) - count;
      };
      switch (group.layout.kind) {
        case 'linear': {
          let open = extents;
          for (const [of, member] of members.entries()) {
            const here = open < (free[of] ?? 0n) ? open : (free[of] ?? 0n);
            if (here === 0n) continue;
            open -= here;
            take(of, here);
            // One that lies on several is shown beneath each; so is a row of lvs for each run of its extents.
            member.children.push(node);
            row('linear', 1n);
          }
          break;
        }
        case 'striped':
          for (const [of, member] of members.entries()) {
            take(of, extents / lanes);
            member.children.push(node);
          }
          row('striped', lanes);
          break;
        case 'mirrored':
          // Each image, and an extent that tells of it, is a device of its own; lvs names them only when asked.
          for (const [of, member] of members.entries()) {
            take(of, extents + 1n);
            member.children.push(
              mappedNode(`${mapper}_rmeta_${of}`, extent, { children: [node] }),
              mappedNode(`${mapper}_rimage_${of}`, size, { children: [node] }),
            );
          }
          row('raid1', lanes, 'rwi-aor---');
      }
    }
    for (const [of, { name, size }] of members.entries()) {
      const extents = (size - first) / extent;
      pv.push({
        vg_name: group.name,
        pv_name: `/dev/${name}`,
        pv_attr: 'a--',
        pv_size: `${extents * extent}`,
        dev_size: `${size}`,
        // Asked for since the script asks for it; the older answers have none.
        ...(shape.firstExtent === undefined ? {} : { pe_start: `${first}` }),
        pv_pe_count: `${extents}`,
        pv_pe_alloc_count: `${extents - (free[of] ?? 0n)}`,
      });
    }
    vg.push({
      vg_name: group.name,
      vg_extent_size: `${extent}`,
      vg_extent_count: `${all}`,
      vg_free_count: `${free.reduce((sum, each) => sum + each, 0n)}`,
    });
  }
  const nodes = [...disks.values()].flatMap(function whole(node): readonly Node[] {
    return [node, ...node.children.flatMap(whole)];
  });
  const files = mounted.filter(({ system }) => system.type !== 'swap');
  return {
    format: 'ullage-gathered-1',
    at: '2026-11-20T06:00:00Z',
    versions: { lsblk: `lsblk from util-linux ${shape.isOld ? '2.31.1' : '2.38.1'}` },
    lsblk: { blockdevices: [...disks.values()].map((disk) => lsblkRow(disk, undefined, shape)) },
    ...(shape.isBare
      ? {
          contents: nodes.flatMap(({ name, type, fstype, uuid }) =>
            fstype === undefined
              ? []
              : [{ name: `/dev/${type === 'lvm' ? 'mapper/' : ''}${name}`, uuid, type: fstype }],
          ),
          serials: nodes.flatMap(({ kname, serial }) =>
            serial === undefined ? [] : [{ device: kname, serial }],
          ),
        }
      : {}),
    findmnt: {
      filesystems: files.map(({ path, system: { mount, type } }) => ({
        source: path,
        fsroot: '/',
        target: mount,
        fstype: type,
      })),
    },
    df: [
      'Filesystem     1024-blocks     Used Available Capacity Mounted on',
      ...files.map(({ path, size, system: { mount } }) => {
        const usable = (size - size / 100n) / 1024n;
        return `${path} ${usable} 24 ${usable - 24n} 1% ${mount}`;
      }),
    ].join('\n'),
    swaps: mounted.flatMap(({ path, system }) => (system.type === 'swap' ? [path] : [])).join('\n'),
    fstab: mounted
      .map(({ uuid, system: { mount, type } }) =>
        type === 'swap' ? `UUID=${uuid} none swap` : `UUID=${uuid} ${mount} ${type}`,
      )
      .join('\n'),
    pvs: { report: [{ pv }] },
    vgs: { report: [{ vg }] },
    lvs: { report: [{ lv }] },
    superblocks: files.flatMap(({ path, size, system: { type } }) => {
      const text = superblock(type, size / block);
      return text === undefined ? [] : [{ device: path, text }];
    }),
  };
}

/** What is not there is null. */
function lsblkRow(node: Node, parent: string | undefined, shape: Shape): object {
  const { name, kname, type, size, serial, fstype, uuid, children } = node;
  return {
    name,
    kname,
    ...(shape.isOld ? {} : { pkname: parent ?? null }),
    type,
    size: shape.isOld ? `${size}` : Number(size),
    serial: shape.isBare ? null : (serial ?? null),
    fstype: shape.isBare ? null : (fstype ?? null),
    uuid: shape.isBare ? null : (uuid ?? null),
    ...(children.length === 0 ? {} : { children: children.map((each) => lsblkRow(each, kname, shape)) }),
  };
}

/** The figures that dumpe2fs -h and xfs_db print; undefined for other types. */
function superblock(type: string, blocks: bigint): string | undefined {
  if (type === 'xfs')
    return `blocksize = ${block}\ndblocks = ${blocks}\nlogstart = 524294\nlogblocks = 16384`;
  if (type !== 'ext4' && type !== 'ext2') return undefined;
  return [
    `Block count:              ${blocks}`,
    `Reserved block count:     ${blocks / 20n}`,
    `Block size:               ${block}`,
  ].join('\n');
}

/**
 * The provider's list as JSON: all volumes, those of stopped servers and of none among them, in its own words. One that
 * several servers hold is there once for each where it has an identifier, by which its rows are known for one volume, and
 * names them all otherwise.
 */
export const playProvider = (estate: Estate): string =>
  JSON.stringify({
    disks: [...estate.volumes.values()].flatMap(({ name, id, size, tier, site }) => {
      const holders = (estate.holders.get(name) ?? []).map(({ server }) => server);
      const [one, another] = holders;
      const machines = another === undefined ? [one] : id === undefined ? [holders] : holders;
      return machines.map((machine) => ({
        uid: id,
        label: name,
        bytes: `${size}`,
        class: `class-${tier}`,
        zone: site,
        machine,
      }));
    }),
  });

/** Which of its fields is which, as `ullage.yaml` would say it. */
export const providerFields = {
  volumes: {
    rows: '/disks',
    id: '/uid',
    name: '/label',
    size: { field: '/bytes', unit: 'B' },
    tier: '/class',
    site: '/zone',
    server: '/machine',
  },
  tiers: { 'class-bulk': 'bulk', 'class-steady': 'steady' },
} as const;
