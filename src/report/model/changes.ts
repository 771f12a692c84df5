/** The changes of a branch, and how many of them lose data. */
import { counted } from '../../base/wording.ts';
import type { Change } from '../../change/change.ts';
import { describeChange, destroys } from '../../change/kinds.ts';
import { lossesOf } from '../../change/losses.ts';
import { atRevision, entries } from './blocks.ts';
import type { Section, Tag } from './model.ts';

/** Beside whatever loses content: a change or a step. */
export const losesData: Tag = { word: 'loses data', tone: 'loses data' };

export const changeSection = (changes: readonly Change[]): readonly Section[] =>
  changes.length === 0
    ? []
    : [
        {
          title: `Changes (${changes.length})`,
          blocks: [
            entries(
              changes.map((change) => ({
                tag: destroys(change) ? losesData : undefined,
                text: describeChange(change),
                fields: [atRevision(change.place)],
              })),
            ),
          ],
        },
      ];

/** How many changes lose data, what goes with its volume or its group counted once; undefined where none does. */
export function lossSentence(changes: readonly Change[]): string | undefined {
  const count = lossesOf(changes).length;
  return count === 0
    ? undefined
    : `${counted(count, 'change loses', 'changes lose')} data that only a backup can restore`;
}
