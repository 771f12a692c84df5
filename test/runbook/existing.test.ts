import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { adoptedIn } from '../../src/change/adoption.ts';
import { compareEstates } from '../../src/change/compare.ts';
import { lossesOf } from '../../src/change/losses.ts';
import { runbookOf } from '../../src/runbook/runbook.ts';
import type { Step } from '../../src/runbook/step.ts';
import { assembled, estateOf, type Files } from '../estate/builder.ts';
import { change, filesOf, model } from '../estate/random.ts';

function runbook(before: string, after: string): readonly Step[] {
  const [base, head] = [estateOf(before), estateOf(after)];
  return runbookOf(compareEstates(base, head), base, head);
}

describe('what a server starts from', () => {
  const booting = (server: string, system: string): string =>
    `servers:\n  scanner: { boot: root, guest: linux, ${server} }\nvolumes:\n  root: { size: 50 GiB, tier: steady${system} }\n`;
  const root = (mount: string, type: string): string => `, file-system: { mount: ${mount}, type: ${type} }`;
  const told = (before: string, after: string) =>
    runbook(before, after).map(({ at: where, destroys, does }) => [where, destroys, does]);

  it.each(['/', '/srv'])('is checked and never made in its guest, wherever it is mounted: %s', (mount) => {
    const steps = told('{}\n', booting('power: running', root(mount, 'ext4')));
    expect(steps.map(([, , does]) => does)).toEqual([
      'Create volume root: 50 GiB, tier steady.',
      'Create server scanner, to start from root, running.',
      `Check that the file system ${mount} on root is ext4, as declared.`,
    ]);
  });

  it('is put there by its image or installer, with the server stopped, where it is to be overwritten', () => {
    const over =
      'Put ext4 for /, 50 GiB on root, with the image or the installer that scanner is to start from; any data there is overwritten.';
    const steps = told(booting('power: stopped', ''), booting('power: stopped', root('/', 'ext4')));
    expect(steps).toContainEqual(['provider', true, over]);
    const anew = told(booting('', root('/', 'xfs')), booting('', root('/', 'ext4')));
    expect(anew.map(([, , does]) => does)).toEqual([
      'Check that root has a recent enough backup, and that a restore of it has been tried.',
      'Shut scanner down from within its guest, and check at the provider that it is stopped.',
      over,
      'Start scanner, and check that its guest comes up.',
      'Restore what / held from its backup, and compare.',
    ]);
  });

  it('and a group on it come with it; of such a group only what is added later is made in the guest', () => {
    const grouped = (systems: string): string =>
      `${booting('', '')}volume-groups:\n  system: { members: [root], file-systems: { /: { size: 10 GiB, type: ext4 }${systems} } }\n`;
    const first = told('{}\n', grouped(', /var: { size: 5 GiB, type: xfs }')).map(([, , does]) => does);
    expect(first.filter((does) => /^(Create|Make) (a|volume group)/.test(`${does}`))).toEqual([]);
    expect(first).toContain('Check that the file system /var on system is xfs, as declared.');
    const later = told(grouped(''), grouped(', /var: { size: 5 GiB, type: xfs }')).map(([, , does]) => does);
    expect(later).toContain('Create a file system, xfs, for /var on system.');
  });
});

describe('what is only declared', () => {
  it('is checked before a group is made over it', () => {
    const server = 'servers: { scanner: { guest: linux-lvm } }\n';
    const steps = runbook(
      server,
      `${server}volumes: { plates: { id: v-7, size: 40 GiB, tier: bulk, existing: true } }
attachments: [{ volume: plates, server: scanner, existing: false }]
volume-groups: { imagery: { members: [plates], existing: false } }
`,
    );
    const told = steps.slice(0, 5).map(({ number, procedure, after }) => [number, procedure, after]);
    expect(told).toEqual([
      [1, 'check-volume-there', []],
      [2, 'check-backup', []],
      [3, 'attach', [1]],
      [4, 'see-device', [3]],
      [5, 'make-group-over', [2, 4]],
    ]);
  });
});

describe('volumes that are there already', () => {
  const volumes = `volumes:
  root: { size: 50 GiB, tier: steady, file-system: { mount: /, type: ext4 } }
  p1: { size: 40 GiB, tier: bulk, existing: true, id: vol-7 }
attachments:
  - { volume: p1, server: scanner }
volume-groups:
  plates: { members: [p1], file-systems: { /plates: { size: 30 GiB, type: xfs } } }
`;
  const server = 'servers:\n  scanner: { boot: root, guest: linux-lvm }\n';

  it('come to a server that is created: attached, activated, looked at and mounted, and nothing on them is made', () => {
    expect(runbook('{}\n', server + volumes).map(({ does }) => does)).toEqual([
      'Check that volume p1 is there as declared: id vol-7, 40 GiB, tier bulk.',
      'Create volume root: 50 GiB, tier steady.',
      'Create server scanner, to start from root, running.',
      'Attach volume p1 to scanner.',
      'Check that the new device of p1 has appeared, with 40 GiB, and note its name.',
      'Activate volume group plates.',
      'Check that this is there as declared: volume group plates on p1 (10239 extents of 4 MiB, ≈40 GiB in all), with /plates (xfs, 30 GiB).',
      'Mount /plates from plates, and add it to fstab.',
      'Check that the file system / on root is ext4, as declared.',
    ]);
  });

  it('are looked at where they are on a server of main', () => {
    const bare = 'servers:\n  scanner: { guest: linux-lvm }\n';
    const found = volumes.replace(/ {2}root: .*\n/, '');
    expect(runbook(bare, bare + found).map(({ at: where, does }) => `${where}: ${does}`)).toEqual([
      'provider: Check that volume p1 is there as declared: id vol-7, 40 GiB, tier bulk, attached to scanner.',
      'guest: Check that this is there as declared: volume group plates on p1 (10239 extents of 4 MiB, ≈40 GiB in all), with /plates (xfs, 30 GiB).',
    ]);
  });
});

const sections = ['servers', 'volumes', 'volume-groups'] as const;

/** The files with some of their things marked, each true or false. */
const marked = (files: Files, marks: ReadonlyMap<string, boolean>): Files =>
  Object.fromEntries(
    Object.entries(files).map(([path, text]) => {
      const file: Record<string, Record<string, object>> = JSON.parse(text);
      const withMarks = (things: Record<string, object>): Record<string, object> =>
        Object.fromEntries(
          Object.entries(things).map(([name, thing]) => {
            const existing = marks.get(name);
            return [name, existing === undefined ? thing : { ...thing, existing }];
          }),
        );
      const things = sections.map((section) => [section, withMarks(file[section] ?? {})]);
      return [path, JSON.stringify({ ...file, ...Object.fromEntries(things) })];
    }),
  );

const names = ['s0', 's1', 's2', 'v0', 'v1', 'v2', 'v3', 'v4', 'v5', 'g0', 'g1'];
const marks = fc
  .array(fc.constantFrom(true, true, undefined, false), { minLength: names.length, maxLength: names.length })
  .map(
    (chosen) => new Map(names.flatMap((name, at) => (chosen[at] === undefined ? [] : [[name, chosen[at]]]))),
  );

describe('whatever of a branch is marked, on whatever main has', () => {
  it('no step makes what is only declared, and each change of what is there is carried out by one look', () => {
    let [adoptions, shared] = [0, 0];
    fc.assert(
      fc.property(fc.oneof(change, fc.tuple(model, model)), marks, ([before, after], these) => {
        const [base, head] = [assembled(filesOf(before)), assembled(marked(filesOf(after), these))];
        fc.pre(base.ok && head.ok);
        const comparison = compareEstates(base.value, head.value);
        fc.pre(comparison.contradictions.length === 0);
        const { changes } = comparison;
        const steps = runbookOf(comparison, base.value, head.value);
        const adopted = adoptedIn(changes);
        adoptions += adopted.servers.size + adopted.volumes.size;
        const made = {
          'create-server': adopted.servers,
          'create-volume': adopted.volumes,
          'make-group': adopted.groups,
          'make-group-over': adopted.groups,
          'make-file-system': adopted.fileSystems,
          'make-file-system-over': adopted.fileSystems,
          'make-anew': adopted.fileSystems,
          'make-logical-volume': adopted.fileSystems,
        };
        for (const { procedure, subject, server, does } of steps) {
          const never = Object.entries(made).find(([name]) => name === procedure)?.[1];
          expect([does, never?.has(subject.name) ?? false]).toEqual([does, false]);
          if (procedure === 'attach' || procedure === 'attach-boot')
            expect([does, adopted.attached.has(`${subject.name} ${server}`)]).toEqual([does, false]);
        }
        // What several servers have is looked at in the guest of each of them.
        for (const change of changes) {
          if (change.kind !== 'file-system-adopted') continue;
          const { on, mount, type } = change.after;
          const holders = on.kind === 'volume' ? (head.value.holders.get(on.name) ?? []) : [];
          if (holders.length > 1) shared += 1;
          for (const { server } of holders)
            expect(
              steps.filter(
                (step) =>
                  step.procedure === 'check-layers' &&
                  step.server === server &&
                  step.words.declared?.includes(`${mount} (${type}, `),
              ),
            ).toHaveLength(1);
        }
        changes.forEach(({ kind }, index) => {
          if (!kind.endsWith('-adopted')) return;
          const by = steps.filter(({ carriesOut }) => carriesOut.includes(index));
          expect([kind, by.map(({ procedure }) => procedure)]).toEqual([
            kind,
            [expect.toBeOneOf(['check-server-there', 'check-volume-there', 'check-layers'])],
          ]);
        });
      }),
      { numRuns: 200 },
    );
    expect(adoptions).toBeGreaterThan(30);
    expect(shared).toBeGreaterThan(0);
  });

  it('no marking hides a loss of what main has: each is lost by what is left as well', () => {
    fc.assert(
      fc.property(change, marks, ([before, after], these) => {
        const [base, plain] = [assembled(filesOf(before)), assembled(filesOf(after))];
        const head = assembled(marked(filesOf(after), these));
        fc.pre(base.ok && plain.ok && head.ok);
        const lost = (of: typeof head): readonly string[] =>
          of.ok
            ? lossesOf(compareEstates(base.value, of.value).changes).flatMap((each) =>
                // A group, or a file system, on bare volumes is believed to be there; what main has on them is not lost by it.
                each.kind === 'group-created' ||
                each.kind === 'file-system-created' ||
                each.kind === 'member-joined'
                  ? each.wipes.flatMap(({ name }) =>
                      base.value.volumes.get(name)?.fileSystem !== undefined || base.value.groupOf.has(name)
                        ? [`over ${name}`]
                        : [],
                    )
                  : [`${each.kind} ${each.subject.name}`],
              )
            : [];
        expect(lost(head)).toEqual(expect.arrayContaining([...lost(plain)]));
      }),
      { numRuns: 200 },
    );
  });
});
