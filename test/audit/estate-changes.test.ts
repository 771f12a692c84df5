import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { declaredSizes } from '../../src/capacity/declared-sizes.ts';
import { unitBytes } from '../../src/estate/size.ts';
import { ullage } from '../cli/run.ts';
import { estateOf } from '../estate/builder.ts';
import { years } from '../page/office.ts';

const pageOf = async (dir: string, ...args: readonly string[]): Promise<string> =>
  (await ullage('headroom', '--repo', dir, '--format', 'html', '--now', '2026-11-20', ...args)).out;

/** What the page says was declared, without its marks. */
const declaredIn = (page: string): string | undefined =>
  /<dt>Declared<\/dt><dd>(.*?)<\/dd>/.exec(page)?.[1]?.replaceAll(/<[^>]*>/g, '');

describe('the sizes that a history declares', () => {
  const step = fc.record({
    size: fc.integer({ min: 1, max: 30 }),
    members: fc.integer({ min: 31, max: 60 }),
    renamed: fc.boolean(),
  });

  it('lead from the first to the last, each on its day, whatever the group was called', () => {
    fc.assert(
      fc.property(fc.array(step, { minLength: 2, maxLength: 8 }), (steps) => {
        let name = 'plates';
        const estates = steps.map(({ size, members, renamed }, index) => {
          const former = name;
          if (renamed && index > 0) name = `plates-${index}`;
          const formerly = name === former ? '' : `formerly: ${former}, `;
          return estateOf(`volumes:
  plates-1: { size: ${members} GiB, tier: bulk }
volume-groups:
  ${name}: { ${formerly}members: [plates-1], file-systems: { /plates: { size: ${size} GiB, type: xfs } } }
`);
        });
        const day = (index: number) => `2026-06-${String(index + 10)}`;
        const changes = estates.flatMap((after, index) => {
          const before = estates[index - 1];
          return before === undefined ? [] : [{ on: day(index), before, after }];
        });
        const estate = estates.at(-1);
        const [system] = estate?.fileSystems.values() ?? [];
        if (estate === undefined || system === undefined) throw new Error('no file system');
        const found = declaredSizes(system, estate, changes);
        const wanted = (of: 'size' | 'members') =>
          steps.flatMap((now, index) => {
            const before = steps[index - 1];
            return before === undefined || before[of] === now[of]
              ? []
              : [`${day(index)} ${before[of]} to ${now[of]}`];
          });
        const told = (of: 'file system' | 'volume group') =>
          found
            .filter((each) => each.of === of)
            .map(({ on, from, to }) => `${on} ${from / unitBytes.GiB} to ${to / unitBytes.GiB}`);
        expect(told('file system')).toEqual(wanted('size'));
        expect(told('volume group')).toEqual(wanted('members'));
      }),
    );
  });
});

describe("a forecast's drawing", () => {
  const declared =
    '2026-09-09: the volume group from 140 GiB to 340 GiB; 2026-11-09: the volume group from 340 GiB to 341 GiB';

  it('marks what was declared since its first reading, and nothing from before', async () => {
    const page = await pageOf(years().dir, '--at', 'main');
    expect(declaredIn(page)).toBe(declared);
    expect(page.match(/<line class="declared"/g)).toHaveLength(2);
  });

  it('lays what is not committed at no commit', async () => {
    const repository = years();
    repository.git('checkout', '--quiet', 'main');
    const file = 'storage/imagery.yaml';
    const text = repository.git('show', `main:${file}`);
    repository.write({ [file]: `${text.replace('plates-1: { size: 61 GiB', 'plates-1: { size: 90 GiB')}\n` });
    const page = await pageOf(repository.dir);
    expect(page).toContain('370 GiB');
    expect(declaredIn(page)).toBe(declared);
  });

  it('says from when on a shallow clone knows what was declared', async () => {
    const clone = years().clone('--depth', '1', '--branch', 'main');
    expect(declaredIn(await pageOf(clone.dir, '--at', 'main'))).toBe(
      'what was declared before 2026-11-09 is not known, for this clone begins there',
    );
  });
});
