/** What surveys tell of a volume before anything is done to it: who shows it, of which day, who holds it, whether it is gone. */
import { listed } from '../base/wording.ts';
import type { Change } from '../change/change.ts';
import { daysBetween, isToCome } from '../estate/dates.ts';
import type { DeclaredThings, Estate, Volume } from '../estate/estate.ts';
import { unitBytes } from '../estate/size.ts';
import type { SurveyComparison, Surveys } from '../survey/compare.ts';
import { undeclaredContents } from '../survey/contents.ts';
import type { Difference } from '../survey/difference.ts';
import type { Level, Violation } from './rule.ts';

/** How new surveys are to be, and at which level it is told that they are not, or are missing. */
export interface Asked {
  readonly within: number | undefined;
  readonly tooOld: Level;
  readonly missing: Level;
  readonly on: string;
}

export const shownIn = ({ server }: Difference, { servers }: Surveys): string =>
  server === undefined
    ? 'the provider'
    : `a survey of ${servers.find((each) => each.server === server)?.at.slice(0, 10)}`;

/** When a volume was last surveyed, RFC 3339; undefined where no survey shows it. */
export function newestOf(
  volume: string,
  { matches }: SurveyComparison,
  { provider }: Surveys,
): string | undefined {
  return [
    ...(matches.disks.get(volume) ?? []).map(({ survey }) => survey.at),
    ...(matches.rows.has(volume) && provider !== undefined ? [provider.at] : []),
  ]
    .sort()
    .at(-1);
}

/** Likewise, where what is on it counts, which the provider's list does not show. */
export const newestInGuest = (volume: string, { matches }: SurveyComparison): string | undefined =>
  (matches.disks.get(volume) ?? [])
    .flatMap(({ survey }) => (survey.unseen.includes('superblocks') ? [] : survey.at))
    .sort()
    .at(-1);

/** Likewise, of what nothing is done to: of disks that are alike it need not be known which of them it is. */
export function seenOf(
  volume: Volume | undefined,
  compared: SurveyComparison,
  surveys: Surveys,
): string | undefined {
  if (volume === undefined) return undefined;
  const { candidates, rowCandidates } = compared.matches;
  const alike = (candidates.get(volume.name) ?? []).filter(({ disk }) => disk.size === volume.size);
  const listed = (rowCandidates.get(volume.name) ?? []).some(({ size }) => size === volume.size);
  return (
    newestOf(volume.name, compared, surveys) ??
    alike
      .map(({ survey }) => survey.at)
      .sort()
      .at(-1) ??
    (listed ? surveys.provider?.at : undefined)
  );
}

/** What is on a volume beside what is declared is lost with it, or taken out from under whoever uses it. */
export function* undeclaredOn(
  { subject, place }: Change,
  volume: string,
  what: string,
  estate: DeclaredThings,
  { matches }: SurveyComparison,
): Iterable<Violation> {
  for (const { survey, disk } of matches.disks.get(volume) ?? []) {
    const held = undeclaredContents(estate, survey, volume, disk);
    if (held.length === 0) continue;
    yield {
      subject,
      place,
      facet: `holds ${volume} ${survey.server}`,
      message: `${what} would lose or take away what main does not declare: by the survey of ${survey.at.slice(0, 10)}, ${volume} (${disk.name} on ${survey.server}) holds ${listed(held)}`,
      advice:
        'Find out what that is and who needs it. Declare it where it can be declared, or remove it; then survey the server again.',
    };
  }
}

/** What is smaller is a floppy drive, or a disk by which a provider configures a guest: common practice, without a source. */
const leastVolume = 64n * unitBytes.MiB;

/** What is attached to a server and not declared. */
export function* undeclaredAt(
  { subject, place }: Change,
  server: string,
  { differences, matches }: SurveyComparison,
): Iterable<Violation> {
  const here = matches.undeclared.filter(({ survey }) => survey.server === server);
  const noVolume = new Set(here.flatMap(({ disk }) => (disk.size < leastVolume ? disk.name : [])));
  for (const each of differences) {
    if (each.kind !== 'not declared' || each.subject.kind !== 'volume' || each.server !== server) continue;
    if (noVolume.has(each.subject.name)) continue;
    yield {
      subject,
      place,
      facet: `undeclared ${each.message}`,
      message: `${server} would go with what main does not declare: ${each.message}`,
      advice:
        'Find out what that is and who needs it; declare it, or detach it and delete it, and survey the server again.',
    };
  }
}

/**
 * What only a guest shows is not surveyed where the provider's list alone has the volume, nor by a survey that has not
 * seen what is on disks.
 */
export function* ageInGuest(
  change: Change,
  volume: string,
  which: string,
  compared: SurveyComparison,
  asked: Asked,
): Iterable<Violation> {
  const newest = newestInGuest(volume, compared);
  const isHalfSeen = newest === undefined && compared.matches.disks.has(volume);
  if (newest !== undefined || !(isHalfSeen || compared.matches.rows.has(volume))) {
    yield* ageOf(change, volume, which, newest, asked);
    return;
  }
  yield {
    subject: change.subject,
    place: change.place,
    facet: `missing ${volume}`,
    message: `no survey of a server shows what is on ${volume}, ${which}${isHalfSeen ? ': it was taken without the right, or the tool, to look at that' : ", and the provider's list does not show that"}`,
    advice:
      'Survey the server that holds it first, as root; where none does, attach it in a change of its own and survey it there.',
    atMost: asked.missing,
  };
}

export function* ageOf(
  { subject, place }: Change,
  volume: string,
  which: string,
  newest: string | undefined,
  { within, tooOld, missing, on }: Asked,
): Iterable<Violation> {
  const common = { subject, place };
  if (newest === undefined) {
    yield {
      ...common,
      facet: `missing ${volume}`,
      message: `no survey shows ${volume}, ${which}`,
      atMost: missing,
    };
    return;
  }
  const day = newest.slice(0, 10);
  const age = daysBetween(day, on);
  if (isToCome(day, on)) {
    yield {
      ...common,
      facet: `too old ${volume}`,
      message: `the newest survey of ${volume} is dated ${day}, after the day of the judgement`,
      advice: 'Set the clock of the server, survey it again, and delete that survey.',
      atMost: tooOld,
    };
  } else if (within !== undefined && age > within) {
    yield {
      ...common,
      facet: `too old ${volume}`,
      message: `the newest survey of ${volume} is of ${day}, ${age} days old, and at most ${within} are allowed`,
      atMost: tooOld,
    };
  }
}

/** It is taken out of the declarations, and is not there: of a list that is older than the volume that would be said as well. */
export const goneBy = ({ subject, place }: Change, volume: string, at: string): Violation => ({
  subject,
  place,
  facet: `gone ${volume}`,
  message: `the provider's list of ${at.slice(0, 10)} has no ${volume}, so that there is nothing left to delete`,
  advice:
    'Make sure that it is gone: a list that was taken before the volume was created has none of it, either.',
  atMost: 'note',
});

/** Whoever takes something away has to know who holds it, and where the guest does not show that, the list has to. */
export function* untoldHolders(
  change: Change,
  volumes: readonly string[],
  what: string,
  { matches, untoldHolders: untold }: SurveyComparison,
  { missing }: Asked,
): Iterable<Violation> {
  for (const volume of volumes) {
    const holders = untold.get(volume);
    if (holders === undefined || matches.disks.has(volume)) continue;
    const told =
      holders.length === 0
        ? 'does not say which server holds it'
        : `has it attached to ${listed(holders)}, which may be a server that is declared under another name`;
    yield {
      subject: change.subject,
      place: change.place,
      facet: `holder ${volume}`,
      message: `no survey shows which server holds ${volume}, and ${what} starts from that: the provider's list ${told}`,
      advice:
        'Declare the ids of the servers, as the provider has them, and survey the server that holds it, or take a list that says who holds each volume.',
      atMost: missing,
    };
  }
}

/**
 * Whether the provider's list, and every survey, show that what is deleted is gone already, and not merely called
 * otherwise: every row is another volume's without doubt, none bears its name, and others of its site are listed.
 */
export function isGone(
  change: Change,
  estate: Estate,
  { differences, matches }: SurveyComparison,
  { provider }: Surveys,
): boolean {
  if (change.kind !== 'volume-deleted') return false;
  const { name, site } = change.before;
  // A list of another account or site, or one without a row, shows nothing of it.
  if (![...matches.rows.keys()].some((each) => estate.volumes.get(each)?.site === site)) return false;
  const about = differences.filter(({ subject }) => subject.kind === 'volume' && subject.name === name);
  return (
    about.some(
      ({ layer, kind, meaning }) => layer === 'provider' && kind === 'not there' && meaning === undefined,
    ) &&
    matches.inferred.size === 0 &&
    !matches.rows.has(name) &&
    !matches.disks.has(name) &&
    (matches.candidates.get(name) ?? []).length === 0 &&
    provider?.volumes.every((row) => row.name !== name) === true
  );
}
