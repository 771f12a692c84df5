import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readWaivers } from '../../src/policy/waiver.ts';
import { readDocument } from '../../src/read/document.ts';
import { report } from '../../src/report/report.ts';
import { type Files, judged, pack } from '../estate/builder.ts';

const volume = (size: string): Files => ({
  'storage/imagery.yaml': `team: imagery\nvolumes:\n  plates-1: { size: ${size}, tier: steady }\n`,
});
const waiver = (more: string, subject = 'plates-1', rule = 'growth-step'): Files => ({
  'waivers/a.yaml': `waivers:\n  - { rule: ${rule}, subject: ${subject}, reason: spring survey, approved-by: head of imagery, from: 2026-05-01, until: 2026-05-31${more} }\n`,
});
const on = '2026-05-15';
const grow = (ceiling: string, to: string, entry = 'rule: growth-step, by: 10 GiB') =>
  judged({ ...pack(entry), ...volume('10 GiB'), ...waiver(ceiling) }, volume(to), { on });

const text = (of: Awaited<ReturnType<typeof grow>>) => report('text', of, { width: 100, colour: false });

describe('the ceiling of a waiver', () => {
  it('was approved for 40 GiB, and does not cover the 400 GiB that come under its name', async () => {
    const judgement = await grow(', up-to: 40 GiB', '410 GiB');
    expect([judgement.verdict, judgement.waivers[0]?.state]).toEqual(['fail', 'outgrown']);
    const said = await text(judgement);
    expect(said).toContain('waivers/a.yaml:2 covers no more than 40 GiB');
    expect(said).toContain('covers up to 40 GiB and is outgrown');
    const sarif = JSON.parse(await report('sarif', judgement, { width: 100, colour: false }));
    expect(sarif.runs[0].results[0].suppressions).toEqual([]);
    const json = JSON.parse(await report('json', judgement, { width: 100, colour: false }));
    expect(json.waivers[0]).toMatchObject({ state: 'outgrown', waiver: { upTo: '40 GiB', name: null } });
    expect(json.findings[0].waiver).toBeNull();
  });

  it.each([
    ['exactly its size is covered', '40 GiB', '50 GiB', 'pass'],
    ['one byte more is not', '40 GiB', '52428801 KiB', 'fail'],
    ['sizes are compared in bytes, whatever their unit', '40 GB', '50 GiB', 'fail'],
    ['an amount says nothing of a size, and covers none', '"9000.00"', '50 GiB', 'fail'],
    ['nor does a bare number', '9000', '50 GiB', 'fail'],
  ])('%s', async (_what, ceiling, to, verdict) => {
    expect((await grow(`, up-to: ${ceiling}`, to)).verdict).toBe(verdict);
  });

  it.each([
    ['10.00', 'pass'],
    ['9.99', 'fail'],
  ])('of a spend limit is what the team costs: up to %s the 100 GiB at 0.10 %s', async (ceiling, verdict) => {
    // 100 GiB at 0.10 a GiB and month, by the price list of the tests' estate: 10.00.
    const entry = 'rule: max-monthly-spend, where: { teams: [imagery] }, limit: "5.00"';
    const judgement = await judged(
      {
        ...pack(entry),
        ...volume('10 GiB'),
        ...waiver(`, up-to: "${ceiling}"`, 'imagery', 'max-monthly-spend'),
      },
      volume('100 GiB'),
      { on },
    );
    expect(judgement.verdict).toBe(verdict);
  });

  it('covers nothing under a rule that measures nothing', async () => {
    const entry = 'rule: naming, volume: "survey-.*"';
    const before = { ...pack(entry), 'storage/imagery.yaml': 'volumes: {}\n' };
    const bare = await judged({ ...before, ...waiver('', 'plates-1', 'naming') }, volume('1 GiB'), { on });
    const capped = await judged(
      { ...before, ...waiver(', up-to: 3', 'plates-1', 'naming') },
      volume('1 GiB'),
      {
        on,
      },
    );
    expect([bare.verdict, capped.verdict]).toEqual(['pass', 'fail']);
  });

  it('never turns a refusal above it into a pass, and always covers what is within it', async () => {
    const gib = fc.integer({ min: 11, max: 5000 });
    await fc.assert(
      fc.asyncProperty(gib, gib, async (step, ceiling) => {
        const { verdict } = await grow(`, up-to: ${ceiling} GiB`, `${10 + step} GiB`);
        expect(verdict).toBe(step <= ceiling ? 'pass' : 'fail');
      }),
      { numRuns: 40 },
    );
  });

  it.each(['.inf', '-1', '.nan', '1.5', '"40 gib"', 'lots', '0.0001 kB'])(
    'that is written %s is a number, or a problem at its place; nothing is without bound',
    (written) => {
      const document = readDocument(waiver(`, up-to: ${written}`)['waivers/a.yaml'] ?? '', 'waivers/a.yaml');
      if (!document.ok) return;
      const read = readWaivers(document.value);
      if (written === '1.5') expect(read).toMatchObject({ ok: true });
      else expect(read).toMatchObject({ ok: false, problems: [{ place: { line: 2 } }] });
    },
  );
});

describe('a waiver that is merged ahead of its change', () => {
  const elsewhere = (day: string, to = '10 GiB') =>
    judged(
      { ...pack('rule: growth-step, by: 10 GiB'), ...volume('10 GiB'), ...waiver('', 'plates-9') },
      volume(to),
      {
        on: day,
      },
    );

  it.each([
    ['2026-05-15', 'waiting'],
    ['2026-05-16', 'waiting'],
    ['2026-05-17', 'unused'],
    ['2026-05-31', 'unused'],
  ])(
    'waits for it in every other branch, and is asked after in its last 14 days: on %s it is %s',
    async (day, state) => {
      const judgement = await elsewhere(day);
      expect(judgement.waivers.map((use) => use.state)).toEqual([state]);
      const said = await text(judgement);
      if (state === 'waiting') expect(said).not.toContain('Waivers to review');
      else expect(said).toContain('covers nothing here and ends on 2026-05-31');
    },
  );

  it('is named where its rule refuses something else', async () => {
    expect(await text(await elsewhere('2026-05-15', '40 GiB'))).toMatch(
      /waiting +the waiver of growth-step for plates-9 covers nothing here: it is for plates-9 alone/,
    );
  });
});

describe('a waiver that names one entry', () => {
  const entries =
    'name: small, rule: growth-step, by: 10 GiB }\n  - { name: large, rule: growth-step, by: 20 GiB';
  it.each([
    ['lets that entry stand, and no other of the rule', ', name: small', 'fail'],
    ['lets all of the rule stand where it names none', '', 'pass'],
  ])('%s', async (_what, name, verdict) => {
    expect((await grow(name, '50 GiB', entries)).verdict).toBe(verdict);
  });
});

describe('a ceiling in the list of policy changes', () => {
  const changes = async (before: string, after: string) =>
    (
      await judged(
        { ...pack('rule: growth-step, by: 10 GiB'), ...volume('10 GiB'), ...waiver(before) },
        waiver(after),
        { on },
      )
    ).policyChanges.map(({ direction, key, from, to }) => [direction, key, from, to]);

  it.each([
    ['raised', ', up-to: 40 GiB', ', up-to: 41 GiB', ['looser', 'up-to', '40 GiB', '41 GiB']],
    ['lowered', ', up-to: 40 GiB', ', up-to: 40 GB', ['tighter', 'up-to', '40 GiB', '40 GB']],
    ['removed', ', up-to: 40 GiB', '', ['looser', 'up-to', '40 GiB', undefined]],
    ['set', '', ', up-to: 40 GiB', ['tighter', 'up-to', undefined, '40 GiB']],
    ['in another measure', ', up-to: 40 GiB', ', up-to: 4', ['unknown', 'up-to', '40 GiB', '4']],
  ])('%s is told', async (_what, before, after, told) => {
    expect(await changes(before, after)).toEqual([told]);
  });

  it.each([
    ['its reason', 'spring survey', 'autumn survey', ['neither', 'reason', 'spring survey', 'autumn survey']],
    ['its approver', 'head of imagery', 'nobody', ['neither', 'approved-by', 'head of imagery', 'nobody']],
  ])('is no matter where only %s changes, and that is told as neither', async (_what, from, to, told) => {
    const before = { ...pack('rule: growth-step, by: 10 GiB'), ...volume('10 GiB'), ...waiver('') };
    const after = Object.fromEntries(
      Object.entries(waiver('')).map(([path, text]) => [path, text.replace(from, to)]),
    );
    const { policyChanges } = await judged(before, after, { on });
    expect(policyChanges.map(({ direction, key, ...ends }) => [direction, key, ends.from, ends.to])).toEqual([
      told,
    ]);
  });

  it.each([
    ['on the last day', '2026-05-31', 'looser'],
    ['on the day after it ended', '2026-06-01', 'neither'],
  ])('raised %s of its waiver is %s', async (_what, day, direction) => {
    const before = {
      ...pack('rule: growth-step, by: 10 GiB'),
      ...volume('10 GiB'),
      ...waiver(', up-to: 40 GiB'),
    };
    const judgement = await judged(before, waiver(', up-to: 400 GiB'), { on: day });
    expect(judgement.policyChanges).toMatchObject([
      { key: 'up-to', direction, from: '40 GiB', to: '400 GiB' },
    ]);
  });

  it('written otherwise is no change', async () => {
    expect(await changes(', up-to: 40 GiB', ', up-to: 40960 MiB')).toEqual([]);
  });

  it('a waiver that comes is told with its reason, its approver, its dates and its ceiling', async () => {
    const judgement = await judged(
      { ...pack('rule: growth-step, by: 10 GiB'), ...volume('10 GiB') },
      waiver(', kind: volume, up-to: 40 GiB'),
      { on },
    );
    expect(judgement.policyChanges).toMatchObject([
      {
        direction: 'looser',
        name: 'growth-step for volume plates-1',
        to: '2026-05-01 to 2026-05-31, up to 40 GiB, approved by head of imagery: spring survey',
      },
    ]);
  });
});

describe('a ceiling in which nothing is measured', () => {
  const gone: Files = { 'storage/imagery.yaml': 'team: imagery\n' };
  const ceiling = (rule: string, upTo: string) => waiver(`, up-to: ${upTo}`, 'plates-1', rule);

  it.each([
    [
      'of a rule that measures nothing',
      ['rule: deletion-prepared', 'deletion-prepared', '50 GB'],
      gone,
      'At waivers/a.yaml:2, the waiver has the ceiling 50 GB, and deletion-prepared measures nothing, so that it covers nothing. Leave up-to out.',
    ],
    [
      'in another measure than that of its rule',
      ['rule: growth-step, by: 10 GiB', 'growth-step', '9000'],
      volume('50 GiB'),
      'At waivers/a.yaml:2, the ceiling 9000 of the waiver is a number, in which growth-step measures nothing, so that it covers nothing. Write a size (the size by which the volume grows in one change).',
    ],
    [
      'in a measure that this finding of its rule does not have',
      ['rule: detached-volume-owned', 'detached-volume-owned', '9000'],
      volume('11 GiB'),
      'The waiver at waivers/a.yaml:2 covers nothing of this: its ceiling 9000 is a number, in which this is not measured.',
    ],
  ] as const)('%s is not said to be too low', async (_what, [entry, rule, upTo], head, words) => {
    const judgement = await judged({ ...pack(entry), ...volume('10 GiB'), ...ceiling(rule, upTo) }, head, {
      on,
    });
    const said = (await report('text', judgement, { width: 1000, colour: false })).replace(/\s+/g, ' ');
    expect(said).toContain(words);
    expect(said).toContain('has a ceiling in which nothing is measured here, so that it covers nothing');
    expect(said).not.toMatch(/covers no more than|is outgrown/);
  });

  it('is told on the branch that brings the waiver, before it is approved in vain', async () => {
    const brought = async (rule: string, more: string) => {
      const entries = pack('rule: deletion-prepared', 'rule: growth-step, by: 10 GiB');
      const judgement = await judged({ ...entries, ...volume('10 GiB') }, waiver(more, 'plates-1', rule), {
        on,
      });
      return judgement.policyChanges.map(({ remark }) => remark);
    };
    expect(await brought('deletion-prepared', ', up-to: 50 GB')).toEqual([
      'The waiver has the ceiling 50 GB, and deletion-prepared measures nothing, so that it covers nothing. Leave up-to out.',
    ]);
    expect(await brought('growth-step', ', name: step')).toEqual([
      expect.stringMatching(/^The waiver names the entry step, and no entry has that name\./),
    ]);
    expect(await brought('naming', '')).toEqual([
      'The waiver is for naming, which no pack here contains. Delete it, or name the entry that it is for.',
    ]);
    expect(await brought('growth-step', ', up-to: 50 GB')).toEqual([undefined]);
    expect(await brought('deletion-prepared', '')).toEqual([undefined]);
  });

  it('is told where a waiver that stands gets one', async () => {
    const entries = pack('rule: deletion-prepared');
    const [change] = (
      await judged(
        { ...entries, ...volume('10 GiB'), ...waiver('', 'plates-1', 'deletion-prepared') },
        ceiling('deletion-prepared', '50 GB'),
        { on },
      )
    ).policyChanges;
    expect([change?.key, change?.remark]).toEqual(['up-to', expect.stringContaining('Leave up-to out.')]);
  });
});
