import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fileSystemRoom, usageFrom } from '../../src/capacity/usage.ts';
import type { Estate } from '../../src/estate/estate.ts';
import { bytes } from '../../src/estate/size.ts';
import { compareSurveys } from '../../src/survey/compare.ts';
import { readGathered } from '../../src/survey/gathered.ts';
import { capacityIn } from '../../src/survey/measured.ts';
import { readSurvey, type Survey } from '../../src/survey/survey.ts';
import { surveyAsText, surveyOf } from '../../src/survey/survey-of.ts';
import {
  assembled,
  documentOf,
  estateOf,
  type Files,
  judgedFiles,
  said,
  valueIn,
} from '../estate/builder.ts';
import { pairs } from '../simulator/estates.ts';
import { playServers, type Shape } from './player.ts';

const parted: Shape = { isOld: false, isBare: false, hasBootPartition: true, hasOtherPartitions: true };
const plain: Shape = { isOld: false, isBare: false, hasBootPartition: false };

/** `surveys/SERVER.json` of each server that runs, as `survey add` writes it. */
const surveyFiles = (estate: Estate, shape: Shape): Files =>
  Object.fromEntries(
    playServers(estate, shape).map(({ server, text }) => {
      const { survey } = valueIn(surveyOf(valueIn(readGathered(Buffer.from(text), server)), server));
      return [`surveys/${server}.json`, surveyAsText(survey)];
    }),
  );

const surveysIn = (files: Files): readonly Survey[] =>
  Object.entries(files).map(([path, text]) => valueIn(readSurvey(documentOf(text, path))));

const capacityOf = (estate: Estate, files: Files) =>
  capacityIn(estate, { servers: surveysIn(files), provider: undefined });

const policy = (...entries: readonly string[]): Files => ({
  'ullage.yaml': 'currency: EUR\n',
  'prices/2026.yaml':
    'from: 2026-01-01\ncurrency: EUR\ntiers:\n  bulk: { rate: "0.045", per: GiB-month }\n  steady: { rate: "0.10", per: GiB-month }\nserver-types:\n  small: { running: "0.031", stopped: "0.004" }\n  large: { running: "0.062", stopped: "0.008" }\n',
  'policies/storage.yaml': `rules:\n${entries.map((entry) => `  - ${entry}\n`).join('')}`,
});

const withRoom = policy('{ rule: minimum-headroom, of: volume-group, size: 2 GiB }');

/** A group of two members of 40 GiB, with a file system of so much. */
const plates = (gib: number, members = [40, 40]): Files => ({
  'storage/imagery.yaml': `servers: { plate-scanner: { power: running, guest: linux-lvm } }
volumes:
${members.map((size, index) => `  plates-${index + 1}: { size: ${size} GiB, tier: bulk, id: vol-000${index + 1} }\n`).join('')}attachments:
${members.map((_, index) => `  - { volume: plates-${index + 1}, server: plate-scanner }\n`).join('')}volume-groups:
  plates: { extent: 64 MiB, members: [${members.map((_, index) => `plates-${index + 1}`).join(', ')}], file-systems: { /plates: { size: ${gib} GiB, type: xfs } } }
`,
});

const asPlayed = (files: Files, shape: Shape): Files => surveyFiles(estateOf(files), shape);

describe('the room of a volume group that is surveyed', () => {
  it('is what other partitions of its members leave it, and the finding and the headroom say so', async () => {
    const surveyed = { ...withRoom, ...plates(77), ...asPlayed(plates(77), parted) };
    // 40 GiB less a partition of 1 GiB, a table and alignment of 2 MiB, and the first MiB: 623 extents of 64 MiB each.
    const judgement = await judgedFiles(surveyed, { ...surveyed, ...plates(76) });
    expect(judgement.headroom).toMatchObject([
      {
        before: { capacity: 1246n * (64n << 20n), surveyed: '2026-11-20T06:00:00Z' },
        after: { capacity: 1246n * (64n << 20n), free: (1246n - 76n * 16n) * (64n << 20n) },
      },
    ]);
    expect(said(judgement)).toEqual([
      expect.stringMatching(
        /^error unchanged plates: volume group plates has 1920 MiB free \(76 GiB of ≈77.88 GiB used, as surveyed on 2026-11-20\), and 2 GiB must stay free/,
      ),
    ]);
    const estimated = { ...withRoom, ...plates(77) };
    expect(said(await judgedFiles(estimated, { ...estimated, ...plates(76) }))).toEqual([]);
  });

  it('is less by more room for metadata, which is no growth that the group has not taken up', async () => {
    const shown = asPlayed(plates(77), { ...plain, firstExtent: 130 });
    const base = { ...withRoom, ...plates(77), ...shown };
    const { headroom } = await judgedFiles(base, { ...base, ...plates(76) });
    // (40 GiB - 130 MiB) / 64 MiB on each of the two.
    expect(headroom).toMatchObject([{ before: { capacity: 2n * 637n * (64n << 20n) } }]);
    const surveys = { servers: surveysIn(shown), provider: undefined };
    expect(compareSurveys(estateOf(plates(77)), surveys, undefined).differences).toEqual([]);
    // Without a word on where the first extent begins, it may be a growth to come: then it is the estimate.
    const silent = Object.fromEntries(
      Object.entries(shown).map(([path, text]) => [path, text.replaceAll(/ *"first-extent".*\n/g, '')]),
    );
    const older = { ...base, ...silent };
    expect((await judgedFiles(older, { ...older, ...plates(76) })).headroom[0]?.before).not.toHaveProperty(
      'surveyed',
    );
  });

  it('is the estimate, and nothing says otherwise, where no survey shows the group', async () => {
    const base = { ...withRoom, ...plates(77) };
    const { headroom } = await judgedFiles(base, { ...base, ...plates(76) });
    expect(headroom[0]?.before).not.toHaveProperty('surveyed');
    expect(headroom[0]?.before?.capacity).toBe(1278n * (64n << 20n));
  });

  it.each([
    ['a member is of another size than declared', plates(77, [40, 39])],
    ['a member is missing', plates(30, [40])],
    ['it has a member more than declared', plates(77, [40, 40, 40])],
  ])('is the estimate where the survey shows that %s', async (_what, declared) => {
    const shown = asPlayed(plates(30), parted);
    const base = { ...withRoom, ...declared, ...shown };
    const { headroom } = await judgedFiles(base, { ...base, 'storage/more.yaml': 'volumes: {}\n' });
    expect(headroom).toHaveLength(1);
    expect(headroom[0]?.before).not.toHaveProperty('surveyed');
  });

  it('is never made worse by a growth, nor told as made worse where only its source would change', async () => {
    // On main too little is free, by the survey. A member grows by what is lost to other partitions.
    const base = { ...withRoom, ...plates(77), ...asPlayed(plates(77), parted) };
    const grown = await judgedFiles(base, { ...base, ...plates(77, [40, 41]) });
    expect(grown.verdict).toBe('pass');
    expect(grown.headroom).toMatchObject([
      { before: { capacity: 1246n * (64n << 20n) }, after: { capacity: 1262n * (64n << 20n) } },
    ]);
    // One that joins is estimated: nothing is known of it.
    const joined = await judgedFiles(base, { ...base, ...plates(77, [40, 40, 10]) });
    expect(joined.headroom).toMatchObject([{ after: { capacity: (1246n + 159n) * (64n << 20n) } }]);
  });

  it('goes by the surveys on main, whatever the branch makes of them', async () => {
    const honest = asPlayed(plates(77), parted);
    const base = { ...withRoom, ...plates(75), ...honest };
    const worse = await judgedFiles(base, { ...base, ...plates(77) });
    expect(worse.verdict).toBe('fail');
    // A survey without the other partitions, one that is taken away, and one that comes with the branch.
    const flattering = asPlayed(plates(77), plain);
    const { 'surveys/plate-scanner.json': _, ...without } = base;
    for (const head of [
      { ...base, ...flattering, ...plates(77) },
      { ...without, ...plates(77) },
    ]) {
      const judgement = await judgedFiles(base, head);
      expect([judgement.verdict, judgement.proposed?.verdict]).toEqual(['fail', 'fail']);
      expect(said(judgement)).toEqual(said(worse));
      expect(judgement.policyChanges).toMatchObject([{ of: 'surveys' }]);
    }
    const unsurveyed = { ...withRoom, ...plates(75) };
    const brought = await judgedFiles(unsurveyed, { ...unsurveyed, ...honest, ...plates(77) });
    expect(brought.headroom[0]?.after).not.toHaveProperty('surveyed');
  });

  it('is never of a branch’s own surveys where the branch brings the policy, too', async () => {
    const base = { ...withRoom, ...plates(75) };
    const { 'policies/storage.yaml': _, ...without } = base;
    const head = { ...base, ...plates(77), ...asPlayed(plates(77), parted) };
    const { policyFrom, headroom } = await judgedFiles(without, head);
    expect(policyFrom).toBe('head');
    expect(headroom[0]?.after).not.toHaveProperty('surveyed');
  });
});

describe('what is unallocated beside what is surveyed', () => {
  it('is not what other partitions have', async () => {
    const rule = policy('{ rule: growth-followed-through, level: error, idle-share: 0, idle-size: 3 GiB }');
    const base = { ...rule, ...plates(76), ...asPlayed(plates(76), parted) };
    expect(said(await judgedFiles(base, base))).toEqual([]);
    const { 'surveys/plate-scanner.json': _, ...unsurveyed } = base;
    expect(said(await judgedFiles(unsurveyed, unsurveyed))).toHaveLength(1);
    const less = { ...rule, ...plates(74), ...asPlayed(plates(74), parted) };
    expect(said(await judgedFiles(less, less))).toEqual([
      expect.stringMatching(/unallocated .*; less what other things take of it, as surveyed on 2026-11-20$/),
    ]);
  });
});

describe('the room in a file system that is surveyed', () => {
  const one = (gib: number, type = 'btrfs'): Files => ({
    'storage/imagery.yaml': `servers: { plate-scanner: { power: running } }
volumes: { scans: { size: ${gib} GiB, tier: bulk, id: vol-1, file-system: { mount: /scans, type: ${type} } } }
attachments: [ { volume: scans, server: plate-scanner } ]
`,
  });
  const GiB = 1n << 30n;
  const reading = (size: bigint, used: bigint, at = '2026-10-01T06:00:00Z'): Files => ({
    'readings/2026.csv': `server,mount,at,size,used,available\nplate-scanner,/scans,${at},${size},${used},${size - used}\n`,
  });
  const rule = policy('{ rule: minimum-headroom, of: file-system, share: 0.1 }');

  it('is what the survey shows where the last reading is of another size, and is kept as a share where it grows', async () => {
    // The reading is of before it was grown to 100 GiB; nothing tells what btrfs keeps, but the survey: 1 %.
    const old = reading(60n * GiB, 59n * GiB);
    const base = { ...rule, ...old, ...one(100), ...asPlayed(one(100), plain) };
    expect(said(await judgedFiles(base, base))).toEqual([]);
    const { 'surveys/plate-scanner.json': _, ...unsurveyed } = base;
    expect(said(await judgedFiles(unsurveyed, unsurveyed))).toHaveLength(1);
    // 60 GiB used of 99 % of 66 GiB leave a little more than 8 %.
    const less = { ...rule, ...reading(80n * GiB, 60n * GiB), ...one(66), ...asPlayed(one(66), plain) };
    const [finding = ''] = said(await judgedFiles(less, less));
    expect(finding).toMatch(/60 GiB of ≈65.34 GiB used, as surveyed on 2026-11-20/);
    expect(said(await judgedFiles(less, { ...less, ...one(68) }))).toEqual([
      expect.stringMatching(/^error absent/),
    ]);
  });

  it('is that of a reading which is newer and of the same size', async () => {
    const used = 95n * GiB;
    const base = {
      ...rule,
      ...reading(99n * GiB, used, '2026-11-22T06:00:00Z'),
      ...one(100),
      ...asPlayed(one(100), plain),
    };
    const [finding = ''] = said(await judgedFiles(base, base));
    expect(finding).toContain('95 GiB of 99 GiB used)');
  });

  it('is the estimate again for one that is made anew', async () => {
    const base = {
      ...rule,
      ...reading(60n * GiB, 30n * GiB),
      ...one(100, 'ext4'),
      ...asPlayed(one(100, 'ext4'), plain),
    };
    const capacity = capacityOf(estateOf(one(100, 'ext4')), asPlayed(one(100, 'ext4'), plain));
    expect([...(capacity?.bySystem.keys() ?? [])]).toEqual(['scans:/scans']);
    expect((await judgedFiles(base, { ...base, ...one(100, 'xfs') })).findings).toEqual([]);
  });

  it('never shrinks by a growth, whatever the figures', () => {
    const estate = estateOf(one(100, 'ext4'));
    const system = estate.fileSystems.get('scans:/scans');
    if (system === undefined) throw new Error('no file system');
    fc.assert(
      fc.property(
        fc.bigInt(1n, 99n * GiB),
        fc.bigInt(1n, 99n * GiB),
        fc.bigInt(0n, 300n * GiB),
        fc.bigInt(0n, 300n * GiB),
        (fillable, used, one, other) => {
          const measured = {
            at: '2026-11-20T06:00:00Z',
            system,
            shown: bytes(99n * GiB),
            fillable: bytes(fillable),
            reserved: undefined,
            elsewhere: bytes(0n),
          };
          const last = {
            server: 'plate-scanner',
            mount: '/scans',
            at: '2026-11-21T06:00:00Z',
            size: bytes(50n * GiB),
            used: bytes(used),
            available: bytes(1n),
          };
          const roomAt = (size: bigint) =>
            fileSystemRoom({ ...system, size: bytes(size) }, usageFrom({ last, highest: [last] }), measured);
          const [small, large] = one < other ? [one, other] : [other, one];
          expect(roomAt(small).capacity).toBeLessThanOrEqual(roomAt(large).capacity);
          expect(roomAt(system.size).capacity).toBe(fillable);
        },
      ),
    );
  });
});

describe('one source for both sides', () => {
  const rules = policy(
    '{ rule: minimum-headroom, of: volume-group, share: 0.3 }',
    '{ rule: growth-followed-through, level: error }',
  );
  const shapes = fc.record({
    isOld: fc.boolean(),
    isBare: fc.boolean(),
    hasBootPartition: fc.boolean(),
    hasOtherPartitions: fc.boolean(),
    firstExtent: fc.constantFrom(1, 1, 4, 130),
  });

  it('makes a branch come to the same by surveys as by estimates, in every group that keeps its members', async () => {
    let compared = 0;
    let apart = 0;
    await fc.assert(
      fc.asyncProperty(pairs, shapes, async ([base, head], shape) => {
        const [before, after] = [assembled(base), assembled(head)];
        fc.pre(before.ok && after.ok);
        const surveys = surveyFiles(valueIn(before), shape);
        const judged = await judgedFiles(
          { ...rules, ...base, ...surveys },
          { ...rules, ...head, ...surveys },
        );
        const estimated = await judgedFiles({ ...rules, ...base }, { ...rules, ...head });
        for (const [index, { before: was, after: is }] of judged.headroom.entries()) {
          const other = estimated.headroom[index];
          if (was === undefined || is === undefined || is.layer !== 'volume-group') continue;
          if (was.surveyed === undefined && is.surveyed === undefined) {
            expect({ was, is }).toEqual({ was: other?.before, is: other?.after });
            continue;
          }
          const [now, then] = [
            valueIn(after).groups.get(is.subject.name),
            valueIn(before).groups.get(was.subject.name),
          ];
          const names = (now?.members ?? []).map((name) => {
            const { formerly } = valueIn(after).volumes.get(name) ?? {};
            return valueIn(before).volumes.has(name) ? name : formerly;
          });
          const isSame =
            names.length === then?.members.length && names.every((name, at) => name === then.members[at]);
          if (!isSame || now?.extent !== then?.extent) continue;
          compared += 1;
          if (was.capacity !== other?.before?.capacity) apart += 1;
          expect(is.free - was.free).toBe((other?.after?.free ?? 0n) - (other?.before?.free ?? 0n));
        }
      }),
      { numRuns: 120 },
    );
    expect(compared).toBeGreaterThan(5);
    expect(apart).toBeGreaterThan(2);
  });

  it('is told from an earlier estate as it is told anew', () => {
    fc.assert(
      fc.property(pairs, shapes, ([base, head], shape) => {
        const [before, after] = [assembled(base), assembled(head)];
        fc.pre(before.ok && after.ok);
        const surveys = {
          servers: surveysIn(surveyFiles(valueIn(before), shape)),
          provider: undefined,
        };
        const first = capacityIn(valueIn(before), surveys);
        const next = capacityIn(valueIn(after), surveys, first);
        const anew = capacityIn(valueIn(after), surveys);
        expect([next?.members, next?.bySystem]).toEqual([anew?.members, anew?.bySystem]);
      }),
      { numRuns: 100 },
    );
  });
});
