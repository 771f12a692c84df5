import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { judgedBranch } from '../estate/builder.ts';

const limit = '{ rule: max-monthly-spend, where: { teams: [imagery] }, limit: "10.00" }';
const volume = (name: string, gib: number, team = 'imagery', more = ''): string =>
  `  ${name}: { size: ${gib} GiB, tier: steady, team: ${team}${more} }\n`;
const estate = (...volumes: readonly string[]): string => `volumes:\n${volumes.join('')}`;

async function finding(main: string, branch: string, entry = limit) {
  const judgement = await judgedBranch({ main, branch, entries: [entry] });
  const [only] = judgement.findings;
  if (only === undefined) throw new Error('nothing was found');
  return only;
}

const dear = volume('archive', 90);

describe('an overspend points at what the branch made dearer most', () => {
  it('and not at what cost most all along', async () => {
    const branch = estate(dear, volume('plates-1', 15), volume('plates-2', 20));
    const { place, advice } = await finding(estate(dear), branch);
    expect(place).toMatchObject({ revision: 'head', line: 4 });
    expect(advice).toMatch(/^The branch adds most with plates-2: 2\.00 EUR a month\. Provision less/);
  });

  it('by what it grew by, not by what it came to; a rename is no growth', async () => {
    const main = estate(dear, volume('plates-1', 9), volume('old', 30));
    const branch = estate(dear, volume('plates-1', 12), volume('new', 31, 'imagery', ', formerly: old'));
    expect((await finding(main, branch)).advice).toContain('with plates-1: 0.30 EUR a month');
  });

  it('where the team is another now', async () => {
    const main = estate(dear, volume('plates-1', 5), volume('plates-2', 30, 'ledger'));
    const branch = estate(dear, volume('plates-1', 6), volume('plates-2', 30));
    expect((await finding(main, branch)).advice).toContain('with plates-2: 3.00 EUR a month');
  });

  it('on the way to a limit, too', async () => {
    const entry = '{ rule: max-monthly-spend, where: { teams: [imagery] }, limit: "20.00", warn-from: 0.5 }';
    const { advice } = await finding(estate(dear), estate(dear, volume('plates-1', 20)), entry);
    expect(advice).toBe('The branch adds most with plates-1: 2.00 EUR a month. 9.00 EUR a month remains.');
  });

  it('where no limit covers it', async () => {
    const main = estate(volume('archive', 90, 'ledger'));
    const branch = estate(volume('archive', 90, 'ledger'), volume('plates-1', 20, 'ledger'));
    const { place, advice } = await finding(main, branch, '{ rule: spend-under-a-limit }');
    expect(place.line).toBe(3);
    expect(advice).toContain('The branch adds most with plates-1');
  });

  it('and at the dearest where the branch does nothing to it', async () => {
    const over = estate(volume('archive', 110), volume('plates-1', 20));
    const branch = `${over}${volume('other', 1, 'ledger')}`;
    const { baselineState, place, advice } = await finding(over, branch);
    expect([baselineState, place.line]).toEqual(['unchanged', 2]);
    expect(advice).toContain('The most expensive is archive');
  });

  it('whatever the branch does', async () => {
    const sizes = fc.array(fc.integer({ min: 1, max: 200 }), { minLength: 4, maxLength: 4 });
    await fc.assert(
      fc.asyncProperty(sizes, sizes, async (before, after) => {
        const at = (gib: readonly number[]) => estate(...gib.map((each, nth) => volume(`v${nth}`, each)));
        const judgement = await judgedBranch({ main: at(before), branch: at(after), entries: [limit] });
        const [only] = judgement.findings;
        if (only === undefined || !/new|updated/.test(only.baselineState)) return;
        const grown = after.map((each, nth) => each - (before[nth] ?? 0));
        expect(only.place.line).toBe(2 + grown.indexOf(Math.max(...grown)));
      }),
    );
  });
});
