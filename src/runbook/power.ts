/** Servers stopped and started, for their own sake or for that of what is done meanwhile. */
import type { Draft } from './draft.ts';
import { serverSubject } from './words.ts';

export function stop(draft: Draft, server: string): string {
  return draft.want(`stop ${server}`, 'stop-server', serverSubject(server), { server });
}

export function start(draft: Draft, server: string): string {
  const { sides } = draft;
  const boot = sides.head.servers.get(server)?.boot;
  return draft.want(`start ${server}`, 'start-server', serverSubject(server), {
    server,
    after: [
      `stop ${server}`,
      `set-boot ${server}`,
      ...(boot === undefined ? [] : [`attach ${boot} ${server}`, `grow ${boot}`]),
    ],
  });
}

/** Stopped, and started again where it is to go on running. */
export function restart(draft: Draft, server: string): void {
  const { sides } = draft;
  if (!sides.runsBefore(server)) return;
  stop(draft, server);
  if (sides.runsAfter(server)) start(draft, server);
}
