/** The cautions, shown once wherever a change loses data, or something is advised that needs care. */
import { cautions } from '../../base/wording.ts';
import type { Judged } from '../../policy/judgement.ts';
import { sentence } from './blocks.ts';
import { lossSentence } from './changes.ts';
import { groupOf } from './findings.ts';
import type { Section } from './model.ts';

export function cautionSection({ changes, findings }: Judged): readonly Section[] {
  const advised = findings.some(
    (finding) => groupOf(finding) !== 'fixed' && finding.advice.includes(cautions),
  );
  const loss = lossSentence(changes);
  if (loss === undefined && !advised) return [];
  const why = loss === undefined ? 'Some of what is advised here cannot be undone.' : `${loss}.`;
  return [{ title: 'Cautions', blocks: [sentence(why), sentence(cautions)] }];
}
