/** Who has a volume when a step is done: what is attached elsewhere meanwhile depends on the order. */
import { listed } from '../base/wording.ts';
import type { Doing } from './meant.ts';
import type { Sides } from './sides.ts';
import { sorted } from './words.ts';

/** How a volume shows once it is detached from a server, such as `attached to far only`. */
export function shownDetached(sides: Sides, { key, wanted, sequence }: Doing): string {
  const { subject, server = 'its server' } = wanted;
  const { name } = subject;
  const startsFrom = (other: string): boolean => sides.head.servers.get(other)?.boot === name;
  const [before, after] = [sides.holdersBefore(name), sides.holdersAfter(name)];
  const others = sorted([...before, ...after]).filter((each) => each !== server);
  const has = others.map((other): boolean | undefined => {
    const acts = [
      [`detach ${name} ${other}`, false],
      [`attach ${name} ${other}`, true],
      // A server is created with the volume that it starts from.
      ...(startsFrom(other) ? [[`create-server ${other}`, true] as const] : []),
    ] as const;
    return acts.reduce<boolean | undefined>(
      (held, [act, makes]) =>
        !sequence.has(act) || sequence.waits(act, key)
          ? held
          : sequence.isBefore(act, key)
            ? makes
            : undefined,
      before.includes(other),
    );
  });
  if (has.includes(undefined)) return `no longer attached to ${server}`;
  const holders = others.filter((_other, index) => has[index]);
  return holders.length === 0 ? 'attached to nothing' : `attached to ${listed(holders)} only`;
}
