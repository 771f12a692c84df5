/** A survey made of what was gathered: what matters of it, in an order of its own, and what was left out. */
import { err, type Outcome, ok } from '../base/problem.ts';
import type { DfRow } from '../capacity/df.ts';
import { readingTime } from '../capacity/readings.ts';
import type { GatheredFile } from '../read/generated/gathered.ts';
import type { SurveyFile } from '../read/generated/survey.ts';
import { jsonText } from '../read/json.ts';
import { asSurveyed, devicesOf } from './devices.ts';
import { fileSystemsOf, mountsOf, swapPaths, useOf } from './file-systems.ts';
import { groupsOf, memberPaths } from './groups.ts';
import type { LeftOut } from './left-out.ts';
import { surveyFormat, type Unseen } from './survey.ts';

export interface Surveyed {
  readonly survey: SurveyFile;
  /** What df measured, for the readings. */
  readonly use: readonly DfRow[];
  /** What the server showed and is not kept. */
  readonly leftOut: readonly LeftOut[];
  /** What could not be seen, and why; in the words of whoever gathered. */
  readonly unseen: readonly { readonly what: Unseen; readonly why: string }[];
}

/** The order in which a survey says what it did not see. */
const parts: readonly Unseen[] = ['devices', 'mounts', 'use', 'volume-groups', 'fstab', 'superblocks'];

export function surveyOf(gathered: GatheredFile, server: string): Outcome<Surveyed> {
  const at = readingTime(gathered.at);
  if (at === undefined) {
    return err({ message: `${gathered.at} is no time that there is`, advice: 'Run the script again.' });
  }
  const { mounts, leftOut: unmounted } = mountsOf(gathered);
  const inUse = new Map([
    ...mounts.flatMap(({ device, numbers = '', type }) => [
      [numbers, type] as const,
      [device, type] as const,
    ]),
    ...swapPaths(gathered).map((path) => [path, 'swap'] as const),
    ...memberPaths(gathered).map((path) => [path, 'LVM2_member'] as const),
  ]);
  const devices = devicesOf(gathered, inUse);
  const { groups, leftOut: ungrouped } = groupsOf(gathered, devices);
  const use = useOf(gathered);
  const rows = use.ok ? use.value : [];
  const systems = fileSystemsOf(gathered, devices, mounts, rows);
  const unseen = [...missingParts(gathered), ...(gathered.unseen ?? [])];
  if (!use.ok) unseen.push({ what: 'use', why: use.problems[0]?.message ?? '' });
  const isWithoutGroups =
    gathered.vgs === undefined &&
    devices.list.some(({ content }) => content !== undefined) &&
    !devices.list.some(({ content, type }) => content === 'LVM2_member' || type === 'lvm');
  const toSay = unseen.filter(({ what }) => !(what === 'volume-groups' && isWithoutGroups));
  const isUnseen = new Set(toSay.map(({ what }) => what));
  return ok({
    survey: {
      format: surveyFormat,
      server,
      at,
      tools: toolsOf(gathered),
      unseen: parts.filter((part) => isUnseen.has(part)),
      devices: devices.list.map(asSurveyed),
      // Half of what the volume manager says would be taken for the whole.
      'volume-groups': isUnseen.has('volume-groups') ? [] : [...groups],
      'file-systems': [...systems.list],
    },
    use: rows,
    leftOut: [...devices.leftOut, ...ungrouped, ...unmounted, ...systems.leftOut],
    unseen: toSay,
  });
}

/** What was gathered by hand may leave a part out and say nothing of it. */
function missingParts(gathered: GatheredFile): { what: Unseen; why: string }[] {
  const { lsblk, findmnt, df, pvs, vgs, lvs, fstab, superblocks, unseen = [] } = gathered;
  const isMissing: Readonly<Record<Unseen, boolean>> = {
    devices: lsblk === undefined,
    mounts: findmnt === undefined,
    use: df === undefined,
    'volume-groups': pvs === undefined || vgs === undefined || lvs === undefined,
    fstab: fstab === undefined,
    superblocks: superblocks === undefined,
  };
  const said = new Set(unseen.map(({ what }) => what));
  return parts
    .filter((what) => isMissing[what] && !said.has(what))
    .map((what) => ({ what, why: 'it is not in what was gathered' }));
}

/** Of what a tool says of itself, its version. */
function toolsOf({ versions = {} }: GatheredFile): SurveyFile['tools'] {
  const known = Object.entries(versions)
    .filter(([tool]) => /^[a-z0-9][a-z0-9._-]{0,31}$/.test(tool))
    .map(
      ([tool, said]) =>
        [tool, /[0-9]+(?:\.[0-9]+)+(?:\([0-9]+\))?/.exec(said)?.[0].slice(0, 64) ?? ''] as const,
    );
  return Object.fromEntries(known.sort(([a], [b]) => (a < b ? -1 : 1)));
}

/** As `surveys/SERVER.json` holds it: one value a line, and the same for the same survey. */
export const surveyAsText = (survey: SurveyFile): string => jsonText(survey);
