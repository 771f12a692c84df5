/**
 * Which merged changes passed only by a loosening: each that passed while it held is judged once more as if it alone
 * had not been made, with all else of the policy as it was for that change. What a commit altered in one rule, in one
 * waiver, in one price list or under one key of the settings is undone together.
 *
 * Each change that passed costs one more judgement for each loosening that holds, which grows with what it touched.
 */

import type { Approvals } from '../policy/approval.ts';
import { waiverKey } from '../policy/changes/waivers.ts';
import type { Evaluation } from '../policy/evaluation.ts';
import { type ChangeEvaluation, evaluateChange, type JudgeOptions, verdictOf } from '../policy/judge.ts';
import type { Policy } from '../policy/policy.ts';
import type { PolicyChange } from '../rules/view.ts';

/** One thing that a commit loosened. */
export interface Loosened {
  /** The commit that loosened it. */
  readonly commit: string;
  readonly of: PolicyChange['of'];
  readonly name: string;
  readonly key: string | null;
}

/** What tells one loosening from another; a piece of the policy that is undone as a whole is one. */
export const loosenedKey = ({ commit, of, name, key }: Loosened): string =>
  JSON.stringify([commit, of, name, of === 'settings' ? pieceOfSettings(key ?? '') : null]);

/** Whether it can be undone for a change: readings, an estate's own figures and where files lie cannot. */
export const canBeUndone = ({ of, key }: Pick<Loosened, 'of' | 'key'>): boolean => {
  switch (of) {
    case 'rule':
    case 'waiver':
    case 'price-list':
      return true;
    case 'settings':
      return pieceOfSettings(key ?? '') !== 'paths';
    case 'readings':
    case 'surveys':
    case 'server':
    case 'procedures':
      return false;
  }
};

const pieceOfSettings = (key: string): string => key.split('.')[0] ?? '';

interface Held {
  readonly loosened: Loosened;
  readonly before: Policy;
  readonly after: Policy;
  readonly passed: string[];
  /** The last head under the policy without it. */
  evaluation: Evaluation | undefined;
}

/** What the changes of a history passed by. It holds the loosenings that are in force where the history has come to. */
export class Undone {
  readonly #held = new Map<string, Held>();
  readonly #passed = new Map<string, readonly string[]>();

  /** By `loosenedKey`: the commits that passed only by it, oldest first. */
  get passed(): ReadonlyMap<string, readonly string[]> {
    return this.#passed;
  }

  /** Takes the next change of the history, as it was judged. */
  next(
    commit: string,
    judged: ChangeEvaluation,
    options: JudgeOptions,
    approvals: Approvals | undefined,
  ): void {
    const { sides, policyChanges } = judged;
    const { policy: now } = sides.base;
    for (const [key, held] of this.#held) {
      if (!isSamePiece(held.loosened, held.after, now)) this.#held.delete(key);
    }
    if (sides.policyFrom === 'base' && verdictOf(judged).verdict === 'pass') {
      for (const held of this.#held.values()) {
        const policy = without(held.loosened, now, held.before);
        const change = evaluateChange({ ...sides, policy }, options, approvals, held.evaluation, judged);
        if (!change.ok) continue;
        held.evaluation = change.value.after;
        if (verdictOf(change.value).verdict === 'fail') held.passed.push(commit);
      }
    }
    for (const { direction, of, name, key = null } of policyChanges) {
      const loosened: Loosened = { commit, of, name, key };
      const isLoose = direction === 'looser' || direction === 'unknown';
      if (!isLoose || !canBeUndone(loosened) || this.#held.has(loosenedKey(loosened))) continue;
      const passed: string[] = [];
      this.#passed.set(loosenedKey(loosened), passed);
      const { policy: after } = sides.head;
      this.#held.set(loosenedKey(loosened), { loosened, before: now, after, passed, evaluation: undefined });
    }
  }
}

/** A policy with one piece as an earlier one had it. */
function without({ of, name, key }: Loosened, now: Policy, before: Policy): Policy {
  switch (of) {
    case 'rule': {
      const rules = [
        ...now.rules.filter((rule) => rule.name !== name),
        ...before.rules.filter((rule) => rule.name === name),
      ];
      return { ...now, rules: rules.sort((a, b) => (a.name < b.name ? -1 : 1)) };
    }
    case 'waiver':
      return {
        ...now,
        waivers: [
          ...now.waivers.filter((waiver) => waiverKey(waiver) !== name),
          ...before.waivers.filter((waiver) => waiverKey(waiver) === name),
        ],
      };
    case 'price-list': {
      const lists = [
        ...now.priceLists.filter(({ from }) => listName(from) !== name),
        ...before.priceLists.filter(({ from }) => listName(from) === name),
      ];
      return { ...now, priceLists: lists.sort((a, b) => (a.from > b.from ? -1 : 1)) };
    }
    case 'settings': {
      const piece = pieceOfSettings(key ?? '');
      return { ...now, settings: { ...now.settings, ...pieceIn(before.settings, piece) } };
    }
    case 'readings':
    case 'surveys':
    case 'server':
    case 'procedures':
      return now;
  }
}

const listName = (from: string): string => `prices from ${from}`;

const pieceIn = (settings: Policy['settings'], piece: string): Partial<Policy['settings']> =>
  Object.fromEntries(Object.entries(settings).filter(([key]) => key === piece));

/** Whether one piece says the same in two policies, wherever it is written. */
function isSamePiece({ of, name, key }: Loosened, one: Policy, other: Policy): boolean {
  const said = (policy: Policy): unknown => {
    switch (of) {
      case 'rule':
        return policy.rules.filter((rule) => rule.name === name).map(({ entry, level }) => [entry, level]);
      case 'waiver':
        return policy.waivers.filter((waiver) => waiverKey(waiver) === name);
      case 'price-list':
        return policy.priceLists.filter(({ from }) => listName(from) === name);
      case 'settings':
        return pieceIn(policy.settings, pieceOfSettings(key ?? ''));
      case 'readings':
      case 'surveys':
      case 'server':
      case 'procedures':
        return undefined;
    }
  };
  return text(said(one)) === text(said(other));
}

/** Without the places, which say only where it is written. */
const text = (value: unknown): string =>
  JSON.stringify(value, (key, each: unknown) => {
    if (key === 'place' || key === 'fields') return undefined;
    if (typeof each === 'bigint') return `${each}`;
    return each instanceof Map ? [...each] : each;
  });
