import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Room, Sharing } from '../../src/runbook/room-search.ts';
import { overfull, roomWaits } from '../../src/runbook/room-waits.ts';

interface Act extends Sharing {
  readonly after: readonly string[];
}

const act = (
  key: string,
  takes: Readonly<Record<string, number>>,
  gives: Readonly<Record<string, number>> = {},
  after: readonly string[] = [],
): Act => {
  const shares = (of: Readonly<Record<string, number>>) =>
    Object.entries(of).map(([room, amount]) => ({ room, amount: BigInt(amount) }));
  return { key, takes: shares(takes), gives: shares(gives), after };
};

const rooms = (left: Readonly<Record<string, number>>): ReadonlyMap<string, Room> =>
  new Map(Object.entries(left).map(([name, amount]) => [name, BigInt(amount)]));

const waitsOf = (acts: readonly Act[], left: ReadonlyMap<string, Room>, most?: number) =>
  roomWaits(acts, (key) => acts.find((each) => each.key === key)?.after ?? [], left, most);

/** Every order that keeps the waits. */
function* orders(
  acts: readonly Act[],
  waits: ReadonlyMap<string, readonly string[]> = new Map(),
  done: readonly Act[] = [],
): Generator<readonly Act[]> {
  if (done.length === acts.length) yield done;
  for (const each of acts) {
    if (done.includes(each)) continue;
    const first = [...each.after, ...(waits.get(each.key) ?? [])];
    if (first.every((key) => done.some((other) => other.key === key)))
      yield* orders(acts, waits, [...done, each]);
  }
}

describe('acts that share a room', () => {
  it('wait for nobody where there is room for all at once', () => {
    const acts = [act('create', { size: 10 }), act('delete', {}, { size: 10 })];
    expect(waitsOf(acts, rooms({ size: 10 }))).toEqual({ waits: new Map(), fits: 'yes' });
  });

  it('wait for as many as they need, and take what is free first', () => {
    const acts = [
      act('first', { size: 10 }),
      act('second', { size: 10 }),
      act('large', {}, { size: 50 }),
      act('small', {}, { size: 5 }),
    ];
    const { waits, fits } = waitsOf(acts, rooms({ size: 10 }));
    expect(fits).toBe('yes');
    expect([...waits]).toEqual([['second', ['large']]]);
  });

  it('do not take the last room from the one that is to give some back', () => {
    const acts = [
      act('lasting', { slots: 1 }),
      act('lent', { slots: 1 }),
      act('returned', {}, { slots: 1 }, ['lent']),
    ];
    const { waits, fits } = waitsOf(acts, rooms({ slots: 1 }));
    expect(fits).toBe('yes');
    expect([...waits]).toEqual([['lasting', ['returned']]]);
  });

  it('all wait for those that make up for what is over already', () => {
    const acts = [
      act('first', { size: 1 }),
      act('second', { size: 1 }),
      act('two', {}, { size: 2 }),
      act('three', {}, { size: 3 }),
    ];
    const { waits, fits } = waitsOf(acts, rooms({ size: -3 }));
    expect(fits).toBe('yes');
    expect([...waits]).toEqual([
      ['first', ['two', 'three']],
      ['second', ['two', 'three']],
    ]);
  });

  it('count in two rooms at once', () => {
    const acts = [
      act('create', { volumes: 1, size: 10 }),
      act('delete one', {}, { volumes: 1, size: 5 }),
      act('delete other', {}, { volumes: 1, size: 5 }),
    ];
    const { waits } = waitsOf(acts, rooms({ volumes: 0, size: 0 }));
    expect([...waits]).toEqual([['create', ['delete one', 'delete other']]]);
  });
});

describe('of any few acts', () => {
  const amounts = fc.dictionary(fc.constantFrom('slots', 'size'), fc.integer({ min: 1, max: 3 }), {
    maxKeys: 2,
  });
  /** What takes, what gives, and what is lent for a while. */
  const some = fc
    .array(
      fc.tuple(
        fc.constantFrom('takes', 'gives', 'lends'),
        amounts,
        fc.array(fc.nat({ max: 5 }), { maxLength: 1 }),
      ),
      { minLength: 1, maxLength: 4 },
    )
    .map((drawn) =>
      drawn.flatMap(([kind, of, after], index) => {
        const waits = after.flatMap((each) => (each < index ? `${each}` : []));
        const gives = act(`${index}`, {}, of, kind === 'lends' ? [`${index} for a while`] : waits);
        if (kind === 'gives') return [gives];
        return kind === 'takes'
          ? [act(`${index}`, of, {}, waits)]
          : [act(`${index} for a while`, of, {}, waits), gives];
      }),
    );
  /** Fewer than none where more is there already than there may be. */
  const left = fc
    .record({ slots: fc.integer({ min: -3, max: 3 }), size: fc.integer({ min: -4, max: 4 }) })
    .map(rooms);
  /** As a volume group has it: whatever is counted, only whether it holds is told. */
  const judged = (acts: readonly Act[], all: ReadonlyMap<string, Room>): ReadonlyMap<string, Room> =>
    new Map(
      [...all].map(([name, room]) => [
        name,
        (isDone: (key: string) => boolean): boolean => {
          const sum = (kind: 'takes' | 'gives'): bigint =>
            acts
              .filter(({ key }) => isDone(key))
              .flatMap((each) => each[kind])
              .reduce((total, share) => (share.room === name ? total + share.amount : total), 0n);
          return sum('takes') <= sum('gives') + (typeof room === 'bigint' ? room : 0n);
        },
      ]),
    );

  it('are not said to have no order where not all were tried, however few that were', () => {
    const told = new Set<string>();
    fc.assert(
      fc.property(some, left, fc.integer({ min: 1, max: 40 }), (acts, counted, most) => {
        const { fits } = waitsOf(acts, counted, most);
        const isPossible = [...orders(acts)].some((order) => overfull(order, counted).size === 0);
        if (fits !== 'none found') expect(fits).toBe(isPossible ? 'yes' : 'no');
        told.add(`${fits} ${isPossible}`);
      }),
      { numRuns: 1_000 },
    );
    expect([...told]).toEqual(expect.arrayContaining(['yes true', 'no false']));
    expect([...told].some((each) => each.startsWith('none found'))).toBe(true);
  });

  it.each(['counted', 'judged'])(
    'finds an order where there is one, and keeps all within %s rooms',
    (kind) => {
      let [kept, impossible] = [0, 0];
      fc.assert(
        fc.property(some, left, (acts, counted) => {
          const all = kind === 'counted' ? counted : judged(acts, counted);
          const { waits, fits } = waitsOf(acts, all);
          const isPossible = [...orders(acts)].some((order) => overfull(order, all).size === 0);
          expect(fits).toBe(isPossible ? 'yes' : 'no');
          // Whatever room there is, there is an order that keeps what is said to wait.
          const [first] = orders(acts, waits);
          expect(first).toHaveLength(acts.length);
          if (fits === 'no') impossible += 1;
          else {
            if (waits.size > 0) kept += 1;
            for (const order of orders(acts, waits)) expect(overfull(order, all).size).toBe(0);
          }
        }),
        { numRuns: 1_000 },
      );
      expect(kept).toBeGreaterThan(20);
      expect(impossible).toBeGreaterThan(20);
    },
  );
});
