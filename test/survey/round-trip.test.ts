/** From an estate to what its tools would say, and from that back to an estate. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseDocument } from 'yaml';
import { headroomOf } from '../../src/capacity/headroom.ts';
import type { Estate } from '../../src/estate/estate.ts';
import { priceEstate } from '../../src/price/cost.ts';
import { unknownTier } from '../../src/price/price-list.ts';
import { jsonText } from '../../src/read/json.ts';
import { compareSurveys, type Surveys } from '../../src/survey/compare.ts';
import { declareSurveys } from '../../src/survey/declare.ts';
import { readGathered } from '../../src/survey/gathered.ts';
import { match } from '../../src/survey/match.ts';
import { readProviderList, together } from '../../src/survey/provider-list.ts';
import { readProviderSurvey } from '../../src/survey/provider-survey.ts';
import { readSurvey } from '../../src/survey/survey.ts';
import { surveyAsText, surveyOf } from '../../src/survey/survey-of.ts';
import {
  assembled,
  documentOf,
  estateOf,
  type Files,
  judgedFiles,
  pricesOf,
  settingsOf,
  today,
  valueIn,
} from '../estate/builder.ts';
import { pairs } from '../simulator/estates.ts';
import { playProvider, playServers, providerFields, type Shape } from './player.ts';

const shapes: fc.Arbitrary<Shape> = fc.record({
  isOld: fc.boolean(),
  isBare: fc.boolean(),
  hasBootPartition: fc.boolean(),
});

/** Every volume has an identifier, longer than a disk shows, unless told otherwise; groups lie over all their members. */
const estates = (hasIds: boolean): fc.Arbitrary<Estate> =>
  fc.tuple(pairs, fc.constantFrom('linear', 'striped', 'mirrored')).map(([[files], layout]) => {
    const text = laidOut(files['storage/all.yaml'] ?? '', layout);
    const outcome = assembled({
      'storage/all.yaml': hasIds
        ? text.replaceAll(/"(v[0-9])":\{/g, '"$1":{"id":"$1-0123456789-0123456789",')
        : text,
    });
    fc.pre(outcome.ok);
    return valueIn(outcome);
  });

/** Groups of several members as another layout, with room for what is in them: a gibibyte each. */
const laidOut = (text: string, layout: string): string =>
  layout === 'linear'
    ? text
    : text.replaceAll(
        /"members":(\[[^\]]+,[^\]]+\]),"file-systems":(\{.*?\}\}|\{\})/g,
        (_, members: string, systems: string) =>
          `"layout":"${layout}","${layout === 'striped' ? 'stripes' : 'copies'}":${members.split(',').length},` +
          `"members":${members},"file-systems":${systems.replaceAll(/"[0-9]+ GiB"/g, '"1001 MiB"')}`,
      );

/** What `survey add` and `survey provider` keep. */
function surveyFiles(estate: Estate, shape: Shape, hasProvider: boolean): Files {
  const files: Record<string, string> = {};
  for (const { server, text } of playServers(estate, shape)) {
    const { survey, unseen } = valueIn(surveyOf(valueIn(readGathered(Buffer.from(text), server)), server));
    expect(unseen).toEqual([]);
    files[`surveys/${server}.json`] = surveyAsText(survey);
  }
  if (!hasProvider || estate.volumes.size === 0) return files;
  const list = valueIn(
    readProviderList(playProvider(estate), 'list.json', providerFields, '2026-11-20T06:00:00Z'),
  );
  expect([...list.unknown]).toEqual([]);
  return { ...files, [providerFile]: jsonText(valueIn(together([list.survey], list.survey.at))) };
}

const providerFile = 'surveys/provider.json';

/** The same, read again. */
function readAgain(files: Files): Surveys {
  const { [providerFile]: list, ...servers } = files;
  return {
    servers: Object.entries(servers).map(([path, text]) => valueIn(readSurvey(documentOf(text, path)))),
    provider: list === undefined ? undefined : valueIn(readProviderSurvey(documentOf(list, providerFile))),
  };
}

const surveysOf = (estate: Estate, shape: Shape, hasProvider: boolean): Surveys =>
  readAgain(surveyFiles(estate, shape, hasProvider));

const priceList = `from: 2026-01-01
currency: EUR
tiers:
  bulk: { rate: "0.045", per: GiB-month }
  steady: { rate: "0.10", per: GiB-month }
server-types:
  small: { running: "0.031", stopped: "0.004" }
  large: { running: "0.062", stopped: "0.008" }
`;
const prices = pricesOf(priceList);
const nothing = estateOf('volumes: {}');

const declaredFrom = (surveys: Surveys): Estate => adopted({}, surveys).estate;

/** What is declared, and what the surveys show beside it. */
function adopted(files: Readonly<Record<string, string>>, surveys: Surveys) {
  const main = Object.keys(files).length === 0 ? nothing : valueIn(assembled(files));
  const {
    files: texts,
    leftOut,
    without,
  } = declareSurveys(main, surveys, match(main, surveys.servers, surveys.provider));
  const added = texts.map(({ name, text }) => [
    `storage/${Object.keys(files).length}-${name}`,
    text.replaceAll(unknownTier, 'bulk'),
  ]);
  // What is told of volumes that are declared already, a person writes.
  const completed = Object.entries(files).map(([path, text]) => {
    const document = parseDocument(text);
    for (const { volume, system } of without)
      if (volume.place.file === path)
        document.setIn(
          ['volumes', volume.name, 'file-system'],
          document.createNode({ existing: true, ...system }),
        );
    return [path, document.toString()];
  });
  const all: Readonly<Record<string, string>> = {
    ...Object.fromEntries(completed),
    ...Object.fromEntries(added),
  };
  return { files: all, added: texts, leftOut, estate: valueIn(assembled(all)) };
}

/** As people do it: one server after another, each on top of what is declared by then. */
const adoptedOneByOne = ({ servers, provider }: Surveys) =>
  servers.reduce(
    ({ files }, _, index) => adopted(files, { servers: servers.slice(0, index + 1), provider }),
    adopted({}, { servers: [], provider }),
  );

const differences = (estate: Estate, surveys: Surveys): readonly string[] =>
  compareSurveys(estate, surveys, prices).differences.map(({ message }) => message);

/** What is left to say after `survey declare`: who holds a volume, where that server is neither surveyed nor declared. */
const leftToSay = (estate: Estate, { servers, provider }: Surveys): readonly string[] =>
  [...estate.volumes.keys()].flatMap((volume) => {
    const rows = provider?.volumes.filter(({ name }) => name === volume) ?? [];
    const holders = rows.flatMap((row) => row.servers ?? []).sort();
    const known = holders.filter((holder) => servers.some(({ server }) => server === holder));
    if (holders.length === known.length) return [];
    const words = (names: readonly string[]) =>
      names.length === 0 ? 'unattached' : `attached to ${names.join(' and ')}`;
    return [`${volume} is ${words(holders)} at the provider, and declared as ${words(known)}`];
  });

/** What the volumes cost, each: what servers cost is in no list of volumes. */
const costs = (estate: Estate): readonly string[] =>
  [...valueIn(priceEstate(estate, prices, settingsOf('currency: EUR\n'), today)).volumes]
    .map(([name, { monthly }]) => `${name} ${monthly.toFixed()}`)
    .sort();

/**
 * The room in each group of a server that runs; no script runs on another. How an empty group is laid out is nowhere
 * to be seen: the volume manager keeps that with each logical volume.
 */
const rooms = (estate: Estate): readonly string[] =>
  headroomOf(estate, settingsOf('currency: EUR\n'))
    .rooms.filter(({ layer, subject }) => {
      const group = estate.groups.get(subject.name);
      const [first = ''] = group?.fileSystems.length === 0 ? [] : (group?.members ?? []);
      const holders = estate.holders.get(first) ?? [];
      return (
        layer === 'volume-group' &&
        holders.some(({ server }) => estate.servers.get(server)?.power === 'running')
      );
    })
    .map(({ subject, capacity, taken }) => `${subject.name} ${capacity} ${taken}`)
    .sort();

describe('what an estate’s own tools say of it', () => {
  it('is no difference from what is declared, whatever version of the tools said it', () => {
    fc.assert(
      fc.property(estates(true), shapes, fc.boolean(), (estate, shape, hasProvider) => {
        expect(differences(estate, surveysOf(estate, shape, hasProvider))).toEqual([]);
      }),
      { numRuns: 150 },
    );
  });

  it('is no difference where no volume has an identifier, either', () => {
    fc.assert(
      fc.property(estates(false), shapes, fc.boolean(), (estate, shape, hasProvider) => {
        expect(differences(estate, surveysOf(estate, shape, hasProvider))).toEqual([]);
      }),
      { numRuns: 150 },
    );
  });

  it('is declared as it is: nothing differs, and it costs and has room for what the estate does', () => {
    let groups = 0;
    let volumes = 0;
    fc.assert(
      fc.property(estates(true), shapes, (estate, shape) => {
        const surveys = surveysOf(estate, shape, true);
        const again = declaredFrom(surveys);
        expect(differences(again, surveys)).toEqual(leftToSay(again, surveys).toSorted());
        expect(costs(again)).toEqual(costs(estate));
        expect(rooms(again)).toEqual(rooms(estate));
        groups += again.groups.size;
        volumes += again.volumes.size;
      }),
      { numRuns: 150 },
    );
    expect(groups).toBeGreaterThan(20);
    expect(volumes).toBeGreaterThan(100);
  });

  it('is declared as it is without a provider’s list, but for the names and the tiers', () => {
    fc.assert(
      fc.property(estates(false), shapes, (estate, shape) => {
        const surveys = surveysOf(estate, shape, false);
        const again = declaredFrom(surveys);
        expect(differences(again, surveys)).toEqual([]);
        expect(rooms(again)).toEqual(rooms(estate));
      }),
      { numRuns: 150 },
    );
  });

  it('is declared as it is server by server, too, and once it is there is nothing left to declare', () => {
    let servers = 0;
    fc.assert(
      fc.property(fc.boolean(), fc.boolean(), shapes, fc.gen(), (hasIds, hasProvider, shape, gen) => {
        const estate = gen(() => estates(hasIds));
        const surveys = surveysOf(estate, shape, hasIds && hasProvider);
        const { files, estate: again } = adoptedOneByOne(surveys);
        expect(differences(again, surveys)).toEqual(leftToSay(again, surveys).toSorted());
        expect(rooms(again)).toEqual(hasIds && hasProvider ? rooms(estate) : rooms(declaredFrom(surveys)));
        if (surveys.provider !== undefined) expect(costs(again)).toEqual(costs(estate));
        expect(adopted(files, surveys).added).toEqual([]);
        servers += surveys.servers.length;
      }),
      { numRuns: 150 },
    );
    expect(servers).toBeGreaterThan(100);
  });

  it('is declared server by server where the hosts number their disks alike', () => {
    let alike = 0;
    fc.assert(
      fc.property(shapes, estates(false), (shape, estate) => {
        const surveys = surveysOf(estate, { ...shape, isNumbered: true }, false);
        const { files, estate: again } = adoptedOneByOne(surveys);
        expect(differences(again, surveys)).toEqual([]);
        expect(adopted(files, surveys).added).toEqual([]);
        alike += surveys.servers.filter(({ devices }) => devices.length > 0).length > 1 ? 1 : 0;
      }),
      { numRuns: 150, endOnFailure: true },
    );
    expect(alike).toBeGreaterThan(20);
  });

  it('is adopted server by server under surveyed-as-declared, which asks only for servers that are still to be declared', async () => {
    const policy = {
      'ullage.yaml': 'currency: EUR\n',
      'prices/2026.yaml': priceList,
      'policies/storage.yaml': 'rules: [ { rule: surveyed-as-declared, missing: error } ]\n',
    };
    let passed = 0;
    await fc.assert(
      fc.asyncProperty(fc.boolean(), shapes, fc.gen(), async (hasIds, shape, gen) => {
        const estate = gen(() => estates(hasIds));
        const files = surveyFiles(estate, shape, hasIds);
        const [kept, surveys] = [{ ...policy, ...files }, readAgain(files)];
        let main = adopted({}, { servers: [], provider: undefined }).files;
        for (let count = 1; count <= surveys.servers.length; count++) {
          const shown = { servers: surveys.servers.slice(0, count), provider: surveys.provider };
          const next = adopted(main, shown);
          const before = Object.keys(main).length === 0 ? { 'storage/none.yaml': 'volumes: {}\n' } : main;
          const { verdict, findings, changes } = await judgedFiles(
            { ...kept, ...before },
            { ...kept, ...next.files },
          );
          // Nothing is made or attached of what is there.
          expect(changes.map(({ kind }) => kind).filter((kind) => !kind.endsWith('-adopted'))).toEqual([]);
          const open = leftToSay(next.estate, shown);
          const others = findings.flatMap(({ message }) =>
            open.some((each) => message.endsWith(each)) ? [] : [message],
          );
          expect(others).toEqual([]);
          expect(verdict).toBe(findings.length === 0 ? 'pass' : 'fail');
          passed += verdict === 'pass' ? 1 : 0;
          main = next.files;
        }
      }),
      { numRuns: 100, endOnFailure: true },
    );
    expect(passed).toBeGreaterThan(50);
  });

  it('has each of two swap areas of a group', () => {
    const estate = estateOf(`servers: { s: { power: running, guest: linux-lvm } }
volumes: { v: { size: 20 GiB, tier: bulk } }
attachments: [ { volume: v, server: s } ]
volume-groups: { g: { members: [v], file-systems: { swap: { size: 1 GiB, type: swap }, /more: { size: 2 GiB, type: swap } } } }
`);
    const surveys = surveysOf(estate, { isOld: false, isBare: false, hasBootPartition: false }, false);
    const again = declaredFrom(surveys).groups.get('g')?.fileSystems ?? [];
    expect(again.map(({ mount, size }) => [mount, size])).toEqual([
      ['swap', 1n << 30n],
      ['/dev/g/lv-1', 2n << 30n],
    ]);
  });

  it.each([
    ['layout: striped, stripes: 2', 1008n],
    ['layout: mirrored, copies: 2', 1004n],
  ])('has a group with %s, as the volume manager rounds it', (layout, mebibytes) => {
    const estate = estateOf(`servers: { s: { power: running, guest: linux-lvm } }
volumes: { v: { size: 20 GiB, tier: bulk }, w: { size: 21 GiB, tier: bulk } }
attachments: [ { volume: v, server: s }, { volume: w, server: s } ]
volume-groups: { g: { ${layout}, members: [v, w], file-systems: { /a: { size: 1001 MiB, type: xfs } } } }
`);
    const surveys = surveysOf(estate, { isOld: false, isBare: false, hasBootPartition: false }, false);
    expect(differences(estate, surveys)).toEqual([]);
    const again = declaredFrom(surveys);
    expect(differences(again, surveys)).toEqual([]);
    expect(again.groups.get('g')?.layout).toEqual(estate.groups.get('g')?.layout);
    expect(again.groups.get('g')?.fileSystems.map(({ size }) => size)).toEqual([mebibytes << 20n]);
    expect(rooms(again)).toEqual(rooms(estate));
  });

  it('cannot tell two disks of one size, one of which is swapped to, and calls neither undeclared', () => {
    const estate = estateOf(`servers: { s: { power: running } }
volumes: { v: { size: 20 GiB, tier: bulk, file-system: { mount: /swap, type: swap } }, w: { size: 20 GiB, tier: bulk } }
attachments: [ { volume: v, server: s }, { volume: w, server: s } ]
`);
    const surveys = surveysOf(estate, { isOld: false, isBare: false, hasBootPartition: false }, false);
    expect(differences(declaredFrom(surveys), surveys)).toEqual([]);
  });
});
