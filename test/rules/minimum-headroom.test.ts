import { describe, expect, it } from 'vitest';
import { onlyFinding, standing, underRule } from '../estate/builder.ts';

const settings = (limits: string) => ({
  files: { 'ullage.yaml': `currency: EUR\nsites:\n  north-quay: { ${limits} }\n` },
});
const volumes = (...sizes: readonly string[]): string =>
  `site: north-quay\nvolumes: { ${sizes.map((size, index) => `v${index}: { size: ${size}, tier: bulk }`).join(', ')} }\n`;

describe("a site's quota", () => {
  const quota = settings('quota: { volumes: 3, size: 100 GiB }');

  it('may be taken to the last byte and the last volume', async () => {
    expect(
      (await underRule('rule: minimum-headroom, of: quota', '', volumes('50 GiB', '25 GiB', '25 GiB'), quota))
        .verdict,
    ).toBe('pass');
  });

  it('is not overdrawn by one byte', async () => {
    const { message } = onlyFinding(
      await underRule(
        'rule: minimum-headroom, of: quota',
        volumes('50 GiB'),
        volumes('50 GiB', '50.000000001 GB', '3.687091200 GB'),
        quota,
      ),
    );
    expect(message).toContain('site north-quay does not have enough capacity');
  });

  it('is not overdrawn by one volume', async () => {
    const four = volumes('1 GiB', '1 GiB', '1 GiB', '1 GiB');
    expect(
      onlyFinding(await underRule('rule: minimum-headroom, of: quota', '', four, quota)).message,
    ).toContain('1 volume short');
  });

  it('keeps the share asked: it holds at equality, and breaks one byte below', async () => {
    const tenth = 'rule: minimum-headroom, of: quota, share: 0.1';
    expect((await underRule(tenth, '', volumes('90 GiB'), quota)).verdict).toBe('pass');
    expect((await underRule(tenth, '', volumes('90 GiB', '1 KiB'), quota)).verdict).toBe('fail');
  });

  it('rounds a share of pieces up: a tenth of three volumes is one', async () => {
    const tenth = 'rule: minimum-headroom, of: quota, share: 0.1';
    expect((await underRule(tenth, '', volumes('1 GiB', '1 GiB', '1 GiB'), quota)).verdict).toBe('fail');
    expect((await underRule(tenth, '', volumes('1 GiB', '1 GiB'), quota)).verdict).toBe('pass');
  });

  it('keeps the size or the number asked', async () => {
    expect(
      (await underRule('rule: minimum-headroom, of: quota, size: 20 GiB', '', volumes('81 GiB'), quota))
        .verdict,
    ).toBe('fail');
    expect(
      (await underRule('rule: minimum-headroom, of: quota, count: 2', '', volumes('1 GiB', '1 GiB'), quota))
        .verdict,
    ).toBe('fail');
    expect(
      (await underRule('rule: minimum-headroom, of: quota, count: 2', '', volumes('1 GiB'), quota)).verdict,
    ).toBe('pass');
  });

  it('overdrawn on main already does not fail a change that gives some back, and fails one that takes more', async () => {
    const rule = 'rule: minimum-headroom, of: quota';
    expect((await underRule(rule, volumes('300 GiB'), volumes('200 GiB'), quota)).verdict).toBe('pass');
    expect(standing(await underRule(rule, volumes('300 GiB'), volumes('301 GiB'), quota))).toEqual([
      'fails: error updated site north-quay',
    ]);
  });
});

describe("a server's attachment slots", () => {
  const slots = settings('attachment-slots: 2');
  const rule = 'rule: minimum-headroom, of: attachment-slots';
  const held = (count: number, own = ''): string =>
    `${volumes(...Array.from({ length: count + 1 }, () => '1 GiB'))}servers: { scanner: { boot: v0${own} } }\nattachments: [ ${Array.from({ length: count }, (_, at) => `{ volume: v${at + 1}, server: scanner }`).join(', ')} ]\n`;

  it('count the boot volume', async () => {
    expect((await underRule(rule, '', held(1), slots)).verdict).toBe('pass');
    expect(onlyFinding(await underRule(rule, '', held(2), slots)).message).toBe(
      'server scanner does not have enough capacity: 3 slots of 2 slots used, 1 slot short',
    );
  });

  it("are a server's own where it says so", async () => {
    expect((await underRule(rule, '', held(2, ', attachment-slots: 3'), slots)).verdict).toBe('pass');
  });
});

describe('a volume group', () => {
  const rule = 'rule: minimum-headroom, of: volume-group';
  const group = (size: string, members = '[a]', extent = '64 MiB'): string =>
    `volumes: { a: { size: 50 GiB, tier: bulk }, b: { size: 50 GiB, tier: bulk } }\nvolume-groups:\n  plates: { extent: ${extent}, members: ${members}, file-systems: { /plates: { size: ${size}, type: xfs } } }\n`;

  /** Source: the open-source Linux volume manager: 50 GiB with 64 MiB extents gives 799 extents, 51,136 MiB. */
  it('of 50 GiB with 64 MiB extents carries 51,136 MiB and not one byte more', async () => {
    expect((await underRule(rule, '', group('51136 MiB'))).verdict).toBe('pass');
    expect((await underRule(rule, '', group('51136.0009765625 MiB'))).verdict).toBe('fail');
    expect(onlyFinding(await underRule(rule, '', group('50 GiB'))).message).toContain('64 MiB short');
  });

  /** Source: the open-source Linux volume manager: 50 GiB with 4 MiB extents gives 12,799 extents, 51,196 MiB. */
  it('with 4 MiB extents carries 51,196 MiB', async () => {
    expect((await underRule(rule, '', group('51196 MiB', '[a]', '4 MiB'))).verdict).toBe('pass');
    expect((await underRule(rule, '', group('51197 MiB', '[a]', '4 MiB'))).verdict).toBe('fail');
  });

  it('that loses a member under its file system is over-full', async () => {
    expect((await underRule(rule, group('90 GiB', '[a, b]'), group('90 GiB', '[a]'))).verdict).toBe('fail');
  });
});

describe('a striped volume group', () => {
  const group = (
    sizes: readonly number[],
    systems: Readonly<Record<string, number>>,
    extent: string,
  ): string =>
    `volumes: { ${sizes.map((size, index) => `v${index}: { size: ${size} GiB, tier: bulk }`).join(', ')} }
volume-groups:
  plates:
    extent: ${extent}
    layout: striped
    stripes: 2
    members: [${sizes.map((_, index) => `v${index}`).join(', ')}]
    file-systems:
${Object.entries(systems)
  .map(([mount, size]) => `      ${mount}: { size: ${size} GiB, type: xfs }`)
  .join('\n')}
`;
  const entry = 'rule: minimum-headroom, of: volume-group';

  it('carries file systems one by one, where lvcreate of lvm2 2.03.16 refuses the second for 468 extents', async () => {
    const asked = group([40, 23, 56], { '/a': 44, '/b': 67 }, '64 MiB');
    const { message } = onlyFinding(await underRule(entry, '', asked));
    expect(message).toContain('29.25 GiB short');
    expect((await underRule(entry, '', group([40, 23, 56], { '/a': 44, '/b': 37 }, '64 MiB'))).verdict).toBe(
      'pass',
    );
  });

  // Tried with lvcreate and lvextend of lvm2 2.03.16: 4 extents in two stripes are made, 2 are not grown to 4.
  const small = (b: number): string => group([3, 3, 3], { '/a': 2, '/b': b }, '1 GiB');

  it('may have no room to grow where one made anew would fit', async () => {
    expect((await underRule(entry, '', small(4))).verdict).toBe('pass');
    const { message, advice } = onlyFinding(await underRule(entry, small(2), small(4)));
    expect(message).toContain('2 GiB short; its file systems would fit if they were created again');
    expect(advice).toContain('Moving the data needs a backup');
  });

  it('is said to lack room once, where it would not fit either way', async () => {
    expect(standing(await underRule(entry, small(2), small(6)))).toEqual([
      'fails: error new volume-group plates',
    ]);
  });

  it('grows where a new member gives the room', async () => {
    const more = group([3, 3, 3, 3], { '/a': 2, '/b': 4 }, '1 GiB');
    expect((await underRule(entry, small(2), more)).verdict).toBe('pass');
  });
});

describe('advises what helps at its own layer', () => {
  it.each([
    [
      'quota',
      volumes('1 GiB', '1 GiB'),
      /^Delete at the site what is no longer needed, declare what is new smaller/,
    ],
    [
      'attachment-slots',
      'site: north-quay\nservers: { scanner: { attachment-slots: 1 } }\nvolumes: { a: { size: 1 GiB, tier: bulk }, b: { size: 1 GiB, tier: bulk } }\nattachments: [ { volume: a, server: scanner }, { volume: b, server: scanner } ]\n',
      /^Attach fewer volumes to the server/,
    ],
    [
      'volume-group',
      'site: north-quay\nvolumes: { a: { size: 10 GiB, tier: bulk } }\nvolume-groups: { plates: { members: [a], file-systems: { /plates: { size: 20 GiB, type: xfs } } } }\n',
      /^Where a file system of the group is new, or grows, declare it smaller\. Otherwise grow a member/,
    ],
  ])('%s', async (layer, branch, advice) => {
    const judgement = await underRule(
      `rule: minimum-headroom, of: ${layer}`,
      '',
      branch,
      settings('quota: { volumes: 1 }'),
    );
    expect(onlyFinding(judgement).advice).toMatch(advice);
  });
});
