/**
 * What no runbook may ever say, on random branches. What is declared is read here from the declarations' own text, and
 * what is surveyed is what a played server's tools would print: nothing of it goes through the planner.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { compareEstates } from '../../src/change/compare.ts';
import type { Estate } from '../../src/estate/estate.ts';
import { actions, isAction } from '../../src/runbook/actions.ts';
import { runbookOf } from '../../src/runbook/runbook.ts';
import type { Step } from '../../src/runbook/step.ts';
import type { Survey } from '../../src/survey/survey.ts';
import { assembled, estateOf, valueIn } from '../estate/builder.ts';
import { pairs } from '../simulator/estates.ts';
import { playedSurveys } from '../survey/played.ts';
import { waitsFor } from './waits-for.ts';

interface System {
  readonly size?: string;
  readonly type: string;
  readonly mount?: string;
  readonly existing?: boolean;
}

interface Thing {
  readonly formerly?: string;
  readonly existing?: boolean;
}

interface Written {
  readonly servers: Readonly<Record<string, Thing & { readonly boot?: string; readonly power: string }>>;
  readonly volumes: Readonly<
    Record<string, Thing & { readonly size: string; readonly 'file-system'?: System; readonly id: string }>
  >;
  readonly attachments: readonly { readonly volume: string; readonly server: string }[];
  readonly 'volume-groups': Readonly<
    Record<
      string,
      Thing & {
        readonly extent: string;
        readonly members: readonly string[];
        readonly 'file-systems': Readonly<Record<string, System>>;
      }
    >
  >;
}

interface Branch {
  readonly base: Written;
  readonly head: Written;
  readonly estates: readonly [Estate, Estate];
  readonly steps: readonly Step[];
}

/** Sizes that are no round number of gibibytes: half of one more, a mebibyte less, or as they were. */
const uneven = (text: string): string =>
  text.replaceAll(/"([0-9]+) GiB"/g, (whole, gib: string) => {
    const number = Number(gib);
    return number % 3 === 0 ? `"${number}.25 GiB"` : number % 3 === 1 ? `"${number * 1024 - 1} MiB"` : whole;
  });

const withIds = (text: string): string =>
  text.replaceAll(/"(v[0-9])(-new)?":\{"size"/g, '"$1$2":{"id":"$1-0123456789","size"');

const parsed = (text: string): Written => JSON.parse(text);

/** What the head has and the base has not, said to be there already. */
function adopting(base: Written, head: Written): Written {
  const marked = <T extends Thing>(was: Readonly<Record<string, T>>, is: Readonly<Record<string, T>>) =>
    Object.fromEntries(
      Object.entries(is).map(([name, thing]) => [
        name,
        was[thing.formerly ?? name] === undefined ? { ...thing, existing: true } : thing,
      ]),
    );
  return {
    ...head,
    servers: marked(base.servers, head.servers),
    volumes: marked(base.volumes, head.volumes),
    'volume-groups': marked(base['volume-groups'], head['volume-groups']),
  };
}

const branches = (
  adopts: boolean,
  surveysOf: (estate: Estate) => readonly Survey[] = () => [],
): fc.Arbitrary<Branch> =>
  pairs.map(([before, after]): Branch => {
    const [base, whole] = [before, after].map((files) =>
      parsed(withIds(uneven(files['storage/all.yaml'] ?? ''))),
    );
    if (base === undefined || whole === undefined) throw new Error('no estate');
    const head = adopts ? adopting(base, whole) : whole;
    const [was, is] = [base, head].map((each) => assembled({ 'storage/all.yaml': JSON.stringify(each) }));
    fc.pre(was?.ok === true && is?.ok === true);
    if (was === undefined || is === undefined) throw new Error('no estate');
    const estates = [valueIn(was), valueIn(is)] as const;
    const comparison = compareEstates(...estates);
    fc.pre(comparison.contradictions.length === 0);
    const steps = runbookOf(comparison, ...estates, { surveys: surveysOf(estates[0]) });
    return { base, head, estates, steps };
  });

const units: Readonly<Record<string, bigint>> = {
  MiB: 1n << 20n,
  GiB: 1n << 30n,
  M: 1n << 20n,
  G: 1n << 30n,
  K: 1n << 10n,
};

/** Bytes of a size, as this file writes it or a command has it. */
function bytesOf(text: string): bigint {
  const [, whole = '', fraction = '', unit = ''] = /^([0-9]+)(?:\.([0-9]+))? ?([A-Za-z]+)$/.exec(text) ?? [];
  const scale = units[unit];
  if (scale === undefined) throw new Error(`no size: ${text}`);
  return (BigInt(whole + fraction) * scale) / 10n ** BigInt(fraction.length);
}

const formerName = (things: Readonly<Record<string, Thing>>, name: string): string =>
  things[name]?.formerly ?? name;

/** The carriers and mount points of all file systems, by the names of the base. */
function systemsIn(base: Written, side: Written): ReadonlyMap<string, string> {
  const found = new Map<string, string>();
  const now = side === base ? undefined : side;
  for (const [name, volume] of Object.entries(side.volumes)) {
    const system = volume['file-system'];
    if (system !== undefined)
      found.set(`${formerName(now?.volumes ?? {}, name)} ${system.mount}`, system.size ?? volume.size);
  }
  for (const [name, group] of Object.entries(side['volume-groups']))
    for (const [mount, { size }] of Object.entries(group['file-systems']))
      found.set(`${formerName(now?.['volume-groups'] ?? {}, name)} ${mount}`, size ?? '');
  return found;
}

/** A group that is said to be there; on what main declares otherwise it cannot be. */
const declaredThere = (base: Written, head: Written, group: string): boolean =>
  head['volume-groups'][group]?.existing === true &&
  head['volume-groups'][group].members.every(
    (member) => base.volumes[formerName(head.volumes, member)] === undefined,
  );

const runs = { numRuns: 250 };

describe('what exists', () => {
  it('is never created, formatted or made, whether main has it or the branch only declares it', () => {
    const counts = new Map<string, number>();
    fc.assert(
      fc.property(
        fc.boolean().chain((adopts) => branches(adopts)),
        ({ base, head, steps }) => {
          const systems = systemsIn(base, base);
          const there = {
            volume: (name: string) =>
              base.volumes[formerName(head.volumes, name)] !== undefined ||
              head.volumes[name]?.existing === true,
            server: (name: string) =>
              base.servers[formerName(head.servers, name)] !== undefined ||
              head.servers[name]?.existing === true,
            group: (name: string) =>
              base['volume-groups'][formerName(head['volume-groups'], name)] !== undefined ||
              declaredThere(base, head, name),
          };
          for (const { procedure, words, subject, server, does } of steps) {
            counts.set(procedure, (counts.get(procedure) ?? 0) + 1);
            const { volume = '', group = '', on = '', mount = '' } = words;
            const refuse = (is: boolean): void => expect(is, does).toBe(false);
            if (procedure === 'create-volume') refuse(there.volume(subject.name));
            if (procedure === 'create-server') refuse(there.server(server ?? ''));
            if (procedure === 'make-group' || procedure === 'make-group-over') refuse(there.group(group));
            if (procedure === 'make-group')
              refuse(Object.values(head['volume-groups'][group]?.members ?? []).some(there.volume));
            if (procedure === 'join-group') refuse(there.volume(volume));
            if (procedure === 'attach' || procedure === 'attach-boot')
              refuse(
                head.volumes[volume]?.existing === true && head.servers[server ?? '']?.existing === true,
              );
            if (procedure === 'make-logical-volume')
              refuse(systems.has(`${formerName(head['volume-groups'], group)} ${mount}`));
            if (procedure === 'make-file-system' || procedure === 'make-file-system-over') {
              const isGroup = head['volume-groups'][on]?.['file-systems'][mount] !== undefined;
              const name = formerName(isGroup ? head['volume-groups'] : head.volumes, on);
              refuse(systems.has(`${name} ${mount}`));
              refuse(isGroup ? declaredThere(base, head, on) : head.volumes[on]?.existing === true);
              // What is made over something says so.
              if (procedure === 'make-file-system' && !isGroup) refuse(there.volume(on));
            }
          }
        },
      ),
      // Members join what is not there already only seldom.
      { numRuns: 1_000 },
    );
    // None of it is true for want of steps.
    for (const each of [
      'create-volume',
      'create-server',
      'make-group',
      'make-group-over',
      'join-group',
      'make-file-system',
      'make-file-system-over',
      'make-logical-volume',
    ])
      expect(counts.get(each) ?? 0, each).toBeGreaterThan(0);
  });
});

describe('what is only declared', () => {
  it('is looked at before anything is done to it, or by way of that', () => {
    const counts = new Map<string, number>();
    fc.assert(
      fc.property(branches(true), ({ head, steps }) => {
        if (steps.some(({ snag }) => snag !== undefined)) return;
        for (const check of steps) {
          if (!['check-server-there', 'check-volume-there', 'check-layers'].includes(check.procedure))
            continue;
          const first = waitsFor(steps, check);
          for (const step of steps) {
            const { words, subject, server, does, number } = step;
            if (/^check-(backup|server-there|volume-there|layers|identity)$/.test(step.procedure)) continue;
            const { group = '', on = subject.name.split(':')[0] ?? '' } = words;
            const isOfIt =
              check.procedure === 'check-server-there'
                ? server === check.subject.name
                : check.procedure === 'check-volume-there'
                  ? [words.volume, on, ...(head['volume-groups'][group]?.members ?? [])].includes(
                      check.subject.name,
                    ) && subject.kind !== 'server'
                  : [group, on].some(
                      (name) =>
                        check.words.declared?.includes(`volume group ${name} on `) === true ||
                        (words.mount !== undefined &&
                          new RegExp(`(^|; )${words.mount} \\([^;]*\\) on ${name}(;|$)`).test(
                            check.words.declared ?? '',
                          )),
                    );
            if (!isOfIt || first.has(number)) continue;
            counts.set(check.procedure, (counts.get(check.procedure) ?? 0) + 1);
            expect([...waitsFor(steps, step)], `${check.does} ${does}`).toContain(check.number);
          }
        }
      }),
      { numRuns: 1_000 },
    );
    for (const each of ['check-server-there', 'check-volume-there', 'check-layers'])
      expect(counts.get(each) ?? 0, each).toBeGreaterThan(0);
  });
});

describe('what a server starts from', () => {
  it('is never made in the guest that starts from it', () => {
    let installed = 0;
    fc.assert(
      fc.property(branches(false), ({ head, steps }) => {
        for (const { procedure, words, server, at, does } of steps) {
          if (procedure === 'install-over') installed += 1;
          const boot = head.servers[server ?? '']?.boot;
          if (at !== 'guest' || boot === undefined) continue;
          const { volume = '', group = '', on = '', mount = '' } = words;
          const members = head['volume-groups'][group || on]?.members ?? [];
          const writes =
            ((procedure.startsWith('make-file-system') || procedure === 'make-anew') &&
              (on === boot || (mount === '/' && members.includes(boot)))) ||
            (procedure.startsWith('make-group') && members.includes(boot)) ||
            (procedure.startsWith('join-group') && volume === boot) ||
            (procedure === 'lay-out-anew' && members.includes(boot));
          expect(writes, does).toBe(false);
        }
      }),
      runs,
    );
    expect(installed).toBeGreaterThan(0);
  });
});

describe('sizes', () => {
  it('are those declared, to the byte, in words and in commands', () => {
    let commands = 0;
    fc.assert(
      fc.property(branches(false), ({ base, head, steps }) => {
        const systems = systemsIn(base, head);
        for (const { procedure, words, subject, examples, does } of steps) {
          const { size, mount, group, extent } = words;
          const declared =
            mount !== undefined
              ? (systems.get(`${formerName(head['volume-groups'], words.on ?? '')} ${mount}`) ??
                systems.get(`${formerName(head.volumes, words.on ?? '')} ${mount}`))
              : procedure === 'delete-volume' || procedure === 'delete-old'
                ? base.volumes[formerName(head.volumes, subject.name)]?.size
                : head.volumes[subject.name]?.size;
          if (size !== undefined && procedure !== 'check-group') {
            expect(declared, does).toBeDefined();
            expect(bytesOf(size), does).toBe(bytesOf(declared ?? ''));
          }
          for (const { command } of examples) {
            const written = /(?:--size |resize2fs \S+ |filesystem resize )([0-9]+[KMG])\b/.exec(command)?.[1];
            if (written !== undefined) {
              commands += 1;
              expect(bytesOf(written), command).toBe(bytesOf(declared ?? ''));
            }
            const extents = /--physicalextentsize (\S+)/.exec(command)?.[1];
            if (extents !== undefined) {
              expect(bytesOf(extents)).toBe(bytesOf(head['volume-groups'][group ?? '']?.extent ?? ''));
              expect(extent).toBe(head['volume-groups'][group ?? '']?.extent);
            }
          }
        }
      }),
      runs,
    );
    expect(commands).toBeGreaterThan(0);
  });
});

describe('a step that destroys', () => {
  it('names what it destroys: by name, size and server, and by device and serial number where a survey shows it', () => {
    const counts = new Map<string, number>();
    fc.assert(
      fc.property(branches(false, playedSurveys), ({ base, head, steps, estates: [was] }) => {
        const surveys = playedSurveys(was);
        for (const { procedure, words, subject, destroys, cautions, does } of steps) {
          if (!destroys) continue;
          counts.set(procedure, (counts.get(procedure) ?? 0) + 1);
          const told = cautions.find((each) => each.startsWith('It destroys ')) ?? '';
          const { on = '', group = '', volume = subject.name, mount } = words;
          const groupName = formerName(head['volume-groups'], group || on);
          const lost =
            procedure === 'make-group-over'
              ? (head['volume-groups'][group]?.members ?? [])
              : ['delete-volume', 'delete-old', 'install-over', 'join-group-over'].includes(procedure)
                ? [volume]
                : (base['volume-groups'][groupName]?.members ?? [on]);
          for (const name of lost) {
            const former = base.volumes[name] === undefined ? formerName(head.volumes, name) : name;
            const declared = base.volumes[former];
            // What only comes with this branch holds nothing.
            if (declared === undefined) continue;
            const [size] = /[0-9.]+ [MG]iB/.exec(declared.size) ?? [];
            expect(told, `${procedure}: ${does}`).toContain(size ?? 'a size');
            for (const { volume: held, server } of [
              ...base.attachments,
              ...Object.entries(base.servers).flatMap(([each, { boot }]) =>
                boot === undefined ? [] : [{ volume: boot, server: each }],
              ),
            ]) {
              if (held !== former) continue;
              const renamed = Object.entries(head.servers).find(
                ([, { formerly }]) => formerly === server,
              )?.[0];
              expect(told, does).toContain(renamed ?? server);
              const seen = surveys
                .find((survey) => survey.server === server)
                ?.devices.find(({ serial }) => serial === declared.id);
              if (seen !== undefined)
                expect(told, does).toContain(
                  `(/dev/${seen.name}, serial number ${declared.id}, by the survey of`,
                );
            }
          }
          if (mount !== undefined && procedure !== 'make-file-system-over')
            expect(told, does).toContain(mount);
        }
      }),
      runs,
    );
    for (const each of ['delete-volume', 'delete-old', 'make-group-over', 'remove-file-system', 'make-anew'])
      expect(counts.get(each) ?? 0, each).toBeGreaterThan(0);
  });

  it('names what lies on a logical volume that is cut for what cannot be made smaller', () => {
    const group = (gib: number) =>
      estateOf(`servers: { scan: { power: running, guest: linux-lvm } }
volumes: { plates-1: { size: 40 GiB, tier: bulk } }
attachments: [{ volume: plates-1, server: scan }]
volume-groups: { plates: { members: [plates-1], file-systems: { /plates: { size: ${gib} GiB, type: xfs } } } }
`);
    const [base, head] = [group(30), group(20)];
    const cut = runbookOf(compareEstates(base, head), base, head).find(
      ({ procedure }) => procedure === 'cut-logical-volume',
    );
    const told = cut?.cautions.find((each) => each.startsWith('It destroys ')) ?? '';
    for (const each of ['/plates', 'plates-1', '40 GiB', 'scan']) expect(told).toContain(each);
  });
});

describe('the words of a step', () => {
  it('are there for whatever a procedure may ask to be filled in', () => {
    fc.assert(
      fc.property(
        fc.boolean().chain((adopts) => branches(adopts)),
        ({ steps }) => {
          for (const { procedure, words, does, why, seen, back } of steps) {
            if (!isAction(procedure)) throw new Error(`no action ${procedure}`);
            expect(Object.keys(words), procedure).toEqual(
              expect.arrayContaining([...actions[procedure].words]),
            );
            expect([does, why, seen, back].join(' '), procedure).not.toMatch(/\{[a-z-]+\}/);
          }
        },
      ),
      runs,
    );
  });
});
