/** `ullage rules`: what each rule does, wants and advises, from its own definition. */
import type { Command } from 'commander';
import { offer } from '../base/nearest.ts';
import { type RuleFormat, reportRule, reportRules, ruleFormats } from '../report/rules.ts';
import { ruleNames, rules } from '../rules/registry.ts';
import { type Finished, terminal } from './edge.ts';

export function runRules(names: readonly string[], { format }: { readonly format: RuleFormat }): Finished {
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

export const addRules = (program: Command, finish: (finished: Finished) => void): Command =>
  program
    .command('rules')
    .summary('what each rule does, wants and advises')
    .description(
      'List the rules, or explain the ones named: what each refuses, why, its parameters, and what to do about a finding.',
    )
    .argument('[names...]', 'rules to explain in full')
    .addOption(
      program
        .createOption('--format <format>', 'what to print')
        .choices([...ruleFormats])
        .default('text'),
    )
    .addHelpText('after', '\nExamples:\n  ullage rules\n  ullage rules no-shrink growth-step')
    .action((names: string[], flags: { format: RuleFormat }) => finish(runRules(names, flags)));
