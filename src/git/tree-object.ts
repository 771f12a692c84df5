/** A tree object's bytes -> what stands in one folder, as gitformat-pack(5) and git-mktree(1) have it: mode, name, id. */

export interface TreeEntry {
  readonly kind: 'folder' | 'symbolic link' | 'submodule' | 'file';
  readonly name: Buffer;
  readonly id: string;
}

const kinds: Readonly<Record<string, TreeEntry['kind']>> = {
  '40000': 'folder',
  '120000': 'symbolic link',
  '160000': 'submodule',
};

/**
 * @param idLength the bytes of an object id: 20 or 32
 * @returns undefined where the bytes are no tree
 */
export function entriesOf(content: Uint8Array, idLength: number): readonly TreeEntry[] | undefined {
  const bytes = Buffer.from(content.buffer, content.byteOffset, content.byteLength);
  const entries: TreeEntry[] = [];
  let start = 0;
  while (start < bytes.length) {
    const space = bytes.indexOf(0x20, start);
    const end = space === -1 ? -1 : bytes.indexOf(0, space);
    if (end === -1 || end + 1 + idLength > bytes.length) return undefined;
    const mode = bytes.toString('latin1', start, space).replace(/^0+/, '');
    const next = end + 1 + idLength;
    entries.push({
      kind: kinds[mode] ?? 'file',
      name: bytes.subarray(space + 1, end),
      id: bytes.toString('hex', end + 1, next),
    });
    start = next;
  }
  return entries;
}
