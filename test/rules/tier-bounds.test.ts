import { describe, expect, it } from 'vitest';
import { judgedBranch, said } from '../estate/builder.ts';

const entries = ['{ rule: tier-bounds }'];

const prices = `from: 2026-01-01
currency: EUR
tiers:
  bulk:   { rate: "0.045", per: GiB-month, minimum: 10 GiB, maximum: 2 TiB, step: 10 GiB, iops-per-gib: 3, iops-maximum: 1000 }
  odd:    { rate: "0.1", per: GiB-month, iops-per-gib: 0.5 }
  small:  { rate: "0.1", per: GiB-month, maximum: 100 GiB }
  mute:   { rate: "0.1", per: GiB-month }
  capped: { rate: "0.1", per: GiB-month, iops-maximum: 250 }
  broken: { rate: "0.1", per: GiB-month, minimum: 3 GiB, maximum: 4 GiB, step: 5 GiB }
`;

const volume = (size: string, tier = 'bulk'): string =>
  `volumes:\n  plates-1: { size: ${size}, tier: ${tier} }\n`;

const sized = async (size: string, tier?: string, before?: string) =>
  said(
    await judgedBranch({
      ...(before === undefined ? {} : { main: volume(before, tier) }),
      branch: volume(size, tier),
      entries,
      prices,
    }),
  );

describe('a size that the tier does not sell', () => {
  it('lets a size within the bounds pass', async () => {
    expect(await sized('40 GiB')).toEqual([]);
  });

  it('lets exactly the smallest and exactly the largest pass', async () => {
    expect(await sized('10 GiB')).toEqual([]);
    expect(await sized('100 GiB', 'small')).toEqual([]);
    expect(await sized('101 GiB', 'small')).toHaveLength(1);
  });

  it('names the bound and the nearest size below the least', async () => {
    const [smaller] = await sized('9 GiB');
    expect(smaller).toContain(
      'the tier bulk offers no less than 10 GiB; the nearest possible size is 10 GiB',
    );
  });

  it('names the largest size that fits both the most and the step', async () => {
    const findings = await sized('3 TiB');
    expect(findings[0]).toBe(
      'error new plates-1: volume plates-1 has 3 TiB, and the tier bulk offers no more than 2 TiB; the nearest possible size is 2040 GiB',
    );
  });

  it('offers the sizes on either side of one between two steps', async () => {
    expect(await sized('45 GiB')).toEqual([
      'error new plates-1: volume plates-1 has 45 GiB (48,318,382,080 bytes), and the tier bulk offers whole multiples of 10 GiB; the nearest possible sizes are 40 GiB and 50 GiB',
    ]);
  });

  it('sees 50 GB where 50 GiB would have been a whole step', async () => {
    expect((await sized('50 GB'))[0]).toContain('the nearest possible sizes are 40 GiB and 50 GiB');
  });

  it('says so when the bounds of the tier leave no size at all', async () => {
    expect((await sized('2 GiB', 'broken')).join()).toContain('no size is possible');
  });

  it('lets what was too small on main stand, and growth that mends half of it pass', async () => {
    expect((await sized('4 GiB', 'bulk', '4 GiB'))[0]).toMatch(/^error unchanged/);
    expect((await sized('7 GiB', 'bulk', '4 GiB'))[0]).toMatch(/^error unchanged/);
  });

  it('refuses growth further beyond the most', async () => {
    const findings = await sized('4 TiB', 'bulk', '3 TiB');
    expect(findings.find((each) => each.includes('no more than'))).toMatch(/^error updated/);
  });
});

const server = (io: number, tier = 'bulk', sizes = ['40 GiB', '40 GiB', '40 GiB']): string => `
servers:
  plate-scanner: { iops: ${io} }
volumes:
${sizes.map((size, index) => `  plates-${index + 1}: { size: ${size}, tier: ${tier} }\n`).join('')}
attachments:
${sizes.map((_size, index) => `  - { volume: plates-${index + 1}, server: plate-scanner }\n`).join('')}`;

const served = async (branch: string, main?: string) =>
  said(await judgedBranch({ ...(main === undefined ? {} : { main }), branch, entries, prices }));

describe('a server that needs more operations than its volumes give', () => {
  it('passes when the volumes give exactly what it needs', async () => {
    expect(await served(server(360))).toEqual([]);
  });

  it('says how many are missing, one above that', async () => {
    expect(await served(server(361))).toEqual([
      "error new plate-scanner: server plate-scanner needs 361 IOPS, and its volumes' tiers provide 360 (plates-1 120, plates-2 120, plates-3 120): 1 short",
    ]);
  });

  it('caps each volume at what its tier gives a volume at the most', async () => {
    expect((await served(server(2500, 'bulk', ['1000 GiB', '1000 GiB'])))[0]).toContain(
      'provide 2,000 (plates-1 1000, plates-2 1000): 500 short',
    );
    expect(await served(server(500, 'capped', ['10 GiB', '10 GiB']))).toEqual([]);
  });

  it('counts half operations of odd sizes before it rounds down', async () => {
    expect(await served(server(15, 'odd', ['15 GiB', '15 GiB']))).toEqual([]);
    expect((await served(server(16, 'odd', ['15 GiB', '16 GiB'])))[0]).toContain(
      'provide 15 (plates-1 7.5, plates-2 8): 1 short',
    );
  });

  it('does not count on a tier that promises no figure', async () => {
    expect(await served(server(100, 'mute'))).toEqual([
      'error new plate-scanner: server plate-scanner needs 100 IOPS, and the price list gives none for the tier mute: 100 short',
    ]);
  });

  it('refuses a server with no volume at all that needs any', async () => {
    expect(await served('servers:\n  plate-scanner: { iops: 5 }\n')).toEqual([
      'error new plate-scanner: server plate-scanner needs 5 IOPS, and it has no volumes: 5 short',
    ]);
  });

  it('lets a standing lack be, and refuses to make it larger by taking a volume away', async () => {
    const two = server(400, 'bulk', ['40 GiB', '40 GiB']);
    expect((await served(two, two))[0]).toMatch(/^error unchanged/);
    expect((await served(two, server(400)))[0]).toMatch(/^error updated .* 160 short$/);
    expect((await served(server(400), two))[0]).toMatch(/^error unchanged .* 40 short$/);
  });
});

it('off the step in one tier and off it in another are two faults', async () => {
  const sized = (tier: string): string => `volumes:\n  plates-1: { size: 45 GiB, tier: ${tier} }\n`;
  const prices = `from: 2026-01-01
currency: EUR
tiers:
  bulk: { rate: "0.045", per: GiB-month, step: 10 GiB }
  steady: { rate: "0.10", per: GiB-month, step: 20 GiB }
`;
  const judgement = await judgedBranch({
    main: sized('bulk'),
    branch: sized('steady'),
    entries: ['{ rule: tier-bounds }'],
    prices,
  });
  expect(judgement.verdict).toBe('fail');
});

it('a volume of a tier that promises nothing does not turn a refusal into a remark', async () => {
  const served = (need: number, more: string): string =>
    `servers:\n  scanner: { iops: ${need} }\nvolumes:\n  a: { size: 40 GiB, tier: bulk }\n${more}attachments:\n  - { volume: a, server: scanner }\n`;
  const prices = `from: 2026-01-01
currency: EUR
tiers:
  bulk: { rate: "0.045", per: GiB-month, iops-per-gib: 3 }
  mute: { rate: "0.01", per: GiB-month }
`;
  const judgement = await judgedBranch({
    main: served(120, ''),
    branch: `${served(500, '  b: { size: 1 GiB, tier: mute }\n')}  - { volume: b, server: scanner }\n`,
    entries: ['{ rule: tier-bounds }'],
    prices,
  });
  expect(judgement.verdict).toBe('fail');
});
