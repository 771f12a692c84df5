/** `ullage rules`: what each rule refuses, why, and what to do about it, from its own definition. */
import { offer } from '../base/nearest.ts';
import { type RuleFormat, reportRule, reportRules } from '../report/rules.ts';
import { ruleNames, rules } from '../rules/registry.ts';
import { type Finished, terminal } from './edge.ts';

export interface RuleFlags {
  readonly format: RuleFormat;
}

export function runRules(names: readonly string[], { format }: RuleFlags): Finished {
  const all = Object.values(rules);
  if (names.length === 0) return { output: reportRules(all, format, terminal()), code: 0 };
  const unknown = names.filter((name) => !ruleNames.includes(name));
  if (unknown.length > 0) {
    const said = unknown.map((name) => `there is no rule ${name}. ${offer(name, ruleNames)}`.trim());
    return { output: '', code: 2, reason: `${said.join(' ')} \`ullage rules\` lists them.` };
  }
  const chosen = all.filter(({ name }) => names.includes(name));
  return { output: chosen.map((rule) => reportRule(rule, format, terminal())).join('\n'), code: 0 };
}
