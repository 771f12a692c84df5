import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { subjectKey } from '../../src/estate/estate.ts';
import { assembled, judged, pack, said } from '../estate/builder.ts';

const onVolume = (name: string, mount: string): string =>
  `  ${name}: { size: 40 GiB, tier: bulk, file-system: { mount: ${mount}, type: xfs } }\n`;

describe('a volume and a group of one name, with a file system at one mount point', () => {
  const rule = pack('rule: naming, mount: "/srv/.*"');
  const main = `volumes:\n  other: { size: 40 GiB, tier: bulk }\n${onVolume('plates', '/plates')}`;
  const branch =
    'volumes:\n  other: { size: 40 GiB, tier: bulk }\nvolume-groups:\n  plates: { members: [other], file-systems: { /plates: { size: 20 GiB, type: xfs } } }\n';

  it.each([
    ['the group takes the name of the volume', main, branch],
    ['the volume takes the name of the group', branch, main],
  ])(
    'are two where %s: what is wrong with the one is no excuse for the other',
    async (_what, before, after) => {
      const judgement = await judged(
        { ...rule, 'storage/imagery.yaml': before },
        { 'storage/imagery.yaml': after },
      );
      expect(judgement.verdict).toBe('fail');
      expect(said(judgement).map((each) => each.split(':').slice(0, 2).join(':'))).toEqual([
        'error new plates:/plates',
        'error absent plates:/plates',
      ]);
    },
  );

  it('are never in one estate under one name, whatever they are called', () => {
    const name = fc.constantFrom('plates', 'masters', 'logs');
    const mount = fc.constantFrom('/plates', '/masters');
    let accepted = 0;
    let refused = 0;
    fc.assert(
      fc.property(
        fc.uniqueArray(fc.tuple(name, mount), { selector: ([each]) => each, minLength: 1 }),
        fc.uniqueArray(fc.tuple(name, mount), { selector: ([each]) => each, minLength: 1 }),
        (volumes, groups) => {
          const bare = groups.map(([each]) => `  of-${each}: { size: 40 GiB, tier: bulk }\n`);
          const outcome = assembled({
            'storage/a.yaml': `volumes:\n${volumes.map(([each, at]) => onVolume(each, at)).join('')}`,
            'storage/b.yaml': `volumes:\n${bare.join('')}volume-groups:\n${groups.map(([each, at]) => `  ${each}: { members: [of-${each}], file-systems: { ${at}: { size: 20 GiB, type: xfs } } }\n`).join('')}`,
          });
          if (!outcome.ok) {
            refused += 1;
            expect(outcome.problems.map(({ message }) => message).join()).toContain('are both called');
            return;
          }
          accepted += 1;
          const systems = [...outcome.value.fileSystems.values()];
          expect(systems).toHaveLength(volumes.length + groups.length);
          expect(new Set(systems.map(subjectKey)).size).toBe(systems.length);
        },
      ),
    );
    expect([accepted > 0, refused > 0]).toEqual([true, true]);
  });
});
