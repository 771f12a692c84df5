/** Small random estates, whole and consistent, and ways to spread them over files. */
import fc from 'fast-check';
import type { Files } from './builder.ts';

interface Placed {
  readonly team: string;
  readonly site: string;
  /** The number of the file it is declared in. */
  readonly file: number;
}

interface RandomServer extends Placed {
  readonly power: 'running' | 'stopped';
  readonly type: 'small' | undefined;
  readonly boot: string | undefined;
}

interface RandomVolume extends Placed {
  readonly gib: number;
  readonly tier: string;
  readonly shareable: boolean;
  readonly protected: boolean;
  readonly mount: string | undefined;
  /** The servers that hold it. */
  readonly on: readonly string[];
  readonly group: string | undefined;
}

/** What is there, by name; `undefined` where a name is not used. */
export interface Model {
  readonly servers: Readonly<Record<string, RandomServer | undefined>>;
  readonly volumes: Readonly<Record<string, RandomVolume | undefined>>;
  /** The file of each group, and the share of its members' size that its one file system takes. */
  readonly groups: Readonly<Record<string, { readonly file: number; readonly gib: number } | undefined>>;
}

const serverNames = ['s0', 's1', 's2'];
const volumeNames = ['v0', 'v1', 'v2', 'v3', 'v4', 'v5'];
const groupNames = ['g0', 'g1'];
const files = 4;

const teams = fc.constantFrom('soundings', 'imagery', 'ledger');
const sites = fc.constantFrom('north-quay', 'north-quay', 'south-quay');
const file = fc.nat({ max: files - 1 });
const maybe = <T>(arbitrary: fc.Arbitrary<T>) => fc.option(arbitrary, { nil: undefined });
const named = <T>(names: readonly string[], arbitrary: fc.Arbitrary<T>) =>
  fc.record(Object.fromEntries(names.map((name) => [name, arbitrary])));

export const model: fc.Arbitrary<Model> = fc.record({
  servers: named(
    serverNames,
    maybe(
      fc.record({
        team: teams,
        site: sites,
        file,
        power: fc.constantFrom('running' as const, 'stopped' as const),
        type: maybe(fc.constant('small' as const)),
        boot: maybe(fc.constantFrom(...volumeNames)),
      }),
    ),
  ),
  volumes: named(
    volumeNames,
    maybe(
      fc.record({
        team: teams,
        site: sites,
        file,
        gib: fc.integer({ min: 1, max: 3000 }),
        tier: fc.constantFrom('bulk', 'steady', 'brisk'),
        shareable: fc.boolean(),
        protected: fc.boolean(),
        mount: maybe(fc.constantFrom('/a', '/b')),
        on: fc.subarray(serverNames, { maxLength: 2 }),
        group: maybe(fc.constantFrom(...groupNames)),
      }),
    ),
  ),
  groups: named(groupNames, maybe(fc.record({ file, gib: fc.integer({ min: 1, max: 4000 }) }))),
});

/** A base, and a head that keeps most of it. */
export const change: fc.Arbitrary<readonly [Model, Model]> = fc
  .tuple(model, model, fc.array(fc.nat({ max: 3 }), { minLength: 11, maxLength: 11 }))
  .map(([base, other, mask]) => {
    let at = 0;
    const mixed = <T>(kept: Readonly<Record<string, T>>, fresh: Readonly<Record<string, T>>) =>
      Object.fromEntries(
        Object.entries(kept).map(([name, value]) => [name, mask[at++] === 0 ? (fresh[name] as T) : value]),
      );
    return [
      base,
      {
        servers: mixed(base.servers, other.servers),
        volumes: mixed(base.volumes, other.volumes),
        groups: mixed(base.groups, other.groups),
      },
    ];
  });

export interface Spread {
  /** Which file a declaration goes to; its own where left out. */
  readonly to?: (name: string, own: number) => number;
  /** Turns the order of the declarations in each file round. */
  readonly backwards?: boolean;
  /** Things that have a new name, and say which was their old one. */
  readonly renamed?: ReadonlySet<string>;
}

/** A model as estate files, of which JSON is a way of writing. References to what is not there are left out. */
export function filesOf(
  { servers, volumes, groups }: Model,
  { to = (_name, own) => own, backwards = false, renamed = new Set() }: Spread = {},
): Files {
  const call = (name: string): string => (renamed.has(name) ? `${name}-renamed` : name);
  const formerly = (name: string): object => (renamed.has(name) ? { formerly: name } : {});
  const written = Array.from({ length: files }, () => ({
    servers: {} as Record<string, object>,
    volumes: {} as Record<string, object>,
    'volume-groups': {} as Record<string, object>,
    attachments: [] as object[],
  }));
  const inOrder = <T>(record: Readonly<Record<string, T | undefined>>): readonly (readonly [string, T])[] => {
    const entries = Object.entries(record).flatMap(([name, value]) =>
      value === undefined ? [] : [[name, value] as const],
    );
    return backwards ? entries.reverse() : entries;
  };
  const part = (name: string, own: number) => written[to(name, own) % files] ?? written[0];
  for (const [name, { team, site, power, type, boot, file: own }] of inOrder(servers)) {
    const there = boot !== undefined && volumes[boot] !== undefined ? { boot: call(boot) } : {};
    const billed = type === undefined ? {} : { type };
    const declared = { team, site, power, ...billed, ...there, ...formerly(name) };
    Object.assign(part(name, own)?.servers ?? {}, { [call(name)]: declared });
  }
  for (const [name, each] of inOrder(volumes)) {
    const { team, site, gib, tier, shareable, mount, on, group, file: own } = each;
    const grouped = group !== undefined && groups[group] !== undefined;
    const system =
      mount === undefined || grouped ? {} : { 'file-system': { mount: `${mount}/${name}`, type: 'ext4' } };
    const declared = { team, site, size: `${gib} GiB`, tier, shareable, protected: each.protected };
    Object.assign(part(name, own)?.volumes ?? {}, {
      [call(name)]: { ...declared, ...system, ...formerly(name) },
    });
    for (const server of backwards ? [...on].reverse() : on) {
      if (servers[server] === undefined) continue;
      part(`${name} ${server}`, own)?.attachments.push({ volume: call(name), server: call(server) });
    }
  }
  for (const [name, { file: own, gib }] of inOrder(groups)) {
    const members = Object.keys(volumes).filter((each) => volumes[each]?.group === name);
    if (members.length === 0) continue;
    const declared = {
      members: members.map(call),
      'file-systems': { [`/plates/${name}`]: { size: `${gib} GiB`, type: 'xfs' } },
      ...formerly(name),
    };
    Object.assign(part(name, own)?.['volume-groups'] ?? {}, { [call(name)]: declared });
  }
  return Object.fromEntries(written.map((each, index) => [`storage/${index}.yaml`, JSON.stringify(each)]));
}
