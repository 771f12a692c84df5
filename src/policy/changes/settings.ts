/** What differs between the settings of two policies. */
import { onBase, onHead } from '../../change/place.ts';
import type { ListedPack, Settings, Site } from '../../estate/settings.ts';
import type { PolicyChange } from '../../rules/view.ts';
import { allNames, type Direction, policyChange } from './change.ts';
import { showLimit } from './limit.ts';

const listed = ({ providerList }: Settings): string | undefined =>
  providerList === undefined ? undefined : JSON.stringify(providerList);

const held = (pack: ListedPack | undefined): string | undefined =>
  pack && `${pack.path} in ${pack.commit} of ${pack.repository}`;

const noPacks: ReadonlyMap<string, ListedPack | undefined> = new Map();

const packKeys = ['repository', 'commit', 'path', 'sha256'] as const;

export function settingsChanges(base: Settings, head: Settings): readonly PolicyChange[] {
  if (base === head) return [];
  const place = onHead(head.place);
  const changes: PolicyChange[] = [];
  const differ = (
    direction: Direction,
    key: string,
    from: string | undefined,
    to: string | undefined,
    where: PolicyChange['place'] = place,
  ): void => {
    if (from !== to)
      changes.push(
        policyChange({ direction, of: 'settings', name: 'ullage.yaml', key, from, to, place: where }),
      );
  };
  differ('unknown', 'currency', base.currency, head.currency);
  differ('unknown', 'month', base.month, head.month);
  for (const key of ['storage', 'prices', 'policies', 'waivers', 'readings'] as const) {
    differ('unknown', `paths.${key}`, base.paths[key], head.paths[key]);
  }
  differ('neither', 'provider-list', listed(base), listed(head));
  // Which way that goes is told by the rules, which are compared with those of the packs in them.
  const [packsBefore, packsAfter] = [base.packs ?? noPacks, head.packs ?? noPacks];
  for (const name of allNames(packsBefore, packsAfter)) {
    const [old, now] = [packsBefore.get(name), packsAfter.get(name)];
    const where = now === undefined ? old && onBase(old.place) : onHead(now.place);
    if (old === undefined || now === undefined) {
      differ('neither', `packs.${name}`, held(old), held(now), where);
      continue;
    }
    const altered = packKeys.filter((key) => old[key] !== now[key]);
    // Another file has another digest: that is told by itself only where it is all that is otherwise.
    for (const key of altered.length > 1 ? altered.filter((each) => each !== 'sha256') : altered) {
      // From where it is fetched says whom the estate trusts to have it, whatever the digest is now.
      const direction = key === 'repository' ? 'unknown' : 'neither';
      differ(direction, `packs.${name}.${key}`, old[key], now[key], where);
    }
  }
  const teams = namesDirection(base.teams, head.teams);
  if (teams !== 'same') differ(teams, 'teams', shownNames(base.teams), shownNames(head.teams));
  const [before, after] = [[...base.sites.keys()], [...head.sites.keys()]];
  if ((before.length === 0) !== (after.length === 0)) {
    differ(before.length === 0 ? 'tighter' : 'looser', 'sites', shownNames(before), shownNames(after));
  }
  for (const name of allNames(base.sites, head.sites)) {
    const old = base.sites.get(name);
    const now = head.sites.get(name);
    const where = now === undefined ? old && onBase(old.place) : onHead(now.place);
    if (before.length > 0 && after.length > 0 && (old === undefined || now === undefined)) {
      // Nothing could be placed at a site that was not listed; and the policy that judges has no limit for it.
      differ(old === undefined ? 'looser' : 'tighter', `sites.${name}`, limitsOf(old), limitsOf(now), where);
      continue;
    }
    for (const [key, read] of siteLimits) {
      const [from, to] = [read(old), read(now)];
      if (from === to) continue;
      // No limit is the loosest limit.
      const looser = to === undefined || (from !== undefined && to > from);
      differ(looser ? 'looser' : 'tighter', `sites.${name}.${key}`, showLimit(from), showLimit(to), where);
    }
  }
  return changes;
}

/** A site's limits on one line, those it has not among them. */
const limitsOf = (site: Site | undefined): string | undefined =>
  site && siteLimits.map(([key, read]) => `${key} ${showLimit(read(site)) ?? 'unlimited'}`).join(', ');

const shownNames = (names: readonly string[]): string | undefined =>
  names.length === 0 ? undefined : names.join(', ');

/** Which way a list of names that may be used went. No list lets any name through, or none at all. */
function namesDirection(before: readonly string[], after: readonly string[]): Direction | 'same' {
  const came = after.some((name) => !before.includes(name));
  const left = before.some((name) => !after.includes(name));
  if (!came && !left) return 'same';
  if (before.length === 0) return 'tighter';
  return after.length === 0 || came ? 'looser' : 'tighter';
}

const siteLimits: readonly (readonly [string, (site: Site | undefined) => bigint | number | undefined])[] = [
  ['quota.volumes', (site) => site?.quota.volumes],
  ['quota.size', (site) => site?.quota.size],
  ['attachment-slots', (site) => site?.attachmentSlots],
];
