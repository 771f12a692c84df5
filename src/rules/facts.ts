/**
 * What a `shape` rule shows to its schema: one thing, or one change, as plain facts under the keys that the estate
 * files use. Sizes are numbers of GiB (2^30 bytes) under `size-gib` and `extent-gib`: a size written as 50 GB or as
 * 0.05 TB is then one number, exact up to 8 PiB. What is not declared is left out.
 *
 *     server        kind name id power boot guest type iops attachment-slots volumes team site labels
 *     volume        kind name id size-gib tier shareable protected owner reason retain-until file-system
 *                   volume-group servers team site labels
 *     volume-group  kind name extent-gib members layout stripes copies file-systems servers team labels
 *     file-system   kind name mount type size-gib on servers team site labels
 *     change        kind change subject before after volume server from to seat
 */
import type { Change } from '../change/change.ts';
import {
  type Belonging,
  type Declaration,
  type Estate,
  type FileSystem,
  serversOfFileSystem,
  serversOfGroup,
} from '../estate/estate.ts';
import { type Bytes, unitBytes } from '../estate/size.ts';

export type Fact = string | number | boolean | readonly Fact[] | { readonly [key: string]: Fact };

export type Facts = { readonly [key: string]: Fact };

/** Facts without what is undefined. Each is a property of its own, whatever a label is called. */
const facts = (given: Readonly<Record<string, Fact | undefined>>): Facts =>
  Object.fromEntries(
    Object.entries(given).flatMap(([key, value]) => (value === undefined ? [] : [[key, value] as const])),
  );

/** Exact: a whole number of bytes below 2^53 divided by a power of two. */
const gib = (size: Bytes): number => Number(size) / Number(unitBytes.GiB);

const belonging = ({ team, site, labels }: Belonging): Readonly<Record<string, Fact | undefined>> => ({
  team,
  site,
  labels: facts(labels),
});

export function declarationFacts(thing: Declaration, estate: Estate): Facts {
  switch (thing.kind) {
    case 'server':
      return facts({
        kind: 'server',
        name: thing.name,
        id: thing.id,
        power: thing.power,
        boot: thing.boot,
        guest: thing.guest,
        type: thing.type,
        iops: thing.iops,
        'attachment-slots': thing.attachmentSlots,
        volumes: (estate.held.get(thing.name) ?? []).map(({ volume }) => volume).sort(),
        ...belonging(thing),
      });
    case 'volume':
      return facts({
        kind: 'volume',
        name: thing.name,
        id: thing.id,
        'size-gib': gib(thing.size),
        tier: thing.tier,
        shareable: thing.shareable,
        protected: thing.protected,
        owner: thing.owner,
        reason: thing.reason,
        'retain-until': thing.retainUntil,
        'file-system': thing.fileSystem === undefined ? undefined : carried(thing.fileSystem),
        'volume-group': estate.groupOf.get(thing.name)?.name,
        servers: (estate.holders.get(thing.name) ?? []).map(({ server }) => server).sort(),
        ...belonging(thing),
      });
    case 'volume-group':
      return facts({
        kind: 'volume-group',
        name: thing.name,
        'extent-gib': gib(thing.extent),
        members: thing.members,
        layout: thing.layout.kind,
        stripes: thing.layout.kind === 'striped' ? thing.layout.stripes : undefined,
        copies: thing.layout.kind === 'mirrored' ? thing.layout.copies : undefined,
        'file-systems': thing.fileSystems.map(carried),
        servers: serversOfGroup(estate, thing),
        ...belonging(thing),
      });
    case 'file-system':
      return facts({
        kind: 'file-system',
        name: thing.name,
        ...carried(thing),
        on: facts(thing.on),
        servers: serversOfFileSystem(estate, thing),
        ...belonging(thing),
      });
  }
}

const carried = ({ mount, type, size }: FileSystem): Facts => facts({ mount, type, 'size-gib': gib(size) });

/** Each side of a change is shown as it is in its own revision. */
export function changeFacts(change: Change, base: Estate, head: Estate): Facts {
  const before = 'before' in change ? declarationFacts(change.before, base) : undefined;
  const after = 'after' in change ? declarationFacts(change.after, head) : undefined;
  const volume = 'volume' in change ? change.volume : undefined;
  return facts({
    kind: 'change',
    change: change.kind,
    subject: facts({ ...change.subject }),
    before,
    after,
    volume:
      typeof volume === 'object'
        ? declarationFacts(volume, change.kind === 'detached' ? base : head)
        : volume,
    server: 'server' in change ? change.server : undefined,
    from: 'from' in change ? change.from : undefined,
    to: 'to' in change ? change.to : undefined,
    seat: 'seat' in change ? change.seat : undefined,
  });
}
