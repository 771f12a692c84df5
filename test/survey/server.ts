/** A server that is played: a folder with the tools that it has, each printing what it is told to, and its files. */
import { spawnSync } from 'node:child_process';
import {
  chmodSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { gatheringScript } from '../../src/survey/generated/script.ts';

/** A tool as a shell script: what it does with its arguments. */
export type Tools = Readonly<Record<string, string>>;

export interface Played {
  readonly tools?: Tools;
  /** Without the usual tools of these names, such as awk or timeout. */
  readonly without?: readonly string[];
  readonly fstab?: string;
  readonly swaps?: string;
  /** Path beneath /sys/block -> what it holds. */
  readonly sys?: Readonly<Record<string, string>>;
  /** What the kernel lists as mounts. */
  readonly mountinfo?: string;
  readonly environment?: Readonly<Record<string, string>>;
  /** Seconds that a tool may take. */
  readonly patience?: number;
  readonly shell?: Shell;
}

/** A shell of this machine, with what makes it one as POSIX has it. */
export interface Shell {
  readonly program: string;
  readonly flags: readonly string[];
}

export interface Gathered {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

/** What POSIX asks of every system, and what a script without privilege may use. */
const usual = ['awk', 'cat', 'date', 'grep', 'id', 'readlink', 'sed', 'sleep', 'timeout', 'tr', 'kill'];

/** The script itself, in the middle of such a server. */
export function gatherOn(played: Played, use: (gathered: Gathered, folder: string) => void): void {
  const folder = mkdtempSync(join(tmpdir(), 'ullage-server-'));
  try {
    const bin = join(folder, 'bin');
    mkdirSync(bin);
    for (const tool of usual.filter((name) => !played.without?.includes(name))) {
      const real = pathOf(tool);
      if (real !== undefined) symlinkSync(real, join(bin, tool));
    }
    for (const [name, script] of Object.entries(played.tools ?? {})) {
      writeFileSync(join(bin, name), `#!/bin/sh\n${script}\n`);
      chmodSync(join(bin, name), 0o755);
    }
    const write = (path: string, text: string): string => {
      mkdirSync(dirname(join(folder, path)), { recursive: true });
      writeFileSync(join(folder, path), text);
      return join(folder, path);
    };
    mkdirSync(join(folder, 'sys'));
    for (const [path, text] of Object.entries(played.sys ?? {})) write(join('sys', path), text);
    const fstab = played.fstab === undefined ? join(folder, 'none') : write('fstab', played.fstab);
    const swaps = write('swaps', `Filename\tType\tSize\tUsed\tPriority\n${played.swaps ?? ''}`);
    const script = gatheringScript
      .replace(/^PATH=.*$/m, `PATH=${bin}`)
      .replace(/^patience=20/m, `patience=${played.patience ?? 20}`)
      .replaceAll('/etc/fstab', fstab)
      .replaceAll('/proc/swaps', swaps)
      .replaceAll('/sys/block', join(folder, 'sys'))
      .replaceAll(
        '/proc/filesystems',
        write('filesystems', 'nodev\tsysfs\n\text4\n\txfs\n\tbtrfs\n\tsquashfs\n'),
      )
      .replaceAll('/proc/self/mountinfo', write('mountinfo', played.mountinfo ?? ''));
    const work = join(folder, 'work');
    mkdirSync(work);
    const { program, flags } = played.shell ?? { program: '/bin/sh', flags: [] };
    const { status, stdout, stderr } = spawnSync(program, [...flags, '-s'], {
      cwd: work,
      input: script,
      encoding: 'utf8',
      env: { PATH: bin, TMPDIR: work, HOME: work, ...played.environment },
    });
    if (readdirSync(work).length > 0) throw new Error(`the script wrote ${readdirSync(work).join(', ')}`);
    use({ code: status, out: stdout, err: stderr }, folder);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

const pathOf = (tool: string): string | undefined =>
  ['/bin', '/usr/bin', '/usr/sbin', '/sbin']
    .map((folder) => join(folder, tool))
    .find((path) => existsSync(path));

const posix: Readonly<Record<string, readonly string[]>> = {
  sh: [],
  dash: [],
  bash: ['--posix'],
  busybox: ['sh'],
  ksh: [],
  mksh: [],
  zsh: ['--emulate', 'sh'],
};

export const shells = Object.entries(posix).flatMap(([name, flags]): readonly Shell[] => {
  const program = pathOf(name);
  return program === undefined ? [] : [{ program, flags }];
});

export const fixture = (name: string): string =>
  readFileSync(new URL(`fixtures/${name}`, import.meta.url), 'utf8');
