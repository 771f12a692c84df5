/** Whatever is wrong with a revision is told in one run: a fault of one kind hides none of another, nor makes one up. */
import { describe, expect, it } from 'vitest';
import { type Files, gannetPoint, line, unjudgedFiles } from '../estate/builder.ts';

const main: Files = { ...gannetPoint, 'storage/imagery.yaml': 'volumes: {}\n' };

const told = async (files: Files): Promise<readonly string[]> =>
  (await unjudgedFiles(main, { ...main, ...files })).problems.map(line).sort();

const file = 'storage/imagery.yaml';

describe('a size that does not read hides nothing beside it', () => {
  it('not the unknown tier of the same volume, nor one of the same file', async () => {
    expect(
      await told({ [file]: 'volumes:\n  a: { size: 40, tier: bulky }\n  b: { size: 40 GiB, tier: bluk }\n' }),
    ).toEqual([
      `${file}:2:14: size of a is 40, which is not a size`,
      `${file}:2:18: the volume a names the tier bulky, which the price list in force (prices/2026.yaml) does not price`,
      `${file}:3:22: the volume b names the tier bluk, which the price list in force (prices/2026.yaml) does not price`,
    ]);
  });

  it('not an attachment that leads nowhere, and none is made up to what the volume is', async () => {
    expect(
      await told({
        [file]: `servers:
  s: {}
volumes:
  a: { size: 40, tier: bulk }
attachments:
  - { volume: a, server: s }
  - { volume: a, server: t }
volume-groups:
  g: { members: [a], layout: linear }
`,
      }),
    ).toEqual([
      `${file}:4:14: size of a is 40, which is not a size`,
      `${file}:7:5: the attachment of a to t names the server t, and no server of that name is declared`,
    ]);
  });

  it('not a team or a site that nobody knows, nor what other files say', async () => {
    expect(
      await told({
        'ullage.yaml': 'currency: EUR\nsites: { north-quay: {} }\nteams: [imagery]\n',
        [file]: 'team: imagery\nsite: north-quay\nvolumes:\n  a: { size: {}, tier: bulk, team: imagry }\n',
        'storage/ledger.yaml':
          'team: imagery\nsite: north-quay\nvolumes:\n  a: { size: 4 GiB, tier: bulk }\n  b: { size: 4 GiB, tier: bulk, site: south }\n',
      }),
    ).toEqual([
      'storage/imagery.yaml:4:14: size of a is a mapping, which is not a size',
      'storage/imagery.yaml:4:30: the volume a names the team imagry, and ullage.yaml does not list that team',
      'storage/ledger.yaml:4:3: the volume a is declared twice: here and at storage/imagery.yaml:4',
      'storage/ledger.yaml:5:33: the volume b names the site south, and ullage.yaml does not list that site',
    ]);
  });

  it('not two days that no calendar has', async () => {
    expect(
      await told({
        [file]:
          'volumes:\n  a: { size: 4 GiB, tier: bulk, retain-until: 2027-02-30 }\n  b: { size: x, tier: bulk, retain-until: 2027-02-31 }\n',
      }),
    ).toEqual([
      `${file}:2:47: 2027-02-30 is not a day in the calendar`,
      `${file}:3:14: size of b is x, which is not a size`,
      `${file}:3:43: 2027-02-31 is not a day in the calendar`,
    ]);
  });
});

describe('what does not read is told of once, and nothing follows from it', () => {
  it.each([
    ['a tier', 'volumes:\n  a: { size: 4 GiB, tier: {} }\n', '2:27: tier of a is a mapping'],
    ['a whole volume', 'volumes:\n  a: 4\nvolume-groups:\n  g: { members: [a] }\n', '2:6: a of volumes is 4'],
    ['a whole server', 'servers:\n  a: []\nvolumes: {}\n', '2:6: a of servers is a list'],
    [
      'a member',
      'volumes:\n  a: { size: 4 GiB, tier: bulk }\nvolume-groups:\n  g: { members: [a, {}], layout: mirrored, copies: 3 }\n',
      '4:21: item 2 of members is a mapping',
    ],
    [
      'the size of a volume that a file system fills',
      'volumes:\n  a: { size: 0 GiB, tier: bulk, file-system: { mount: /a, type: ext4, size: 4 GiB } }\n',
      '2:14: a size cannot be zero',
    ],
    ['both ends of an attachment', 'attachments:\n  - {}\n', '2:5: item 1 of attachments has no'],
    ['all volumes', 'volumes: 4\n', '1:10: volumes is 4'],
  ])('%s', async (_what, text, problem) => {
    const problems = await told({ [file]: text });
    for (const each of problems) expect(each).toContain(`${file}:${problem}`);
    expect(new Set(problems).size).toBe(problems.length);
    expect(problems.length).toBeGreaterThan(0);
  });

  it.each([
    [
      'one volume a space too deep',
      'servers: { web: {} }\nvolumes:\n  a: { size: 4 GiB, tier: bulk }\n   b: { size: 4 GiB, tier: bulk }\n',
    ],
    ['a tab', 'servers:\n\tweb: {}\nvolumes: { a: { size: 4 GiB, tier: bulk } }\n'],
    ['a bracket that is not closed', 'servers: { web: {} }\nvolumes:\n  a: { size: 4 GiB, tier: bulk\n'],
    [
      'the volumes under the servers',
      'servers:\n  web: {}\n  volumes:\n    a: { size: 4 GiB, tier: bulk }\n',
    ],
    [
      'the key misspelt that they stand under',
      'server:\n  web: {}\nvolume:\n  a: { size: 4 GiB, tier: bulk }\n',
    ],
    ['their names at the top', 'servers:\nweb: {}\nvolumes:\na: { size: 4 GiB, tier: bulk }\n'],
    ['no mapping at all', '- volumes: { a: { size: 4 GiB, tier: bulk } }\n- servers: { web: {} }\n'],
  ])(
    'of a file that does not read at all, with %s: what other files name is not missed',
    async (_what, text) => {
      const attachments = 'attachments:\n  - { volume: a, server: web }\n';
      const problems = await told({ 'storage/attached.yaml': attachments, 'storage/ours.yaml': text });
      expect(problems.length).toBeGreaterThan(0);
      for (const each of problems) expect(each).toMatch(/^storage\/ours\.yaml:/);
      // What cannot be in it is told all the same.
      const more = `${attachments}  - { volume: nosuch, server: web }\n`;
      expect(
        (await told({ 'storage/attached.yaml': more, 'storage/ours.yaml': text })).filter((each) =>
          each.startsWith('storage/attached.yaml:'),
        ),
      ).toEqual([expect.stringContaining('names the volume nosuch')]);
      // Once it reads, what is missing is told.
      expect(
        await told({ 'storage/attached.yaml': attachments, 'storage/ours.yaml': 'volumes: {}\n' }),
      ).toHaveLength(2);
    },
  );

  it('the currency of the settings, and a rate: tiers are known all the same', async () => {
    expect(
      await told({
        'ullage.yaml': 'currency: []\n',
        'prices/2026.yaml': 'from: 2026-01-01\ncurrency: EUR\ntiers:\n  bulk: { rate: 5, per: GiB-month }\n',
        [file]: 'volumes:\n  a: { size: 4 GiB, tier: bulk }\n  b: { size: 4 GiB, tier: steady }\n',
      }),
    ).toEqual([
      'prices/2026.yaml:4:17: rate of bulk is 5, which is not an amount',
      `${file}:3:21: the volume b names the tier steady, which the price list in force (prices/2026.yaml) does not price`,
      'ullage.yaml:1:11: currency is a list, which is not a currency',
    ]);
  });
});

it('each faulty entry of a rule pack and of a waivers file is told of beside the others', async () => {
  expect(
    await told({
      'policies/storage.yaml':
        'use: [starter, no-such]\nrules:\n  - { rule: growth-step, times: x }\n  - { rule: nope }\n  - { rule: freeze, from: 2026-02-30, until: 2026-03-01, reason: x }\n',
      'waivers/2026.yaml':
        'waivers:\n  - { rule: no-shrink, subject: a, reason: b, approved-by: c, from: [], until: 2026-02-31 }\n',
    }),
  ).toEqual([
    'policies/storage.yaml:1:16: no pack named no-such ships with Ullage or is listed in ullage.yaml',
    'policies/storage.yaml:3:33: times of item 1 is x, which is not a number',
    'policies/storage.yaml:4:13: there is no rule nope',
    'policies/storage.yaml:5:27: 2026-02-30 is not a day in the calendar',
    'waivers/2026.yaml:2:69: from of item 1 is a list, which is not a date',
    'waivers/2026.yaml:2:80: 2026-02-31 is not a day in the calendar',
  ]);
});

it('a shape that is no JSON Schema is told of with its place, and nothing is made of it', async () => {
  const shape = '{ rule: shape, of: volume, schema: { properties: { size: { type: ext4 } } } }';
  expect(await told({ 'policies/storage.yaml': `rules:\n  - ${shape}\n  - { rule: nope }\n` })).toEqual([
    expect.stringMatching(/^policies\/storage\.yaml:2:\d+: type must be equal/),
    'policies/storage.yaml:3:13: there is no rule nope',
  ]);
});
