import { listed } from '../base/wording.ts';
import { placed } from '../change/place.ts';
import type { StateRule } from './rule.ts';
import { subjectRef } from './subject-ref.ts';

const toMove =
  'Move all members together: unmount, deactivate and export the group, detach every member, attach them all to the other server, import and activate there.';

/** Where only some are unattached, as of a group that is yet to be made, there is nothing to move. */
function adviceFor(seats: ReadonlyMap<string, readonly string[]>): string {
  const unattached = seats.get('') ?? [];
  const [seat, ...others] = [...seats.keys()].filter((each) => each !== '');
  return unattached.length === 0 || seat === undefined || others.length > 0
    ? toMove
    : `Attach ${listed(unattached)} to ${seat}, where ${seats.get(seat)?.length === 1 ? 'the other member is' : 'the other members are'}. To take the group to another server: ${toMove.charAt(0).toLowerCase()}${toMove.slice(1)}`;
}

export const groupTravelsWhole: StateRule<'group-travels-whole'> = {
  name: 'group-travels-whole',
  about: 'state',
  level: 'error',
  refuses: 'A volume group with members on different servers, or with some members attached and some not.',
  why: 'A volume group spreads its file systems over all its members. If one of them is elsewhere the group cannot be activated, or only in part, and a hasty repair can lose all of it.',
  advice: toMove,
  parameters: {},
  scope: ['teams', 'sites', 'labels'],
  needs: [],
  looksAt: () => ['volume-group'],
  examples: {
    fails: {
      story: 'One of two members is moved to another server.',
      main: `servers:
  plate-scanner: {}
  plate-archive: {}
volumes:
  plates-1: { size: 40 GiB, tier: bulk }
  plates-2: { size: 40 GiB, tier: bulk }
attachments:
  - { volume: plates-1, server: plate-scanner }
  - { volume: plates-2, server: plate-scanner }
volume-groups:
  plates: { members: [plates-1, plates-2] }
`,
      branch: `servers:
  plate-scanner: {}
  plate-archive: {}
volumes:
  plates-1: { size: 40 GiB, tier: bulk }
  plates-2: { size: 40 GiB, tier: bulk }
attachments:
  - { volume: plates-1, server: plate-scanner }
  - { volume: plates-2, server: plate-archive }
volume-groups:
  plates: { members: [plates-1, plates-2] }
`,
      entry: '{ rule: group-travels-whole }',
    },
    passes: {
      story: 'Both members are moved together.',
      main: `servers:
  plate-scanner: {}
  plate-archive: {}
volumes:
  plates-1: { size: 40 GiB, tier: bulk }
  plates-2: { size: 40 GiB, tier: bulk }
attachments:
  - { volume: plates-1, server: plate-scanner }
  - { volume: plates-2, server: plate-scanner }
volume-groups:
  plates: { members: [plates-1, plates-2] }
`,
      branch: `servers:
  plate-scanner: {}
  plate-archive: {}
volumes:
  plates-1: { size: 40 GiB, tier: bulk }
  plates-2: { size: 40 GiB, tier: bulk }
attachments:
  - { volume: plates-1, server: plate-archive }
  - { volume: plates-2, server: plate-archive }
volume-groups:
  plates: { members: [plates-1, plates-2] }
`,
      entry: '{ rule: group-travels-whole }',
    },
  },
  check: (_entry, scope) =>
    function* ({ estate, selection, revision }) {
      for (const group of selection.groups) {
        if (!scope.includes(group)) continue;
        const seats = new Map<string, string[]>();
        const places = new Set<string>();
        for (const member of group.members) {
          const holders = (estate.holders.get(member) ?? []).map(({ server }) => server).sort();
          const seat = holders.length === 0 ? '' : holders.join(' and ');
          seats.set(seat, [...(seats.get(seat) ?? []), member]);
          for (const server of holders.length === 0 ? [undefined] : holders) {
            const there = server === undefined ? [] : [{ kind: 'server', name: server } as const];
            places.add(subjectRef({ kind: 'volume', name: member }, ...there));
          }
        }
        if (seats.size < 2) continue;
        const parts = [...seats].map(
          ([seat, members]) => `${members.join(', ')} ${seat === '' ? 'unattached' : `on ${seat}`}`,
        );
        yield {
          subject: { kind: 'volume-group', name: group.name },
          place: placed(group, revision, 'members'),
          message: `volume group ${group.name} is split: ${parts.join('; ')}`,
          advice: adviceFor(seats),
          // Another split of a split group is no better: any piece missing stops the group.
          excess: places,
        };
      }
    },
};
