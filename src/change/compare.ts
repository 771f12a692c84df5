/** Two estates -> the changes between them, in a stable order. */
import { byText } from '../base/order.ts';
import type { Problem } from '../base/problem.ts';
import type { Estate, Server, Subject, Volume, VolumeGroup } from '../estate/estate.ts';
import { Adoption } from './adoption.ts';
import { attachmentChanges } from './attachments.ts';
import { type Change, partOf } from './change.ts';
import { contradictions } from './contradictions.ts';
import { nothingShown, type Shown } from './corrected.ts';
import { fileSystemChanges, fileSystemRenames } from './file-systems.ts';
import { groupChanges } from './groups.ts';
import { changeKinds } from './kinds.ts';
import { differingParts, type FormerVolumes, pair } from './pairs.ts';
import { baseName, type Renames } from './renames.ts';
import { serverChanges } from './servers.ts';
import { pairReplacements, volumeChanges } from './volumes.ts';

export interface Comparison {
  readonly changes: readonly Change[];
  readonly renames: Renames;
  /** What the head says of renames that cannot be so; nothing is judged by a comparison that has any. */
  readonly contradictions: readonly Problem[];
  /** Files whose declarations differ, or that only one side has. */
  readonly files: readonly string[];
}

/**
 * Compares two estates.
 *
 * @param base what is there
 * @param head what is proposed
 * @param shown what surveys show of both; nothing where left out
 * @returns the changes in a fixed order, which names became which, and what cannot be so
 *
 * @example
 * ```js
 * import { compareEstates, describeChange, readFiles } from 'ullage';
 *
 * const revision = async (size) => {
 *   const text = `volumes: { plates-1: { size: ${size}, tier: bulk } }\n`;
 *   const read = await readFiles({ 'storage/a.yaml': text }, size);
 *   if (!read.ok) throw new Error(read.problems[0].message);
 *   return read.value;
 * };
 * const { changes } = compareEstates((await revision('40 GiB')).estate, (await revision('60 GiB')).estate);
 * console.log(changes[0].kind); // volume-grown
 * console.log(describeChange(changes[0])); // volume plates-1 grows from 40 GiB to 60 GiB, by 20 GiB
 * ```
 */
export function compareEstates(base: Estate, head: Estate, shown: Shown = nothingShown): Comparison {
  const differing = differingParts(base, head);
  const servers = pair<Server>(differing, (part) => part.servers, base.servers, head.servers);
  const volumes = pair<Volume>(differing, (part) => part.volumes, base.volumes, head.volumes);
  const groups = pair<VolumeGroup>(differing, (part) => part.groups, base.groups, head.groups);
  const adoption = new Adoption(
    base,
    head,
    { servers: servers.renames, volumes: volumes.renames, groups: groups.renames },
    shown.there,
  );
  const formerVolumes: FormerVolumes = (names) =>
    names.flatMap((name) => {
      const now = head.volumes.get(name);
      const there = now !== undefined && adoption.adopts(now) ? now : undefined;
      const before = base.volumes.get(baseName(volumes.renames, name)) ?? there;
      return before === undefined ? [] : [{ name, before }];
    });
  const ofSystems = fileSystemChanges(volumes, groups, { formerVolumes, adoption, shown });
  const renames: Renames = {
    servers: servers.renames,
    volumes: volumes.renames,
    groups: groups.renames,
    fileSystems: fileSystemRenames(volumes, groups, ofSystems),
  };
  const replacements = pairReplacements(base, head, volumes, renames);
  const changes = [
    ...servers.pairs.flatMap((each) => serverChanges(each, renames, adoption)),
    ...volumeChanges(volumes, replacements, { adoption, shown }),
    ...attachmentChanges({ base, head, differing, renames, servers, volumes, adoption }),
    ...groups.pairs.flatMap((each) => groupChanges(each, renames, { head, formerVolumes, adoption })),
    ...ofSystems,
  ];
  return {
    changes: changes.sort(inOrder),
    renames,
    contradictions: [...contradictions(base, head, differing), ...adoption.contradictions(differing)],
    files: differing.map(({ file }) => file),
  };
}

const kindOrder: readonly Subject['kind'][] = ['server', 'volume', 'volume-group', 'file-system'];

/** By kind of subject, then its name, then as things come about: the same order whatever the files' order. */
const inOrder = (a: Change, b: Change): number =>
  kindOrder.indexOf(a.subject.kind) - kindOrder.indexOf(b.subject.kind) ||
  byText(a.subject.name, b.subject.name) ||
  changeKinds.indexOf(a.kind) - changeKinds.indexOf(b.kind) ||
  byText(partOf(a), partOf(b));
