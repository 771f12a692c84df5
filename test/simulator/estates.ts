/** Random pairs of estates that could really be: everything at the site of what holds it, nothing larger than its bed. */
import fc from 'fast-check';
import type { Files } from '../estate/builder.ts';

const serverNames = ['s0', 's1', 's2'];
const volumeNames = ['v0', 'v1', 'v2', 'v3', 'v4', 'v5', 'v6'];
const groupNames = ['g0', 'g1'];
const sites = ['north-quay', 'south-quay'];

const site = fc.constantFrom('north-quay', 'north-quay', 'north-quay', 'south-quay');
const maybe = <T>(arbitrary: fc.Arbitrary<T>) => fc.option(arbitrary, { nil: undefined, freq: 3 });
const rarely = fc.nat({ max: 5 }).map((draw) => draw === 0);

const server = fc.record({
  site,
  power: fc.constantFrom('running' as const, 'running' as const, 'stopped' as const),
  type: fc.constantFrom(undefined, 'small', 'large'),
  boot: fc.boolean(),
});

const mountPoint = fc.constantFrom('/a', '/b', '/a/in');
/** Of its own, or one that others want as well: the first at a server gets it. */
const isWanted = fc.nat({ max: 3 }).map((draw) => draw > 0);
const type = fc.constantFrom('ext4', 'ext4', 'xfs', 'xfs', 'btrfs', 'ext2', 'vfat', 'swap');

const volume = fc.record({
  gib: fc.integer({ min: 10, max: 40 }),
  tier: fc.constantFrom('bulk', 'steady'),
  site,
  shareable: rarely,
  protected: rarely,
  /** What holds it: a group, a server, or nobody; as the boot volume, where that server wants one. */
  seat: fc.constantFrom(...groupNames, ...groupNames, ...serverNames, ...serverNames, 'nobody'),
  system: maybe(fc.record({ mount: mountPoint, isWanted, type })),
});

const group = fc.record({
  on: fc.constantFrom(...serverNames, 'nobody'),
  site,
  extent: fc.constantFrom('4 MiB', '64 MiB'),
  systems: fc.uniqueArray(
    fc.record({
      mount: fc.constantFrom('/x', '/a', '/x/in'),
      isWanted,
      type,
      gib: fc.integer({ min: 1, max: 30 }),
    }),
    { maxLength: 2, selector: ({ mount }) => mount },
  ),
});

type Named<T> = Readonly<Record<string, T | undefined>>;

export interface Plan {
  readonly servers: Named<typeof server extends fc.Arbitrary<infer T> ? T : never>;
  readonly volumes: Named<typeof volume extends fc.Arbitrary<infer T> ? T : never>;
  readonly groups: Named<typeof group extends fc.Arbitrary<infer T> ? T : never>;
}

const named = <T>(names: readonly string[], arbitrary: fc.Arbitrary<T>): fc.Arbitrary<Named<T>> =>
  fc.record(Object.fromEntries(names.map((name) => [name, maybe(arbitrary)])));

const plan: fc.Arbitrary<Plan> = fc.record({
  servers: named(serverNames, server),
  volumes: named(volumeNames, volume),
  groups: named(groupNames, group),
});

/** A base, and a head that keeps most of it: some things made anew, some with one key of another plan, some renamed. */
export const pairs: fc.Arbitrary<readonly [Files, Files]> = fc
  .tuple(
    plan,
    plan,
    fc.array(fc.nat({ max: 11 }), { minLength: 12, maxLength: 12 }),
    fc.nat({ max: 7 }),
    fc.oneof(
      { weight: 3, arbitrary: fc.constant(undefined) },
      { weight: 1, arbitrary: fc.constantFrom(...volumeNames) },
    ),
    fc.oneof(
      { weight: 7, arbitrary: fc.constant(undefined) },
      { weight: 1, arbitrary: fc.constantFrom(...volumeNames) },
    ),
  )
  .map(([base, other, mask, key, swapped, replaced]) => {
    let at = 0;
    const renamed = new Set<string>();
    const mixed = <T extends object>(kept: Named<T>, fresh: Named<T>): Named<T> =>
      Object.fromEntries(
        Object.entries(kept).map(([name, value]) => {
          const draw = mask[at++] ?? 0;
          const instead = fresh[name];
          if (draw === 0) return [name, instead];
          if (draw === 1 && value !== undefined) renamed.add(name);
          if (draw > 4 || value === undefined || instead === undefined) return [name, value];
          const keys = Object.keys(value);
          const chosen = keys[(key + draw) % keys.length] ?? '';
          return [name, { ...value, [chosen]: Reflect.get(instead, chosen) }];
        }),
      );
    const head: Plan = {
      servers: mixed(base.servers, other.servers),
      volumes: withReplacement(withSwap(mixed(base.volumes, other.volumes), swapped), base.volumes, replaced),
      groups: mixed(base.groups, other.groups),
    };
    return [filesOf(base, new Set()), filesOf(head, renamed)];
  });

/** One volume, and the next that something else holds, each in the place of the other. */
function withSwap(volumes: Plan['volumes'], name: string | undefined): Plan['volumes'] {
  const one = name === undefined ? undefined : volumes[name];
  const [other, there] = Object.entries(volumes).find(([, each]) => each?.seat !== one?.seat) ?? [];
  if (name === undefined || other === undefined || one === undefined || there === undefined) return volumes;
  return { ...volumes, [name]: { ...one, seat: there.seat }, [other]: { ...there, seat: one.seat } };
}

/** One volume gone, and in its place one that the base does not have. */
function withReplacement(
  volumes: Plan['volumes'],
  before: Plan['volumes'],
  name: string | undefined,
): Plan['volumes'] {
  const gone = name === undefined ? undefined : volumes[name];
  const free = volumeNames.find((each) => volumes[each] === undefined && before[each] === undefined);
  if (name === undefined || gone === undefined || free === undefined) return volumes;
  return { ...volumes, [name]: undefined, [free]: gone };
}

/** A plan as one estate file, bent to what can be: see the head of this file. */
function filesOf({ servers, volumes, groups }: Plan, renamed: ReadonlySet<string>): Files {
  const call = (name: string): string => (renamed.has(name) ? `${name}-new` : name);
  const formerly = (name: string): object => (renamed.has(name) ? { formerly: name } : {});
  const there = <T>(all: Named<T>): readonly (readonly [string, T])[] =>
    Object.entries(all).flatMap(([name, each]) => (each === undefined ? [] : [[name, each] as const]));
  const serverOf = (name: string): string | undefined => (servers[name] === undefined ? undefined : name);
  const members = (name: string) =>
    there(volumes).filter(([, { seat }]) => seat === name && groups[name] !== undefined);
  const groupOf = (seat: string): string | undefined => (members(seat).length > 0 ? seat : undefined);
  /** The first volume of a server that wants to start from one. */
  const boots = new Map(
    there(servers).flatMap(([name, { boot }]) => {
      const first = there(volumes).find(([, { seat }]) => seat === name)?.[0];
      return boot && first !== undefined ? [[name, first]] : [];
    }),
  );
  const taken = new Set<string>();
  const mountOf = (
    { mount, isWanted, type }: { readonly mount: string; readonly isWanted: boolean; readonly type: string },
    on: string | undefined,
    name: string,
  ): string => {
    const at = `${on} ${mount}`;
    if (!isWanted || type === 'swap' || taken.has(at)) return `${mount}/${name}`;
    taken.add(at);
    return mount;
  };
  const declaredVolumes: Record<string, object> = {};
  const attachments: object[] = [];
  for (const [name, each] of there(volumes)) {
    const inGroup = groupOf(each.seat);
    const on = inGroup === undefined ? serverOf(each.seat) : serverOf(groups[inGroup]?.on ?? '');
    const at =
      on === undefined ? (inGroup === undefined ? each.site : groups[inGroup]?.site) : servers[on]?.site;
    const isBoot = on !== undefined && boots.get(on) === name;
    // What may be shared is, by two servers at one site, where there are two; as a file system that is made for that.
    const also =
      each.shareable && inGroup === undefined && !isBoot && each.system?.type !== 'swap'
        ? there(servers).find(([other, { site: its }]) => on !== undefined && other !== on && its === at)?.[0]
        : undefined;
    const lies =
      inGroup !== undefined || each.system === undefined
        ? {}
        : {
            'file-system': isBoot
              ? { mount: '/', type: 'ext4' }
              : {
                  mount: also === undefined ? mountOf(each.system, on, name) : `${each.system.mount}/${name}`,
                  type: also === undefined ? each.system.type : 'gfs2',
                },
          };
    declaredVolumes[call(name)] = {
      size: `${each.gib} GiB`,
      tier: each.tier,
      site: at ?? sites[0],
      shareable: each.shareable,
      protected: each.protected,
      ...lies,
      ...formerly(name),
    };
    if (on !== undefined && !isBoot) attachments.push({ volume: call(name), server: call(on) });
    if (also !== undefined) attachments.push({ volume: call(name), server: call(also) });
  }
  const declaredGroups = Object.fromEntries(
    there(groups).flatMap(([name, { extent, systems }]) => {
      const its = members(name);
      if (its.length === 0) return [];
      // A gibibyte a member is left for the volume manager's own and for what is cut off at an extent.
      let room = its.reduce((sum, [, { gib }]) => sum + gib - 1, 0);
      const on = serverOf(groups[name]?.on ?? '');
      const laid = systems.flatMap((system) => {
        const { type: made, gib } = system;
        const size = Math.min(gib, room);
        room -= size;
        return size > 0 ? [[mountOf(system, on, name), { size: `${size} GiB`, type: made }]] : [];
      });
      return [
        [
          call(name),
          {
            extent,
            members: its.map(([member]) => call(member)),
            'file-systems': Object.fromEntries(laid),
            ...formerly(name),
          },
        ],
      ];
    }),
  );
  const declaredServers = Object.fromEntries(
    there(servers).map(([name, { site: at, power, type: billed }]) => {
      const boot = boots.get(name);
      return [
        call(name),
        {
          site: at,
          power,
          guest: 'linux-lvm',
          ...(billed === undefined ? {} : { type: billed }),
          ...(boot === undefined ? {} : { boot: call(boot) }),
          ...formerly(name),
        },
      ];
    }),
  );
  return {
    'storage/all.yaml': JSON.stringify({
      servers: declaredServers,
      volumes: declaredVolumes,
      attachments,
      'volume-groups': declaredGroups,
    }),
  };
}
