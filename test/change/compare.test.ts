import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Change, ChangeKind } from '../../src/change/change.ts';
import { compareEstates } from '../../src/change/compare.ts';
import { changeKinds, describeChange, destroys } from '../../src/change/kinds.ts';
import { estateOf, type Files } from '../estate/builder.ts';
import { change, filesOf } from '../estate/random.ts';

const changes = (before: Files | string, after: Files | string): readonly Change[] =>
  compareEstates(estateOf(before), estateOf(after)).changes;

const told = (before: Files | string, after: Files | string): readonly string[] =>
  changes(before, after).map(describeChange);

const ends = `
servers:
  scanner: { boot: root }
  plotter: {}
volumes:
  root: { size: 50 GiB, tier: steady }
`;
const volume = (rest: string): string => `volumes:\n  plates-1: { ${rest} }\n`;
const server = (rest: string): string => `servers:\n  scanner: { ${rest} }\n`;
const group = (rest: string): string =>
  `volumes:\n  a: { size: 40 GiB, tier: bulk }\n  b: { size: 40 GiB, tier: bulk }\nvolume-groups:\n  plates: { ${rest} }\n`;
const system = (rest: string): string => group(`members: [a], file-systems: { ${rest} }`);
const on = (holders: string): string =>
  `servers: { scanner: {}, plotter: {} }\n${volume('size: 40 GiB, tier: bulk')}attachments: [${holders}]\n`;
const held = (name: string): string => `{ volume: plates-1, server: ${name} }`;

/** One change of each kind, by itself, and how it is told. */
const each: readonly (readonly [ChangeKind, string, string, string])[] = [
  ['server-created', '', server(''), 'server scanner is created, running'],
  ['server-adopted', '', server('existing: true'), 'server scanner is declared as existing, running'],
  ['server-deleted', server(''), '', 'server scanner is deleted'],
  [
    'server-renamed',
    server(''),
    'servers: { reader: { formerly: scanner } }\n',
    'server scanner is renamed reader',
  ],
  ['server-started', server('power: stopped'), server('power: running'), 'server scanner is started'],
  ['server-stopped', server(''), server('power: stopped'), 'server scanner is stopped'],
  [
    'server-changed-type',
    server(''),
    server('type: small'),
    'server scanner changes from server type none to small',
  ],
  [
    'server-moved-site',
    server('site: north-quay'),
    server('site: south-quay'),
    'server scanner moves from site north-quay to south-quay',
  ],
  [
    'server-changed-team',
    server('team: imagery'),
    server('team: ledger'),
    'server scanner changes from team imagery to ledger',
  ],
  [
    'server-changed-id',
    server('id: srv-1'),
    server('id: srv-2'),
    'server scanner changes from the id srv-1 to srv-2, which makes it another server',
  ],
  ['server-edited', server('iops: 100'), server('iops: 200'), 'server scanner: IOPS changes from 100 to 200'],
  ['volume-created', '', volume('size: 40 GiB, tier: bulk'), 'volume plates-1 is created: 40 GiB, tier bulk'],
  [
    'volume-adopted',
    '',
    volume('size: 40 GiB, tier: bulk, existing: true'),
    'volume plates-1 is declared as existing: 40 GiB, tier bulk',
  ],
  ['volume-deleted', volume('size: 40 GiB, tier: bulk'), '', 'volume plates-1 is deleted (40 GiB)'],
  [
    'volume-renamed',
    volume('size: 40 GiB, tier: bulk'),
    'volumes: { p1: { size: 40 GiB, tier: bulk, formerly: plates-1 } }\n',
    'volume plates-1 is renamed p1',
  ],
  [
    'volume-grown',
    volume('size: 40 GiB, tier: bulk'),
    volume('size: 60 GiB, tier: bulk'),
    'volume plates-1 grows from 40 GiB to 60 GiB, by 20 GiB',
  ],
  [
    'volume-shrunk',
    volume('size: 50 GiB, tier: bulk'),
    volume('size: 50 GB, tier: bulk'),
    'volume plates-1 shrinks from 50 GiB to 50 GB, by ≈3.43 GiB',
  ],
  [
    'volume-moved-tier',
    volume('size: 40 GiB, tier: bulk'),
    volume('size: 40 GiB, tier: brisk'),
    'volume plates-1 moves from tier bulk to brisk',
  ],
  [
    'volume-moved-site',
    volume('size: 40 GiB, tier: bulk, site: north-quay'),
    volume('size: 40 GiB, tier: bulk, site: south-quay'),
    'volume plates-1 moves from site north-quay to south-quay',
  ],
  [
    'volume-changed-id',
    volume('size: 40 GiB, tier: bulk, id: vol-1'),
    volume('size: 40 GiB, tier: bulk, id: vol-2'),
    'volume plates-1 changes from the id vol-1 to vol-2, which makes it another volume',
  ],
  [
    'volume-changed-team',
    volume('size: 40 GiB, tier: bulk, team: imagery'),
    volume('size: 40 GiB, tier: bulk'),
    'volume plates-1 changes from team imagery to none',
  ],
  [
    'volume-unprotected',
    volume('size: 40 GiB, tier: bulk, protected: true'),
    volume('size: 40 GiB, tier: bulk'),
    'volume plates-1 loses its protection against deletion',
  ],
  [
    'volume-edited',
    volume('size: 40 GiB, tier: bulk'),
    volume('size: 40 GiB, tier: bulk, reason: kept'),
    'volume plates-1: reason changes from none to kept',
  ],
  ['attached', on(''), on(held('scanner')), 'volume plates-1 is attached to scanner'],
  [
    'attachment-adopted',
    on(''),
    on('{ volume: plates-1, server: scanner, existing: true }'),
    'volume plates-1 is declared as attached to scanner already',
  ],
  ['detached', on(held('scanner')), on(''), 'volume plates-1 is detached from scanner'],
  [
    'handed-over',
    on(held('scanner')),
    on(held('plotter')),
    'volume plates-1 is moved from scanner to plotter',
  ],
  [
    'group-created',
    'volumes:\n  a: { size: 40 GiB, tier: bulk }\n  b: { size: 40 GiB, tier: bulk }\n',
    group('members: [a, b]'),
    'volume group plates is created on a, b, and any data on a, b is overwritten',
  ],
  [
    'group-adopted',
    'volumes:\n  a: { size: 40 GiB, tier: bulk }\n  b: { size: 40 GiB, tier: bulk }\n',
    group('members: [a, b], existing: true'),
    'volume group plates is declared as existing on a, b',
  ],
  [
    'group-deleted',
    group('members: [a, b]'),
    'volumes:\n  a: { size: 40 GiB, tier: bulk }\n  b: { size: 40 GiB, tier: bulk }\n',
    'volume group plates is dissolved',
  ],
  [
    'group-renamed',
    group('members: [a]'),
    group('members: [a]').replace('plates: {', 'charts: { formerly: plates,'),
    'volume group plates is renamed charts',
  ],
  [
    'member-joined',
    group('members: [a]'),
    group('members: [a, b]'),
    'volume b joins the volume group plates, and any data on it is overwritten',
  ],
  ['member-left', group('members: [a, b]'), group('members: [a]'), 'volume b leaves the volume group plates'],
  [
    'group-edited',
    group('members: [a]'),
    group('members: [a], extent: 64 MiB'),
    'volume group plates changes from extents of 4 MiB to 64 MiB',
  ],
  [
    'file-system-created',
    system(''),
    system('/plates: { size: 30 GiB, type: xfs }'),
    'file system /plates on plates is created: 30 GiB, xfs',
  ],
  [
    'file-system-adopted',
    group('members: [a]'),
    system('/a: { size: 10 GiB, type: xfs, existing: true }'),
    'file system /a on plates is declared as existing: 10 GiB, xfs',
  ],
  [
    'file-system-deleted',
    system('/plates: { size: 30 GiB, type: xfs }'),
    system(''),
    'file system /plates on plates is deleted (30 GiB)',
  ],
  [
    'file-system-grown',
    system('/plates: { size: 30 GiB, type: xfs }'),
    system('/plates: { size: 35 GiB, type: xfs }'),
    'file system /plates on plates grows from 30 GiB to 35 GiB',
  ],
  [
    'file-system-shrunk',
    system('/plates: { size: 30 GiB, type: ext4 }'),
    system('/plates: { size: 25 GiB, type: ext4 }'),
    'file system /plates on plates shrinks from 30 GiB to 25 GiB',
  ],
  [
    'file-system-remounted',
    system('/plates: { size: 30 GiB, type: xfs }'),
    system('/charts: { size: 30 GiB, type: xfs }'),
    'file system /plates on plates is remounted at /charts',
  ],
  [
    'file-system-remade',
    system('/plates: { size: 30 GiB, type: ext4 }'),
    system('/plates: { size: 30 GiB, type: xfs }'),
    'file system /plates on plates is reformatted from ext4 to xfs',
  ],
  [
    'file-system-edited',
    system('/plates: { size: 30 GiB, type: ext4 }'),
    system('/plates: { size: 30 GiB, type: ext4, reserve: 0.01 }'),
    'file system /plates on plates: a reserve of 5 % becomes a reserve of 1 %',
  ],
];

describe('every kind of change', () => {
  it.each(each)('%s', (kind, before, after, words) => {
    const found = changes(before, after);
    expect(found.map((one) => one.kind)).toEqual([kind]);
    expect(found.map(describeChange)).toEqual([words]);
  });

  it('has its case here, but for those that never come alone, or only with surveys', () => {
    const alone = new Set<string>(each.map(([kind]) => kind));
    expect(changeKinds.filter((kind) => !alone.has(kind))).toEqual([
      'boot-swapped',
      'volume-re-created',
      'volume-corrected',
      'member-adopted',
      'file-system-corrected',
    ]);
  });

  it('what is gone is shown where it last stood, on the base', () => {
    const [gone] = changes(volume('size: 40 GiB, tier: bulk'), '');
    expect(gone?.place).toMatchObject({ revision: 'base', line: 2 });
  });

  it('says of each whether it destroys what no one can bring back without a backup', () => {
    const destructive = each
      .filter(([, before, after]) => changes(before, after).some(destroys))
      .map(([kind]) => kind);
    expect(destructive.sort()).toEqual(
      [
        'file-system-deleted',
        'file-system-remade',
        'file-system-shrunk',
        'group-created',
        'group-deleted',
        'member-joined',
        'volume-changed-id',
        'volume-deleted',
        'volume-moved-site',
        'volume-shrunk',
      ].sort(),
    );
  });
});

describe('how a file system is made', () => {
  const told = (before: string, after: string) =>
    changes(
      system(`/plates: { size: 30 GiB, ${before} }`),
      system(`/plates: { size: 30 GiB, ${after} }`),
    ).map((one) => [one.kind, destroys(one), describeChange(one)]);

  it.each([
    ['type: ext4', 'type: ext4, block-size: 1 KiB', 'blocks of 4 KiB becomes blocks of 1 KiB'],
    [
      'type: ext4',
      'type: ext4, inode-ratio: 64 KiB',
      'an inode for each 16 KiB becomes an inode for each 64 KiB',
    ],
    ['type: xfs', 'type: xfs, reverse-map: true', 'no reverse map becomes a reverse map'],
  ])('cannot be changed as it lies: %s to %s', (before, after, words) => {
    expect(told(before, after)).toEqual([
      ['file-system-remade', true, `file system /plates on plates is reformatted: ${words}`],
    ]);
  });

  it('is no other for being written down: the default of the tool is what it was made with', () => {
    expect(told('type: ext4', 'type: ext4, reserve: 0.05, block-size: 4 KiB, inode-ratio: 16 KiB')).toEqual(
      [],
    );
    expect(told('type: xfs', 'type: xfs, reverse-map: false')).toEqual([]);
  });

  it('of one that is only declared as it lies is told better, and nothing is made over', () => {
    expect(told('type: xfs, existing: true', 'type: xfs, existing: true, reverse-map: true')).toEqual([
      ['file-system-edited', false, 'file system /plates on plates: no reverse map becomes a reverse map'],
    ]);
  });

  it('stays what it was when the file system grows past the size at which the tool makes it otherwise', () => {
    const small = '/plates: { size: 400 MiB, type: ext4 }';
    const large = '/plates: { size: 600 MiB, type: ext4 }';
    expect(changes(system(small), system(large)).map(({ kind }) => kind)).toEqual(['file-system-grown']);
  });
});

describe('a site that nobody had written down', () => {
  it('is told, which moves nothing and makes nothing anew', () => {
    const told = (before: string, after: string) =>
      changes(before, after).map((one) => [one.kind, destroys(one), describeChange(one)]);
    expect(
      told(volume('size: 40 GiB, tier: bulk'), volume('size: 40 GiB, tier: bulk, site: south-quay')),
    ).toEqual([['volume-edited', false, 'volume plates-1: site changes from none to south-quay']]);
    expect(told(server(''), server('site: south-quay'))).toEqual([
      ['server-edited', false, 'server scanner: site changes from none to south-quay'],
    ]);
  });

  it('is not taken out again on the way to another one', () => {
    const kinds = (before: string, after: string) => changes(before, after).map(({ kind }) => kind);
    expect(
      kinds(volume('size: 40 GiB, tier: bulk, site: north-quay'), volume('size: 40 GiB, tier: bulk')),
    ).toEqual(['volume-moved-site']);
    expect(kinds(server('site: north-quay'), server(''))).toEqual(['server-moved-site']);
  });
});

describe('what is written over', () => {
  const kinds = (before: string, after: string) =>
    changes(before, after).map((one) => [one.kind, destroys(one)]);
  const old = 'volumes:\n  a: { size: 40 GiB, tier: bulk }\n';

  it('is nothing on volumes that come with their group', () => {
    expect(kinds('{}\n', group('members: [a, b]'))).toEqual([
      ['volume-created', false],
      ['volume-created', false],
      ['group-created', false],
    ]);
  });

  it('is nothing where the group, or the file system, lies there already and is only declared', () => {
    const both = 'volumes:\n  a: { size: 40 GiB, tier: bulk }\n  b: { size: 40 GiB, tier: bulk }\n';
    expect(kinds(both, group('members: [a, b], existing: true'))).toEqual([['group-adopted', false]]);
    const declared = old.replace('bulk }', 'bulk, file-system: { mount: /a, type: xfs, existing: true } }');
    expect(kinds(old, declared)).toEqual([['file-system-adopted', false]]);
  });

  it('is whatever lay on a volume that comes to a group now, however long the group has been there', () => {
    const both = 'volumes:\n  a: { size: 40 GiB, tier: bulk }\n  b: { size: 40 GiB, tier: bulk }\n';
    const groupOf = (members: string) => `${both}volume-groups:\n  plates: { ${members} }\n`;
    expect(kinds(groupOf('members: [a]'), groupOf('members: [a, b], existing: true'))).toEqual([
      ['member-joined', true],
    ]);
  });

  it('is whatever lay on a volume that was there before and gets its first file system', () => {
    const made = old.replace('bulk }', 'bulk, file-system: { mount: /a, type: xfs } }');
    expect(kinds(old, made)).toEqual([['file-system-created', true]]);
  });

  it('is told from a move of the mount point only where nothing else came or went', () => {
    expect(
      kinds(system('/a: { size: 10 GiB, type: xfs }'), system('/b: { size: 10 GiB, type: ext4 }')),
    ).toEqual([
      ['file-system-deleted', true],
      ['file-system-created', false],
    ]);
  });
});

describe('one volume in the place of another', () => {
  const member = (name: string, size: string): string =>
    `volumes:\n  ${name}: { size: ${size}, tier: bulk }\nvolume-groups:\n  plates: { members: [${name}] }\n`;

  it('a member of a group deleted, and a smaller one created in its seat', () => {
    const found = changes(member('plates-1', '40 GiB'), member('plates-9', '20 GiB'));
    expect(found.map(({ kind }) => kind)).toContain('volume-re-created');
    expect(found.map(describeChange)).toContain(
      'volume plates-1 (40 GiB) is deleted and plates-9 (20 GiB) created in its place, as a member of the volume group plates',
    );
  });

  it('a boot volume deleted, and another created for the same server', () => {
    const booted = (name: string): string =>
      `servers: { scanner: { boot: ${name} } }\nvolumes: { ${name}: { size: 50 GiB, tier: steady } }\n`;
    const kinds = changes(booted('root'), booted('root-2')).map(({ kind }) => kind);
    expect(kinds).toContain('boot-swapped');
    expect(kinds).toContain('volume-re-created');
  });

  it('a volume deleted, and another mounted where it was', () => {
    const mounted = (name: string): string =>
      `servers: { scanner: {} }\nvolumes: { ${name}: { size: 50 GiB, tier: bulk, file-system: { mount: /plates, type: xfs } } }\nattachments: [ { volume: ${name}, server: scanner } ]\n`;
    expect(told(mounted('old'), mounted('new')).join()).toContain(
      'created in its place, at /plates on scanner',
    );
  });

  it('two unrelated volumes side by side on one server are no re-creation', () => {
    const beside = (name: string): string =>
      `servers: { scanner: {} }\nvolumes: { ${name}: { size: 50 GiB, tier: bulk } }\nattachments: [ { volume: ${name}, server: scanner } ]\n`;
    expect(
      changes(beside('old'), beside('new'))
        .map(({ kind }) => kind)
        .sort(),
    ).toEqual(['attached', 'detached', 'volume-created', 'volume-deleted'].sort());
  });
});

describe('what is no change', () => {
  it('moving a declaration to another file', () => {
    const text = volume('size: 40 GiB, tier: bulk, team: imagery');
    expect(changes({ 'storage/a.yaml': text }, { 'storage/deep/b.yaml': `# moved\n${text}` })).toEqual([]);
  });

  it('writing the same size in another unit, and the same default out in full', () => {
    expect(
      changes(volume('size: 1 TiB, tier: bulk'), volume('size: 1024 GiB, tier: bulk, protected: false')),
    ).toEqual([]);
  });

  it('an id that is told for the first time, or no longer', () => {
    const named = server('id: srv-1').concat(volume('size: 40 GiB, tier: bulk, id: vol-1'));
    const bare = server('').concat(volume('size: 40 GiB, tier: bulk'));
    expect(changes(bare, named)).toEqual([]);
    expect(changes(named, bare)).toEqual([]);
  });

  it('a formerly line that main has carried out already', () => {
    const now = 'volumes: { p1: { size: 40 GiB, tier: bulk, formerly: plates-1 } }\n';
    expect(changes(now, `# tidied\n${now}`)).toEqual([]);
    expect(changes(now, 'volumes: { p1: { size: 40 GiB, tier: bulk } }\n')).toEqual([]);
  });

  it('a server renamed keeps its boot volume, its attachments and its groups', () => {
    const named = (name: string, formerly = ''): string =>
      `${ends.replaceAll('scanner: { boot: root }', `${name}: { boot: root${formerly} }`)}  plates-1: { size: 1 GiB, tier: bulk }\nattachments: [ { volume: plates-1, server: ${name} } ]\n`;
    expect(changes(named('scanner'), named('reader', ', formerly: scanner')).map(({ kind }) => kind)).toEqual(
      ['server-renamed'],
    );
  });

  it('a volume renamed keeps its seat in its group, and a rename does not hide a shrink', () => {
    const member = (name: string, rest: string): string =>
      `volumes:\n  ${name}: { tier: bulk, ${rest} }\nvolume-groups:\n  plates: { members: [${name}] }\n`;
    expect(
      changes(member('a', 'size: 40 GiB'), member('b', 'size: 39 GiB, formerly: a'))
        .map(({ kind }) => kind)
        .sort(),
    ).toEqual(['volume-renamed', 'volume-shrunk']);
  });
});

const mirror: Partial<Record<ChangeKind, ChangeKind>> = {
  'server-created': 'server-deleted',
  'server-started': 'server-stopped',
  'volume-created': 'volume-deleted',
  'volume-grown': 'volume-shrunk',
  attached: 'detached',
  'member-joined': 'member-left',
  'group-created': 'group-deleted',
  'file-system-created': 'file-system-deleted',
  'file-system-grown': 'file-system-shrunk',
};

/** How often each kind comes, with a re-creation counted as the deletion and the creation it is. */
function counts(found: readonly Change[]): ReadonlyMap<ChangeKind, number> {
  const sums = new Map<ChangeKind, number>();
  const count = (kind: ChangeKind): void => void sums.set(kind, (sums.get(kind) ?? 0) + 1);
  for (const { kind } of found) {
    if (kind !== 'volume-re-created') count(kind);
    else {
      count('volume-created');
      count('volume-deleted');
    }
  }
  return sums;
}

describe('whatever the estates', () => {
  it('an estate held against itself shows no change, however its declarations are spread', () => {
    fc.assert(
      fc.property(change, fc.nat({ max: 3 }), ([model], shift) => {
        const other = filesOf(model, { to: (name, own) => own + shift + name.length, backwards: true });
        expect(changes(filesOf(model), other)).toEqual([]);
      }),
      { numRuns: 100 },
    );
  });

  it('the same changes come in the same order, whatever the order and number of the files', () => {
    fc.assert(
      fc.property(change, fc.nat({ max: 3 }), ([base, head], shift) => {
        const to = (_name: string, own: number): number => own + shift;
        const usual = changes(filesOf(base), filesOf(head));
        const shuffled = changes(filesOf(base, { backwards: true }), filesOf(head, { to, backwards: true }));
        expect(shuffled.map(describeChange)).toEqual(usual.map(describeChange));
        expect(shuffled.map(({ subject }) => subject)).toEqual(usual.map(({ subject }) => subject));
      }),
      { numRuns: 100 },
    );
  });

  it('the way back mirrors the way there', () => {
    fc.assert(
      fc.property(change, ([base, head]) => {
        const there = counts(changes(filesOf(base), filesOf(head)));
        const back = counts(changes(filesOf(head), filesOf(base)));
        for (const [kind, opposite] of Object.entries(mirror)) {
          expect([kind, there.get(kind as ChangeKind) ?? 0]).toEqual([kind, back.get(opposite) ?? 0]);
          expect([opposite, there.get(opposite) ?? 0]).toEqual([opposite, back.get(kind as ChangeKind) ?? 0]);
        }
      }),
      { numRuns: 100 },
    );
  });
});
