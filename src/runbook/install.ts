/**
 * What a server starts from is made by the image or the installer that it is started with, at the provider: never from
 * within the guest that runs on it.
 */
import type { FileSystem } from '../estate/estate.ts';
import { exactSize } from '../estate/size.ts';
import { checkBackup } from './checks.ts';
import type { Draft } from './draft.ts';
import { restart } from './power.ts';
import type { Carrier } from './sides.ts';
import { cleared } from './waits.ts';
import { makingWords, volumeSubject } from './words.ts';

interface Install {
  readonly on: Carrier;
  /** The server that starts from it. */
  readonly server: string;
  /** What it is to hold, as the end of a sentence. */
  readonly what: string;
}

/** Over whatever it held. */
export function installOver(draft: Draft, { on, server, what }: Install): string {
  const { sides } = draft;
  const boot = sides.head.servers.get(server)?.boot ?? on.name;
  restart(draft, server);
  const key = draft.want(`install ${on.name}`, 'install-over', volumeSubject(boot), {
    server,
    words: { volume: boot, what },
    after: [
      checkBackup(draft, volumeSubject(boot), boot),
      `stop ${server}`,
      `create ${boot}`,
      `fill ${boot}`,
      `replaced ${boot}`,
      `copy-across ${boot}`,
      ...cleared(sides, boot),
      ...sides
        .holdersBefore(boot)
        .flatMap((holder) => (holder === server ? [] : [`detach ${boot} ${holder}`])),
    ],
  });
  for (const start of [`start ${server}`, `create-server ${server}`]) draft.wait(start, [key]);
  return key;
}

export const systemInWords = (system: FileSystem): string =>
  `${system.type} for ${system.mount}, ${exactSize(system.size)}${makingWords(system)}`;
