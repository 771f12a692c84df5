import { expect, it } from 'vitest';
import { bytes } from '../../src/estate/size.ts';
import { surveyedTicks } from '../../src/runbook/surveyed-ticks.ts';
import { compareSurveys } from '../../src/survey/compare.ts';
import type { ProviderSurvey, ProviderVolume } from '../../src/survey/provider-survey.ts';
import { estateOf, judgedBranch } from '../estate/builder.ts';

const plates = (attachments: string): string =>
  `servers: { press: {} }\nvolumes: { plates-1: { size: 1 GiB, tier: bulk } }\nattachments: [ ${attachments} ]\n`;
const before = plates('');
const after = plates('{ volume: plates-1, server: press }');

const heldBy = (servers: readonly string[], row: Partial<ProviderVolume> = {}): ProviderSurvey => ({
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
      ...row,
    },
  ],
  servers: [],
  place: { file: 'surveys/provider.json', line: 1, column: 1 },
});

const three = (name: string, size: string, server: string, formerly = ''): string =>
  `servers: { press: {}, binder: {}, folder: {} }
volumes: { ${name}: { id: vol-1, size: ${size}, tier: bulk${formerly} } }
attachments: [ { volume: ${name}, server: ${server} } ]
`;

/** What is told of each step, by its procedure, where some procedures are ticked and the list shows one row. */
async function toldOf(main: string, branch: string, ticked: readonly string[], list: ProviderSurvey) {
  const { changes, runbook: steps } = await judgedBranch({ main, branch, entries: ['{ rule: no-shrink }'] });
  const beside = (estate: string) =>
    compareSurveys(estateOf(estate), { servers: [], provider: list }, undefined);
  return surveyedTicks({
    steps,
    changes,
    done: new Map(
      steps.flatMap((step) => (ticked.includes(step.procedure) ? [[step.number, undefined]] : [])),
    ),
    taken: new Map([[undefined, list.at]]),
    before: beside(main),
    after: beside(branch),
  }).map(({ number, kind, shown }) => [steps[number - 1]?.procedure, kind, shown.surveyed]);
}

const GiB = 1n << 30n;

it('what is on neither server, or of neither size, is told before a step goes on from it', async () => {
  const [main, moved] = [three('plates-1', '1 GiB', 'press'), three('plates-1', '1 GiB', 'binder')];
  const neither = 'neither as before nor as after';
  const told = (ticked: readonly string[], servers: readonly string[]) =>
    toldOf(main, moved, ticked, heldBy(servers, { id: 'vol-1' }));
  expect(await told(['detach'], ['folder'])).toEqual([['attach', neither, 'attached to folder']]);
  expect(await told(['detach', 'attach'], ['folder'])).toEqual([
    ['attach', 'ticked and not so', 'attached to folder'],
  ]);
  // On the way from one to the other it is on none.
  expect(await told(['detach'], [])).toEqual([]);
  const grown = three('plates-1', '3 GiB', 'press');
  const sized = (size: bigint) =>
    toldOf(main, grown, [], heldBy(['press'], { id: 'vol-1', size: bytes(size) }));
  expect(await sized(2n * GiB)).toEqual([['grow-volume', neither, '2 GiB']]);
  expect([await sized(GiB), await sized(3n * GiB)]).toEqual([
    [],
    [['grow-volume', 'so and not ticked', '3 GiB']],
  ]);
});

it('a new volume that is there already, and larger than it is to be, is told before it is taken for the new one', async () => {
  const main = 'servers: { press: {} }\n';
  const told = (size: bigint, ticked: readonly string[]) =>
    toldOf(main, after, ticked, heldBy([], { size: bytes(size) }));
  expect(await told(2n * GiB, [])).toEqual([['create-volume', 'neither as before nor as after', '2 GiB']]);
  expect(await told(2n * GiB, ['create-volume'])).toEqual([['create-volume', 'ticked and not so', '2 GiB']]);
  expect(await told(GiB, ['create-volume'])).toEqual([]);
  expect(await told(GiB, ['create-volume', 'attach'])).toEqual([
    ['attach', 'ticked and not so', 'unattached'],
  ]);
});

it('each change is held against what it asks for, and not against all that is shown of a volume', async () => {
  const main = three('plates-1', '1 GiB', 'press');
  const after = three('scans-1', '3 GiB', 'binder', ', formerly: plates-1');
  const all = ['check-name', 'detach', 'attach', 'grow-volume'];
  const told = (ticked: readonly string[], server: string, size: bigint) =>
    toldOf(main, after, ticked, heldBy([server], { id: 'vol-1', name: 'scans-1', size: bytes(size) }));
  // Carried over and not grown; grown and not carried over.
  expect(await told(all, 'binder', GiB)).toEqual([['grow-volume', 'ticked and not so', '1 GiB']]);
  expect(await told(all, 'press', 3n * GiB)).toEqual([['attach', 'ticked and not so', 'attached to press']]);
  expect(await told(['check-name'], 'press', GiB)).toEqual([]);
  expect(await told(['check-name', 'detach', 'attach'], 'binder', GiB)).toEqual([]);
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
