/** A waiver without a ceiling covers what it was approved for, and no more: told on histories of real repositories. */
import fc from 'fast-check';
import { afterAll, describe, expect, it } from 'vitest';
import { auditRecords } from '../../src/audit/audit.ts';
import type { AuditRecord } from '../../src/audit/record.ts';
import { gate } from '../../src/cli/gate.ts';
import { GitRepository } from '../../src/git/repository.ts';
import { ullage } from '../cli/run.ts';
import { valueIn } from '../estate/builder.ts';
import { removeRepositories, type TestRepository } from '../repository.ts';
import { type Edits, historyOf, type Step } from './history.ts';

afterAll(removeRepositories);

const day = (number: number): string => `2026-05-${String(number).padStart(2, '0')}`;
const at = (number: number): string => `${day(number)}T12:00:00Z`;

const sized = (size: number, more = ''): string =>
  `team: imagery\nvolumes:\n  plates-1: { size: ${size} GiB, tier: bulk }\n${more}`;

const step = '{ rule: growth-step, by: 10 GiB }';

const packed = (...entries: readonly string[]): string =>
  `rules:\n${entries.map((each) => `  - ${each}\n`).join('')}`;

const office = (size: number, ...entries: readonly string[]): Edits => ({
  'ullage.yaml': 'currency: EUR\n',
  'prices/2026.yaml': 'from: 2026-01-01\ncurrency: EUR\ntiers:\n  bulk: { rate: "0.10", per: GiB-month }\n',
  'policies/storage.yaml': packed(...entries),
  'storage/imagery.yaml': sized(size),
});

interface Told {
  readonly rule?: string;
  readonly subject?: string;
  readonly reason?: string;
  readonly from?: string;
  readonly until?: string;
  readonly more?: string;
}

const waiver = ({ rule = 'growth-step', subject = 'plates-1', ...told }: Told = {}): string => {
  const { reason = 'spring survey', from = day(1), until = day(31), more = '' } = told;
  return `  - { rule: ${rule}, subject: ${subject}, reason: ${reason}, approved-by: head of imagery, from: ${from}, until: ${until}${more} }\n`;
};

const waivers = (...all: readonly string[]): Edits => ({ 'waivers/a.yaml': `waivers:\n${all.join('')}` });

const steps = (...edits: readonly Edits[]): readonly Step[] =>
  edits.map((each, index) => ({ edits: each, date: at(index + 1) }));

const main = (...edits: readonly Edits[]): TestRepository => historyOf(steps(...edits));

/** A branch over main that changes files, judged against main on a day. */
async function judged(repository: TestRepository, files: Record<string, string>, on = day(20)) {
  repository.git('checkout', '--quiet', '-B', 'proposal', 'main');
  repository.git('reset', '--quiet', '--hard', 'main');
  repository.write(files);
  repository.commit('proposed');
  return gate({
    repo: repository.dir,
    base: 'main',
    head: 'proposal',
    now: on,
    failOn: 'error',
    backTest: 0,
  });
}

const grown = (repository: TestRepository, size: number, on?: string) =>
  judged(repository, { 'storage/imagery.yaml': sized(size) }, on);

async function textOf(repository: TestRepository, on = day(20)): Promise<string> {
  const { out } = await ullage(
    'gate',
    '--repo',
    repository.dir,
    '--base',
    'main',
    '--head',
    'proposal',
    '--now',
    on,
  );
  return out.replaceAll(/\s+/g, ' ');
}

async function audited(repository: TestRepository, more: { readonly since?: string } = {}) {
  const opened = valueIn(await GitRepository.open(repository.dir));
  const records: AuditRecord[] = [];
  const to = repository.git('rev-parse', 'main');
  for await (const record of auditRecords(opened, { span: { to }, failOn: 'error', ...more }))
    records.push(valueIn(record));
  await opened.close();
  return records;
}

const afterFirstUse = (...before: readonly Edits[]): TestRepository =>
  main(office(10, step), ...before, waivers(waiver()), { 'storage/imagery.yaml': sized(50) });

describe('a waiver without a ceiling', () => {
  it('covers the first change, as it is merged ahead of it, and says that it covers no more after', async () => {
    const repository = main(office(10, step), waivers(waiver()));
    expect((await grown(repository, 50)).verdict).toBe('pass');
    const said = await textOf(repository);
    expect(said).toContain(
      'has no ceiling: it covers what this branch does, and no more than that afterwards',
    );
  });

  it.each([
    ['as much again', 90, 'pass'],
    ['less', 80, 'pass'],
    ['one more GiB', 91, 'fail'],
    ['ten times as much', 450, 'fail'],
  ])('then covers %s: to %i GiB it is %s', async (_what, size, verdict) => {
    const repository = afterFirstUse();
    const judgement = await grown(repository, size);
    expect(judgement.verdict).toBe(verdict);
    if (verdict === 'pass' || judgement.verdict === 'not judged') return;
    expect(judgement.waivers.map(({ state }) => state)).toEqual(['outgrown']);
    const first = repository.git('rev-parse', '--short=12', 'main');
    expect(await textOf(repository)).toContain(
      `has no ceiling, and covers no more than it first covered: 40 GiB, at ${first} on 2026-05-03. For more, have a ceiling (up-to) approved.`,
    );
  });

  it.each<[string, Edits]>([
    ['another file', { 'waivers/a.yaml': null, 'waivers/b.yaml': `waivers:\n${waiver()}` }],
    ['another place', waivers(waiver({ subject: 'plates-9' }), waiver())],
    ['other words', waivers(waiver({ reason: 'spring survey and autumn survey' }))],
    ['fewer days', waivers(waiver({ from: day(2), until: day(30) }))],
  ])('is the same one in %s', async (_what, edits) => {
    const repository = historyOf([
      ...steps(office(10, step), waivers(waiver()), { 'storage/imagery.yaml': sized(50) }),
      { edits, date: at(4) },
      { edits: { 'storage/imagery.yaml': sized(51) }, date: at(5) },
    ]);
    expect((await grown(repository, 451)).verdict).toBe('fail');
    expect((await grown(repository, 91)).verdict).toBe('pass');
  });

  it('is a new one on a day more, which is told as looser', async () => {
    const repository = afterFirstUse();
    const longer = `waivers:\n${waiver({ until: '2026-06-01' })}`;
    expect(await judged(repository, { 'waivers/a.yaml': longer })).toMatchObject({
      policyChanges: [{ direction: 'looser', key: 'dates' }],
    });
    const renewed = historyOf([
      ...steps(office(10, step), waivers(waiver()), { 'storage/imagery.yaml': sized(50) }),
      { edits: { 'waivers/a.yaml': longer }, date: at(4) },
    ]);
    expect((await grown(renewed, 450)).verdict).toBe('pass');
  });

  it('is a new one after it was gone, and after a ceiling that it had', async () => {
    for (const between of [waivers(), waivers(waiver({ more: ', up-to: 40 GiB' }))]) {
      const renewed = historyOf([
        ...steps(office(10, step), waivers(waiver()), { 'storage/imagery.yaml': sized(50) }),
        {
          edits: between['waivers/a.yaml'] === 'waivers:\n' ? { 'waivers/a.yaml': null } : between,
          date: at(4),
        },
        { edits: waivers(waiver()), date: at(5) },
      ]);
      expect((await grown(renewed, 450)).verdict).toBe('pass');
    }
  });

  it('covers no worse than what main had on the day it came', async () => {
    const limit = '{ rule: max-monthly-spend, where: { teams: [imagery] }, limit: "5.00" }';
    const over = waivers(waiver({ rule: 'max-monthly-spend', subject: 'imagery' }));
    // 60 GiB at 0.10 a GiB and month are 6.00 already.
    const repository = main(office(60, limit), over);
    const judgement = await grown(repository, 61);
    expect(judgement.verdict).toBe('fail');
    expect(await textOf(repository)).toContain('no more than it first covered: 6.00 EUR');
    // Made better meanwhile, it may be as it was.
    const better = main(office(60, limit), over, { 'storage/imagery.yaml': sized(40) });
    expect((await grown(better, 60)).verdict).toBe('pass');
    expect((await grown(better, 61)).verdict).toBe('fail');
  });

  it('is not used up by a warning on the way to what it is for', async () => {
    const limit = '{ rule: max-monthly-spend, where: { teams: [imagery] }, limit: "5.00", warn-from: 0.5 }';
    const repository = main(
      office(40, limit),
      waivers(waiver({ rule: 'max-monthly-spend', subject: 'imagery' })),
      { 'storage/imagery.yaml': sized(45) },
    );
    expect((await grown(repository, 90)).verdict).toBe('pass');
  });

  it('is not used up before its first day, nor by another thing', async () => {
    const later = waiver({ from: day(10) });
    const repository = historyOf(
      steps(office(10, step), waivers(waiver({ until: day(5) }), later), {
        'storage/imagery.yaml': sized(30),
      }),
    );
    expect((await grown(repository, 200)).verdict).toBe('pass');
    expect((await grown(repository, 200, day(5))).verdict).toBe('fail');
  });

  it('covers no other fault of its subject than it did', async () => {
    const priced =
      'from: 2026-01-01\ncurrency: EUR\ntiers:\n  bulk: { rate: "0.10", per: GiB-month, step: 10 GiB, maximum: 100 GiB }\n';
    const repository = main(
      { ...office(10, '{ rule: tier-bounds }'), 'prices/2026.yaml': priced },
      waivers(waiver({ rule: 'tier-bounds' })),
      { 'storage/imagery.yaml': sized(15) },
      { 'storage/imagery.yaml': sized(20) },
    );
    expect((await grown(repository, 15)).verdict).toBe('pass');
    expect((await grown(repository, 110)).verdict).toBe('fail');
    expect(await textOf(repository)).toContain('and what it first covered was something else: ');
  });

  it('covers a change that nothing is measured of where the same is said of it again', async () => {
    const frozen = main(
      { ...office(50, `{ rule: freeze, from: ${day(1)}, until: ${day(31)} }`) },
      waivers(waiver({ rule: 'freeze' })),
      { 'storage/imagery.yaml': sized(40) },
      { 'storage/imagery.yaml': sized(50) },
    );
    expect((await grown(frozen, 40)).verdict).toBe('pass');
    expect((await judged(frozen, { 'storage/imagery.yaml': 'team: imagery\nvolumes: {}\n' })).verdict).toBe(
      'fail',
    );
  });

  it('needs no history where its finding stands unchanged, or where it has a ceiling', async () => {
    const repository = main(office(10, step), waivers(waiver({ more: ', up-to: 100 GiB' })), {
      'README.md': 'words\n',
    });
    const clone = repository.clone('--depth=1', '--no-single-branch');
    clone.git('checkout', '--quiet', '-B', 'main', 'origin/main');
    expect((await grown(clone, 50)).verdict).toBe('pass');
  });
});

describe('in a clone that is cut short', () => {
  it('what was approved before its first commit is not judged, and it says what to fetch, or what else to do', async () => {
    const repository = afterFirstUse();
    const clone = repository.clone('--depth=1', '--no-single-branch');
    clone.git('checkout', '--quiet', '-B', 'main', 'origin/main');
    const judgement = await grown(clone, 51 + 20);
    expect(judgement.verdict).toBe('not judged');
    const said = await textOf(clone);
    expect(said).toContain('waivers/a.yaml:2: the waiver of growth-step for plates-1 has no ceiling');
    expect(said).toContain('git fetch --unshallow origin');
    expect(said).toContain('fetch depth 0');
    expect(said).toContain('up-to');
    clone.git('fetch', '--quiet', '--unshallow');
    expect((await grown(clone, 51 + 20)).verdict).toBe('pass');
  });

  it('a waiver that came since is judged', async () => {
    const repository = afterFirstUse({ 'README.md': 'words\n' }, { 'README.md': 'more words\n' });
    const clone = repository.clone('--depth=3', '--no-single-branch');
    clone.git('checkout', '--quiet', '-B', 'main', 'origin/main');
    expect((await grown(clone, 90)).verdict).toBe('pass');
    expect((await grown(clone, 91)).verdict).toBe('fail');
  });
});

it('uncommitted files are held to the same', async () => {
  const repository = afterFirstUse();
  repository.git('checkout', '--quiet', '--force', 'main');
  for (const [size, verdict] of [
    [90, 'pass'],
    [91, 'fail'],
  ] as const) {
    repository.write({ 'storage/imagery.yaml': sized(size) });
    const options = {
      repo: repository.dir,
      worktree: true,
      now: day(20),
      failOn: 'error',
      backTest: 0,
    } as const;
    expect((await gate(options)).verdict).toBe(verdict);
  }
});

it('a main that does not read takes nothing away from what was covered before', async () => {
  const repository = main(
    office(10, step),
    waivers(waiver()),
    { 'storage/imagery.yaml': sized(50) },
    { 'waivers/a.yaml': 'waivers: [broken\n' },
  );
  const mended = `waivers:\n${waiver()}`;
  const proposal = (size: number) =>
    judged(repository, { 'waivers/a.yaml': mended, 'storage/imagery.yaml': sized(size) });
  expect((await proposal(90)).verdict).toBe('pass');
  expect((await proposal(91)).verdict).toBe('fail');
});

describe('the audit', () => {
  const sizes = [50, 90, 490, 500];
  const told = main(
    office(10, step),
    waivers(waiver()),
    ...sizes.map((each) => ({ 'storage/imagery.yaml': sized(each) })),
  );

  it('holds each commit to what was covered before it', async () => {
    const records = await audited(told);
    expect(records.map(({ verdict }) => verdict)).toEqual(['pass', 'pass', 'pass', 'pass', 'fail', 'pass']);
  });

  it.each([day(4), day(5)])('says the same from the middle on, from %s', async (since) => {
    const whole = (await audited(told)).filter(({ on }) => on >= since);
    const part = await audited(told, { since });
    expect(part.map(({ verdict, findings, waivers: used }) => ({ verdict, findings, used }))).toEqual(
      whole.map(({ verdict, findings, waivers: used }) => ({ verdict, findings, used })),
    );
  });
});

it('no sequence of merges lets it cover more than it first did', { timeout: 120_000 }, async () => {
  let covered = 0;
  let refused = 0;
  const move = fc.oneof(
    { weight: 6, arbitrary: fc.integer({ min: 1, max: 60 }).map((by) => ({ by })) },
    { weight: 2, arbitrary: fc.constant({ by: -5 }) },
    {
      weight: 3,
      arbitrary: fc.constantFrom<Edits>(
        waivers(waiver()),
        waivers(waiver({ reason: 'other words' })),
        { 'waivers/a.yaml': null },
        { 'waivers/a.yaml': 'waivers: [broken\n' },
        { 'README.md': 'words\n' },
        { 'policies/storage.yaml': packed(step, '{ rule: no-shrink, level: note }') },
      ),
    },
  );
  await fc.assert(
    fc.asyncProperty(fc.array(move, { minLength: 4, maxLength: 12 }), async (moves) => {
      let size = 1000;
      const told: Edits[] = [office(size, step), waivers(waiver())];
      for (const each of moves) {
        if (typeof each.by === 'number') {
          size += each.by;
          told.push({ 'storage/imagery.yaml': sized(size) });
        } else told.push(each as Edits);
      }
      const repository = main(...told);
      try {
        const records = await audited(repository);
        let first: number | undefined;
        for (const record of records) {
          const finding = record.findings.find(({ rule }) => rule === 'growth-step');
          const renewed = record.policyChanges.some(
            ({ of, direction }) => of === 'waiver' && direction === 'looser',
          );
          if (renewed) first = undefined;
          if (finding?.held?.kind === 'less') refused++;
          if (finding?.waiver === null || finding === undefined) continue;
          const by = Number(/by (\d+) GiB/.exec(finding.message)?.[1]);
          expect(Number.isNaN(by), finding.message).toBe(false);
          first ??= by;
          expect(by).toBeLessThanOrEqual(first);
          covered++;
        }
      } finally {
        repository.cleanup();
      }
    }),
    { numRuns: 40 },
  );
  // It is worth something only where some are covered, and some are more than that.
  expect(Math.min(covered, refused)).toBeGreaterThan(10);
});
