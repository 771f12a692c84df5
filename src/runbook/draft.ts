/** The acts that a branch wants, as they are gathered: a plan that knows when a guest can be worked in. */
import type { Subject } from '../estate/estate.ts';
import { type ActionName, actionOf } from './actions.ts';
import { type Placed, Plan } from './plan.ts';
import type { Sides } from './sides.ts';
import { comesUp } from './waits.ts';

/** An act before it has a number. */
export interface Wanted {
  readonly procedure: ActionName;
  readonly subject: Subject;
  readonly server: string | undefined;
  readonly words: Readonly<Record<string, string>>;
  readonly cautions: readonly string[];
  /** Done where something is, before it goes from there or that server stops, though most such are done where it comes to. */
  readonly early: boolean;
  /** It is about volumes that are at different sites, and cannot be done at either. */
  readonly apart: boolean;
}

/** Done where something is, before it goes from there. */
export const leaving: ReadonlySet<ActionName> = new Set<ActionName>([
  'stop-use',
  'unmount',
  'unmount-swap',
  'export-pool',
  'deactivate',
  'export',
  'leave-group',
  'replace-member',
  'put-smaller-in-place',
  'shrink-mounted',
  'shrink-unmounted',
  'reduce-logical-volume',
  'cut-logical-volume',
  'remove-file-system',
  'give-up-file-system',
  'remove-group',
]);

/** What takes an attachment slot of its server, and what gives one back. */
const taking: ReadonlySet<ActionName> = new Set<ActionName>([
  'attach',
  'attach-boot',
  'attach-smaller',
  'attach-for-a-while',
]);
const giving: ReadonlySet<ActionName> = new Set<ActionName>(['detach', 'detach-old', 'detach-again']);

export class Draft {
  readonly sides: Sides;
  readonly #plan = new Plan<Wanted>();

  constructor(sides: Sides) {
    this.sides = sides;
  }

  has(key: string): boolean {
    return this.#plan.has(key);
  }

  /** Says that one act waits for others, whether they are wanted yet or not. */
  wait(key: string, after: readonly string[]): void {
    this.#plan.wait(key, after);
  }

  /** @param slots the attachment slots of a server, where they are known */
  inOrder(slots: (server: string) => number | undefined): readonly Placed<Wanted>[] {
    return this.#plan.inOrder((server) => {
      const all = slots(server);
      return all === undefined ? undefined : all - this.sides.heldBefore(server).length;
    });
  }

  /** @returns the key */
  want(
    key: string,
    procedure: ActionName,
    subject: Subject,
    more: {
      readonly server?: string | undefined;
      readonly words?: Readonly<Record<string, string>>;
      readonly after?: readonly string[];
      readonly cautions?: readonly string[];
      /** It is done where something comes to, once its server is up again. */
      readonly comes?: boolean;
      readonly early?: boolean;
      readonly apart?: boolean;
      readonly turn?: 'check' | 'ahead' | 'act' | 'delete';
    } = {},
  ): string {
    const {
      server,
      words = {},
      after = [],
      cautions: own = [],
      comes = false,
      early = false,
      apart = false,
      turn = 'act',
    } = more;
    const all = { volume: subject.name, server: server ?? 'its server', ...words };
    const act = { procedure, subject, server, words: all, cautions: own, early, apart };
    if (actionOf(procedure).at === 'guest' && server !== undefined)
      this.#whileItRuns(key, early || (leaving.has(procedure) && !comes), server);
    // Lent to a server that runs, it comes back before those that stand still with it are started.
    if (actionOf(procedure).at === 'guest' && server === undefined && (early || leaving.has(procedure))) {
      const on = words.on ?? subject.name;
      const holders = (['volume', 'volume-group'] as const).flatMap((kind) =>
        this.sides.carrierHoldersBefore({ kind, name: on }),
      );
      for (const each of holders) if (!this.sides.runsBefore(each)) this.#plan.wait(`start ${each}`, [key]);
    }
    return this.#plan.want(key, act, after, {
      turn,
      takes:
        taking.has(procedure) || (procedure === 'create-server' && this.#boots(server)) ? server : undefined,
      gives: giving.has(procedure) ? server : undefined,
    });
  }

  #boots(server: string | undefined): boolean {
    return this.sides.head.servers.get(server ?? '')?.boot !== undefined;
  }

  /** What leaves is done before a server stops, and what comes once it is up. */
  #whileItRuns(key: string, leaves: boolean, server: string): void {
    const { sides } = this;
    if (leaves && sides.runsBefore(server)) this.#plan.wait(`stop ${server}`, [key]);
    // What is left for the next start of a server that stops is not begun before it has stopped.
    else this.#plan.wait(key, [...comesUp(server), `stop ${server}`]);
  }
}
