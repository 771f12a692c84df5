/** A change carried out in part: what surveys show against the ticks, the way back, and the end confirmed. */
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { afterAll, describe, expect, it } from 'vitest';
import { estateOf, gannetPoint } from '../estate/builder.ts';
import { makeRepository, removeRepositories, type TestRepository } from '../repository.ts';
import { playServers } from '../survey/player.ts';
import { ullage } from './run.ts';

afterAll(removeRepositories);

const storage = 'storage/imagery.yaml';
const plates = (volume: string, system: string): string => `
servers: { plate-scanner: { guest: linux-lvm, boot: plate-scanner-root } }
volumes:
  plate-scanner-root: { id: vol-root, size: 20 GiB, tier: steady, file-system: { mount: /, type: ext4 } }
  plates-1: { id: vol-plates-1, size: ${volume}, tier: bulk }
  scans: { id: vol-scans, size: 20 GiB, tier: bulk, file-system: { mount: /scans, type: ext4 } }
attachments:
  - { volume: plates-1, server: plate-scanner }
  - { volume: scans, server: plate-scanner }
volume-groups:
  plates: { extent: 4 MiB, members: [plates-1], file-systems: { /plates: { size: ${system}, type: xfs } } }
`;
const before = plates('40 GiB', '30 GiB');
const after = plates('60 GiB', '50 GiB');
const shape = { isOld: false, isBare: false, hasBootPartition: false };

/** Has the servers of an estate gathered what is there, and keeps it. */
async function survey({ dir }: TestRepository, estate: string): Promise<void> {
  for (const { server, text } of playServers(estateOf(estate), shape)) {
    const file = join(dir, '..', `${dir.split('/').at(-1)}-${server}.json`);
    writeFileSync(file, text);
    const { code, out } = await ullage('survey', 'add', file, '--server', server, '--repo', dir);
    expect([code, out]).toEqual([0, expect.any(String)]);
  }
}

function growing(): TestRepository {
  const repository = makeRepository({
    files: { ...gannetPoint, 'policies/storage.yaml': 'rules: []\n', [storage]: before },
  });
  repository.git('tag', 'before');
  repository.write({ [storage]: after });
  repository.commit('grow the plates');
  return repository;
}

const steps = ({ dir }: TestRepository, ...more: readonly string[]) =>
  ullage('steps', '--repo', dir, '--base', 'before', '--head', 'main', '--now', '2026-11-25', ...more);

/** The check-list with the first so many steps ticked. */
async function ticked(repository: TestRepository, count: number): Promise<string> {
  const { out } = await steps(repository, '--format', 'markdown');
  let left = count;
  const file = join(repository.dir, '..', `${repository.dir.split('/').at(-1)}.md`);
  writeFileSync(
    file,
    out.replaceAll(/^- \[ \]/gm, (box) => (left-- > 0 ? '- [x]' : box)),
  );
  return file;
}

const flat = (text: string): string => text.replace(/\s+/g, ' ');

describe('a change that is carried out in part', () => {
  it('is told where a survey shows that a ticked step is not done, with what it shows', async () => {
    const repository = growing();
    await survey(repository, before);
    repository.commit('a survey');
    const { code, out, err } = await steps(repository, '--done', await ticked(repository, 1));
    expect([code, err]).toEqual([1, 'a survey shows otherwise than the ticks\n']);
    expect(flat(out)).toContain(
      '1 It is ticked, and by the survey of plate-scanner (2026-11-20) it is not done:',
    );
    expect(out).toContain('40 GiB');
    // What can be undone hangs on what is done, which is not settled.
    const [, back = ''] = out.split('To step back instead\n');
    expect([flat(back).includes('settle first'), back.includes('to step back')]).toEqual([true, false]);
    // Done on a day after the survey, it is not denied; the list and the JSON carry the day on.
    const file = await ticked(repository, 1);
    const dated = readFileSync(file, 'utf8').replace(/^(- \[x\].*`[0-9a-f]{10}`)/m, '$1 2026-11-24');
    writeFileSync(file, dated);
    expect((await steps(repository, '--done', file)).code).toBe(0);
    for (const format of ['markdown', 'json']) {
      const again = join(repository.dir, '..', `${repository.dir.split('/').at(-1)}.${format}`);
      writeFileSync(again, (await steps(repository, '--done', file, '--format', format)).out);
      expect(readFileSync(again, 'utf8')).toContain('2026-11-24');
      expect((await steps(repository, '--done', again)).code).toBe(0);
    }
  });

  it('is told where a survey shows that a step is done which is not ticked, in JSON as its schema says', async () => {
    const repository = growing();
    await survey(repository, after);
    repository.commit('a survey');
    const { code, out } = await steps(repository, '--done', await ticked(repository, 0), '--format', 'json');
    const schema = (name: string): object =>
      JSON.parse(readFileSync(join(import.meta.dirname, '../../schema', name), 'utf8'));
    const valid = new Ajv2020({ strict: true, allowUnionTypes: true })
      .addSchema(schema('common.json'))
      .addSchema(schema('judgement.json'))
      .compile(schema('steps.json'));
    const report = JSON.parse(out);
    expect([code, valid(report), valid.errors]).toEqual([1, true, null]);
    expect(report.surveyed).toContainEqual({
      number: 1,
      kind: 'so and not ticked',
      server: 'plate-scanner',
      on: expect.stringMatching(/^\d{4}-\d{2}-\d{2}$/),
      message: expect.stringContaining('60 GiB'),
    });
  });

  it('says nothing against the ticks where nothing was surveyed', async () => {
    const repository = growing();
    const { code, out } = await steps(repository, '--done', await ticked(repository, 1));
    expect([code, out.includes('Surveys against the ticks')]).toEqual([0, false]);
  });

  it('is stepped back from the last step that is done, with the cautions, and says what nothing takes back', async () => {
    const repository = growing();
    const { out } = await steps(repository, '--done', await ticked(repository, 4));
    const [, back = ''] = out.split('To step back instead\n');
    expect(flat(back)).toContain('Nothing takes back step 1. What can still be undone');
    expect(flat(back)).toContain('have a backup that you have restored from');
    const numbers = [...back.matchAll(/^ {2}(\d+) {2}/gm)].map(([, number]) => Number(number));
    expect(numbers.length).toBeGreaterThan(0);
    expect(numbers).toEqual(numbers.toSorted((a, b) => b - a));
    expect(numbers).not.toContain(1);
    for (const count of [0, 99]) {
      const none = await steps(repository, '--done', await ticked(repository, count));
      expect(none.out).not.toContain('To step back instead');
    }
  });

  it('ends with a survey that shows nothing else than what is declared', async () => {
    const repository = growing();
    const { dir } = repository;
    await survey(repository, before);
    const compare = () => ullage('survey', 'compare', '--repo', dir, '--now', '2026-11-25');
    expect((await compare()).code).toBe(1);
    await survey(repository, after);
    repository.commit('a survey afterwards');
    const { code, out } = await steps(repository, '--done', await ticked(repository, 99));
    expect([code, out.includes('All is done.')]).toEqual([0, true]);
    expect((await compare()).code).toBe(0);
  });
});
