/**
 * Gannet Point's estate as a Git repository: an invented marine survey office with three teams and two sites. Main
 * holds the files in `main/`; each branch makes one proposal, good or bad.
 */
import { execFileSync } from 'node:child_process';
import { cpSync, mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** The day of every judgement in the demo, so that it says the same on any day. */
export const demoDay = '2026-11-20';

export interface Proposal {
  readonly branch: string;
  /** What its author says of it. */
  readonly says: string;
  readonly verdict: 'pass' | 'fail' | 'not judged';
  /** The rule entries that refuse it; empty where none does. */
  readonly refusedBy: readonly string[];
  readonly edits: readonly Edit[];
}

/** One piece of text in one file, and what the branch puts in its place. */
interface Edit {
  readonly file: string;
  readonly from: string;
  readonly to: string;
}

const imagery = 'storage/imagery.yaml';
const soundings = 'storage/soundings.yaml';
const policy = 'policies/storage.yaml';

const moreScans: Edit = {
  file: imagery,
  from: 'attachments:\n',
  to: 'attachments:\n  - { volume: scans-1, server: plate-archive }\n',
};

export const proposals: readonly Proposal[] = [
  {
    branch: 'grow-plates',
    says: 'A routine growth: three volumes, and the file system that lies on them.',
    verdict: 'pass',
    refusedBy: [],
    edits: [
      ...[1, 2, 3].map((number) => ({
        file: imagery,
        from: `plates-${number}: { size: 40 GiB`,
        to: `plates-${number}: { size: 50 GiB`,
      })),
      { file: imagery, from: '/plates: { size: 100 GiB', to: '/plates: { size: 120 GiB' },
    ],
  },
  {
    branch: 'third-depths',
    says: 'One more dear volume, and the team is over its limit.',
    verdict: 'fail',
    refusedBy: ['soundings-limit'],
    edits: [
      {
        file: soundings,
        from: '  depths-2: { size: 200 GiB, tier: brisk }\n',
        to: '  depths-2: { size: 200 GiB, tier: brisk }\n  depths-3: { size: 200 GiB, tier: brisk }\n',
      },
      {
        file: soundings,
        from: '  - { volume: depths-2, server: sounder-1 }\n',
        to: '  - { volume: depths-2, server: sounder-1 }\n  - { volume: depths-3, server: sounder-1 }\n',
      },
      {
        file: soundings,
        from: 'members: [depths-1, depths-2]',
        to: 'members: [depths-1, depths-2, depths-3]',
      },
    ],
  },
  {
    branch: 'borrow-root',
    says: 'The boot volume of a running server is lent to another.',
    verdict: 'fail',
    refusedBy: ['boot-volume-stays'],
    edits: [
      { file: imagery, from: '    boot: plate-archive-root\n', to: '' },
      {
        file: imagery,
        from: 'attachments:\n',
        to: 'attachments:\n  - { volume: plate-archive-root, server: plate-scanner }\n',
      },
    ],
  },
  {
    branch: 'tidy-units',
    says: 'The units are made the same in all files, and 50 GiB becomes 50 GB.',
    verdict: 'fail',
    refusedBy: ['no-shrink'],
    edits: [
      { file: imagery, from: 'plate-scanner-root: { size: 50 GiB', to: 'plate-scanner-root: { size: 50 GB' },
    ],
  },
  {
    branch: 'half-a-group',
    says: 'Two of the three members of a volume group are handed to another server.',
    verdict: 'fail',
    refusedBy: ['group-travels-whole'],
    edits: [1, 2].map((number) => ({
      file: imagery,
      from: `- { volume: plates-${number}, server: plate-scanner }`,
      to: `- { volume: plates-${number}, server: plate-archive }`,
    })),
  },
  {
    branch: 'own-limit',
    says: 'A team raises its own limit and spends it in the same branch.',
    verdict: 'fail',
    refusedBy: ['imagery-limit', 'policy-apart'],
    edits: [
      { file: policy, from: 'limit: "70.00"', to: 'limit: "170.00"' },
      { file: imagery, from: '  plates-1: {', to: '  scans-1: { size: 1 TiB, tier: bulk }\n  plates-1: {' },
      moreScans,
    ],
  },
  {
    branch: 'slip-in-team',
    says: "A letter is missing in the name of the team, and with it the team's limit.",
    verdict: 'not judged',
    refusedBy: ['not judged'],
    edits: [
      {
        file: imagery,
        from: '  plates-1: {',
        to: '  scans-1: { size: 1 TiB, tier: bulk, team: imagry }\n  plates-1: {',
      },
      moreScans,
    ],
  },
  {
    branch: 'grow-root',
    says: 'A small growth of a boot volume, which really is larger than that already.',
    verdict: 'fail',
    refusedBy: ['surveyed-as-declared'],
    edits: [
      { file: soundings, from: 'sounder-1-root: { size: 20 GiB', to: 'sounder-1-root: { size: 30 GiB' },
    ],
  },
];

const here = import.meta.dirname;

/** Nothing of the machine's own Git settings, and fixed dates: the same commits everywhere. */
const environment: NodeJS.ProcessEnv = {
  ...Object.fromEntries(Object.entries(process.env).filter(([name]) => !name.startsWith('GIT_'))),
  GIT_CONFIG_GLOBAL: '/dev/null',
  GIT_CONFIG_NOSYSTEM: '1',
  GIT_AUTHOR_NAME: 'Avery Tern',
  GIT_AUTHOR_EMAIL: 'avery@gannet-point.example',
  GIT_COMMITTER_NAME: 'Avery Tern',
  GIT_COMMITTER_EMAIL: 'avery@gannet-point.example',
  GIT_AUTHOR_DATE: `${demoDay}T09:00:00Z`,
  GIT_COMMITTER_DATE: `${demoDay}T09:00:00Z`,
};

/** Builds the repository in a temporary folder, main checked out and clean; returns the folder. */
export function buildDemo(): string {
  const repository = mkdtempSync(join(tmpdir(), 'gannet-point-'));
  const git = (...args: readonly string[]): void => {
    execFileSync('git', args, { cwd: repository, env: environment, stdio: ['ignore', 'ignore', 'inherit'] });
  };
  git('init', '--quiet', '--initial-branch=main');
  // So that the reader can commit in it without setting anything up.
  git('config', 'user.name', 'Avery Tern');
  git('config', 'user.email', 'avery@gannet-point.example');
  cpSync(join(here, 'main'), repository, { recursive: true });
  // The estate was written down before anybody surveyed it, and the survey tells where that was wrong.
  git('add', '--all', '--', ':!surveys');
  git('commit', '--quiet', '--message', 'The estate as it is');
  git('add', '--all');
  git('commit', '--quiet', '--message', 'What a survey shows');
  for (const { branch, says, edits } of proposals) {
    git('checkout', '--quiet', '-b', branch, 'main');
    for (const edit of edits) apply(repository, edit);
    git('commit', '--quiet', '--all', '--message', says);
  }
  git('checkout', '--quiet', 'main');
  return repository;
}

function apply(repository: string, { file, from, to }: Edit): void {
  const path = join(repository, file);
  const text = readFileSync(path, 'utf8');
  if (text.split(from).length !== 2) throw new Error(`${file} does not hold exactly once: ${from}`);
  writeFileSync(
    path,
    text.replace(from, () => to),
  );
}
