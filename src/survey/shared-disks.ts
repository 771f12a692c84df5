/**
 * One volume that several servers show, each as a disk of its own. A serial number alone does not tell: some hosts number
 * the disks of every server alike, and what is cloned has the same file systems. The provider's list does, where one row
 * has that identifier; so does a file system that is made to be shared.
 */
import { byText } from '../base/order.ts';
import { fileSystemFacts } from '../estate/file-system-facts.ts';
import { disksUnder, isKnownType, type Matches } from './match.ts';
import type { SurveyedDisk } from './match-rows.ts';
import { onlyPairs, shown } from './only.ts';
import type { SurveyedDevice } from './survey.ts';

/** Each disk that is a volume which a server before it, in order of name, shows; with the disk that it is there. */
export function sharedDisks({
  undeclared,
  undeclaredRows,
}: Pick<Matches, 'undeclared' | 'undeclaredRows'>): ReadonlyMap<SurveyedDevice, SurveyedDevice> {
  const listed = new Map(onlyPairs(undeclaredRows, ({ id }) => (id === undefined ? undefined : shown(id))));
  const bySerial = new Map<string, SurveyedDisk[]>();
  for (const each of undeclared) {
    const { serial } = each.disk;
    if (serial !== undefined) bySerial.set(serial, [...(bySerial.get(serial) ?? []), each]);
  }
  const shared = new Map<SurveyedDevice, SurveyedDevice>();
  for (const [serial, disks] of bySerial) {
    const [first, ...others] = disks.sort((a, b) => byText(a.survey.server, b.survey.server));
    if (first === undefined || new Set(disks.map(({ survey }) => survey)).size < disks.length) continue;
    const made = sharedSystems(first);
    for (const other of others) {
      const isOne = listed.has(serial) || sharedSystems(other).some((id) => made.includes(id));
      if (isOne && other.disk.size === first.disk.size) shared.set(other.disk, first.disk);
    }
  }
  return shared;
}

/** The identifiers of the file systems on a disk that several servers may mount. */
const sharedSystems = ({ survey, disk }: SurveyedDisk): readonly string[] =>
  survey.fileSystems.flatMap(({ id, type, device }) => {
    const isMeant = isKnownType(type) && fileSystemFacts(type).clusterAware;
    return id !== undefined && isMeant && disksUnder(survey, device).includes(disk) ? [id] : [];
  });
