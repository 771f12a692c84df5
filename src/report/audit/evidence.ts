/** Recorded verdicts beside the replay. */
import type { EvidenceFinding, HeldEvidence } from '../../audit/evidence.ts';
import { counted } from '../../base/wording.ts';
import { type AuditTable, column, commitColumn, day, short } from './table.ts';

/** What recorded verdicts say otherwise than the replay, or do not say at all. */
export function evidenceTable({ findings, agreeing, elsewhere }: HeldEvidence, records: number): AuditTable {
  const of = (kind: EvidenceFinding['kind']): number => findings.filter((each) => each.kind === kind).length;
  return {
    headline: `Of ${counted(records, 'record')}, ${agreeing} ${agreeing === 1 ? 'has' : 'have'} evidence that agrees: ${of('missing')} missing, ${of('altered')} altered, ${of('contradicting')} contradicting`,
    notes:
      elsewhere.length === 0
        ? []
        : [
            `${counted(elsewhere.length, 'attestation is', 'attestations are')} for commits that are not in this span.`,
          ],
    columns: [column('kind', 'what'), day, commitColumn, column('file', 'file'), column('message', 'why')],
    rows: findings.map((finding) => [
      finding.kind,
      finding.kind === 'altered' ? null : (finding.record.on ?? null),
      finding.kind === 'altered' ? null : short(finding.record.commit),
      finding.kind === 'missing' ? null : finding.file,
      finding.message,
    ]),
  };
}
