import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Verdict } from '../../src/audit/attest.ts';
import { type Evidence, holdAgainstEvidence, type ReplayedVerdict } from '../../src/audit/evidence.ts';
import { readEvidence } from '../../src/cli/evidence.ts';
import { removeRepositories, type TestRepository } from '../repository.ts';
import {
  day,
  estate,
  gate,
  hasSshKeygen,
  mainAlone,
  makeKey,
  removeFolders,
  temporaryFolder,
} from './office.ts';

afterAll(() => {
  removeRepositories();
  removeFolders();
});

/** A year at the office: what was proposed, whether the gate let it through, and that all of it was merged. */
const proposals = [
  { branch: 'grow', size: 60, verdict: 'pass' },
  { branch: 'overspend', size: 90, verdict: 'fail' },
  { branch: 'grow-again', size: 92, verdict: 'fail' },
] as const;

interface Year {
  readonly repository: TestRepository;
  readonly folder: string;
  readonly records: readonly ReplayedVerdict[];
  readonly allowed: string | undefined;
}

/** The gate attests each branch before it is merged; afterwards each merge is judged again, as an audit does. */
async function aYear(): Promise<Year> {
  const repository = mainAlone();
  const folder = temporaryFolder();
  const key = hasSshKeygen ? makeKey('gate') : undefined;
  for (const { branch, size } of proposals) {
    repository.branch(branch, 'main');
    repository.write(estate(size));
    repository.commit(branch);
    const signing = key === undefined ? [] : ['--sign-with', key.path];
    await gate(repository, '--head', branch, '--attest', join(folder, `${branch}.intoto.json`), ...signing);
    repository.checkout('main');
    repository.merge(branch);
  }
  const commits = repository
    .git('rev-list', '--first-parent', '--reverse', `--max-count=${proposals.length}`, 'main')
    .split('\n');
  const records: ReplayedVerdict[] = [];
  for (const commit of commits) {
    const { out } = await gate(repository, '--base', `${commit}^1`, '--head', commit);
    const judged: { verdict: Verdict } = JSON.parse(out);
    records.push({
      commit,
      tree: repository.git('rev-parse', `${commit}^{tree}`),
      base: repository.git('rev-parse', `${commit}^1`),
      verdict: judged.verdict,
      on: day,
      failOn: 'error',
    });
  }
  let allowed: string | undefined;
  if (key !== undefined) {
    allowed = join(temporaryFolder(), 'allowed-signers');
    writeFileSync(allowed, `gate@gannet-point.example ${key.publicKey}\n`);
  }
  return { repository, folder, records, allowed };
}

let year: Year;
beforeAll(async () => {
  year = await aYear();
}, 60_000);

/** The year's evidence in a folder of its own, where it may be tampered with. */
function copied(): string {
  const folder = join(temporaryFolder(), 'evidence');
  mkdirSync(folder);
  for (const name of readdirSync(year.folder))
    writeFileSync(join(folder, name), readFileSync(join(year.folder, name)));
  return folder;
}

async function held(folder: string, records = year.records) {
  const evidence = await readEvidence(folder, { allowedSigners: year.allowed });
  if (!evidence.ok) throw new Error(JSON.stringify(evidence.problems));
  return holdAgainstEvidence(records, evidence.value);
}

const file = (branch: string): string => `${branch}.intoto.json`;

describe('the evidence of a year, held against the replay', () => {
  it('agrees, commit by commit, though no attestation can know the merge commit', async () => {
    expect(year.records.map(({ verdict }) => verdict)).toEqual(proposals.map(({ verdict }) => verdict));
    expect(await held(year.folder)).toEqual({ findings: [], agreeing: 3, elsewhere: [] });
  });

  it('names the commit whose attestation is missing', async () => {
    const folder = copied();
    rmSync(join(folder, file('overspend')));
    rmSync(join(folder, `${file('overspend')}.sig`), { force: true });
    const { findings, agreeing } = await held(folder);
    expect(agreeing).toBe(2);
    expect(findings).toMatchObject([
      { kind: 'missing', record: { commit: year.records[1]?.commit }, near: undefined },
    ]);
  });

  it.skipIf(!hasSshKeygen)(
    'names the file whose verdict was turned, and believes no word of it',
    async () => {
      const folder = copied();
      const path = join(folder, file('overspend'));
      const turned = readFileSync(path, 'utf8')
        .replace('"verdict":"fail"', '"verdict":"pass"')
        .replace('"verificationResult":"FAILED"', '"verificationResult":"PASSED"');
      writeFileSync(path, turned);
      const { findings, agreeing } = await held(folder);
      expect(agreeing).toBe(2);
      expect(findings).toMatchObject([
        { kind: 'missing', record: { commit: year.records[1]?.commit } },
        { kind: 'altered', file: file('overspend'), why: 'signature' },
      ]);
    },
  );

  it('finds out a turned verdict by the replay alone, where nothing was signed', async () => {
    const folder = copied();
    const path = join(folder, file('overspend'));
    const turned = readFileSync(path, 'utf8')
      .replace('"verdict":"fail"', '"verdict":"pass"')
      .replace('"verificationResult":"FAILED"', '"verificationResult":"PASSED"');
    writeFileSync(path, turned);
    const evidence = await readEvidence(folder);
    if (!evidence.ok) throw new Error('unread');
    const { findings } = holdAgainstEvidence(year.records, evidence.value);
    expect(findings).toMatchObject([
      { kind: 'contradicting', file: file('overspend'), attested: 'pass', record: { verdict: 'fail' } },
    ]);
    expect(findings[0]?.message).toMatch(
      /overspend\.intoto\.json says pass for commit [0-9a-f]{12}, but the replay says fail$/,
    );
  });

  it('says of two verdicts of different days that they are', async () => {
    const records = year.records.map(
      (record): ReplayedVerdict => ({ ...record, verdict: 'pass', on: '2026-11-21' }),
    );
    const { findings } = await held(year.folder, records);
    expect(findings.map(({ kind }) => kind)).toEqual(['contradicting', 'contradicting']);
    expect(findings[0]?.message).toMatch(
      /\(it was judged as of 2026-11-20, and replayed as of 2026-11-21\)$/,
    );
  });

  it('does not take a judgement against another main for one of what was merged', async () => {
    const records = year.records.map((record, index) =>
      index === 2 ? { ...record, base: 'f'.repeat(40) } : record,
    );
    const { findings, elsewhere } = await held(year.folder, records);
    expect(findings).toMatchObject([{ kind: 'missing', near: file('grow-again') }]);
    expect(findings[0]?.message).toMatch(
      /judged the same tree against [0-9a-f]{12}, not against ffffffffffff$/,
    );
    expect(elsewhere).toEqual([file('grow-again')]);
  });

  it('leaves a branch that was judged and never merged alone', async () => {
    expect(await held(year.folder, year.records.slice(0, 2))).toEqual({
      findings: [],
      agreeing: 2,
      elsewhere: [file('grow-again')],
    });
  });

  it('does not believe a file that gives a merged commit another tree', async () => {
    const { records } = year;
    const [first] = records;
    if (first === undefined) throw new Error('no record');
    const evidence: Evidence = {
      kind: 'attestation',
      file: 'a.json',
      signer: undefined,
      attestation: {
        headCommit: first.commit,
        headTree: 'e'.repeat(40),
        baseCommit: first.base ?? '',
        verdict: 'pass',
        time: `${day}T00:00:00Z`,
        on: day,
        failOn: 'error',
        report: { sha256: '0'.repeat(64) },
        version: '0.1.0',
      },
    };
    expect(holdAgainstEvidence([first], [evidence]).findings).toMatchObject([
      { kind: 'missing' },
      { kind: 'altered', file: 'a.json', why: 'tree' },
    ]);
  });
});

describe('any evidence, held against any records', () => {
  const id = fc.constantFrom('a', 'b', 'c').map((letter) => letter.repeat(40));
  const verdict = fc.constantFrom<Verdict>('pass', 'fail', 'not judged');
  const record = fc.record({ tree: id, base: fc.option(id, { nil: undefined }), verdict });
  const evidence = fc.record({ headTree: id, baseCommit: id, verdict });

  it('counts a record as agreeing only where a believed file says the same of the same step, and names each that does not', () => {
    fc.assert(
      fc.property(
        fc.array(record, { maxLength: 8 }),
        fc.array(evidence, { maxLength: 8 }),
        (steps, files) => {
          const records = steps.map(
            (each, index): ReplayedVerdict => ({ ...each, commit: String(index).repeat(40) }),
          );
          const all = files.map(
            (each, index): Evidence => ({
              kind: 'attestation',
              file: `${index}.json`,
              signer: undefined,
              attestation: {
                ...each,
                headCommit: 'd'.repeat(40),
                time: `${day}T00:00:00Z`,
                on: day,
                failOn: undefined,
                report: { sha256: '0'.repeat(64) },
                version: '0.1.0',
              },
            }),
          );
          const { findings, agreeing, elsewhere } = holdAgainstEvidence(records, all);
          const about = (one: ReplayedVerdict) =>
            files.filter((each) => each.headTree === one.tree && each.baseCommit === one.base);
          const count = (kind: string): number => findings.filter((each) => each.kind === kind).length;
          expect(agreeing).toBe(
            records.filter((one) => about(one).some((each) => each.verdict === one.verdict)).length,
          );
          expect(count('missing')).toBe(records.filter((one) => about(one).length === 0).length);
          expect(count('contradicting')).toBe(
            records.reduce(
              (sum, one) => sum + about(one).filter((each) => each.verdict !== one.verdict).length,
              0,
            ),
          );
          expect(elsewhere.length).toBe(
            files.filter(
              (each) => !records.some((one) => each.headTree === one.tree && each.baseCommit === one.base),
            ).length,
          );
        },
      ),
    );
  });
});
