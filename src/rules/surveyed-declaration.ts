/** What a branch only declares, as being there or as being so large, beside what surveys on main show of it. */
import { type Adopted, adoptedIn } from '../change/adoption.ts';
import type { Change } from '../change/change.ts';
import { baseName, baseSubject, type Renames } from '../change/renames.ts';
import { thereAlready } from '../change/there-already.ts';
import { type Estate, type FileSystem, type Subject, subjectKey } from '../estate/estate.ts';
import { compareSurveys, type SurveyComparison, type Surveys } from '../survey/compare.ts';
import type { Difference } from '../survey/difference.ts';
import type { Violation } from './rule.ts';
import { type Asked, ageInGuest, ageOf, newestOf, seenOf, shownIn, undeclaredOn } from './survey-evidence.ts';
import type { ChangeView } from './view.ts';

/** What is only declared as surveys show it is as sure as they are new. */
export function* correctedFaults(
  { changes, base }: ChangeView,
  surveys: Surveys,
  asked: Asked,
  ofMain: () => SurveyComparison,
): Iterable<Violation> {
  for (const change of changes) {
    if (change.kind !== 'volume-corrected' && change.kind !== 'file-system-corrected') continue;
    const { before } = change;
    const compared = ofMain();
    const [first] = before.kind === 'volume' ? [before.name] : membersOf(base.estate, before.on);
    if (first === undefined) continue;
    const which = `by which the size of ${change.subject.name} is corrected`;
    if (before.kind === 'volume')
      yield* ageOf(change, first, which, newestOf(first, compared, surveys), asked);
    else yield* ageInGuest(change, first, which, compared, asked);
  }
}

const membersOf = (estate: Estate, { kind, name }: FileSystem['on']): readonly string[] =>
  kind === 'volume' ? [name] : (estate.groups.get(name)?.members ?? []);

/** What is declared as existing, and is otherwise. */
export function* adoptedFaults(view: ChangeView, surveys: Surveys, asked: Asked): Iterable<Violation> {
  const { changes, allChanges, base, head, renames } = view;
  const adopted = adoptedIn(allChanges);
  const adopting = changes.flatMap((change) => {
    const thing = adoptedBy(change, adopted, renames);
    return thing === undefined ? [] : [{ change, thing }];
  });
  if (adopting.length === 0) return;
  const there = thereAlready(base.estate, head.estate, allChanges, renames);
  const compared = compareSurveys(there, surveys, base.prices);
  const wiped = new Set(
    allChanges.flatMap((change) => ('wipes' in change ? change.wipes.map(({ name }) => name) : [])),
  );
  const ofBranch = ({ kind, name }: FileSystem['on']): boolean =>
    (kind === 'volume' ? adopted.volumes : adopted.groups).has(name);
  const bySubject = new Map<string, Difference[]>();
  for (const each of compared.differences.filter(isOfDeclared)) {
    const key = subjectKey(ownerOf(each));
    bySubject.set(key, [...(bySubject.get(key) ?? []), each]);
  }
  for (const { change, thing } of adopting) {
    const { subject, place } = change;
    const { name, kind } = thing.subject;
    const different = (bySubject.get(subjectKey(thing.subject)) ?? []).filter(thing.isAbout);
    for (const each of different) {
      yield {
        subject,
        place,
        facet: `adopted ${each.message}`,
        message: `${name} is declared as existing, and ${shownIn(each, surveys)} shows otherwise: ${each.message}`,
        advice: [
          each.meaning ?? [],
          each.kind === 'not there'
            ? 'Declare it without existing: true if it is still to be created, or survey it again.'
            : 'Declare it as it is, or survey it again if that has changed since.',
        ]
          .flat()
          .join(' '),
      };
    }
    // What comes with its volume is seen with that.
    if (change.kind === 'file-system-adopted' && !ofBranch(change.after.on)) {
      const { on } = change.after;
      const here =
        on.kind === 'volume' ? baseName(renames.volumes, on.name) : baseName(renames.groups, on.name);
      for (const each of membersOf(base.estate, { kind: on.kind, name: here }))
        if ((base.estate.holders.get(each) ?? []).length > 0)
          yield* ageInGuest(change, each, `on which ${name} is declared as existing`, compared, asked);
    }
    if (kind !== 'volume' || different.some((each) => each.kind === 'not there')) continue;
    if (wiped.has(name)) {
      yield* ageInGuest(change, name, 'which is declared as existing and written over', compared, asked);
      yield* undeclaredOn(change, name, `the writing over of ${name}`, there, compared);
    } else {
      const seen = seenOf(there.volumes.get(name), compared, surveys);
      yield* ageOf(change, name, 'which is declared as existing', seen, asked);
    }
  }
}

/** What a branch only declares, by its name in `thereAlready`, and which differences are about that. */
interface AdoptedThing {
  readonly subject: Subject;
  readonly isAbout: (difference: Difference) => boolean;
}

function adoptedBy(
  change: Change,
  { volumes: ofBranch }: Adopted,
  renames: Renames,
): AdoptedThing | undefined {
  const whole = (subject: Subject): AdoptedThing => ({ subject, isAbout: () => true });
  const { kind } = change;
  if (kind === 'server-adopted' || kind === 'volume-adopted' || kind === 'group-adopted')
    return whole(change.after);
  // What it takes the place of is told as what is destroyed.
  if (kind === 'volume-re-created' && change.existing) return whole(change.after);
  if (kind === 'file-system-adopted') {
    const { on, mount } = change.after;
    const isNew = on.kind === 'volume' && ofBranch.has(on.name);
    const under = isNew ? on : baseSubject(renames, on);
    return whole({ kind: 'file-system', name: `${under.name}:${mount}` });
  }
  if (kind === 'attachment-adopted' && !ofBranch.has(change.volume.name)) {
    const name = baseName(renames.volumes, change.volume.name);
    return { subject: { kind: 'volume', name }, isAbout: ({ about }) => about === 'attachment' };
  }
  if (kind === 'member-adopted' && !ofBranch.has(change.volume)) {
    const name = baseName(renames.volumes, change.volume);
    return { subject: { kind: 'volume', name }, isAbout: ({ layer }) => layer === 'physical volume' };
  }
  return undefined;
}

/** What is left to do in a guest is as true of what is declared rightly; and what nobody declared is no declared thing. */
const isOfDeclared = ({ about, kind, subject }: Difference): boolean =>
  about !== 'guest' && (kind !== 'not declared' || subject.kind !== 'volume');

/** A volume that is declared blank is otherwise than declared where a file system is on it. */
const ownerOf = ({ kind, subject }: Difference): Subject =>
  kind === 'not declared' && subject.kind === 'file-system'
    ? { kind: 'volume', name: subject.name.split(':')[0] ?? '' }
    : subject;
