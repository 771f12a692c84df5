/**
 * Reads what `df -P` prints.
 *
 * Source: POSIX.1-2024, utility df, section STDOUT: a header that names the block size, then one line a file system,
 * formatted `"%s %d %d %d %d%% %s\n"`. Spacing may be widened into columns, the space free may be negative, and
 * neither the device name nor the mount point is kept from holding spaces.
 */

import { err, type Outcome, ok, type Problem } from '../base/problem.ts';
import { type Bytes, bytes } from '../estate/size.ts';

/** What one line of df measured, in exact bytes. */
export interface DfUse {
  readonly size: Bytes;
  readonly used: Bytes;
  /** What is left for unprivileged users; negative once the reserve is being eaten. */
  readonly available: Bytes;
}

/** One line of `df -P`. */
export interface DfRow {
  /** The file system's name as df prints it, often the device. */
  readonly device: string;
  readonly mount: string;
  /** Absent where df printed `-`, or a negative use, for a file system it cannot measure. */
  readonly use: DfUse | undefined;
  readonly line: number;
}

const posixHeader =
  /^Filesystem[ \t]+([1-9][0-9]{0,11})-blocks[ \t]+Used[ \t]+Available[ \t]+Capacity[ \t]+Mounted on[ \t]*$/;
const looksLikeHeader = /^Filesystem[ \t]|[ \t]Mounted on[ \t]*$/;
const count = /^(?:-|-?[0-9]{1,20})$/;
const percentage = /^(?:-|-?[0-9]{1,20}%)$/;

const advice = 'Give it what `LC_ALL=C df -P` or `LC_ALL=C df -Pk` prints, with no other option.';

/**
 * Reads one or more outputs of `df -P`, one after the other, each with its header. Sizes are block counts times
 * the block size of the header above them. All lines are read or none; every line that is no line of df is reported.
 */
export function readDf(text: string, file: string): Outcome<readonly DfRow[]> {
  const rows: DfRow[] = [];
  const problems: Problem[] = [];
  let blockSize: bigint | undefined;
  for (const [index, ended] of text
    .replace(/^\uFEFF/, '')
    .split('\n')
    .entries()) {
    const line = ended.endsWith('\r') ? ended.slice(0, -1) : ended;
    if (line.trim() === '') continue;
    const at = (message: string, column = 1): Problem => ({
      place: { file, line: index + 1, column },
      message,
      advice,
      excerpt: line.slice(0, 200),
    });
    const header = posixHeader.exec(line);
    if (header !== null) {
      blockSize = BigInt(header[1] ?? '');
    } else if (looksLikeHeader.test(line)) {
      // Under a header that is not understood, no number below it means anything.
      return err(...problems, at('this is not the header that df -P prints'));
    } else if (blockSize === undefined) {
      return err(...problems, at('the header of df -P is missing above this line'));
    } else {
      const row = rowOf(line, index + 1, blockSize);
      if (row === undefined) problems.push(at(whyNoRow(line)));
      else rows.push(row);
    }
  }
  if (problems.length > 0) return err(...problems);
  if (blockSize === undefined) {
    return err({ place: { file, line: 1, column: 1 }, message: 'there is no df output here', advice });
  }
  return ok(rows);
}

/**
 * Finds the first place in the line where three block counts and a percentage stand before a mount point. What is
 * before it is the device, what is after it the mount point, whatever spaces they hold.
 */
function rowOf(line: string, number: number, blockSize: bigint): DfRow | undefined {
  const words = [...line.matchAll(/[^ \t]+/g)];
  for (let first = 1; first + 4 < words.length; first += 1) {
    const [size, used, available, capacity, mount] = words.slice(first, first + 5);
    if (size === undefined || used === undefined || available === undefined) continue;
    if (capacity === undefined || mount === undefined) continue;
    const fits =
      count.test(size[0]) && count.test(used[0]) && count.test(available[0]) && percentage.test(capacity[0]);
    if (!fits || !mount[0].startsWith('/')) continue;
    return {
      device: line.slice(0, size.index).trim(),
      mount: line.slice(mount.index),
      use: useOf(size[0], used[0], available[0], blockSize),
      line: number,
    };
  }
  return undefined;
}

function useOf(size: string, used: string, available: string, blockSize: bigint): DfUse | undefined {
  if (size.startsWith('-') || used.startsWith('-') || available === '-') return undefined;
  const times = (blocks: string): Bytes => bytes(BigInt(blocks) * blockSize);
  return { size: times(size), used: times(used), available: times(available) };
}

function whyNoRow(line: string): string {
  if (/^df: /.test(line)) return 'this is a message of df, not a line of its output';
  if (/[ \t][0-9.,]+[KMGTPEkB][A-Za-z]*[ \t]/.test(line)) return 'the sizes carry units, so they are rounded';
  return 'this is not a line that df -P prints: a device, three counts of blocks, a percentage and a mount point';
}
