/** What is measured: each a whole command, beside a yardstick in the same run, with the ratio that is aimed at. */
import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { estateFiles, type Files, fixed, grown, type Size } from './estate.ts';
import { buildHistory } from './history.ts';
import { buildRepository } from './repository.ts';

export interface Load {
  readonly name: string;
  /** A program and its arguments. */
  readonly command: readonly string[];
  /** What is taken off: the part of the command that is not meant. */
  readonly without?: readonly string[];
}

export interface Case {
  readonly what: string;
  /** What is measured, and its yardstick; what they work on is built when this is asked for. */
  readonly loads: () => readonly [load: Load, beside: Load];
  /** The ratio that is aimed at; absent where none is. */
  readonly aim?: number;
  /** The most memory aimed at, in MiB. */
  readonly memory?: number;
}

/** The programs that are measured, each a path. */
export interface Programs {
  readonly ullage: string;
  readonly parseOnce: string;
  /** An earlier build of the command, to measure beside. */
  readonly before: string | undefined;
}

const usual = { volumes: 10_000, files: 200 };
const large = { volumes: 20_000, files: 400 };
const many = { volumes: 10_000, files: 2_000 };

export function casesOf({ ullage, parseOnce, before }: Programs): readonly Case[] {
  const node = process.execPath;
  const nothing: Load = { name: 'node -e 0', command: [node, '-e', '0'] };
  const command = (name: string, ...args: readonly string[]): Load => ({
    name,
    command: [node, ullage, ...args],
  });
  const gate = (name: string, repository: string, program = ullage): Load => {
    const refs = ['--base', 'main', '--head', 'branch', '--now', '2026-11-20'];
    return { name, command: [node, program, 'gate', '--repo', repository, ...refs] };
  };
  const parsing = (library: string): Load => ({
    name: `one ${library} parse of the files`,
    command: [node, parseOnce, library, join(onDisk(estateFiles(usual)), 'storage')],
  });
  /** Every volume breaks a rule about names, or none does. */
  const naming = (pattern: string): string =>
    branched(usual, 3, {
      'policies/names.yaml': `rules:\n  - { rule: naming, volume: '${pattern}' }\n`,
    });
  const commits = 300;
  const audited = (name: string, size: Size): Load => {
    const folder = buildHistory({ ...size, commits, changing: 200 });
    const audit = (span: string): readonly string[] => [node, ullage, 'audit', '--repo', folder, span];
    return { name, command: audit('main'), without: audit(`main~${commits}`) };
  };
  const besideEarlier = (size: Size): readonly Case[] => {
    if (before === undefined) return [];
    const loads = (): readonly [Load, Load] => {
      const repository = branched(size, 3);
      return [gate('gate', repository), gate('the earlier build', repository, before)];
    };
    return [{ what: `gate, ${size.volumes} volumes, 3 files changed`, aim: 0.5, loads }];
  };
  return [
    { what: '--help', aim: 1.3, loads: () => [command('help', '--help'), nothing] },
    { what: '--version', aim: 1.3, loads: () => [command('version', '--version'), nothing] },
    {
      what: 'gate, 150 volumes',
      loads: () => [gate('gate', branched({ volumes: 150, files: 3 }, 3)), nothing],
    },
    ...besideEarlier({ volumes: 150, files: 3 }),
    ...besideEarlier(usual),
    {
      what: 'gate, 10,000 volumes, 3 files of 200 changed',
      aim: 4,
      loads: () => [gate('gate', branched(usual, 3)), parsing('js-yaml')],
    },
    {
      what: 'gate, 10,000 volumes, 3 files of 200 changed',
      aim: 0.65,
      loads: () => [gate('gate', branched(usual, 3)), parsing('yaml')],
    },
    {
      what: 'gate, 100,000 volumes, 3 files of 2,000 changed',
      aim: 11,
      memory: 512,
      loads: () => [
        gate('gate', branched({ volumes: 100_000, files: 2_000 }, 3)),
        gate('10,000 volumes', branched(usual, 3)),
      ],
    },
    {
      what: 'gate, 1,000 files of 2,000 changed',
      aim: 2,
      loads: () => [gate('gate', branched(many, 1_000)), gate('3 changed', branched(many, 3))],
    },
    {
      what: 'gate, one file of 20,000 volumes',
      aim: 1.2,
      loads: () => [
        gate('gate', branched({ volumes: 20_000, files: 1 }, 1)),
        gate('the same in 400 files', branched(large, 1)),
      ],
    },
    {
      what: 'gate, 10,000 findings',
      aim: 2,
      loads: () => [gate('gate', naming('x.*')), gate('no finding', naming('f.*'))],
    },
    {
      what: 'gate, 10,000 findings and the estate, as a page',
      aim: 2,
      loads: () => {
        const repository = naming('x.*');
        const json = gate('as JSON', repository);
        const page = { name: 'as a page', command: [...json.command, '--format', 'html'] };
        return [page, { ...json, command: [...json.command, '--format', 'json'] }];
      },
    },
    {
      what: 'audit, each further commit, 20,000 volumes',
      aim: 1.3,
      loads: () => [audited('audit', large), audited('10,000 volumes', usual)],
    },
    {
      what: 'cost --by server, 20,000 volumes',
      aim: 1.3,
      loads: () => {
        const repository = branched(large, 1);
        return [
          command('by server', 'cost', '--repo', repository, '--at', 'main', '--by', 'server'),
          command('by volume', 'cost', '--repo', repository, '--at', 'main', '--by', 'volume'),
        ];
      },
    },
    {
      what: 'survey compare, 1,000 servers of 20 volumes',
      loads: () => {
        const folder = surveyed(1_000, 20);
        const parsing = `const fs = require('fs'); let n = 0; for (const f of fs.readdirSync('surveys')) n += JSON.parse(fs.readFileSync('surveys/' + f, 'utf8')).devices.length; console.log(n);`;
        return [
          command('survey compare', 'survey', 'compare', '--repo', folder, '--now', '2026-11-20'),
          {
            name: 'JSON.parse of the surveys',
            command: [node, '-e', `process.chdir(${JSON.stringify(folder)}); ${parsing}`],
          },
        ];
      },
    },
    {
      what: 'reading summary, 1,000,000 rows',
      loads: () => {
        const folder = withReadings(1_000_000);
        const file = join(folder, 'readings/2026.csv');
        return [
          command('summary', 'reading', 'summary', '--repo', folder),
          { name: 'git hash-object of the file', command: ['git', 'hash-object', '--no-filters', file] },
        ];
      },
    },
  ];
}

/** A repository with the estate on `main`, and `branch` with one volume grown in each of so many files. */
function branched(size: Size, changed: number, more: Files = {}): string {
  const main = { ...estateFiles(size), ...more };
  return buildRepository([
    { branch: 'main', files: main },
    { branch: 'branch', from: 'main', files: grown(main, changed) },
  ]);
}

function onDisk(files: Files): string {
  const folder = mkdtempSync(join(tmpdir(), 'ullage-bench-'));
  for (const [path, text] of Object.entries(files)) {
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    writeFileSync(join(folder, path), text);
  }
  return folder;
}

/** So many servers with so many volumes each, as declared; their surveys are as `survey add` writes them. */
function surveyed(servers: number, volumes: number): string {
  const files: Record<string, string> = {};
  const size = 100 * 2 ** 30;
  for (let index = 0; index < servers; index++) {
    const names = Array.from({ length: volumes }, (_each, each) => `s${index}-v${each}`);
    const declared = names.map(
      (name) =>
        `  ${name}: { id: vol-${name}, size: 100 GiB, tier: bulk, file-system: { mount: /srv/${name}, type: xfs } }`,
    );
    const held = names.map((name) => `  - { volume: ${name}, server: s${index} }`);
    files[`storage/s${index}.yaml`] =
      `site: north-quay\nteam: soundings\nservers:\n  s${index}: { power: running }\nvolumes:\n${declared.join('\n')}\nattachments:\n${held.join('\n')}\n`;
    const survey = {
      format: 'ullage-survey-1',
      server: `s${index}`,
      at: '2026-11-18T06:00:00Z',
      tools: {},
      unseen: [],
      devices: names.map((name, at) => ({
        name: `vd${at}`,
        type: 'disk',
        size: `${size}`,
        serial: `vol-${name}`,
      })),
      'volume-groups': [],
      'file-systems': names.map((name, at) => ({
        device: `vd${at}`,
        type: 'xfs',
        id: `uuid-${name}`,
        mounts: [`/srv/${name}`],
        'in-fstab': `/srv/${name}`,
        size: `${size}`,
      })),
    };
    files[`surveys/s${index}.json`] = `${JSON.stringify(survey, null, 2)}\n`;
  }
  const folder = onDisk({ ...fixed, ...files });
  execFileSync('git', ['init', '--quiet', folder]);
  return folder;
}

/** So many readings of 100 file systems, in one file. */
function withReadings(rows: number): string {
  const size = 100 * 2 ** 30;
  const lines = Array.from({ length: rows }, (_each, row) => {
    const at = new Date(Date.UTC(2025, 0, 1) + Math.floor(row / 100) * 3_600_000).toISOString();
    const used = 10 ** 10 + (row % 100) * 10 ** 8 + row * 1_000;
    const server = `f0-s${row % 100}`;
    return `${server},/srv/${server},${at.replace('.000', '')},${size},${used},${size - used}\n`;
  });
  const header = 'server,mount,at,size,used,available\n';
  const folder = onDisk({ ...fixed, 'readings/2026.csv': header + lines.join('') });
  execFileSync('git', ['init', '--quiet', folder]);
  return folder;
}
