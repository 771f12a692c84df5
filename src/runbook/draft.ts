/** The acts that a branch wants, as they are gathered: a plan that knows when a guest can be worked in. */
import type { Subject } from '../estate/estate.ts';
import { type ActionName, actionOf } from './actions.ts';
import { type Placed, Plan } from './plan.ts';
import type { Share } from './room-search.ts';
import { type Limits, roomIn, type Shared, sharedKey, takingOf } from './rooms.ts';
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

export class Draft {
  readonly sides: Sides;
  readonly #plan = new Plan<Wanted>();
  readonly #shared = new Map<string, Shared>();

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

  /** All acts so far, by key. */
  wanted(): Iterable<readonly [string, Wanted]> {
    return this.#plan.wanted();
  }

  /** What an act waits for, near or far. */
  allBefore(key: string): ReadonlySet<string> {
    return this.#plan.allBefore(key);
  }

  inOrder(limits: Limits): readonly Placed<Wanted>[] {
    return this.#plan.inOrder((name) => {
      const shared = this.#shared.get(name);
      return shared === undefined
        ? undefined
        : roomIn(this.sides, shared, limits, (key) => this.#plan.has(key));
    });
  }

  /** What a room is of, by its name. */
  shared(name: string | undefined): Shared | undefined {
    return name === undefined ? undefined : this.#shared.get(name);
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
      /** What it waits for, too, if that can be: what gives it room. */
      readonly preferred?: readonly string[];
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
      preferred = [],
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
    const taking = takingOf(this.sides, { procedure, subject, server, words: all });
    this.#plan.prefer(key, preferred);
    return this.#plan.want(key, act, after, {
      turn,
      takes: taking.flatMap(([shared, amount]) => (amount > 0n ? this.#share(shared, amount) : [])),
      gives: taking.flatMap(([shared, amount]) => (amount < 0n ? this.#share(shared, -amount) : [])),
    });
  }

  #share(shared: Shared, amount: bigint): Share {
    const room = sharedKey(shared);
    this.#shared.set(room, shared);
    return { room, amount };
  }

  /** What leaves is done before a server stops, and what comes once it is up. */
  #whileItRuns(key: string, leaves: boolean, server: string): void {
    const { sides } = this;
    if (leaves && sides.runsBefore(server)) this.#plan.wait(`stop ${server}`, [key]);
    // What is left for the next start of a server that stops is not begun before it has stopped.
    else this.#plan.wait(key, [...comesUp(server), `stop ${server}`]);
  }
}
