/** What an entry of a pack sets, in words. */
import type { RuleEntry } from '../../rules/rule.ts';

export function parametersOf({
  rule: _,
  name: __,
  level: ___,
  enabled: ____,
  ...parameters
}: RuleEntry): string {
  return Object.entries(parameters)
    .map(([key, value]) => `${key}: ${typeof value === 'string' ? value : JSON.stringify(value)}`)
    .join(', ');
}
