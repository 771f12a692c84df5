import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import type { Estate } from '../../src/estate/estate.ts';
import { unknownTier } from '../../src/price/price-list.ts';
import { compareSurveys } from '../../src/survey/compare.ts';
import { type Declaration, declareSurveys } from '../../src/survey/declare.ts';
import { match } from '../../src/survey/match.ts';
import { asWritten } from '../../src/survey/own-system.ts';
import { type ProviderSurvey, readProviderSurvey } from '../../src/survey/provider-survey.ts';
import type { Survey } from '../../src/survey/survey.ts';
import { ullage } from '../cli/run.ts';
import { assembled, documentOf, estateOf, gannetPoint, pricesOf, valueIn } from '../estate/builder.ts';
import { makeRepository, removeRepositories } from '../repository.ts';
import { gib, kept } from './kept.ts';

afterAll(removeRepositories);

const nothing = estateOf('volumes: {}');

const declare = (estate: Estate, servers: readonly Survey[], provider?: ProviderSurvey): Declaration =>
  declareSurveys(estate, { servers, provider }, match(estate, servers, provider));

/** A file that was declared, after somebody wrote of which tier each volume is. */
const reviewed = (text = ''): string => text.replaceAll(unknownTier, 'bulk');

const textOf = ({ files }: Declaration, server: string): string =>
  reviewed(files.find(({ name }) => name === `${server}.yaml`)?.text);

const differing = (estate: Estate, servers: readonly Survey[], provider?: ProviderSurvey) =>
  compareSurveys(estate, { servers, provider }, pricesOf()).differences.map(({ message }) => message);

/** A server as an installer leaves it: one disk, and on it the group that every such server has. */
const stock = (server: string): Survey =>
  kept({
    server,
    devices: [{ name: 'vda', type: 'disk', size: gib(40), serial: `disk-of-${server}` }],
    'volume-groups': [
      {
        name: 'stock-vg',
        extent: `${4n << 20n}`,
        extents: 10239,
        free: 0,
        missing: 0,
        members: [{ device: 'vda', extents: 10239, free: 0 }],
        'logical-volumes': [{ name: 'root', size: gib(20), layout: 'linear' }],
      },
    ],
    'file-systems': [{ device: 'stock-vg/root', type: 'ext4', mounts: ['/'] }],
  });

describe('a group of one name on two servers', () => {
  const surveys = [stock('s'), stock('t')];

  it('is two groups where both servers are declared at once', () => {
    const both = declare(nothing, surveys);
    expect(textOf(both, 't')).toContain('The server calls a volume group stock-vg');
    const again = valueIn(assembled({ 's.yaml': textOf(both, 's'), 't.yaml': textOf(both, 't') }));
    expect([...again.groups.keys()]).toEqual(['stock-vg', 'stock-vg-2']);
    expect(differing(again, surveys)).toEqual([]);
  });

  it('is two groups where one server is declared after the other', () => {
    const first = textOf(declare(nothing, [stock('s')]), 's');
    const second = textOf(declare(valueIn(assembled({ 's.yaml': first })), surveys), 't');
    const both = valueIn(assembled({ 's.yaml': first, 't.yaml': second }));
    expect([...both.groups.values()].map(({ name, members }) => [name, members])).toEqual([
      ['stock-vg', ['s-vda']],
      ['stock-vg-2', ['t-vda']],
    ]);
    expect(differing(both, surveys)).toEqual([]);
    expect(declare(both, surveys)).toEqual({ files: [], leftOut: [], without: [] });
  });

  it('is not declared again after somebody gave it another name', () => {
    const text = textOf(declare(nothing, [stock('s')]), 's').replace('stock-vg:', 'plates:');
    const renamed = valueIn(assembled({ 's.yaml': text }));
    expect([...renamed.groups.keys()]).toEqual(['plates']);
    expect(declare(renamed, [stock('s')]).files).toEqual([]);
  });
});

it('a group is left out, and said to be, where what some of its members are cannot be told', () => {
  const estate = estateOf(`servers: { s: {} }
volumes: { a: { size: 10 GiB, tier: bulk }, b: { size: 40 GiB, tier: bulk } }
attachments: [ { volume: a, server: s }, { volume: b, server: s } ]
`);
  const survey = kept({
    server: 's',
    devices: ['vda', 'vdb', 'vdc', 'vdd'].map((name) => ({
      name,
      type: 'disk',
      size: gib(name === 'vda' ? 10 : 40),
    })),
    'volume-groups': [
      {
        name: 'wide',
        extent: `${4n << 20n}`,
        extents: 12798,
        free: 12798,
        missing: 0,
        members: ['vda', 'vdb'].map((device) => ({ device, extents: 1, free: 1 })),
        'logical-volumes': [],
      },
    ],
    'file-systems': [{ device: 'vdd', type: 'xfs', mounts: ['/srv'] }],
  });
  // Of the three disks of 40 GiB only the one with a file system is none that was declared blank.
  const text = textOf(declare(estate, [survey]), 's');
  expect(text).toContain('The volume group wide is left out');
  expect(text).not.toContain('volume-groups:');
  expect(text).toContain('s-vdd');
});

const list = (volumes: readonly object[], servers: readonly object[] = []): ProviderSurvey =>
  valueIn(
    readProviderSurvey(
      documentOf(
        JSON.stringify({
          format: 'ullage-provider-survey-1',
          at: '2026-11-20T06:00:00Z',
          lists: ['volumes', 'servers'],
          volumes,
          servers,
        }),
        'surveys/provider.json',
      ),
    ),
  );

describe("the provider's list beside what the servers show", () => {
  /** Two disks of one size that show no serial number. */
  const alike = kept({
    server: 's',
    devices: ['vda', 'vdb'].map((name) => ({ name, type: 'disk', size: gib(20) })),
    'file-systems': ['vda', 'vdb'].map((device) => ({ device, type: 'xfs', mounts: [`/${device}`] })),
  });
  const rows = ['vol-1', 'vol-2'].map((id) => ({ id, size: gib(20), tier: 'bulk', servers: ['s'] }));

  it('declares no disk twice where its row cannot be told, and gives the rows that are left out', () => {
    const { files, leftOut } = declare(nothing, [alike], list(rows));
    expect(files.map(({ name }) => name)).toEqual(['s.yaml']);
    const estate = valueIn(assembled({ 's.yaml': reviewed(files[0]?.text) }));
    expect(estate.volumes.size).toBe(2);
    expect(leftOut.map(({ id }) => id)).toEqual(['vol-1', 'vol-2']);
  });

  it('leaves them out as well after the disks have been declared', () => {
    const estate = valueIn(assembled({ 's.yaml': textOf(declare(nothing, [alike], list(rows)), 's') }));
    const { files, leftOut } = declare(estate, [alike], list(rows));
    expect([files, leftOut.length]).toEqual([[], 2]);
  });

  it('knows a server by its id as well as by its name', () => {
    const one = kept({ server: 's', devices: [{ name: 'vda', type: 'disk', size: gib(20) }] });
    const byId = list(
      [{ id: 'vol-1', size: gib(20), tier: 'bulk', servers: ['server-77'] }],
      [{ id: 'server-77', name: 's' }],
    );
    const { files, leftOut } = declare(nothing, [one], byId);
    expect(files.map(({ name }) => name)).toEqual(['s.yaml']);
    expect(files[0]?.text).toContain('id: vol-1');
    expect(leftOut).toEqual([]);
  });

  it('tells on the command line what is left out, and where it is printed as a comment', async () => {
    const { dir, write } = makeRepository({ files: gannetPoint });
    const survey = (value: object) => `${JSON.stringify(value, null, 2)}\n`;
    write({
      'surveys/s.json': survey({
        format: 'ullage-survey-1',
        server: 's',
        at: '2026-11-20T06:00:00Z',
        tools: {},
        unseen: [],
        devices: ['vda', 'vdb'].map((name) => ({ name, type: 'disk', size: gib(7) })),
        'volume-groups': [],
        'file-systems': [],
      }),
      'surveys/provider.json': survey({
        format: 'ullage-provider-survey-1',
        at: '2026-11-20T06:00:00Z',
        lists: ['volumes'],
        volumes: ['vol-1', 'vol-2'].map((id) => ({ id, size: gib(7), servers: ['s'] })),
        servers: [],
      }),
    });
    const told = "2 volumes of the provider's list may be declared already";
    const { out } = await ullage('survey', 'declare', '--repo', dir);
    expect(out).toMatch(new RegExp(`^# ${told}.*vol-1 \\(7 GiB\\), vol-2 \\(7 GiB\\)`, 'm'));
    expect(valueIn(assembled({ 's.yaml': reviewed(out) })).volumes.size).toBe(2);
    const written = await ullage('survey', 'declare', '--repo', dir, '--into', 'storage');
    expect(written.out).toContain(told);
    expect(reviewed(readFileSync(join(dir, 'storage/s.yaml'), 'utf8'))).not.toContain('vol-1');
  });
});

describe('one volume that two servers show', () => {
  const master = (server: string, serial: string, system: object) =>
    kept({
      server,
      devices: [
        { name: 'vda', type: 'disk', size: gib(20), serial: `root-${server}` },
        { name: 'vdb', type: 'disk', size: gib(100), serial },
      ],
      'file-systems': [
        { device: 'vda', type: 'ext4', mounts: ['/'] },
        { device: 'vdb', mounts: ['/master'], 'in-fstab': '/master', ...system },
      ],
    });
  const both = (serial: string, system: object) =>
    ['press', 'scanner'].map((each) => master(each, serial, system));
  const declaredIn = (surveys: readonly Survey[], provider?: ProviderSurvey) => {
    const { files } = declare(nothing, surveys, provider);
    return valueIn(assembled(Object.fromEntries(files.map(({ name, text }) => [name, reviewed(text)]))));
  };
  const listed = (...ids: readonly string[]): ProviderSurvey =>
    valueIn(
      readProviderSurvey(
        documentOf(
          JSON.stringify({
            format: 'ullage-provider-survey-1',
            at: '2026-11-20T06:00:00Z',
            lists: ['volumes'],
            volumes: ids.map((id) => ({ id, name: `master-${id}`, size: gib(100), tier: 'bulk' })),
            servers: [],
          }),
          'surveys/provider.json',
        ),
      ),
    );

  it('is declared once, as shared, where its file system is made for that', () => {
    for (const surveys of [
      both('vol-9', { type: 'gfs2', id: 'f-1' }),
      both('vol-9', { type: 'gfs2', id: 'f-1' }).reverse(),
    ]) {
      const estate = declaredIn(surveys);
      expect([...estate.volumes.values()].map(({ name, shareable }) => [name, shareable])).toEqual([
        ['press-vda', false],
        ['press-vdb', true],
        ['scanner-vda', false],
      ]);
      expect(
        estate.holders
          .get('press-vdb')
          ?.map(({ server }) => server)
          .sort(),
      ).toEqual(['press', 'scanner']);
      expect(differing(estate, surveys)).toEqual([]);
      expect(declare(estate, surveys).files).toEqual([]);
    }
  });

  it('is declared once where the provider lists one volume of that identifier', () => {
    const long = 'c0ffee00-1234-5678-9abc-def012345678';
    const surveys = both(long.slice(0, 20), { type: 'xfs', id: 'f-1' });
    const estate = declaredIn(surveys, listed(long));
    expect(estate.volumes.get(`master-${long}`)).toMatchObject({ id: long, shareable: true, tier: 'bulk' });
    expect(estate.volumes.size).toBe(3);
    expect(estate.holders.get(`master-${long}`)).toHaveLength(2);
    // One xfs on two servers at once is what it is, and is told.
    expect(differing(estate, surveys, listed(long)).join()).toContain(
      'one xfs file system is mounted at /master',
    );
  });

  it('is two where only a serial number and a cloned file system say otherwise, or an identifier is two volumes’', () => {
    expect(declaredIn(both('QM00001', { type: 'xfs', id: 'f-1' })).volumes.size).toBe(4);
    expect(declaredIn(both('QM00001', { type: 'gfs2' })).volumes.size).toBe(4);
    const alike = ['01234567890123456789-a', '01234567890123456789-b'] as const;
    const two = declare(nothing, both('01234567890123456789', { type: 'xfs' }), listed(...alike));
    expect(two.files.map(({ text }) => text).join()).not.toContain('shareable');
  });
});

describe('a volume that the provider’s list alone told of', () => {
  const provider = valueIn(
    readProviderSurvey(
      documentOf(
        JSON.stringify({
          format: 'ullage-provider-survey-1',
          at: '2026-11-20T06:00:00Z',
          lists: ['volumes'],
          volumes: [{ id: 'vol-5', name: 'scans', size: gib(30), tier: 'bulk', servers: ['press'] }],
          servers: [],
        }),
        'surveys/provider.json',
      ),
    ),
  );
  const press = (mount: string): Survey =>
    kept({
      server: 'press',
      devices: [{ name: 'vdb', type: 'disk', size: gib(30), serial: 'vol-5' }],
      'file-systems': [{ device: 'vdb', type: 'xfs', mounts: [mount], 'in-fstab': mount }],
    });

  it('is told, once its server is surveyed, to lack the file system that is on it', () => {
    const first = declare(nothing, [], provider);
    const files = { 'not-surveyed.yaml': reviewed(first.files[0]?.text) };
    const second = declare(valueIn(assembled(files)), [press('/scans')], provider);
    expect(second.without.map(({ volume, system }) => [volume.name, volume.place.file, system])).toEqual([
      ['scans', 'not-surveyed.yaml', { mount: '/scans', type: 'xfs' }],
    ]);
    const all = { ...files, 'press.yaml': textOf(second, 'press') };
    expect(differing(valueIn(assembled(all)), [press('/scans')], provider)).toEqual([
      'scans has a file system (xfs, at /scans on press), and is declared without one',
    ]);
    const whole = {
      ...all,
      'not-surveyed.yaml': all['not-surveyed.yaml'].replace(
        'tier: bulk',
        'tier: bulk, file-system: { mount: /scans, type: xfs }',
      ),
    };
    expect(differing(valueIn(assembled(whole)), [press('/scans')], provider)).toEqual([]);
    expect(declare(valueIn(assembled(whole)), [press('/scans')], provider)).toEqual({
      files: [],
      leftOut: [],
      without: [],
    });
  });

  it('is told so in words that stay one value in YAML, whatever the mount point is called', () => {
    expect(asWritten({ mount: '/a, type: ext4 }, x: { y', type: 'xfs' })).toBe(
      'file-system: { existing: true, mount: "/a, type: ext4 }, x: { y", type: xfs }',
    );
  });
});
