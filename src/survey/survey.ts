/**
 * Surveys: what a server's own tools show to be there, at one time. `surveys/SERVER.json` is one, as
 * `schema/survey.json` has it; this is the same with sizes that can be counted with.
 */
import { err, type Outcome, ok, type Place } from '../base/problem.ts';
import { isTime } from '../estate/dates.ts';
import { type Bytes, bytes } from '../estate/size.ts';
import type { ReadDocument } from '../read/document.ts';
import type { SurveyFile } from '../read/generated/survey.ts';
import { validate } from '../read/validate.ts';

/** The version of the format that is written; what is read must say it. */
export const surveyFormat = 'ullage-survey-1';

/** What a survey may not have seen, for want of a tool or of a privilege. */
export type Unseen = SurveyFile['unseen'][number];

const seeable: Readonly<Record<Unseen, true>> = {
  devices: true,
  mounts: true,
  use: true,
  'volume-groups': true,
  fstab: true,
  superblocks: true,
};

/** Every part that a survey may not have seen. */
export const unseeable: readonly string[] = Object.keys(seeable);

export interface Survey {
  readonly server: string;
  /** RFC 3339, UTC, whole seconds. */
  readonly at: string;
  readonly tools: Readonly<Record<string, string>>;
  /** Of these nothing is said to be missing. */
  readonly unseen: readonly Unseen[];
  readonly devices: readonly SurveyedDevice[];
  readonly deviceNamed: ReadonlyMap<string, SurveyedDevice>;
  readonly groups: readonly SurveyedGroup[];
  readonly fileSystems: readonly SurveyedFileSystem[];
  /** The file it was read from. */
  readonly place: Place;
}

export interface SurveyedDevice {
  /** Under /dev: `vdb`, `vda1`, `mapper/plates-scans`. */
  readonly name: string;
  /** As lsblk says it: `disk`, `part`, `lvm`, `crypt`, `raid1`, ... */
  readonly type: string;
  /** The devices it lies on; none for a disk. */
  readonly on: readonly string[];
  readonly size: Bytes;
  readonly serial: string | undefined;
  /** As the system recognises it: `ext4`, `xfs`, `swap`, `LVM2_member`, ... */
  readonly content: string | undefined;
}

export interface SurveyedGroup {
  readonly name: string;
  readonly extent: Bytes;
  readonly extents: number;
  /** Extents that belong to no logical volume. */
  readonly free: number;
  /** How many of its physical volumes are missing. */
  readonly missing: number;
  readonly members: readonly SurveyedMember[];
  readonly logicalVolumes: readonly SurveyedLogicalVolume[];
}

export interface SurveyedMember {
  /** Undefined where it is missing. */
  readonly device: string | undefined;
  /** The physical volume's size, as the group has taken it up. */
  readonly size: Bytes | undefined;
  readonly deviceSize: Bytes | undefined;
  /** Where on the device its first extent begins; undefined where nothing said so. */
  readonly firstExtent: Bytes | undefined;
  readonly extents: number;
  readonly free: number;
}

export interface SurveyedLogicalVolume {
  readonly name: string;
  readonly size: Bytes;
  readonly layout: 'linear' | 'striped' | 'mirrored' | 'other';
  readonly stripes: number | undefined;
  readonly copies: number | undefined;
  readonly active: boolean | undefined;
}

export interface SurveyedFileSystem {
  /** The device's name, or `group/logical volume`. */
  readonly device: string;
  readonly type: string;
  /** Its own identifier (UUID), by which the same one is known on another server. */
  readonly id: string | undefined;
  /** Where it is mounted now; the first is the one it is known by. */
  readonly mounts: readonly string[];
  readonly inFstab: string | undefined;
  /** By its superblock: blocks times block size. */
  readonly size: Bytes | undefined;
  readonly blockSize: Bytes | undefined;
  /** What it keeps for itself. */
  readonly metadata: Bytes | undefined;
  /** What only the superuser may fill. */
  readonly reserved: Bytes | undefined;
  /** What `df` gives as its size, as used and as available. */
  readonly usable: Bytes | undefined;
  readonly used: Bytes | undefined;
  readonly available: Bytes | undefined;
}

/** Reads `surveys/SERVER.json`; `readJson` gives its document soonest. */
export function readSurvey(text: ReadDocument): Outcome<Survey> {
  const valid = validate('survey', text);
  if (!valid.ok) return valid;
  const { value, problems, document } = valid.value;
  if (problems.length > 0) return { ok: false, problems };
  if (!isTime(value.at)) {
    return err({
      place: document.placeOfValue(['at']),
      message: `${value.at} is not a time in the calendar`,
      advice: 'Take the survey again.',
    });
  }
  const devices = value.devices.map(
    ({ name, type, on = [], size, serial, content }): SurveyedDevice => ({
      name,
      type,
      on,
      size: counted(size),
      serial,
      content,
    }),
  );
  return ok({
    server: value.server,
    at: value.at,
    tools: value.tools,
    unseen: value.unseen,
    devices,
    deviceNamed: new Map(devices.map((device) => [device.name, device])),
    groups: value['volume-groups'].map(groupOf),
    fileSystems: value['file-systems'].map((system) => ({
      device: system.device,
      type: system.type,
      id: system.id,
      mounts: system.mounts ?? [],
      inFstab: system['in-fstab'],
      size: counted(system.size),
      blockSize: counted(system['block-size']),
      metadata: counted(system.metadata),
      reserved: counted(system.reserved),
      usable: counted(system.usable),
      used: counted(system.used),
      available: counted(system.available),
    })),
    place: document.placeOfValue([]),
  });
}

const groupOf = (group: SurveyFile['volume-groups'][number]): SurveyedGroup => ({
  name: group.name,
  extent: counted(group.extent),
  extents: group.extents,
  free: group.free,
  missing: group.missing,
  members: group.members.map((member) => ({
    device: member.device,
    size: counted(member.size),
    deviceSize: counted(member['device-size']),
    firstExtent: counted(member['first-extent']),
    extents: member.extents,
    free: member.free,
  })),
  logicalVolumes: group['logical-volumes'].map(({ name, size, layout, stripes, copies, active }) => ({
    name,
    size: counted(size),
    layout,
    stripes,
    copies,
    active,
  })),
});

function counted(text: string): Bytes;
function counted(text: string | undefined): Bytes | undefined;
function counted(text: string | undefined): Bytes | undefined {
  return text === undefined ? undefined : bytes(BigInt(text));
}
