/** What the volume manager reports: groups, their members, and their logical volumes. */
import { byText } from '../base/order.ts';
import type { GatheredFile } from '../read/generated/gathered.ts';
import type { SurveyedLogicalVolume, SurveyedMember, SurveyedVolumeGroup } from '../read/generated/survey.ts';
import { type FoundDevices, mapperName } from './devices.ts';
import { bytesIn, countIn, type Fields, nameIn, recordsIn, textIn } from './fields.ts';
import type { LeftOut } from './left-out.ts';

/** The paths of the devices that groups lie on. */
export const memberPaths = ({ pvs }: GatheredFile): readonly string[] =>
  rowsOf(pvs, 'pv').flatMap((row) => (inGroup(row) ? [textIn(row, 'pv_name') ?? ''] : []));

export function groupsOf(
  { pvs, vgs, lvs, lsblk }: GatheredFile,
  { named }: Pick<FoundDevices, 'named'>,
): { readonly groups: readonly SurveyedVolumeGroup[]; readonly leftOut: readonly LeftOut[] } {
  const members = groupedBy(rowsOf(pvs, 'pv'), (row) => textIn(row, 'vg_name'));
  const volumes = groupedBy(rowsOf(lvs, 'lv'), (row) => textIn(row, 'vg_name'));
  const leftOut: LeftOut[] = [];
  const groups: SurveyedVolumeGroup[] = [];
  const byName = groupedBy(rowsOf(vgs, 'vg').filter(inGroup), (row) => textIn(row, 'vg_name') ?? '');
  for (const [written, [row, ...twins]] of [...byName].sort(([a], [b]) => byText(a, b))) {
    const name = nameIn(row, 'vg_name');
    const [extent, extents, free] = [
      bytesIn(row, 'vg_extent_size'),
      countIn(row, 'vg_extent_count'),
      countIn(row, 'vg_free_count'),
    ];
    if (name === undefined || extent === undefined || extents === undefined || free === undefined) {
      leftOut.push({ what: written, why: 'its name or its extents are none that can be kept' });
    } else if (twins.length > 0) {
      leftOut.push({ what: name, why: 'several volume groups have this name' });
    } else {
      const rows = members.get(name) ?? [];
      groups.push({
        name,
        extent,
        extents,
        free,
        missing: countIn(row, 'vg_missing_pv_count') ?? rows.filter(isMissing).length,
        members: rows
          .map((each) => memberOf(each, named))
          .sort((a, b) => byText(a.device ?? '', b.device ?? '')),
        'logical-volumes': volumesOf(volumes.get(name) ?? [], (volume) =>
          lsblk === undefined ? undefined : named(mapperName(`${name}/${volume}`)) !== undefined,
        ),
      });
    }
  }
  return { groups, leftOut };
}

function groupedBy<K>(rows: readonly Fields[], key: (row: Fields) => K): Map<K, [Fields, ...Fields[]]> {
  const groups = new Map<K, [Fields, ...Fields[]]>();
  for (const row of rows) {
    const before = groups.get(key(row));
    if (before === undefined) groups.set(key(row), [row]);
    else before.push(row);
  }
  return groups;
}

/** The rows of a report; the volume manager gives one object for each log it reports from. */
const rowsOf = (report: GatheredFile['pvs'], kind: string): readonly Fields[] =>
  recordsIn(report?.report).flatMap((each) => recordsIn(each[kind]));

const inGroup = (row: Fields): boolean => textIn(row, 'vg_name') !== undefined;

/** `a-m` in the attributes, or a name such as `[unknown]` in place of the device's. */
const isMissing = (row: Fields): boolean =>
  textIn(row, 'pv_attr')?.[2] === 'm' || textIn(row, 'pv_name')?.startsWith('/dev/') !== true;

function memberOf(row: Fields, named: FoundDevices['named']): SurveyedMember {
  const path = nameIn(row, 'pv_name');
  const device =
    isMissing(row) || path === undefined ? undefined : (named(path)?.name ?? path.replace('/dev/', ''));
  const [size, deviceSize, firstExtent, extents = 0, given = 0] = [
    bytesIn(row, 'pv_size'),
    bytesIn(row, 'dev_size'),
    bytesIn(row, 'pe_start'),
    countIn(row, 'pv_pe_count'),
    countIn(row, 'pv_pe_alloc_count'),
  ];
  return {
    ...(device === undefined ? {} : { device }),
    ...(size === undefined ? {} : { size }),
    ...(device === undefined || deviceSize === undefined ? {} : { 'device-size': deviceSize }),
    ...(device === undefined || firstExtent === undefined ? {} : { 'first-extent': firstExtent }),
    extents,
    free: Math.max(0, extents - given),
  };
}

/** A report that shows how extents lie has a row for each run of them. */
function volumesOf(
  rows: readonly Fields[],
  isThere: (volume: string) => boolean | undefined,
): SurveyedLogicalVolume[] {
  const byName = groupedBy(rows, (row) => nameIn(row, 'lv_name') ?? '');
  return [...byName]
    .sort(([a], [b]) => byText(a, b))
    .flatMap(([name, runs]) => {
      const [first] = runs;
      const size = bytesIn(first, 'lv_size');
      if (name === '' || size === undefined) return [];
      const state = textIn(first, 'lv_attr')?.[4];
      const active = state === 'a' ? true : state === '-' ? false : isThere(name);
      return [{ name, size, ...layoutOf(runs), ...(active === undefined ? {} : { active }) }];
    });
}

type Layout = Pick<SurveyedLogicalVolume, 'layout' | 'stripes' | 'copies'>;

function layoutOf(runs: readonly Fields[]): Layout {
  const layouts = runs.map(runLayout);
  const [first = { layout: 'other' }] = layouts;
  const alike = layouts.every(
    ({ layout, stripes, copies }) =>
      layout === first.layout && stripes === first.stripes && copies === first.copies,
  );
  return alike ? first : { layout: 'other' };
}

/** Snapshots, and what is thin, cached or under conversion: lvs(8), the first letter of the attributes. */
const ofItsOwnKind = /^[CsSVtTdDevc]/;

/** Older versions call a linear run striped on one member. */
function runLayout(run: Fields): Layout {
  const lanes = countIn(run, 'stripes') ?? 1;
  if (ofItsOwnKind.test(textIn(run, 'lv_attr') ?? '')) return { layout: 'other' };
  switch (textIn(run, 'segtype')) {
    case 'linear':
      return { layout: 'linear' };
    case 'striped':
      return lanes === 1 ? { layout: 'linear' } : { layout: 'striped', stripes: lanes };
    case 'mirror':
    case 'raid1':
      return { layout: 'mirrored', copies: lanes };
    default: // every other kind of segment that there is or will be
      return { layout: 'other' };
  }
}
