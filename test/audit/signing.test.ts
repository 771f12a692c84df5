import { execFileSync } from 'node:child_process';
import {
  chmodSync,
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  renameSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { basename, join } from 'node:path';
import { afterAll, afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { Evidence } from '../../src/audit/evidence.ts';
import { readEvidence } from '../../src/cli/evidence.ts';
import { allowedSigners, sign, verify } from '../../src/cli/signing.ts';
import { removeRepositories } from '../repository.ts';
import { estate, gate, hasSshKeygen, mainAlone, makeKey, removeFolders, temporaryFolder } from './office.ts';

afterAll(() => {
  removeRepositories();
  removeFolders();
});

const signer = 'gate@gannet-point.example';

interface Signed {
  readonly folder: string;
  readonly file: string;
  readonly key: string;
  readonly publicKey: string;
}

/** One judged branch, whose signed attestation lies in a folder of its own. */
async function signed(...more: readonly string[]): Promise<Signed> {
  const repository = mainAlone();
  repository.branch('proposal');
  repository.write(estate(90));
  repository.commit('the proposal');
  const { path: key, publicKey } = makeKey('gate');
  const folder = temporaryFolder();
  const file = join(folder, 'gate.intoto.json');
  const { code } = await gate(
    repository,
    '--head',
    'proposal',
    '--attest',
    file,
    '--sign-with',
    key,
    ...more,
  );
  expect(code).toBe(1);
  return { folder, file, key, publicKey };
}

function allowing(...lines: readonly string[]): string {
  const path = join(temporaryFolder(), 'allowed-signers');
  writeFileSync(path, `# who may judge\n${lines.join('\n')}\n`);
  return path;
}

async function believed(folder: string, allowed: string): Promise<readonly Evidence[]> {
  const evidence = await readEvidence(folder, { allowedSigners: allowed });
  if (!evidence.ok) throw new Error(JSON.stringify(evidence.problems));
  return evidence.value;
}

/** Why the one file of a folder is not believed, or who signed it. */
async function standing(folder: string, allowed: string): Promise<string | undefined> {
  const [one, ...others] = await believed(folder, allowed);
  expect(others).toEqual([]);
  return one?.kind === 'altered' ? one.why : one?.signer;
}

describe.skipIf(!hasSshKeygen)('a signed attestation (skipped where there is no ssh-keygen)', () => {
  it('is known by its signer, and by ssh-keygen alone', async () => {
    const { folder, file, publicKey } = await signed();
    const allowed = allowing(`${signer} namespaces="ullage" ${publicKey}`);
    expect(await standing(folder, allowed)).toBe(signer);
    // With no Ullage: the command that ssh-keygen's manual gives.
    const byHand = execFileSync(
      'ssh-keygen',
      ['-Y', 'verify', '-f', allowed, '-I', signer, '-n', 'ullage', '-s', `${file}.sig`],
      {
        input: readFileSync(file),
        encoding: 'utf8',
      },
    );
    expect(byHand).toMatch(/^Good "ullage" signature for gate@gannet-point\.example/);
  });

  it('is not believed once its verdict was turned, however well the rest was made to fit', async () => {
    const { folder, file, publicKey } = await signed();
    const turned = readFileSync(file, 'utf8')
      .replace('"verdict":"fail"', '"verdict":"pass"')
      .replace('"verificationResult":"FAILED"', '"verificationResult":"PASSED"')
      .replace('"verifiedLevels":["FAILED"]', '"verifiedLevels":["ULLAGE_GATE"]');
    writeFileSync(file, turned);
    expect(await standing(folder, allowing(`${signer} ${publicKey}`))).toBe('signature');
    // Unsigned, such a forgery is well formed: it takes the signature, or the replay, to tell.
    const unasked = await readEvidence(folder);
    expect(unasked).toMatchObject({
      ok: true,
      value: [{ kind: 'attestation', attestation: { verdict: 'pass' } }],
    });
  });

  it('is not believed once another commit, time or a report was put into it', async () => {
    const { folder, file, publicKey } = await signed();
    const original = readFileSync(file, 'utf8');
    const allowed = allowing(`${signer} ${publicKey}`);
    const changes: readonly (readonly [RegExp, string])[] = [
      [/"gitCommit":"[0-9a-f]{40}"\},"name":"head"/, `"gitCommit":"${'a'.repeat(40)}"},"name":"head"`],
      [/"timeVerified":"2026-11-20/, '"timeVerified":"2026-11-19'],
      [/"sha256":"[0-9a-f]{64}"/, `"sha256":"${'b'.repeat(64)}"`],
    ];
    for (const [from, to] of changes) {
      const altered = original.replace(from, to);
      expect(altered).not.toBe(original);
      writeFileSync(file, altered);
      expect([to, await standing(folder, allowed)]).toEqual([to, 'signature']);
    }
  });

  it('is not believed of a stranger, nor of a signer who may only sign something else', async () => {
    const { folder, publicKey } = await signed();
    const { publicKey: other } = makeKey('other');
    expect(await standing(folder, allowing(`${signer} ${other}`))).toBe('signer');
    expect(await standing(folder, allowing(`${signer} namespaces="git" ${publicKey}`))).toBe('signer');
  });

  it('is not believed with a signature that the right key made for another purpose', async () => {
    const { folder, file, key, publicKey } = await signed();
    const forGit = execFileSync('ssh-keygen', ['-Y', 'sign', '-n', 'git', '-f', key], {
      input: readFileSync(file),
      stdio: ['pipe', 'pipe', 'ignore'],
    });
    writeFileSync(`${file}.sig`, forGit);
    expect(await standing(folder, allowing(`${signer} ${publicKey}`))).toBe('signer');
  });

  it('holds with a key that ran out later, and not with one that had run out or was not yet valid', async () => {
    const { folder, publicKey } = await signed();
    // Judged as of 2026-11-20.
    expect(await standing(folder, allowing(`${signer} valid-before="20261121" ${publicKey}`))).toBe(signer);
    expect(await standing(folder, allowing(`${signer} valid-before="20261119" ${publicKey}`))).toBe('signer');
    expect(await standing(folder, allowing(`${signer} valid-after="20261201" ${publicKey}`))).toBe('signer');
    // The hour counts in UTC, wherever the machine is; a Z says so to OpenSSH 9.1 and newer.
    expect(await standing(folder, allowing(`${signer} valid-after="20261119233000Z" ${publicKey}`))).toBe(
      signer,
    );
    expect(await standing(folder, allowing(`${signer} valid-before="20261120003000" ${publicKey}`))).toBe(
      signer,
    );
    expect(await standing(folder, allowing(`${signer} valid-before="20261119233000Z" ${publicKey}`))).toBe(
      'signer',
    );
  });

  it("is not believed without its signature, with another file's, with half of one, or with a link in its place", async () => {
    const { folder, file, publicKey } = await signed();
    const allowed = allowing(`${signer} ${publicKey}`);
    const signature = readFileSync(`${file}.sig`, 'utf8');
    const { file: another } = await signed();
    writeFileSync(`${file}.sig`, readFileSync(`${another}.sig`));
    expect(await standing(folder, allowed)).toBe('signer');
    writeFileSync(`${file}.sig`, signature.slice(0, 80));
    expect(await standing(folder, allowed)).toBe('signature');
    const away = join(temporaryFolder(), 'away.sig');
    writeFileSync(away, signature);
    renameSync(`${file}.sig`, join(temporaryFolder(), 'gone.sig'));
    expect(await standing(folder, allowed)).toBe('unsigned');
    symlinkSync(away, `${file}.sig`);
    expect(await standing(folder, allowed)).toBe('signature');
  });

  it('is known where one key has several names, and where its owner is one of a pattern', async () => {
    const { folder, publicKey } = await signed();
    expect(await standing(folder, allowing(`nobody,${signer} ${publicKey}`))).toBe('nobody');
    expect(await standing(folder, allowing(`*@gannet-point.example ${publicKey}`))).toBe(
      '*@gannet-point.example',
    );
  });

  it('vouches for the report beside it, and for no other', async () => {
    const reports = temporaryFolder();
    const report = join(reports, 'report.json');
    const { folder, publicKey } = await signed('--report', `json=${report}`);
    const allowed = allowing(`${signer} ${publicKey}`);
    expect(await standing(folder, allowed)).toBe(signer);
    const kept = join(folder, basename(report));
    writeFileSync(kept, readFileSync(report));
    expect(await standing(folder, allowed)).toBe(signer);
    writeFileSync(kept, readFileSync(report, 'utf8').replace('"fail"', '"pass"'));
    expect(await standing(folder, allowed)).toBe('report');
  });

  it('is made by a key that only the agent holds', async () => {
    const { path: key, publicKey } = makeKey('agent');
    const socket = join(temporaryFolder(), 'agent');
    const started = execFileSync('ssh-agent', ['-s', '-a', socket], { encoding: 'utf8' });
    const pid = Number(/SSH_AGENT_PID=(\d+)/.exec(started)?.[1]);
    const before = process.env.SSH_AUTH_SOCK;
    try {
      process.env.SSH_AUTH_SOCK = socket;
      execFileSync('ssh-add', ['-q', key], { env: { ...process.env, SSH_AUTH_SOCK: socket } });
      renameSync(key, join(temporaryFolder(), 'hidden'));
      const signature = await sign('judged', `${key}.pub`);
      if (!signature.ok) throw new Error(JSON.stringify(signature.problems));
      const path = join(temporaryFolder(), 'judged.sig');
      writeFileSync(path, signature.value);
      const allowed = await allowedSigners(allowing(`${signer} ${publicKey}`));
      if (!allowed.ok) throw new Error('no allowed signers');
      const at = { signature: path, time: '2026-11-20T00:00:00Z' };
      expect(await verify('judged', at, allowed.value)).toEqual({
        ok: true,
        value: { kind: 'good', signer },
      });
      expect(await verify('judged!', at, allowed.value)).toMatchObject({
        ok: true,
        value: { kind: 'bad signature' },
      });
    } finally {
      if (before === undefined) delete process.env.SSH_AUTH_SOCK;
      else process.env.SSH_AUTH_SOCK = before;
      process.kill(pid);
    }
  });

  it('is left unwritten where it cannot be signed, and the gate does not let it through', async () => {
    const repository = mainAlone();
    repository.branch('proposal');
    const folder = temporaryFolder();
    const file = join(folder, 'gate.intoto.json');
    for (const key of [join(folder, 'no-such-key'), '-Y', repository.dir]) {
      const { code, err } = await gate(
        repository,
        '--head',
        'proposal',
        '--attest',
        file,
        `--sign-with=${key}`,
      );
      expect([key, code, readdirSync(folder)]).toEqual([key, 2, []]);
      expect(err).toMatch(/cannot be signed/);
    }
  });

  it("is signed by the machine's ssh-keygen, whatever program the repository's settings name", async () => {
    const repository = mainAlone();
    const trap = join(temporaryFolder(), 'trap');
    const ran = join(temporaryFolder(), 'ran');
    writeFileSync(trap, `#!/bin/sh\ntouch '${ran}'\n`);
    chmodSync(trap, 0o755);
    for (const setting of [
      'gpg.program',
      'gpg.ssh.program',
      'gpg.ssh.defaultKeyCommand',
      'core.sshCommand',
    ]) {
      repository.git('config', setting, trap);
    }
    repository.git('config', 'gpg.format', 'ssh');
    repository.git('config', 'commit.gpgSign', 'true');
    repository.branch('proposal');
    const { path: key, publicKey } = makeKey('gate');
    const folder = temporaryFolder();
    const { code } = await gate(
      repository,
      '--head',
      'proposal',
      '--attest',
      join(folder, 'a.json'),
      '--sign-with',
      key,
    );
    expect([code, await standing(folder, allowing(`${signer} ${publicKey}`))]).toEqual([0, signer]);
    expect(existsSync(ran)).toBe(false);
  });
});

describe('where signatures cannot be checked at all', () => {
  const path = process.env.PATH;
  beforeEach(() => {
    process.env.PATH = temporaryFolder();
  });
  afterEach(() => {
    process.env.PATH = path;
  });

  it("a missing ssh-keygen is said in words, and nobody's signature holds", async () => {
    const advice = expect.stringContaining('Install OpenSSH');
    const missing = {
      ok: false,
      problems: [{ message: 'ssh-keygen is not installed here, or not on PATH', advice }],
    };
    expect(await sign('judged', 'key')).toEqual(missing);
    const at = { signature: 'judged.sig', time: '2026-11-20T00:00:00Z' };
    expect(await verify('judged', at, { path: 'allowed' })).toEqual(missing);
  });

  it('a missing or empty list of signers refuses the evidence whole', async () => {
    const folder = temporaryFolder();
    for (const allowed of [join(folder, 'nowhere'), allowing('# only this')]) {
      const evidence = await readEvidence(folder, { allowedSigners: allowed });
      expect(evidence).toMatchObject({
        ok: false,
        problems: [{ advice: expect.stringContaining('one signer a line') }],
      });
    }
  });
});

describe('an evidence folder', () => {
  it('may hold anything, and only what sets out to be an attestation is held to be one', async () => {
    const folder = temporaryFolder();
    mkdirSync(join(folder, '2026'));
    writeFileSync(join(folder, 'notes.txt'), 'kept by hand');
    writeFileSync(join(folder, 'report.json'), '{"verdict":"pass"}');
    writeFileSync(
      join(folder, 'other.json'),
      '{"_type":"https://in-toto.io/Statement/v1","predicateType":"https://slsa.dev/provenance/v1"}',
    );
    writeFileSync(join(folder, '2026', 'cut.intoto.json'), '{"_type":"https://in-toto.io/Sta');
    writeFileSync(join(folder, '2026', 'deep.json'), '['.repeat(100_000));
    writeFileSync(join(folder, '2026', 'bytes.json'), Buffer.from([0x7b, 0xff, 0x7d]));
    symlinkSync('/etc/passwd', join(folder, 'link.json'));
    const outside = temporaryFolder();
    writeFileSync(join(outside, 'cut.intoto.json'), '{');
    symlinkSync(outside, join(folder, 'elsewhere'));
    symlinkSync(folder, join(folder, 'round'));
    const evidence = await readEvidence(folder);
    if (!evidence.ok) throw new Error(JSON.stringify(evidence.problems));
    expect(evidence.value.map(({ kind, file }) => [kind, file])).toEqual([
      ['altered', '2026/bytes.json'],
      ['altered', '2026/cut.intoto.json'],
      ['altered', '2026/deep.json'],
      ['altered', 'link.json'],
    ]);
  });

  it('that is not there is a problem, not an empty one', async () => {
    expect(await readEvidence(join(temporaryFolder(), 'nowhere'))).toMatchObject({ ok: false });
  });
});
