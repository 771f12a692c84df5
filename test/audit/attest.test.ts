import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import fc from 'fast-check';
import { afterAll, describe, expect, it } from 'vitest';
import { canonicalJson, readAttestation } from '../../src/audit/attest.ts';
import { type Files, makeRepository, removeRepositories, type TestRepository } from '../repository.ts';
import { day, estate, gate, mainAlone, office, removeFolders, temporaryFolder } from './office.ts';

afterAll(() => {
  removeRepositories();
  removeFolders();
});

interface Descriptor {
  readonly name?: string;
  readonly uri?: string;
  readonly digest: Readonly<Record<string, string>>;
  readonly annotations?: { readonly files: readonly Descriptor[] };
}

interface Statement {
  readonly _type: string;
  readonly subject: readonly Descriptor[];
  readonly predicateType: string;
  readonly predicate: {
    readonly verifier: { readonly id: string; readonly version: Readonly<Record<string, string>> };
    readonly timeVerified: string;
    readonly resourceUri: string;
    readonly policy: Descriptor;
    readonly verificationResult: string;
    readonly verifiedLevels: readonly string[];
    readonly 'https://ullage.example/judgement/v1': {
      readonly verdict: string;
      readonly report: { readonly name?: string; readonly digest: { readonly sha256: string } };
    };
  };
}

/** Judges a branch that writes some files, and reads what was attested. */
async function attested(
  files: Files,
  { repository = mainAlone(), more = [] }: { repository?: TestRepository; more?: readonly string[] } = {},
) {
  repository.branch('proposal');
  repository.write(files);
  repository.commit('the proposal');
  const path = join(temporaryFolder(), 'gate.intoto.json');
  const run = await gate(repository, '--head', 'proposal', '--attest', path, ...more);
  const text = readFileSync(path, 'utf8');
  const statement: Statement = JSON.parse(text);
  return { repository, path, text, statement, ...run };
}

describe('the gate writes its judgement down', () => {
  it('as a statement that a consumer can verify by the seven steps of the SLSA Verification Summary', async () => {
    const { repository, statement, code } = await attested(estate(60));
    expect(code).toBe(0);
    // "How to verify", SLSA 1.2, spec/verification_summary.md, steps 2 to 7; the signature is step 1, tested elsewhere.
    expect(statement._type).toBe('https://in-toto.io/Statement/v1');
    expect(statement.subject.map(({ digest }) => digest)).toEqual([
      { gitCommit: repository.git('rev-parse', 'proposal') },
      { gitTree: repository.git('rev-parse', 'proposal^{tree}') },
    ]);
    expect(statement.predicateType).toBe('https://slsa.dev/verification_summary/v1');
    expect(statement.predicate.verifier.id).toBe('https://ullage.example/gate/v1');
    expect(statement.predicate.resourceUri).toBe(`gitoid:commit:sha1:${repository.git('rev-parse', 'main')}`);
    expect(statement.predicate.verificationResult).toBe('PASSED');
    expect(statement.predicate.verifiedLevels).toEqual(['ULLAGE_GATE']);
    // in-toto's Timestamp: RFC 3339 in UTC.
    expect(statement.predicate.timeVerified).toBe(`${day}T00:00:00Z`);
  });

  it('names the policy that judged by the blobs of main, not by those of the branch', async () => {
    const loosened = String(office['policies/storage.yaml']).replace('5.00', '500.00');
    const { repository, statement } = await attested({ ...estate(60), 'policies/storage.yaml': loosened });
    const { policy } = statement.predicate;
    const base = repository.git('rev-parse', 'main');
    expect(policy).toMatchObject({ uri: `gitoid:commit:sha1:${base}`, digest: { gitCommit: base } });
    const expected = ['policies/storage.yaml', 'prices/2026.yaml', 'ullage.yaml'].map((name) => ({
      name,
      digest: { gitBlob: repository.git('rev-parse', `main:${name}`) },
    }));
    expect(policy.annotations?.files).toEqual(expected);
    expect(repository.git('rev-parse', 'proposal:policies/storage.yaml')).not.toBe(
      expected[0]?.digest.gitBlob,
    );
  });

  it('attests the merged tree where main has moved on, and no tree of either side', async () => {
    const repository = mainAlone();
    repository.branch('proposal');
    repository.write(estate(60));
    repository.commit('more plates');
    repository.checkout('main');
    repository.write({ 'README.md': 'written meanwhile\n' });
    repository.commit('a note');
    const path = join(temporaryFolder(), 'gate.json');
    await gate(repository, '--head', 'proposal', '--attest', path);
    const statement: Statement = JSON.parse(readFileSync(path, 'utf8'));
    const merged = repository.git('merge-tree', '--write-tree', 'main', 'proposal');
    expect(statement.subject[1]?.digest).toEqual({ gitTree: merged });
    expect([
      repository.git('rev-parse', 'main^{tree}'),
      repository.git('rev-parse', 'proposal^{tree}'),
    ]).not.toContain(merged);
  });

  it('says FAILED of an overspent team', async () => {
    const { statement, code } = await attested(estate(90));
    expect([code, statement.predicate.verificationResult, statement.predicate.verifiedLevels]).toEqual([
      1,
      'FAILED',
      ['FAILED'],
    ]);
  });

  it('never says PASSED of what could not be judged', async () => {
    const { statement, code } = await attested({ 'storage/imagery.yaml': 'volumes: {' });
    expect([code, statement.predicate.verificationResult, statement.predicate.verifiedLevels]).toEqual([
      2,
      'FAILED',
      ['FAILED'],
    ]);
    expect(statement.predicate['https://ullage.example/judgement/v1'].verdict).toBe('not judged');
  });

  it('writes nothing where there are no two revisions, and says so', async () => {
    const path = join(temporaryFolder(), 'gate.json');
    const repository = mainAlone();
    const { code, err } = await gate(repository, '--base', 'nowhere', '--attest', path);
    expect([code, existsSync(path)]).toEqual([2, false]);
    expect(err).toMatch(/no attestation was written\n$/);
    for (const misuse of [
      ['--worktree', '--attest', path],
      ['--sign-with', path],
    ]) {
      const refused = await gate(repository, ...misuse);
      expect([misuse, refused.code, existsSync(path)]).toEqual([misuse, 2, false]);
      expect(refused.err).toMatch(/^not judged/);
    }
  });

  it('carries the digest and the name of the JSON report it was judged with', async () => {
    const report = join(temporaryFolder(), 'gate-report.json');
    const { statement } = await attested(estate(60), { more: ['--report', `json=${report}`] });
    expect(statement.predicate['https://ullage.example/judgement/v1'].report).toMatchObject({
      name: basename(report),
      digest: { sha256: createHash('sha256').update(readFileSync(report)).digest('hex') },
    });
  });

  it('gives the same bytes twice, leaves no draft behind, and takes the place of an older one whole', async () => {
    const { repository, path, text } = await attested(estate(60));
    writeFileSync(path, 'x'.repeat(100_000));
    writeFileSync(`${path}.sig`, 'a signature of what was there before');
    await gate(repository, '--head', 'proposal', '--attest', path);
    expect(readFileSync(path, 'utf8')).toBe(text);
    expect(readdirSync(join(path, '..'))).toEqual([basename(path)]);
  });

  it('is not let through where the attestation cannot be written', async () => {
    const folder = temporaryFolder();
    mkdirSync(join(folder, 'taken'));
    const repository = mainAlone();
    repository.branch('proposal');
    const { code, err } = await gate(repository, '--head', 'proposal', '--attest', join(folder, 'taken'));
    expect(code).toBe(2);
    expect(err).toMatch(/attestation .* cannot be written/);
    expect(readdirSync(folder)).toEqual(['taken']);
  });

  it('attests a repository of SHA-256 objects, and a first adoption by its own policy', async () => {
    const repository = makeRepository({ objectFormat: 'sha256', files: { 'README.md': 'nothing yet\n' } });
    const { statement, code } = await attested(office, { repository });
    const tree = repository.git('rev-parse', 'proposal^{tree}');
    expect(code).toBe(0);
    expect(tree).toHaveLength(64);
    expect(statement.predicate.policy).toMatchObject({
      uri: `gitoid:tree:sha256:${tree}`,
      digest: { gitTree: tree },
    });
  });
});

describe('reading an attestation back', () => {
  it('gives what was judged', async () => {
    const { repository, text } = await attested(estate(90));
    const read = readAttestation(text, JSON.parse(text), 'a.json');
    expect(read).toMatchObject({
      ok: true,
      value: {
        headCommit: repository.git('rev-parse', 'proposal'),
        headTree: repository.git('rev-parse', 'proposal^{tree}'),
        baseCommit: repository.git('rev-parse', 'main'),
        verdict: 'fail',
        on: day,
        failOn: 'error',
      },
    });
  });

  it('refuses whatever the gate cannot have written', async () => {
    const { text } = await attested(estate(90));
    const doctored: Readonly<Record<string, (text: string) => string>> = {
      'the result alone': (old) =>
        old.replace('"verificationResult":"FAILED"', '"verificationResult":"PASSED"'),
      'the verdict alone': (old) => old.replace('"verdict":"fail"', '"verdict":"pass"'),
      'a verdict of nobody': (old) => old.replace('"verdict":"fail"', '"verdict":"fine"'),
      'another base in one place': (old) =>
        old.replace(
          /"resourceUri":"gitoid:commit:sha1:[0-9a-f]{40}"/,
          `"resourceUri":"gitoid:commit:sha1:${'0'.repeat(40)}"`,
        ),
      'a space': (old) => old.replace('{', '{ '),
      'a key given twice': (old) => old.replace('"verdict":"fail"', '"verdict":"pass","verdict":"fail"'),
      'half a surrogate pair': (old) => old.replace('"name":"head"', '"name":"\\ud800"'),
      'a short id': (old) => old.replace(/"gitTree":"[0-9a-f]{40}"/, '"gitTree":"abc"'),
    };
    for (const [how, change] of Object.entries(doctored)) {
      const altered = change(text);
      expect([how, altered === text]).toEqual([how, false]);
      expect([how, readAttestation(altered, JSON.parse(altered), 'a.json').ok]).toEqual([how, false]);
    }
  });
});

describe('canonical JSON', () => {
  it('writes the sample of RFC 8785, sections 3.2.2 to 3.2.4', () => {
    // As github.com/cyberphone/json-canonicalization, the RFC's own repository, prints it in its README.
    const sample = JSON.parse(
      String.raw`{"numbers":[1E30,4.50,6,2e-3,0.000000000000000000000000001],"escaping":"\u20ac$\u000F\u000aA'\u0042\u0022\u005c\\\"\/","other":[null,true,false]}`,
    );
    expect(canonicalJson(sample)).toBe(
      String.raw`{"escaping":"€$\u000f\nA'B\"\\\\\"/","numbers":[1e+30,4.5,6,0.002,1e-27],"other":[null,true,false]}`,
    );
  });

  it('sorts keys by UTF-16 units', () => {
    // testdata/input/weird.json and testdata/output/weird.json of the same repository.
    const weird = {
      '\u20ac': 'Euro Sign',
      '1': 'One',
      '\u0080': 'Control\u007f',
      '\ud83d\ude02': 'Smiley',
      '\u00f6': 'Latin Small Letter O With Diaeresis',
      '\ufb33': 'Hebrew Letter Dalet With Dagesh',
      '</script>': 'Browser Challenge',
    };
    expect(canonicalJson(weird)).toBe(
      '{"1":"One","</script>":"Browser Challenge","\u0080":"Control\u007f","\u00f6":"Latin Small Letter O With Diaeresis","\u20ac":"Euro Sign","\ud83d\ude02":"Smiley","\ufb33":"Hebrew Letter Dalet With Dagesh"}',
    );
  });

  it('does not depend on the order in which keys were set, and loses nothing', () => {
    fc.assert(
      fc.property(fc.dictionary(fc.string({ unit: 'grapheme' }), fc.jsonValue()), (value) => {
        const text = canonicalJson(value);
        const turned = Object.fromEntries(Object.entries(value).reverse());
        expect(canonicalJson(turned)).toBe(text);
        expect(JSON.parse(text)).toEqual(JSON.parse(JSON.stringify(value)));
      }),
    );
  });
});
