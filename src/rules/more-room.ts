import type { Layer } from '../capacity/headroom.ts';

export const movingCaution =
  'Moving the data needs a backup and space elsewhere: it is at risk until the move is complete.';

/** What to do where there is too little room at a layer, the cheapest first. */
export function moreRoom(layer: Layer): string {
  switch (layer) {
    case 'quota':
      return 'Delete at the site what is no longer needed, declare what is new smaller or at another site, or ask the provider for a higher quota and write it in ullage.yaml.';
    case 'attachment-slots':
      return 'Attach fewer volumes to the server: a larger one in the place of two, or one to another server. Where its server type takes more, write its own attachment-slots.';
    case 'volume-group':
      return `Where a file system of the group is new, or grows, declare it smaller. Otherwise grow a member of the group, or add one. ${movingCaution}`;
    case 'file-system':
      return 'Grow the file system; where its volume or its group has no room for that, grow that first.';
  }
}
