/** A branch held against main, with what main's own history has to say: what the gate and the library judge by. */
import { type Outcome, ok } from '../base/problem.ts';
import { firstParentAncestors } from '../git/ancestors.ts';
import type { RevisionPair } from '../git/compare.ts';
import type { GitRepository } from '../git/repository.ts';
import type { Approvals } from '../policy/approval.ts';
import type { JudgeOptions } from '../policy/judge.ts';
import type { Judgement, PastChange } from '../policy/judgement.ts';
import { judgePair, type ReadingPair, readPair } from '../policy/pair.ts';
import type { Waiver } from '../policy/policy.ts';

export interface AgainstMain extends JudgeOptions {
  /** On how many past changes to try rules that the branch alters; on 20 where left out. */
  readonly backTest?: number;
}

/** So many changes of main tell what a rule would have meant, and are replayed in a moment. */
const usualPast = 20;

export interface JudgedAgainstMain {
  readonly judgement: Judgement;
  readonly readings: ReadingPair;
  /** Why the proposed rules could not be tried on past changes; only where that was wanted. */
  readonly untried?: string;
}

/** Judges two revisions of a repository. What stands in the way is in the judgement. */
export async function judgeAgainstMain(
  repository: GitRepository,
  { base, head, baseCommit }: Pick<RevisionPair, 'base' | 'head' | 'baseCommit'>,
  { backTest = usualPast, ...options }: AgainstMain,
): Promise<JudgedAgainstMain> {
  const readings = await readPair(base, head);
  const judgement = await judgePair(readings, options, {
    ancestors: () => firstParentAncestors(repository, baseCommit),
    approvals: (waivers) => approvalsOf(repository, baseCommit, waivers),
  });
  const tried = await onPast(repository, baseCommit, { judgement, readings }, { backTest, ...options });
  return { judgement, readings, ...tried };
}

/** Few judgements hang on what a waiver has covered before; the others need not load the rest of the audit. */
async function approvalsOf(
  repository: GitRepository,
  base: string,
  waivers: readonly Waiver[],
): Promise<Outcome<Approvals>> {
  const { approvalsUpTo } = await import('./approvals.ts');
  const found = await approvalsUpTo(repository, { base, waivers });
  return found.ok ? ok(found.value.own ?? new Map()) : found;
}

/** Tries the rules that a branch proposes on what main let through before, or says why that cannot be done. */
async function onPast(
  repository: GitRepository,
  to: string,
  { judgement, readings }: JudgedAgainstMain,
  { backTest: count = usualPast, failOn = 'error' }: AgainstMain,
): Promise<Partial<Pick<JudgedAgainstMain, 'judgement' | 'untried'>>> {
  if (count === 0 || judgement.verdict === 'not judged' || judgement.proposed === undefined) return {};
  if (!judgement.policyChanges.some((change) => change.of === 'rule')) return {};
  // Few branches alter rules; the others need not load it.
  const { backTestLast } = await import('./back-test.ts');
  const tested = await backTestLast(repository, { to, count, rules: readings.head.revision.rules, failOn });
  if (!tested.ok) return { untried: tested.problems[0]?.message ?? 'nothing more is known' };
  const { judged, notJudged: unknown, stopped, letThrough } = tested.value;
  const past = ({ commit, on, subject }: (typeof stopped)[number]): PastChange => ({ commit, on, subject });
  return {
    judgement: {
      ...judgement,
      proposed: {
        ...judgement.proposed,
        onPast: {
          changes: judged + unknown,
          judged,
          stopped: stopped.map(past),
          letThrough: letThrough.map(past),
        },
      },
    },
  };
}
