import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { compareEstates } from '../../src/change/compare.ts';
import { courseSentences } from '../../src/report/model/steps.ts';
import { courseOf } from '../../src/runbook/course.ts';
import { runbookOf } from '../../src/runbook/runbook.ts';
import type { Step } from '../../src/runbook/step.ts';
import { assembled, estateOf } from '../estate/builder.ts';
import { pairs } from '../simulator/estates.ts';

const runbook = (before: string, after: string): readonly Step[] => {
  const [base, head] = [estateOf(before), estateOf(after)];
  return runbookOf(compareEstates(base, head), base, head);
};

const pair = `
servers:
  plate-scanner: { type: small, guest: linux }
  tide-gauge: { guest: linux }
volumes:
  plates-1: { size: 40 GiB, tier: bulk, file-system: { mount: /plates, type: xfs } }
  tides-1: { size: 40 GiB, tier: bulk, file-system: { mount: /tides, type: xfs } }
attachments:
  - { volume: plates-1, server: plate-scanner }
  - { volume: tides-1, server: tide-gauge }
`;

describe('the course of the steps', () => {
  it('grows two volumes of two servers side by side, in three turns', () => {
    const steps = runbook(pair, pair.replaceAll('40 GiB', '50 GiB'));
    const { turns, longest, standing } = courseOf(steps);
    expect(steps).toHaveLength(6);
    expect(turns.map(({ length }) => length)).toEqual([2, 2, 2]);
    expect(longest.map((number) => steps[number - 1]?.procedure)).toEqual([
      'grow-volume',
      'see-size',
      'grow-mounted',
    ]);
    expect(standing).toEqual([]);
  });

  it('says from which step to which a server stands still, and when it does so for good', () => {
    const moved = runbook(pair, pair.replace('type: small', 'type: large'));
    const [only] = courseOf(moved).standing;
    expect(only?.server).toBe('plate-scanner');
    expect(moved[(only?.from ?? 0) - 1]?.procedure).toBe('stop-server');
    expect(moved[(only?.to ?? 0) - 1]?.procedure).toBe('start-server');
    const stopped = courseOf(runbook(pair, pair.replace('type: small', 'type: small, power: stopped')));
    expect(stopped.standing).toEqual([{ server: 'plate-scanner', from: 1, to: undefined }]);
  });

  it('is said as a chain, as one after another, or as in any order', () => {
    const volume = (name: string, size = 40): string => `  ${name}: { size: ${size} GiB, tier: bulk }\n`;
    const said = (before: string, after: string) => courseSentences(runbook(before, after));
    const three = `volumes:\n${volume('a')}${volume('b')}${volume('c')}`;
    expect(said('volumes: {}\n', three)).toEqual([
      'The 3 steps can be done in any order, and beside one another.',
    ]);
    expect(said(pair, pair.replaceAll('40 GiB', '50 GiB'))).toEqual([
      'Of the 6 steps, the longest chain in which each waits for the one before it is 3 long; the others can be done beside it.',
    ]);
    expect(said(pair, pair.replace('plates-1: { size: 40 GiB', 'plates-1: { size: 50 GiB'))).toEqual([
      'Each of the 3 steps waits for the one before it.',
    ]);
    expect(said('volumes: {}\n', `volumes:\n${volume('a')}`)).toEqual([]);
  });

  it('has nothing to say where there is nothing to do', () => {
    expect(courseOf([])).toEqual({ longest: [], turns: [], standing: [] });
  });

  it('of any branch: each step once, after all that it waits for, and no chain is longer than the turns', () => {
    fc.assert(
      fc.property(pairs, ([before, after]) => {
        const [base, head] = [assembled(before), assembled(after)];
        fc.pre(base.ok && head.ok);
        const steps = runbookOf(compareEstates(base.value, head.value), base.value, head.value);
        const { turns, longest } = courseOf(steps);
        expect(turns.flat().sort((a, b) => a - b)).toEqual(steps.map(({ number }) => number));
        const turnOf = (number: number): number => turns.findIndex((turn) => turn.includes(number));
        for (const { number, after: first } of steps)
          for (const each of first) expect(turnOf(each)).toBeLessThan(turnOf(number));
        expect(longest).toHaveLength(turns.length);
        longest.forEach((number, index) => {
          const waitedFor = longest[index - 1];
          if (waitedFor !== undefined) expect(steps[number - 1]?.after).toContain(waitedFor);
        });
      }),
      { numRuns: 150 },
    );
  });
});
