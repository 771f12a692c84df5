import { describe, expect, it } from 'vitest';
import { readEstatePart } from '../../src/estate/part.ts';
import { documentOf, line, problemsOf } from './builder.ts';

const problems = (keys: string): readonly string[] =>
  problemsOf(
    readEstatePart(
      documentOf(
        `volume-groups:\n  plates:\n    members: [plates-1]\n    file-systems:\n      /plates: { size: 30 GiB, ${keys} }\n`,
      ),
    ),
  ).map(line);

describe('how a file system is made', () => {
  it.each([
    'type: ext4, reserve: 0, block-size: 1 KiB, inode-ratio: 64 MiB',
    'type: ext2, reserve: 0.5, block-size: 64 KiB, inode-ratio: 1 KiB',
    'type: xfs, block-size: 4 KiB, reverse-map: true',
  ])('may be declared: %s', (keys) => {
    expect(problems(keys)).toEqual([]);
  });

  it.each([
    ['type: xfs, reserve: 0.05', /reserve says nothing of a file system of the type xfs/],
    ['type: ext4, reverse-map: true', /reverse-map says nothing of a file system of the type ext4/],
    ['type: btrfs, block-size: 4 KiB', /block-size says nothing of a file system of the type btrfs/],
    ['type: ext4, reserve: 0.51', /reserve/],
    ['type: ext4, block-size: 3 KiB', /no file system is made with 3 KiB/],
    ['type: ext4, block-size: 0.5 KiB', /no file system is made with 0.5 KiB/],
    ['type: ext4, block-size: 128 KiB', /no file system is made with 128 KiB/],
    ['type: ext4, inode-ratio: 65 MiB', /no file system is made with 65 MiB/],
  ])('is refused where no tool makes it so: %s', (keys, why) => {
    const [only, ...more] = problems(keys);
    expect(only).toMatch(why);
    expect(only).toMatch(/^storage\/imagery\.yaml:5:\d+/);
    expect(more).toEqual([]);
  });
});
