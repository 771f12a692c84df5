/**
 * A declared estate as surveys would show it: one for each server that runs. It shares no code with what reads or
 * compares surveys. A group's first extent begins 1 MiB into its device, as pvcreate(8) of lvm2 2.03.16 has it.
 */
import type { Estate, FileSystem } from '../../src/estate/estate.ts';
import { readSurvey, type Survey } from '../../src/survey/survey.ts';
import { documentOf, valueIn } from '../estate/builder.ts';

const MiB = 1n << 20n;

interface Raw {
  readonly server: string;
  readonly devices: object[];
  readonly 'volume-groups': object[];
  readonly 'file-systems': object[];
}

/** A survey as the file has it. */
export const kept = (raw: Partial<Raw> & { readonly server: string }, more: object = {}): Survey =>
  valueIn(
    readSurvey(
      documentOf(
        JSON.stringify({
          format: 'ullage-survey-1',
          at: '2026-11-20T06:00:00Z',
          tools: {},
          unseen: [],
          devices: [],
          'volume-groups': [],
          'file-systems': [],
          ...raw,
          ...more,
        }),
        `surveys/${raw.server}.json`,
      ),
    ),
  );

export const gib = (count: number): string => `${BigInt(count) << 30n}`;

export function surveysOf(estate: Estate): readonly Survey[] {
  const serials = new Map([...estate.volumes.values()].map(({ name, id }) => [name, id?.slice(0, 20)]));
  return [...estate.servers.values()]
    .filter(({ power }) => power === 'running')
    .map((server) => {
      const held = (estate.held.get(server.name) ?? []).map(({ volume }) => volume).sort();
      const disk = new Map(held.map((volume, index) => [volume, `vd${String.fromCharCode(97 + index)}`]));
      const raw: Raw = { server: server.name, devices: [], 'volume-groups': [], 'file-systems': [] };
      const mounted = ({ type, mount, size, on, name }: FileSystem, device: string): object => ({
        device,
        type,
        id: `uuid-${on.kind}-${name}`,
        mounts: [mount],
        'in-fstab': mount,
        ...(type === 'swap' ? {} : { size: `${size}` }),
      });
      for (const name of held) {
        const volume = estate.volumes.get(name);
        if (volume === undefined) continue;
        const serial = serials.get(name);
        const device = disk.get(name) ?? '';
        const isBoot = server.boot === name && volume.fileSystem !== undefined;
        raw.devices.push({
          name: device,
          type: 'disk',
          size: `${volume.size}`,
          ...(serial === undefined ? {} : { serial }),
        });
        if (volume.fileSystem === undefined) continue;
        if (!isBoot) raw['file-systems'].push(mounted(volume.fileSystem, device));
        else {
          raw.devices.push({
            name: `${device}1`,
            type: 'part',
            on: [device],
            size: `${volume.size - 2n * MiB}`,
          });
          raw['file-systems'].push({
            ...mounted(volume.fileSystem, `${device}1`),
            size: `${volume.size - 2n * MiB}`,
          });
        }
      }
      for (const group of estate.groups.values()) {
        if (!group.members.every((member) => held.includes(member))) continue;
        const extentsOf = (size: bigint): bigint => (size - MiB) / group.extent;
        const sizes: readonly bigint[] = group.members.map(
          (member) => estate.volumes.get(member)?.size ?? 0n,
        );
        const all = sizes.reduce((sum, size) => sum + extentsOf(size), 0n);
        const whole = ({ size }: FileSystem): bigint => (size + group.extent - 1n) / group.extent;
        const given = group.fileSystems.reduce((sum, system) => sum + whole(system), 0n);
        const logical = (mount: string): string => mount.slice(1).replaceAll('/', '_');
        raw['volume-groups'].push({
          name: group.name,
          extent: `${group.extent}`,
          extents: Number(all),
          free: Number(all - given),
          missing: 0,
          members: group.members.map((member, index) => ({
            device: disk.get(member),
            'device-size': `${sizes[index]}`,
            extents: Number(extentsOf(sizes[index] ?? 0n)),
            free: 0,
          })),
          'logical-volumes': group.fileSystems.map((system) => ({
            name: logical(system.mount),
            size: `${whole(system) * group.extent}`,
            layout: 'linear',
          })),
        });
        for (const system of group.fileSystems)
          raw['file-systems'].push(mounted(system, `${group.name}/${logical(system.mount)}`));
      }
      return kept(raw);
    });
}
