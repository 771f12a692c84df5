/** What changed about file systems. */
import type { FileSystem, Volume, VolumeGroup } from '../estate/estate.ts';
import type { Adoption } from './adoption.ts';
import type { Change } from './change.ts';
import type { Shown } from './corrected.ts';
import { makingChange } from './making.ts';
import { type FormerVolumes, type Pairs, subjectOf } from './pairs.ts';
import { placed } from './place.ts';
import { type RenamesOfKind, renamesOfKind } from './renames.ts';

/** A file system is told by what it lies on and its mount point, so it follows a rename of either. */
export function fileSystemChanges(
  volumes: Pairs<Volume>,
  groups: Pairs<VolumeGroup>,
  {
    formerVolumes,
    adoption,
    shown,
  }: { readonly formerVolumes: FormerVolumes; readonly adoption: Adoption; readonly shown: Shown },
): readonly Change[] {
  return [...volumes.pairs, ...groups.pairs].flatMap(({ before, after }): readonly Change[] => {
    const old = systemsOf(before);
    const current = systemsOf(after);
    const left = old.filter(({ mount }) => !current.some((system) => system.mount === mount));
    const came = current.filter(({ mount }) => !old.some((system) => system.mount === mount));
    const remounts = pairRemounts(left, came);
    const gone = left
      .filter((system) => !remounts.some(([former]) => former === system))
      .map(
        (system): Change => ({
          kind: 'file-system-deleted',
          before: system,
          subject: subjectOf(system),
          place: placed(system, 'base'),
        }),
      );
    const others = current.flatMap((system): readonly Change[] => {
      const subject = subjectOf(system);
      const former =
        old.find(({ mount }) => mount === system.mount) ?? remounts.find(([, now]) => now === system)?.[0];
      if (former === undefined) {
        const where = { after: system, subject, place: placed(system, 'head') };
        if (adoption.adopts(system)) return [{ kind: 'file-system-adopted', ...where }];
        const wipes = after?.kind === 'volume' ? formerVolumes([after.name]) : [];
        return [{ kind: 'file-system-created', wipes, ...where }];
      }
      if (former.mount !== system.mount) {
        const place = placed(system, 'head');
        return [
          { kind: 'file-system-remounted', before: former, after: system, subject, place },
          ...madeOtherwise(former, system, shown),
        ];
      }
      if (former.type !== system.type) {
        const place = placed(system, 'head', 'type');
        return [{ kind: 'file-system-remade', before: former, after: system, subject, place }];
      }
      return madeOtherwise(former, system, shown);
    });
    return [...gone, ...others];
  });
}

/**
 * The whole names that file systems have now, by those they had before their volume or group was renamed, or they moved
 * to another mount point. A volume and a group of one name are told apart by what each of them carries.
 */
export function fileSystemRenames(
  volumes: Pairs<Volume>,
  groups: Pairs<VolumeGroup>,
  changes: readonly Change[],
): RenamesOfKind {
  const carried = [...volumes.pairs, ...groups.pairs].flatMap(({ before, after }) =>
    before === undefined || after === undefined || before.name === after.name
      ? []
      : systemsOf(before).flatMap((former) =>
          systemsOf(after)
            .filter(({ mount }) => mount === former.mount)
            .map((now) => [former.name, now.name] as const),
        ),
  );
  const remounted = changes.flatMap((change) =>
    change.kind === 'file-system-remounted' ? [[change.before.name, change.after.name] as const] : [],
  );
  // A name that passes from a volume to a group, or back, stands for another file system from then on.
  const names = new Map<string, FileSystem>();
  for (const { after } of [...volumes.pairs, ...groups.pairs])
    for (const system of systemsOf(after)) names.set(system.name, system);
  const passedOn = [...volumes.pairs, ...groups.pairs].flatMap(({ before }) =>
    systemsOf(before).flatMap((former) => {
      const now = names.get(former.name);
      return now === undefined || now.on.kind === former.on.kind
        ? []
        : [[former.name, `${former.name} (of the ${former.on.kind.replace('-', ' ')} before)`] as const];
    }),
  );
  return renamesOfKind(new Map([...passedOn, ...carried, ...remounted]));
}

const systemsOf = (carrier: Volume | VolumeGroup | undefined): readonly FileSystem[] => {
  if (carrier === undefined) return [];
  if (carrier.kind === 'volume-group') return carrier.fileSystems;
  return carrier.fileSystem === undefined ? [] : [carrier.fileSystem];
};

/**
 * File systems that only moved to another mount point: of one type on one carrier, the only one that left and the only
 * one that came. Among several nothing tells which is which, and a loss must not be taken for a move.
 */
function pairRemounts(
  left: readonly FileSystem[],
  came: readonly FileSystem[],
): readonly (readonly [FileSystem, FileSystem])[] {
  const [former, ...others] = left;
  const [now, ...more] = came;
  const only = others.length === 0 && more.length === 0;
  return only && former !== undefined && now !== undefined && former.type === now.type ? [[former, now]] : [];
}

/** Of one type: made otherwise, set otherwise, or another size. */
function madeOtherwise(former: FileSystem, system: FileSystem, shown: Shown): readonly Change[] {
  const both = { before: former, after: system, subject: subjectOf(system), place: placed(system, 'head') };
  switch (makingChange(former, system)) {
    case 'none':
      return resized(former, system, shown);
    case 'in place':
      return [{ kind: 'file-system-edited', ...both }, ...resized(former, system, shown)];
    case 'anew':
      return [{ kind: 'file-system-remade', ...both }];
  }
}

function resized(former: FileSystem, system: FileSystem, shown: Shown): readonly Change[] {
  // A file system without a size of its own fills its volume, and grows and shrinks in the volume's name.
  if (system.fields.of('size') === undefined && former.fields.of('size') === undefined) return [];
  const both = {
    before: former,
    after: system,
    subject: subjectOf(system),
    place: placed(system, 'head', 'size'),
  };
  if (system.size > former.size) return [{ kind: 'file-system-grown', ...both }];
  if (system.size === former.size) return [];
  const isCorrected = shown.hasSize({ kind: 'file-system', name: former.name }, system.size);
  return [{ kind: isCorrected ? 'file-system-corrected' : 'file-system-shrunk', ...both }];
}
