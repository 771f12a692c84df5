import fc from 'fast-check';
import { afterAll, describe, expect, it } from 'vitest';
import { assemble } from '../../src/estate/assemble.ts';
import { ullage } from '../cli/run.ts';
import { makeRepository, removeRepositories } from '../repository.ts';
import {
  assembled,
  estateOf,
  gannetPoint,
  judged,
  judgeFiles,
  line,
  onlyFinding,
  pack,
  partOf,
  problemsOf,
  settingsOf,
  today,
  underRule,
} from './builder.ts';

const a = 'storage/a.yaml';
const b = 'storage/b.yaml';

/** Two things that differ in name and id alone. */
const named = (name: string, id: string): string =>
  `volumes: { ${name}: { size: 1 GiB, tier: bulk, id: ${id} } }\n`;

describe("the provider's own identifier", () => {
  it('is one for each volume, whichever file it is in; with where the other is', () => {
    const found = problemsOf(assembled({ [a]: named('plates-1', 'vol-7'), [b]: named('plates-2', 'vol-7') }));
    expect(found.map(line)).toEqual([
      `${b}:1:49: the volumes plates-2 and plates-1 (${a}:1) have the same id, vol-7`,
    ]);
  });

  it('is of one kind: a server may have that of a volume', () => {
    const { byId } = estateOf({ [a]: named('plates-1', '"7"'), [b]: 'servers: { scanner: { id: "7" } }\n' });
    expect([...byId.values()].flat().map(({ name }) => name)).toEqual(['plates-1', 'scanner']);
  });

  it.each([
    ['a number without quotes', '4711'],
    ['nothing', '""'],
    ['a control character', '"vol\\u0007"'],
    ['more than 255 characters', 'v'.repeat(256)],
  ])('is text on one line: %s is refused at its place', async (_what, id) => {
    const files = { ...gannetPoint, [a]: named('plates-1', id) };
    const { verdict, ...rest } = await judgeFiles(gannetPoint, files);
    expect(verdict).toBe('not judged');
    expect('problems' in rest && rest.problems.map(line).join()).toMatch(`${a}:1:53`);
  });

  it('is told twice or not whatever was put together before', () => {
    const ids = fc.array(fc.constantFrom('none', 'vol-1', 'vol-2', 'vol-3'), { minLength: 4, maxLength: 4 });
    const partsOf = (of: readonly string[], known: readonly ReturnType<typeof partOf>[] = [], were = of) =>
      of.map((id, index) => {
        const same = were[index] === id ? known[index] : undefined;
        const text =
          id === 'none' ? `volumes: { v${index}: { size: 1 GiB, tier: bulk } }\n` : named(`v${index}`, id);
        return same ?? partOf(text, `storage/${index}.yaml`);
      });
    const settings = settingsOf();
    let refused = 0;
    fc.assert(
      fc.property(ids, ids, (before, after) => {
        const base = partsOf(before);
        const standing = assemble(base, settings);
        fc.pre(standing.ok);
        const over = assemble(partsOf(after, base, before), settings, standing.value);
        const fresh = assemble(partsOf(after), settings);
        if (!fresh.ok) refused++;
        expect(problemsOf(over).map(line).sort()).toEqual(problemsOf(fresh).map(line).sort());
        const told = after.filter((id) => id !== 'none');
        expect(fresh.ok).toBe(new Set(told).size === told.length);
      }),
      { numRuns: 200 },
    );
    expect(refused).toBeGreaterThan(0);
  });
});

const one = (rest: string): string => `servers:
  scanner: { boot: root }
volumes:
  root: { size: 50 GiB, tier: steady }
  plates-1: { size: 40 GiB, tier: bulk, ${rest} }
`;

describe('an identifier that changes', () => {
  it('puts another volume under the name: refused as the loss that it is, with the way out of a slip', async () => {
    const rule = 'rule: deletion-prepared';
    const { level, message, advice } = onlyFinding(await underRule(rule, one('id: vol-1'), one('id: vol-2')));
    expect([level, message]).toEqual([
      'error',
      'volume plates-1 would be another one, with the id vol-2, without what the one with the id vol-1 holds, and no entry under retired: gives a reason',
    ]);
    expect(advice).toContain('take it out in a change of its own');
    expect((await underRule(rule, one('id: vol-1'), one('protected: false'))).findings).toEqual([]);
    expect((await underRule(rule, one('protected: false'), one('id: vol-2'))).findings).toEqual([]);
  });

  it('is counted among what cannot be undone, and stopped by a freeze', async () => {
    const few = await underRule(
      'rule: destructive-changes-few, at-most: 0',
      one('id: vol-1'),
      one('id: vol-2'),
    );
    expect(few.verdict).toBe('fail');
  });

  it('has one step, which is to find out which it is, and nothing that is done to either', async () => {
    const { runbook } = await underRule('rule: no-shrink', one('id: vol-1'), one('id: vol-2'));
    expect(runbook.map(({ at, does }) => [at, does])).toEqual([
      [
        'provider',
        'Find out which volume plates-1 is: the one with the id vol-1, as on main, or the one with the id vol-2. Change nothing about either before that is settled.',
      ],
    ]);
    expect(runbook[0]?.cautions).not.toEqual([]);
  });

  it.each([
    [
      'the volume that a running server starts from',
      one('').replace('steady', 'steady, id: vol-1'),
      'vol-1',
      'vol-2',
    ],
    ['the running server itself', one('').replace('boot: root', 'boot: root, id: srv-1'), 'srv-1', 'srv-2'],
  ])('takes %s from under it', async (_what, main, was, now) => {
    const { message } = onlyFinding(await underRule('rule: boot-volume-stays', main, main.replace(was, now)));
    expect(message).toMatch(/scanner starts from root, which would be .* while scanner runs/);
  });

  it('is not hidden by a rename', async () => {
    const renamed = one('id: vol-2, formerly: plates-1').replace('  plates-1', '  plates-9');
    const { changes } = await judged({ [a]: one('id: vol-1') }, { [a]: renamed });
    expect(changes.map(({ kind }) => kind).sort()).toEqual(['volume-changed-id', 'volume-renamed']);
  });
});

describe('an identifier that main gives to another', () => {
  const main = `volumes:
  plates-1: { size: 40 GiB, tier: bulk, id: vol-1 }
  plates-2: { size: 40 GiB, tier: bulk }
`;

  it.each([
    [
      'comes up under a new name, and would be deleted under the old one',
      main.replace('plates-1', 'plates-9'),
    ],
    [
      'passes to another volume that had none',
      main
        .replace(', id: vol-1', '')
        .replace('plates-2: { size: 40 GiB', 'plates-2: { id: vol-1, size: 40 GiB'),
    ],
  ])('%s: not judged, and told where main has it', async (_what, after) => {
    const before = { ...gannetPoint, [a]: main };
    const judgement = await judgeFiles(before, { ...before, [a]: after });
    expect(judgement.verdict).toBe('not judged');
    expect(judgement.reasons.join()).toContain('has the id vol-1, which on main is that of plates-1');
  });

  it('is that of the same volume where the new name says so', async () => {
    const renamed = main.replace('plates-1: { ', 'plates-9: { formerly: plates-1, ');
    const { changes } = await judged({ [a]: main, ...pack('rule: no-shrink') }, { [a]: renamed });
    expect(changes.map(({ kind }) => kind)).toEqual(['volume-renamed']);
  });
});

describe('on a branch of a real repository', () => {
  afterAll(removeRepositories);
  const plates = (name: string, id: string): Record<string, string> => ({
    [a]: `volumes:\n  ${name}: { size: 40 GiB, tier: bulk${id === '' ? '' : `, id: ${id}`} }\n`,
  });
  const gate = async (main: Record<string, string>, branch: Record<string, string>) => {
    const repository = makeRepository({ files: { ...gannetPoint, ...main } });
    repository.branch('identify');
    repository.write(branch);
    repository.commit('the ids');
    return ullage('gate', '--repo', repository.dir, '--base', 'main', '--now', today);
  };

  it('ids that are told for the first time, or taken out, change nothing', async () => {
    for (const [before, after] of [
      ['', 'vol-1'],
      ['vol-1', ''],
    ] as const) {
      const { code, out } = await gate(plates('plates-1', before), plates('plates-1', after));
      expect([code, out.split('\n')[0]]).toEqual([0, 'pass: nothing changes']);
    }
  });

  it('another id fails it, one given twice stops it at its place, and one of main under a new name, too', async () => {
    const main = plates('plates-1', 'vol-1');
    const swapped = await gate(main, plates('plates-1', 'vol-2'));
    expect([swapped.code, swapped.out.split('\n')[0]]).toEqual([
      1,
      expect.stringContaining('fail: deletion-prepared: volume plates-1 would be another one'),
    ]);
    const twice = await gate(main, { [b]: named('plates-2', 'vol-1') });
    expect([twice.code, twice.out + twice.err]).toEqual([
      2,
      expect.stringContaining('have the same id, vol-1'),
    ]);
    const renamed = await gate(main, plates('plates-9', 'vol-1'));
    expect([renamed.code, renamed.out + renamed.err]).toEqual([
      2,
      expect.stringContaining('write formerly: plates-1'),
    ]);
  });
});
