import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { afterAll, describe, expect, it } from 'vitest';
import { gannetPoint } from '../estate/builder.ts';
import { makeRepository, removeRepositories, type TestRepository } from '../repository.ts';
import { ullage } from './run.ts';

afterAll(removeRepositories);

const estate = (size: string, mount = '/plates', more = ''): string => `team: imagery
servers:
  plate-scanner: { guest: linux-lvm, type: small }
  plate-archive: { guest: linux, type: small }
volumes:
  plates-1: { size: ${size}, tier: bulk }
  plates-2: { size: ${size}, tier: bulk }
  scans: { size: 20 GiB, tier: bulk, file-system: { mount: /scans, type: ext4 } }
attachments:
  - { volume: plates-1, server: plate-scanner }
  - { volume: plates-2, server: plate-scanner }
  - { volume: scans, server: plate-archive }
volume-groups:
  plates: { members: [plates-1, plates-2], file-systems: { ${JSON.stringify(mount)}: { size: 60 GiB, type: xfs } } }
${more}`;

const main = { ...gannetPoint, 'storage/imagery.yaml': estate('40 GiB') };

/** A branch that grows a group and its file system, and a volume of another server. */
function growing(): TestRepository {
  const repository = makeRepository({ files: main });
  repository.branch('grow');
  repository.write({
    'storage/imagery.yaml': estate('50 GiB')
      .replace('size: 60 GiB', 'size: 80 GiB')
      .replace('scans: { size: 20 GiB', 'scans: { size: 30 GiB'),
  });
  repository.commit('grow the plates');
  return repository;
}

const stepsOf = ({ dir }: TestRepository, ...more: readonly string[]) =>
  ullage('steps', '--repo', dir, '--base', 'main', '--head', 'grow', '--now', '2026-11-20', ...more);

const inJson = async (repository: TestRepository, ...more: readonly string[]) =>
  JSON.parse((await stepsOf(repository, '--format', 'json', ...more)).out);

const numbers = (report: { steps: { step: { number: number } }[] }): readonly number[] =>
  report.steps.map(({ step }) => step.number);

const waits = (report: { steps: { step: { after: number[] } }[] }): readonly number[] =>
  report.steps.flatMap(({ step }) => step.after);

describe('ullage steps', () => {
  it('says of each step what comes first, what is to be seen then, how to step back, and what is billed', async () => {
    const { code, out } = await stepsOf(growing());
    expect(code).toBe(0);
    expect(out).toMatch(/^\d+ steps to carry out\n/);
    expect(out).toContain('Grow volume plates-1 from 40 GiB to 50 GiB.');
    expect(out).toContain('The provider shows plates-1 with 50 GiB.');
    expect(out).toContain('This is a point of no return.');
    expect(out).toMatch(
      /billing +From here on plates-1 costs 2\.25 EUR a month; until now it is 1\.80 EUR\./,
    );
    expect(out).toMatch(/first +steps? [\d, ]+ must be done\./);
  });

  it('are those of the gate, and JSON is as its schema says', async () => {
    const repository = growing();
    const { dir } = repository;
    const report = await inJson(repository);
    const schema = (name: string): object =>
      JSON.parse(readFileSync(join(import.meta.dirname, '../../schema', name), 'utf8'));
    const ajv = new Ajv2020({ strict: true, allowUnionTypes: true });
    const valid = ajv
      .addSchema(schema('common.json'))
      .addSchema(schema('judgement.json'))
      .compile(schema('steps.json'));
    expect([valid(report), valid.errors]).toEqual([true, null]);
    const gate = await ullage(
      ...['gate', '--repo', dir, '--base', 'main', '--head', 'grow', '--now', '2026-11-20'],
      ...['--format', 'json'],
    );
    expect(report.steps.map(({ step }: { step: object }) => step)).toEqual(JSON.parse(gate.out).runbook);
  });

  it('each are somebody’s and of one server at most, so that nobody’s share leaves one out', async () => {
    const repository = growing();
    const all = numbers(await inJson(repository));
    const shares = await Promise.all(
      ['provider', 'guest', 'people'].map(async (who) => numbers(await inJson(repository, '--by', who))),
    );
    expect(shares.flat().sort((a, b) => a - b)).toEqual(all);
    const guests = await inJson(repository, '--server', 'plate-archive');
    expect(guests.steps.length).toBeGreaterThan(0);
    for (const { step } of guests.steps) expect(step.server).toBe('plate-archive');
    // What others do first is named, and not listed among them.
    const shown = new Set(numbers(guests));
    const awaited = waits(guests).filter((each) => !shown.has(each));
    const { out } = await stepsOf(repository, '--server', 'plate-archive', '--format', 'markdown');
    const [, first = ''] =
      out
        .split(/^### /m)
        .filter((each) => each.startsWith('First, elsewhere'))[0]
        ?.split('elsewhere') ?? [];
    const named = [...first.matchAll(/^- \*\*(\d+)\*\*/gm)].map(([, number]) => Number(number));
    expect(awaited.length).toBeGreaterThan(0);
    expect(named).toEqual([...new Set(awaited)].sort((a, b) => a - b));
  });

  it('of a server whose name has a slip are refused with the near name', async () => {
    const { code, out } = await stepsOf(growing(), '--server', 'plate-scaner');
    expect([code, out]).toEqual([2, expect.stringContaining('Did you mean plate-scanner?')]);
  });

  it('of what main took in since a commit are the same as before the merge', async () => {
    const repository = growing();
    const before = await inJson(repository);
    const was = repository.git('rev-parse', 'main');
    repository.checkout('main');
    repository.merge('grow');
    const { out } = await ullage(
      ...['steps', '--repo', repository.dir, '--base', was, '--head', 'main', '--now', '2026-11-20'],
      ...['--format', 'json'],
    );
    expect(JSON.parse(out).steps).toEqual(before.steps);
  });

  it('are not to be carried out, nor ticked, where the verdict is fail', async () => {
    const repository = makeRepository({ files: main });
    repository.branch('grow');
    repository.write({ 'storage/imagery.yaml': estate('30 GiB') });
    repository.commit('shrink the plates');
    const { code, out, err } = await stepsOf(repository, '--format', 'markdown');
    expect(code).toBe(1);
    expect(out).toContain('## The verdict is fail: do not carry out any of these');
    expect(out).not.toContain('- [ ]');
    expect(err).toMatch(/^fail: /);
  });

  it('are not told where nothing could be judged', async () => {
    const repository = makeRepository({ files: main });
    repository.branch('grow');
    repository.write({ 'storage/imagery.yaml': estate('40') });
    repository.commit('a size without a unit');
    for (const format of ['text', 'mermaid', 'json'])
      expect((await stepsOf(repository, '--format', format)).code).toBe(2);
  });
});

describe('a check-list of steps', () => {
  const printed = async (repository: TestRepository) =>
    (await stepsOf(repository, '--format', 'markdown')).out;
  const kept = ({ dir }: TestRepository, text: string): string => {
    const path = join(dir, '..', `${Math.random()}.md`);
    writeFileSync(path, text);
    return path;
  };

  it('is ticked, given back, and says what is left and what can be done now', async () => {
    const repository = growing();
    const list = await printed(repository);
    const boxes = list.match(/^- \[ \] .*$/gm) ?? [];
    const first = list.replace('- [ ] **1**', '- [x] **1**');
    const { code, out } = await stepsOf(repository, '--done', kept(repository, first));
    expect(code).toBe(0);
    expect(out).toContain(`1 of ${boxes.length} steps done`);
    expect(out).toContain(`${boxes.length - 1} left`);
    const all = list.replaceAll('- [ ]', '- [X]');
    const ended = await stepsOf(repository, '--done', kept(repository, all));
    expect(ended.out).toContain('All is done.');
    expect(ended.out).toContain('survey');
    // What is over is not to be done again: each step in one line, without cautions and commands.
    expect(ended.out).not.toMatch(/Cautions|Carry these steps out|Course|example|to step back/);
    expect(ended.out.match(/^ +\d+ {2}done {2}/gm)).toHaveLength(boxes.length);
  });

  it('keeps its ticks when it is printed again', async () => {
    const repository = growing();
    const first = (await printed(repository)).replace('- [ ] **1**', '- [x] **1**');
    const again = await stepsOf(repository, '--format', 'markdown', '--done', kept(repository, first));
    expect(again.out.match(/^- \[x\] /gm)).toHaveLength(1);
    const json = await stepsOf(repository, '--format', 'json', '--done', kept(repository, first));
    const back = await stepsOf(repository, '--format', 'markdown', '--done', kept(repository, json.out));
    expect(back.out).toBe(again.out);
  });

  it('offers beside no step that is done the way back that a later one has ended', async () => {
    const repository = makeRepository({ files: { ...main, 'policies/storage.yaml': 'rules: []\n' } });
    repository.branch('grow');
    repository.write({
      'storage/imagery.yaml': estate('40 GiB')
        .replace(/^ {2}scans: .*$/m, '  extra: { size: 10 GiB, tier: bulk }')
        .replace(/^ {2}- { volume: scans.*\n/m, ''),
    });
    repository.commit('scans are no longer wanted');
    const list = (await printed(repository)).replace(/^- \[ \](?!.*Create volume extra)/gm, '- [x]');
    const { out } = await stepsOf(repository, '--format', 'markdown', '--done', kept(repository, list));
    const shown = out.split(/^- (?=\[)/m);
    const deletion = /^- \[x\] \*\*(\d+), done\*\* at the provider: Delete volume scans/m.exec(out)?.[1];
    const unmounting = shown.find((each) => /^\[x\].*Unmount/.test(each));
    expect(unmounting).toContain(
      `to step back: No longer: step ${deletion} is done, which nothing takes back.`,
    );
    expect(shown.filter((each) => each.startsWith('[ ]'))).toHaveLength(1);
    expect(out).toContain(`Nothing takes back step ${deletion}, and after that`);
  });

  it('is refused where a step is ticked before another that must come first', async () => {
    const repository = growing();
    const list = await printed(repository);
    const last = (list.match(/^- \[ \] \*\*(\d+)/gm) ?? []).length;
    const path = kept(
      repository,
      list.replace(`- [ ] **${last}`, `- [x] **${last}`).replace('- [ ] **1**', '- [x] **1**'),
    );
    const { code, out } = await stepsOf(repository, '--done', path);
    expect([code, out]).toEqual([2, expect.stringContaining('which must be done first')]);
    // What is left is shown all the same: the tick that holds, and none that does not.
    const again = await stepsOf(repository, '--format', 'markdown', '--done', path);
    expect([again.code, again.out.match(/^- \[x\] \*\*\d+/gm)]).toEqual([2, ['- [x] **1']]);
    const { done, problems, next } = JSON.parse(
      (await stepsOf(repository, '--format', 'json', '--done', path)).out,
    );
    expect([done, next, problems]).toEqual([
      [expect.any(String)],
      [],
      [expect.objectContaining({ message: expect.stringContaining('which must be done first') })],
    ]);
  });

  it('is refused as a list of another change once the branch is another', async () => {
    const repository = growing();
    const list = (await printed(repository)).replace('- [ ] **1**', '- [x] **1**');
    repository.write({ 'storage/imagery.yaml': estate('55 GiB') });
    repository.commit('grow them otherwise');
    const { code, out } = await stepsOf(repository, '--done', kept(repository, list));
    expect([code, out]).toEqual([2, expect.stringContaining('is none of this change')]);
    expect(out).toContain('Grow volume plates-1 from');
  });

  describe('belongs to one main', () => {
    const flat = (text: string): string => text.replace(/\s+/g, ' ');
    const tickedOf = async (repository: TestRepository, format: 'markdown' | 'json'): Promise<string> => {
      const { out } = await stepsOf(repository, '--format', format);
      if (format === 'markdown') return kept(repository, out.replaceAll('- [ ]', '- [x]'));
      const report = JSON.parse(out);
      const done = report.steps.map(({ step }: { step: { id: string } }) => step.id);
      return kept(repository, JSON.stringify({ ...report, done }));
    };

    it('and is refused for a later change, though its steps have the same words', async () => {
      const repository = growing();
      const lists = [await tickedOf(repository, 'markdown'), await tickedOf(repository, 'json')];
      repository.checkout('main');
      repository.merge('grow');
      repository.write(main);
      repository.commit('main as it was before');
      repository.branch('again');
      repository.write({
        'storage/imagery.yaml': repository.git('show', 'grow:storage/imagery.yaml'),
      });
      repository.commit('grow the plates again');
      for (const list of lists) {
        const args = ['--repo', repository.dir, '--base', 'main', '--head', 'again', '--now', '2026-11-20'];
        const { code, out } = await ullage('steps', ...args, '--done', list);
        expect([code, flat(out)]).toEqual([2, expect.stringContaining('this list is of an earlier change')]);
        expect(out).not.toContain('All is done');
        const { out: json } = await ullage('steps', ...args, '--done', list, '--format', 'json');
        expect(JSON.parse(json).done).toEqual([]);
      }
    });

    it('and is told where main has moved on, until it is printed anew', async () => {
      for (const format of ['markdown', 'json'] as const) {
        const repository = growing();
        const list = await tickedOf(repository, format);
        repository.checkout('main');
        repository.write({ 'README.md': 'What Gannet Point rents.\n' });
        repository.commit('something else');
        // What has nothing to do with the estate moves nothing.
        const same = await stepsOf(repository, '--done', list);
        expect([same.code, same.out.includes('All is done')]).toEqual([0, true]);
        repository.write({
          'storage/ledger.yaml': 'volumes: { ledger-1: { size: 5 GiB, tier: bulk, team: imagery } }\n',
        });
        repository.commit('a volume');
        repository.write({ 'storage/ledger.yaml': 'volumes: {}\n' });
        repository.commit('and none');
        repository.checkout('main');
        const moved = await stepsOf(repository, '--done', list);
        expect([moved.code, moved.err]).toEqual([1, 'the ticks are of another main\n']);
        expect(moved.out).toContain('Ticks of another main');
        expect(moved.out).not.toContain('All is done');
        expect(moved.out).toContain('Carry these steps out');
        const anew = await stepsOf(repository, '--done', list, '--format', 'markdown');
        const settled = await stepsOf(repository, '--done', kept(repository, anew.out));
        expect([settled.code, settled.out.includes('All is done')]).toEqual([0, true]);
        // A list without a tick has nothing to settle.
        const open = kept(repository, (await printed(growing())).replaceAll('- [x]', '- [ ]'));
        expect((await stepsOf(repository, '--done', open)).code).toBe(0);
      }
    });

    it('and is the same after the merge, whichever way the host merges', async () => {
      for (const how of ['merge', 'squash'] as const) {
        const repository = growing();
        const lists = [await tickedOf(repository, 'markdown'), await tickedOf(repository, 'json')];
        const was = repository.git('rev-parse', 'main');
        repository.checkout('main');
        if (how === 'merge') repository.merge('grow');
        else {
          repository.write({ 'storage/imagery.yaml': repository.git('show', 'grow:storage/imagery.yaml') });
          repository.commit('grow the plates, squashed');
        }
        for (const list of lists) {
          const { code, out } = await ullage(
            ...['steps', '--repo', repository.dir, '--base', was, '--head', 'main', '--now', '2026-11-20'],
            ...['--done', list],
          );
          expect([code, out.includes('All is done')]).toEqual([0, true]);
          expect(flat(out)).toContain('from a list of the same main with the branch at');
        }
      }
    });

    it('and one that does not say of which is read, and that is said', async () => {
      const repository = growing();
      const list = kept(
        repository,
        readFileSync(await tickedOf(repository, 'markdown'), 'utf8').replace(/^- \*\*List:.*$/m, ''),
      );
      const { code, out } = await stepsOf(repository, '--done', list);
      expect([code, flat(out)]).toEqual([0, expect.stringContaining('do not say of which main they are')]);
    });
  });

  it('that is not there, or is none, is said to be so', async () => {
    const repository = growing();
    expect((await stepsOf(repository, '--done', join(repository.dir, 'nowhere.md'))).out).toContain(
      'cannot be read',
    );
    expect((await stepsOf(repository, '--done', kept(repository, 'nothing'))).out).toContain(
      'neither a check-list of steps nor a list of their ids',
    );
  });
});

describe('a graph of steps', () => {
  it('has a box a step and an arrow a wait, and no name gets out of its box', async () => {
    const repository = makeRepository({ files: main });
    repository.branch('grow');
    const mount = '/pl"]; click s1 "javascript:alert(1)" %%{init: {}}%% <b>';
    repository.write({ 'storage/imagery.yaml': estate('40 GiB', mount) });
    repository.commit('a mount point that would be a command');
    const { out } = await stepsOf(repository, '--format', 'mermaid');
    const [head, ...lines] = out.trimEnd().split('\n');
    expect(head).toBe('flowchart TD');
    expect(lines.length).toBeGreaterThan(1);
    for (const line of lines) expect(line).toMatch(/^ {2}s\d+(?:\["[A-Za-z0-9 .,:()/_#;-]+"\]| --> s\d+)$/);
    expect(out).not.toMatch(/javascript:alert\(1\)"/);
  });
});

describe('the steps in the gate', () => {
  it('are few words where they are many: how many, who stands still, and what destroys', async () => {
    const { dir } = growing();
    const args = ['gate', '--repo', dir, '--base', 'main', '--head', 'grow', '--now', '2026-11-20'];
    const { out } = await ullage(...args);
    expect(out).toMatch(/Steps, in order \(\d+\)/);
    expect(out).toContain('None of them loses data.');
    expect(out).toContain('`ullage steps`');
    expect(out).not.toContain('Rescan the device of plates-1');
    expect((await ullage(...args, '--all')).out).toContain('Rescan the device of plates-1');
  });

  it('that destroy are shown with what they destroy and the cautions', async () => {
    const repository = makeRepository({ files: main });
    repository.branch('grow');
    repository.write({
      'storage/imagery.yaml': estate('40 GiB')
        .replace('  scans: { size: 20 GiB, tier: bulk, file-system: { mount: /scans, type: ext4 } }\n', '')
        .replace('  - { volume: scans, server: plate-archive }\n', '')
        .replace('  plates: {', '  plates-group: {'),
    });
    repository.commit('delete and make anew');
    const { out } = await ullage(
      ...['gate', '--repo', repository.dir, '--base', 'main', '--head', 'grow', '--now', '2026-11-20'],
    );
    expect(out).toMatch(/loses data {2}at the provider: Delete volume scans, 20 GiB, for good\./);
    expect(out.replace(/\s+/g, ' ')).toContain('have a backup that you have restored from');
  });
});
