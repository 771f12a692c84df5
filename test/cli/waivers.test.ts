/** Waivers as whoever reviews them meets them, on real repositories. */
import { rmSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { type Files, makeRepository, removeRepositories, type TestRepository } from '../repository.ts';
import { ullage } from './run.ts';

afterAll(removeRepositories);

const volume = (size: string): Files => ({
  'storage/imagery.yaml': `team: imagery\nvolumes:\n  plates-1: { size: ${size}, tier: bulk }\n`,
});

const waived = (more = '', reason = 'spring survey'): Files => ({
  'waivers/a.yaml': `waivers:\n  - { rule: growth-step, subject: plates-1, reason: ${reason}, approved-by: head of imagery, from: 2026-05-01, until: 2026-05-31${more} }\n`,
});

const office = (more: Files = {}): TestRepository =>
  makeRepository({
    files: {
      'ullage.yaml': 'currency: EUR\n',
      'prices/2026.yaml':
        'from: 2026-01-01\ncurrency: EUR\ntiers:\n  bulk: { rate: "0.10", per: GiB-month }\n',
      'policies/storage.yaml': 'rules:\n  - { name: small, rule: growth-step, by: 10 GiB }\n',
      ...volume('10 GiB'),
      ...more,
    },
  });

async function proposed(repository: TestRepository, files: Files, day: string) {
  repository.branch('proposal');
  repository.write(files);
  repository.commit('proposed');
  const { out } = await ullage(
    ...['gate', '--repo', repository.dir, '--base', 'main', '--head', 'proposal', '--now', day],
    ...['--format', 'json'],
  );
  return JSON.parse(out);
}

it.each([
  [', up-to: 400', 'is a number, in which growth-step measures nothing'],
  [', name: smal', 'names the entry smal, and no entry has that name Did you mean small?'],
  [', name: small, up-to: 400 GiB', undefined],
])('`ullage policy check` tells of a waiver that can have no effect: %s', async (more, remark) => {
  const { dir } = office(waived(more));
  const { out } = await ullage('policy', 'check', '--repo', dir, '--now', '2026-05-02');
  const said = out.replaceAll(/\s+/g, ' ').replace(/at waivers\/a\.yaml:2:5 advice /, '');
  if (remark === undefined) expect(said).toContain('No remarks');
  else expect(said).toContain(remark);
});

describe('a branch that alters a waiver', () => {
  it('for another reason alone is listed, as neither looser nor tighter', async () => {
    const { policyChanges } = await proposed(office(waived()), waived('', 'autumn survey'), '2026-05-02');
    expect(policyChanges).toMatchObject([{ of: 'waiver', key: 'reason', direction: 'neither' }]);
  });

  it('that is over, to a higher ceiling, makes nothing looser', async () => {
    const repository = office(waived(', up-to: 40 GiB'));
    const { policyChanges } = await proposed(repository, waived(', up-to: 400 GiB'), '2026-06-01');
    expect(policyChanges).toMatchObject([{ key: 'up-to', direction: 'neither' }]);
  });
});

it('a waiver that came ahead of its change is not held up to others', async () => {
  const { waivers } = await proposed(office(waived()), volume('11 GiB'), '2026-05-02');
  expect(waivers).toMatchObject([{ state: 'waiting' }]);
});

it('the audit keeps a waiver’s ceiling, its entry and what outgrew it', async () => {
  const repository = office(waived(', name: small, up-to: 40 GiB'));
  for (const [size, day] of [
    ['50 GiB', '02'],
    ['100 GiB', '03'],
  ] as const) {
    repository.write(volume(size));
    repository.commit(size, { date: `2026-05-${day}T12:00:00Z` });
  }
  const { out } = await ullage('audit', '--repo', repository.dir, '--format', 'ndjson');
  const records = out
    .trim()
    .split('\n')
    .map((each) => JSON.parse(each));
  expect(records.slice(1)).toMatchObject([
    {
      verdict: 'pass',
      waivers: [{ state: 'used', waiver: { name: 'small', kind: null, upTo: '40 GiB' } }],
      findings: [{ waiver: { upTo: '40 GiB' }, outgrown: null, held: null }],
    },
    {
      verdict: 'fail',
      waivers: [{ state: 'outgrown', findings: 1 }],
      findings: [{ waiver: null, outgrown: { upTo: '40 GiB' } }],
    },
  ]);
  const { out: told } = await ullage('audit', '--repo', repository.dir, '--show', 'waivers');
  expect(told).toContain('times outgrown');
});

it('the audit keeps what a waiver without a ceiling went by', async () => {
  const repository = office(waived());
  for (const [size, day] of [
    ['50 GiB', '02'],
    ['100 GiB', '03'],
  ] as const) {
    repository.write(volume(size));
    repository.commit(size, { date: `2026-05-${day}T12:00:00Z` });
  }
  const { out } = await ullage('audit', '--repo', repository.dir, '--format', 'ndjson');
  const [, first, second] = out
    .trim()
    .split('\n')
    .map((each) => JSON.parse(each));
  expect(first.findings).toMatchObject([
    { waiver: { upTo: null }, held: { kind: 'nothing yet', covered: null } },
  ]);
  expect(second.findings).toMatchObject([
    {
      waiver: null,
      outgrown: { upTo: null },
      // 40 GiB in bytes.
      held: {
        kind: 'less',
        covered: { entry: 'small', size: '42949672960', commit: first.commit, on: '2026-05-02' },
      },
    },
  ]);
});

describe('a waiver whose subject is written otherwise than the finding has it', () => {
  const other = (subject: string): Files => ({
    'waivers/a.yaml': `waivers:\n  - { rule: growth-step, subject: ${subject}, reason: spring survey, approved-by: "head: imagery", from: 2026-05-01, until: 2026-05-31 }\n`,
  });

  it.each(['Plates-1', 'volume plates-1', 'volume/plates-1', 'PLATES-1'])(
    'as %s covers nothing, and the line to write is told, which then covers it',
    async (subject) => {
      const repository = office(other(JSON.stringify(subject)));
      const { verdict, waivers } = await proposed(repository, volume('60 GiB'), '2026-05-02');
      expect(verdict).toBe('fail');
      const [{ writeInstead }] = waivers;
      expect(writeInstead).toBe(
        '- { rule: growth-step, subject: plates-1, reason: spring survey, approved-by: "head: imagery", from: 2026-05-01, until: 2026-05-31 }',
      );
      const text = await ullage(
        ...['gate', '--repo', repository.dir, '--base', 'main', '--head', 'proposal', '--now', '2026-05-02'],
      );
      expect(text.out.replaceAll(/\s+/g, ' ')).toContain(`write it so: ${writeInstead}`);
      const mended = office({ 'waivers/a.yaml': `waivers:\n  ${writeInstead}\n` });
      expect((await proposed(mended, volume('60 GiB'), '2026-05-02')).verdict).toBe('pass');
    },
  );

  it('is told of by its old name where the branch renames the volume', async () => {
    const renamed = `team: imagery\nvolumes:\n  plates-9: { formerly: plates-1, size: 60 GiB, tier: bulk }\n`;
    const { waivers } = await proposed(office(waived()), { 'storage/imagery.yaml': renamed }, '2026-05-02');
    expect(waivers[0].writeInstead).toContain('subject: plates-9');
  });

  it('is told of by `ullage policy check` before any change is made', async () => {
    const { dir } = office(other('Plates-1'));
    const { out } = await ullage('policy', 'check', '--repo', dir, '--now', '2026-05-02');
    expect(out.replaceAll(/\s+/g, ' ')).toContain('Write it so: - { rule: growth-step, subject: plates-1,');
  });

  it('of another thing is not taken for it', async () => {
    const { waivers } = await proposed(office(other('plates-10')), volume('60 GiB'), '2026-05-02');
    expect(waivers).toMatchObject([{ state: 'waiting', writeInstead: null }]);
  });

  it('is told of by the audit, too', async () => {
    const repository = office(other('Plates-1'));
    repository.write(volume('60 GiB'));
    repository.commit('grown', { date: '2026-05-02T12:00:00Z' });
    const { out } = await ullage(
      'audit',
      '--repo',
      repository.dir,
      '--show',
      'waivers',
      '--format',
      'ndjson',
    );
    expect(JSON.parse(out)).toMatchObject({
      used: 0,
      written: 1,
      write_instead: expect.stringContaining('subject: plates-1'),
    });
  });
});

it('is not taken for unused where the clone lacks a file of the change that it let through', async () => {
  const repository = office(waived());
  const dated = { date: '2026-05-02T09:00:00Z' };
  repository.write(volume('40 GiB'));
  repository.commit('the first growth, waived', dated);
  const blob = repository.git('rev-parse', 'HEAD:storage/imagery.yaml');
  repository.write(volume('10 GiB'));
  repository.commit('back again', dated);
  const whole = repository.copy();
  expect(await proposed(whole, volume('400 GiB'), '2026-05-03')).toMatchObject({ verdict: 'fail' });
  rmSync(join(repository.dir, '.git/objects', blob.slice(0, 2), blob.slice(2)));
  expect(await proposed(repository, volume('400 GiB'), '2026-05-03')).toMatchObject({
    verdict: 'not judged',
    problems: [{ advice: expect.stringContaining('git fetch --refetch') }],
  });
});
