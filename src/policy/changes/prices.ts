/**
 * What differs between the price lists of two policies. Prices are facts of the provider's; but what is held against a
 * price is let through, or refused, by whoever writes it down. A lower rate widens every spend limit, and a higher
 * maximum sells what a rule refused.
 */
import { Decimal } from 'decimal.js';
import { onBase, onHead } from '../../change/place.ts';
import { exactSize } from '../../estate/size.ts';
import { listInForce, type PriceList, type ServerType, type Tier } from '../../price/price-list.ts';
import type { PriceUse } from '../../rules/rule.ts';
import type { PolicyChange } from '../../rules/view.ts';
import { allNames, type Direction, policyChange } from './change.ts';
import { showLimit } from './limit.ts';

/** What the policies hold against prices, and what another price comes to for the estate. */
export interface PriceGround {
  readonly uses: ReadonlySet<PriceUse>;
  /** What the estate on main costs more a month by another list, by `tier bulk` or `server type small`. */
  readonly monthlyBy: (was: PriceList, now: PriceList) => ReadonlyMap<string, PolicyChange['monthly']>;
}

export function priceListChanges(
  base: readonly PriceList[],
  head: readonly PriceList[],
  ground: PriceGround,
): readonly PolicyChange[] {
  const before = new Map(base.map((list) => [list.from, list]));
  const after = new Map(head.map((list) => [list.from, list]));
  return allNames(before, after).flatMap((from): readonly PolicyChange[] => {
    const old = before.get(from);
    const now = after.get(from);
    if (old === now) return [];
    const common = { of: 'price-list', name: `prices from ${from}` } as const;
    if (old === undefined && now !== undefined) {
      const came = policyChange({
        ...common,
        direction: 'neither',
        to: now.place.file,
        place: onHead(now.place),
      });
      // From its day on it takes the place of the list that holds then.
      const replaced = listInForce(base, from);
      return replaced === undefined ? [came] : [came, ...differences(replaced, now, common, ground)];
    }
    if (old !== undefined && now === undefined) {
      const left = policyChange({
        ...common,
        direction: 'neither',
        from: old.place.file,
        place: onBase(old.place),
      });
      const instead = listInForce(head, from);
      return instead === undefined ? [left] : [left, ...differences(old, instead, common, ground)];
    }
    return old === undefined || now === undefined ? [] : differences(old, now, common, ground);
  });
}

/** What one key says: as it may be written, and, where it can be more or less, what it comes to. */
interface Written {
  readonly shown: string;
  readonly worth?: Decimal;
}

type Keys = ReadonlyMap<string, Written>;

/** What differs between two lists, key by key; a tier or a server type that one of them has not is one line. */
function differences(
  old: PriceList,
  now: PriceList,
  common: Pick<PolicyChange, 'of' | 'name'>,
  { uses, monthlyBy }: PriceGround,
): readonly PolicyChange[] {
  const monthly = uses.has('cost') ? monthlyBy(old, now) : new Map<string, PolicyChange['monthly']>();
  const changes: PolicyChange[] = [];
  const differ = (
    what: string,
    before: Keys | undefined,
    after: Keys | undefined,
    place: PolicyChange['place'],
  ) => {
    if (before === undefined || after === undefined) {
      const direction = 'neither';
      changes.push(
        policyChange({
          ...common,
          direction,
          key: what,
          from: onOneLine(before),
          to: onOneLine(after),
          place,
        }),
      );
      return;
    }
    let money = monthly.get(what);
    for (const key of new Set([...before.keys(), ...after.keys()])) {
      const [from, to] = [before.get(key), after.get(key)];
      if (from?.shown === to?.shown) continue;
      const direction = keyDirection(key, from, to, uses);
      const isCost = useOf(key) === 'cost';
      changes.push(
        policyChange({
          ...common,
          direction,
          key: `${what}, ${key}`,
          from: from?.shown,
          to: to?.shown,
          place,
          ...(isCost ? { monthly: money } : {}),
        }),
      );
      // Told once, however many of the keys that it comes from have changed.
      if (isCost) money = undefined;
    }
  };
  for (const name of allNames(old.serverTypes, now.serverTypes)) {
    const [before, after] = [old.serverTypes.get(name), now.serverTypes.get(name)];
    const place = after === undefined ? before && onBase(before.place) : onHead(after.place);
    differ(`server type ${name}`, before && serverTypeKeys(before), after && serverTypeKeys(after), place);
  }
  for (const name of allNames(old.tiers, now.tiers)) {
    const [before, after] = [old.tiers.get(name), now.tiers.get(name)];
    const place = after === undefined ? before && onBase(before.place) : onHead(after.place);
    differ(`tier ${name}`, before && tierKeys(before), after && tierKeys(after), place);
  }
  return changes;
}

/** What a key of a list is held against, where not against what things cost. */
const usesOfKeys: Readonly<Record<string, PriceUse>> = {
  minimum: 'sizes',
  maximum: 'sizes',
  step: 'sizes',
  'iops-per-gib': 'iops',
  'iops-maximum': 'iops',
  'servers-a-volume': 'servers',
};

const useOf = (key: string): PriceUse => usesOfKeys[key] ?? 'cost';

/** Which way one key went, where any rule depends on it. */
function keyDirection(
  key: string,
  from: Written | undefined,
  to: Written | undefined,
  uses: ReadonlySet<PriceUse>,
): Direction {
  if (!uses.has(useOf(key))) return 'neither';
  const looser = looserWhen[key];
  if (looser === undefined) return 'unknown';
  // Left out, a bound does not hold, and a figure is not given.
  if (from === undefined || to === undefined) {
    return (to === undefined) === looserWithout.has(key) ? 'looser' : 'tighter';
  }
  if (from.worth === undefined || to.worth === undefined) return 'unknown';
  return to.worth.gt(from.worth) === (looser === 'higher') ? 'looser' : 'tighter';
}

/** Keys that let more through where they are left out: bounds, and what is charged besides. */
const looserWithout: ReadonlySet<string> = new Set(['minimum', 'maximum', 'flat', 'minimum-billed']);

/** Which way a key lets more through; a key that is not here cannot be told by itself. */
const looserWhen: Readonly<Record<string, 'higher' | 'lower'>> = {
  rate: 'lower',
  flat: 'lower',
  'minimum-billed': 'lower',
  running: 'lower',
  stopped: 'lower',
  minimum: 'lower',
  maximum: 'higher',
  'iops-per-gib': 'higher',
  'iops-maximum': 'higher',
  'servers-a-volume': 'higher',
};

const onOneLine = (keys: Keys | undefined): string | undefined =>
  keys && [...keys].map(([key, { shown }]) => `${key} ${shown}`).join(', ');

const amount = (worth: Decimal): Written => ({ shown: worth.toFixed(), worth });

const serverTypeKeys = ({ running, stopped }: ServerType): Keys =>
  new Map([
    ['running', amount(running)],
    ['stopped', amount(stopped)],
  ]);

/** A tier by the keys of its file; amounts in plain figures, however small. */
function tierKeys(tier: Tier): Keys {
  const [first, ...others] = tier.bands;
  const single = others.length === 0 && first !== undefined && first.upTo === undefined;
  const bands = tier.bands.map(
    ({ upTo, rate }) => `${rate.toFixed()}${upTo === undefined ? '' : ` up to ${exactSize(upTo)}`}`,
  );
  const bounds: readonly (readonly [string, bigint | number | undefined])[] = [
    ['minimum-billed', tier.minimumBilled],
    ['minimum', tier.minimum],
    ['maximum', tier.maximum],
    ['step', tier.step],
    ['iops-per-gib', tier.iopsPerGib],
    ['iops-maximum', tier.iopsMaximum],
    ['servers-a-volume', tier.serversAVolume],
  ];
  return new Map<string, Written>([
    single ? ['rate', amount(first.rate)] : ['bands', { shown: bands.join(', then ') }],
    ['per', { shown: tier.unitName }],
    ...(tier.flat.isZero() ? [] : [['flat', amount(tier.flat)] as const]),
    ...bounds.flatMap(([key, value]) => {
      const shown = showLimit(value);
      return shown === undefined || value === undefined
        ? []
        : [[key, { shown, worth: new Decimal(value.toString()) }] as const];
    }),
  ]);
}
