import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { fileSystemFacts, fileSystemTypes } from '../../src/estate/file-system-facts.ts';

const schema = readFileSync(new URL('../../schema/estate.json', import.meta.url), 'utf8');

/** Every list of choices in the schema. */
function choices(node: unknown): readonly unknown[][] {
  if (typeof node !== 'object' || node === null) return [];
  const own = 'enum' in node && Array.isArray(node.enum) ? [node.enum] : [];
  return [...own, ...Object.values(node).flatMap(choices)];
}

describe('every type of file system that an estate may declare', () => {
  it('is in the table, and no other', () => {
    const declared = choices(JSON.parse(schema)).find((list) => list.includes('ext4'));
    expect([...(declared ?? [])].sort()).toEqual([...fileSystemTypes].sort());
  });

  it.each(fileSystemTypes)('%s has its own row, a caution and a source for what it says', (type) => {
    const facts = fileSystemFacts(type);
    expect(facts.type).toBe(type);
    expect(facts.caution).toMatch(/^[A-Z].*\.$/);
    expect(facts.sources.length).toBeGreaterThan(0);
    for (const source of facts.sources) {
      expect(source.of).not.toBe('');
      expect(source.version).not.toBe('');
    }
  });
});

describe('what loses data when it is got wrong', () => {
  // Sources: gfs2(5) and ocfs2(7); the rest of the table is for one server at a time.
  it('only the two cluster file systems may be mounted on several servers', () => {
    expect(fileSystemTypes.filter((type) => fileSystemFacts(type).clusterAware)).toEqual(['gfs2', 'ocfs2']);
  });

  // Sources: resize2fs(8) 1.47.0 ("On-line shrinking not supported"), gfs2_grow(8) 3.5.0, tunefs.ocfs2(8) 1.8.7.
  it('ext4 shrinks unmounted only; xfs is not planned on; the cluster file systems never shrink', () => {
    expect(fileSystemFacts('ext4').shrink).toEqual({ online: false, offline: true });
    expect(fileSystemFacts('xfs').shrink).toEqual({ online: false, offline: false });
    expect(fileSystemFacts('gfs2').shrink).toEqual({ online: false, offline: false });
    expect(fileSystemFacts('ocfs2').shrink).toEqual({ online: false, offline: false });
  });

  // Sources: xfs_growfs(8) 6.1.0, btrfs-filesystem(8) 6.2, gfs2_grow(8) 3.5.0: each must be mounted to grow.
  // Sources: zpool-online(8), OpenZFS 2.2.2: -e expands a device; zpool-replace(8): a new device is no smaller.
  it('a pool never shrinks', () => {
    expect(fileSystemFacts('zfs').shrink).toEqual({ online: false, offline: false });
    expect(fileSystemFacts('zfs').grow.online).toBe(true);
  });

  it.each(['xfs', 'btrfs', 'gfs2'] as const)('%s grows mounted, never unmounted', (type) => {
    expect(fileSystemFacts(type).grow).toEqual({ online: true, offline: false });
  });
});
