/** What `dumpe2fs -h` and `xfs_db` print of a file system's superblock. */

/** In bytes, as a survey writes them. */
export interface Superblock {
  readonly size: string;
  readonly blockSize: string;
  /** What only the superuser may fill. */
  readonly reserved: string | undefined;
  /** What it keeps for itself, as far as its superblock says. */
  readonly metadata: string | undefined;
}

/** Undefined where it is the superblock of neither. */
export function readSuperblock(text: string): Superblock | undefined {
  return ext(figuresIn(text, ':')) ?? xfs(figuresIn(text, ' ='));
}

/** Source: dumpe2fs(8) of e2fsprogs 1.47.0. The overhead is told in clusters, and by newer versions only. */
function ext(figure: (name: string) => bigint | undefined): Superblock | undefined {
  const [blocks, block] = [figure('Block count'), figure('Block size')];
  if (blocks === undefined || block === undefined) return undefined;
  const overhead = figure('Overhead clusters');
  const reserved = figure('Reserved block count');
  return {
    size: `${blocks * block}`,
    blockSize: `${block}`,
    reserved: reserved === undefined ? undefined : `${reserved * block}`,
    metadata: overhead === undefined ? undefined : `${overhead * (figure('Cluster size') ?? block)}`,
  };
}

/** Source: xfs_db(8) of xfsprogs 6.1.0. A log that begins at no block of its own lies on another device. */
function xfs(figure: (name: string) => bigint | undefined): Superblock | undefined {
  const [blocks, block] = [figure('dblocks'), figure('blocksize')];
  if (blocks === undefined || block === undefined) return undefined;
  const [start, log] = [figure('logstart'), figure('logblocks')];
  return {
    size: `${blocks * block}`,
    blockSize: `${block}`,
    reserved: undefined,
    metadata: start === undefined || log === undefined ? undefined : `${start === 0n ? 0n : log * block}`,
  };
}

function figuresIn(text: string, sign: string): (name: string) => bigint | undefined {
  const figures = new Map<string, bigint>();
  for (const line of text.split('\n')) {
    const cut = line.indexOf(sign);
    const value = line.slice(cut + sign.length).trim();
    if (cut > 0 && /^[0-9]{1,18}$/.test(value)) figures.set(line.slice(0, cut), BigInt(value));
  }
  return (name) => figures.get(name);
}
