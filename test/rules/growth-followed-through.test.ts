import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { idleOf } from '../../src/capacity/idle.ts';
import { showMoney, sumMoney } from '../../src/price/money.ts';
import { estateOf, judgedBranch, pricesOf, said } from '../estate/builder.ts';

const entries = ['{ rule: growth-followed-through, level: error, idle-share: 0.25, idle-size: 1 GiB }'];

const group = (fileSystem: string, size = '40 GiB', layout = ''): string => `
servers:
  plate-scanner: {}
volumes:
  plates-1: { size: ${size}, tier: bulk }
  plates-2: { size: ${size}, tier: bulk }
attachments:
  - { volume: plates-1, server: plate-scanner }
  - { volume: plates-2, server: plate-scanner }
volume-groups:
  plates:
    extent: 64 MiB${layout}
    members: [plates-1, plates-2]
    file-systems:
      /plates: { size: ${fileSystem}, type: xfs }
`;

const alone = (rest: string, more = ''): string => `
servers:
  plate-scanner: {}
volumes:
  plates-1: { size: 50 GiB, tier: bulk${rest} }
attachments:
  - { volume: plates-1, server: plate-scanner }
${more}`;

const found = async (branch: string, main?: string, by = entries) =>
  said(await judgedBranch({ ...(main === undefined ? {} : { main }), branch, entries: by }));

describe('growth that stopped half-way', () => {
  it('passes a group that keeps less than a quarter for later', async () => {
    expect(await found(group('70 GiB'))).toEqual([]);
  });

  it('passes exactly a quarter of idle capacity, and fails one extent more', async () => {
    expect(await found(group('60 GiB'))).toEqual([]);
    expect(await found(group('61376 MiB'))).toEqual([
      'error new plates: volume group plates has ≈20.06 GiB (21,541,945,344 bytes) of its 80 GiB unallocated (25.1 %), at 0.90 EUR a month',
    ]);
  });

  it('sees volumes that were grown under a file system that was not', async () => {
    expect((await found(group('70 GiB', '80 GiB'), group('70 GiB')))[0]).toMatch(
      /^error new plates: .* 90 GiB \(96,636,764,160 bytes\) of its 160 GiB unallocated \(56\.3 %\)/,
    );
  });

  it('lets idle capacity on main stand, and refuses to add to it', async () => {
    const before = group('20 GiB');
    expect((await found(before, before))[0]).toMatch(/^error unchanged/);
    expect((await found(group('20 GiB', '50 GiB'), before))[0]).toMatch(/^error updated/);
    expect((await found(group('30 GiB'), before))[0]).toMatch(/^error unchanged/);
    expect((await found(group('70 GiB'), before))[0]).toMatch(/^error absent/);
  });

  it('counts both copies of a mirrored group as given', async () => {
    const mirrored = '\n    layout: mirrored';
    expect(await found(group('36 GiB', '40 GiB', mirrored))).toEqual([]);
    expect((await found(group('20 GiB', '40 GiB', mirrored)))[0]).toContain('has ≈39.88 GiB');
  });

  it('finds an attached volume that nothing lies on, with what it costs', async () => {
    expect(await found(alone(''))).toEqual([
      'error new plates-1: volume plates-1 is attached, but its 50 GiB (53,687,091,200 bytes) are in no volume group and hold no file system, at 2.25 EUR a month',
    ]);
  });

  it('leaves a boot volume and a detached volume alone', async () => {
    expect(
      await found(
        'servers:\n  plate-scanner: { boot: root }\nvolumes:\n  root: { size: 50 GiB, tier: bulk }\n',
      ),
    ).toEqual([]);
    expect(await found('volumes:\n  master: { size: 50 GiB, tier: bulk }\n')).toEqual([]);
  });

  it('finds a file system that did not grow with its own volume', async () => {
    const behind = (size: string): string =>
      alone(`, file-system: { mount: /plates, type: ext4, size: ${size} }`);
    expect(await found(behind('50 GiB'))).toEqual([]);
    expect(await found(behind('49 GiB'))).toEqual([]);
    expect(await found(behind('48 GiB'))).toEqual([
      "error new plates-1:/plates: file system plates-1:/plates leaves 2 GiB (2,147,483,648 bytes) of its volume's 50 GiB unallocated, at 0.09 EUR a month",
    ]);
    expect(await found(alone(', file-system: { mount: /plates, type: ext4 }'))).toEqual([]);
  });

  it('goes by a quarter and 1 GiB where the entry names neither', async () => {
    const bare = ['{ rule: growth-followed-through }'];
    expect(await found(group('60 GiB'), undefined, bare)).toEqual([]);
    expect((await found(group('59 GiB'), undefined, bare))[0]).toMatch(/^warning new plates:/);
  });
});

describe('idle capacity', () => {
  it('never comes to more than was bought, nor its money to more than that costs', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 400 }),
        fc.integer({ min: 1, max: 400 }),
        fc.constantFrom('linear', 'striped', 'mirrored'),
        (member, system, layout) => {
          const estate = estateOf(group(`${system} GiB`, `${member} GiB`, `\n    layout: ${layout}`));
          const prices = pricesOf();
          for (const { bought, idle, monthly } of idleOf(estate, prices)) {
            expect(idle > 0n && idle <= bought).toBe(true);
            expect(monthly().lte((2 * member * 0.045 + 1e-9).toString())).toBe(true);
          }
        },
      ),
      { numRuns: 60 },
    );
  });

  it('is listed by layer, and its money adds up', () => {
    const estate = estateOf(`
servers:
  plate-scanner: {}
volumes:
  a: { size: 10 GiB, tier: bulk }
  b: { size: 20 GiB, tier: steady, file-system: { mount: /b, type: ext4, size: 15 GiB } }
  c: { size: 30 GiB, tier: steady }
attachments:
  - { volume: a, server: plate-scanner }
volume-groups:
  g: { members: [c] }
`);
    const places = idleOf(estate, pricesOf());
    expect(
      places.map(({ layer, subject, monthly }) => `${layer} ${subject.name} ${showMoney(monthly(), 'EUR')}`),
    ).toEqual(['volume-group g 3.00', 'volume a 0.45', 'file-system b:/b 0.50']);
    expect(showMoney(sumMoney(places.map(({ monthly }) => monthly())), 'EUR')).toBe('3.95');
  });
});
