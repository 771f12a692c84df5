/** One estate file's values -> what it declares, typed, with the file's own defaults filled in. */

import { err, outcomeOf, type PartialOutcome, type Place, type Problem } from '../base/problem.ts';
import { FieldPlaces, type ReadDocument, type Step } from '../read/document.ts';
import type {
  EstateFile,
  FileSystemDeclaration,
  ServerDeclaration,
  VolumeDeclaration,
  VolumeGroupDeclaration,
  WholeVolumeFileSystemDeclaration,
} from '../read/generated/estate.ts';
import type { Mends } from '../read/mend.ts';
import { type Checked, validate } from '../read/validate.ts';
import { isDay } from './dates.ts';
import {
  type Attachment,
  type EstatePart,
  type FileSystem,
  type Layout,
  type Retired,
  type Server,
  unreadName,
  type Volume,
  type VolumeGroup,
} from './estate.ts';
import { extentProblem, usualExtent } from './extent.ts';
import { hidesNames } from './hidden-names.ts';
import { isMadeWith, type Making } from './made.ts';
import { type Bytes, exactSize, noBytes, parseSize } from './size.ts';

/** Reads what one estate file declares, or says everything that is wrong with it. */
export function readEstatePart(document: ReadDocument): PartialOutcome<EstatePart> {
  const valid = validate('estate', document);
  if (!valid.ok) return valid;
  const read = new PartReader(valid.value).read();
  return read.ok || !hidesNames(document.value, valid.value.mends) ? read : err(...read.problems);
}

/** Gathers problems while it reads, so that one run reports them all. */
class PartReader {
  readonly #document: ReadDocument;
  readonly #file: EstateFile;
  readonly #mends: Mends;
  readonly #problems: Problem[];

  constructor({ document, value, mends, problems }: Checked<'estate'>) {
    this.#document = document;
    this.#file = value;
    this.#mends = mends;
    this.#problems = [...problems];
  }

  read(): PartialOutcome<EstatePart> {
    const {
      team,
      site,
      labels,
      existing,
      servers = {},
      volumes = {},
      attachments = [],
      'volume-groups': groups = {},
      retired = [],
    } = this.#file;
    const part: EstatePart = {
      file: this.#document.file,
      defaults: { team, site, labels, existing },
      fields: this.#document.fieldsIn(this.#file),
      servers: Object.entries(servers).map(([name, declared]) => this.#server(servers, name, declared)),
      volumes: Object.entries(volumes).map(([name, declared]) => this.#volume(volumes, name, declared)),
      attachments: attachments.map(
        ({ volume, server, existing }, index): Attachment => ({
          volume: this.#name(volume, ['attachments', index], 'volume'),
          server: this.#name(server, ['attachments', index], 'server'),
          boot: false,
          existing,
          place: this.#document.placeIn(attachments, index),
        }),
      ),
      groups: Object.entries(groups).map(([name, declared]) => this.#group(groups, name, declared)),
      retired: retired.map(
        (record, index): Retired => ({
          name: this.#mends.in(['retired', index])
            ? unreadName
            : (record.volume ?? record['file-system'] ?? ''),
          on: this.#day(record.on, ['retired', index, 'on']),
          reason: record.reason,
          backup: record.backup,
          backedUp:
            record['backed-up'] === undefined
              ? undefined
              : this.#day(record['backed-up'], ['retired', index, 'backed-up']),
          place: this.#document.placeIn(retired, index),
        }),
      ),
    };
    return outcomeOf(part, this.#problems);
  }

  #server(servers: object, name: string, declared: ServerDeclaration): Server {
    const path = ['servers', name];
    return {
      kind: 'server',
      name,
      id: this.#optional(declared.id, path, 'id'),
      power: declared.power ?? 'running',
      boot: this.#optional(declared.boot, path, 'boot'),
      guest: declared.guest,
      type: this.#optional(declared.type, path, 'type'),
      iops: declared.iops,
      attachmentSlots: declared['attachment-slots'],
      existing: this.#existing(declared),
      formerly: this.#optional(declared.formerly, path, 'formerly'),
      ...this.#belonging(declared, path),
      ...this.#declared(servers, name),
    };
  }

  #volume(volumes: object, name: string, declared: VolumeDeclaration): Volume {
    const path = ['volumes', name];
    const size = this.#size(declared.size, [...path, 'size']);
    const belonging = this.#belonging(declared, path);
    const whole = this.#mends.at(path, 'file-system', 'mount') ? undefined : declared['file-system'];
    const retainUntil = declared['retain-until'];
    const within =
      whole?.size === undefined ? size : this.#size(whole.size, [...path, 'file-system', 'size']);
    // A size that does not read is told of by itself.
    if (size > 0n && within > size) {
      this.#refuse(
        [...path, 'file-system', 'size'],
        `the file system ${whole?.mount} of ${exactSize(within)} does not fit its volume ${name} of ${exactSize(size)}`,
        'Grow the volume first, or correct the size.',
      );
    }
    return {
      kind: 'volume',
      name,
      id: this.#optional(declared.id, path, 'id'),
      size,
      tier: this.#name(declared.tier, path, 'tier'),
      shareable: declared.shareable ?? false,
      protected: declared.protected ?? false,
      owner: declared.owner,
      reason: declared.reason,
      retainUntil: retainUntil === undefined ? undefined : this.#day(retainUntil, [...path, 'retain-until']),
      fileSystem:
        whole === undefined
          ? undefined
          : {
              kind: 'file-system',
              name: `${name}:${whole.mount}`,
              mount: whole.mount,
              type: whole.type,
              existing: whole.existing ?? this.#existing(declared),
              making: this.#making(whole, [...path, 'file-system']),
              size: within,
              on: { kind: 'volume', name },
              ...belonging,
              ...this.#declared(declared, 'file-system'),
            },
      existing: this.#existing(declared),
      formerly: this.#optional(declared.formerly, path, 'formerly'),
      ...belonging,
      ...this.#declared(volumes, name),
    };
  }

  #group(groups: object, name: string, declared: VolumeGroupDeclaration): VolumeGroup {
    const path = ['volume-groups', name];
    const belonging = this.#belonging(declared, path);
    const systems = declared['file-systems'] ?? {};
    const members = declared.members.filter((_, index) => !this.#mends.at(path, 'members', index));
    const seen = new Set<string>();
    for (const [index, member] of declared.members.entries()) {
      if (this.#mends.at(path, 'members', index)) continue;
      if (seen.size === seen.add(member).size) {
        this.#refuse(
          [...path, 'members', index],
          `${member} is named twice among the members of ${name}`,
          'Name each member once.',
        );
      }
    }
    return {
      kind: 'volume-group',
      name,
      extent:
        declared.extent === undefined ? usualExtent : this.#extent(declared.extent, [...path, 'extent']),
      members,
      layout: this.#layout(declared, path),
      existing: this.#existing(declared),
      fileSystems: Object.entries(systems).map(
        ([mount, system]): FileSystem => ({
          kind: 'file-system',
          name: `${name}:${mount}`,
          mount,
          type: system.type,
          existing: system.existing ?? this.#existing(declared),
          making: this.#making(system, [...path, 'file-systems', mount]),
          size: this.#size(system.size, [...path, 'file-systems', mount, 'size']),
          on: { kind: 'volume-group', name },
          ...belonging,
          ...this.#declared(systems, mount),
        }),
      ),
      formerly: this.#optional(declared.formerly, path, 'formerly'),
      ...belonging,
      ...this.#declared(groups, name),
    };
  }

  /** What a thing says of itself, or its file of all in it. */
  #existing({ existing }: { readonly existing?: boolean }): boolean {
    return existing ?? this.#file.existing ?? false;
  }

  #layout(declared: VolumeGroupDeclaration, path: readonly Step[]): Layout {
    // How many members there are is not known where one of them does not read.
    if (this.#mends.in([...path, 'members'])) return { kind: 'linear' };
    const members = declared.members.length;
    const { layout = 'linear' } = declared;
    switch (layout) {
      case 'striped': {
        const stripes = declared.stripes ?? members;
        if (stripes > members || stripes < 2) {
          this.#refuse(
            [...path, declared.stripes === undefined ? 'layout' : 'stripes'],
            `a striped layout over ${stripes} needs at least ${Math.max(2, stripes)} members, and there are ${members}`,
            'Add members, or lower stripes.',
          );
        }
        return { kind: 'striped', stripes };
      }
      case 'mirrored': {
        const copies = declared.copies ?? 2;
        if (copies > members) {
          this.#refuse(
            [...path, declared.copies === undefined ? 'layout' : 'copies'],
            `${copies} copies need at least ${copies} members, and there are ${members}`,
            'Each copy is on a member of its own: add members, or lower copies.',
          );
        }
        return { kind: 'mirrored', copies };
      }
      case 'linear':
        return { kind: 'linear' };
    }
  }

  #belonging(
    declared: {
      readonly team?: string;
      readonly site?: string;
      readonly labels?: Readonly<Record<string, string>>;
    },
    path: readonly Step[],
  ): Pick<Server, 'team' | 'site' | 'labels'> {
    const own = declared.labels;
    const shared = this.#file.labels;
    const named = (key: 'team' | 'site'): string | undefined => {
      const its = declared[key];
      if (its !== undefined) return this.#name(its, path, key);
      const ofFile = this.#file[key];
      return ofFile === undefined ? undefined : this.#name(ofFile, [], key);
    };
    return {
      team: named('team'),
      site: named('site'),
      labels: own === undefined ? (shared ?? noLabels) : { ...shared, ...own },
    };
  }

  #declared(container: object, key: string): { place: Place; fields: FieldPlaces } {
    const declared: unknown = Reflect.get(container, key);
    return {
      place: this.#document.placeIn(container, key),
      fields:
        typeof declared === 'object' && declared !== null
          ? this.#document.fieldsIn(declared)
          : new FieldPlaces(),
    };
  }

  /** A name, or none that anything is called where the schema refused it. */
  #name(name: string, path: readonly Step[], key: Step): string {
    return this.#mends.at(path, key) ? unreadName : name;
  }

  #optional(name: string | undefined, path: readonly Step[], key: Step): string | undefined {
    return this.#mends.at(path, key) ? undefined : name;
  }

  #size(text: string, path: readonly Step[]): Bytes {
    if (this.#mends.at(path)) return noBytes;
    const size = parseSize(text);
    if (typeof size !== 'bigint') {
      this.#refuse(path, size.why, 'Write a whole number of bytes in a unit, such as 50 GiB.');
      return noBytes;
    }
    if (size === 0n) this.#refuse(path, 'a size cannot be zero', 'Write the size that is provisioned.');
    return size;
  }

  #extent(text: string, path: readonly Step[]): Bytes {
    const size = this.#size(text, path);
    const problem = size > 0n ? extentProblem(size) : undefined;
    if (problem !== undefined) {
      this.#refuse(
        path,
        `no group can have an extent of ${text}: ${problem}`,
        'Use 4 MiB, 64 MiB or the like.',
      );
    }
    return size;
  }

  #making(declared: MakingDeclaration, path: readonly Step[]): Making {
    for (const [key, of] of makingKeys) {
      if (declared[key] !== undefined && !isMadeWith(declared.type, of)) {
        this.#refuse(
          [...path, key],
          `${key} says nothing of ${declared.type === 'swap' ? 'swap' : `a file system of the type ${declared.type}`}`,
          key === 'reverse-map'
            ? 'Take it out; it is for xfs.'
            : `Take it out; it is for ext2, ext3${key === 'block-size' ? ', ext4 and xfs' : ' and ext4'}.`,
        );
      }
    }
    const blockSize = declared['block-size'];
    const ratio = declared['inode-ratio'];
    return {
      reserve: declared.reserve,
      blockSize:
        blockSize === undefined ? undefined : this.#within(blockSize, [...path, 'block-size'], blockSizes),
      inodeRatio:
        ratio === undefined ? undefined : this.#within(ratio, [...path, 'inode-ratio'], inodeRatios),
      reverseMap: declared['reverse-map'],
    };
  }

  #within(text: string, path: readonly Step[], { from, to, powers, advice }: SizeBounds): Bytes {
    const size = this.#size(text, path);
    const fits = size >= from && size <= to && (!powers || (size & (size - 1n)) === 0n);
    if (size > 0n && !fits) this.#refuse(path, `no file system is made with ${text} here`, advice);
    return size;
  }

  #day(text: string, path: readonly Step[]): string {
    if (!isDay(text))
      this.#refuse(path, `${text} is not a day in the calendar`, 'Write a full date such as 2026-11-20.');
    return text;
  }

  #refuse(path: readonly Step[], message: string, advice: string): void {
    const place = this.#document.placeOfValue(path);
    this.#problems.push({ place, message, advice, excerpt: this.#document.excerpt(place) });
  }
}

/** What the two ways to declare a file system have in common. */
type MakingDeclaration = Pick<
  FileSystemDeclaration & WholeVolumeFileSystemDeclaration,
  'type' | 'reserve' | 'block-size' | 'inode-ratio' | 'reverse-map'
>;

const makingKeys = [
  ['reserve', 'reserve'],
  ['block-size', 'blockSize'],
  ['inode-ratio', 'inodeRatio'],
  ['reverse-map', 'reverseMap'],
] as const;

interface SizeBounds {
  readonly from: bigint;
  readonly to: bigint;
  readonly powers: boolean;
  readonly advice: string;
}

/** Source: mke2fs(8) of e2fsprogs 1.47.0 and mkfs.xfs(8) of xfsprogs 6.1.0, and what both refuse. */
const blockSizes: SizeBounds = {
  from: 1024n,
  to: 65_536n,
  powers: true,
  advice: 'A block is a power of two from 1 KiB to 64 KiB; 4 KiB is usual.',
};

const inodeRatios: SizeBounds = {
  from: 1024n,
  to: 1n << 26n,
  powers: false,
  advice: 'The bytes for each inode are from 1 KiB to 64 MiB; 16 KiB is usual.',
};

const noLabels: Readonly<Record<string, string>> = {};
