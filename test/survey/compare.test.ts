import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { Ajv2020 } from 'ajv/dist/2020.js';
import fc from 'fast-check';
import { afterAll, describe, expect, it } from 'vitest';
import type { Estate } from '../../src/estate/estate.ts';
import { bytes } from '../../src/estate/size.ts';
import { unknownTier } from '../../src/price/price-list.ts';
import { compareSurveys } from '../../src/survey/compare.ts';
import { declareSurveys } from '../../src/survey/declare.ts';
import { match } from '../../src/survey/match.ts';
import type { ProviderSurvey } from '../../src/survey/provider-survey.ts';
import type { Survey } from '../../src/survey/survey.ts';
import { ullage } from '../cli/run.ts';
import { assembled, estateOf, gannetPoint, pricesOf, valueIn } from '../estate/builder.ts';
import { makeRepository, removeRepositories } from '../repository.ts';
import { pairs } from '../simulator/estates.ts';
import { gib, kept, surveysOf } from './kept.ts';

afterAll(removeRepositories);

const office = estateOf(`team: imagery
servers:
  plate-scanner: { power: running, boot: root, guest: linux-lvm }
volumes:
  root: { size: 50 GiB, tier: steady, file-system: { mount: /, type: ext4 } }
  plates-1: { size: 40 GiB, tier: bulk, id: vol-0001 }
  plates-2: { size: 40 GiB, tier: bulk, id: vol-0002 }
  scratch: { size: 10 GiB, tier: bulk, file-system: { mount: /scratch, type: xfs } }
attachments:
  - { volume: plates-1, server: plate-scanner }
  - { volume: plates-2, server: plate-scanner }
  - { volume: scratch, server: plate-scanner }
volume-groups:
  plates: { extent: 64 MiB, members: [plates-1, plates-2], file-systems: { /plates: { size: 70 GiB, type: xfs } } }
`);
const [asDeclared] = surveysOf(office);

/** The survey of the plate scanner, with something otherwise. */
function otherwise(change: (raw: string) => string): Survey {
  if (asDeclared === undefined) throw new Error('no server runs');
  const { place: _, deviceNamed: __, groups, fileSystems, ...rest } = asDeclared;
  const text = JSON.stringify(
    {
      ...rest,
      'volume-groups': groups.map(({ logicalVolumes, members, ...group }) => ({
        ...group,
        members: members.map(({ device, deviceSize, firstExtent, size, ...member }) => ({
          ...member,
          device,
          size,
          'device-size': deviceSize,
          'first-extent': firstExtent,
        })),
        'logical-volumes': logicalVolumes,
      })),
      'file-systems': fileSystems.map(({ inFstab, blockSize: _b, ...system }) => ({
        ...system,
        'in-fstab': inFstab,
      })),
    },
    (key, value: unknown) =>
      typeof value === 'bigint'
        ? `${value}`
        : key === 'on' && Array.isArray(value) && value.length === 0
          ? undefined
          : value,
  );
  return kept({ server: 'plate-scanner' }, JSON.parse(change(text)));
}

const said = (
  surveys: readonly Survey[],
  provider?: ProviderSurvey,
  estate: Estate = office,
): readonly string[] =>
  compareSurveys(estate, { servers: surveys, provider }, pricesOf()).differences.map(({ message, meaning }) =>
    [message, meaning].filter((each) => each !== undefined).join(' | '),
  );

describe('what is there beside what is declared', () => {
  it('is the same where nothing differs', () => {
    expect(said([otherwise((text) => text)])).toEqual([]);
  });

  it.each([
    [
      'a volume that has grown, and nobody declared it',
      (text: string) => text.replaceAll(gib(10), gib(60)),
      /scratch is 60 GiB .* declared 10 GiB \| It is larger than declared: .* would be a shrink/,
    ],
    [
      'another type',
      (text: string) =>
        text.replace(
          '"type":"xfs","id":"uuid-volume-scratch:/scratch"',
          '"type":"ext4","id":"uuid-volume-scratch:/scratch"',
        ),
      /scratch:\/scratch is ext4, and declared xfs/,
    ],
    [
      'a group with a member missing',
      (text: string) => text.replace('"missing":0', '"missing":1'),
      /has lost 1 of its members/,
    ],
    [
      'a declared member that is not in the group',
      (text: string) => text.replace(/,\{"extents":[0-9]+,"free":[0-9]+,"device":"vdc?b?"[^}]*\}(?=\])/, ''),
      /plates-2 is declared as a member of the volume group plates, and on plate-scanner it is none/,
    ],
    [
      'other extents',
      (text: string) => text.replace(`"extent":"${64n << 20n}"`, `"extent":"${32n << 20n}"`),
      /has extents of 32 MiB, and is declared with 64 MiB/,
    ],
    [
      'a group that has not taken up what its member has grown by',
      (text: string) => text.replace('"extents":639,', '"extents":500,'),
      /gives the volume group plates 500 extents .* room for 639 \| The group has not taken up/,
    ],
    [
      'a logical volume that is larger',
      (text: string) =>
        text.replace(`"name":"plates","size":"${gib(70)}"`, `"name":"plates","size":"${gib(72)}"`),
      /the logical volume of plates:\/plates is 72 GiB, and declared 70 GiB/,
    ],
    [
      'a file system that has not grown',
      (text: string) =>
        text
          .replace(`"size":"${gib(70)}"}`, `"size":"${gib(60)}"}`)
          .replace(
            new RegExp(`("id":"uuid-volume-group-plates:/plates".*?"size":")${gib(70)}`),
            `$1${gib(60)}`,
          ),
      /has 60 GiB, and its device 70 GiB \| The file system has not grown/,
    ],
    [
      'another mount point',
      (text: string) => text.replaceAll('"mounts":["/plates"]', '"mounts":["/srv/plates"]'),
      /plates:\/plates is mounted at \/srv\/plates|shows no such file system|nothing declared lies on it/,
    ],
    [
      'what is not in fstab',
      (text: string) => text.replace('"in-fstab":"/scratch"', '"used":"1"'),
      /in use on plate-scanner, and not in its fstab/,
    ],
    [
      'a disk that nobody declared',
      (text: string) =>
        text.replace('"devices":[', `"devices":[{"name":"vdz","type":"disk","size":"${gib(7)}"},`),
      /has a disk vdz of 7 GiB, and no such volume is declared/,
    ],
  ])('tells %s', (_what, change, message) => {
    const differences = said([otherwise(change)]);
    expect(differences).toContainEqual(expect.stringMatching(message));
  });

  it('tells what the provider says otherwise, and what nobody declared there, with its cost', () => {
    const row = {
      id: undefined,
      name: undefined,
      tier: undefined,
      site: undefined,
      servers: undefined,
      boot: undefined,
    };
    const provider: ProviderSurvey = {
      at: '2026-11-20T06:00:00Z',
      lists: ['volumes'],
      volumes: [
        { ...row, id: 'vol-0001', size: office.volumes.get('plates-1')?.size ?? (0n as never) },
        { ...row, name: 'scratch', size: office.volumes.get('plates-1')?.size ?? (0n as never) },
        {
          ...row,
          name: 'forgotten',
          tier: 'bulk',
          size: office.volumes.get('plates-1')?.size ?? (0n as never),
        },
      ],
      servers: [
        {
          id: undefined,
          name: 'plate-scanner',
          site: undefined,
          type: undefined,
          power: 'stopped',
          boot: undefined,
        },
      ],
      place: { file: 'surveys/provider.json', line: 1, column: 1 },
    };
    const { differences } = compareSurveys(office, { servers: [], provider }, pricesOf());
    const messages = differences.map(({ message }) => message);
    expect(messages).toContain('the size of scratch is 40 GiB at the provider, and declared 10 GiB');
    expect(messages).toContain('plate-scanner is stopped at the provider, and declared running');
    expect(messages).toContain('root is declared, and the provider does not list it');
    expect(differences.find(({ subject }) => subject.name === 'forgotten')?.monthly?.toFixed(2)).toBe('1.80');
  });

  it('tells who holds a volume at the provider, and from what a server starts, where that is otherwise', () => {
    const row = { id: undefined, tier: undefined, site: undefined, boot: undefined };
    const server = { id: 'srv-1', site: undefined, power: undefined };
    const size = (count: bigint) => bytes(count << 30n);
    const provider: ProviderSurvey = {
      at: '2026-11-20T06:00:00Z',
      lists: ['servers'],
      volumes: [
        // By its server's identifier, as it is declared; by another; by none; and where the list does not say.
        { ...row, name: 'root', size: size(50n), servers: ['srv-1'], boot: false },
        { ...row, name: 'plates-1', size: size(40n), servers: ['press', 'srv-1'], boot: true },
        { ...row, name: 'plates-2', size: size(40n), servers: [] },
        { ...row, name: 'scratch', size: size(10n), servers: undefined },
      ],
      servers: [{ ...server, name: 'plate-scanner', type: 'large', boot: 'plates-1' }],
      place: { file: 'surveys/provider.json', line: 1, column: 1 },
    };
    expect(said([], provider)).toEqual([
      'the boot volume of plate-scanner is plates-1 at the provider, and declared root',
      'a server starts from plates-1 at the provider, and none is declared to',
      'plates-1 is attached to plate-scanner and press at the provider, and declared as attached to plate-scanner | A server may be writing to it.',
      'plates-2 is unattached at the provider, and declared as attached to plate-scanner',
      'plate-scanner is declared to start from root, and at the provider it does not',
    ]);
  });

  it('says nothing of servers and volumes that are called otherwise there, and declared without their ids', () => {
    const row = { tier: undefined, site: undefined, boot: undefined };
    const at = (servers: readonly string[], name = 'scratch') => {
      const size = bytes((name === 'scratch' ? 10n : 40n) << 30n);
      const provider: ProviderSurvey = {
        at: '2026-11-20T06:00:00Z',
        lists: ['servers'],
        volumes: [
          { ...row, id: undefined, name, size, servers },
          { ...row, id: 'vol-77', name: 'disk-77', size: bytes(50n << 30n), servers },
        ],
        servers: [
          {
            id: 'srv-1',
            name: 'machine-1',
            site: undefined,
            type: undefined,
            power: undefined,
            boot: 'vol-77',
          },
        ],
        place: { file: 'surveys/provider.json', line: 1, column: 1 },
      };
      return said([], provider).filter((each) => !each.startsWith('the provider lists'));
    };
    expect(at(['srv-1'])).toEqual([]);
    // Held by one more than is declared, by none, or by another that is declared.
    expect(at(['srv-1', 'srv-2'])).toEqual([
      'scratch is attached to machine-1 and srv-2 at the provider, and declared as attached to plate-scanner | A server may be writing to it.',
    ]);
    expect(at([])).toEqual([
      'scratch is unattached at the provider, and declared as attached to plate-scanner',
    ]);
  });

  it('names the rows that a volume declared without its id may be, and calls none of them undeclared', () => {
    const row = { tier: undefined, site: undefined, servers: undefined, boot: undefined };
    const size = (count: bigint) => bytes(count << 30n);
    const provider: ProviderSurvey = {
      at: '2026-11-20T06:00:00Z',
      lists: ['volumes'],
      volumes: [
        { ...row, id: 'vol-7', name: 'disk-7', size: size(10n), servers: ['plate-scanner'] },
        { ...row, id: 'vol-8', name: 'disk-8', size: size(10n), servers: ['plate-scanner'], tier: 'bulk' },
        // Of another server, another tier, another size, or with the id of another volume.
        { ...row, id: 'vol-9', name: 'disk-9', size: size(10n), servers: ['press'] },
        {
          ...row,
          id: 'vol-10',
          name: 'disk-10',
          size: size(10n),
          servers: ['plate-scanner'],
          tier: 'steady',
        },
        { ...row, id: 'vol-11', name: 'disk-11', size: size(11n), servers: ['plate-scanner'] },
        { ...row, id: 'vol-0001', name: 'disk-1', size: size(40n), servers: ['plate-scanner'] },
      ],
      servers: [],
      place: { file: 'surveys/provider.json', line: 1, column: 1 },
    };
    const { differences, untold } = compareSurveys(office, { servers: [], provider }, pricesOf());
    expect(untold.map(({ volume, rows }) => [volume, rows.map(({ name }) => name)])).toEqual([
      ['scratch', ['disk-7', 'disk-8']],
    ]);
    expect(differences.map(({ kind, subject }) => `${kind} ${subject.name}`).sort()).toEqual([
      'not declared disk-10',
      'not declared disk-11',
      'not declared disk-9',
      'not there plates-2',
      'not there root',
    ]);
    // The disk of the volume shows which of them it is.
    const shown = kept({
      server: 'plate-scanner',
      devices: [{ name: 'vdd', type: 'disk', size: gib(10), serial: 'vol-8' }],
    });
    const told = compareSurveys(office, { servers: [shown], provider }, pricesOf());
    expect(told.matches.rows.get('scratch')?.name).toBe('disk-8');
    expect(told.untold.flatMap(({ rows }) => rows)).toEqual([]);
    expect(said([shown], provider)).toContainEqual(expect.stringContaining('disk-7 of 10 GiB'));
  });

  it('tells of an ordinary file system that two servers have mounted at once', () => {
    const system = { device: 'vdb', type: 'xfs', id: 'one', mounts: ['/a'] };
    const two = ['s', 't'].map((server) => kept({ server, 'file-systems': [system] }));
    expect(said(two, undefined, estateOf('servers: { s: {}, t: {} }'))).toEqual([
      expect.stringMatching(/one xfs file system is mounted at \/a on s and at \/a on t \| .* destroy it/),
    ]);
    const shared = ['s', 't'].map((server) =>
      kept({ server, 'file-systems': [{ ...system, type: 'gfs2' }] }),
    );
    expect(said(shared, undefined, estateOf('servers: { s: {}, t: {} }'))).toEqual([]);
  });
});

describe('what a reader of surveys found', () => {
  it('a retired disk that is still mounted is told, though another volume cannot be told', () => {
    const estate = estateOf(`servers: { db: { power: running, guest: linux-lvm } }
volumes:
  pg-1: { size: 100 GiB, tier: bulk }
  pg-2: { size: 100 GiB, tier: bulk }
attachments: [ { volume: pg-1, server: db }, { volume: pg-2, server: db } ]
volume-groups: { pg: { members: [pg-1, pg-2] } }
`);
    const survey = kept({
      server: 'db',
      devices: [
        { name: 'vdb', type: 'disk', size: gib(100), serial: 'vol-pg-1' },
        { name: 'vdc', type: 'disk', size: gib(100), serial: 'vol-pg-2' },
        { name: 'vdd', type: 'disk', size: gib(50) },
      ],
      'volume-groups': [
        {
          name: 'pg',
          extent: `${4n << 20n}`,
          extents: 51198,
          free: 51198,
          missing: 0,
          members: ['vdb', 'vdc'].map((device) => ({ device, extents: 25599, free: 25599 })),
          'logical-volumes': [],
        },
      ],
      'file-systems': [{ device: 'vdd', type: 'xfs', mounts: ['/scratch'] }],
    });
    const { differences, untold } = compareSurveys(
      estate,
      { servers: [survey], provider: undefined },
      undefined,
    );
    expect(differences.map(({ message }) => message)).toEqual([
      'db has a disk vdd of 50 GiB, and no such volume is declared',
    ]);
    expect(untold.map(({ volume, candidates }) => [volume, candidates.map(({ disk }) => disk.name)])).toEqual(
      [
        ['pg-1', ['vdb', 'vdc']],
        ['pg-2', ['vdb', 'vdc']],
      ],
    );
  });
});

/** What the player knows: which disk is which volume. */
function truth(estate: Estate, survey: Survey): ReadonlyMap<string, string> {
  const held = (estate.held.get(survey.server) ?? []).map(({ volume }) => volume).sort();
  return new Map(held.map((volume, index) => [`vd${String.fromCharCode(97 + index)}`, volume]));
}

const playable = (files: Readonly<Record<string, string>>): Estate => {
  const estate = assembled(files);
  fc.pre(estate.ok);
  return estate.value;
};

describe('on any estate', () => {
  it('no disk is ever taken for another volume than it is, and none for two', () => {
    let found = 0;
    fc.assert(
      fc.property(pairs, ([files]) => {
        const estate = playable(files);
        const surveys = surveysOf(estate);
        const { disks } = match(estate, surveys, undefined);
        const taken = [...disks].flatMap(([volume, on]) => on.map((each) => ({ volume, ...each })));
        for (const { volume, survey, disk } of taken) {
          expect(truth(estate, survey).get(disk.name)).toBe(volume);
          found++;
        }
        expect(new Set(taken.map(({ disk }) => disk)).size).toBe(taken.length);
        const turned = match(estate, [...surveys].reverse(), undefined);
        expect([...turned.disks.keys()].sort()).toEqual([...disks.keys()].sort());
      }),
      { numRuns: 400 },
    );
    expect(found).toBeGreaterThan(100);
  });

  it('with identifiers, every disk is told', () => {
    fc.assert(
      fc.property(pairs, ([files]) => {
        const text = (files['storage/all.yaml'] ?? '').replaceAll(
          /"(v[0-9])":\{/g,
          '"$1":{"id":"vol-$1-0123456789abcdef",',
        );
        const estate = playable({ 'storage/all.yaml': text });
        const { disks, candidates } = match(estate, surveysOf(estate), undefined);
        expect([...candidates.keys()]).toEqual([]);
        const running = [...estate.servers.values()].filter(({ power }) => power === 'running');
        const held = new Set(
          running.flatMap(({ name }) => (estate.held.get(name) ?? []).map(({ volume }) => volume)),
        );
        expect(new Set(disks.keys())).toEqual(held);
      }),
      { numRuns: 200 },
    );
  });

  it('a holder that the list names is the declared one, another, or untold, as may be known, and never mistaken', () => {
    const names = ['press', 'scanner', 'ledger-1'] as const;
    const server = fc.record({
      id: fc.boolean(),
      row: fc.constantFrom('none', 'by name', 'by another name'),
      rowId: fc.boolean(),
    });
    const outcomes = new Set<string>();
    fc.assert(
      fc.property(
        fc.tuple(server, server, server),
        fc.constantFrom(0, 1, 2),
        fc.constantFrom(0, 1, 2),
        fc.boolean(),
        (servers, declared, is, byId) => {
          const estate = estateOf(`servers: { ${names
            .map((name, at) => `${name}: { ${servers[at]?.id ? `id: i-${at}` : ''} }`)
            .join(', ')} }
volumes: { plates-1: { size: 1 GiB, tier: bulk } }
attachments: [ { volume: plates-1, server: ${names[declared]} } ]
`);
          const rows = servers.flatMap(({ row, rowId }, at) =>
            row === 'none'
              ? []
              : [
                  {
                    id: rowId ? `i-${at}` : undefined,
                    name: row === 'by name' ? names[at] : `host-${at}`,
                    site: undefined,
                    type: undefined,
                    power: undefined,
                    boot: undefined,
                  },
                ],
          );
          const called = servers[is]?.row === 'by name' ? (names[is] ?? '') : `host-${is}`;
          const provider: ProviderSurvey = {
            at: '2026-11-20T06:00:00Z',
            lists: ['volumes', 'servers'],
            volumes: [
              {
                id: undefined,
                name: 'plates-1',
                size: bytes(1n << 30n),
                tier: undefined,
                site: undefined,
                servers: [byId ? `i-${is}` : called],
                boot: undefined,
              },
            ],
            servers: rows,
            place: { file: 'surveys/provider.json', line: 1, column: 1 },
          };
          const { differences, untoldHolders } = compareSurveys(
            estate,
            { servers: [], provider },
            pricesOf(),
          );
          const isOther = differences.some(({ about }) => about === 'attachment');
          const isUntold = untoldHolders.has('plates-1');
          outcomes.add(
            `${declared === is ? 'the declared one' : 'another'}: ${isOther ? 'other' : isUntold ? 'untold' : 'same'}`,
          );
          expect(isOther && isUntold).toBe(false);
          if (declared === is) expect(isOther).toBe(false);
          else expect(isOther || isUntold).toBe(true);
        },
      ),
      { numRuns: 3000 },
    );
    expect([...outcomes].sort()).toEqual([
      'another: other',
      'another: untold',
      'the declared one: same',
      'the declared one: untold',
    ]);
  });

  it('a survey of what is as declared shows no difference', () => {
    fc.assert(
      fc.property(pairs, ([files]) => {
        const estate = playable(files);
        const { differences } = compareSurveys(
          estate,
          { servers: surveysOf(estate), provider: undefined },
          undefined,
        );
        expect(differences.map(({ message }) => message)).toEqual([]);
      }),
      { numRuns: 400 },
    );
  });

  it('what is declared from surveys is what is there: nothing differs, and every size is the same', () => {
    let declared = 0;
    fc.assert(
      fc.property(pairs, ([files]) => {
        const estate = playable(files);
        const surveys = surveysOf(estate);
        const nothing = estateOf('volumes: {}');
        const { files: texts } = declareSurveys(
          nothing,
          { servers: surveys, provider: undefined },
          match(nothing, surveys, undefined),
        );
        const again = valueIn(
          assembled(
            Object.fromEntries(
              texts.map(({ name, text }) => [`storage/${name}`, text.replaceAll(unknownTier, 'bulk')]),
            ),
          ),
        );
        const { differences } = compareSurveys(again, { servers: surveys, provider: undefined }, undefined);
        expect(differences.map(({ message }) => message)).toEqual([]);
        const running = surveys.map(({ server }) => server).sort();
        expect([...again.servers.keys()].sort()).toEqual(running);
        const sizes = (of: Estate) =>
          running.map((server) =>
            (of.held.get(server) ?? []).map(({ volume }) => of.volumes.get(volume)?.size).sort(),
          );
        expect(sizes(again)).toEqual(sizes(estate));
        for (const group of again.groups.values()) {
          const was = estate.groups.get(group.name);
          expect(group.fileSystems.map(({ mount, size, type }) => [mount, size, type]).sort()).toEqual(
            was?.fileSystems.map(({ mount, size, type }) => [mount, size, type]).sort(),
          );
        }
        declared += again.volumes.size;
      }),
      { numRuns: 300 },
    );
    expect(declared).toBeGreaterThan(100);
  });

  it('no name that a server has leaves its place in what is written', () => {
    const hostile = fc.oneof(
      fc
        .string({ minLength: 1, maxLength: 20, unit: 'grapheme' })
        .map((text) => text.replaceAll(/\p{Cc}/gu, '') || 'x'),
      fc.constantFrom(
        'a: b',
        '# x',
        '-x',
        '*a',
        '&a',
        '{}',
        '[',
        '"',
        "'",
        '!!js',
        '__proto__',
        '%',
        '| x',
        'null',
        '~',
      ),
    );
    fc.assert(
      fc.property(hostile, hostile, (mount, group) => {
        const survey = kept({
          server: 's',
          devices: [{ name: 'vdb', type: 'disk', size: gib(5) }],
          'volume-groups': [
            {
              name: group,
              extent: `${4n << 20n}`,
              extents: 1279,
              free: 0,
              missing: 0,
              members: [{ device: 'vdb', extents: 1279, free: 0 }],
              'logical-volumes': [{ name: 'one', size: gib(1), layout: 'linear' }],
            },
          ],
          'file-systems': [{ device: `${group}/one`, type: 'ext4', mounts: [`/${mount}`] }],
        });
        const nothing = estateOf('volumes: {}');
        const [file] = declareSurveys(
          nothing,
          { servers: [survey], provider: undefined },
          match(nothing, [survey], undefined),
        ).files;
        const read = assembled({ 'storage/s.yaml': file?.text ?? '' });
        const groups = read.ok ? [...read.value.groups.values()] : [];
        // What the format has no room for is refused where it stands; nothing else comes of it.
        if (!read.ok) expect(read.problems.every(({ place }) => place?.file === 'storage/s.yaml')).toBe(true);
        else {
          expect([...read.value.servers.keys()]).toEqual(['s']);
          expect(groups.flatMap(({ fileSystems }) => fileSystems.map((system) => system.mount))).toEqual([
            `/${mount}`,
          ]);
        }
      }),
      { numRuns: 300 },
    );
  });
});

describe('from the command line', () => {
  const repository = () =>
    makeRepository({
      files: {
        ...gannetPoint,
        'storage/imagery.yaml':
          'team: imagery\nvolumes:\n  plates-1: { size: 40 GiB, tier: bulk, owner: x, reason: y, retain-until: 2027-01-01 }\n',
      },
    });
  const survey = JSON.stringify(
    {
      format: 'ullage-survey-1',
      server: 'plate-scanner',
      at: '2026-11-20T06:00:00Z',
      tools: {},
      unseen: [],
      devices: [{ name: 'vda', type: 'disk', size: gib(20) }],
      'volume-groups': [],
      'file-systems': [{ device: 'vda', type: 'ext4', mounts: ['/'] }],
    },
    null,
    2,
  );

  it('exits with 2 where nothing is surveyed, 1 where something differs and 0 where nothing does', async () => {
    const { dir, write } = repository();
    const compare = (...more: readonly string[]) =>
      ullage('survey', 'compare', '--repo', dir, '--now', '2026-11-25', ...more);
    expect((await compare()).code).toBe(2);
    write({ 'surveys/plate-scanner.json': survey });
    const differing = await compare();
    expect([differing.code, differing.out]).toEqual([
      1,
      expect.stringContaining('plate-scanner is surveyed'),
    ]);
    const { out, code } = await ullage('survey', 'declare', '--repo', dir, '--into', 'storage');
    expect([code, out]).toEqual([0, expect.stringContaining('plate-scanner.yaml')]);
    const path = join(dir, 'storage/plate-scanner.yaml');
    write({ 'storage/plate-scanner.yaml': readFileSync(path, 'utf8').replace(unknownTier, 'bulk') });
    const same = await compare();
    expect([same.code, same.out]).toEqual([0, expect.stringContaining('What is there is as it is declared')]);
    expect(same.out).toContain('5 days');
    expect((await compare('--format', 'markdown')).out).toContain('## What is there is as it is declared');
  });

  it('never overwrites a file that is there', async () => {
    const { dir, write } = repository();
    write({ 'surveys/plate-scanner.json': survey, 'storage/plate-scanner.yaml': '# mine\n' });
    await ullage('survey', 'declare', '--repo', dir, '--into', 'storage');
    expect(readFileSync(join(dir, 'storage/plate-scanner.yaml'), 'utf8')).toBe('# mine\n');
    expect(readFileSync(join(dir, 'storage/plate-scanner-surveyed-2.yaml'), 'utf8')).toContain(
      'existing: true',
    );
  });

  it('prints JSON that its schema takes', async () => {
    const { dir, write } = repository();
    write({ 'surveys/plate-scanner.json': survey });
    const { out } = await ullage(
      'survey',
      'compare',
      '--repo',
      dir,
      '--format',
      'json',
      '--now',
      '2026-11-25',
    );
    const schema = JSON.parse(
      readFileSync(join(import.meta.dirname, '../../schema/survey-comparison.json'), 'utf8'),
    );
    const isValid = new Ajv2020({ strict: true, allowUnionTypes: true }).compile(schema);
    expect([isValid(JSON.parse(out)), isValid.errors]).toEqual([true, null]);
    expect(JSON.parse(out)).toMatchObject({
      outcome: 'different',
      surveys: [{ server: 'plate-scanner', days: 5 }],
    });
  });
});
