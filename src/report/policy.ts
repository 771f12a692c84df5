/** What a policy check remarks, as text or JSON. */

import { counted } from '../base/wording.ts';
import type { Remark } from '../policy/check.ts';
import { drawReport, type Screen } from './draw.ts';
import { advice, at, entries, line } from './model/blocks.ts';
import type { Entry, ReportModel } from './model/model.ts';

export type PolicyFormat = 'text' | 'json';

export interface PolicyCheck {
  readonly on: string;
  /** How many rules the policy comes to, with what the packs it uses bring. */
  readonly rules: number;
  readonly waivers: number;
  readonly remarks: readonly Remark[];
  /** Only where no server and no volume is declared yet. */
  readonly nothingDeclared?: true;
}

export function reportPolicyCheck(check: PolicyCheck, format: PolicyFormat, screen: Screen): string {
  switch (format) {
    case 'text':
      return drawReport(policyModel(check), screen);
    case 'json':
      return `${JSON.stringify(check, null, 2)}\n`;
  }
}

function policyModel({ on, rules, waivers, remarks, nothingDeclared }: PolicyCheck): ReportModel {
  const policy = `${counted(rules, 'rule')} and ${counted(waivers, 'waiver')} on ${on}`;
  const clean = remarks.length === 0;
  return {
    tone: clean ? 'plain' : 'caution',
    headline: `${clean ? 'No remarks' : counted(remarks.length, 'remark')} on ${policy}`,
    fields:
      nothingDeclared === undefined
        ? []
        : [
            line(
              'Estate',
              'No server and no volume is declared yet: what the policy names was not held against any.',
            ),
          ],
    sections: clean ? [] : [{ title: 'Remarks', blocks: [entries(remarks.map(entryOf))] }],
  };
}

const entryOf = ({ kind, message, advice: todo, place }: Remark): Entry => ({
  tag: { word: kind, tone: 'caution' },
  text: message,
  fields: [at(place), advice('advice', todo)],
});
