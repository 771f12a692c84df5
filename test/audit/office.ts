/** A marine survey office with a signing gate, for the tests of attestations. */
import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { ullage } from '../cli/run.ts';
import { type Files, makeRepository, type TestRepository } from '../repository.ts';

export const hasSshKeygen = spawnSync('ssh-keygen', ['-?']).error === undefined;

const folders = new Set<string>();

export function temporaryFolder(): string {
  const dir = mkdtempSync(join(tmpdir(), 'ullage-audit-'));
  folders.add(dir);
  return dir;
}

export function removeFolders(): void {
  for (const dir of folders) rmSync(dir, { recursive: true, force: true });
  folders.clear();
}

/** A new key pair without a passphrase: the private key's path, and the public key as an allowed-signers file has it. */
export function makeKey(name: string): { readonly path: string; readonly publicKey: string } {
  const path = join(temporaryFolder(), name);
  execFileSync('ssh-keygen', ['-q', '-t', 'ed25519', '-N', '', '-C', name, '-f', path]);
  return { path, publicKey: readFileSync(`${path}.pub`, 'utf8').split(' ').slice(0, 2).join(' ') };
}

/** Plates of a given size, in GiB. */
export const estate = (size: number): Files => ({
  'storage/imagery.yaml': `team: imagery
site: north-quay
servers:
  plate-scanner: { power: running, boot: plate-scanner-root, guest: linux-lvm }
volumes:
  plate-scanner-root: { size: 20 GiB, tier: steady }
  plates-1: { size: ${size} GiB, tier: bulk }
attachments:
  - { volume: plates-1, server: plate-scanner }
`,
});

export const office: Files = {
  ...estate(50),
  'ullage.yaml': 'currency: EUR\n',
  'prices/2026.yaml':
    'from: 2026-01-01\ncurrency: EUR\ntiers:\n  bulk: { rate: "0.045", per: GiB-month }\n  steady: { rate: "0.10", per: GiB-month }\n',
  'policies/storage.yaml':
    'use: [starter]\nrules:\n  - { name: imagery-limit, rule: max-monthly-spend, where: { teams: [imagery] }, limit: "5.00" }\n',
};

export const day = '2026-11-20';

/** Main with the office on it, and nothing proposed yet. */
export function mainAlone(): TestRepository {
  return makeRepository({ files: office, message: 'the estate' });
}

export const gate = (repository: TestRepository, ...more: readonly string[]) =>
  ullage('gate', '--repo', repository.dir, '--base', 'main', '--now', day, '--format', 'json', ...more);
