/** `ullage policy check`: a policy held against the estate it is for. */
import { err, ok } from '../base/problem.ts';
import { checkPolicy, declaresNothing } from '../policy/check.ts';
import type { Policy } from '../policy/policy.ts';
import { type PolicyCheck, type PolicyFormat, reportPolicyCheck } from '../report/policy.ts';
import { type Finished, type ReportFlags, terminal } from './edge.ts';
import { staleSchemas } from './editor-schemas.ts';
import { notTold } from './not-told.ts';
import { shownOn, withRepository } from './repository.ts';

export interface PolicyCheckFlags extends ReportFlags {
  readonly repo: string;
  readonly at?: string;
  readonly soon: number;
  readonly now?: string;
  readonly format: PolicyFormat;
}

export async function runPolicyCheck(flags: PolicyCheckFlags): Promise<Finished> {
  const { repo, soon, format } = flags;
  const checked = await withRepository(repo, async (repository) => {
    const shown = await shownOn(repository, flags);
    if (!shown.ok) return shown;
    const { on, settings, revision } = shown.value;
    const { estate, priceLists, rules, waivers, procedures, hasPacks } = revision;
    if (!hasPacks) {
      return err({
        message: `there is no rule pack in ${settings.paths.policies}/`,
        advice: 'Write one with `use: [starter]`; `ullage new` shows how one looks.',
      });
    }
    const policy: Policy = { settings, priceLists, rules, waivers, procedures };
    const remarks = checkPolicy(policy, revision, estate, { on, soon });
    return ok<PolicyCheck>({
      on,
      rules: rules.length,
      waivers: waivers.length,
      remarks,
      ...(declaresNothing(estate) ? { nothingDeclared: true } : {}),
    });
  });
  if (!checked.ok) {
    return notTold(checked.problems, flags, 'not judged: the policy cannot be read');
  }
  const remarks = flags.at === undefined ? await staleSchemas(repo) : [];
  return { output: reportPolicyCheck(checked.value, format, terminal(flags)), code: 0, remarks };
}
