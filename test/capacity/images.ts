/** The file-system tools of this machine, on sparse images with their tables left unwritten: a few MiB on disk each. */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, statfsSync, truncateSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

const environment = { ...process.env, LC_ALL: 'C' };

const run = (program: string, args: readonly string[]) =>
  spawnSync(program, args, { encoding: 'utf8', env: environment });

/** Such as `mke2fs 1.47.0 (5-Feb-2023)`; empty where there is none. */
export const mke2fsVersion = (): string => /mke2fs .*/.exec(run('mke2fs', ['-V']).stderr ?? '')?.[0] ?? '';

/** Such as `mkfs.xfs version 6.1.0`; empty where there is none. */
export const mkfsXfsVersion = (): string => (run('mkfs.xfs', ['-V']).stdout ?? '').trim();

/** What `dumpe2fs -h` prints of a new file system, in blocks. */
export interface ExtCounts {
  readonly blockSize: number;
  readonly blocks: number;
  readonly overhead: number;
  readonly reserved: number;
  readonly free: number;
}

export function withImages<T>(use: (images: Images) => T): T {
  const images = new Images();
  try {
    return use(images);
  } finally {
    images.close();
  }
}

class Images {
  readonly #folder = mkdtempSync(join(tmpdir(), 'ullage-images-'));

  close(): void {
    rmSync(this.#folder, { recursive: true, force: true });
  }

  /** @param flags such as `-m 1 -b 4096` */
  ext(type: string, device: bigint, flags: readonly string[]): ExtCounts {
    const image = this.#image(device);
    const lazy = 'lazy_itable_init=1,lazy_journal_init=1,nodiscard';
    this.#must('mke2fs', '-t', type, '-F', '-q', ...flags, '-E', lazy, image);
    const printed = this.#must('dumpe2fs', '-h', image);
    const count = (label: string): number =>
      Number(new RegExp(`^${label}:\\s+(\\d+)$`, 'm').exec(printed)?.[1] ?? '-1');
    return {
      blockSize: count('Block size'),
      blocks: count('Block count'),
      overhead: count('Overhead clusters'),
      reserved: count('Reserved block count'),
      free: count('Free blocks'),
    };
  }

  /** Made and mounted, as the running kernel counts it, in blocks; wants the superuser. */
  mountedXfs(device: bigint, flags: readonly string[]): { blocks: number; available: number } {
    const image = this.#image(device);
    this.#must('mkfs.xfs', '-q', '-K', ...flags, image);
    const at = join(this.#folder, 'mount');
    this.#must('mkdir', '-p', at);
    this.#must('mount', '-o', 'loop', image, at);
    try {
      const { blocks, bavail } = statfsSync(at);
      return { blocks, available: bavail };
    } finally {
      this.#must('umount', at);
    }
  }

  #image(device: bigint): string {
    const image = join(this.#folder, 'image');
    rmSync(image, { force: true });
    writeFileSync(image, '');
    truncateSync(image, Number(device));
    return image;
  }

  #must(program: string, ...args: readonly string[]): string {
    const { status, stdout, stderr } = run(program, args);
    if (status !== 0) throw new Error(`${program} ${args.join(' ')}: ${stderr}`);
    return stdout;
  }
}
