/** `ullage rules`: what each rule refuses, why, and what to do about it, from its own definition. */
import { offer } from '../base/nearest.ts';
import { gatherRules, shippedNames } from '../policy/pack.ts';
import type { PolicyRule } from '../policy/policy.ts';
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
    const said = unknown.map(
      (name) =>
        entrySaid(name) ?? `there is no rule ${name}. ${offer(name, ruleNames)}\`ullage rules\` lists them.`,
    );
    return { output: '', code: 2, reason: said.join(' ') };
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
  return { output: reportPack(pack, entriesOf(pack), format, terminal()), code: 0 };
}

/** Findings name the entry first, so that its name is asked about. */
function entrySaid(name: string): string | undefined {
  for (const pack of shippedNames) {
    const found = entriesOf(pack).find((each) => each.name === name);
    if (found === undefined) continue;
    const { rule } = found.entry;
    return `${name} is no rule but an entry of the ${pack} pack, of the rule ${rule}: \`ullage rules ${rule}\` explains that.`;
  }
  return undefined;
}

function entriesOf(pack: string): readonly PolicyRule[] {
  const place = { file: '--pack', line: 1, column: 1 };
  const gathered = gatherRules([{ file: '--pack', use: [{ name: pack, place }], entries: [] }]);
  if (!gathered.ok) throw new Error(gathered.problems.map(({ message }) => message).join('; '));
  return gathered.value;
}
