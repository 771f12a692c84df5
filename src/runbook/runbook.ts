/**
 * Changes -> the ordered steps that carry them out. Each kind of change wants its acts, and says what each must wait
 * for by key; a wait for an act that nobody wants is no wait. So a change says "after the group is exported" without
 * asking whether it is.
 *
 * What leaves a server waits only for what else leaves; what comes to one waits for both. That keeps the whole
 * without circles, but for a member of a group that makes room on one that comes.
 */
import { own } from '../change/adoption.ts';
import type { Change } from '../change/change.ts';
import type { Comparison } from '../change/compare.ts';
import { withCorrectedSizes } from '../change/corrected.ts';
import type { Estate } from '../estate/estate.ts';
import type { Survey } from '../survey/survey.ts';
import { actionOf } from './actions.ts';
import {
  attachmentThere,
  layersThere,
  serverThere,
  sizeThere,
  systemSizeThere,
  volumeThere,
} from './adoption.ts';
import { attach, detach } from './attachments.ts';
import { examplesOf } from './commands.ts';
import { type ShownDisk, shownWords } from './devices.ts';
import { Draft, leaving, type Wanted } from './draft.ts';
import {
  growSystem,
  makeAnew,
  setReserve,
  systemCreated,
  systemDeleted,
  systemRemounted,
  systemShrunk,
} from './file-systems.ts';
import { fillsOf } from './fills.ts';
import { groupDeleted, groupEdited, groupRenamed, makeGroup, memberJoined, memberLeft } from './groups.ts';
import { guestHints } from './guest-hint.ts';
import { lossCautions } from './losses.ts';
import { type Doing, siteMeant } from './meant.ts';
import { orderMounts } from './mount-order.ts';
import { start, stop } from './power.ts';
import { type Procedures, plainProcedures, procedureFor } from './procedures.ts';
import type { Limits, Shared } from './rooms.ts';
import { Sequence } from './sequence.ts';
import { bootSwapped, serverCreated, serverDeleted, whileStopped } from './servers.ts';
import { waitUntilSettled } from './settled.ts';
import { shownDetached } from './shown-detached.ts';
import { Sides } from './sides.ts';
import { volumeShrunk } from './smaller-volumes.ts';
import { snagOfStep, wayOut } from './snag.ts';
import type { Snag, Step } from './step.ts';
import { withIds } from './step-id.ts';
import { filled } from './template.ts';
import { deleteVolume, unprotect } from './volume-deletion.ts';
import {
  createVolume,
  reCreated,
  volumeEdited,
  volumeGrown,
  volumeMovedSite,
  volumeMovedTier,
} from './volumes.ts';

/** What steps are worded by. */
export interface Wording {
  /** Those that ship where left out. */
  readonly procedures?: Procedures;
  /** What device names are taken from; none where left out. */
  readonly surveys?: readonly Survey[];
  /** The attachment slots of a server; its own where left out. */
  readonly slots?: Limits['slots'];
  /** A site's quota; none where left out. */
  readonly quota?: Limits['quota'];
}

/**
 * The steps that carry changes out, in the order in which they are to be done: the same whatever the order of the
 * files. Each loss of content has its caution; nothing here carries anything out.
 *
 * @param comparison of the same two estates
 * @param base what is there
 * @param head what is proposed
 */
export function runbookOf(
  { changes, renames }: Pick<Comparison, 'changes' | 'renames'>,
  base: Estate,
  head: Estate,
  {
    procedures = plainProcedures,
    surveys = [],
    slots = ({ attachmentSlots }) => attachmentSlots,
    quota = () => undefined,
  }: Wording = {},
): readonly Step[] {
  if (changes.length === 0) return [];
  const sides = new Sides(withCorrectedSizes(base, changes), head, renames, changes, surveys);
  const draft = new Draft(sides);
  const carriesOut = new Map<string, number[]>();
  changes.forEach((change, index) => {
    const key = carryOut(draft, change);
    if (key === undefined) return;
    const carried = carriesOut.get(key);
    if (carried === undefined) carriesOut.set(key, [index]);
    else carried.push(index);
  });
  orderMounts(draft);
  waitUntilSettled(draft);
  const placed = draft.inOrder({ slots, quota });
  const sequence = new Sequence(placed);
  const hints = guestHints(sides, procedures, placed);
  const numbers = new Map(placed.map(({ key }, index) => [key, index + 1]));
  const numbered = (keys: readonly string[]): readonly number[] =>
    keys.flatMap((key) => numbers.get(key) ?? []).sort((a, b) => a - b);
  const steps = placed.map(({ key, act, after, atOdds, overfills }, index) =>
    stepOf(
      sides,
      procedures,
      { key, wanted: act, sequence },
      index + 1,
      numbered(after),
      // A group has its room from what joins it, and that waits for this, near or far.
      snagOf(
        act,
        numbered([...atOdds, ...(overfills?.late ?? [])]),
        draft.shared(overfills?.room),
        overfills?.isSure ?? true,
      ),
      carriesOut.get(key) ?? [],
      hints.get(key),
    ),
  );
  return withIds(steps);
}

/** Wants what carries a change out; the key of the act with which it is done, or nothing where it needs no hands. */
function carryOut(draft: Draft, change: Change): string | undefined {
  switch (change.kind) {
    case 'server-created':
      return serverCreated(draft, change);
    case 'server-adopted':
      return serverThere(draft, change.after.name);
    case 'volume-adopted':
      return volumeThere(draft, change.after.name);
    case 'attachment-adopted':
      return attachmentThere(draft, change);
    case 'group-adopted':
    case 'member-adopted':
      return layersThere(draft, { kind: 'volume-group', name: change.after.name });
    case 'file-system-adopted':
      return layersThere(draft, change.after.on);
    case 'server-deleted':
      return serverDeleted(draft, change);
    case 'server-renamed':
    case 'volume-renamed':
      return draft.want(`rename ${change.subject.kind} ${change.after.name}`, 'check-name', change.subject, {
        words: { old: change.before.name, name: change.after.name },
      });
    case 'server-changed-id':
    case 'volume-changed-id':
      return draft.want(
        `identity ${change.subject.kind} ${change.after.name}`,
        'check-identity',
        change.subject,
        {
          words: {
            kind: change.after.kind,
            name: change.after.name,
            was: change.before.id ?? 'none',
            id: change.after.id ?? 'none',
          },
          turn: 'check',
        },
      );
    case 'server-started':
      return start(draft, change.after.name);
    case 'server-stopped':
      return stop(draft, change.after.name);
    case 'server-changed-type':
      return whileStopped(draft, change.after.name, 'change-server-type', {
        was: change.before.type ?? 'none',
        type: change.after.type ?? 'none',
      });
    case 'server-moved-site':
      return whileStopped(draft, change.after.name, 'move-server', {
        was: change.before.site ?? 'none',
        site: change.after.site ?? 'none',
      });
    case 'boot-swapped':
      return bootSwapped(draft, change);
    case 'volume-created':
      return createVolume(draft, change.after);
    case 'volume-deleted':
      return deleteVolume(draft, change.before);
    case 'volume-re-created':
      return reCreated(draft, change);
    case 'volume-grown':
      return volumeGrown(draft, change);
    case 'volume-shrunk':
      return volumeShrunk(draft, change);
    case 'volume-corrected':
      return sizeThere(draft, change.after);
    case 'volume-moved-tier':
      return volumeMovedTier(draft, change);
    case 'volume-moved-site':
      return volumeMovedSite(draft, change);
    case 'volume-unprotected':
      return draft.sides.madeAnew.has(change.after.name)
        ? `unprotect-old ${change.after.name}`
        : unprotect(draft, change.after.name);
    case 'volume-edited':
      return volumeEdited(draft, change);
    case 'attached':
      return attach(draft, change.volume.name, change.server);
    case 'detached':
      return detach(draft, change.volume.name, change.server);
    case 'handed-over':
      detach(draft, change.volume.name, change.from);
      return attach(draft, change.volume.name, change.to);
    case 'group-created':
      return makeGroup(draft, change);
    case 'group-deleted':
      return groupDeleted(draft, change);
    case 'group-renamed':
      return groupRenamed(draft, change);
    case 'member-joined':
      return memberJoined(draft, change);
    case 'member-left':
      return memberLeft(draft, change);
    case 'group-edited':
      return groupEdited(draft, change);
    case 'file-system-created':
      return systemCreated(draft, change);
    case 'file-system-deleted':
      return systemDeleted(draft, change);
    case 'file-system-remounted':
      return systemRemounted(draft, change);
    case 'file-system-grown':
      return growSystem(draft, change.after, change.before);
    case 'file-system-shrunk':
      return systemShrunk(draft, change);
    case 'file-system-corrected':
      return systemSizeThere(draft, change.after);
    case 'file-system-edited':
      return own(change.after) === true ? undefined : setReserve(draft, change);
    case 'file-system-remade':
      return makeAnew(
        draft,
        change.after,
        change.before,
        change.before.type === change.after.type
          ? 'How it is laid out is settled when it is made.'
          : `It goes from ${change.before.type} to ${change.after.type}.`,
      );
    case 'server-changed-team':
    case 'server-edited':
    case 'volume-changed-team':
      return undefined;
  }
}

function stepOf(
  sides: Sides,
  procedures: Procedures,
  doing: Doing,
  number: number,
  after: readonly number[],
  snag: Snag | undefined,
  carriesOut: readonly number[],
  hint: string | undefined,
): Omit<Step, 'id'> {
  const { key, wanted } = doing;
  const { procedure: name, subject, server, cautions: more, early } = wanted;
  const isDetached = name === 'detach' || name === 'detach-again';
  const words = isDetached ? { ...wanted.words, shown: shownDetached(sides, doing) } : wanted.words;
  const { at, destroys } = actionOf(name);
  const where = {
    guest: server === undefined ? undefined : sides.guest(server),
    site: siteMeant(sides, doing),
  };
  const procedure = procedureFor(procedures, name, where);
  const { fills, shown } = fillsOf(sides, doing);
  const said = (text: string | undefined): string | undefined =>
    text === undefined ? undefined : filled(text, words);
  const examples = examplesOf(procedure.commands, fills, words.type);
  const inCommands = shown.filter(({ disk }) => examples.some(({ command }) => command.includes(disk.name)));
  const does = filled(procedure.does, words);
  const odds = snag === undefined ? undefined : `${snagOfStep(snag)} ${wayOut(snag)}`;
  const reasons = [said(procedure.why), odds, hint].flatMap((each) => each ?? []);
  return {
    key,
    number,
    procedure: name,
    words,
    at,
    server,
    subject,
    does:
      at === 'guest'
        ? whenUp(sides, early || leaving.has(name), server, words.on ?? subject.name, does)
        : does,
    why: reasons.length === 0 ? undefined : reasons.join(' '),
    seen: said(procedure.seen),
    back: said(procedure.back),
    destroys: destroys !== undefined,
    cautions: [
      ...lossCautions(sides, wanted),
      ...procedure.cautions.map((text) => filled(text, words)),
      ...more,
      ...deviceCautions(inCommands),
    ],
    examples,
    after,
    snag,
    carriesOut,
  };
}

/** A name under /dev is one survey's word. */
const deviceCautions = (shown: readonly ShownDisk[]): readonly string[] =>
  shown.length === 0
    ? []
    : [
        `Device names may change when a server starts anew: make sure of them first. ${shown.map(shownWords).join(' ')}`,
      ];

function snagOf(
  { apart, words, subject }: Wanted,
  atOdds: readonly number[],
  overfilled: Shared | undefined,
  isSure: boolean,
): Snag | undefined {
  if (atOdds.length > 0) return { kind: 'circle', steps: atOdds, isSure };
  if (apart) return { kind: 'apart', group: words.group ?? subject.name, isSure: true };
  switch (overfilled?.kind) {
    case 'slots':
      return { kind: 'no-slot', server: overfilled.server, isSure };
    case 'quota':
      return { kind: 'no-quota', site: overfilled.site, of: overfilled.of, isSure };
    case 'group':
    case undefined:
      return undefined;
  }
}

/** A guest can only be worked in while it runs. */
function whenUp(
  sides: Sides,
  leaves: boolean,
  server: string | undefined,
  what: string,
  does: string,
): string {
  const later = `${does.charAt(0).toLowerCase()}${does.slice(1)}`;
  // What a stopped server is to give up, or nobody holds, can be got at where one runs.
  if (leaves) {
    const runs = server !== undefined && (sides.runsBefore(server) || sides.runsAfter(server));
    return runs ? does : `With a server that runs and holds ${what}: ${later}`;
  }
  if (server === undefined) return `Once a server holds ${what}: ${later}`;
  return sides.runsAfter(server) ? does : `When ${server} next starts: ${later}`;
}
