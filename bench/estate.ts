/** A large estate to measure on: so many volumes in so many files, on main, and a branch that changes three. */
import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

export interface Size {
  readonly volumes: number;
  readonly files: number;
}

/** One file: servers with a boot volume, data volumes and a group of three each; five volumes a server. */
export function estateFile(file: number, volumes: number): string {
  const servers: string[] = [];
  const declared: string[] = [];
  const attachments: string[] = [];
  const groups: string[] = [];
  for (let server = 0; server * 5 < volumes; server++) {
    const name = `f${file}-s${server}`;
    servers.push(`  ${name}: { power: running, boot: ${name}-root, guest: linux-lvm }`);
    declared.push(`  ${name}-root: { size: 20 GiB, tier: steady }`);
    const members = [1, 2, 3].map((number) => `${name}-d${number}`);
    for (const member of [...members, `${name}-log`]) {
      const log = member.endsWith('log') ? `\n    file-system: { mount: /var/log, type: ext4 }` : '';
      declared.push(`  ${member}:\n    size: 40 GiB\n    tier: bulk\n    labels: { purpose: measure }${log}`);
      attachments.push(`  - { volume: ${member}, server: ${name} }`);
    }
    groups.push(
      `  ${name}-g:\n    extent: 64 MiB\n    members: [${members.join(', ')}]\n    file-systems:\n      /srv/${name}: { size: 107 GiB, type: xfs }`,
    );
  }
  return [
    `team: team-${file % 7}`,
    'site: north-quay',
    'servers:',
    ...servers,
    'volumes:',
    ...declared,
    'attachments:',
    ...attachments,
    'volume-groups:',
    ...groups,
    '',
  ].join('\n');
}

export const fixed: Readonly<Record<string, string>> = {
  'ullage.yaml':
    'currency: EUR\nsites:\n  north-quay: { quota: { volumes: 1000000, size: 4000 TiB }, attachment-slots: 32 }\n',
  'prices/2026.yaml':
    'from: 2026-01-01\ncurrency: EUR\ntiers:\n  bulk: { rate: "0.045", per: GiB-month }\n  steady: { rate: "0.10", per: GiB-month }\n',
  'policies/storage.yaml':
    'use: [starter]\nrules:\n  - { name: whole, rule: max-monthly-spend, limit: "1000000.00" }\n  - { name: teams, rule: max-monthly-spend, each: team, limit: "500000.00" }\n',
};

/** Builds the repository: `main`, and `branch` with three volumes grown. Returns its folder. */
export function buildEstate({ volumes, files }: Size): string {
  const repository = mkdtempSync(join(tmpdir(), 'ullage-bench-'));
  const git = (...args: readonly string[]): void => {
    execFileSync('git', ['-c', 'user.name=bench', '-c', 'user.email=bench@gannet-point.example', ...args], {
      cwd: repository,
      stdio: ['ignore', 'ignore', 'inherit'],
    });
  };
  git('init', '--quiet', '--initial-branch=main');
  for (const folder of ['storage', 'prices', 'policies']) mkdirSync(join(repository, folder));
  for (const [path, text] of Object.entries(fixed)) writeFileSync(join(repository, path), text);
  for (let file = 0; file < files; file++) {
    writeFileSync(join(repository, 'storage', `e${file}.yaml`), estateFile(file, volumes / files));
  }
  git('add', '--all');
  git('commit', '--quiet', '--message', 'estate');
  git('checkout', '--quiet', '-b', 'branch');
  for (const file of [0, 1, 2]) {
    const path = join(repository, 'storage', `e${file}.yaml`);
    writeFileSync(path, readFileSync(path, 'utf8').replace('size: 40 GiB', 'size: 60 GiB'));
  }
  git('commit', '--quiet', '--all', '--message', 'grow three');
  return repository;
}
