/**
 * Attachment slots that a server's own declaration raises above its site's figure. The declaration is storage, and the
 * figure in it is a limit: whoever writes it lets more through.
 */
import type { Change, ChangeOf } from '../../change/change.ts';
import { placed } from '../../change/place.ts';
import type { Server } from '../../estate/estate.ts';
import type { Settings } from '../../estate/settings.ts';
import type { PolicyChange } from '../../rules/view.ts';
import { policyChange } from './change.ts';

export function slotChanges(changes: readonly Change[], { sites }: Settings): readonly PolicyChange[] {
  return changes.flatMap((change): readonly PolicyChange[] => {
    if (!declares(change)) return [];
    const { after } = change;
    const figure = sites.get(after.site ?? '')?.attachmentSlots;
    const was = 'before' in change ? slotsOf(change.before, figure) : figure;
    const now = after.attachmentSlots;
    if (figure === undefined || now === undefined || now <= figure || now <= (was ?? now)) return [];
    return [
      policyChange({
        direction: 'looser',
        of: 'server',
        name: after.name,
        key: 'attachment-slots',
        from: was?.toString(),
        to: now.toString(),
        place: placed(after, 'head', 'attachment-slots'),
      }),
    ];
  });
}

const declares = (
  change: Change,
): change is ChangeOf<'server-created' | 'server-adopted' | 'server-edited'> =>
  change.kind === 'server-created' || change.kind === 'server-adopted' || change.kind === 'server-edited';

const slotsOf = ({ attachmentSlots }: Server, figure: number | undefined): number | undefined =>
  attachmentSlots ?? figure;
