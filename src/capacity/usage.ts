/** Measured use held against the declared file systems: what each has left, and when it will be full. */
import type { Estate, FileSystem } from '../estate/estate.ts';
import { serversOfFileSystem } from '../estate/estate.ts';
import { type Bytes, bytes, sumBytes } from '../estate/size.ts';
import { type Forecast, forecast } from './forecast.ts';
import type { Room } from './headroom.ts';
import { isKnown, usableOf } from './overhead.ts';
import { fillableBytes, type Reading, type UseSummary, useKey } from './readings.ts';

/** What is known of one file system's use. */
export interface Usage {
  readonly last: Reading;
  /** When it will hold `capacity`, by the readings; reckoned when asked for. */
  forecastFor(capacity: Bytes): Forecast;
}

/**
 * The use of every declared file system that has readings, by its name. One that several servers mount, or that
 * travelled from one to another, is known by the server with the latest reading.
 *
 * @param summaries by `useKey`
 */
export function usageOf(
  estate: Estate,
  summaries: ReadonlyMap<string, UseSummary>,
): ReadonlyMap<string, Usage> {
  const usage = new Map<string, Usage>();
  if (summaries.size === 0) return usage;
  for (const system of estate.fileSystems.values()) {
    const [latest] = serversOfFileSystem(estate, system)
      .flatMap((server) => summaries.get(useKey(server, system.mount)) ?? [])
      .sort((a, b) => (a.last.at < b.last.at ? 1 : -1));
    if (latest !== undefined) usage.set(system.name, usageFrom(latest));
  }
  return usage;
}

/** One summary gives one usage, so that what was forecast from it is not forecast again. */
/** The use of a file system, also under the name that what it lies on had when the readings were taken. */
export function usageFor(
  { mount, name, on }: FileSystem,
  { groups, volumes }: Estate,
  usage: ReadonlyMap<string, Usage> | undefined,
): Usage | undefined {
  const carrier = on.kind === 'volume' ? volumes.get(on.name) : groups.get(on.name);
  return (
    usage?.get(name) ??
    (carrier?.formerly === undefined ? undefined : usage?.get(`${carrier.formerly}:${mount}`))
  );
}

export function usageFrom(summary: Pick<UseSummary, 'last' | 'daily'>): Usage {
  const before = usages.get(summary);
  if (before !== undefined) return before;
  const usage = freshUsage(summary);
  usages.set(summary, usage);
  return usage;
}

const usages = new WeakMap<object, Usage>();

function freshUsage({ last, daily }: Pick<UseSummary, 'last' | 'daily'>): Usage {
  const known = new Map<bigint, Forecast>();
  return {
    last,
    forecastFor: (capacity) => {
      const before = known.get(capacity);
      if (before !== undefined) return before;
      const now = forecast(daily, capacity);
      known.set(capacity, now);
      return now;
    },
  };
}

/** Within so many parts in a hundred, a measured size is that of the declared device; common practice, no source. */
const alike = 2n;

/**
 * What a file system has left. A reading tells it best; but where the declared device is no longer the one that was
 * measured (the change grows it, or it was grown since), what its type makes of the new size tells it, as far as
 * that is known.
 */
export function fileSystemRoom(system: FileSystem, { last }: Usage): Room {
  const capacity = fillable(system, last);
  return {
    layer: 'file-system',
    subject: { kind: 'file-system', name: system.name },
    belonging: system,
    place: system.fields.of('size') ?? system.place,
    measure: 'bytes',
    capacity,
    taken: last.used,
    free: bytes(capacity - last.used),
  };
}

function fillable({ type, size }: FileSystem, last: Reading): Bytes {
  const space = usableOf(type, size);
  if (!isKnown(space)) return fillableBytes(last);
  const apart = space.data > last.size ? space.data - last.size : last.size - space.data;
  return apart * 100n <= last.size * alike ? fillableBytes(last) : sumBytes([space.own, space.available]);
}
