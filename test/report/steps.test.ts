import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Judged } from '../../src/policy/judgement.ts';
import { reportSteps } from '../../src/report/steps.ts';
import { readTicks } from '../../src/runbook/ticks.ts';
import { judgedBranch, problemsOf, valueIn } from '../estate/builder.ts';
import { hostile } from './hostile.ts';

const screen = { width: 100, colour: false };

const printed = (judged: Judged): string => reportSteps({ judged, done: new Map() }, 'markdown', screen);

const read = (list: string, { runbook, on }: Judged) => readTicks(list, 'steps.md', runbook, on);

/** A branch that adopts one volume and creates another, by whatever they are called. */
async function bringing(adopted: string, id: string, created: string, mount: string): Promise<Judged> {
  const before = 'servers: { scanner: { guest: linux } }\n';
  const after = `${before}volumes:
  ${JSON.stringify(adopted)}: { id: ${JSON.stringify(id)}, size: 40 GiB, tier: bulk, existing: true }
  ${JSON.stringify(created)}:
    { size: 40 GiB, tier: bulk, file-system: { mount: ${JSON.stringify(mount)}, type: xfs } }
attachments: [ { volume: ${JSON.stringify(created)}, server: scanner } ]
`;
  return judgedBranch({ main: before, branch: after, entries: ['{ rule: no-shrink }'] });
}

/** Ten hexadecimal digits, as many an identifier has and as a step's id looks. */
const hexadecimal = fc.string({
  unit: fc.constantFrom(...'0123456789abcdef'),
  minLength: 10,
  maxLength: 10,
});

const anyText = fc
  .oneof(
    hexadecimal,
    hexadecimal.map((id) => `#\`${id}\``),
    fc.tuple(hexadecimal, hostile).map(([id, text]) => `x #\`${id}\` ${text}`),
    hostile,
  )
  .map((text) => text.replace(/\p{Cc}/gu, '').slice(0, 200));

describe('a check-list in Markdown', () => {
  it('of things that are called like the id of another step has each tick taken for its own step', async () => {
    const first = await bringing('plates-1', 'vol-1', 'plates-2', '/plates');
    const id = first.runbook[0]?.id ?? '';
    const judged = await bringing('plates-1', id, `${id}`, `/#\`${id}\``);
    expect(judged.runbook[0]?.does).toContain(id);
    for (const { number } of judged.runbook.filter(({ after }) => after.length === 0)) {
      const list = printed(judged).replace(`- [ ] **${number}**`, `- [x] **${number}**`);
      expect(valueIn(read(list, judged))).toEqual(new Map([[number, undefined]]));
    }
  });

  it('is read as it was ticked, whatever things are called', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.uniqueArray(hexadecimal, { minLength: 2, maxLength: 2 }),
        anyText,
        anyText,
        fc.nat(),
        async ([adopted = '', created = ''], id, mount, draw) => {
          fc.pre(id !== '' && !/^[\s-]/.test(id));
          const judged = await bringing(adopted, id, created, `/${mount}`);
          // Those up to one of them, in order, so that none is ticked before what it waits for.
          const last = draw % (judged.runbook.length + 1);
          const list = printed(judged).replace(/^- \[ \] \*\*(\d+)/gm, (box, number) =>
            Number(number) <= last ? `- [x] **${number}` : box,
          );
          const done = read(list, judged);
          expect(problemsOf(done)).toEqual([]);
          expect([...valueIn(done).keys()]).toEqual(
            judged.runbook.slice(0, last).map(({ number }) => number),
          );
        },
      ),
      { numRuns: 150 },
    );
  });
});
