/** How steps name what they are about. */

import { byText } from '../base/order.ts';
import { listed } from '../base/wording.ts';
import { declaredMaking } from '../change/making.ts';
import type { FileSystem, Layout, Subject, Volume } from '../estate/estate.ts';
import { type Bytes, exactSize } from '../estate/size.ts';

export const volumeSubject = (name: string): Subject => ({ kind: 'volume', name });
export const serverSubject = (name: string): Subject => ({ kind: 'server', name });
export const systemSubject = ({ name }: FileSystem): Subject => ({ kind: 'file-system', name });

/** Each name once. */
export const sorted = (names: Iterable<string>): readonly string[] => [...new Set(names)].sort(byText);

/** As it is declared, and as a guest shows it whatever unit that is in. */
export const seenWords = (size: Bytes | undefined): { readonly size: string; readonly bytes: string } => ({
  size: size === undefined ? 'its size' : exactSize(size),
  bytes: size === undefined ? 'as many' : size.toString(),
});

export function layoutWords(layout: Layout): string {
  switch (layout.kind) {
    case 'linear':
      return 'end to end';
    case 'striped':
      return `in ${layout.stripes} stripes`;
    case 'mirrored':
      return `in ${layout.copies} copies`;
  }
}

/** Such as `, with a reserve of 1 % and blocks of 4 KiB`; nothing where all of it is left to the tool. */
export function makingWords(system: FileSystem): string {
  const declared = declaredMaking(system);
  return declared.length === 0 ? '' : `, with ${listed(declared)}`;
}

/** What is set on a volume at the provider; nothing where all of it is as usual. */
export const settingsWords = ({ shareable, protected: kept }: Volume): string =>
  `${shareable ? ', which several servers may attach at once' : ''}${kept ? ', protected against deletion' : ''}`;
