/**
 * The device names by which surveys know what is declared. A name under /dev holds until its server starts anew or the
 * disk is detached, and is only told where the survey agrees with what main declares, size and all.
 */
import { type Estate, type FileSystem, subjectKey } from '../estate/estate.ts';
import { exactSize } from '../estate/size.ts';
import { contentsOf } from '../survey/contents.ts';
import { disksUnder, matchServer, systemAt, volumesByShownId } from '../survey/match.ts';
import type { Survey, SurveyedDevice } from '../survey/survey.ts';

/** A volume as a server shows it. */
export interface ShownDisk {
  readonly volume: string;
  readonly disk: SurveyedDevice;
  readonly survey: Survey;
}

export const devicePath = (name: string): string => `/dev/${name}`;

/** `plates-1 is /dev/sdb, 40 GiB, serial number vol-0b1c, by the survey of 2026-11-20.` */
export const shownWords = ({ volume, disk, survey }: ShownDisk): string =>
  `${volume} is ${devicePath(disk.name)}, ${exactSize(disk.size)}${disk.serial === undefined ? '' : `, serial number ${disk.serial}`}, by the survey of ${survey.at.slice(0, 10)}.`;

/** By the names of the base, to which surveys are held. */
export class Devices {
  readonly #base: Estate;
  readonly #surveys: ReadonlyMap<string, Survey>;
  readonly #others: ReadonlySet<string>;
  readonly #disks = new Map<string, ReadonlyMap<string, SurveyedDevice>>();
  /** Told from all surveys, and only where a disk is asked for. */
  #byId: ReadonlyMap<string, string> | undefined;

  /** @param others what the branch says is another, by `subjectKey`: what a survey shows is of the one that was */
  constructor(base: Estate, surveys: readonly Survey[], others: ReadonlySet<string> = new Set()) {
    this.#base = base;
    this.#others = others;
    this.#surveys = new Map(surveys.map((survey) => [survey.server, survey]));
  }

  /** Undefined where no survey shows it, or as something else than what is declared. */
  disk(server: string, volume: string): ShownDisk | undefined {
    const survey = this.#surveyOf(server);
    if (survey === undefined || this.#isAnother('volume', volume)) return undefined;
    const disk = this.#disksOf(server, survey).get(volume);
    return disk === undefined || disk.size !== this.#base.volumes.get(volume)?.size
      ? undefined
      : { volume, disk, survey };
  }

  /** Whether a survey shows a partition on it, or an encrypted mapping: what lies on that grows once it has. */
  isLayered(server: string, volume: string): boolean {
    const shown = this.disk(server, volume);
    return (
      shown?.survey.devices.some(({ type, on }) => type !== 'lvm' && on.includes(shown.disk.name)) ?? false
    );
  }

  /** What a volume is to its group: the disk itself, or a partition of it. */
  member(server: string, group: string, volume: string): string | undefined {
    const shown = this.disk(server, volume);
    const members = shown?.survey.groups.find(({ name }) => name === group)?.members ?? [];
    const own = members.flatMap(({ device }) =>
      shown !== undefined && device !== undefined && liesOnlyOn(shown, device) ? [device] : [],
    );
    return own.length === 1 ? own[0] : undefined;
  }

  /** The device that a file system is on: of a group, `group/logical volume`. */
  system(server: string, { on, mount, type }: FileSystem): string | undefined {
    const survey = this.#surveyOf(server);
    const found = survey === undefined ? undefined : systemAt(survey, mount);
    if (found === undefined || found.type !== type) return undefined;
    const members = on.kind === 'volume-group' ? this.#base.groups.get(on.name)?.members : undefined;
    if (members?.some((member) => this.#isAnother('volume', member))) return undefined;
    if (on.kind === 'volume-group') return found.device.startsWith(`${on.name}/`) ? found.device : undefined;
    const shown = this.disk(server, on.name);
    return shown !== undefined && liesOnlyOn(shown, found.device) ? found.device : undefined;
  }

  /** The one file system on a disk, where there is but one. */
  onlySystem({ survey, disk }: ShownDisk): Survey['fileSystems'][number] | undefined {
    const found = survey.fileSystems.filter(({ device }) => disksUnder(survey, device).includes(disk));
    return found.length === 1 ? found[0] : undefined;
  }

  /** Whether nothing is seen on a disk: no partition, no file system, no member. */
  isBlank({ survey, disk }: ShownDisk): boolean {
    return (
      !survey.unseen.includes('superblocks') &&
      contentsOf(survey, disk).length === 0 &&
      !survey.devices.some(({ on }) => on.includes(disk.name))
    );
  }

  #surveyOf(server: string): Survey | undefined {
    return this.#isAnother('server', server) ? undefined : this.#surveys.get(server);
  }

  readonly #isAnother = (kind: 'server' | 'volume', name: string): boolean =>
    this.#others.has(subjectKey({ kind, name }));

  #disksOf(server: string, survey: Survey): ReadonlyMap<string, SurveyedDevice> {
    const known = this.#disks.get(server);
    if (known !== undefined) return known;
    this.#byId ??= volumesByShownId(this.#base, [...this.#surveys.values()], undefined);
    const found = matchServer(this.#base, survey, this.#byId).matched;
    this.#disks.set(server, found);
    return found;
  }
}

const liesOnlyOn = ({ survey, disk }: ShownDisk, device: string): boolean => {
  const [under, ...more] = disksUnder(survey, device);
  return under === disk && more.length === 0;
};
