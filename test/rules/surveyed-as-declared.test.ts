import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readGathered } from '../../src/survey/gathered.ts';
import { surveyAsText, surveyOf } from '../../src/survey/survey-of.ts';
import {
  estateOf,
  type Files,
  judgedFiles,
  said,
  settingsOf,
  unjudgedFiles,
  valueIn,
} from '../estate/builder.ts';
import { gib } from '../survey/kept.ts';
import { playServers } from '../survey/player.ts';

/** The base is surveyed; the branch keeps what is surveyed unless it says otherwise. */
const surveyed = (size: number, at = '2026-11-20', server = 'plate-scanner'): Files => ({
  [`surveys/${server}.json`]: JSON.stringify({
    format: 'ullage-survey-1',
    server,
    at: `${at}T06:00:00Z`,
    tools: {},
    unseen: [],
    devices: [{ name: 'vdb', type: 'disk', size: gib(size) }],
    'volume-groups': [],
    'file-systems': [
      { device: 'vdb', type: 'xfs', mounts: ['/plates'], 'in-fstab': '/plates', size: gib(size) },
    ],
  }),
});

const plates = (gibibytes: number, more = ''): Files => ({
  'storage/imagery.yaml': `team: imagery
servers: { plate-scanner: { power: running } }
volumes:
  plates-1: { size: ${gibibytes} GiB, tier: bulk, file-system: { mount: /plates, type: xfs } }
attachments: [ { volume: plates-1, server: plate-scanner } ]
${more}`,
});

const gone: Files = {
  'storage/imagery.yaml': 'team: imagery\nservers: { plate-scanner: { power: running } }\n',
};

const rule = (more = ', within: 30'): Files => ({
  'ullage.yaml': 'currency: EUR\n',
  'prices/2026.yaml': 'from: 2026-01-01\ncurrency: EUR\ntiers:\n  bulk: { rate: "0.045", per: GiB-month }\n',
  'policies/storage.yaml': `rules:\n  - { rule: surveyed-as-declared, level: error${more} }\n`,
});

const judge = (base: Files, head: Files) => judgedFiles(base, head, { on: '2026-11-25' });

describe('a change that starts from what is not so', () => {
  it('passes where the survey shows what is declared', async () => {
    const base = { ...rule(), ...plates(50), ...surveyed(50) };
    expect((await judge(base, { ...base, ...plates(55) })).findings).toEqual([]);
    expect((await judge(base, { ...base, ...gone })).findings).toEqual([]);
  });

  it('is refused as a shrink, where a volume declared with 50 GiB really has 60 and is to have 55', async () => {
    const base = { ...rule(), ...plates(50), ...surveyed(60) };
    const { verdict, findings } = await judge(base, { ...base, ...plates(55) });
    expect(verdict).toBe('fail');
    expect(findings[0]).toMatchObject({
      level: 'error',
      message: expect.stringMatching(
        /a survey of 2026-11-20 shows otherwise: plates-1 is 60 GiB on plate-scanner \(vdb\), and declared 50 GiB; at 60 GiB, to bring it to 55 GiB is a shrink/,
      ),
    });
  });

  it('is refused where it deletes what is otherwise than declared, and not where it touches something else', async () => {
    const base = { ...rule(), ...plates(50), ...surveyed(60) };
    expect((await judge(base, { ...base, ...gone })).verdict).toBe('fail');
    const other = plates(50, 'volume-groups: {}\n');
    const more = { 'storage/more.yaml': 'team: imagery\nvolumes: { other: { size: 1 GiB, tier: bulk } }\n' };
    expect((await judge(base, { ...base, ...other, ...more })).findings).toEqual([]);
  });

  it('is refused under a new name, too: a rename in the same branch hides nothing that moves', async () => {
    const base = { ...rule(), ...plates(50), ...surveyed(60) };
    const renamed = (attachments: string): Files => ({
      'storage/imagery.yaml': `team: imagery
servers: { plate-scanner: { power: running }, press: { power: running } }
volumes:
  plates-2: { formerly: plates-1, size: 50 GiB, tier: bulk, file-system: { mount: /plates, type: xfs } }
attachments: ${attachments}
`,
    });
    for (const attachments of ['[]', '[ { volume: plates-2, server: press } ]']) {
      const { verdict, findings } = await judge(base, { ...base, ...renamed(attachments) });
      expect(verdict).toBe('fail');
      expect(findings).toContainEqual(
        expect.objectContaining({
          message: expect.stringContaining('the move of plates-2 starts from what main declares'),
        }),
      );
    }
    // A rename alone moves nothing.
    const alone = renamed('[ { volume: plates-2, server: plate-scanner } ]');
    expect((await judge(base, { ...base, ...alone })).findings).toEqual([]);
  });

  it('names the survey by which a file system is otherwise, not the provider', async () => {
    const remounted = JSON.stringify({
      ...JSON.parse(surveyed(50)['surveys/plate-scanner.json'] ?? ''),
      'file-systems': [{ device: 'vdb', type: 'ext4', mounts: ['/plates'], 'in-fstab': '/plates' }],
    });
    const base = { ...rule(), ...plates(50), 'surveys/plate-scanner.json': remounted };
    expect(said(await judge(base, { ...base, ...gone }))).toContainEqual(
      expect.stringContaining(
        'a survey of 2026-11-20 shows otherwise: plates-1:/plates is ext4, and declared xfs',
      ),
    );
  });

  it('is told of at the boundary of age: a survey of the last day that counts is new enough', async () => {
    const at = async (day: string) => {
      const base = { ...rule(), ...plates(50), ...surveyed(50, day) };
      return said(await judge(base, { ...base, ...plates(55) }));
    };
    expect(await at('2026-10-26')).toEqual([]);
    expect(await at('2026-10-25')).toEqual([
      expect.stringContaining('31 days old, and at most 30 are allowed'),
    ]);
  });

  it('is told of where no survey shows the volume, at the level for that', async () => {
    const base = { ...rule(', missing: warning'), ...plates(50), ...surveyed(1, '2026-11-20', 'another') };
    const { verdict, findings } = await judge(base, { ...base, ...plates(55) });
    expect(verdict).toBe('pass');
    expect(findings).toMatchObject([
      { level: 'warning', message: expect.stringContaining('no survey shows plates-1') },
    ]);
  });

  it('says nothing where nothing is surveyed, unless a survey is demanded', async () => {
    const free = { ...rule(), ...plates(50) };
    expect((await judge(free, { ...free, ...plates(55) })).findings).toEqual([]);
    const demanded = { ...rule(', missing: error'), ...plates(50) };
    expect((await judge(demanded, { ...demanded, ...plates(55) })).verdict).toBe('fail');
  });
});

it('what main declares blank and a survey shows in use is neither made over nor taken into a group', async () => {
  const blank = (volume: string, more = ''): Files => ({
    'storage/imagery.yaml': `servers: { plate-scanner: { power: running } }
volumes: { plates-1: { size: 50 GiB, tier: bulk${volume} } }
attachments: [ { volume: plates-1, server: plate-scanner } ]
${more}`,
  });
  const verdict = async (gibibytes: number, head: Files) => {
    const base = { ...rule(), ...blank(''), ...surveyed(gibibytes) };
    return (await judge(base, { ...base, ...head })).verdict;
  };
  const over = blank(', file-system: { mount: /plates, type: xfs }');
  const group = blank(
    '',
    'volume-groups: { plates: { extent: 64 MiB, members: [plates-1], file-systems: { /x: { size: 1 GiB, type: xfs } } } }\n',
  );
  expect([await verdict(50, over), await verdict(50, group)]).toEqual(['fail', 'fail']);
  // Declared as what is there already, it is no more than mended.
  const existing = blank(', file-system: { existing: true, mount: /plates, type: xfs }');
  expect(await verdict(50, existing)).toBe('pass');
});

describe("what the provider's list shows otherwise", () => {
  const listed = (volume: object, server: object = {}): Files => ({
    'surveys/provider.json': JSON.stringify({
      format: 'ullage-provider-survey-1',
      at: '2026-11-20T06:00:00Z',
      lists: ['volumes', 'servers'],
      volumes: [{ name: 'plates-1', size: gib(50), ...volume }],
      servers: [{ name: 'plate-scanner', ...server }],
    }),
  });
  const estate = (attachments: string, volumes = 'plates-1: { size: 50 GiB, tier: bulk }'): Files => ({
    'storage/imagery.yaml': `team: imagery
servers: { plate-scanner: { power: stopped }, press: { power: running } }
volumes: { ${volumes} }
attachments: ${attachments}
`,
  });
  const unattached = estate('[]');

  it('refuses the deletion of what is declared as unattached, and is attached', async () => {
    const base = { ...rule(), ...unattached, ...listed({ servers: ['press'] }) };
    const { verdict, findings } = await judge(base, { ...base, ...estate('[]', '') });
    expect(verdict).toBe('fail');
    expect(findings[0]?.message).toContain(
      'the provider shows otherwise: plates-1 is attached to press at the provider, and declared as unattached',
    );
    const agreed = { ...rule(), ...unattached, ...listed({ servers: [] }) };
    expect((await judge(agreed, { ...agreed, ...estate('[]', '') })).findings).toEqual([]);
  });

  it('counts a list that does not say who holds a volume as no survey of that', async () => {
    const silent = (level: string) => ({ ...rule(`, missing: ${level}`), ...unattached, ...listed({}) });
    const judged = async (base: Files) => judge(base, { ...base, ...estate('[]', '') });
    expect((await judged(silent('note'))).findings).toMatchObject([
      {
        level: 'note',
        message:
          "no survey shows which server holds plates-1, and the deletion of plates-1 starts from that: the provider's list does not say which server holds it",
      },
    ]);
    expect((await judged(silent('error'))).verdict).toBe('fail');
  });

  it('counts a holder of whom nothing tells who it is as no survey of that, either', async () => {
    const office = (server: object): string =>
      `servers: { plate-scanner: ${JSON.stringify(server)} }\nvolumes: { plates-1: { size: 50 GiB, tier: bulk } }\n`;
    const holds = (server: object, row: object): Files => ({
      ...rule(', missing: error'),
      'storage/imagery.yaml': `${office(server)}attachments: [ { volume: plates-1, server: plate-scanner } ]\n`,
      ...listed({ servers: ['scan-01'] }, row),
    });
    const detached = async (server: object, row: object) => {
      const base = holds(server, row);
      return said(await judge(base, { ...base, 'storage/imagery.yaml': office(server) }));
    };
    const untold =
      "the provider's list has it attached to scan-01, which may be a server that is declared under another name";
    expect(await detached({}, { name: 'elsewhere' })).toEqual([expect.stringContaining(untold)]);
    expect(await detached({}, { name: 'plate-scanner' })).toEqual([expect.stringContaining(untold)]);
    expect(await detached({ id: 'i-1' }, { name: 'scan-01' })).toEqual([expect.stringContaining(untold)]);
    expect(await detached({ id: 'i-1' }, { name: 'scan-01', id: 'i-1' })).toEqual([]);
    expect(await detached({ id: 'i-1' }, { name: 'scan-01', id: 'i-2' })).toEqual([
      expect.stringContaining(
        'attached to scan-01 at the provider, and declared as attached to plate-scanner',
      ),
    ]);
  });

  describe('and what it does not show, the content of a volume', () => {
    const asked = {
      ...rule(', missing: error, within: 30'),
      ...listed({ servers: ['press'] }, { name: 'press' }),
    };
    const holding = (volume: string, more = ''): Files => ({
      'storage/imagery.yaml': `servers: { press: { power: running } }
volumes: { plates-1: { size: 50 GiB, tier: bulk${volume} } }
attachments: [ { volume: plates-1, server: press } ]
${more}`,
    });
    const system = ', file-system: { mount: /plates, type: xfs }';
    const group = (gibibytes: number, type = 'xfs'): string =>
      `volume-groups: { plates: { extent: 64 MiB, members: [plates-1], file-systems: { /plates: { size: ${gibibytes} GiB, type: ${type} } } } }\n`;
    const blind = 'no survey of a server shows what is on plates-1';

    it.each([
      ['a file system is made on it', holding(''), holding(system)],
      ['it joins a group', holding(''), holding('', group(10))],
      ['what is on its group grows', holding('', group(10)), holding('', group(20))],
      ['what is on its group is made anew', holding('', group(10)), holding('', group(10, 'ext4'))],
      ['its group goes', holding('', group(10)), holding('')],
      ['what is on it goes', holding(system), holding('')],
    ])('is no survey where %s', async (_, before, after) => {
      const base = { ...asked, ...before };
      const judgement = await judge(base, { ...base, ...after });
      expect(judgement.verdict).toBe('fail');
      expect(said(judgement)).toContainEqual(expect.stringContaining(blind));
    });

    it('is no survey of what is declared as existing and written over in one change, either', async () => {
      const base = { ...asked, 'storage/imagery.yaml': 'servers: { press: { power: running } }\n' };
      const over = holding(', existing: true, file-system: { existing: false, mount: /plates, type: xfs }');
      const judgement = await judge(base, { ...base, ...over });
      expect(said(judgement)).toContainEqual(expect.stringContaining(blind));
    });

    it('is as old as the survey of the server, however new the list is', async () => {
      const guest = surveyed(50, '2026-10-20', 'press');
      const base = { ...asked, ...holding(''), ...guest };
      const { findings } = await judge(base, { ...base, ...holding(system) });
      expect(findings).toContainEqual(
        expect.objectContaining({
          level: 'warning',
          message: 'the newest survey of plates-1 is of 2026-10-20, 36 days old, and at most 30 are allowed',
        }),
      );
    });

    it('is nothing that the growth of the volume or its move asks for', async () => {
      const base = { ...asked, ...holding('') };
      const grown = (holding('')['storage/imagery.yaml'] ?? '').replace('50 GiB', '60 GiB');
      expect((await judge(base, { ...base, 'storage/imagery.yaml': grown })).findings).toEqual([]);
      const off =
        'servers: { press: { power: running } }\nvolumes: { plates-1: { size: 50 GiB, tier: bulk } }\n';
      expect((await judge(base, { ...base, 'storage/imagery.yaml': off })).findings).toEqual([]);
    });

    it('is nothing that anybody could show of a group that no server holds', async () => {
      const kept = (more: string): Files => ({
        'storage/imagery.yaml': `volumes: { plates-1: { size: 50 GiB, tier: bulk } }\n${more}`,
      });
      const base = { ...asked, ...listed({ servers: [] }), ...kept(group(10)) };
      expect((await judge(base, { ...base, ...kept('') })).verdict).toBe('pass');
    });
  });

  it('refuses to move what a server holds that the list shows to be another, whatever it is called', async () => {
    const office = (server: string): Files => ({
      'storage/imagery.yaml': `team: imagery
servers: { plate-scanner: { id: i-1, power: running }, press: { id: i-2, power: running } }
volumes: { plates-1: { id: v-1, size: 50 GiB, tier: bulk } }
attachments: [ { volume: plates-1, server: ${server} } ]
`,
    });
    const list = (holder: string): Files => ({
      'surveys/provider.json': JSON.stringify({
        format: 'ullage-provider-survey-1',
        at: '2026-11-20T06:00:00Z',
        lists: ['volumes', 'servers'],
        volumes: [{ id: 'v-1', name: 'plates-1', size: gib(50), servers: [holder] }],
        servers: [
          { id: 'i-1', name: 'plate-scanner' },
          { id: 'i-2', name: 'press' },
          { id: 'i-9', name: 'payroll' },
        ],
      }),
    });
    const verdict = async (holder: string) => {
      const base = { ...rule(), ...office('plate-scanner'), ...list(holder) };
      return (await judge(base, { ...base, ...office('press') })).verdict;
    };
    expect([await verdict('i-1'), await verdict('i-9'), await verdict('i-2')]).toEqual([
      'pass',
      'fail',
      // Where it is to go the list has it already: the branch brings the declaration to what is there.
      'pass',
    ]);
  });

  it('refuses to attach what another server holds already, and asks nothing else of an attachment', async () => {
    const attached = estate('[ { volume: plates-1, server: plate-scanner } ]');
    const held = { ...rule(), ...unattached, ...listed({ servers: ['press'] }) };
    const { verdict, findings } = await judge(held, { ...held, ...attached });
    expect(verdict).toBe('fail');
    expect(findings[0]?.message).toMatch(/^the attachment of plates-1 starts from what main declares/);
    const larger = { ...rule(), ...unattached, ...listed({ servers: [], size: gib(60) }) };
    expect((await judge(larger, { ...larger, ...attached })).findings).toEqual([]);
  });

  it('refuses to take something from a server that runs, where it is declared as stopped, and not to grow it', async () => {
    const attached = estate('[ { volume: plates-1, server: plate-scanner } ]');
    const runs = {
      ...rule(),
      ...attached,
      ...listed({ servers: ['plate-scanner'] }, { power: 'running', type: 'large' }),
    };
    const { verdict, findings } = await judge(runs, { ...runs, ...unattached });
    expect(verdict).toBe('fail');
    expect(said({ findings })).toEqual([
      expect.stringContaining('plate-scanner is running at the provider, and declared stopped'),
    ]);
    const grown = estate(
      '[ { volume: plates-1, server: plate-scanner } ]',
      'plates-1: { size: 55 GiB, tier: bulk }',
    );
    expect((await judge(runs, { ...runs, ...grown })).findings).toEqual([]);
  });
});

describe('a declaration that is wrong can be mended', () => {
  it('by declaring the size that is there, to the byte and no other', async () => {
    const base = { ...rule(), ...plates(50), ...surveyed(60) };
    const to = async (size: number) => (await judge(base, { ...base, ...plates(size) })).verdict;
    expect([await to(59), await to(60), await to(61)]).toEqual(['fail', 'pass', 'fail']);
  });

  it('in all its layers at once, and not for what else there is in the same group', async () => {
    const grouped = (member: number, a: number, b: number): Files => ({
      'storage/imagery.yaml': `servers: { plate-scanner: { power: running } }
volumes: { plates-1: { size: ${member} GiB, tier: bulk } }
attachments: [ { volume: plates-1, server: plate-scanner } ]
volume-groups:
  plates: { extent: 64 MiB, members: [plates-1], file-systems: { /a: { size: ${a} GiB, type: xfs }, /b: { size: ${b} GiB, type: xfs } } }
`,
    });
    const [played] = playServers(estateOf(grouped(60, 40, 10)['storage/imagery.yaml'] ?? ''), {
      isOld: false,
      isBare: false,
      hasBootPartition: false,
    });
    const gathered = valueIn(readGathered(Buffer.from(played?.text ?? ''), 'plate-scanner'));
    const text = surveyAsText(valueIn(surveyOf(gathered, 'plate-scanner')).survey);
    const base = { ...rule(), ...grouped(50, 30, 5), 'surveys/plate-scanner.json': text };
    const to = async (...sizes: readonly [number, number, number]) =>
      (await judge(base, { ...base, ...grouped(...sizes) })).verdict;
    expect([await to(60, 40, 10), await to(61, 40, 10), await to(60, 40, 5), await to(60, 40, 6)]).toEqual([
      'pass',
      'fail',
      // What is left wrong of the same group is no better for it.
      'fail',
      'fail',
    ]);
  });

  it('by taking out what the provider lists no more, unless it may only be called otherwise', async () => {
    const list = (volumes: readonly object[]): Files => ({
      'surveys/provider.json': JSON.stringify({
        format: 'ullage-provider-survey-1',
        at: '2026-11-20T06:00:00Z',
        lists: ['volumes'],
        volumes,
        servers: [],
      }),
    });
    const left = 'volumes: { drafts: { size: 9 GiB, tier: bulk } }\n';
    const kept = left.replace('{ drafts', '{ plates-1: { size: 50 GiB, tier: bulk }, drafts');
    const goneFrom = (volumes: readonly object[]) => {
      const base = { ...rule(', missing: error'), 'storage/imagery.yaml': kept, ...list(volumes) };
      return judge(base, { ...base, 'storage/imagery.yaml': left });
    };
    const gone = (volumes: readonly object[]) =>
      goneFrom([{ name: 'drafts', size: gib(9), servers: [] }, ...volumes]);
    const verdict = async (volumes: readonly object[]) => (await gone(volumes)).verdict;
    expect(await verdict([])).toBe('pass');
    expect(said(await gone([]))).toEqual([
      expect.stringMatching(/^note new plates-1: the provider's list of 2026-11-20 has no plates-1/),
    ]);
    expect(await verdict([{ name: 'scans-7', size: gib(80), servers: [] }])).toBe('fail');
    expect(await verdict([{ name: 'plates-1', size: gib(80), servers: [] }])).toBe('fail');
    // A list without a row, or of other sites alone, is one that was asked for elsewhere.
    expect((await goneFrom([])).verdict).toBe('fail');
  });
});

describe('surveys are taken from the base', () => {
  it('one that the branch brings or edits does not help it, and is listed', async () => {
    const base = { ...rule(), ...plates(50), ...surveyed(60) };
    const { verdict, policyChanges } = await judge(base, { ...base, ...plates(55), ...surveyed(50) });
    expect(verdict).toBe('fail');
    expect(policyChanges).toMatchObject([{ of: 'surveys', name: 'plate-scanner', direction: 'looser' }]);
    const newer = await judge(base, { ...base, ...surveyed(50, '2026-11-24') });
    expect(newer.policyChanges).toMatchObject([{ of: 'surveys', direction: 'neither' }]);
  });

  it('what was wrong on main already does not fail a change that has nothing to do with it', async () => {
    const base = { ...rule(), ...plates(50), ...surveyed(60) };
    const head = {
      ...base,
      'storage/more.yaml': 'team: imagery\nvolumes: { other: { size: 1 GiB, tier: bulk } }\n',
    };
    expect((await judge(base, head)).verdict).toBe('pass');
  });

  it('a survey that does not read is a problem at its place, where a rule asks for surveys', async () => {
    const base = { ...rule(), ...plates(50), 'surveys/plate-scanner.json': '{ "format": "other" }' };
    const { problems } = await unjudgedFiles(base, { ...base, ...plates(55) }, { on: '2026-11-25' });
    expect(problems.some(({ place }) => place?.file === 'surveys/plate-scanner.json')).toBe(true);
    expect(settingsOf().paths.surveys).toBe('surveys');
  });
});

describe('a live volume that the list shows by its name', () => {
  const estate = (volumes: string): string =>
    `servers: { s: { id: i-1, power: running } }\nvolumes: { ${volumes} }\nattachments: [ { volume: b, server: s } ]\n`;
  const b = 'b: { size: 50 GiB, tier: bulk }';
  const main = { 'storage/a.yaml': estate(`a: { size: 50 GiB, tier: bulk }, ${b}`) };
  const branch = { 'storage/a.yaml': estate(b) };
  const list = (volumes: readonly object[]): Files => ({
    'surveys/provider.json': JSON.stringify({
      format: 'ullage-provider-survey-1',
      at: '2026-11-20T06:00:00Z',
      lists: ['volumes', 'servers'],
      volumes,
      servers: [{ id: 'i-1', name: 's' }],
    }),
  });
  const guest = (disks: readonly (readonly [size: number, serial: string | undefined])[]): Files => ({
    'surveys/s.json': JSON.stringify({
      format: 'ullage-survey-1',
      server: 's',
      at: '2026-11-20T06:00:00Z',
      tools: {},
      unseen: [],
      devices: disks.map(([size, serial], index) => ({
        name: `vd${'bcd'[index]}`,
        type: 'disk',
        size: gib(size),
        ...(serial === undefined ? {} : { serial }),
      })),
      'volume-groups': [],
      'file-systems': [],
    }),
  });
  const deleted = async (surveys: Files) =>
    judge({ ...rule(), ...main, ...surveys }, { ...rule(), ...branch, ...surveys });

  it('is not gone because its disk looks like the one of another', async () => {
    const held = { id: 'vol-0000001', size: gib(50), servers: ['i-1'] };
    for (const rows of [
      [{ ...held, name: 'a' }],
      [
        { ...held, name: 'a' },
        { name: 'b', size: gib(50), servers: [] },
      ],
      // Nor because the list has no names at all.
      [held],
    ])
      expect((await deleted({ ...list(rows), ...guest([[50, 'vol-0000001']]) })).verdict).toBe('fail');
  });

  it('is deleted by no branch with a survey more that is refused without it', async () => {
    const row = fc.record(
      {
        name: fc.constantFrom('a', 'b', 'x'),
        id: fc.constantFrom('vol-1', 'vol-2'),
        size: fc.constantFrom(gib(50), gib(60)),
        servers: fc.constantFrom([], ['i-1']),
      },
      { requiredKeys: ['size', 'servers'] },
    );
    const rows = fc
      .array(row, { maxLength: 2 })
      .filter(([one, other]) => one?.id === undefined || one.id !== other?.id);
    const disk = fc.tuple(fc.constantFrom(50, 60), fc.constantFrom(undefined, 'vol-1', 'vol-2'));
    const seen = new Set<string>();
    await fc.assert(
      fc.asyncProperty(rows, fc.array(disk, { maxLength: 2 }), async (listed, disks) => {
        const alone = (await deleted(list(listed))).verdict;
        const both = (await deleted({ ...list(listed), ...guest(disks) })).verdict;
        seen.add(`${alone} ${both}`);
        if (alone === 'fail') expect(both).toBe('fail');
      }),
      { numRuns: 500 },
    );
    expect([...seen].sort()).toEqual(['fail fail', 'pass fail', 'pass pass']);
  });
});

describe('what is declared as existing', () => {
  const sizes = [40, 60, 400] as const;
  const tiers = ['bulk', 'brisk'] as const;
  const holders = ['press', 'plate-scanner', undefined] as const;
  const servers =
    'servers: { press: { id: i-1, power: running }, plate-scanner: { id: i-2, power: running } }\n';
  const thing = fc.record({
    size: fc.constantFrom(...sizes),
    tier: fc.constantFrom(...tiers),
    holder: fc.constantFrom(...holders),
  });

  it('is held against the list in whatever it says, and is as free to be moved on as it really is', async () => {
    await fc.assert(
      fc.asyncProperty(
        thing,
        thing,
        fc.constantFrom(...holders),
        fc.boolean(),
        async (is, declared, to, isListed) => {
          const base = {
            ...rule(),
            'prices/2026.yaml':
              'from: 2026-01-01\ncurrency: EUR\ntiers:\n  bulk: { rate: "0.045", per: GiB-month }\n  brisk: { rate: "0.2", per: GiB-month }\n',
            'storage/imagery.yaml': servers,
            'surveys/provider.json': JSON.stringify({
              format: 'ullage-provider-survey-1',
              at: '2026-11-20T06:00:00Z',
              lists: ['volumes', 'servers'],
              volumes: isListed
                ? [
                    {
                      id: 'v-1',
                      size: gib(is.size),
                      tier: is.tier,
                      servers: is.holder === undefined ? [] : [is.holder],
                    },
                  ]
                : [],
              servers: [
                { id: 'i-1', name: 'press' },
                { id: 'i-2', name: 'plate-scanner' },
              ],
            }),
          };
          // Attached as it is said to be there already, or, where it is said to lie free, anew by the branch.
          const attached = declared.holder ?? to;
          const mark = declared.holder === undefined ? ', existing: false' : '';
          const head = `${servers}volumes:
  plates-1: { id: v-1, existing: true, size: ${declared.size} GiB, tier: ${declared.tier} }
attachments: [ ${attached === undefined ? '' : `{ volume: plates-1, server: ${attached}${mark} }`} ]
`;
          const { verdict } = await judge(base, { ...base, 'storage/imagery.yaml': head });
          const isSo =
            isListed &&
            is.size === declared.size &&
            is.tier === declared.tier &&
            is.holder === declared.holder;
          expect(verdict).toBe(isSo ? 'pass' : 'fail');
        },
      ),
      { numRuns: 60 },
    );
  });

  it('is held against what surveys show, too: of a server its type and power, of a group its extents', async () => {
    const list = {
      format: 'ullage-provider-survey-1',
      at: '2026-11-20T06:00:00Z',
      lists: ['servers'],
      volumes: [],
      servers: [{ name: 'press', type: 'large', power: 'running' }],
    };
    const base: Files = {
      ...rule(),
      'prices/2026.yaml':
        'from: 2026-01-01\ncurrency: EUR\ntiers: {}\nserver-types: { small: { running: "0.01", stopped: "0" }, large: { running: "0.2", stopped: "0" } }\n',
      'storage/imagery.yaml': 'volumes: {}\n',
      'surveys/provider.json': JSON.stringify(list),
    };
    const declared = async (server: string) =>
      said(
        await judge(base, {
          ...base,
          'storage/imagery.yaml': `servers: { press: { existing: true, ${server} } }\n`,
        }),
      );
    expect(await declared('type: large, power: running')).toEqual([]);
    expect(await declared('type: small, power: running')).toEqual([
      expect.stringContaining('the type of press is large at the provider, and declared small'),
    ]);
    expect(await declared('type: large, power: stopped')).toEqual([
      expect.stringContaining('press is running at the provider, and declared stopped'),
    ]);
  });

  it('is not blank where a survey shows a file system on it', async () => {
    const servers = 'servers: { plate-scanner: { power: running } }\n';
    const base = { ...rule(), 'storage/imagery.yaml': servers, ...surveyed(50) };
    const declared = (system: string): Files => ({
      'storage/imagery.yaml': `${servers}volumes: { plates-1: { existing: true, size: 50 GiB, tier: bulk${system} } }\nattachments: [ { volume: plates-1, server: plate-scanner } ]\n`,
    });
    expect(said(await judge(base, { ...base, ...declared('') }))).toEqual([
      expect.stringContaining(
        'plates-1 has a file system (xfs, at /plates on plate-scanner), and is declared',
      ),
    ]);
    const whole = declared(', file-system: { mount: /plates, type: xfs }');
    expect((await judge(base, { ...base, ...whole })).findings).toEqual([]);
  });

  it('is asked for a survey where that is demanded', async () => {
    const base = {
      ...rule(', missing: error'),
      'storage/imagery.yaml': 'servers: { plate-scanner: { power: running } }\n',
    };
    const added =
      'servers: { plate-scanner: { power: running } }\nvolumes: { a: { existing: true, size: 60 GiB, tier: bulk } }\n';
    expect(said(await judge(base, { ...base, 'storage/imagery.yaml': added }))).toEqual([
      expect.stringContaining('no survey shows a, which is declared as existing'),
    ]);
  });
});

it('a file system that is declared as existing on a volume of main is asked for a survey of its server', async () => {
  const base = { ...rule(', missing: error'), ...plates(50) };
  const bare = (base['storage/imagery.yaml'] ?? '').replace(
    ', file-system: { mount: /plates, type: xfs }',
    '',
  );
  const existing = bare.replace(
    'tier: bulk',
    'tier: bulk, file-system: { existing: true, mount: /plates, type: xfs }',
  );
  const before = { ...base, 'storage/imagery.yaml': bare };
  const verdict = async (surveys: Files) =>
    (await judge({ ...before, ...surveys }, { ...before, ...surveys, 'storage/imagery.yaml': existing }))
      .verdict;
  expect(await verdict({})).toBe('fail');
  expect(await verdict(surveyed(50))).toBe('pass');
});

it('what is declared as existing, and a survey does not show, is a finding', async () => {
  const base = {
    ...rule(),
    'storage/imagery.yaml': 'servers: { plate-scanner: { power: running } }\n',
    ...surveyed(60),
  };
  const added =
    'servers: { plate-scanner: { power: running } }\nvolumes:\n  a: { existing: true, size: 60 GiB, tier: bulk, file-system: { mount: /plates, type: xfs } }\n  b: { existing: true, size: 5 GiB, tier: bulk }\nattachments: [ { volume: a, server: plate-scanner }, { volume: b, server: plate-scanner } ]\n';
  const { findings } = await judge(base, { ...base, 'storage/imagery.yaml': added });
  expect(findings).toMatchObject([
    {
      subject: { name: 'b' },
      message:
        'b is declared as existing, and a survey of 2026-11-20 shows otherwise: b is declared as attached to plate-scanner, and that shows no disk that it could be',
    },
  ]);
});

it('a first estate that comes with surveys which show it has no step that makes anything', async () => {
  const nothing = { ...rule(), 'storage/none.yaml': 'volumes: {}\n' };
  const first = { ...nothing, ...plates(50), ...surveyed(50) };
  const { changes, runbook } = await judge(nothing, first);
  expect(changes.map(({ kind }) => kind).filter((kind) => !kind.endsWith('-adopted'))).toEqual([]);
  expect(runbook.map(({ does }) => does).filter((does) => /^(Create|Attach|Reformat)/.test(does))).toEqual(
    [],
  );
  // Without the survey it is new.
  const unshown = await judge(nothing, { ...nothing, ...plates(50) });
  expect(unshown.changes.map(({ kind }) => kind)).toContain('volume-created');
});

describe('what a survey shows on a volume beside what main declares', () => {
  const server = 'plate-scanner';
  const survey = (shown: object): Files => ({
    [`surveys/${server}.json`]: JSON.stringify({
      format: 'ullage-survey-1',
      server,
      at: '2026-11-20T06:00:00Z',
      tools: {},
      unseen: [],
      devices: [{ name: 'vdb', type: 'disk', size: gib(50) }],
      'volume-groups': [],
      'file-systems': [],
      ...shown,
    }),
  });
  const disk = (more: object) => ({ name: 'vdb', type: 'disk', size: gib(50), ...more });
  const part = (name: string, more: object) => ({ name, type: 'part', on: ['vdb'], size: gib(20), ...more });
  const estate = (volume: string, more = ''): Files => ({
    'storage/imagery.yaml': `servers: { ${server}: { power: running, guest: linux-lvm } }
volumes: { plates-1: { size: 50 GiB, tier: bulk${volume} } }
attachments: [ { volume: plates-1, server: ${server} } ]
${more}`,
  });
  const group = (device: string) => ({
    name: 'old',
    extent: `${1 << 22}`,
    extents: 100,
    free: 0,
    missing: 0,
    members: [{ device, extents: 100, free: 0 }],
    'logical-volumes': [{ name: 'd', size: gib(1), layout: 'linear' }],
  });
  const system = ', file-system: { mount: /plates, type: xfs }';
  const made: Files = estate(system);
  const grouped = estate(
    '',
    'volume-groups: { g: { extent: 4 MiB, members: [plates-1], file-systems: { /g: { size: 1 GiB, type: xfs } } } }\n',
  );
  const detached: Files = {
    'storage/imagery.yaml': `servers: { ${server}: { power: running, guest: linux-lvm } }\nvolumes: { plates-1: { size: 50 GiB, tier: bulk } }\n`,
  };
  const verdict = async (before: Files, shown: object, after: Files) => {
    const base = { ...rule(', missing: error'), ...before, ...survey(shown) };
    return (await judge(base, { ...base, ...after })).verdict;
  };

  const contents: readonly (readonly [string, object])[] = [
    [
      'a file system that nobody mounts',
      { 'file-systems': [{ device: 'vdb', type: 'xfs', mounts: [], size: gib(50) }] },
    ],
    [
      'one of a type that cannot be declared',
      { 'file-systems': [{ device: 'vdb', type: 'f2fs', mounts: ['/data'], size: gib(50) }] },
    ],
    ['a swap area', { 'file-systems': [{ device: 'vdb', type: 'swap', mounts: [], size: gib(50) }] }],
    ['what is encrypted', { devices: [disk({ content: 'crypto_LUKS' })] }],
    ['a part of a group that it shows none of', { devices: [disk({ content: 'LVM2_member' })] }],
    ['a part of a pool', { devices: [disk({ content: 'zfs_member' })] }],
    [
      'a half of a mirror',
      {
        devices: [
          disk({ content: 'linux_raid_member' }),
          { name: 'md0', type: 'raid1', on: ['vdb'], size: gib(50) },
        ],
      },
    ],
    ['a partition with a file system', { devices: [disk({}), part('vdb1', { content: 'ext4' })] }],
    ['a member of another group', { 'volume-groups': [group('vdb')] }],
  ];

  it.each(contents)('%s, is not written over', async (_, shown) => {
    expect([await verdict(estate(''), shown, made), await verdict(estate(''), shown, grouped)]).toEqual([
      'fail',
      'fail',
    ]);
  });

  it.each(contents)('%s, is not taken from under whoever uses it', async (_, shown) => {
    expect(await verdict(estate(''), shown, detached)).toBe('fail');
  });

  it('is told beside a file system that is declared, too', async () => {
    const own = { device: 'vdb1', type: 'xfs', mounts: ['/plates'], 'in-fstab': '/plates', size: gib(20) };
    const devices = [disk({}), part('vdb1', { content: 'xfs' }), part('vdb2', {})];
    const beside = (other: object) => ({ devices, 'file-systems': [own, other] });
    const other = { device: 'vdb2', type: 'ext4', mounts: ['/q'], 'in-fstab': '/q', size: gib(20) };
    for (const after of [estate(''), grouped, detached, estate(system.replace('xfs', 'ext4'))]) {
      expect(await verdict(estate(system), beside(other), after)).toBe('fail');
      const alone = { devices: devices.slice(0, 2), 'file-systems': [own], 'volume-groups': [group('vdb2')] };
      expect(await verdict(estate(system), { ...alone, devices }, after)).toBe('fail');
    }
    // In a partition of its own it is what is declared.
    const only = { devices: devices.slice(0, 2), 'file-systems': [own] };
    expect(await verdict(estate(system), only, detached)).toBe('pass');
  });

  it('is not what the declared file system, or group, itself lies on', async () => {
    const own = { type: 'xfs', mounts: ['/plates'], 'in-fstab': '/plates', size: gib(49) };
    const crypt = { name: 'mapper/p', type: 'crypt', on: ['vdb'], size: gib(49), content: 'xfs' };
    const encrypted = { devices: [disk({ content: 'crypto_LUKS' }), crypt] };
    const there = { ...encrypted, 'file-systems': [{ device: 'mapper/p', ...own }] };
    expect(await verdict(estate(system), there, detached)).toBe('pass');
    // It is still what a new one would be made over.
    expect(await verdict(estate(''), there, made)).toBe('fail');
    const pool = { devices: [disk({ content: 'zfs_member' })] };
    const zfs = estate(system.replace('xfs', 'zfs'));
    expect(await verdict(zfs, pool, detached)).toBe('pass');
  });

  it('is told of a second disk on which the root lies, which is no boot volume', async () => {
    const root = { device: 'vg/root', type: 'ext4', mounts: ['/'], 'in-fstab': '/', size: gib(60) };
    const over = {
      devices: [{ name: 'vda', type: 'disk', size: gib(20) }, disk({})],
      'volume-groups': [
        {
          ...group('vda'),
          name: 'vg',
          members: ['vda', 'vdb'].map((device) => ({ device, extents: 100, free: 0 })),
          'logical-volumes': [{ name: 'root', size: gib(60), layout: 'linear' }],
        },
      ],
      'file-systems': [root],
    };
    expect([await verdict(estate(''), over, made), await verdict(estate(''), over, detached)]).toEqual([
      'fail',
      'fail',
    ]);
  });

  it('is nothing on a disk that is blank, and counts as not looked at where that could not be seen', async () => {
    expect(await verdict(estate(''), {}, made)).toBe('pass');
    expect(await verdict(estate(''), { unseen: ['superblocks'] }, made)).toBe('fail');
    expect(await verdict(estate(''), { unseen: ['fstab', 'use'] }, made)).toBe('pass');
  });

  it('is another disk where its serial number is one of that kind, and none where it is of another', async () => {
    const shows = (serial: string) => ({ devices: [disk({ serial })] });
    const named = (id: string) => async (serial: string) =>
      verdict(estate(`, id: ${id}`), shows(serial), estate(`, id: ${id}${system}`));
    expect(await named('vol-2')('vol-999')).toBe('fail');
    expect(await named('vol-2')('vol-2')).toBe('pass');
    expect(await named('vol-0abc12')('vol0abc12')).toBe('pass');
    expect(await named('vol-2')('drive-scsi1')).toBe('pass');
    const uuid = '6f1c2b0e-9a4d-4c11-8f5e-0d1b2c3a4f56';
    expect(await named(uuid)(uuid.slice(0, 20))).toBe('pass');
    expect(await named(uuid)('7f1c2b0e-9a4d-4c11-8')).toBe('fail');
    // Numbers that the host, or the disk's maker, gives are of no kind of identifier.
    expect(await named(uuid)('6001405a3c7d0b1e')).toBe('pass');
    expect(await named('"10234567"')('0000000001')).toBe('pass');
    expect(await named('"10234567"')('10234568')).toBe('fail');
  });

  it('goes with its server where nobody declared it, and that is refused', async () => {
    const server = (power: string): Files => ({
      'storage/imagery.yaml': `servers: { plate-scanner: { power: ${power} }, press: { power: running } }\n`,
    });
    const gone: Files = { 'storage/imagery.yaml': 'servers: { press: { power: running } }\n' };
    const base = { ...rule(), ...server('stopped'), ...survey({}) };
    expect(said(await judge(base, { ...base, ...gone }))).toEqual([
      expect.stringContaining('plate-scanner would go with what main does not declare'),
    ]);
    const drive = { name: 'fd0', type: 'disk', size: '4096' };
    const floppy = { ...base, ...survey({ devices: [drive] }) };
    expect((await judge(floppy, { ...floppy, ...gone })).verdict).toBe('pass');
    const bare = { ...base, ...survey({ devices: [] }) };
    expect((await judge(bare, { ...bare, ...gone })).verdict).toBe('pass');
  });
});
