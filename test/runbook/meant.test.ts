/**
 * Which volume, which server and which disk a command names, of two that have one name: on random branches, held
 * against a world in which each thing has an identifier of its own, in the order that is shown and in others.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Comparison, compareEstates } from '../../src/change/compare.ts';
import { headName } from '../../src/change/renames.ts';
import type { Estate } from '../../src/estate/estate.ts';
import { actions } from '../../src/runbook/actions.ts';
import { gatherProcedures } from '../../src/runbook/procedures.ts';
import { runbookOf } from '../../src/runbook/runbook.ts';
import type { Step } from '../../src/runbook/step.ts';
import type { Survey } from '../../src/survey/survey.ts';
import { assembled, type Files, judged, valueIn } from '../estate/builder.ts';
import { attempt } from '../simulator/attempt.ts';
import { worldOf } from '../simulator/begin.ts';
import { pairs } from '../simulator/estates.ts';
import { otherOrders } from '../simulator/orders.ts';
import type { Disk, Server, World } from '../simulator/world.ts';
import { playedSurveys } from '../survey/played.ts';
import { waitsFor } from './waits-for.ts';

/** Every action of a provider by a command that says whose it is, and names all that it may. */
const providers = gatherProcedures(
  Object.entries({ stratus: 'north-quay', nimbus: 'south-quay' }).map(([name, site]) => ({
    of: 'provider' as const,
    name,
    sites: [site],
    actions: Object.fromEntries(
      Object.entries(actions).flatMap(([action, { at, fills }]) => {
        const asked: readonly string[] = fills;
        return at === 'provider'
          ? [
              [
                action,
                { commands: [{ run: [name, ...asked.map((each) => `${each}={${each}}`)], from: 'memory' }] },
              ],
            ]
          : [];
      }),
    ),
    place: { file: `procedures/${name}.yaml`, line: 1, column: 1 },
  })),
).value;

interface Written {
  readonly servers: Readonly<Record<string, { readonly formerly?: string }>>;
  readonly volumes: Readonly<Record<string, { readonly formerly?: string }>>;
}

/** Each thing of main has an identifier; on the branch it has that, or another. */
function withIds(text: string, isOther: (name: string) => boolean): string {
  const written: Written = JSON.parse(text);
  const marked = (things: Written['volumes']): object =>
    Object.fromEntries(
      Object.entries(things).map(([name, thing]) => {
        const former = thing.formerly ?? name;
        return [name, { ...thing, id: `${former}-${isOther(former) ? 'second' : 'first'}` }];
      }),
    );
  return JSON.stringify({ ...written, servers: marked(written.servers), volumes: marked(written.volumes) });
}

interface Branch {
  readonly comparison: Comparison;
  readonly base: Estate;
  readonly head: Estate;
  readonly steps: readonly Step[];
  readonly surveys: readonly Survey[];
}

const branches: fc.Arbitrary<Branch> = fc
  .tuple(pairs, fc.array(fc.constantFrom(true, false, false), { minLength: 10, maxLength: 10 }))
  .map(([files, others]): Branch => {
    const [was, is] = files.map((each, side) =>
      assembled({
        'storage/all.yaml': withIds(
          each['storage/all.yaml'] ?? '',
          (name) => side === 1 && others[Number(name.charAt(1)) + (name.startsWith('v') ? 3 : 0)] === true,
        ),
      }),
    );
    fc.pre(was?.ok === true && is?.ok === true);
    if (was === undefined || is === undefined) throw new Error('no estate');
    const [base, head] = [valueIn(was), valueIn(is)];
    const comparison = compareEstates(base, head);
    fc.pre(comparison.contradictions.length === 0);
    const surveys = playedSurveys(base);
    return {
      comparison,
      base,
      head,
      surveys,
      steps: runbookOf(comparison, base, head, { procedures: providers, surveys }),
    };
  });

/** What each thing in the world is to its provider. */
class Register {
  readonly #disks = new Map<Disk, string | undefined>();
  readonly #servers = new Map<Server, readonly [site: string, id: string | undefined]>();
  readonly #base: Estate;
  readonly #head: Estate;

  constructor(base: Estate, head: Estate, world: World, { renames }: Comparison) {
    this.#base = base;
    this.#head = head;
    for (const [name, disk] of world.disks) {
      const former = [...base.volumes.values()].find((each) => headName(renames.volumes, each.name) === name);
      this.#disks.set(disk, former?.id);
    }
    for (const [name, server] of world.servers) {
      const former = [...base.servers.values()].find((each) => headName(renames.servers, each.name) === name);
      this.#servers.set(server, [server.site, former?.id]);
    }
  }

  /** A disk that was not there has the identifier that is declared for it, unless that is another's. */
  disk(disk: Disk): string | undefined {
    if (this.#disks.has(disk)) return this.#disks.get(disk);
    const id = this.#head.volumes.get(disk.name)?.id;
    return [...this.#base.volumes.values()].some((each) => each.id === id) ? undefined : id;
  }

  isOfMain(disk: Disk): boolean {
    return this.#disks.has(disk);
  }

  server(server: Server): string | undefined {
    const [site, id] = this.#servers.get(server) ?? [];
    if (site === server.site) return id;
    const declared = this.#head.servers.get(server.name)?.id;
    return [...this.#base.servers.values()].some((each) => each.id === declared) ? undefined : declared;
  }
}

/** The disk that a step of a provider is about; nothing of one that it makes. */
function diskOf(world: World, { procedure, words }: Step): Disk | undefined {
  const name = words.volume ?? '';
  if (['detach-old', 'unprotect-old', 'delete-old'].includes(procedure)) return world.old.get(name);
  if (['attach-smaller', 'fill-smaller'].includes(procedure)) return world.fresh.get(name);
  return procedure === 'copy-across' || procedure === 'create-smaller' ? undefined : world.disks.get(name);
}

const named = (command: string, fill: string): string | undefined =>
  new RegExp(`\\b${fill}=([a-z0-9-]+)`).exec(command)?.[1];

describe('a command', () => {
  it('names the very thing, at its own provider, or nothing', () => {
    const counts = new Map<string, number>();
    const count = (what: string): void => {
      counts.set(what, (counts.get(what) ?? 0) + 1);
    };
    fc.assert(
      fc.property(branches, ({ comparison, base, head, steps, surveys }) => {
        // What no order carries out is not carried out.
        if (steps.some(({ snag }) => snag !== undefined)) return;
        for (const order of [steps, ...otherOrders(steps)]) {
          const world = worldOf(base, head, comparison.renames, { slots: 9, quota: undefined });
          const register = new Register(base, head, world, comparison);
          /** The disks that are where they were, on servers that have run since, by the server and the device. */
          const shown = new Map(
            surveys.flatMap((survey) => {
              const server = headName(comparison.renames.servers, survey.server);
              return survey.devices.flatMap(({ name, serial }) => {
                const disk = [...world.disks.values()].find((each) => register.disk(each) === serial);
                return disk === undefined ? [] : [[`${server} ${name}`, disk] as const];
              });
            }),
          );
          const later: Step[] = [];
          for (const step of order) {
            const server = step.server === undefined ? undefined : world.servers.get(step.server);
            for (const { command } of step.examples) {
              if (step.at === 'provider') {
                const disk = diskOf(world, step);
                const id = named(command, 'volume-id');
                if (id !== undefined && disk !== undefined) {
                  count(step.procedure);
                  expect(id, `${command}: ${step.does}`).toBe(register.disk(disk));
                }
                // What is made has no identifier of something that is there.
                if (id !== undefined && disk === undefined)
                  expect(
                    [...base.volumes.values()].map((each) => each.id),
                    command,
                  ).not.toContain(id);
                const serverId = named(command, 'server-id');
                if (serverId !== undefined && server !== undefined) {
                  count('server');
                  expect(serverId, `${command}: ${step.does}`).toBe(register.server(server));
                }
                const site = step.subject.kind === 'server' ? server?.site : disk?.site;
                if (site !== undefined) {
                  count(site);
                  expect(command.split(' ')[0], step.does).toBe(site === 'north-quay' ? 'stratus' : 'nimbus');
                }
              }
              for (const [, device = ''] of command.matchAll(/(?:\/dev\/|\/block\/)([sv]d[a-z]+)/g)) {
                count('device');
                const disk = shown.get(`${step.server} ${device}`);
                expect(disk, `${command}: ${step.does}`).toBeDefined();
                if (disk !== undefined) expect(disk.holders.has(step.server ?? ''), command).toBe(true);
                const about = [step.words.volume, step.words.on].flatMap((name) => {
                  const there = world.disks.get(name ?? '');
                  return there === undefined ? [] : [there];
                });
                const isMember = disk?.content.kind === 'member' || step.procedure.startsWith('make-group');
                expect(isMember || about.includes(disk as Disk), `${command}: ${step.does}`).toBe(true);
              }
            }
            if (attempt(world, step, head, later) !== undefined) break;
            for (const [key, disk] of shown) {
              const [name = ''] = key.split(' ');
              if (world.servers.get(name)?.power !== 'running' || !disk.holders.has(name)) shown.delete(key);
            }
          }
        }
      }),
      { numRuns: 1_000 },
    );
    for (const each of [
      'detach',
      'attach',
      'delete-volume',
      'delete-old',
      'detach-old',
      'unprotect-old',
      'grow-volume',
      'server',
      'device',
      'north-quay',
      'south-quay',
    ])
      expect(counts.get(each) ?? 0, each).toBeGreaterThan(0);
  });
});

describe('a thing of which it is to be found out which one it is', () => {
  it('is left alone until then, and no disk of it is named', () => {
    const counts = new Map<string, number>();
    fc.assert(
      fc.property(branches, ({ steps, surveys }) => {
        for (const { number, subject, procedure } of steps) {
          if (procedure !== 'check-identity') continue;
          const former = subject.name.replace('-new', '');
          const devices = surveys.flatMap((survey) =>
            subject.kind === 'server'
              ? survey.server === former
                ? survey.devices.map(({ name }) => `${former} ${name}`)
                : []
              : survey.devices.flatMap(({ name, serial }) =>
                  serial === `${former}-first` ? [`${survey.server} ${name}`] : [],
                ),
          );
          for (const step of steps) {
            if (step.snag !== undefined) return;
            const { words, server, does, examples } = step;
            const isOfIt =
              subject.kind === 'server'
                ? server === subject.name
                : step.subject.kind === 'volume' && step.subject.name === subject.name;
            const looks = ['check-backup', 'check-identity', 'check-layers'].includes(step.procedure);
            if (isOfIt && !looks) {
              counts.set(subject.kind, (counts.get(subject.kind) ?? 0) + 1);
              expect([...waitsFor(steps, step)], `${does} ${words.volume}`).toContain(number);
            }
            for (const { command } of examples)
              for (const [, device = ''] of command.matchAll(/(?:\/dev\/|\/block\/)([sv]d[a-z]+)/g))
                expect(devices, command).not.toContain(`${server?.replace('-new', '')} ${device}`);
          }
        }
      }),
      { numRuns: 1_000 },
    );
    for (const each of ['server', 'volume']) expect(counts.get(each) ?? 0, each).toBeGreaterThan(0);
  });
});

const office = (text: string): Files => ({ 'storage/imagery.yaml': text });
const main = office(`
servers:
  scanner: { site: north-quay, id: s-1 }
  far: { site: south-quay, id: s-2 }
volumes:
  plates: { id: v-4, site: north-quay, size: 40 GiB, tier: bulk, file-system: { mount: /plates, type: ext4 } }
attachments:
  - { volume: plates, server: scanner }
`);
const edited = (...edits: readonly (readonly [string, string])[]): Files =>
  office(
    edits.reduce((text, [from, to]) => {
      if (!text.includes(from)) throw new Error(`nothing says ${from}`);
      return text.replace(from, to);
    }, main['storage/imagery.yaml'] ?? ''),
  );
const own = (provider: string, site: string): Files => ({
  [`procedures/${provider}.yaml`]: `
provider: ${provider}
sites: [${site}]
actions:
${[
  'copy-across',
  'create-smaller',
  'attach-smaller',
  'attach',
  'detach',
  'detach-old',
  'delete-old',
  'grow-volume',
]
  .map((name) => `  ${name}: { commands: [{ run: [${provider}, ${name}, "{volume-id}"] }] }\n`)
  .join('')}`,
});
const both = { ...own('stratus', 'north-quay'), ...own('nimbus', 'south-quay') };
const commands = async (head: Files): Promise<readonly string[]> =>
  (await judged({ ...main, ...both }, { ...head, ...both })).runbook.flatMap(({ at, examples }) =>
    at === 'provider' ? examples.map(({ command }) => command) : [],
  );

describe('a volume that is made again at another site', () => {
  const moved = [
    ['site: north-quay, size', 'site: south-quay, size'],
    ['server: scanner', 'server: far'],
  ] as const;

  it('is deleted where it was, by its own identifier, by the provider of that site', async () => {
    expect(await commands(edited(...moved))).toEqual([
      'stratus detach v-4',
      'nimbus copy-across VOLUME_ID',
      'nimbus attach VOLUME_ID',
      'stratus delete-old v-4',
    ]);
    expect(await commands(edited(...moved, ['v-4', 'v-9']))).toEqual([
      'stratus detach v-4',
      'nimbus copy-across v-9',
      'nimbus attach v-9',
      'stratus delete-old v-4',
    ]);
  });
});

describe('a volume that a smaller one takes the place of', () => {
  it('is the one that is detached and deleted', async () => {
    expect(await commands(edited(['40 GiB', '20 GiB']))).toEqual([
      'stratus create-smaller VOLUME_ID',
      'stratus attach-smaller VOLUME_ID',
      'stratus detach-old v-4',
      'stratus delete-old v-4',
    ]);
  });
});
