import { describe, expect, it } from 'vitest';
import { type Branch, judgedBranch, refusedFor, said } from '../estate/builder.ts';

const GiB = 1 << 30;

/** A month of readings of a 100 GiB file system, `from` GiB used at first and `daily` more each day. */
const readings = (
  from: number,
  daily: number,
  { days = 30, size = 100, until = '2026-11-20' } = {},
): string => {
  const rows = Array.from({ length: days }, (_each, index) => {
    const day = new Date(Date.parse(`${until}T06:00:00Z`) - (days - 1 - index) * 86_400_000);
    const used = Math.round((from + daily * index) * GiB);
    return `plate-scanner,/plates,${day.toISOString().slice(0, 19)}Z,${size * GiB},${used},${size * GiB - used}\n`;
  });
  return `server,mount,at,size,used,available\n${rows.join('')}`;
};

const estate = (size = '100 GiB', type = 'btrfs', rest = ''): string => `
servers:
  plate-scanner: {}
volumes:
  plates-1: { size: 300 GiB, tier: bulk }
attachments:
  - { volume: plates-1, server: plate-scanner }
volume-groups:
  plates:
    extent: 64 MiB
    members: [plates-1]
    file-systems:
      /plates: { size: ${size}, type: ${type} }
${rest}`;

const share = '{ rule: minimum-headroom, of: file-system, share: 0.1 }';
const days = '{ rule: minimum-headroom, of: file-system, days: 30 }';

const found = async (told: Partial<Branch> & { readonly entry: string }) =>
  said(await judgedBranch({ main: estate(), branch: estate(), ...told, entries: [told.entry] }));

describe('room in a file system', () => {
  it('is enough at exactly the share asked for, and too little one byte below', async () => {
    expect(await found({ entry: share, readings: readings(90, 0) })).toEqual([]);
    const [below = ''] = await found({ entry: share, readings: readings(90 + 1 / GiB, 0) });
    expect(below).toMatch(
      /^error unchanged plates:\/plates: file system plates:\/plates has .* must stay free/,
    );
  });

  it('can be asked for as a size', async () => {
    const size = '{ rule: minimum-headroom, of: file-system, size: 10 GiB }';
    expect(await found({ entry: size, readings: readings(90, 0) })).toEqual([]);
    expect(await found({ entry: size, readings: readings(91, 0) })).toHaveLength(1);
  });

  it('is not guessed at without readings', async () => {
    expect(await found({ entry: share })).toEqual([]);
    // Of another size, they are of another file system, which was there once.
    const other = readings(99, 0, { size: 130 }).replaceAll('/plates', '/other');
    expect(await found({ entry: share, readings: other })).toEqual([]);
  });

  it('comes back with the growth that the branch brings, though no reading has seen it yet', async () => {
    const full = readings(95, 0, { size: 99 });
    const ext4 = estate('100 GiB', 'ext4');
    expect((await found({ entry: share, main: ext4, branch: ext4, readings: full }))[0]).toMatch(
      /^error unchanged/,
    );
    expect(
      (await found({ entry: share, main: ext4, branch: estate('200 GiB', 'ext4'), readings: full }))[0],
    ).toMatch(/^error absent/);
  });

  it('is refused where the branch makes less of it', async () => {
    const half = readings(50, 0, { size: 99 });
    const [less = ''] = await found({
      entry: share,
      main: estate('100 GiB', 'ext4'),
      branch: estate('52 GiB', 'ext4'),
      readings: half,
    });
    expect(less).toMatch(/^error new/);
  });

  it('is known of a renamed group by the readings of its old name', async () => {
    const renamed = estate().replace('  plates:\n', '  charts:\n    formerly: plates\n');
    expect((await found({ entry: share, branch: renamed, readings: readings(95, 0) }))[0]).toMatch(
      /^error unchanged charts:\/plates/,
    );
  });

  it('is known of a file system that only moved to another mount point, in the branch and after it', async () => {
    const remounted = estate().replace('/plates: {', '/scans: {');
    const full = readings(95, 0);
    const branch = await found({ entry: share, branch: remounted, readings: full });
    expect(branch).toEqual([expect.stringMatching(/^error unchanged plates:\/scans: .* has 5 GiB free/)]);
    const after = await found({ entry: share, main: remounted, branch: remounted, readings: full });
    expect(after).toEqual([expect.stringMatching(/^error unchanged plates:\/scans: .* has 5 GiB free/)]);
    // Readings under the new mount point go on from those under the old one.
    const since = readings(70, 1, { days: 4 }).replaceAll('/plates', '/scans');
    const both = `${readings(40, 1, { until: '2026-11-16' })}${since.slice(since.indexOf('\n') + 1)}`;
    const [told = ''] = await found({ entry: days, main: remounted, branch: remounted, readings: both });
    expect(told).toContain('will be full in 27 days');
    expect(told).toContain('as in 34 readings up to 2026-11-20');
  });

  it('is not carried to another type, nor to one of two that came', async () => {
    const full = readings(95, 0);
    const remade = estate('100 GiB', 'ext4').replace('/plates: {', '/scans: {');
    expect(await found({ entry: share, branch: remade, readings: full })).toEqual([
      expect.stringMatching(/^error absent plates:\/plates/),
    ]);
    const two = estate().replace(
      '/plates: { size: 100 GiB, type: btrfs }',
      '/scans: { size: 100 GiB, type: btrfs }\n      /sheets: { size: 100 GiB, type: btrfs }',
    );
    expect(await found({ entry: share, main: two, branch: two, readings: full })).toEqual([]);
  });

  it('is that of the reading on the server that has the file system now', async () => {
    const elsewhere = readings(99, 0).replaceAll('plate-scanner', 'plate-archive');
    expect(await found({ entry: share, readings: elsewhere })).toEqual([]);
  });
});

describe('a file system that will be full too soon', () => {
  it('passes when its trend leaves as many days as are asked for', async () => {
    // 41 GiB at first and 1 GiB a day: 70 GiB on the day itself, and 30 days to go.
    expect(await found({ entry: days, readings: readings(41, 1) })).toEqual([]);
  });

  it('fails with one day fewer, and says how it goes', async () => {
    expect(await found({ entry: days, readings: readings(42, 1) })).toEqual([
      'error unchanged plates:/plates: file system plates:/plates will be full in 29 days, if it goes on as in 30 readings up to 2026-11-20T06:00:00Z, by 1 GiB a day; 30 days must remain',
    ]);
  });

  it('goes by the earliest day, and says the middle one and the range', async () => {
    // Up and down by 3 GiB around 1 GiB a day: the middle is later than the 30 days asked for, the earliest is not.
    const swing = [0, 3, -2, 1, -3, 2, -1, 3, -2];
    const rows = readings(38, 1).split('\n');
    const restless = rows.map((row, index) => {
      const [server, mount, at, size, used] = row.split(',');
      if (index === 0 || used === undefined) return row;
      const now = Number(used) + (swing[index % swing.length] ?? 0) * GiB;
      return [server, mount, at, size, now, Number(size) - now].join(',');
    });
    const [told = ''] = await found({ entry: days, readings: restless.join('\n') });
    const figures =
      /^error unchanged .* will be full in ([0-9]+) days, or between ([0-9]+) and ([0-9]+) days \(9 in 10 of its futures\)/.exec(
        told,
      );
    const [middle = 0, first = 0, last = 0] = (figures ?? []).slice(1).map(Number);
    expect(middle).toBeGreaterThanOrEqual(30);
    expect(first).toBeLessThan(30);
    expect(last).toBeGreaterThan(middle);
  });

  it('counts from the day of the judgement, not from the last reading', async () => {
    const old = readings(41, 1, { until: '2026-11-10' });
    expect((await found({ entry: days, readings: old }))[0]).toContain('will be full in 20 days');
    expect((await found({ entry: days, readings: readings(41, 1, { until: '2026-09-01' }) }))[0]).toContain(
      'will be full by now',
    );
  });

  it('passes when the use stands still or falls', async () => {
    expect(await found({ entry: days, readings: readings(70, 0) })).toEqual([]);
    expect(await found({ entry: days, readings: readings(90, -1) })).toEqual([]);
  });

  it('is told when it is full already', async () => {
    expect((await found({ entry: days, readings: readings(100, 0) }))[0]).toContain(
      'was full at its reading of 2026-11-20',
    );
  });

  it('is a note, and no failure, with too few readings or none', async () => {
    expect((await found({ entry: days, readings: readings(90, 1, { days: 3 }) }))[0]).toMatch(
      /^note unchanged .* does not have enough readings/,
    );
    expect(await found({ entry: days })).toEqual([
      'note unchanged plates:/plates: file system plates:/plates has no readings, so when it will be full is undetermined',
    ]);
  });

  it('is refused where the branch shrinks it into its own growth', async () => {
    const steady = readings(20, 1, { size: 99 });
    const [worse = ''] = await found({
      entry: days,
      main: estate('100 GiB', 'ext4'),
      branch: estate('60 GiB', 'ext4'),
      readings: steady,
    });
    expect(worse).toMatch(/^error new plates:\/plates: .* will be full in \d days/);
  });
});

describe('what three 40 GiB volumes carry', () => {
  const scanner = (size: string, volume = '40 GiB', layout = ''): string => `
servers:
  plate-scanner: {}
volumes:
  plates-1: { size: ${volume}, tier: bulk }
  plates-2: { size: ${volume}, tier: bulk }
  plates-3: { size: ${volume}, tier: bulk }
volume-groups:
  plates:
    extent: 64 MiB${layout}
    members: [plates-1, plates-2, plates-3]
    file-systems:
      /plates: { size: ${size}, type: xfs }
`;
  const group = '{ rule: minimum-headroom, of: volume-group }';
  const alone = (branch: string, main?: string) =>
    judgedBranch({ ...(main === undefined ? {} : { main }), branch, entries: [group] }).then(said);

  it('is 100 GiB and more', async () => {
    expect(await alone(scanner('100 GiB'))).toEqual([]);
  });

  it('is 639 extents of 64 MiB each, and not one more', async () => {
    expect(await alone(scanner(`${3 * 639 * 64} MiB`))).toEqual([]);
    expect((await alone(scanner(`${3 * 639 * 64 + 1} MiB`)))[0]).toContain('64 MiB short');
  });

  it('is not 130 GiB: that says how much is missing and what it costs', async () => {
    // 130 GiB are 2,080 extents; 1,917 are there; 163 extents of 64 MiB are missing, 10.1875 GiB, 11 to buy at 0.045.
    expect(await alone(scanner('130 GiB'))).toEqual([
      'error new plates: volume group plates does not have enough capacity: 130 GiB of ≈119.81 GiB used, ≈10.19 GiB short; 11 GiB more of the tier bulk would be enough, at 0.50 EUR a month',
    ]);
  });

  it('costs, with a share to keep free, as much as it takes to keep the share of the larger group too', async () => {
    const entries = ['{ rule: minimum-headroom, of: volume-group, share: 0.1 }'];
    const [short = ''] = said(await judgedBranch({ branch: scanner('110 GiB'), entries }));
    const more = /; ([0-9]+) GiB more of the tier bulk would be enough/.exec(short)?.[1];
    const grownBy = (size: number) =>
      judgedBranch({
        branch: scanner('110 GiB').replace(/(plates-3: \{ size: )40/, `$1${40 + size}`),
        entries,
      });
    expect(said(await grownBy(Number(more)))).toEqual([]);
    expect(said(await grownBy(Number(more) - 1))).toHaveLength(1);
  });

  it.each(['striped', 'mirrored'])(
    'is mended by what the message says in a %s group, and by no less',
    async (layout) => {
      const laid = (volume: number): string => scanner('250 GiB', `${volume} GiB`, `\n    layout: ${layout}`);
      const [short = ''] = await alone(laid(80));
      const more = /; ([0-9]+) GiB more of the tier bulk on each of its 3 members would be enough/.exec(
        short,
      )?.[1];
      expect(await alone(laid(80 + Number(more)))).toEqual([]);
      expect(await alone(laid(80 + Number(more) - 1))).toHaveLength(1);
    },
  );

  it('names no price where no growth can mend it', async () => {
    const all = ['{ rule: minimum-headroom, of: volume-group, share: 1 }'];
    expect(said(await judgedBranch({ branch: scanner('10 GiB'), entries: all }))[0]).toMatch(/short$/);
  });

  it('leaves the price out where the members are of several tiers', async () => {
    const [mixed = ''] = await alone(
      scanner('130 GiB').replace('40 GiB, tier: bulk', '40 GiB, tier: steady'),
    );
    expect(mixed).toMatch(/GiB short$/);
  });

  it('is a standing lack on main, worse when more is asked', async () => {
    expect((await alone(scanner('130 GiB'), scanner('130 GiB')))[0]).toMatch(/^error unchanged/);
    expect((await alone(scanner('140 GiB'), scanner('130 GiB')))[0]).toMatch(/^error updated/);
  });
});

describe('a parameter that does not count at its layer is refused when the pack is read', () => {
  it('instead of promising a check that nobody makes', () => {
    expect(refusedFor('{ rule: minimum-headroom, of: volume-group, days: 30 }').join()).toContain(
      'days does not apply to the layer volume-group',
    );
    expect(refusedFor('{ rule: minimum-headroom, of: attachment-slots, size: 1 GiB }')).toHaveLength(1);
    expect(refusedFor('{ rule: minimum-headroom, of: file-system, count: 1 }')).toHaveLength(1);
  });
});
