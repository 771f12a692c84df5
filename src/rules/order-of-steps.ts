import { quotaRooms, type Room, slotRooms } from '../capacity/headroom.ts';
import { measured as amountOf } from '../capacity/measure.ts';
import { type Change, isAttachmentChange } from '../change/change.ts';
import { type Subject, subjectKey } from '../estate/estate.ts';
import { quotaWords, type SnaggedStep, snaggedSteps, wayOut } from '../runbook/snag.ts';
import type { Snag, Step } from '../runbook/step.ts';
import { moreRoom } from './more-room.ts';
import { type ChangeRule, everyDeclaredKind } from './rule.ts';
import type { View } from './view.ts';

export const orderOfSteps: ChangeRule<'order-of-steps'> = {
  name: 'order-of-steps',
  about: 'change',
  level: 'error',
  refuses:
    "Changes that no order of steps carries out: steps that wait for one another in a circle, an attachment for which no slot is free on the way, a site's quota exceeded on the way, the contents of a volume group that would have to be moved between sites.",
  why: 'Both ends can be right and the way between them not be there: two servers that swap volumes need a slot to spare for as long as that takes. Whoever finds that out halfway has unmounted and detached already.',
  advice:
    'Change it in two branches, or keep a spare volume or attachment slot for the way. `ullage steps` shows where the steps come to a halt.',
  parameters: {},
  needs: [],
  usesSteps: true,
  looksAt: () => everyDeclaredKind,
  examples: {
    fails: {
      story: 'A group changes its only volume for another, on a server that has no slot for both.',
      main: `servers:
  scanner: { power: running, attachment-slots: 1 }
volumes:
  plates-1: { size: 40 GiB, tier: bulk }
  plates-2: { size: 40 GiB, tier: bulk }
volume-groups:
  plates: { extent: 64 MiB, members: [plates-1], file-systems: { /plates: { size: 30 GiB, type: xfs } } }
attachments:
  - { volume: plates-1, server: scanner }
`,
      branch: `servers:
  scanner: { power: running, attachment-slots: 1 }
volumes:
  plates-1: { size: 40 GiB, tier: bulk }
  plates-2: { size: 40 GiB, tier: bulk }
volume-groups:
  plates: { extent: 64 MiB, members: [plates-2], file-systems: { /plates: { size: 30 GiB, type: xfs } } }
attachments:
  - { volume: plates-2, server: scanner }
`,
      entry: '{ rule: order-of-steps }',
    },
    passes: {
      story: 'With a slot to spare, the new volume comes beside the old one.',
      main: `servers:
  scanner: { power: running, attachment-slots: 2 }
volumes:
  plates-1: { size: 40 GiB, tier: bulk }
  plates-2: { size: 40 GiB, tier: bulk }
volume-groups:
  plates: { extent: 64 MiB, members: [plates-1], file-systems: { /plates: { size: 30 GiB, type: xfs } } }
attachments:
  - { volume: plates-1, server: scanner }
`,
      branch: `servers:
  scanner: { power: running, attachment-slots: 2 }
volumes:
  plates-1: { size: 40 GiB, tier: bulk }
  plates-2: { size: 40 GiB, tier: bulk }
volume-groups:
  plates: { extent: 64 MiB, members: [plates-2], file-systems: { /plates: { size: 30 GiB, type: xfs } } }
attachments:
  - { volume: plates-2, server: scanner }
`,
      entry: '{ rule: order-of-steps }',
    },
  },
  check: () =>
    function* ({ changes, allChanges, head, steps = [] }) {
      for (const snagged of snaggedSteps(steps)) {
        const { step, snag } = snagged;
        const change = changeAt(snagged, changes, allChanges);
        if (change === undefined) continue;
        const short = shortAfterwards(snag, head);
        yield {
          subject: step.subject,
          place: change.place,
          facet: `${snag.kind} ${step.key}`,
          message: short === undefined ? messageOf(snagged) : shortMessage(short, snagged),
          advice: short === undefined ? wayOut(snag) : moreRoom(short.layer),
        };
      }
    },
};

/**
 * What comes to a halt with a step. Where nothing in the whole branch is about it, any change in scope will do; where
 * something is, and it is out of scope, it is somebody else's.
 */
function changeAt(
  { circle }: SnaggedStep,
  inScope: readonly Change[],
  all: readonly Change[],
): Change | undefined {
  const names = new Set(circle.flatMap(({ subject, server }) => keysOf(subject, server)));
  const isAbout = (change: Change): boolean => changedBy(change).some((key) => names.has(key));
  return inScope.find(isAbout) ?? (all.some(isAbout) ? undefined : inScope[0]);
}

const keysOf = (subject: Subject, server: string | undefined): readonly string[] => [
  subjectKey(subject),
  ...(server === undefined ? [] : [subjectKey({ kind: 'server', name: server })]),
];

/** What a change is about, and the servers between which something moves. */
function changedBy(change: Change): readonly string[] {
  const servers = !isAttachmentChange(change)
    ? []
    : change.kind === 'handed-over'
      ? [change.from, change.to]
      : [change.server];
  return [change.subject, ...servers.map((name) => ({ kind: 'server' as const, name }))].map(subjectKey);
}

function messageOf({ step, snag, circle }: SnaggedStep): string {
  const none = snag.isSure
    ? 'no order of the steps carries this out'
    : 'none of the many orders of the steps that were tried carries this out';
  switch (snag.kind) {
    case 'circle':
      return `${none}, since these wait for one another in a circle: ${circle.map(quotedStep).join('; ')}`;
    case 'apart':
      return `no step carries this out, since the members of volume group ${snag.group} are at another site then: ${quotedStep(step)}`;
    case 'no-slot':
      return `${none}, since all attachment slots of ${snag.server} are taken by then and none can be freed before: ${quotedStep(step)}`;
    case 'no-quota':
      return `${none}, since it goes beyond the ${quotaWords(snag)} by then and not enough can be freed before: ${quotedStep(step)}`;
  }
}

/** The room that a step comes to a halt for, where it is too small for what is there after all steps, in whatever order. */
function shortAfterwards(snag: Snag, { estate, settings }: View): Room | undefined {
  const rooms = (): readonly Room[] => {
    switch (snag.kind) {
      case 'no-slot': {
        const server = estate.servers.get(snag.server);
        return server === undefined ? [] : slotRooms(estate, settings, [server]);
      }
      case 'no-quota':
        return quotaRooms(estate, settings).filter(
          ({ subject, measure }) =>
            subject.name === snag.site && (measure === 'volumes') === (snag.of === 'volumes'),
        );
      case 'circle':
      case 'apart':
        return [];
    }
  };
  return rooms().find(({ free }) => free < 0n);
}

function shortMessage(room: Room, { step }: SnaggedStep): string {
  const figures = `${amountOf(room.measure, room.taken)} of ${amountOf(room.measure, room.capacity)}, ${amountOf(room.measure, -room.free)} short`;
  const what =
    room.layer === 'attachment-slots'
      ? `server ${room.subject.name} has too few attachment slots for what is attached to it afterwards`
      : `site ${room.subject.name} has too low a quota for what is there afterwards`;
  return `${what} (${figures}), so that this cannot be carried out: ${quotedStep(step)}`;
}

/** By its number among the steps, and the first of what it says. */
const quotedStep = ({ number, does }: Step): string => `step ${number}, ${does.replace(/[;,].*$|\.$/, '')}`;
