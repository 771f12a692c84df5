/** The policy as it was on a day. */
import { counted, listed } from '../../base/wording.ts';
import { holdsOn } from '../../estate/dates.ts';
import { showSize } from '../../estate/size.ts';
import { type RuleOrigin, writtenElsewhere } from '../../policy/policy.ts';
import type { Revision } from '../../policy/revision.ts';
import { listInForce } from '../../price/price-list.ts';
import { parametersOf } from '../model/parameters.ts';
import { type AuditTable, column, short } from './table.ts';

/** The policy as one revision held it, on a day. */
export function policyTable(
  { settings, rules, waivers, priceLists }: Revision,
  commit: string,
  on: string,
): AuditTable {
  const list = listInForce(priceLists, on);
  const inForce = waivers.filter((waiver) => holdsOn(waiver, on));
  const at = ({ file, line }: { readonly file: string; readonly line: number }): string => `${file}:${line}`;
  return {
    headline: `On ${on} the policy was that of ${short(commit)}: ${counted(rules.length, 'rule')}, ${counted(inForce.length, 'waiver')} in force`,
    notes: [
      list === undefined
        ? 'No price list was in force.'
        : `The price list in force applied from ${list.from} (${at(list.place)}).`,
      ...[...(settings?.sites.values() ?? [])].flatMap(({ name, quota, attachmentSlots }) => {
        const limits = [
          ...(quota.volumes === undefined ? [] : [counted(quota.volumes, 'volume')]),
          ...(quota.size === undefined ? [] : [showSize(quota.size)]),
          ...(attachmentSlots === undefined
            ? []
            : [`${counted(attachmentSlots, 'attachment slot')} a server`]),
        ];
        return limits.length === 0 ? [] : [`The site ${name} had ${listed(limits)}.`];
      }),
    ],
    columns: [
      column('kind', 'kind'),
      column('name', 'name'),
      column('rule', 'rule'),
      column('level', 'level'),
      column('parameters', 'parameters'),
      column('place', 'at'),
    ],
    rows: [
      ...rules.map(({ name, entry, level, place, origin }) => {
        return ['rule', name, entry.rule, level, parametersOf(entry), writtenAt(origin, at(place))];
      }),
      ...inForce.map((waiver) => [
        'waiver',
        waiver.subject,
        waiver.rule,
        null,
        `${waiver.from} to ${waiver.until}, approved by ${waiver.approvedBy}: ${waiver.reason}`,
        at(waiver.place),
      ]),
    ],
  };
}

function writtenAt(origin: RuleOrigin, place: string): string {
  switch (origin.kind) {
    case 'repository':
      return place;
    case 'shipped':
      return `the pack ${origin.pack}`;
    case 'elsewhere':
      return `the pack ${origin.pack}: ${writtenElsewhere(origin)}`;
  }
}
