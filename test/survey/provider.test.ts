import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { afterAll, describe, expect, it } from 'vitest';
import { readProviderList } from '../../src/survey/provider-list.ts';
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
          server: 'plate-scanner',
        },
        { id: 'vol-2', name: 'plates-2', size: `${40n << 30n}`, tier: 'bulk', site: 'north-quay' },
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
      columns,
      at,
    );
    expect(problemsOf(wrong).map(({ place, message }) => [place?.line, message])).toEqual([
      [2, 'Size is forty, and no size'],
      [4, 'Size is empty, and no size'],
      [5, 'Size is 1.0000000001, and no size'],
    ]);
    const [missing] = problemsOf(readProviderList('A,B\n1,2\n', 'v.csv', columns, at));
    expect(missing?.message).toBe('the list has no column Size; its columns are A, B');
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
  const { dir, write } = makeRepository({
    files: {
      ...gannetPoint,
      'ullage.yaml': `currency: EUR\nprovider-list:\n  volumes: { id: Volume ID, name: Name, size: { field: Size, unit: GiB }, tier: Class }\n  tiers: { economy: bulk }\n`,
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
  const compared = await ullage('survey', 'compare', '--repo', dir, '--now', '2026-11-25');
  expect(compared.out).toContain('the size of plates-2 is 40 GiB at the provider, and declared 30 GiB');
  expect(compared.code).toBe(1);
  const bare = makeRepository({ files: gannetPoint });
  const untold = await ullage('survey', 'provider', join(dir, 'volumes.csv'), '--repo', bare.dir);
  expect([untold.code, untold.out]).toEqual([2, expect.stringContaining('does not say which field')]);
});
