/** `ullage rules`: what each rule refuses, why, and what to do about it, from its own definition. */
import { offer } from '../base/nearest.ts';
import { gatherRules, shippedNames } from '../policy/pack.ts';
import { type RuleFormat, reportPack, reportRule, reportRules } from '../report/rules.ts';
import { ruleNames, rules } from '../rules/registry.ts';
import { type Finished, terminal } from './edge.ts';

export interface RuleFlags {
  readonly format: RuleFormat;
  readonly pack?: string;
}

export function runRules(names: readonly string[], { format, pack }: RuleFlags): Finished {
  if (pack !== undefined) return packShown(pack, names, format);
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

/** A shipped pack with what it uses, as it would apply. */
function packShown(pack: string, names: readonly string[], format: RuleFormat): Finished {
  if (names.length > 0)
    return { output: '', code: 2, reason: 'rules and --pack were both given. Give one of them.' };
  if (!shippedNames.includes(pack)) {
    const known = `${offer(pack, shippedNames)}The packs are ${shippedNames.join(', ')}.`;
    return { output: '', code: 2, reason: `no pack named ${pack} ships with Ullage. ${known}` };
  }
  const place = { file: '--pack', line: 1, column: 1 };
  const gathered = gatherRules([{ file: '--pack', use: [{ name: pack, place }], entries: [] }]);
  if (!gathered.ok) throw new Error(gathered.problems.map(({ message }) => message).join('; '));
  return { output: reportPack(pack, gathered.value, format, terminal()), code: 0 };
}
