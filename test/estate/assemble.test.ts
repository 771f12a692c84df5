import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { assemble } from '../../src/estate/assemble.ts';
import type { Estate, EstatePart } from '../../src/estate/estate.ts';
import { assembled, estateOf, type Files, line, partOf, problemsOf, settingsOf, today } from './builder.ts';
import { change, filesOf } from './random.ts';

const a = 'storage/a.yaml';
const b = 'storage/b.yaml';
const problems = (files: Record<string, string>, settings = settingsOf('currency: EUR\n')) =>
  problemsOf(assembled(files, settings));

describe('a file says whose and where its things are', () => {
  it("a file's own team, site and labels serve all that names none, and give way to its own", () => {
    const { volumes, groups } = estateOf(`
team: imagery
site: north-quay
labels: { survey: spring, grade: a }
volumes:
  plates-1: { size: 40 GiB, tier: bulk }
  plates-2: { size: 40 GiB, tier: bulk, team: ledger, site: south-quay, labels: { grade: b } }
volume-groups:
  plates: { members: [plates-1] }
`);
    expect(volumes.get('plates-1')).toMatchObject({
      team: 'imagery',
      site: 'north-quay',
      labels: { survey: 'spring', grade: 'a' },
    });
    expect(volumes.get('plates-2')).toMatchObject({
      team: 'ledger',
      site: 'south-quay',
      labels: { survey: 'spring', grade: 'b' },
    });
    expect(groups.get('plates')).toMatchObject({ team: 'imagery', site: 'north-quay' });
  });

  it('the boot volume of a server is attached to it, and listing it again is no second attachment', () => {
    const { holders } = estateOf(`
servers: { scanner: { boot: root } }
volumes: { root: { size: 50 GiB, tier: steady } }
attachments: [ { volume: root, server: scanner } ]
`);
    expect(holders.get('root')).toMatchObject([{ server: 'scanner', boot: true }]);
  });
});

describe('references that lead nowhere', () => {
  it('an attachment names both its ends, and each that is missing is said', () => {
    const found = problems({ [a]: 'attachments:\n  - { volume: plates-1, server: scanner }\n' });
    expect(found.map(line)).toEqual([
      `${a}:2:5: the attachment of plates-1 to scanner names the volume plates-1, and no volume of that name is declared`,
      `${a}:2:5: the attachment of plates-1 to scanner names the server scanner, and no server of that name is declared`,
    ]);
  });

  it('a name that is nearly right is offered', () => {
    const [problem] = problems({
      [a]: 'volumes: { plates-1: { size: 1 GiB, tier: bulk } }\nservers: { scanner: { boot: plates1 } }\n',
    });
    expect(problem && line(problem)).toBe(
      `${a}:2:23: the server scanner starts from a volume that is not declared: it names the volume plates1, and no volume of that name is declared`,
    );
    expect(problem?.advice).toContain('Did you mean plates-1?');
  });

  it('a member of a group that is declared nowhere', () => {
    expect(problems({ [a]: 'volume-groups: { plates: { members: [plates-1] } }\n' }).map(line)).toEqual([
      `${a}:1:28: the volume group plates has a member that is not declared: it names the volume plates-1, and no volume of that name is declared`,
    ]);
  });

  const listed = settingsOf(
    'currency: EUR\nsites: { north-quay: {}, south-quay: {} }\nteams: [imagery, ledger]\n',
  );

  it('a site or a team that the settings do not list; where they list none, any may be named', () => {
    const text =
      'site: north-key\nteam: imagry\nvolumes:\n  a: { size: 1 GiB, tier: bulk }\n  b: { size: 1 GiB, tier: bulk }\n';
    const found = problems({ [a]: text }, listed);
    expect(found.map(({ advice }) => advice.split('?')[0])).toEqual([
      'Did you mean north-quay',
      'Did you mean imagery',
    ]);
    expect(problems({ [a]: text })).toEqual([]);
  });

  it('a team of a group is held against the list, too', () => {
    const text = `site: north-quay\nteam: imagery\nvolumes:\n  a: { size: 1 GiB, tier: bulk }\nvolume-groups:\n  plates: { members: [a], team: legder }\n`;
    expect(problems({ [a]: text }, listed).map(line)).toEqual([
      `${a}:6:27: the volume group plates names the team legder, and ullage.yaml does not list that team`,
    ]);
  });
});

describe("once the settings list sites and teams, nothing is nowhere and nobody's", () => {
  const sites = settingsOf('currency: EUR\nsites: { north-quay: {} }\n');
  const teams = settingsOf('currency: EUR\nteams: [imagery]\n');

  it('a volume that names no site would be in no quota', () => {
    expect(problems({ [a]: 'volumes:\n  plates-1: { size: 1 GiB, tier: bulk }\n' }, sites).map(line)).toEqual(
      [
        `${a}:2:3: the volume plates-1 names no site, and ullage.yaml lists the sites, each with its quota and its attachment slots`,
      ],
    );
  });

  it('a file that names none is told of once, with how many things in it', () => {
    const text =
      'volumes:\n  a: { size: 1 GiB, tier: bulk }\n  b: { size: 1 GiB, tier: bulk }\nservers:\n  s: {}\n';
    expect(problems({ [a]: text, [b]: text.replaceAll(/\b([abs]):/g, '$1-b:') }, sites).map(line)).toEqual([
      `${a}:2:3: the volume a and 2 other things in this file have no site, and ullage.yaml lists the sites, each with its quota and its attachment slots`,
      `${b}:2:3: the volume a-b and 2 other things in this file have no site, and ullage.yaml lists the sites, each with its quota and its attachment slots`,
    ]);
  });

  it('what is billed names a team; a server that nobody is billed for need not', () => {
    const text = (server: string) => `team: imagery\nvolumes:\n  a: { size: 1 GiB, tier: bulk }\n${server}`;
    expect(problems({ [a]: text(''), [b]: 'servers:\n  free: {}\n' }, teams)).toEqual([]);
    expect(
      problems({ [a]: text(''), [b]: 'servers:\n  billed: { type: small }\n' }, teams).map(line),
    ).toEqual([
      `${b}:2:3: the server billed names no team, and ullage.yaml lists the teams, for which a policy sets spend limits`,
    ]);
  });
});

describe('names are unique across the estate', () => {
  const volume = 'volumes:\n  plates-1: { size: 40 GiB, tier: bulk }\n';

  it.each([
    ['volume', volume],
    ['server', 'servers:\n  plates-1: {}\n'],
    ['attachment', 'attachments:\n  - { volume: plates-1, server: scanner }\n'],
  ])('a %s in two files is reported at the second, with the place of the first', (kind, text) => {
    const ends = { 'storage/0.yaml': `${kind === 'volume' ? '' : volume}servers:\n  scanner: {}\n` };
    const [found, ...others] = problems({ ...ends, [b]: text, [a]: text });
    expect(others).toEqual([]);
    expect(found?.place?.file).toBe(b);
    expect(found?.message).toContain('declared twice: here and at storage/a.yaml:2');
  });

  it('a volume group in two files', () => {
    const group = 'volume-groups:\n  plates: { members: [plates-1] }\n';
    const found = problems({ 'storage/0.yaml': volume, [a]: group, [b]: group });
    expect(found.map(({ message }) => message)).toEqual([
      'the volume group plates is declared twice: here and at storage/a.yaml:2',
    ]);
  });

  it('one volume in two groups', () => {
    const found = problems({
      [a]: `${volume}volume-groups:\n  plates: { members: [plates-1] }\n  charts: { members: [plates-1] }\n`,
    });
    expect(found.map(({ message }) => message)).toEqual([
      'plates-1 is a member of two volume groups: charts and plates (storage/a.yaml:4)',
    ]);
  });

  it('a member of a group with a file system of its own', () => {
    const found = problems({
      [a]: 'volumes:\n  plates-1: { size: 1 GiB, tier: bulk, file-system: { mount: /a, type: xfs } }\nvolume-groups:\n  plates: { members: [plates-1] }\n',
    });
    expect(found.map(({ message }) => message).join()).toContain(
      'has a file system of its own and is a member',
    );
  });
});

describe('a rename', () => {
  it('is of one kind: a server may take the old name of a volume', () => {
    expect(
      problems({ [a]: 'servers:\n  x: { formerly: old }\nvolumes:\n  old: { size: 1 GiB, tier: bulk }\n' }),
    ).toEqual([]);
  });
});

describe('a record of a deletion', () => {
  const record = (on: string) =>
    `retired:\n  - { volume: plates-0, on: ${on}, reason: superseded, backup: vault, backed-up: ${on} }\n`;

  it('is the latest where a name was used and retired twice, whatever the order of the files', () => {
    const orders = [
      { [a]: record('2026-01-02'), [b]: record(today) },
      { [a]: record(today), [b]: record('2026-01-02') },
    ];
    for (const files of orders) {
      expect(estateOf(files).retired.get('plates-0')?.at(-1)?.on).toBe(today);
    }
  });

  it('stays when the other file that has one goes', () => {
    const parts = [partOf(record('2026-01-02'), a), partOf(record(today), b)];
    const both = assemble(parts, settingsOf());
    if (!both.ok) throw new Error('two records are no problem');
    const [kept] = parts;
    const left = kept === undefined ? both : assemble([kept], settingsOf(), both.value);
    expect(left.ok && left.value.retired.get('plates-0')?.at(-1)?.on).toBe('2026-01-02');
  });
});

it('everything that does not hold together is reported in one run', () => {
  const found = problems({
    [a]: 'volumes:\n  v: { size: 1 GiB, tier: bulk }\n  w: { size: 1 GiB, tier: bulk }\nservers:\n  s: { boot: gone }\n',
    [b]: 'volumes:\n  v: { size: 1 GiB, tier: bulk }\nattachments:\n  - { volume: v, server: nowhere }\nvolume-groups:\n  g: { members: [absent] }\n',
  });
  expect(found.length).toBeGreaterThanOrEqual(4);
});

/** An estate as plain values, in one order. */
function plain(estate: Estate): object {
  const sorted = (map: ReadonlyMap<string, unknown>): object =>
    Object.fromEntries([...map].sort(([x], [y]) => (x < y ? -1 : 1)));
  return Object.fromEntries(
    Object.entries(estate).map(([key, value]) => [
      key,
      value instanceof Map || Symbol.iterator in value ? sorted(value) : value,
    ]),
  );
}

/** Each file as a part; a file that is the same as before is the same part. */
const partsOf = (files: Files, before: Files = {}, known: ReadonlyMap<string, EstatePart> = new Map()) =>
  Object.entries(files).map(
    ([file, text]) => (before[file] === text ? known.get(file) : undefined) ?? partOf(text, file),
  );

const anyNames = fc.uniqueArray(fc.constantFrom('s0', 's1', 'v0', 'v1', 'g0'));

describe('an estate put together over another', () => {
  it('is the same as one put together from nothing', () => {
    fc.assert(
      fc.property(change, anyNames, fc.subarray([0, 1, 2, 3]), ([before, after], renamed, dropped) => {
        const settings = settingsOf();
        const files = filesOf(before);
        const base = partsOf(files);
        const known = new Map(base.map((part) => [part.file, part]));
        const head = partsOf(filesOf(after, { renamed: new Set(renamed) }), files, known).filter(
          (_part, index) => !dropped.includes(index),
        );
        const standing = assemble(base, settings);
        if (!standing.ok) throw new Error(standing.problems.map(line).join('\n'));
        const over = assemble(head, settings, standing.value);
        const fresh = assemble(head, settings);
        expect(over.ok).toBe(fresh.ok);
        if (over.ok && fresh.ok) expect(plain(over.value)).toEqual(plain(fresh.value));
        const said = (outcome: typeof over) => [...new Set(problemsOf(outcome).map(line))].sort();
        expect(said(over)).toEqual(said(fresh));
      }),
      { numRuns: 150 },
    );
  });
});

describe('one file system at one place', () => {
  const volume = (name: string, mount: string, type = 'ext4'): string =>
    `  ${name}: { size: 10 GiB, tier: bulk, file-system: { mount: ${mount}, type: ${type} } }\n`;
  const held = (...names: readonly string[]): string =>
    `attachments:\n${names.map((name) => `  - { volume: ${name}, server: scanner }\n`).join('')}`;
  const two = (first: string, second: string): string =>
    `servers: { scanner: {}, archive: {} }\nvolumes:\n${first}${second}`;

  it('two on one mount point of one server hide each other', () => {
    const text = `${two(volume('v', '/plates'), volume('w', '/plates'))}${held('v', 'w')}`;
    expect(problems({ [a]: text }).map(line)).toEqual([
      `${a}:4:34: two file systems are mounted at /plates on scanner: that of w and that of v (${a}:3)`,
    ]);
  });

  it('also where the one came in a file of its own, over an estate that held together', () => {
    const first = `${two(volume('v', '/plates'), '')}${held('v')}`;
    const second = `volumes:\n${volume('w', '/plates')}${held('w')}`;
    expect(problems({ [a]: first, [b]: second }).map(({ place }) => place?.file)).toEqual([b]);
  });

  it('on two servers are two, swap is nowhere, and another place is another', () => {
    const apart = `${two(volume('v', '/plates'), volume('w', '/plates'))}attachments:\n  - { volume: v, server: scanner }\n  - { volume: w, server: archive }\n`;
    expect(problems({ [a]: apart })).toEqual([]);
    expect(
      problems({ [a]: `${two(volume('v', '/x', 'swap'), volume('w', '/x', 'swap'))}${held('v', 'w')}` }),
    ).toEqual([]);
    expect(problems({ [a]: `${two(volume('v', '/x'), volume('w', '/y'))}${held('v', 'w')}` })).toEqual([]);
  });

  it('of a volume and of a group of one name are told apart by being refused', () => {
    const text = `${two(volume('plates', '/plates'), '  m: { size: 10 GiB, tier: bulk }\n')}volume-groups:\n  plates: { members: [m], file-systems: { /plates: { size: 5 GiB, type: ext4 } } }\n`;
    expect(problems({ [a]: text }).map(({ message }) => message)).toEqual([
      expect.stringContaining('so both file systems would be called plates:/plates'),
    ]);
  });
});
