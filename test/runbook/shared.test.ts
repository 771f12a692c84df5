/**
 * Volumes that several servers hold at once, on random branches, in the order that is shown and in others: what is
 * mounted where, and who holds what, is followed from step to step.
 */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { compareEstates } from '../../src/change/compare.ts';
import type { Estate, FileSystem } from '../../src/estate/estate.ts';
import { runbookOf } from '../../src/runbook/runbook.ts';
import type { Step } from '../../src/runbook/step.ts';
import { assembled, type Files, valueIn } from '../estate/builder.ts';
import { change, filesOf, type Model } from '../estate/random.ts';
import { otherOrders } from '../simulator/orders.ts';

/** A volume may be on two servers only where it is made for that. */
const shared = ({ volumes, ...rest }: Model): Model => ({
  ...rest,
  volumes: Object.fromEntries(
    Object.entries(volumes).map(([name, each]) => [
      name,
      each === undefined ? undefined : { ...each, shareable: each.on.length > 1 },
    ]),
  ),
});

/** With the file systems of its groups of a type. */
const ofType = (type: string, model: Model): Files =>
  Object.fromEntries(
    Object.entries(filesOf(shared(model))).map(([file, text]) => [
      file,
      text.replaceAll('"xfs"', `"${type}"`),
    ]),
  );

interface Drawn {
  readonly base: Estate;
  readonly head: Estate;
  readonly steps: readonly Step[];
}

/** Undefined where the two are no estates, contradict each other or are carried out in no order. */
function drawn([before, after]: readonly [Model, Model], type: string): Drawn | undefined {
  const [was, is] = [ofType('ext4', before), ofType(type, after)].map((files) => assembled(files));
  if (was?.ok !== true || is?.ok !== true) return undefined;
  const [base, head] = [valueIn(was), valueIn(is)];
  const comparison = compareEstates(base, head);
  if (comparison.contradictions.length > 0) return undefined;
  const steps = runbookOf(comparison, base, head);
  return steps.some(({ snag }) => snag !== undefined) ? undefined : { base, head, steps };
}

const heldIn = (estate: Estate, server: string): readonly FileSystem[] =>
  (estate.held.get(server) ?? []).flatMap(({ volume }) => [
    ...(estate.groupOf.get(volume)?.fileSystems ?? []),
    ...[estate.volumes.get(volume)?.fileSystem].flatMap((system) => system ?? []),
  ]);

const written: ReadonlySet<string> = new Set([
  'grow-mounted',
  'grow-unmounted',
  'shrink-mounted',
  'shrink-unmounted',
  'make-anew',
  'make-file-system',
  'make-file-system-over',
  'set-reserve',
]);

it('a file system is worked on while no other server has it mounted, and who holds its volume is told as it is', () => {
  const counts = new Map<string, number>();
  const count = (what: string): void => {
    counts.set(what, (counts.get(what) ?? 0) + 1);
  };
  fc.assert(
    fc.property(change, fc.constantFrom('ext4', 'ext4', 'xfs'), (models, type) => {
      const branch = drawn(models, type);
      if (branch === undefined) return;
      count('branch');
      const { base, head, steps } = branch;
      for (const order of [steps, ...otherOrders(steps)]) {
        const running = new Set(
          [...base.servers.values()].flatMap(({ name, power }) => (power === 'running' ? name : [])),
        );
        const fstab = new Map(
          [...base.servers.keys()].map((name) => [
            name,
            new Set(heldIn(base, name).map((each) => each.name)),
          ]),
        );
        const holders = new Map(
          [...base.volumes.keys()].map((name) => [
            name,
            new Set((base.holders.get(name) ?? []).map(({ server }) => server)),
          ]),
        );
        for (const { procedure, server = '', subject, words, does, seen } of order) {
          const lines = fstab.get(server) ?? new Set();
          fstab.set(server, lines);
          const of = holders.get(words.volume ?? '') ?? new Set();
          holders.set(words.volume ?? '', of);
          if (written.has(procedure) && running.has(server)) {
            const others = [...fstab].flatMap(([name, its]) =>
              name !== server && running.has(name) && its.has(subject.name) ? [name] : [],
            );
            if (heldByBoth(base, subject.name)) count(procedure);
            expect(others, `${does} on ${server}`).toEqual([]);
          }
          if (procedure.startsWith('mount') || procedure === 'check-root') {
            if (heldByBoth(base, subject.name)) count('mounted again');
            lines.add(subject.name);
          } else if (procedure.startsWith('unmount')) lines.delete(subject.name);
          else if (procedure === 'check-fstab') lines.delete(`${words.on}:${words.mount}`);
          else if (procedure === 'stop-server') running.delete(server);
          else if (procedure === 'start-server') running.add(server);
          else if (procedure === 'create-server' && words.power === 'running') running.add(server);
          if (procedure === 'create-server') {
            const boot = head.servers.get(server)?.boot;
            if (boot !== undefined) holders.set(boot, (holders.get(boot) ?? new Set()).add(server));
          }
          if (['attach', 'attach-boot', 'attach-for-a-while'].includes(procedure)) of.add(server);
          if (procedure === 'detach' || procedure === 'detach-again') {
            of.delete(server);
            const told = /as (no longer )?attached to (.*?)( only)?\.$/.exec(seen ?? '');
            const [, no, who = ''] = told ?? [];
            count(no !== undefined ? 'no longer' : who === 'nothing' ? 'nothing' : 'only');
            if (no === undefined)
              expect(who === 'nothing' ? [] : who.split(/, | and /), `${does} ${seen}`).toEqual(
                [...of].sort(),
              );
          }
        }
      }
    }),
    { numRuns: 1_000 },
  );
  for (const each of [
    'grow-mounted',
    'shrink-unmounted',
    'make-anew',
    'mounted again',
    'no longer',
    'nothing',
    'only',
  ])
    expect(counts.get(each) ?? 0, each).toBeGreaterThan(0);
});

const heldByBoth = (estate: Estate, system: string): boolean =>
  [...estate.servers.keys()].filter((server) => heldIn(estate, server).some(({ name }) => name === system))
    .length > 1;
