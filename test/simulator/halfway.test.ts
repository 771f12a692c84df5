/** A change that is carried out in part, and the provider's list as it is then: what is ticked rightly is never denied. */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { isAttachmentChange } from '../../src/change/change.ts';
import { compareEstates } from '../../src/change/compare.ts';
import { bytes } from '../../src/estate/size.ts';
import { runbookOf } from '../../src/runbook/runbook.ts';
import type { Step } from '../../src/runbook/step.ts';
import { surveyedTicks } from '../../src/runbook/surveyed-ticks.ts';
import { compareSurveys } from '../../src/survey/compare.ts';
import type { ProviderSurvey } from '../../src/survey/provider-survey.ts';
import { assembled } from '../estate/builder.ts';
import { attempt } from './attempt.ts';
import { worldOf } from './begin.ts';
import { pairs } from './estates.ts';
import type { World } from './world.ts';

/** What the provider shows of the world; a volume that has been replaced goes by its name until it is deleted. */
const listOf = (world: World, at: string): ProviderSurvey => ({
  at,
  lists: ['volumes', 'servers'],
  volumes: [...world.disks.values(), ...world.old.values(), ...world.fresh.values()].map((disk) => ({
    id: undefined,
    name: disk.name,
    size: bytes(disk.size),
    tier: disk.tier,
    site: disk.site === '' ? undefined : disk.site,
    servers: [...disk.holders],
    boot: undefined,
  })),
  servers: [...world.servers.values()].map(({ name, power, type, site }) => ({
    id: undefined,
    name,
    site: site === '' ? undefined : site,
    type: type === '' ? undefined : type,
    power,
    boot: undefined,
  })),
  place: { file: 'surveys/provider.json', line: 1, column: 1 },
});

type Row = ProviderSurvey['volumes'][number];

/** The list with another figure in the row of one volume; nothing where several rows go by its name. */
function otherwise(list: ProviderSurvey, name: string, row: Partial<Row>): ProviderSurvey | undefined {
  const [only, ...more] = list.volumes.filter((each) => each.name === name);
  if (only === undefined || more.length > 0) return undefined;
  return { ...list, volumes: list.volumes.map((each) => (each === only ? { ...each, ...row } : each)) };
}

it('no list that was taken then, or before, denies a step that is ticked rightly; one that shows otherwise is told', () => {
  let [told, older, grown, held, made] = [0, 0, 0, 0, 0];
  fc.assert(
    fc.property(pairs, fc.double({ min: 0, max: 1, noNaN: true }), ([before, after], part) => {
      const [base, head] = [assembled(before), assembled(after)];
      fc.pre(base.ok && head.ok);
      const comparison = compareEstates(base.value, head.value);
      fc.pre(comparison.contradictions.length === 0 && comparison.renames.volumes.toHead.size === 0);
      const steps = runbookOf(comparison, base.value, head.value);
      fc.pre(steps.every(({ snag }) => snag === undefined));
      const world = worldOf(base.value, head.value, comparison.renames, {
        slots: steps.length,
        quota: undefined,
      });
      const first = listOf(world, '2026-11-20T06:00:00Z');
      const done = steps.slice(0, Math.round(part * steps.length));
      // What is left for when a server next runs is not done.
      fc.pre(done.every((step) => attempt(world, step, head.value, []) === undefined));
      const said = (list: ProviderSurvey, on: string | undefined, ticked: readonly Step[] = done) => {
        const beside = (estate: typeof base.value) =>
          compareSurveys(estate, { servers: [], provider: list }, undefined);
        return surveyedTicks({
          steps,
          changes: comparison.changes,
          done: new Map(ticked.map(({ number }) => [number, on])),
          taken: new Map([[undefined, list.at]]),
          before: beside(base.value),
          after: beside(head.value),
        });
      };
      expect(said(listOf(world, '2026-11-22T06:00:00Z'), '2026-11-21')).toEqual([]);
      expect(said(first, '2026-11-21').filter(({ kind }) => kind === 'ticked and not so')).toEqual([]);
      // Each thing that a volume's changes ask for is told by itself, whatever else of it has changed.
      const now = listOf(world, '2026-11-22T06:00:00Z');
      for (const { number, carriesOut } of steps) {
        const isDone = done.some((step) => step.number === number);
        for (const change of carriesOut.flatMap((index) => comparison.changes[index] ?? [])) {
          if (change.kind === 'volume-grown') {
            const { name } = change.after;
            const strange = otherwise(now, name, { size: bytes(change.after.size + 1n) });
            const back = otherwise(now, name, { size: change.before.size });
            const kinds = (list: ProviderSurvey | undefined) =>
              list &&
              said(list, '2026-11-21')
                .filter((each) => each.number === number)
                .map(({ kind }) => kind);
            if (strange !== undefined)
              expect(kinds(strange)).toEqual([
                isDone ? 'ticked and not so' : 'neither as before nor as after',
              ]);
            if (back !== undefined) expect(kinds(back)).toEqual(isDone ? ['ticked and not so'] : []);
            grown += strange === undefined ? 0 : 1;
          }
          const attachments = comparison.changes.filter(
            (each) => isAttachmentChange(each) && each.subject.name === change.subject.name,
          );
          const other =
            isDone && change.kind === 'volume-created'
              ? otherwise(now, change.after.name, { size: bytes(change.after.size + 1n) })
              : isDone &&
                  change.kind === 'attached' &&
                  attachments.length === 1 &&
                  !base.value.holders.has(change.volume.name)
                ? otherwise(now, change.volume.name, { servers: [] })
                : undefined;
          if (other !== undefined) {
            expect(said(other, '2026-11-21').filter((each) => each.number === number)).toMatchObject([
              { kind: 'ticked and not so' },
            ]);
            made += 1;
          }
          if (change.kind === 'handed-over') {
            const { name } = change.volume;
            const third = [...base.value.servers.keys()].find(
              (server) => head.value.servers.has(server) && ![change.from, change.to].includes(server),
            );
            const isPlain = comparison.changes.every(
              (each) => each === change || each.subject.name !== name || each.kind === 'volume-grown',
            );
            const list = third && isPlain ? otherwise(now, name, { servers: [third] }) : undefined;
            if (list === undefined) continue;
            expect(said(list, '2026-11-21').filter((each) => each.number === number)).toMatchObject([
              { kind: isDone ? 'ticked and not so' : 'neither as before nor as after' },
            ]);
            held += 1;
          }
        }
      }
      // What is ticked and was never begun is told by the same means, where the list can show it.
      older += said(first, undefined).length;
      told += said(first, '2026-11-20', steps).length;
    }),
    { numRuns: 500 },
  );
  expect(told).toBeGreaterThan(100);
  expect(older).toBeGreaterThan(20);
  expect(grown).toBeGreaterThan(5);
  expect(held).toBeGreaterThan(0);
  expect(made).toBeGreaterThan(0);
});
