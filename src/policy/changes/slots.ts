/**
 * Attachment slots that a server's own declaration raises: above its site's figure, or, where the site has none, above
 * what main declares for it. The declaration is storage, and the figure in it is a limit: whoever writes it lets more
 * through.
 */
import type { Change, ChangeOf } from '../../change/change.ts';
import { placed } from '../../change/place.ts';
import type { Settings } from '../../estate/settings.ts';
import type { PolicyChange } from '../../rules/view.ts';
import { policyChange } from './change.ts';

export function slotChanges(changes: readonly Change[], { sites }: Settings): readonly PolicyChange[] {
  return changes.flatMap((change): readonly PolicyChange[] => {
    if (!declares(change)) return [];
    const { after } = change;
    const ofSite = sites.get(after.site ?? '')?.attachmentSlots;
    const was = ('before' in change ? change.before.attachmentSlots : undefined) ?? ofSite;
    const now = after.attachmentSlots ?? ofSite;
    if (!isAbove(now, was) || (ofSite !== undefined && !isAbove(now, ofSite))) return [];
    return [
      policyChange({
        direction: 'looser',
        of: 'server',
        name: after.name,
        key: 'attachment-slots',
        from: was?.toString(),
        to: now?.toString(),
        place: placed(after, 'head', 'attachment-slots'),
      }),
    ];
  });
}

const declares = (
  change: Change,
): change is ChangeOf<'server-created' | 'server-adopted' | 'server-edited'> =>
  change.kind === 'server-created' || change.kind === 'server-adopted' || change.kind === 'server-edited';

/** No figure is the highest. */
const isAbove = (now: number | undefined, was: number | undefined): boolean =>
  was !== undefined && (now === undefined || now > was);
