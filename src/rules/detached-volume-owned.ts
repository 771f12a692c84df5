import { counted } from '../base/wording.ts';
import { placed } from '../change/place.ts';
import { emptySelection } from '../change/touched.ts';
import { daysBetween } from '../estate/dates.ts';
import { isDetached, type Volume } from '../estate/estate.ts';
import { showMoney } from '../price/money.ts';
import type { StateRule } from './rule.ts';

export const detachedVolumeOwned: StateRule<'detached-volume-owned'> = {
  name: 'detached-volume-owned',
  about: 'state',
  level: 'error',
  refuses:
    'An unattached volume, which is still billed, without an owner, a reason or a retention date, or kept past that date.',
  why: 'An unattached volume is billed until it is deleted. Without an owner, a reason and a date, nobody dares to delete it, and it is paid for indefinitely.',
  advice:
    'Give the volume a reason and a retain-until date, and a team or an owner; or attach it; or delete it as the rules for deletions require.',
  parameters: {
    'at-most': {
      schema: {
        type: 'integer',
        minimum: 1,
        description: 'How many days ahead a retention date may be at most.',
      },
      looser: 'higher',
      absent: 'loosest',
    },
    grace: {
      schema: {
        type: 'integer',
        minimum: 0,
        default: 0,
        description: 'How many days past the retention date are tolerated.',
      },
      looser: 'higher',
      absent: 'default',
    },
  },
  needs: [],
  looksAt: () => ['volume'],
  examples: {
    fails: {
      story: 'A volume is unattached, and no reason is given for keeping it.',
      main: `team: imagery
servers:
  plate-scanner: {}
volumes:
  plates-1: { size: 100 GiB, tier: bulk }
attachments:
  - { volume: plates-1, server: plate-scanner }
`,
      branch: `team: imagery
servers:
  plate-scanner: {}
volumes:
  plates-1: { size: 100 GiB, tier: bulk }
`,
      entry: '{ rule: detached-volume-owned }',
    },
    passes: {
      story: 'It is kept for a reason, and until a day.',
      main: `team: imagery
servers:
  plate-scanner: {}
volumes:
  plates-1: { size: 100 GiB, tier: bulk }
attachments:
  - { volume: plates-1, server: plate-scanner }
`,
      branch: `team: imagery
servers:
  plate-scanner: {}
volumes:
  plates-1:
    size: 100 GiB
    tier: bulk
    reason: the master copy travels between servers
    retain-until: 2027-03-31
`,
      entry: '{ rule: detached-volume-owned }',
    },
  },
  dated: (_entry, { detached }) => ({ ...emptySelection, volumes: [...detached.values()] }),
  check: (entry, scope) =>
    function* ({ estate, selection, cost, on, revision }) {
      for (const volume of selection.volumes) {
        if (!isDetached(estate, volume) || !scope.includes(volume)) continue;
        const monthly = cost.volumes.get(volume.name)?.monthly;
        const price =
          monthly === undefined ? '' : `, at ${showMoney(monthly, cost.currency)} ${cost.currency} a month`;
        const said = {
          subject: { kind: 'volume', name: volume.name },
          place: placed(volume, revision, volume.retainUntil === undefined ? undefined : 'retain-until'),
        } as const;
        const message = `volume ${volume.name} is unattached and still billed${price}, and`;
        const missing = missingFrom(volume);
        if (missing.length > 0) {
          yield { ...said, message: `${message} ${missing.join(' and ')}`, excess: new Set(missing) };
        }
        // Apart from what is missing, since it is worse by the day.
        const misdated = misdatedBy(volume, on, entry.grace ?? 0, entry['at-most']);
        if (misdated !== undefined) {
          yield { ...said, facet: 'retention', message: `${message} ${misdated.how}`, excess: misdated.days };
        }
      }
    },
};

function missingFrom(volume: Volume): readonly string[] {
  return [
    ...(volume.owner === undefined && volume.team === undefined ? ['has no team or owner'] : []),
    ...(volume.reason === undefined ? ['gives no reason'] : []),
    ...(volume.retainUntil === undefined ? ['has no retention date'] : []),
  ];
}

/** How a retention date is out of bounds, and by how many days. */
function misdatedBy(
  { retainUntil }: Volume,
  on: string,
  grace: number,
  atMost: number | undefined,
): { readonly how: string; readonly days: bigint } | undefined {
  if (retainUntil === undefined) return undefined;
  // The retention date itself is still a day of keeping.
  const past = daysBetween(retainUntil, on);
  if (past > grace) {
    return {
      how: `is kept ${counted(past, 'day')} past its retention date ${retainUntil}`,
      days: BigInt(past - grace),
    };
  }
  if (atMost !== undefined && -past > atMost) {
    return {
      how: `is to be kept ${counted(-past, 'day')}, and at most ${counted(atMost, 'day')} are allowed`,
      days: BigInt(-past - atMost),
    };
  }
  return undefined;
}
