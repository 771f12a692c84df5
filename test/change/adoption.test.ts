import { describe, expect, it } from 'vitest';
import type { Change } from '../../src/change/change.ts';
import { compareEstates } from '../../src/change/compare.ts';
import { nothingShown, type Shown } from '../../src/change/corrected.ts';
import { describeChange, destroys } from '../../src/change/kinds.ts';
import { lossesOf } from '../../src/change/losses.ts';
import { estateOf, type Files } from '../estate/builder.ts';

const compared = (before: Files | string, after: Files | string) =>
  compareEstates(estateOf(before), estateOf(after));

const kinds = (before: Files | string, after: Files | string): Change['kind'][] =>
  compared(before, after).changes.map(({ kind }) => kind);

const told = (before: Files | string, after: Files | string): readonly string[] =>
  compared(before, after).changes.map(describeChange);

const contradictions = (before: Files | string, after: Files | string): readonly string[] =>
  compared(before, after).contradictions.map(({ message }) => message);

const scanner = (server: string, root: string, plates: string): string => `servers:
  scanner: { boot: root${server} }
volumes:
  root: { size: 50 GiB, tier: steady, file-system: { mount: /, type: ext4 }${root} }
  plates-1: { size: 40 GiB, tier: bulk${plates} }
  plates-2: { size: 40 GiB, tier: bulk${plates} }
attachments:
  - { volume: plates-1, server: scanner }
  - { volume: plates-2, server: scanner }
volume-groups:
  plates: { members: [plates-1, plates-2], file-systems: { /plates: { size: 70 GiB, type: xfs } } }
`;

const mark = ', existing: true';

describe('existing: true is inherited downwards', () => {
  it('by everything in a file that says so at its top, where it says nothing else', () => {
    const after =
      `existing: true\n${scanner('', '', '')}  drafts: { existing: false, members: [drafts-1] }\n`.replace(
        'volumes:\n',
        'volumes:\n  drafts-1: { size: 5 GiB, tier: bulk, existing: false }\n',
      );
    expect(told('{}\n', after)).toEqual([
      'server scanner is declared as existing, running',
      'volume drafts-1 is created: 5 GiB, tier bulk',
      'volume plates-1 is declared as existing: 40 GiB, tier bulk',
      'volume plates-1 is declared as attached to scanner already',
      'volume plates-2 is declared as existing: 40 GiB, tier bulk',
      'volume plates-2 is declared as attached to scanner already',
      'volume root is declared as existing: 50 GiB, tier steady',
      'volume root is declared as attached to scanner already',
      'volume group drafts is created on drafts-1',
      'volume group plates is declared as existing on plates-1, plates-2',
      'file system /plates on plates is declared as existing: 70 GiB, xfs',
      'file system / on root is declared as existing: 50 GiB, ext4',
    ]);
  });

  it('by the volume that a server starts from and the file system on it, also across files, and by no other volume', () => {
    const [servers = '', volumes = ''] = scanner(mark, '', '').split('volumes:\n');
    const after = { 'storage/a.yaml': servers, 'storage/b.yaml': `volumes:\n${volumes}` };
    expect(kinds('{}\n', after).filter((kind) => kind.endsWith('-adopted'))).toEqual([
      'server-adopted',
      'volume-adopted',
      'attachment-adopted',
      'file-system-adopted',
    ]);
    expect(told('{}\n', after)).toContain('volume plates-1 is attached to scanner');
  });

  it('by the file system on a volume, and by a group on volumes that are all there, which it can only lie on', () => {
    expect(kinds('{}\n', scanner('', mark, mark)).sort()).toEqual(
      [
        'server-created',
        // A server that is created cannot have anything attached yet.
        'attached',
        'attached',
        'attached',
        'volume-adopted',
        'volume-adopted',
        'volume-adopted',
        'group-adopted',
        'file-system-adopted',
        'file-system-adopted',
      ].sort(),
    );
  });

  it('by the members and the file systems of a group', () => {
    const after = scanner('', '', '').replace('members: [', 'existing: true, members: [');
    expect(told('{}\n', after).filter((text) => text.includes('existing'))).toEqual([
      'volume plates-1 is declared as existing: 40 GiB, tier bulk',
      'volume plates-2 is declared as existing: 40 GiB, tier bulk',
      'volume group plates is declared as existing on plates-1, plates-2',
      'file system /plates on plates is declared as existing: 70 GiB, xfs',
    ]);
  });

  it('and a file system that is there lies on a volume, or a group, that is there', () => {
    const own =
      'volumes:\n  a: { size: 5 GiB, tier: bulk, file-system: { mount: /a, type: xfs, existing: true } }\n';
    expect(kinds('{}\n', own)).toEqual(['volume-adopted', 'file-system-adopted']);
    const grouped = scanner('', '', '').replace('type: xfs', 'type: xfs, existing: true');
    expect(kinds('{}\n', grouped)).toContain('group-adopted');
    expect(kinds('{}\n', grouped).filter((kind) => kind === 'volume-adopted')).toHaveLength(2);
  });
});

describe('what existing: true says is believed no further than it can be so', () => {
  const two = (rest: string): string =>
    `volumes:\n  a: { size: 40 GiB, tier: bulk${rest} }\n  b: { size: 40 GiB, tier: bulk }\n`;

  it('a group on a volume where main has a file system is made over it, and both losses are told', () => {
    const main = two(', file-system: { mount: /a, type: ext4 }');
    const after = `${two('')}volume-groups:\n  plates: { existing: true, members: [a, b] }\n`;
    const { changes } = compared(main, after);
    expect(changes.filter(destroys).map(({ kind }) => kind)).toEqual([
      'group-created',
      'file-system-deleted',
    ]);
    expect(changes.map(describeChange)).toContain(
      'volume group plates is created on a, b, and any data on a, b is overwritten',
    );
  });

  it('a group on a member of another group of main is made over it', () => {
    const main = `${two('')}volume-groups:\n  old: { members: [a, b] }\n`;
    const after = `${two('')}volume-groups:\n  old: { members: [b] }\n  plates: { existing: true, members: [a] }\n`;
    expect(
      compared(main, after)
        .changes.filter(destroys)
        .map(({ kind }) => kind),
    ).toEqual(['group-created']);
  });

  it('another file system on a volume where main has one is made over it', () => {
    const main = two(', file-system: { mount: /a, type: ext4 }');
    const after = two(', file-system: { mount: /b, type: xfs, existing: true }');
    expect(kinds(main, after).sort()).toEqual(['file-system-created', 'file-system-deleted']);
    expect(lossesOf(compared(main, after).changes)).toHaveLength(1);
    const remade = two(', file-system: { mount: /a, type: xfs, existing: true }');
    expect(kinds(main, remade)).toEqual(['file-system-remade']);
  });

  it('a volume in the place of another leaves the deletion, and the pair that is held against bounds', () => {
    const group = (name: string, gib: number, rest = ''): string =>
      `volumes:\n  ${name}: { size: ${gib} GiB, tier: bulk${rest} }\nvolume-groups:\n  plates: { members: [${name}] }\n`;
    const { changes } = compared(group('a', 40), group('b', 4000, mark));
    expect(changes.map(({ kind }) => kind)).toContain('volume-re-created');
    expect(changes.filter(destroys).map(describeChange)).toEqual([
      'volume a (40 GiB) is deleted and b (4000 GiB) declared as existing in its place, as a member of the volume group plates',
    ]);
  });

  it('whatever is made on a volume that is there is told as overwriting it', () => {
    const after = two(`${mark}, file-system: { mount: /a, type: xfs, existing: false }`);
    const { changes } = compared('{}\n', after);
    expect(changes.filter(destroys).map(describeChange)).toEqual([
      'file system /a on a is created: 40 GiB, xfs, and any data on the volume is overwritten',
    ]);
  });

  it('a volume of main that joins a group is written over, whatever the group says', () => {
    const main = `${two('')}volume-groups:\n  plates: { members: [a] }\n`;
    const after = `existing: true\n${two(mark).replace('b: {', 'b: { existing: true,')}volume-groups:\n  plates: { existing: true, members: [a, b] }\n`;
    expect(told(main, after)).toEqual([
      'volume b joins the volume group plates, and any data on it is overwritten',
    ]);
  });

  it('a volume that nobody declared is a member already of the group of main that it is in', () => {
    const main = 'volumes:\n  a: { size: 40 GiB, tier: bulk }\nvolume-groups:\n  plates: { members: [a] }\n';
    const after = main
      .replace('volumes:\n', 'volumes:\n  b: { size: 40 GiB, tier: bulk, existing: true }\n')
      .replace('[a]', '[a, b]');
    expect(kinds(main, after)).toEqual(['volume-adopted', 'member-adopted']);
  });

  it('a server of main that starts from another volume is moved to the one that is there', () => {
    const main = 'servers:\n  scanner: { boot: root }\nvolumes:\n  root: { size: 50 GiB, tier: steady }\n';
    const after = main
      .replace('boot: root', 'boot: root-2')
      .concat('  root-2: { size: 50 GiB, tier: steady, existing: true }\n');
    expect(kinds(main, after)).toEqual(['boot-swapped', 'detached', 'volume-adopted', 'attached']);
  });
});

describe('existing: true is spent once main has what says it', () => {
  const file = (more: string, top = 'existing: true\n'): string =>
    `${top}volumes:\n  a: { size: 40 GiB, tier: bulk }\n${more}`;

  it('taking it out is no change, and neither is writing it on what main has', () => {
    expect(kinds(file(''), file('', ''))).toEqual([]);
    expect(kinds(file('', ''), file(''))).toEqual([]);
    const marked = scanner(mark, mark, mark).replace('members: [', 'existing: true, members: [');
    expect(kinds(marked, scanner('', '', ''))).toEqual([]);
    expect(kinds(scanner('', '', ''), marked)).toEqual([]);
    expect(kinds(scanner('', '', ''), scanner(', existing: false', ', existing: false', ''))).toEqual([]);
  });

  it('what is added to a file, or a group, later is new unless it says so itself', () => {
    expect(kinds(file(''), file('  b: { size: 40 GiB, tier: bulk }\n'))).toEqual(['volume-created']);
    expect(kinds(file(''), file('  b: { size: 40 GiB, tier: bulk, existing: true }\n'))).toEqual([
      'volume-adopted',
    ]);
    const group = (more: string): string =>
      `volumes:\n  a: { size: 40 GiB, tier: bulk }\nvolume-groups:\n  plates: { existing: true, members: [a], file-systems: { /a: { size: 5 GiB, type: xfs }${more} } }\n`;
    expect(kinds(group(''), group(', /b: { size: 5 GiB, type: xfs }'))).toEqual(['file-system-created']);
  });

  it('moving it to another file adopts nothing that main has', () => {
    expect(kinds({ 'storage/a.yaml': file('') }, { 'storage/b.yaml': file('') })).toEqual([]);
  });
});

describe('surveys', () => {
  const shown: Shown = {
    ...nothingShown,
    there: new Set(['server scanner', 'volume plates-1', 'volume plates-2']),
  };
  const kindsShown = (before: string, after: string): Change['kind'][] =>
    compareEstates(estateOf(before), estateOf(after), shown).changes.map(({ kind }) => kind);

  it('stand for the word in the first estate, for what they show and what hangs together with that', () => {
    const found = kindsShown('{}\n', `${scanner('', '', '')}`);
    expect(found.filter((kind) => !kind.endsWith('-adopted'))).toEqual([]);
    const more = scanner('', '', '').replace(
      'volumes:\n',
      'volumes:\n  other: { size: 1 GiB, tier: bulk }\n',
    );
    expect(kindsShown('{}\n', more).filter((kind) => !kind.endsWith('-adopted'))).toEqual(['volume-created']);
  });

  it('do not gainsay what says that it is new, and say nothing once main has an estate', () => {
    expect(kindsShown('{}\n', scanner('', '', ', existing: false'))).toContain('volume-created');
    const main = 'volumes:\n  old: { size: 1 GiB, tier: bulk }\n';
    const after = scanner('', '', '').replace('volumes:\n', main);
    expect(kindsShown(main, after).filter((kind) => kind.endsWith('-adopted'))).toEqual([]);
  });
});

describe('an attachment', () => {
  const on = (volume: string, attachment = ''): string =>
    `servers: { scanner: {} }\nvolumes:\n  a: { size: 40 GiB, tier: bulk${volume} }\nattachments:\n  - { volume: a, server: scanner${attachment} }\n`;
  const server = 'servers: { scanner: {} }\n';

  it('of a volume that is there to a server of main makes nothing, unless it says that it is new', () => {
    expect(kinds(server, on(mark))).toEqual(['volume-adopted', 'attachment-adopted']);
    expect(kinds(server, on(mark, ', existing: false'))).toEqual(['volume-adopted', 'attached']);
    expect(kinds(server, on(''))).toEqual(['volume-created', 'attached']);
  });

  it('of a volume that main has attached to nothing is made, unless it says that it is there', () => {
    const bare = on('').split('attachments:')[0] ?? '';
    expect(kinds(bare, on(mark))).toEqual(['attached']);
    expect(kinds(bare, on('', mark))).toEqual(['attachment-adopted']);
  });
});

describe('what is marked new on what is there, or the other way round, is told and not judged', () => {
  it.each([
    [
      'a member of a group that is there',
      scanner('', '', '')
        .replace('members: [', 'existing: true, members: [')
        .replace('bulk }', 'bulk, existing: false }'),
      'the volume plates-1 is marked existing: false, and the volume group plates (storage/imagery.yaml:11), which is there already, has it as a member',
    ],
    [
      'the volume that a server which is there starts from',
      scanner(mark, ', existing: false', ''),
      'the volume root is marked existing: false, and the server scanner (storage/imagery.yaml:2), which is there already, starts from it',
    ],
    [
      'a volume whose file system is there',
      'volumes:\n  a: { existing: false, size: 5 GiB, tier: bulk, file-system: { mount: /a, type: xfs, existing: true } }\n',
      'the volume a is marked existing: false, and its file system /a is marked existing: true',
    ],
    [
      'a group whose file system is there',
      scanner('', '', '')
        .replace('members: [', 'existing: false, members: [')
        .replace('type: xfs', 'type: xfs, existing: true'),
      'the volume group plates is marked existing: false, and its file system /plates is marked existing: true',
    ],
    [
      'an attachment to a server that is to be created',
      scanner('', '', mark).replace('plates-1, server: scanner', 'plates-1, server: scanner, existing: true'),
      'the attachment of plates-1 to scanner is marked existing: true, and the server scanner (storage/imagery.yaml:2) is to be created',
    ],
  ])('%s', (_what, after, message) => {
    expect(contradictions('{}\n', after)).toEqual([message]);
  });
});
