/**
 * What all files declare -> one estate, every reference followed; or everything that does not hold together.
 *
 * There is one way to assemble: over an estate that stands. The first one stands on the empty estate; a later
 * revision stands on the one before it, and only what its differing files declare, and what refers to that, is
 * looked at again.
 *
 * In one file, since following references, sparing what stands and saying what does not hold go through one index.
 */

import { byText } from '../base/order.ts';
import { at, err, type Outcome, ok, type Problem } from '../base/problem.ts';
import { attach } from './attachments.ts';
import { belongingProblems } from './belonging.ts';
import { type Draft, draftOver, type Entries, isLater, type Named, type PartsEdit } from './draft.ts';
import {
  type Estate,
  type EstatePart,
  emptyEstate,
  type Retired,
  type SiteTotal,
  type Volume,
} from './estate.ts';
import { join, joinGroups } from './groups.ts';
import { identify } from './ids.ts';
import { mountProblems } from './mounts.ts';
import { bothThere, type Dangling, danglingReferences } from './references.ts';
import { rename } from './renames.ts';
import type { Settings } from './settings.ts';
import { bytes, noBytes } from './size.ts';

export type { PartsEdit } from './draft.ts';

/**
 * Puts the parts together.
 *
 * @param parts what each file declares
 * @param settings of the same revision; where it lists sites, no other may be named
 * @param previous an estate assembled under the same settings that shares most parts with this one, by identity
 */
export function assemble(
  parts: readonly EstatePart[],
  settings: Settings,
  previous: Estate = emptyEstate,
): Outcome<Estate> {
  const files = new Set(parts.map(({ file }) => file));
  const coming = parts.filter((part) => previous.parts.get(part.file) !== part);
  const leaving = [...previous.parts.keys()].filter((file) => !files.has(file));
  const { estate, problems, dangling } = assembleOver(previous, { coming, leaving }, settings);
  const all = [...problems, ...dangling.map(({ problem }) => problem)];
  return all.length > 0 ? err(...all) : ok(estate);
}

/** What holds together of an estate; where there are problems, it is good only for finding further ones. */
export interface WhatHolds {
  readonly estate: Estate;
  readonly problems: readonly Problem[];
  /** References that lead nowhere: no fault of theirs where a file is missing, which may declare what they name. */
  readonly dangling: readonly Dangling[];
}

/** As `assemble`, told what differs, so that nothing else is looked at. */
export function assembleOver(previous: Estate, edit: PartsEdit, settings: Settings): WhatHolds {
  const draft = draftOver(previous, edit);
  declare(draft);
  retire(draft);
  attach(draft);
  joinGroups(draft);
  leftBehind(draft);
  rename(draft);
  for (const part of draft.coming) draft.problems.push(...belongingProblems(part, settings));
  draft.problems.push(...identify(draft), ...mountProblems(draft));
  const estate: Estate = {
    parts: draft.parts.finish(),
    servers: draft.servers.finish(),
    volumes: draft.volumes.finish(),
    groups: draft.groups.finish(),
    fileSystems: draft.fileSystems.finish(),
    holders: draft.holders.finish(),
    held: draft.held.finish(),
    groupOf: draft.groupOf.finish(),
    formerly: draft.formerly.finish(),
    byId: draft.byId.finish(),
    retired: draft.retired.finish(),
    siteTotals: siteTotals(draft),
    detached: draft.detached.finish(),
  };
  return { estate, problems: draft.problems, dangling: danglingReferences(draft) };
}

function declare(draft: Draft): void {
  for (const part of draft.leaving) {
    for (const { name } of part.servers) draft.servers.delete(name);
    for (const { name, fileSystem } of part.volumes) {
      draft.volumes.delete(name);
      if (fileSystem !== undefined) draft.fileSystems.delete(fileSystem.name);
    }
    for (const { name, fileSystems, members } of part.groups) {
      draft.groups.delete(name);
      for (const system of fileSystems) draft.fileSystems.delete(system.name);
      for (const member of members) draft.groupOf.delete(member);
    }
  }
  for (const part of draft.coming) {
    for (const server of part.servers) once(draft, draft.servers, server);
    for (const volume of part.volumes) {
      once(draft, draft.volumes, volume);
      if (volume.fileSystem !== undefined) draft.fileSystems.put(volume.fileSystem.name, volume.fileSystem);
    }
    for (const group of part.groups) {
      once(draft, draft.groups, group);
      for (const system of group.fileSystems) draft.fileSystems.put(system.name, system);
    }
  }
}

function once<T extends Named>(draft: Draft, entries: Entries<T>, declared: T): void {
  const twin = entries.get(declared.name);
  if (twin === undefined) {
    entries.put(declared.name, declared);
    return;
  }
  const kind = declared.kind.replace('-', ' ');
  const [first, second] = isLater(declared.place, twin.place) ? [twin, declared] : [declared, twin];
  draft.problems.push({
    place: second.place,
    message: `the ${kind} ${declared.name} is declared twice: here and at ${at(first.place)}`,
    advice: `Names are unique across the estate; keep one of the two, or give this ${kind} its own name.`,
  });
}

/** A name may be used and retired more than once, in any file: which record counts is for whoever asks to say. */
function retire(draft: Draft): void {
  const touched = new Set(
    [...draft.leaving, ...draft.coming].flatMap(({ retired }) => retired.map(({ name }) => name)),
  );
  if (touched.size === 0) return;
  const records = new Map<string, Retired[]>();
  for (const { retired } of draft.parts.values()) {
    for (const record of retired) {
      if (!touched.has(record.name)) continue;
      const list = records.get(record.name);
      if (list === undefined) records.set(record.name, [record]);
      else list.push(record);
    }
  }
  for (const name of touched) {
    const list = records.get(name);
    if (list === undefined) draft.retired.delete(name);
    else draft.retired.put(name, list.sort(oldestFirst));
  }
}

const oldestFirst = (a: Retired, b: Retired): number =>
  byText(a.on, b.on) || (isLater(a.place, b.place) ? 1 : -1);

/** What stayed and refers to something that left. */
function leftBehind(draft: Draft): void {
  for (const part of draft.leaving) {
    for (const { name } of part.volumes) {
      if (draft.volumes.has(name)) continue;
      for (const attachment of draft.holders.get(name) ?? []) bothThere(draft, attachment);
      const group = draft.groupOf.get(name);
      if (group !== undefined && draft.groups.get(group.name) === group) join(draft, group, name);
    }
    for (const { name } of part.servers) {
      if (draft.servers.has(name)) continue;
      for (const attachment of draft.held.get(name) ?? []) {
        if (draft.volumes.has(attachment.volume)) bothThere(draft, attachment);
      }
    }
  }
}

function siteTotals(draft: Draft): ReadonlyMap<string, SiteTotal> {
  const totals = new Map(draft.previousTotals);
  const count = ({ site, size }: Volume, sign: 1n | -1n): void => {
    if (site === undefined) return;
    const total = totals.get(site) ?? { volumes: 0n, size: noBytes };
    totals.set(site, { volumes: total.volumes + sign, size: bytes(total.size + sign * size) });
  };
  for (const part of draft.leaving) for (const volume of part.volumes) count(volume, -1n);
  for (const part of draft.coming) for (const volume of part.volumes) count(volume, 1n);
  for (const [site, { volumes }] of totals) if (volumes === 0n) totals.delete(site);
  return totals;
}
