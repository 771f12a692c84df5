/**
 * What is settled before anything is done to a thing: which of two it is, where it has another identifier, and that it
 * is there as declared, where it is only declared. Whoever does something to the wrong one, or to what is not so, does
 * it to somebody else's.
 */
import { type Subject, subjectKey } from '../estate/estate.ts';
import { carriersAt } from './adoption.ts';
import type { Draft, Wanted } from './draft.ts';
import { type Sides, systemsOn } from './sides.ts';
import { sorted, volumeSubject } from './words.ts';

/** Has every act wait for the checks of what it is done to, but for what a check itself waits for. */
export function waitUntilSettled(draft: Draft): void {
  const { sides } = draft;
  const wanted = [...draft.wanted()];
  const checks = wanted.flatMap(([key, act]) => {
    const settles = settledBy(sides, act);
    return settles.length === 0 ? [] : [[key, settles] as const];
  });
  if (checks.length === 0) return;
  const doneTo = new Map<string, string[]>();
  for (const [key, act] of wanted) {
    if (isCheck(act)) continue;
    for (const each of new Set(touchedBy(sides, act).map(subjectKey))) {
      const acts = doneTo.get(each);
      if (acts === undefined) doneTo.set(each, [key]);
      else acts.push(key);
    }
  }
  for (const [check, settles] of checks) {
    const first = draft.allBefore(check);
    const acts = new Set(settles.flatMap((each) => doneTo.get(subjectKey(each)) ?? []));
    const later = new Map([...acts].flatMap((act) => (first.has(act) ? [] : [[act, draft.allBefore(act)]])));
    // What waits for another of them waits for the check by that.
    for (const [act, before] of later)
      if (![...before].some((each) => later.get(each)?.has(act) === false)) draft.wait(act, [check]);
  }
}

/** It looks, and does nothing. */
const isCheck = ({ procedure }: Wanted): boolean =>
  ['check-backup', 'check-identity', 'check-server-there', 'check-volume-there', 'check-layers'].includes(
    procedure,
  );

function settledBy(sides: Sides, { procedure, subject, server }: Wanted): readonly Subject[] {
  const { adopted } = sides;
  switch (procedure) {
    case 'check-identity':
    case 'check-volume-there':
      return [subject];
    case 'check-server-there':
      return [
        subject,
        ...(sides.head.held.get(subject.name) ?? []).flatMap(({ volume }) =>
          adopted.volumes.has(volume) || adopted.attached.has(`${volume} ${subject.name}`)
            ? volumeSubject(volume)
            : [],
        ),
      ];
    case 'check-layers': {
      if (subject.kind === 'file-system') return [subject];
      const carriers =
        server !== undefined
          ? carriersAt(sides, server)
          : subject.kind === 'volume' || subject.kind === 'volume-group'
            ? [{ kind: subject.kind, name: subject.name }]
            : [];
      return carriers.flatMap((carrier): readonly Subject[] => {
        const there = sides.carrierAfter(carrier);
        const systems = there === undefined ? [] : systemsOn(there);
        return [
          ...(adopted.groups.has(carrier.name) || adopted.joined.has(carrier.name) ? [carrier] : []),
          ...systems.filter(({ name }) => adopted.fileSystems.has(name)),
        ];
      });
    }
    default: // the others settle nothing
      return [];
  }
}

/** What something is done to: with a group, its members are written to. */
function touchedBy(sides: Sides, { procedure, subject, server, words }: Wanted): readonly Subject[] {
  const [carrier = ''] = subject.name.split(':');
  const named = [
    words.volume,
    words.group,
    words.on,
    subject.kind === 'server' ? undefined : carrier,
  ].flatMap((name) =>
    name === undefined || (subject.kind === 'server' && name === subject.name) ? [] : name,
  );
  const groups = sorted(named).filter(
    (name) => sides.head.groups.has(name) || sides.base.groups.has(sides.baseName('groups', name)),
  );
  const starts = procedure === 'create-server' || procedure === 'start-server';
  const boot = starts ? sides.head.servers.get(server ?? '')?.boot : undefined;
  const members = groups.flatMap((name) => [
    ...sides.membersBefore(name),
    ...(sides.head.groups.get(name)?.members ?? []),
  ]);
  return [
    subject,
    ...(server === undefined ? [] : [{ kind: 'server', name: server } as const]),
    ...groups.map((name) => ({ kind: 'volume-group', name }) as const),
    ...[...named, ...members, ...(boot === undefined ? [] : [boot])].map(volumeSubject),
  ];
}
