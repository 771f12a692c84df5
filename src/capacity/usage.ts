/** Measured use held against the declared file systems: what each has left, and when it will be full. */
import type { Estate, FileSystem } from '../estate/estate.ts';
import { serversOfFileSystem } from '../estate/estate.ts';
import { type Bytes, bytes, sumBytes } from '../estate/size.ts';
import { type Forecast, forecast, isFarFromFull } from './forecast.ts';
import { asThen } from './former.ts';
import type { Room } from './headroom.ts';
import { atSizeOf, type MeasuredFileSystem } from './measured.ts';
import { isKnown, usableOf } from './overhead.ts';
import { fillableBytes, type Reading } from './readings.ts';
import { type Slopes, slopesOf } from './trend.ts';
import { type UseSummary, useKey } from './use-summary.ts';

type Summary = Pick<UseSummary, 'last' | 'highest'>;

/** What is known of one file system's use. All but the last reading is reckoned when asked for. */
export interface Usage {
  /** What it is known by. */
  readonly summary: Summary;
  readonly last: Reading;
  /** When it will hold `capacity`, by the readings. */
  forecastFor(capacity: Bytes): Forecast;
  /** Whether there is no telling apart from never that it holds `capacity` within so many days; quick to tell. */
  isFarFromFull(capacity: Bytes, days: number): boolean;
  /** The slope of all readings together, to stand beside a forecast. */
  slopes(): Slopes;
}

/** The use of the declared file systems of one revision. */
export interface EstateUsage {
  /** By the file system's name. */
  readonly bySystem: ReadonlyMap<string, Usage>;
  /** Where the readings were taken to belong. */
  readonly estate: Estate;
  /** The readings themselves, by `useKey`. */
  readonly summaries: ReadonlyMap<string, UseSummary>;
}

/**
 * The use of every declared file system that has readings, by its name. One that several servers mount, or that
 * travelled from one to another, is known by the server with the latest reading.
 *
 * @param summaries by `useKey`
 * @param previous that of an earlier revision: what it has reckoned from a summary is not reckoned again
 */
export function usageOf(
  estate: Estate,
  summaries: ReadonlyMap<string, UseSummary>,
  previous?: EstateUsage,
): EstateUsage {
  const known = new Map([...(previous?.bySystem.values() ?? [])].map((usage) => [usage.summary, usage]));
  const bySystem = new Map<string, Usage>();
  if (summaries.size > 0) {
    const carriedOver = remounted(estate, summaries);
    for (const system of estate.fileSystems.values()) {
      const [latest] = serversOfFileSystem(estate, system)
        .flatMap((server) => {
          const key = useKey(server, system.mount);
          return carriedOver.get(key) ?? summaries.get(key) ?? [];
        })
        .sort((a, b) => (a.last.at < b.last.at ? 1 : -1));
      if (latest !== undefined) bySystem.set(system.name, known.get(latest) ?? usageFrom(latest));
    }
  }
  return { bySystem, estate, summaries };
}

/**
 * Readings that go on under another mount point. On one server, the only mount point with readings that nothing
 * declares any more, and the only file system whose readings begin after those end, or that has none, are one and the
 * same if their sizes agree. Among several nothing tells which is which.
 */
function remounted(
  estate: Estate,
  summaries: ReadonlyMap<string, UseSummary>,
): ReadonlyMap<string, UseSummary> {
  const declared = new Map<string, FileSystem[]>();
  for (const system of estate.fileSystems.values()) {
    for (const server of serversOfFileSystem(estate, system)) {
      const those = declared.get(server);
      if (those === undefined) declared.set(server, [system]);
      else those.push(system);
    }
  }
  const left = new Map<string, UseSummary[]>();
  for (const summary of summaries.values()) {
    const those = declared.get(summary.server);
    if (those === undefined || those.some(({ mount }) => mount === summary.mount)) continue;
    left.set(summary.server, [...(left.get(summary.server) ?? []), summary]);
  }
  const carriedOver = new Map<string, UseSummary>();
  for (const [server, [former, ...others]] of left) {
    if (former === undefined || others.length > 0) continue;
    const came = (declared.get(server) ?? []).filter(({ mount }) => {
      const own = summaries.get(useKey(server, mount));
      return own === undefined || own.first.at > former.last.at;
    });
    const [system, ...more] = came;
    if (system === undefined || more.length > 0) continue;
    const key = useKey(server, system.mount);
    const own = summaries.get(key);
    if (!isOfOneSize(own?.first.size ?? declaredSize(system), former.last.size)) continue;
    carriedOver.set(
      key,
      own === undefined
        ? { ...former, mount: system.mount }
        : {
            ...own,
            count: former.count + own.count,
            first: former.first,
            highest: [...former.highest, ...own.highest],
          },
    );
  }
  return carriedOver;
}

/** What a reading of a file system as it is declared would call its size, as far as that is known. */
function declaredSize(system: FileSystem): Bytes {
  const space = usableOf(system, system.size);
  return isKnown(space) ? space.data : system.size;
}

/**
 * The use of a file system as a revision declares it, by readings that were taken under another: also under the name
 * that what it lies on had then, and under another mount point if the file system only moved to it.
 */
export const usageFor = (
  system: FileSystem,
  estate: Estate,
  usage: EstateUsage | undefined,
): Usage | undefined =>
  usage === undefined || usage.bySystem.size === 0 ? undefined : asThen(system, estate, usage);

/** The use that a summary tells of; a forecast is reckoned once for each capacity. */
export function usageFrom(summary: Summary): Usage {
  const { last, highest } = summary;
  const known = new Map<bigint, Forecast>();
  // A day's highest reading counts, and so does the last of all, which says where it stands.
  const readings = highest.at(-1)?.at === last.at ? highest : [...highest, last];
  return {
    summary,
    last,
    forecastFor: (capacity) => {
      const before = known.get(capacity);
      if (before !== undefined) return before;
      const now = forecast(readings, capacity);
      known.set(capacity, now);
      return now;
    },
    isFarFromFull: (capacity, days) => isFarFromFull(readings, capacity, days),
    slopes: () => slopesOf(readings),
  };
}

/** Within so many parts in a hundred, a measured size is that of the declared device; common practice, no source. */
const alike = 2n;

/**
 * What a file system has left. A reading tells it best; but where the declared device is no longer the one that was
 * measured (the change grows it, or it was grown since), a survey of it tells it, or else what its type makes of the new
 * size, as far as that is known.
 *
 * @param measured what is surveyed of it, whatever its size now
 */
export function fileSystemRoom(
  system: FileSystem,
  { last }: Pick<Usage, 'last'>,
  measured?: MeasuredFileSystem,
): Room {
  const isNewer =
    measured?.shown !== undefined && last.at > measured.at && isOfOneSize(measured.shown, last.size);
  const capacity =
    measured === undefined
      ? fillable(system, last)
      : // Of two measurements of one thing the newer counts, on both sides of a change.
        atSizeOf(isNewer ? fillableBytes(last) : measured.fillable, measured, system);
  return {
    layer: 'file-system',
    subject: { kind: 'file-system', name: system.name },
    belonging: system,
    place: system.fields.of('size') ?? system.place,
    measure: 'bytes',
    capacity,
    taken: last.used,
    free: bytes(capacity - last.used),
    ...(measured === undefined || isNewer ? {} : { surveyed: measured.at }),
  };
}

function fillable(system: FileSystem, last: Reading): Bytes {
  const space = usableOf(system, system.size);
  if (!isKnown(space)) return fillableBytes(last);
  return isOfOneSize(space.data, last.size) ? fillableBytes(last) : sumBytes([space.own, space.available]);
}

/** Whether a file system that shows this size may be the one that is expected to show that. */
export function isOfOneSize(one: Bytes, measured: Bytes): boolean {
  const apart = one > measured ? one - measured : measured - one;
  return apart * 100n <= measured * alike;
}
