import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { afterAll, describe, expect, it } from 'vitest';
import schema from '../../schema/provider-survey.json' with { type: 'json' };
import { jsonText, readJson } from '../../src/read/json.ts';
import { ledNowhere, readProviderList, together } from '../../src/survey/provider-list.ts';
import { readProviderSurvey } from '../../src/survey/provider-survey.ts';
import { ullage } from '../cli/run.ts';
import { gannetPoint, problemsOf, valueIn } from '../estate/builder.ts';
import { makeRepository, removeRepositories } from '../repository.ts';

afterAll(removeRepositories);

const at = '2026-11-20T06:00:00Z';
const columns = {
  volumes: {
    id: 'Volume ID',
    name: 'Name',
    size: { field: 'Size', unit: 'GiB' },
    tier: 'Class',
    site: 'Zone',
    server: 'Attached to',
  },
  tiers: { economy: 'bulk', standard: 'steady' },
} as const;

const csv = `Volume ID,Name,Size,Class,Zone,Attached to,Owner
vol-2,plates-2,40,economy,north-quay,,"Robin, of imagery"
vol-1,"plates ""one""",0.5,gold,north-quay,plate-scanner,Bo
`;

describe("the provider's list", () => {
  it('is kept in the order of the identifiers, with your words for its, and nothing that is not named', () => {
    const { survey, unknown } = valueIn(readProviderList(csv, 'volumes.csv', columns, at));
    expect(survey).toEqual({
      format: 'ullage-provider-survey-1',
      at,
      lists: ['volumes'],
      volumes: [
        {
          id: 'vol-1',
          name: 'plates "one"',
          size: `${1n << 29n}`,
          tier: 'gold',
          site: 'north-quay',
          servers: ['plate-scanner'],
        },
        {
          id: 'vol-2',
          name: 'plates-2',
          size: `${40n << 30n}`,
          tier: 'bulk',
          site: 'north-quay',
          servers: [],
        },
      ],
      servers: [],
    });
    expect([...unknown]).toEqual([['tier gold', 1]]);
    expect(JSON.stringify(survey)).not.toMatch(/Robin|Bo/);
  });

  it('reads alike from JSON by pointers (RFC 6901), and from a JSON value in each line', () => {
    const pointers = {
      volumes: { rows: '/data/volumes', id: '/id', size: { field: '/spec/size', unit: 'GB' }, tier: '/a~1b' },
      servers: { rows: '/data/servers', name: 'name', power: 'state' },
      power: { ACTIVE: 'running' },
    } as const;
    const whole = {
      data: {
        volumes: [{ id: 'v', spec: { size: 3 }, 'a/b': 'bulk' }],
        servers: [{ name: 's', state: 'ACTIVE' }],
      },
    };
    const { survey } = valueIn(readProviderList(JSON.stringify(whole), 'all.json', pointers, at));
    expect(survey.volumes).toEqual([{ id: 'v', size: '3000000000', tier: 'bulk' }]);
    expect(survey.servers).toEqual([{ name: 's', power: 'running' }]);
    const { rows: _, ...fields } = pointers.volumes;
    const lines = '{"id":"v","spec":{"size":3},"a/b":"bulk"}\n{"id":"w","spec":{"size":"4"}}\n';
    const read = valueIn(readProviderList(lines, 'v.ndjson', { volumes: fields }, at));
    expect(read.survey.volumes.map(({ id, size }) => [id, size])).toEqual([
      ['v', '3000000000'],
      ['w', '4000000000'],
    ]);
  });

  it('tells every row that is wrong, with its line, and what the columns are', () => {
    const wrong = readProviderList(
      'Volume ID,Size\na,forty\n"b\nc",\nd,1.0000000001\n',
      'v.csv',
      { volumes: { id: 'Volume ID', size: columns.volumes.size } },
      at,
    );
    expect(problemsOf(wrong).map(({ place, message }) => [place?.line, message])).toEqual([
      [2, 'Size is forty, and no size'],
      [4, 'Size is empty, and no size'],
      [5, 'Size is 1.0000000001, and no size'],
    ]);
    const slip = csv.replace('Volume ID', 'Volume Id');
    expect(problemsOf(readProviderList(slip, 'v.csv', columns, at))).toEqual([
      {
        place: { file: 'v.csv', line: 1, column: 1 },
        message:
          'the list has no column Volume ID, or has it twice; its columns are Volume Id, Name, Size, Class, Zone, Attached to, Owner',
        advice: 'Did you mean Volume Id? Name the columns under provider-list: in ullage.yaml.',
      },
    ]);
    const json = JSON.stringify({ all: [{ size: 'much' }, null, { size: 1 }] });
    const items = { volumes: { rows: '/all', size: { field: 'size', unit: 'TiB' } } } as const;
    expect(problemsOf(readProviderList(json, 'v.json', items, at)).map(({ message }) => message)).toEqual([
      'v.json, item 1 of /all: size is much, and no size',
      'v.json, item 2 of /all: size is empty, and no size',
    ]);
  });

  it('refuses a file that was cut within a row, whose last figure is not the whole of it', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: csv.length - 1 }), (length) => {
        const cut = readProviderList(csv.slice(0, length), 'v.csv', columns, at);
        if (cut.ok)
          for (const { size } of cut.value.survey.volumes)
            expect([`${40n << 30n}`, `${1n << 29n}`]).toContain(size);
      }),
    );
    expect(
      problemsOf(readProviderList(csv.slice(0, csv.indexOf('0,economy')), 'v.csv', columns, at)),
    ).toEqual([expect.objectContaining({ message: 'the row has 3 fields, and the list 7 columns' })]);
  });

  it('takes no number that JSON cannot read exactly, and no size beyond what can be counted', () => {
    const fields = { volumes: { id: 'id', size: { field: 'size', unit: 'B' } } } as const;
    const size = (text: string) => readProviderList(`[{"id":1,"size":${text}}]`, 'v.json', fields, at);
    expect(valueIn(size('9007199254740991')).survey.volumes).toEqual([{ id: '1', size: '9007199254740991' }]);
    expect(size('9007199254740993').ok).toBe(false);
    const large = (figure: string) =>
      readProviderList(
        `ID,Size\n1,${figure}\n`,
        'v.csv',
        { volumes: { id: 'ID', size: { field: 'Size', unit: 'TiB' } } },
        at,
      );
    expect(large('8388607').ok).toBe(true);
    expect(large('8388608').ok).toBe(false);
  });

  const both = {
    volumes: { id: 'ID', name: 'Name', size: { field: 'Size', unit: 'GiB' }, server: 'Server' },
    servers: { id: 'ID', name: 'Name' },
  } as const;
  const servers = 'ID,Name,State\ns-1,plate-scanner,on\n';

  it('takes each file for a list of what its columns say, and joins several', () => {
    const lists = ['ID,Name,Size,Server\nv-1,one,1,s-1\n', servers, 'ID,Name,Size,Server\nv-2,two,2,\n'].map(
      (text) => valueIn(readProviderList(text, 'x.csv', both, at)),
    );
    expect(lists.map(({ survey }) => survey.lists)).toEqual([['volumes'], ['servers'], ['volumes']]);
    expect(lists[2]?.absent).toEqual(['Server']);
    const surveys = lists.map(({ survey }) => survey);
    const all = valueIn(together(surveys, at));
    expect(all.volumes.map(({ id }) => id)).toEqual(['v-1', 'v-2']);
    expect(all.servers).toEqual([{ id: 's-1', name: 'plate-scanner' }]);
    expect(valueIn(together([...surveys].reverse(), at))).toEqual(all);
    expect(valueIn(together([...surveys, ...surveys], at))).toEqual(all);
    const alike = { volumes: { id: 'ID', size: both.volumes.size }, servers: { id: 'ID', type: 'Type' } };
    expect(problemsOf(readProviderList('ID,Size,Type\n1,2,3\n', 'x.csv', alike, at))).toEqual([
      expect.objectContaining({ message: 'the list reads as one of volumes and as one of servers' }),
    ]);
  });

  it('keeps a volume once where it is listed for each of its servers, and refuses two of one identifier', () => {
    const list = (rows: string) =>
      valueIn(readProviderList(`ID,Name,Size,Server\n${rows}`, 'x.csv', both, at)).survey;
    const shared = valueIn(together([list('v,one,1,a\nv,one,1,b\nv,one,1,c\n')], at));
    expect(shared.volumes).toEqual([
      { id: 'v', name: 'one', size: `${1n << 30n}`, servers: ['a', 'b', 'c'] },
    ]);
    expect(problemsOf(together([list('v,one,1,a\n'), list('v,one,2,a\n')], at))).toEqual([
      expect.objectContaining({ message: 'the volume v is listed twice, and differently' }),
    ]);
  });

  it('has each row without an identifier as a volume of its own, however alike: each is billed', () => {
    fc.assert(
      fc.property(
        fc.array(fc.record({ id: fc.constantFrom('', 'v-1', 'v-2'), name: fc.constantFrom('', 'backup') })),
        (rows) => {
          const text = `ID,Name,Size,Server\n${rows.map(({ id, name }) => `${id},${name},10,\n`).join('')}`;
          const list = readProviderList(text, 'x.csv', both, at);
          fc.pre(list.ok && rows.every(({ id, name }) => id === '' || name === ''));
          const { volumes } = valueIn(together([valueIn(list).survey], at));
          const named = new Set(rows.flatMap(({ id }) => (id === '' ? [] : [id])));
          expect(volumes).toHaveLength(named.size + rows.filter(({ id }) => id === '').length);
        },
      ),
    );
  });

  it('says where the last line has no end, since one that was cut off looks the same', () => {
    const list = (text: string) => valueIn(readProviderList(text, 'x.csv', { volumes: sized }, at));
    const sized = { id: 'ID', size: both.volumes.size };
    expect(list('ID,Size\nv,40\n').cut).toBeUndefined();
    expect(list('ID,Size\r\nv,"40"').cut).toBeUndefined();
    // Cut within 40.
    const cut = list('ID,Size\nv,4');
    expect(cut.survey.volumes).toEqual([{ id: 'v', size: `${4n << 30n}` }]);
    expect(cut.cut).toBe(
      'x.csv ends without a line break, after Size 4: if it was cut off, that may be half of it, and more rows may be missing.',
    );
  });

  it('refuses a pointer of the settings that leads nowhere, where what is meant is elsewhere in the list', () => {
    const pointers = {
      volumes: { rows: '/data/volumes', id: '/id', size: { field: '/size', unit: 'GiB' } },
      servers: { rows: '/data/machines', id: '/id', name: '/name', power: '/state' },
      power: { on: 'running' },
    } as const;
    const places = {
      volumes: { file: 'ullage.yaml', line: 3, column: 20 },
      servers: { file: 'ullage.yaml', line: 4, column: 20 },
    };
    const list = (data: object) =>
      valueIn(readProviderList(JSON.stringify({ data }), 'all.json', pointers, at));
    const volumes = [{ id: 'v', size: 1 }];
    const servers = [{ id: 's', name: 'plate-scanner', state: 'on' }];
    expect(ledNowhere([list({ volumes, virtual: { machines: servers } })], places)).toEqual({
      problems: [
        {
          place: places.servers,
          message:
            'there is no list of servers at /data/machines, and one at /data/virtual/machines looks like it',
          advice: 'Write rows: /data/virtual/machines if it is.',
        },
      ],
      said: [],
    });
    // In a list of its own, or nowhere: no slip. Links have identifiers, too, and are no servers.
    const alone = list({ volumes, links: [{ id: 1, href: 'next' }] });
    expect(ledNowhere([alone], places)).toEqual({
      problems: [],
      said: ['There is no list at /data/machines, so no servers were read.'],
    });
    const nothing = { problems: [], said: [] };
    expect(ledNowhere([alone, list({ machines: servers })], places)).toEqual(nothing);
    expect(ledNowhere([list({ volumes, machines: [] })], places)).toEqual(nothing);
  });

  it('is kept so that it reads again, whatever names are in it', () => {
    const text = fc.oneof(
      fc.string({ unit: 'binary', maxLength: 300 }),
      fc.string(),
      fc.double(),
      fc.bigInt(),
      fc.constant(null),
    );
    const row = fc.record({ id: text, name: text, tier: text, size: fc.nat() });
    const fields = {
      volumes: { id: 'id', name: 'name', tier: 'tier', size: { field: 'size', unit: 'B' } },
    } as const;
    fc.assert(
      fc.property(fc.array(row, { minLength: 1, maxLength: 5 }), (rows) => {
        const json = JSON.stringify(rows, (_, value) => (typeof value === 'bigint' ? `${value}` : value));
        const list = together([valueIn(readProviderList(json, 'x', fields, at)).survey], at);
        // Two of one identifier are refused.
        fc.pre(list.ok);
        const survey = valueIn(list);
        const again = valueIn(readProviderSurvey(valueIn(readJson(jsonText(survey), 'provider.json'))));
        expect(again.volumes.map(({ id, name, tier, size }) => [id, name, tier, `${size}`])).toEqual(
          survey.volumes.map(({ id, name, tier, size }) => [id, name, tier, size]),
        );
      }),
    );
  });

  it('has no key but these: none is for a person, an address or a free text', () => {
    const { properties } = schema;
    expect(Object.keys(properties)).toEqual(['format', 'at', 'lists', 'volumes', 'servers']);
    expect(Object.keys(properties.volumes.items.properties)).toEqual([
      'id',
      'name',
      'size',
      'tier',
      'site',
      'servers',
      'server',
      'boot',
    ]);
    expect(Object.keys(properties.servers.items.properties)).toEqual([
      'id',
      'name',
      'site',
      'type',
      'power',
      'boot',
    ]);
    expect(
      [schema, properties.volumes.items, properties.servers.items].map((each) => each.additionalProperties),
    ).toEqual([false, false, false]);
  });

  it('never throws, whatever it is given', () => {
    fc.assert(
      fc.property(
        fc.oneof(fc.string(), fc.json(), fc.constantFrom('[', '{', '[null]', '{"a":1}\n{', '"\n')),
        (text) => {
          for (const settings of [
            columns,
            { volumes: { rows: '/a', size: { field: '/__proto__', unit: 'GiB' } } } as const,
          ])
            expect(typeof readProviderList(text, 'x', settings, at).ok).toBe('boolean');
        },
      ),
      { numRuns: 500 },
    );
  });
});

it('is kept from the command line, the same bytes for the same list, and held against what is declared', async () => {
  const settings = `currency: EUR\nprovider-list:\n  volumes: { id: Volume ID, name: Name, size: { field: Size, unit: GiB }, tier: Class }\n  tiers: { economy: bulk }\n`;
  const { dir, write } = makeRepository({
    files: {
      ...gannetPoint,
      'ullage.yaml': settings,
      'storage/imagery.yaml':
        'team: imagery\nvolumes:\n  plates-2: { id: vol-2, size: 30 GiB, tier: bulk }\n',
    },
  });
  write({ 'volumes.csv': csv });
  const add = () => ullage('survey', 'provider', join(dir, 'volumes.csv'), '--repo', dir, '--at', at);
  const { code, out } = await add();
  expect([code, out]).toEqual([0, expect.stringContaining('tier gold, once')]);
  const kept = readFileSync(join(dir, 'surveys/provider.json'), 'utf8');
  await add();
  expect(readFileSync(join(dir, 'surveys/provider.json'), 'utf8')).toBe(kept);
  write({ 'servers.csv': 'ID,State\ns-1,running\n' });
  const other = [
    'survey',
    'provider',
    join(dir, 'servers.csv'),
    '--repo',
    dir,
    '--at',
    '2026-11-21T06:00:00Z',
  ];
  write({ 'ullage.yaml': `${settings}  servers: { id: ID, power: State }\n` });
  expect((await ullage(...other)).out).toContain(
    'What was kept before, of 2026-11-20T06:00:00Z, also listed volumes',
  );
  expect((await add()).out).toContain(
    'What was kept before, of 2026-11-21T06:00:00Z, was newer, and also listed servers',
  );
  expect(readFileSync(join(dir, 'surveys/provider.json'), 'utf8')).toBe(kept);
  const compared = await ullage('survey', 'compare', '--repo', dir, '--now', '2026-11-25');
  expect(compared.out).toContain('the size of plates-2 is 40 GiB at the provider, and declared 30 GiB');
  expect(compared.code).toBe(1);
  const bare = makeRepository({ files: gannetPoint });
  const untold = await ullage('survey', 'provider', join(dir, 'volumes.csv'), '--repo', bare.dir);
  expect([untold.code, untold.out]).toEqual([2, expect.stringContaining('does not say which field')]);
});
