/** What main declares larger than it is, and a branch declares as surveys on main show it. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Files, judgedFiles, said } from '../estate/builder.ts';
import { gib } from '../survey/kept.ts';

const rules: Files = {
  'ullage.yaml': 'currency: EUR\n',
  'prices/2026.yaml': 'from: 2026-01-01\ncurrency: EUR\ntiers:\n  bulk: { rate: "0.10", per: GiB-month }\n',
  'policies/storage.yaml': `rules:
  - { rule: surveyed-as-declared, level: error, within: 14, too-old: error, missing: error }
  - { rule: no-shrink, level: error }
  - { rule: deletion-prepared, level: error, backup-within: 2 }
`,
};

interface Shown {
  readonly list?: number;
  readonly disk?: number;
  readonly at?: string;
}

const surveys = ({ list, disk, at = '2026-11-20' }: Shown): Files => ({
  ...(list === undefined
    ? {}
    : {
        'surveys/provider.json': JSON.stringify({
          format: 'ullage-provider-survey-1',
          at: `${at}T06:00:00Z`,
          lists: ['volumes'],
          volumes: [{ name: 'plates-1', size: gib(list), servers: ['plate-scanner'] }],
          servers: [],
        }),
      }),
  ...(disk === undefined
    ? {}
    : {
        'surveys/plate-scanner.json': JSON.stringify({
          format: 'ullage-survey-1',
          server: 'plate-scanner',
          at: `${at}T06:00:00Z`,
          tools: {},
          unseen: [],
          devices: [{ name: 'vdb', type: 'disk', size: gib(disk) }],
          'volume-groups': [],
          'file-systems': [
            { device: 'vdb', type: 'xfs', mounts: ['/plates'], 'in-fstab': '/plates', size: gib(disk) },
          ],
        }),
      }),
});

const declared = (gibibytes: number, more = ''): Files => ({
  'storage/imagery.yaml': `servers: { plate-scanner: { power: running } }
volumes:
  plates-1: { size: ${gibibytes} GiB, tier: bulk, file-system: { mount: /plates, type: xfs }${more} }
attachments: [ { volume: plates-1, server: plate-scanner } ]
`,
});

const judge = (shown: Shown, to: number, from = 60) => {
  const base = { ...rules, ...declared(from), ...surveys(shown) };
  return judgedFiles(base, { ...base, ...declared(to) }, { on: '2026-11-25' });
};

describe('a volume that is smaller than main has it', () => {
  it('is corrected to what the list and its server show, and nothing is done but to look', async () => {
    const judgement = await judge({ list: 50, disk: 50 }, 50);
    expect(judgement.verdict).toBe('pass');
    expect(said(judgement)).toEqual([]);
    expect(judgement.changes.map(({ kind }) => kind)).toEqual(['volume-corrected']);
    expect(judgement.runbook.map(({ does, destroys }) => [does, destroys])).toEqual([
      ['Check that volume plates-1 is there as declared: 50 GiB, tier bulk.', false],
    ]);
    expect(judgement.cost.difference?.toString()).toBe('-1');
    expect(judgement.cost.causes.filter(({ difference }) => difference?.isZero() === false)).toMatchObject([
      { cause: 'adoption' },
    ]);
  });

  it.each([
    ['the list shows another size', { list: 55, disk: 50 }],
    ['the list shows what main has, and the guest has not looked again', { list: 60, disk: 50 }],
    ['only the guest shows it, which may not have looked again', { disk: 50 }],
    ['nothing shows it', {}],
  ] as const)('shrinks as before where %s', async (_, shown) => {
    const { verdict, changes, findings } = await judge(shown, 50);
    expect([verdict, changes.map(({ kind }) => kind)]).toEqual(['fail', ['volume-shrunk']]);
    const advice = findings.find(({ rule }) => rule === 'no-shrink')?.advice ?? '';
    expect(advice).toContain('is a correction');
  });

  it('shrinks where it is to be smaller still', async () => {
    expect((await judge({ list: 50, disk: 50 }, 49)).changes.map(({ kind }) => kind)).toEqual([
      'volume-shrunk',
    ]);
  });

  it('is corrected to the one size that both show and that is less than main has, and never otherwise', async () => {
    const size = fc.integer({ min: 45, max: 50 });
    const kinds = new Map<string, number>();
    await fc.assert(
      fc.asyncProperty(
        fc.record({ list: fc.option(size), disk: fc.option(size), from: size, to: size }),
        fc.constantFrom('2026-11-24', '2026-11-11', '2026-11-10', '2026-10-01'),
        async ({ list, disk, from, to }, at) => {
          const shown = { at, ...(list === null ? {} : { list }), ...(disk === null ? {} : { disk }) };
          const judgement = await judge(shown, to, from);
          const isShown = list === to && (disk === null || disk === to) && at >= '2026-11-11';
          const kind = to > from ? 'volume-grown' : isShown ? 'volume-corrected' : 'volume-shrunk';
          expect(judgement.changes.map((each) => each.kind)).toEqual(to === from ? [] : [kind]);
          // What is corrected leaves everything as it is.
          if (kind === 'volume-corrected' && to < from)
            expect(judgement.runbook.map(({ procedure }) => procedure)).toEqual(['check-volume-there']);
          if (to !== from) kinds.set(kind, (kinds.get(kind) ?? 0) + 1);
        },
      ),
      { numRuns: 300 },
    );
    for (const kind of ['volume-grown', 'volume-corrected', 'volume-shrunk'])
      expect(kinds.get(kind) ?? 0, kind).toBeGreaterThan(0);
  });

  it('is grown, not corrected, where it is larger than main has it: what lies on it may still have to follow', async () => {
    const { changes } = await judge({ list: 60, disk: 60 }, 60, 50);
    expect(changes.map(({ kind }) => kind)).toEqual(['volume-grown']);
  });

  it('is corrected by surveys of the last fortnight alone: older ones may be of before it grew', async () => {
    const at = async (day: string) => (await judge({ list: 50, disk: 50, at: day }, 50)).changes[0]?.kind;
    expect(await at('2026-11-11')).toBe('volume-corrected');
    expect(await at('2026-11-10')).toBe('volume-shrunk');
    expect(await at('2026-11-28')).toBe('volume-shrunk');
  });

  it('is not corrected by a survey that the branch itself brings', async () => {
    const base = { ...rules, ...declared(60) };
    const head = { ...base, ...declared(50), ...surveys({ list: 50, disk: 50 }) };
    const { changes, verdict } = await judgedFiles(base, head, { on: '2026-11-25' });
    expect(changes.map(({ kind }) => kind)).toEqual(['volume-shrunk']);
    expect(verdict).toBe('fail');
  });

  it('is another volume where its id is another, whatever is shown', async () => {
    const base = { ...rules, ...declared(60, ', id: vol-1'), ...surveys({ list: 50, disk: 50 }) };
    const head = { ...base, ...declared(50, ', id: vol-2') };
    const { changes, verdict } = await judgedFiles(base, head, { on: '2026-11-25' });
    expect(changes.map(({ kind }) => kind)).toContain('volume-shrunk');
    expect(verdict).toBe('fail');
  });
});

describe('a logical volume that is smaller than main has its file system', () => {
  const grouped = (gibibytes: number): Files => ({
    'storage/imagery.yaml': `servers: { plate-scanner: { power: running, guest: linux-lvm } }
volumes: { plates-1: { size: 60 GiB, tier: bulk } }
volume-groups:
  plates: { extent: 4 MiB, members: [plates-1], file-systems: { /plates: { size: ${gibibytes} GiB, type: xfs } } }
attachments: [ { volume: plates-1, server: plate-scanner } ]
`,
  });
  const shown = (gibibytes: number): Files => ({
    'surveys/plate-scanner.json': JSON.stringify({
      format: 'ullage-survey-1',
      server: 'plate-scanner',
      at: '2026-11-20T06:00:00Z',
      tools: {},
      unseen: [],
      devices: [{ name: 'vdb', type: 'disk', size: gib(60), content: 'LVM2_member' }],
      'volume-groups': [
        {
          name: 'plates',
          extent: `${1 << 22}`,
          extents: 15_359,
          free: 15_359 - gibibytes * 256,
          missing: 0,
          members: [{ device: 'vdb', extents: 15_359, free: 15_359 - gibibytes * 256 }],
          'logical-volumes': [{ name: 'plates', size: gib(gibibytes), layout: 'linear' }],
        },
      ],
      'file-systems': [
        {
          device: 'plates/plates',
          type: 'xfs',
          mounts: ['/plates'],
          'in-fstab': '/plates',
          size: gib(gibibytes),
        },
      ],
    }),
  });
  const kinds = async (lv: number, to: number) => {
    const base = { ...rules, ...grouped(40), ...shown(lv) };
    const judgement = await judgedFiles(base, { ...base, ...grouped(to) }, { on: '2026-11-25' });
    return [judgement.verdict, judgement.changes.map(({ kind }) => kind), judgement.runbook.length];
  };

  it('is corrected to what its server shows, and to no other size', async () => {
    expect(await kinds(30, 30)).toEqual(['pass', ['file-system-corrected'], 1]);
    const [verdict, changes] = await kinds(30, 29);
    expect([verdict, changes]).toEqual(['fail', ['file-system-shrunk']]);
  });
});
