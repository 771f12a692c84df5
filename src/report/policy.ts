/** What a policy check remarks, as text or JSON. */

import { counted } from '../base/wording.ts';
import type { Remark } from '../policy/check.ts';
import { atLeast, drawHeadline, drawSections, type Screen } from './draw.ts';
import type { Entry, Section } from './sections.ts';

export type PolicyFormat = 'text' | 'json';

export interface PolicyCheck {
  readonly on: string;
  /** How many rules the policy comes to, with what the packs it uses bring. */
  readonly rules: number;
  readonly waivers: number;
  readonly remarks: readonly Remark[];
}

export function reportPolicyCheck(check: PolicyCheck, format: PolicyFormat, screen: Screen): string {
  switch (format) {
    case 'text':
      return policyText(check, atLeast(screen));
    case 'json':
      return `${JSON.stringify(check, null, 2)}\n`;
  }
}

function policyText({ on, rules, waivers, remarks }: PolicyCheck, screen: Screen): string {
  const policy = `${counted(rules, 'rule')} and ${counted(waivers, 'waiver')} on ${on}`;
  const headline =
    remarks.length === 0
      ? `Nothing to remark on ${policy}`
      : `${counted(remarks.length, 'remark')} on ${policy}`;
  const sections: readonly Section[] =
    remarks.length === 0
      ? []
      : [{ title: 'Remarks', blocks: [{ kind: 'entries', entries: remarks.map(entryOf) }] }];
  return `${[...drawHeadline(headline, remarks.length === 0 ? 'plain' : 'caution', screen), ...drawSections(sections, screen)].join('\n')}\n`;
}

const entryOf = ({ kind, message, advice, place }: Remark): Entry => ({
  lead: { word: kind, tone: 'caution' },
  text: message,
  excerpt: undefined,
  fields: [
    { label: 'where', form: 'place', place, note: '' },
    { label: 'do', form: 'advice', text: advice },
  ],
});
