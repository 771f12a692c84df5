import { expect, it } from 'vitest';
import { bytes } from '../../src/estate/size.ts';
import { surveyedTicks } from '../../src/runbook/surveyed-ticks.ts';
import { compareSurveys } from '../../src/survey/compare.ts';
import type { ProviderSurvey } from '../../src/survey/provider-survey.ts';
import { estateOf, judgedBranch } from '../estate/builder.ts';

const plates = (attachments: string): string =>
  `servers: { press: {} }\nvolumes: { plates-1: { size: 1 GiB, tier: bulk } }\nattachments: [ ${attachments} ]\n`;
const before = plates('');
const after = plates('{ volume: plates-1, server: press }');

const heldBy = (servers: readonly string[]): ProviderSurvey => ({
  at: '2026-11-20T06:00:00Z',
  lists: ['volumes'],
  volumes: [
    {
      id: undefined,
      name: 'plates-1',
      size: bytes(1n << 30n),
      tier: undefined,
      site: undefined,
      servers,
      boot: undefined,
    },
  ],
  servers: [],
  place: { file: 'surveys/provider.json', line: 1, column: 1 },
});

it('an attachment is told to be carried out only by a holder that is known to be the declared one', async () => {
  const { changes, runbook: steps } = await judgedBranch({
    main: before,
    branch: after,
    entries: ['{ rule: no-shrink }'],
  });
  const taken = new Map([[undefined, '2026-11-20T06:00:00Z']]);
  const told = (servers: readonly string[], done: readonly number[], on?: string) => {
    const beside = (estate: string) =>
      compareSurveys(estateOf(estate), { servers: [], provider: heldBy(servers) }, undefined);
    const asked = {
      steps,
      changes,
      done: new Map(done.map((number) => [number, on] as const)),
      taken,
      before: beside(before),
      after: beside(after),
    };
    return surveyedTicks(asked).map(({ kind }) => kind);
  };
  const all = steps.map(({ number }) => number);
  expect(told(['press'], [])).toEqual(['so and not ticked']);
  expect(told([], all)).toEqual(['ticked and not so']);
  // A list that was taken before the step was done shows nothing of it.
  expect([told([], all, '2026-11-20'), told([], all, '2026-11-21')]).toEqual([['ticked and not so'], []]);
  // The list names somebody who may be the press, or not.
  expect([told(['host-4'], []), told(['host-4'], all)]).toEqual([[], []]);
});
