import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { whatHolds } from '../../src/base/problem.ts';
import { adoptedIn } from '../../src/change/adoption.ts';
import { compareEstates } from '../../src/change/compare.ts';
import { priceEstate } from '../../src/price/cost.ts';
import { type Money, noMoney, subtractMoney, sumMoney } from '../../src/price/money.ts';
import { type Billing, billingOf } from '../../src/runbook/billing.ts';
import { isFinal, returningOf, undoable } from '../../src/runbook/returning.ts';
import { runbookOf } from '../../src/runbook/runbook.ts';
import { withIds } from '../../src/runbook/step-id.ts';
import { readTicks, remaining } from '../../src/runbook/ticks.ts';
import {
  assembled,
  estateOf,
  type Files,
  pricesOf,
  problemsOf,
  settingsOf,
  valueIn,
} from '../estate/builder.ts';
import { pairs } from '../simulator/estates.ts';

const prices = pricesOf(`from: 2026-01-01
currency: EUR
tiers:
  bulk: { rate: "0.05", per: GiB-month }
  steady: { rate: "0.10", per: GiB-month, flat: "1.50" }
server-types:
  small: { running: "0.031", stopped: "0.004" }
  large: { running: "0.131", stopped: "0.004" }
`);

function carriedOut(before: string | Files, after: string | Files) {
  const [base, head] = [before, after].map((each) =>
    typeof each === 'string' ? estateOf(each) : valueIn(assembled(each)),
  );
  if (base === undefined || head === undefined) throw new Error('two estates are compared');
  const comparison = compareEstates(base, head);
  const steps = runbookOf(comparison, base, head);
  const [was, is] = [base, head].map((each) =>
    valueIn(priceEstate(each, prices, settingsOf(), '2026-11-20')),
  );
  if (was === undefined || is === undefined) throw new Error('two estates are priced');
  const billing = billingOf(steps, { head, renames: comparison.renames, before: was, after: is });
  return { comparison, steps, billing, was, is };
}

const one = (keys: string): string => `servers: { scanner: { guest: linux } }
volumes: { plates: { size: 40 GiB, tier: bulk, file-system: { mount: /plates, type: xfs } } }
${keys}`;
const attached = one('attachments: [ { volume: plates, server: scanner } ]');

describe('the way back from a step', () => {
  it('ends with a deletion, for every step that the deletion waits for', () => {
    const { steps } = carriedOut(attached, 'servers: { scanner: { guest: linux } }');
    const ways = returningOf(steps);
    const deletion = steps.find(({ procedure }) => procedure === 'delete-volume');
    expect(steps.length).toBeGreaterThan(2);
    for (const number of deletion?.after ?? []) expect(ways.get(number)?.until).toBe(deletion?.number);
    expect(deletion && ways.get(deletion.number)).toEqual({ until: deletion?.number, past: false });
  });

  it('is always open where nothing is grown or destroyed', () => {
    const { steps } = carriedOut(attached, one(''));
    expect(steps.map((step) => returningOf(steps).get(step.number))).toEqual(
      steps.map(() => ({ until: undefined, past: false })),
    );
  });

  it('ends with the growth of a volume, and of a file system that cannot be made smaller', () => {
    const grown = attached.replace('40 GiB', '50 GiB');
    const final = (type: string) => {
      const { steps } = carriedOut(attached.replace('xfs', type), grown.replace('xfs', type));
      return steps.filter(isFinal).map(({ procedure }) => procedure);
    };
    expect(final('xfs')).toEqual(['grow-volume', 'grow-mounted']);
    // resize2fs(8), e2fsprogs 1.47.0: ext4 can be made smaller, unmounted.
    expect(final('ext4')).toEqual(['grow-volume']);
  });

  it('of any branch: ends no sooner than with a later step that waits for this one, and is past after it', () => {
    fc.assert(
      fc.property(pairs, ([before, after]) => {
        fc.pre(assembled(before).ok && assembled(after).ok);
        const { steps } = carriedOut(before, after);
        const ways = returningOf(steps);
        const needs = (step: number, other: number): boolean =>
          step === other || (steps[step - 1]?.after ?? []).some((each) => needs(each, other));
        for (const step of steps.slice(0, 12)) {
          const final = steps.filter((each) => isFinal(each) && needs(each.number, step.number));
          const past = steps.some(
            (each) => each.number !== step.number && isFinal(each) && needs(step.number, each.number),
          );
          expect(ways.get(step.number)).toEqual({ until: final[0]?.number, past });
        }
      }),
      { numRuns: 150 },
    );
  });
});

describe('what can still be undone of what is done', () => {
  const smaller = attached.replace('40 GiB', '20 GiB');

  it('is nothing that the old volume is needed for once that is deleted, whatever else is left', () => {
    const { steps } = carriedOut(
      attached,
      smaller.replace('volumes: {', 'volumes: { extra: { size: 10 GiB, tier: bulk },'),
    );
    const left = steps.filter(
      ({ subject, procedure }) => procedure === 'create-volume' && subject.name === 'extra',
    );
    const done = steps.filter((step) => !left.includes(step));
    const backs = (those: typeof steps) => undoable(those).map(({ back = '' }) => back);
    expect(left).toHaveLength(1);
    expect(backs(done).filter((back) => /the old one|Delete the new volume/.test(back))).toEqual([]);
    const before = done.filter(({ procedure }) => procedure !== 'delete-old');
    expect(before).toHaveLength(done.length - 1);
    expect(backs(before)).toContain('Delete the new volume again; the old one is untouched.');
  });

  it('of any branch: is all that no done step which nothing takes back has waited for, the last first', () => {
    fc.assert(
      fc.property(pairs, fc.array(fc.nat(), { maxLength: 40 }), ([before, after], draws) => {
        fc.pre(assembled(before).ok && assembled(after).ok);
        const { steps } = carriedOut(before, after);
        const done = new Map<number, undefined>();
        for (const draw of draws) {
          const { next } = remaining(steps, done);
          const step = next[draw % Math.max(1, next.length)];
          if (step !== undefined) done.set(step.number, undefined);
        }
        const carried = steps.filter(({ number }) => done.has(number));
        const needs = (step: number, other: number): boolean =>
          step === other || (steps[step - 1]?.after ?? []).some((each) => needs(each, other));
        const undone = undoable(carried);
        const finals = carried.filter(isFinal);
        expect(undone).toEqual(
          carried.filter((step) => !finals.some(({ number }) => needs(number, step.number))).reverse(),
        );
        for (const { subject } of finals.filter(({ procedure }) => procedure === 'delete-old'))
          for (const { subject: other, back = '' } of undone)
            if (other.name === subject.name) expect(back).not.toMatch(/\bthe old one\b/);
      }),
      { numRuns: 150 },
    );
  });
});

describe('what billing does from a step on', () => {
  it('begins when a volume is created, goes on when it is detached, and ends when it is deleted', () => {
    const monthly = (before: string, after: string) =>
      [...carriedOut(before, after).billing.values()].map(({ kind, monthly: sum }) => [kind, sum.toFixed()]);
    const server = 'servers: { scanner: { guest: linux } }';
    expect(monthly(server, attached)).toEqual([['begins', '2']]);
    expect(monthly(attached, one(''))).toEqual([['goes on', '2']]);
    expect(monthly(attached, server)).toEqual([['ends', '2']]);
  });

  it('has the new price once a volume is both grown and in its new tier', () => {
    const { billing } = carriedOut(attached, attached.replace('40 GiB', '50 GiB').replace('bulk', 'steady'));
    expect([...billing.values()].map((each) => [each.kind, each.monthly.toFixed()])).toEqual([
      ['changes', '6.5'],
    ]);
  });

  it('of any branch: comes to what the whole costs more or less', () => {
    const moved = (each: Billing): Money => {
      switch (each.kind) {
        case 'begins':
          return each.monthly;
        case 'changes':
          return subtractMoney(each.monthly, each.from);
        case 'ends':
          return subtractMoney(noMoney, each.monthly);
        case 'goes on':
          return noMoney;
      }
    };
    fc.assert(
      fc.property(pairs, ([before, after]) => {
        fc.pre(assembled(before).ok && assembled(after).ok);
        const { comparison, billing, was, is } = carriedOut(before, after);
        const adopted = adoptedIn(comparison.changes);
        fc.pre(adopted.servers.size + adopted.volumes.size === 0);
        expect(sumMoney([...billing.values()].map(moved)).toFixed()).toBe(
          subtractMoney(is.total, was.total).toFixed(),
        );
      }),
      { numRuns: 300 },
    );
  });
});

describe('steps that are ticked off', () => {
  const { steps } = carriedOut(attached, attached.replace('40 GiB', '50 GiB'));
  const [first] = steps;
  const list = (...done: readonly number[]): string =>
    steps
      .map(
        ({ number, does, id }) => `- [${done.includes(number) ? 'x' : ' '}] **${number}** ${does} #\`${id}\``,
      )
      .join('\n');
  const ticks = (text: string) => readTicks(text, 'steps.md', steps, '2026-11-25');

  it('are read from the check-list and from the JSON alike', () => {
    expect(valueIn(ticks(list(1)))).toEqual(new Map([[1, undefined]]));
    expect(valueIn(ticks(list(1).replaceAll('\n', '\r\n')))).toEqual(new Map([[1, undefined]]));
    expect(valueIn(ticks(JSON.stringify({ done: first === undefined ? [] : [first.id] })))).toEqual(
      new Map([[1, undefined]]),
    );
  });

  it('keep the day that stands behind the id, or in JSON beside it, and refuse one that no calendar has', () => {
    const id = first === undefined ? '' : first.id;
    const on = (note: string) => ticks(list(1).replace(/(`)$/m, `$1 ${note}`));
    for (const note of ['2026-11-24', '2026-11-24, by Avery', '2026-11-24T10:00Z (ticket 2026-1-1)'])
      expect(valueIn(on(note))).toEqual(new Map([[1, '2026-11-24']]));
    // Only a day right behind the id is the one on which it was done.
    for (const note of ['12026-11-245', 'due 2026-11-24', 'until 2099-01-01', '(2099-01-01)'])
      expect(valueIn(on(note))).toEqual(new Map([[1, undefined]]));
    const listed = (day: unknown) => ticks(JSON.stringify({ done: [id], doneOn: { [id]: day } }));
    expect(valueIn(listed('2026-11-24'))).toEqual(new Map([[1, '2026-11-24']]));
    for (const outcome of [on('2026-11-31'), listed('yesterday'), listed(3)])
      expect(outcome.ok ? '' : outcome.problems[0]?.message).toMatch(/is not a day in the calendar$/);
  });

  it('are read from a list without marks, too, as it was printed once, unless two words may be the id', () => {
    const old = list(1).replaceAll(' #`', ' `');
    expect(valueIn(ticks(old))).toEqual(new Map([[1, undefined]]));
    const [line = ''] = old.split('\n');
    for (const [at, doubt] of [
      [' `0b1c2d3e4f`, ', true],
      [' `0b1c2d3e4`, ', false],
    ] as const) {
      const outcome = ticks(old.replace(line, line.replace(' `', `${at}\``)));
      expect(problemsOf(outcome).map(({ message }) => message)).toEqual(
        doubt ? ['this line has more than one word that may be the id of its step'] : [],
      );
    }
  });

  it('are refused with a day that is still to come, which no survey could speak against', () => {
    const id = first === undefined ? '' : first.id;
    const behind = (day: string) => ticks(list(1).replace(/(`)$/m, `$1 ${day}`));
    const beside = (day: string) => ticks(JSON.stringify({ done: [id], doneOn: { [id]: day } }));
    for (const told of [behind, beside]) {
      expect(valueIn(told('2026-11-25'))).toEqual(new Map([[1, '2026-11-25']]));
      const outcome = told('2026-11-26');
      expect([whatHolds(outcome), problemsOf(outcome).map(({ message }) => message)]).toEqual([
        new Map(),
        ['2026-11-26 is still to come: the day of the judgement is 2026-11-25 (UTC)'],
      ]);
    }
  });

  it('are refused where a box is neither ticked nor empty, one of them or all', () => {
    for (const box of ['[x ]', '[ x]', '[✓]', '[]', '[xx]', '[-]']) {
      const said = (text: string) =>
        problemsOf(ticks(text)).map(({ place, message }) => [place?.line, message]);
      const unclear = 'the box of this step is neither ticked nor empty';
      expect(said(list().replace('[ ]', box))).toEqual([[1, unclear]]);
      expect(said(list().replaceAll('[ ]', box))).toEqual(steps.map(({ number }) => [number, unclear]));
      expect(said(`${list()}\n- ${box} buy paper`)).toEqual([]);
    }
  });

  it('are refused where one is ticked before what it waits for, at its line', () => {
    const outcome = ticks(list(2));
    expect(outcome.ok ? [] : outcome.problems.map(({ place, message }) => [place?.line, message])).toEqual([
      [2, 'step 2 is ticked, and step 1, which must be done first, is not'],
    ]);
  });

  it('are refused where the list is of another change', () => {
    const other = list(1).replace(first === undefined ? '' : first.id, '0123456789');
    const outcome = ticks(other);
    expect(outcome.ok ? [] : outcome.problems.map(({ message }) => message)).toEqual([
      'the step 0123456789 is none of this change',
    ]);
  });

  it('count neither in code nor in a comment, and a note behind one takes nothing from it', () => {
    const noted = list(1).replace(/(`)$/m, '$1 done by Avery');
    expect(valueIn(ticks(noted))).toEqual(new Map([[1, undefined]]));
    for (const [before, after] of [
      ['```\n', '\n```\n'],
      ['````\n```\n', '\n```\n````\n'],
      ['<!--\n', '\n-->\n'],
    ] as const) {
      const [line = ''] = list(1).split('\n');
      expect(valueIn(ticks(`${before}${line}${after}${list()}`))).toEqual(new Map());
    }
  });

  it('are refused where a line is ticked and has no id, or one step is ticked and is not', () => {
    const said = (text: string) => {
      const outcome = ticks(text);
      return outcome.ok ? [] : outcome.problems.map(({ place, message }) => [place?.line, message]);
    };
    expect(said(`${list(1)}\n- [x] something else`)).toEqual([
      [steps.length + 1, 'this tick is of no step: its line has no id'],
    ]);
    expect(said(`${list(1)}\n${list()}`)).toEqual([
      [1, 'step 1 is ticked here, and not ticked on another line'],
    ]);
  });

  it('are refused where the file holds no list at all', () => {
    for (const text of [
      '',
      '{"done": [null]}',
      '{"done": [["a"]]}',
      'done: everything',
      '{"steps": []}',
      '{"done": 3}',
      '{',
    ])
      expect(ticks(text).ok).toBe(false);
  });

  it('have the same id under another number, and another where something else is to be done', () => {
    const idsOf = (text: string) => carriedOut(attached, text).steps.map(({ does, id }) => `${does} ${id}`);
    const alone = idsOf(attached.replace('40 GiB', '50 GiB'));
    const beside = attached
      .replace('40 GiB', '50 GiB')
      .replace('volumes: {', 'volumes: { extra: { size: 10 GiB, tier: bulk },');
    expect(idsOf(beside)).toEqual(expect.arrayContaining(alone));
    expect(idsOf(beside)[0]).not.toBe(alone[0]);
    expect(idsOf(attached.replace('40 GiB', '60 GiB'))).not.toContain(alone[0]);
    expect(new Set(steps.map(({ id }) => id)).size).toBe(steps.length);
  });

  it('have ids of their own even where two names were sought out to come to the same', () => {
    // Found by trying a million names.
    const [one, other, third] = [473690, 1102024, 1].map((number) => ({
      key: `create plates-${number}`,
      does: 'Create it.',
    }));
    if (one === undefined || other === undefined || third === undefined) throw new Error('three steps');
    const ids = (...those: readonly (typeof one)[]) => withIds(those).map(({ id }) => id);
    expect([ids(one), ids(other)]).toEqual([['543c90edd4'], ['543c90edd4']]);
    const [first = '', second = '', last] = ids(one, other, third);
    expect(new Set([first, second, last]).size).toBe(3);
    expect([first, second]).not.toContain('543c90edd4');
    expect(ids(third, other, one)).toEqual([last, second, first]);
    expect([last]).toEqual(ids(third));
    expect([first, second].every((id) => /^[0-9a-f]{10}$/.test(id))).toBe(true);
  });

  it('and those that are left are all, and some of them can be begun as long as any is left', () => {
    fc.assert(
      fc.property(pairs, fc.nat(), ([before, after], draw) => {
        fc.pre(assembled(before).ok && assembled(after).ok);
        const all = carriedOut(before, after).steps;
        expect(new Set(all.map(({ id }) => id)).size).toBe(all.length);
        const done = new Map<number, undefined>();
        for (let turn = draw; ; turn++) {
          const { left, next } = remaining(all, done);
          expect(left.length + done.size).toBe(all.length);
          if (left.length === 0) break;
          const step = next[turn % next.length];
          expect(step).toBeDefined();
          if (step !== undefined) done.set(step.number, undefined);
        }
      }),
      { numRuns: 100 },
    );
  });
});
