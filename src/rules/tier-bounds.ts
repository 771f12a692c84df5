import type { Decimal } from 'decimal.js';
import { exact } from '../base/wording.ts';
import { placed } from '../change/place.ts';
import type { Estate, Server, Volume } from '../estate/estate.ts';
import { type Bytes, bytes, exactSize, unitBytes } from '../estate/size.ts';
import type { PriceList, Tier } from '../price/price-list.ts';
import { ExactDecimal } from './parameter.ts';
import type { StateRule, Violation } from './rule.ts';
import type { View } from './view.ts';

const adviceOnSize = 'Choose a size that the tier offers, or another tier.';
const adviceOnIops = 'Use larger volumes, more of them, or a faster tier.';
const lowered = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);

export const tierBounds: StateRule<'tier-bounds'> = {
  name: 'tier-bounds',
  about: 'state',
  level: 'error',
  refuses:
    "A volume whose size its tier does not offer, or a server that needs more IOPS than its volumes' tiers provide.",
  why: 'The provider refuses such a size half-way through the change. Too few IOPS are sold without a warning, and show only when the server is busy.',
  advice: `For a size: ${lowered(adviceOnSize)} For IOPS: ${lowered(adviceOnIops)}`,
  parameters: {},
  usesPrices: ['sizes', 'iops'],
  measures: {
    size: "the size below the tier's minimum or above its maximum",
    number: 'the operations a second that are missing',
  },
  needs: [],
  looksAt: () => ['server', 'volume'],
  examples: {
    fails: {
      story: 'A volume of 50 GB in a tier that is sold in whole GiB.',
      branch: `volumes:
  plates-1: { size: 50 GB, tier: bulk }
`,
      entry: '{ rule: tier-bounds }',
    },
    passes: {
      story: 'A server whose three volumes of 40 GiB provide the 360 IOPS that it needs.',
      branch: `servers:
  plate-scanner: { iops: 360 }
volumes:
  plates-1: { size: 40 GiB, tier: bulk }
  plates-2: { size: 40 GiB, tier: bulk }
  plates-3: { size: 40 GiB, tier: bulk }
attachments:
  - { volume: plates-1, server: plate-scanner }
  - { volume: plates-2, server: plate-scanner }
  - { volume: plates-3, server: plate-scanner }
`,
      entry: '{ rule: tier-bounds }',
    },
  },
  check: (_entry, scope) =>
    function* (view) {
      for (const volume of view.selection.volumes) {
        const tier = view.prices.tiers.get(volume.tier);
        if (tier !== undefined && scope.includes(volume)) yield* sizeFaults(volume, tier, view);
      }
      for (const server of view.selection.servers) {
        if (server.iops === undefined || server.iops === 0 || !scope.includes(server)) continue;
        const fault = iopsFault(server, server.iops, view);
        if (fault !== undefined) yield fault;
      }
    },
};

function* sizeFaults(volume: Volume, tier: Tier, { revision }: View): Iterable<Violation> {
  const { size } = volume;
  const common = {
    subject: { kind: 'volume', name: volume.name },
    place: placed(volume, revision, 'size'),
    advice: adviceOnSize,
  } as const;
  // Nearly every volume fits: what would be said is put into words only where one does not.
  const who = () => `volume ${volume.name} has ${exactSize(size)}`;
  const nearest = () => fittingSizes(tier, size);
  if (tier.minimum !== undefined && size < tier.minimum) {
    yield {
      ...common,
      facet: `minimum of ${tier.name}`,
      message: `${who()}, and the tier ${tier.name} offers no less than ${exactSize(tier.minimum)}; ${nearest()}`,
      excess: tier.minimum - size,
      measured: { size: tier.minimum - size },
    };
  }
  if (tier.maximum !== undefined && size > tier.maximum) {
    yield {
      ...common,
      facet: `maximum of ${tier.name}`,
      message: `${who()}, and the tier ${tier.name} offers no more than ${exactSize(tier.maximum)}; ${nearest()}`,
      excess: size - tier.maximum,
      measured: { size: size - tier.maximum },
    };
  }
  if (tier.step !== undefined && size % tier.step !== 0n) {
    yield {
      ...common,
      facet: `step of ${tier.name}`,
      message: `${who()} (${exact(size)} bytes), and the tier ${tier.name} offers whole multiples of ${exactSize(tier.step)}; ${nearest()}`,
      // A volume may be there at a size that is off the step; another such size was chosen now. One that is on its way
      // up to the tier's minimum is judged by that.
      ...(tier.minimum === undefined || size >= tier.minimum ? { excess: new Set([`${size}`]) } : {}),
    };
  }
}

/** The sizes next to this one, below and above, that the tier sells; in words. */
function fittingSizes({ name, minimum, maximum, step = bytes(1n) }: Tier, size: Bytes): string {
  const smallest = roundedUp(minimum ?? step, step);
  const largest = maximum === undefined ? undefined : (maximum / step) * step;
  if (largest !== undefined && largest < smallest)
    return `no size is possible: the bounds of the tier ${name} contradict each other`;
  const within = (wanted: bigint): bigint =>
    wanted < smallest ? smallest : largest !== undefined && wanted > largest ? largest : wanted;
  const near = [...new Set([within((size / step) * step), within(roundedUp(size, step))])];
  return near.length === 1
    ? `the nearest possible size is ${near.map(show).join()}`
    : `the nearest possible sizes are ${near.map(show).join(' and ')}`;
}

const roundedUp = (amount: bigint, step: bigint): bigint => ((amount + step - 1n) / step) * step;

const show = (size: bigint): string => exactSize(bytes(size));

/** What a server's volumes give together, as far as their tiers say. */
interface IoSupply {
  readonly given: Decimal;
  readonly parts: readonly string[];
  /** Tiers that name no figure: what their volumes give is not known. */
  readonly silent: readonly string[];
}

function iopsFault(server: Server, wanted: number, view: View): Violation | undefined {
  const { given, parts, silent } = ioSupply(server, view.estate, view.prices);
  // Whole operations: a third of one moves nothing.
  const supply = BigInt(given.floor().toFixed(0));
  const missing = BigInt(wanted) - supply;
  if (missing <= 0n) return undefined;
  const common = {
    subject: { kind: 'server', name: server.name },
    facet: 'iops',
    place: placed(server, view.revision, 'iops'),
  } as const;
  const needs = `server ${server.name} needs ${exact(BigInt(wanted))} IOPS`;
  const sums = [
    ...(parts.length === 0 ? [] : [`its volumes' tiers provide ${exact(supply)} (${parts.join(', ')})`]),
    // What a tier does not promise is not counted on: otherwise a volume of such a tier would hide what is missing.
    ...silent.map((tier) => `the price list gives none for the tier ${tier}`),
  ];
  return {
    ...common,
    message: `${needs}, and ${sums.length === 0 ? 'it has no volumes' : sums.join(' and ')}: ${exact(missing)} short`,
    advice:
      silent.length === 0
        ? adviceOnIops
        : 'Write iops-per-gib or iops-maximum on the tier in the price list, or use another tier.',
    excess: missing,
    measured: { number: missing },
  };
}

function ioSupply(server: Server, estate: Estate, prices: PriceList): IoSupply {
  let given = new ExactDecimal(0);
  const parts: string[] = [];
  const silent = new Set<string>();
  const held = [...(estate.held.get(server.name) ?? [])].sort((a, b) => (a.volume < b.volume ? -1 : 1));
  for (const { volume: name } of held) {
    const volume = estate.volumes.get(name);
    if (volume === undefined) continue;
    const iops = volumeIops(volume, prices.tiers.get(volume.tier));
    if (iops === undefined) silent.add(volume.tier);
    else {
      given = given.plus(iops);
      parts.push(`${name} ${iops.toDecimalPlaces(1).toString()}`);
    }
  }
  return { given, parts, silent: [...silent].sort() };
}

/** What one volume gives: so many a GiB, capped by the tier's most; a tier with the cap alone gives it at any size. */
function volumeIops({ size }: Volume, tier: Tier | undefined): Decimal | undefined {
  const most = tier?.iopsMaximum === undefined ? undefined : new ExactDecimal(tier.iopsMaximum);
  if (tier?.iopsPerGib === undefined) return most;
  const bySize = new ExactDecimal(size.toString()).div(unitBytes.GiB.toString()).times(tier.iopsPerGib);
  return most === undefined ? bySize : ExactDecimal.min(bySize, most);
}
