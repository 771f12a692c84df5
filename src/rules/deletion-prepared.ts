import { daysBetween } from '../estate/dates.ts';
import type { Estate, Retired, Volume } from '../estate/estate.ts';
import { showSize } from '../estate/size.ts';
import { type ChangeRule, cautions, counted } from './rule.ts';

export const deletionPrepared: ChangeRule<'deletion-prepared'> = {
  name: 'deletion-prepared',
  about: 'change',
  level: 'error',
  refuses:
    'The deletion of a volume that is attached on main, is protected, or leaves no record of its reason and of a recent enough backup.',
  why: 'A deleted volume is gone at once. Detaching it first, in a change of its own, shows who still misses it while that can be put right.',
  advice: `Detach the volume in an earlier change, lift any protection there, and add a line under retired: with reason, backup and backed-up. ${cautions}`,
  parameters: {
    'backup-within': {
      schema: {
        type: 'integer',
        minimum: 0,
        description:
          'The most days that the backup on record may be old on the day of the judgement; left out, no backup is asked for.',
      },
      looser: 'higher',
      absent: 'loosest',
    },
    'attached-allowed': {
      schema: {
        type: 'boolean',
        default: false,
        description: 'Whether a volume may be deleted that is still attached on main.',
      },
      looser: 'true',
      absent: 'default',
    },
  },
  needs: [],
  examples: {
    fails: {
      story: 'A volume is deleted, and no record is left of why and of what was saved.',
      main: `volumes:
  plates-1: { size: 100 GiB, tier: bulk }
  root: { size: 20 GiB, tier: bulk }
`,
      branch: `volumes:
  root: { size: 20 GiB, tier: bulk }
`,
      entry: '{ rule: deletion-prepared, backup-within: 30 }',
    },
    passes: {
      story: 'It was detached before, and leaves its reason and its backup behind.',
      main: `volumes:
  plates-1: { size: 100 GiB, tier: bulk }
  root: { size: 20 GiB, tier: bulk }
`,
      branch: `volumes:
  root: { size: 20 GiB, tier: bulk }
retired:
  - volume: plates-1
    on: 2026-11-20
    reason: superseded by plates-2
    backup: vault/plates-1/2026-11-19
    backed-up: 2026-11-19
`,
      entry: '{ rule: deletion-prepared, backup-within: 30 }',
    },
  },
  *check(entry, { changes, base, head, on }, scope) {
    for (const change of changes) {
      if (change.kind !== 'volume-deleted' && change.kind !== 'volume-re-created') continue;
      const { before } = change;
      if (!scope.includes(before, before.tier)) continue;
      const faults = [
        ...holdersOf(base.estate, before, entry['attached-allowed'] ?? false),
        ...(before.protected ? ['it is protected'] : []),
        ...recordFaults(head.estate.retired.get(before.name), entry['backup-within'], on),
      ];
      if (faults.length === 0) continue;
      yield {
        subject: change.subject,
        place: change.place,
        message: `volume ${before.name} (${showSize(before.size)}) would be deleted for good, and ${faults.join('; ')}`,
      };
    }
  },
};

function holdersOf(base: Estate, volume: Volume, allowed: boolean): readonly string[] {
  const holders = base.holders.get(volume.name) ?? [];
  if (allowed || holders.length === 0) return [];
  return [
    `main still attaches it to ${holders
      .map(({ server }) => server)
      .sort()
      .join(', ')}`,
  ];
}

function recordFaults(
  record: Retired | undefined,
  within: number | undefined,
  on: string,
): readonly string[] {
  if (record === undefined) return ['no line under retired: says why'];
  if (within === undefined) return [];
  if (record.backup === undefined || record.backedUp === undefined) return ['its record names no backup'];
  const age = daysBetween(record.backedUp, on);
  if (age < 0) return [`its backup is dated ${record.backedUp}, which is still to come`];
  return age > within
    ? [`its backup is ${counted(age, 'day')} old, where ${counted(within, 'day')} are allowed`]
    : [];
}
