import { counted } from '../base/wording.ts';
import { placed } from '../change/place.ts';
import { emptySelection } from '../change/touched.ts';
import { daysBetween } from '../estate/dates.ts';
import type { Estate, Volume } from '../estate/estate.ts';
import type { EstateCost } from '../price/cost.ts';
import { showMoney } from '../price/money.ts';
import type { Amount, StateRule } from './rule.ts';

export const detachedVolumeOwned: StateRule<'detached-volume-owned'> = {
  name: 'detached-volume-owned',
  about: 'state',
  level: 'error',
  refuses:
    'A volume that no server uses and that is still billed, unattached or attached only to stopped servers that cost nothing, without an owner, a reason or a retention date, or kept past that date.',
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
  measures: { number: 'the days past the bound', amount: 'the monthly cost of the volume' },
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
  dated: (_entry, estate) => ({
    ...emptySelection,
    volumes: [...estate.detached.values(), ...parked(estate)],
  }),
  check: (entry, scope) =>
    function* ({ estate, selection, cost, on, revision }) {
      for (const volume of selection.volumes) {
        const idle = idleBy(estate, volume, cost);
        if (idle === undefined || !scope.includes(volume)) continue;
        const monthly = cost.volumes.get(volume.name)?.monthly;
        const price =
          monthly === undefined ? '' : `, at ${showMoney(monthly, cost.currency)} ${cost.currency} a month`;
        // What nobody answers for is worse the more it costs.
        const costing = monthly === undefined ? [] : [['monthly cost', monthly] as const];
        const said = {
          subject: { kind: 'volume', name: volume.name },
          place: placed(volume, revision, volume.retainUntil === undefined ? undefined : 'retain-until'),
        } as const;
        const message = `volume ${volume.name} is ${idle} still billed${price}, and`;
        const missing = missingFrom(volume);
        if (missing.length > 0) {
          yield {
            ...said,
            message: `${message} ${missing.join(' and ')}`,
            excess: new Map<string, Amount>([...missing.map((each) => [each, 1n] as const), ...costing]),
            ...(monthly === undefined ? {} : { measured: { amount: monthly } }),
          };
        }
        // Apart from what is missing, since it is worse by the day.
        const misdated = misdatedBy(volume, on, entry.grace ?? 0, entry['at-most']);
        if (misdated !== undefined) {
          yield {
            ...said,
            facet: misdated.bound,
            message: `${message} ${misdated.how}`,
            excess: new Map<string, Amount>([['days', misdated.days], ...costing]),
            measured: { number: misdated.days, ...(monthly === undefined ? {} : { amount: monthly }) },
          };
        }
      }
    },
};

/**
 * How a volume is unused: attached to no server, or only to stopped ones that cost nothing, where it looks used
 * and is as easily forgotten. `undefined` for one that some server works with, or is paid for with.
 */
function idleBy(estate: Estate, volume: Volume, cost: EstateCost): string | undefined {
  const holders = estate.holders.get(volume.name) ?? [];
  if (holders.length === 0) return 'unattached and';
  const unused = holders.every(({ server }) => {
    if (estate.servers.get(server)?.power !== 'stopped') return false;
    const monthly = cost.servers.get(server)?.monthly;
    return monthly === undefined || monthly.isZero();
  });
  if (!unused) return undefined;
  const names = holders.map(({ server }) => server).sort();
  return `attached only to ${names.join(', ')}, which ${names.length === 1 ? 'is stopped and costs' : 'are stopped and cost'} nothing; the volume itself is`;
}

/** The volumes that stopped servers hold. */
const parked = (estate: Estate): readonly Volume[] =>
  [...estate.servers.values()]
    .filter(({ power }) => power === 'stopped')
    .flatMap(({ name }) => estate.held.get(name) ?? [])
    .flatMap(({ volume }) => estate.volumes.get(volume) ?? []);

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
):
  | {
      /** Past the date and too far ahead are two faults; one is no lesser case of the other. */
      readonly bound: 'past retention' | 'retention too long';
      readonly how: string;
      readonly days: bigint;
    }
  | undefined {
  if (retainUntil === undefined) return undefined;
  // The retention date itself is still a day of keeping.
  const past = daysBetween(retainUntil, on);
  if (past > grace) {
    return {
      bound: 'past retention',
      how: `is kept ${counted(past, 'day')} past its retention date ${retainUntil}`,
      days: BigInt(past - grace),
    };
  }
  if (atMost !== undefined && -past > atMost) {
    return {
      bound: 'retention too long',
      how: `is to be kept ${counted(-past, 'day')}, and at most ${counted(atMost, 'day')} are allowed`,
      days: BigInt(-past - atMost),
    };
  }
  return undefined;
}
