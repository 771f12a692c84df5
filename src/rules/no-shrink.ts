import { cautions, exact } from '../base/wording.ts';
import type { ChangeOf } from '../change/change.ts';
import type { Estate, VolumeGroup } from '../estate/estate.ts';
import { fileSystemFacts } from '../estate/file-system-facts.ts';
import { type Bytes, differenceOfBytes, exactSize, noBytes, sumBytes } from '../estate/size.ts';
import type { ChangeRule, Violation } from './rule.ts';

const keep = 'Keep the size, or create a smaller volume beside it and copy the data across.';

/** Only where a rule asks for surveys: without them nothing shows what is there. */
const correct =
  "If it has been that small all along, take the provider's list or survey its server again: what surveys on main and the branch both say is a correction.";

export const noShrink: ChangeRule<'no-shrink'> = {
  name: 'no-shrink',
  about: 'change',
  level: 'error',
  refuses:
    'A volume, a volume group or a file system made smaller in exact bytes: also across a rename, a change of unit, or a deletion and re-creation in its place.',
  why: 'Providers grow volumes but do not shrink them, and what is beyond the new end is lost. Writing 50 GB for 50 GiB is such a shrink, and easy to miss.',
  advice: `${keep} ${cautions}`,
  parameters: {
    'allow-file-systems': {
      schema: {
        type: 'array',
        items: { type: 'string', enum: ['ext2', 'ext3', 'ext4', 'btrfs', 'ntfs', 'swap'] },
        description:
          'The types of file system that may be made smaller, among those whose own tools can do it.',
      },
      looser: 'longer',
      absent: 'tightest',
    },
  },
  measures: { size: 'the size that is lost' },
  needs: [],
  looksAt: () => ['volume', 'volume-group', 'file-system'],
  examples: {
    fails: {
      story: 'The units in all files are made alike, and 50 GiB becomes 50 GB.',
      main: `volumes:
  plates-1: { size: 50 GiB, tier: steady }
`,
      branch: `volumes:
  plates-1: { size: 50 GB, tier: steady }
`,
      entry: '{ rule: no-shrink }',
    },
    passes: {
      story: 'The same size, to the byte, is written in another unit.',
      main: `volumes:
  plates-1: { size: 1.5 TiB, tier: steady }
`,
      branch: `volumes:
  plates-1: { size: 1536 GiB, tier: steady }
`,
      entry: '{ rule: no-shrink }',
    },
  },
  check: (entry) =>
    function* ({ changes, base, head }) {
      const allowed: readonly string[] = entry['allow-file-systems'] ?? [];
      const groups = new Map<string, ChangeOf<'member-left'>>();
      const advice = base.surveys === undefined ? undefined : `${keep} ${correct} ${cautions}`;
      const advised = (violation: Violation): Violation =>
        advice === undefined ? violation : { ...violation, advice };
      for (const change of changes) {
        if (change.kind === 'volume-shrunk') yield advised(shrunkVolume(change));
        else if (change.kind === 'volume-re-created') {
          if (change.after.size < change.before.size) yield shrunkVolume(change);
        } else if (change.kind === 'file-system-shrunk') {
          if (!allowed.includes(change.after.type)) yield advised(shrunkFileSystem(change));
        } else if (change.kind === 'member-left') groups.set(change.after.name, change);
      }
      for (const change of groups.values()) yield* shrunkGroup(change, base.estate, head.estate);
    },
};

function shrunkVolume(change: ChangeOf<'volume-shrunk' | 'volume-re-created'>): Violation {
  const { before, after, subject, place } = change;
  const lost = differenceOfBytes(before.size, after.size);
  const sizes = [exactSize(before.size), exactSize(after.size)];
  const what =
    change.kind === 'volume-shrunk'
      ? `volume ${after.name} would shrink from ${sizes[0]} to ${sizes[1]}`
      : `volume ${before.name} (${sizes[0]}) would be deleted and replaced by the smaller ${after.name} (${sizes[1]}), ${change.seat}`;
  return {
    subject,
    place,
    message: `${what}: ${exact(lost)} bytes fewer`,
    excess: lost,
    measured: { size: lost },
  };
}

function shrunkFileSystem({ before, after, subject, place }: ChangeOf<'file-system-shrunk'>): Violation {
  const lost = differenceOfBytes(before.size, after.size);
  const { shrink } = fileSystemFacts(after.type);
  const can = shrink.online
    ? 'its own tools can shrink it while it is mounted'
    : shrink.offline
      ? 'its own tools can shrink it, unmounted'
      : `${after.type} cannot be made smaller`;
  return {
    subject,
    place,
    message: `file system ${after.mount} on ${after.on.name} would shrink from ${exactSize(before.size)} to ${exactSize(after.size)}: ${exact(lost)} bytes fewer; ${can}`,
    excess: lost,
    measured: { size: lost },
  };
}

/** A group loses room as a whole when a member leaves and none as large comes. */
function* shrunkGroup(
  { before, after, subject, place }: ChangeOf<'member-left'>,
  base: Estate,
  head: Estate,
): Iterable<Violation> {
  const lost = differenceOfBytes(memberBytes(base, before), memberBytes(head, after));
  if (lost <= noBytes) return;
  yield {
    subject,
    place,
    message: `volume group ${after.name} would shrink with ${before.members.filter((name) => !after.members.includes(name)).join(', ')} leaving: ${exact(lost)} bytes fewer`,
    advice: `First move the data off that member to the others and remove it from the group in the guest. ${cautions}`,
    excess: lost,
    measured: { size: lost },
  };
}

const memberBytes = (estate: Estate, group: VolumeGroup): Bytes =>
  sumBytes(group.members.map((name) => estate.volumes.get(name)?.size ?? noBytes));
