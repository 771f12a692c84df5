import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cautions } from '../../src/base/wording.ts';
import { readPair } from '../../src/policy/pair.ts';
import { problemsIn } from '../../src/policy/reader.ts';
import { actionOf, actions, isAction } from '../../src/runbook/actions.ts';
import { examplesOf, type Fills } from '../../src/runbook/commands.ts';
import { readProcedures } from '../../src/runbook/procedure-file.ts';
import { gatherProcedures, plainProcedures, procedureFor } from '../../src/runbook/procedures.ts';
import type { Step } from '../../src/runbook/step.ts';
import { documentOf, type Files, judged, line, problemsOf, treeOf, valueIn } from '../estate/builder.ts';
import { gib } from '../survey/kept.ts';

const file = (text: string, name = 'procedures/own.yaml') => readProcedures(documentOf(text, name));
const told = (text: string): readonly string[] =>
  problemsOf(file(text)).map((problem) => `${line(problem)} | ${problem.advice}`);

const office = (guest: string, size = 40): Files => ({
  'storage/imagery.yaml': `
servers:
  plate-scanner: { guest: ${guest} }
volumes:
  plates-1: { id: vol-0b1c, size: ${size} GiB, tier: bulk, file-system: { mount: /plates, type: ext4 } }
  drafts: { size: 8 GiB, tier: bulk }
attachments:
  - { volume: plates-1, server: plate-scanner }
`,
});

const nightjar = `guest: nightjar
like: linux
actions:
  see-size:
    does: "Ask the guest to look again until it shows {size} for {volume}."
    commands:
      - { run: [diskctl, "--refresh={device}", "{{now}}"], from: the guest's handbook }
`;

const steps = async (base: Files, head: Files): Promise<readonly Step[]> =>
  (await judged(base, head)).runbook;
const step = (all: readonly Step[], procedure: string): Step => {
  const found = all.find((each) => each.procedure === procedure);
  if (found === undefined) throw new Error(`no step ${procedure}`);
  return found;
};

describe('the procedures that ship', () => {
  it('say of every action what it is, for every kind of guest', () => {
    for (const name of Object.keys(actions).filter(isAction))
      for (const guest of plainProcedures.guests.keys())
        expect(procedureFor(plainProcedures, name, { guest, site: undefined }).does).not.toBe('');
  });

  it('do by the commands of another action only what has all that those ask for', () => {
    const alike = Object.keys(actions)
      .filter(isAction)
      .flatMap((name) => {
        const { as, fills } = actionOf(name);
        return as === undefined ? [] : [{ name, fills, of: actionOf(as).fills, at: actionOf(as).at }];
      });
    expect(alike.length).toBeGreaterThan(0);
    for (const { name, fills, of, at } of alike) {
      expect(at, name).toBe(actionOf(name).at);
      for (const each of of) expect(fills, name).toContain(each);
    }
  });

  it('give way to those of the estate in both actions, but where it tells them apart', () => {
    const own = (actions: string) =>
      gatherProcedures([valueIn(file(`guest: linux-lvm\nactions:\n${actions}`))]).value.guests.get(
        'linux-lvm',
      );
    const run = (program: string): string => `{ commands: [ { run: [${program}] } ] }`;
    const programs = (guest: ReturnType<typeof own>) =>
      (['make-group', 'make-group-over'] as const).map((name) =>
        guest?.get(name)?.commands.map((command) => ('run' in command ? command.run[0] : '')),
      );
    expect(programs(own(`  join-group: ${run('ours')}\n`))).toEqual([['vgcreate'], ['vgcreate']]);
    expect(programs(own(`  make-group: ${run('ours')}\n`))).toEqual([['ours'], ['ours']]);
    expect(programs(own(`  make-group-over: ${run('ours')}\n`))).toEqual([['vgcreate'], ['ours']]);
  });

  it('give no command to a guest that is described in words alone', () => {
    for (const guest of ['other', 'windows'])
      for (const procedure of plainProcedures.guests.get(guest)?.values() ?? [])
        expect(procedure.commands).toEqual([]);
  });
});

describe('a file of procedures', () => {
  it('is told where it asks for what nothing fills, with the nearest that there is', () => {
    expect(told(nightjar.replace('{size}', '{siz}').replace('{device}', '{devise}'))).toEqual([
      expect.stringMatching(
        /own\.yaml:5:11: nothing fills \{siz\} in the words of see-size \| Did you mean size\?/,
      ),
      expect.stringMatching(
        /own\.yaml:7:26: nothing fills \{devise\} in a command of see-size \| Did you mean device\?/,
      ),
    ]);
  });

  it('is told of an action that there is not, with the nearest that there is', () => {
    expect(told('guest: a\nactions: { see-siz: { does: x } }\n')[0]).toMatch(
      /see-siz is not a key.*Did you mean see-size/s,
    );
  });

  it('is told what does not belong to it, and what no command is', () => {
    const said = (text: string): string => told(text).join('\n');
    expect(said('guest: a\nactions: { grow-volume: { does: x } }\n')).toContain(
      'grow-volume is done at a provider',
    );
    expect(said('provider: a\nactions: { mount: { does: x } }\n')).toContain('mount is done in a guest');
    expect(said('actions: { mount: { does: x } }\n')).toContain('does not say whose procedures');
    expect(said('guest: a\nprovider: b\nactions: { mount: { does: x } }\n')).toContain(
      'for a guest and for a provider',
    );
    const command = (text: string): string => said(`guest: a\nactions: { mount: { commands: [${text}] } }\n`);
    expect(command('{ run: [mount], write: x }')).toContain('this is no command');
    expect(command('{ write: x }')).toContain('this is no command');
    expect(command('{ run: ["{device}"] }')).toContain('a command begins with a program');
    expect(command('{ run: [mount, "{device"] }')).toContain('a brace is open');
    expect(
      said('guest: a\nactions: { stop-use: { commands: [{ run: [stop, "-m{mounts}"] }] } }\n'),
    ).toContain('may be several arguments');
    expect(
      said('guest: a\nactions: { see-size: { commands: [{ run: [look], types: [xfs] }] } }\n'),
    ).toContain('about no file system');
  });

  it('is told where it is like nobody, or two are like each other, or two say they are the same', () => {
    const gathered = (...texts: readonly string[]): string =>
      gatherProcedures(texts.map((text, index) => valueIn(file(text, `procedures/${index}.yaml`))))
        .problems.map(line)
        .join('\n');
    const of = (name: string, like: string) => `guest: ${name}\nlike: ${like}\nactions: {}\n`;
    expect(gathered(of('a', 'linus'))).toBe(
      'procedures/0.yaml:1:8: there are no procedures for a guest linus',
    );
    expect(gathered(of('a', 'b'), of('b', 'a'))).toContain('guest b is like a, which is like b');
    expect(gathered(of('a', 'linux'), of('a', 'linux'))).toContain('are there twice');
    expect(gathered(of('linux', 'linux-lvm'))).toContain('is like');
    expect(gathered('provider: a\nactions: {}\n', 'provider: b\nactions: {}\n')).toContain(
      'every site is of provider a as well',
    );
    expect(gathered('provider: a\nsites: [n]\nactions: {}\n', 'provider: b\nactions: {}\n')).toBe('');
  });
});

describe("an estate's own procedures", () => {
  it('word the steps of its own kind of guest; what they leave out is as where they are like', async () => {
    const own = { 'procedures/nightjar.yaml': nightjar };
    const all = await steps({ ...office('nightjar'), ...own }, { ...office('nightjar', 50), ...own });
    expect(step(all, 'see-size')).toMatchObject({
      does: 'Ask the guest to look again until it shows 50 GiB for plates-1.',
      why: expect.stringContaining('A guest keeps the size'),
      examples: [{ command: "diskctl --refresh=DEVICE '{now}'", source: "the guest's handbook" }],
    });
    expect(step(all, 'grow-mounted').examples).toEqual([
      { command: 'resize2fs DEVICE', source: 'resize2fs(8), e2fsprogs 1.47.0' },
    ]);
  });

  it("are put over the shipped ones of the same name, and hold for the provider's steps at its sites", async () => {
    const own = {
      'procedures/linux.yaml': 'guest: linux\nactions: { see-size: { why: Because it must. } }\n',
      'procedures/stratus.yaml':
        'provider: stratus\nactions: { grow-volume: { commands: [{ run: [stratus, resize, "{volume-id}", "{size-gib}", "{size-bytes}"] }] } }\n',
    };
    const all = await steps({ ...office('linux-lvm'), ...own }, { ...office('linux-lvm', 50), ...own });
    expect(step(all, 'see-size').why).toBe('Because it must.');
    expect(step(all, 'grow-volume').examples).toEqual([
      { command: `stratus resize vol-0b1c 50 ${50n << 30n}`, source: 'procedures/stratus.yaml' },
    ]);
  });

  it('can add cautions, and take none away', async () => {
    const own = {
      'procedures/stratus.yaml':
        'provider: stratus\nactions: { delete-volume: { does: "Go on.", cautions: ["Ask the harbour master."] } }\n',
    };
    const base = { ...office('linux'), ...own };
    const without = (office('linux')['storage/imagery.yaml'] ?? '').replace(/ {2}drafts:.*\n/, '');
    const all = await steps(base, { ...base, 'storage/imagery.yaml': without });
    const deletion = step(all, 'delete-volume');
    expect(deletion.does).toBe('Go on.');
    expect(deletion.cautions).toContain(cautions);
    expect(deletion.cautions).toContain('It destroys volume drafts, 8 GiB, attached to no server.');
    expect(deletion.cautions.at(-1)).toBe('Ask the harbour master.');
    expect(deletion.destroys).toBe(true);
  });

  it('cannot lose a shipped caution, nor what is destroyed, whatever they say', () => {
    const words = fc.string({ minLength: 1 }).filter((text) => !/[{}]/.test(text));
    fc.assert(
      fc.property(
        fc.constantFrom(...Object.keys(actions).filter(isAction)),
        words,
        words,
        (name, does, caution) => {
          const of = actions[name].at === 'provider' ? 'provider' : 'guest';
          const declared = {
            of,
            name: 'linux',
            actions: { [name]: { does, cautions: [caution], commands: [] } },
            place: { file: 'procedures/own.yaml', line: 1, column: 1 },
          } as const;
          const { value, problems } = gatherProcedures([declared]);
          expect(problems).toEqual([]);
          const where = { guest: 'linux', site: undefined };
          const shipped = procedureFor(plainProcedures, name, where).cautions;
          const own = procedureFor(value, name, where);
          expect(own.does).toBe(does);
          expect(own.cautions.slice(0, shipped.length)).toEqual(shipped);
        },
      ),
    );
  });

  it('hold as main has them: a branch does not rewrite the steps that carry it out, and what it alters is listed', async () => {
    const base = { ...office('nightjar'), 'procedures/nightjar.yaml': nightjar };
    const altered = nightjar.replace('diskctl', 'rm-everything').replace('Ask the guest', 'Pray the guest');
    const judgement = await judged(base, { ...office('nightjar', 50), 'procedures/nightjar.yaml': altered });
    expect(step(judgement.runbook, 'see-size').does).toContain('Ask the guest');
    expect(judgement.policyChanges).toEqual([
      expect.objectContaining({
        direction: 'neither',
        of: 'procedures',
        name: 'guest nightjar',
        key: 'see-size',
      }),
    ]);
  });

  it('come from the branch for a guest of which main has none, and it is listed that they do', async () => {
    const judgement = await judged(office('linux'), {
      ...office('nightjar', 50),
      'procedures/nightjar.yaml': nightjar,
    });
    expect(step(judgement.runbook, 'see-size').does).toContain('Ask the guest');
    expect(judgement.policyChanges.map(({ of, name }) => [of, name])).toEqual([
      ['procedures', 'guest nightjar'],
    ]);
  });

  it('are wanted for every guest that is named', async () => {
    const { head } = await readPair(treeOf({}, 'base'), treeOf(office('nightjr'), 'head'));
    expect(problemsIn(head).map(line)).toEqual([
      expect.stringMatching(
        /imagery\.yaml:3:20: there are no procedures for the guest nightjr of server plate-scanner/,
      ),
    ]);
  });
});

describe('the sites of a provider', () => {
  const stratus = 'provider: stratus\nsites: [north-quay, nort-quay]\nactions: {}\n';
  const wrong = async (settings: string): Promise<readonly string[]> => {
    const files = { 'ullage.yaml': settings, 'procedures/stratus.yaml': stratus };
    const { head } = await readPair(treeOf({}, 'base'), treeOf(files, 'head'));
    return problemsIn(head).map((problem) => `${line(problem)} | ${problem.advice}`);
  };

  it('are those that are listed: a slip would leave its steps in plain words, unsaid', async () => {
    expect(await wrong('currency: EUR\nsites: { north-quay: {} }\n')).toEqual([
      'procedures/stratus.yaml:2:21: the provider stratus has the site nort-quay, and ullage.yaml does not list that site | Did you mean north-quay? ullage.yaml:2 lists north-quay: list nort-quay there, or correct the name.',
    ]);
    expect(await wrong('currency: EUR\n')).toEqual([]);
  });
});

describe('a command', () => {
  const { commands } = procedureFor(plainProcedures, 'stop-use', { guest: 'linux', site: undefined });
  const lines = (mounts: readonly string[] | undefined) => examplesOf(commands, { mounts }, undefined);

  it('names each of several, is left out where there is none, and stands in capitals where nobody knows', () => {
    const told = (mounts: readonly string[] | undefined) => lines(mounts).map(({ command }) => command);
    expect(told(['/plates', "/the captain's"])).toEqual([
      "fuser --verbose --mount /plates '/the captain'\\''s'",
    ]);
    expect(told([])).toEqual([]);
    expect(told(undefined)).toEqual(['fuser --verbose --mount MOUNTS']);
  });

  it('has an argument only where what it asks for is declared', () => {
    const made = procedureFor(plainProcedures, 'make-file-system', { guest: 'linux', site: undefined });
    const told = (fills: Fills) => examplesOf(made.commands, fills, 'ext4').map(({ command }) => command);
    expect(told({ type: 'ext4', device: '/dev/vdb' })).toEqual(['mke2fs -t ext4 /dev/vdb']);
    expect(told({ type: 'ext4', 'inode-ratio': '8192' })).toEqual(['mke2fs -t ext4 -i 8192 DEVICE']);
  });
});

describe('device names', () => {
  const surveyed = (size: number): Files => {
    const text = JSON.stringify({
      format: 'ullage-survey-1',
      server: 'plate-scanner',
      at: '2026-11-20T06:00:00Z',
      tools: {},
      unseen: [],
      devices: [{ name: 'vdb', type: 'disk', size: gib(size), serial: 'vol-0b1c', content: 'ext4' }],
      'volume-groups': [],
      'file-systems': [{ device: 'vdb', type: 'ext4', mounts: ['/plates'] }],
    });
    return { 'surveys/plate-scanner.json': text };
  };
  const policy = { 'policies/storage.yaml': 'rules: [{ rule: surveyed-as-declared, level: note }]\n' };
  const grown = async (survey: Files): Promise<readonly Step[]> =>
    steps({ ...office('linux'), ...survey, ...policy }, { ...office('linux', 50), ...survey, ...policy });

  it('are filled in where a survey on main shows what main declares, with a word that they may change', async () => {
    const all = await grown(surveyed(40));
    expect(step(all, 'see-size').examples[0]?.command).toBe('echo 1 > /sys/class/block/vdb/device/rescan');
    expect(step(all, 'grow-mounted').examples[0]?.command).toBe('resize2fs /dev/vdb');
    expect(step(all, 'grow-mounted').cautions.at(-1)).toMatch(
      /^Device names may change when a server starts anew: make sure of them first\. plates-1 is \/dev\/vdb, 40 GiB, serial number vol-0b1c, by the survey of/,
    );
  });

  it('stay in capitals where the survey shows another size, or nothing', async () => {
    for (const survey of [surveyed(39), {}]) {
      const all = await grown(survey);
      expect(step(all, 'grow-mounted').examples[0]?.command).toBe('resize2fs DEVICE');
      expect(step(all, 'grow-mounted').cautions.join()).not.toContain('Device names');
    }
  });

  it('stay in capitals on a server that is stopped on the way: they may be others when it starts', async () => {
    const survey = surveyed(40);
    const typed = (files: Files, type: string): Files => ({
      'storage/imagery.yaml': (files['storage/imagery.yaml'] ?? '').replace(
        '{ guest:',
        `{ type: ${type}, guest:`,
      ),
    });
    const prices = {
      'prices/2026.yaml':
        'from: 2026-01-01\ncurrency: EUR\ntiers: { bulk: { rate: "0.045", per: GiB-month } }\nserver-types: { small: { running: "0.03" }, large: { running: "0.06" } }\n',
    };
    const all = await steps(
      { ...typed(office('linux'), 'small'), ...survey, ...policy, ...prices },
      { ...typed(office('linux', 50), 'large'), ...survey, ...policy, ...prices },
    );
    expect(step(all, 'grow-mounted').examples[0]?.command).toBe('resize2fs DEVICE');
  });
});
