import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { own } from '../../src/change/adoption.ts';
import type { Change, ChangeKind } from '../../src/change/change.ts';
import { compareEstates } from '../../src/change/compare.ts';
import type { Estate } from '../../src/estate/estate.ts';
import { Plan } from '../../src/runbook/plan.ts';
import { runbookOf } from '../../src/runbook/runbook.ts';
import type { Step } from '../../src/runbook/step.ts';
import { assembled, type Files } from '../estate/builder.ts';
import { change, filesOf } from '../estate/random.ts';
import { waitsFor } from './waits-for.ts';

interface Branch {
  readonly base: Estate;
  readonly head: Estate;
  readonly changes: readonly Change[];
  readonly steps: readonly Step[];
}

/** Estates that contradict themselves have no runbook. */
function branch(before: Files, after: Files): Branch {
  const [base, head] = [assembled(before), assembled(after)];
  fc.pre(base.ok && head.ok);
  const comparison = compareEstates(base.value, head.value);
  return {
    base: base.value,
    head: head.value,
    changes: comparison.changes,
    steps: runbookOf(comparison, base.value, head.value),
  };
}

const branches = change.map(([before, after]) => [filesOf(before), filesOf(after)] as const);

const property = (holds: (branch: Branch) => void): void =>
  fc.assert(
    fc.property(branches, ([before, after]) => holds(branch(before, after))),
    { numRuns: 150 },
  );

const needsNoHands: ReadonlySet<ChangeKind> = new Set<ChangeKind>([
  'server-changed-team',
  'server-edited',
  'volume-changed-team',
]);

/** Whether somebody must do something. */
function needsHands(change: Change, base: Estate, head: Estate): boolean {
  switch (change.kind) {
    case 'file-system-deleted': {
      const { on } = change.before;
      if (on.kind === 'volume-group' || !head.volumes.has(on.name)) return true;
      // Nobody uses it where nothing runs that holds it.
      const running = (base.holders.get(on.name) ?? []).filter(
        ({ server }) => base.servers.get(server)?.power === 'running',
      );
      return running.length > 0;
    }
    case 'file-system-edited':
      return own(change.after) !== true;
    case 'volume-edited':
      return (
        change.before.shareable !== change.after.shareable ||
        (!change.before.protected && change.after.protected)
      );
    case 'group-edited':
      return (
        change.before.extent !== change.after.extent || change.before.layout.kind !== change.after.layout.kind
      );
    default:
      return !needsNoHands.has(change.kind);
  }
}

describe('the order of any branch', () => {
  it('counts from one, and has every step wait for earlier ones alone', () => {
    property(({ steps }) => {
      steps.forEach(({ number, after, snag }, index) => {
        expect(number).toBe(index + 1);
        expect(after.every((each) => each >= 1 && each < number)).toBe(true);
        // What waits in a circle says so; groups that swap members, or go to another site, may.
        if (snag?.kind === 'circle') expect(snag.steps.every((each) => each > number)).toBe(true);
      });
    });
  });

  it('carries out every change that needs hands exactly once, and no other', () => {
    property(({ base, head, changes, steps }) => {
      const carried = steps.flatMap(({ carriesOut }) => carriesOut).sort((a, b) => a - b);
      expect(carried).toEqual(changes.flatMap((each, index) => (needsHands(each, base, head) ? index : [])));
    });
  });

  it('detaches nothing that is mounted or active, and no boot volume of a server that runs', () => {
    property(({ base, steps }) => {
      for (const step of steps) {
        const [, volume = '', name = ''] = /^Detach volume (\S+) from (\S+)\.$/.exec(step.does) ?? [];
        const server = base.servers.get(name);
        // What waits in a circle says so.
        if (server?.power !== 'running' || step.snag?.kind === 'circle') continue;
        const first = [...waitsFor(steps, step)].flatMap((number) => steps[number - 1] ?? []);
        const done = first.filter((each) => each.server === name).map(({ does }) => does);
        const mount = base.volumes.get(volume)?.fileSystem?.mount;
        const group = base.groupOf.get(volume)?.name;
        if (server.boot === volume) {
          expect(done).toContainEqual(expect.stringMatching(`^Shut ${name} down`));
          const start = steps.find(({ does }) => does.startsWith(`Start ${name},`));
          expect(start?.number ?? Number.POSITIVE_INFINITY).toBeGreaterThan(step.number);
        } else if (mount !== undefined) {
          expect(done).toContainEqual(expect.stringMatching(`^Unmount ${mount};`));
        } else if (group !== undefined) {
          expect(done).toContainEqual(
            expect.stringMatching(`^(Deactivate volume group ${group}\\.|Move the data on ${volume} to)`),
          );
        }
        const later = steps.filter((each) => each.number > step.number && each.server === name);
        for (const { does, subject } of later) {
          if (subject.name.split(':')[0] === volume)
            expect(does).not.toMatch(/^(Unmount|Stop whatever uses)/);
        }
      }
    });
  });

  it('deletes last of all that is done with a volume, and after its backup is checked', () => {
    property(({ steps }) => {
      for (const step of steps) {
        if (step.subject.kind !== 'volume' || !step.does.startsWith('Delete ')) continue;
        for (const other of steps) {
          if (other === step || other.subject.kind !== 'volume' || other.subject.name !== step.subject.name)
            continue;
          expect(other.number).toBeLessThan(step.number);
        }
      }
    });
  });

  it('attaches a volume anywhere only when it is off where it was', () => {
    property(({ steps }) => {
      for (const step of steps) {
        if (!/^Attach volume /.test(step.does)) continue;
        const elsewhere = steps.filter(
          (each) => /^Detach volume /.test(each.does) && each.subject.name === step.subject.name,
        );
        const first = waitsFor(steps, step);
        expect(elsewhere.filter(({ number }) => !first.has(number))).toEqual([]);
      }
    });
  });

  it('deletes at the provider when all else is done', () => {
    property(({ steps }) => {
      const deletes = steps.filter(({ does }) => /^Delete (volume|server|the old)/.test(does)).length;
      for (const { number, does } of steps) {
        if (number > steps.length - deletes) expect(does).toMatch(/^Delete /);
      }
    });
  });

  it('destroys nothing but after a check of a backup, and never without cautions', () => {
    property(({ steps }) => {
      for (const step of steps) {
        if (!step.destroys) continue;
        expect(step.cautions).not.toEqual([]);
        const first = [...waitsFor(steps, step)].flatMap((number) => steps[number - 1] ?? []);
        expect(first.some(({ does }) => /has a recent enough backup/.test(does))).toBe(true);
      }
    });
  });

  it('makes nothing from within a guest on what that guest starts from', () => {
    const making = /^(make-(group|file-system|anew)|join-group|lay-out-anew)/;
    let made = 0;
    property(({ head, steps }) => {
      for (const { procedure, subject, server, words, does } of steps) {
        if (!making.test(procedure)) continue;
        const boot = head.servers.get(server ?? '')?.boot;
        const [name = ''] = subject.name.split(':');
        const on = procedure.startsWith('join-group')
          ? [words.volume]
          : (head.groups.get(name)?.members ?? [name]);
        // A logical volume of its own, in a group that main has, leaves the rest of the disk as it is.
        const isOwn = /^make-(file-system|anew)$/.test(procedure) && head.groups.has(name);
        if (boot !== undefined && !isOwn)
          expect([does, on]).not.toEqual([does, expect.arrayContaining([boot])]);
        made++;
      }
    });
    expect(made).toBeGreaterThan(20);
  });

  it('leaves no word of a procedure unfilled', () => {
    property(({ steps }) => {
      for (const { does, why } of steps) expect(`${does} ${why ?? ''}`).not.toMatch(/\{\w+\}|undefined/);
    });
  });

  it('is the same whatever the order of the files and what is in them', () => {
    fc.assert(
      fc.property(change, fc.nat({ max: 3 }), ([before, after], shift) => {
        const spread = { to: (_name: string, own: number) => own + shift, backwards: true };
        const straight = branch(filesOf(before), filesOf(after));
        const turned = branch(filesOf(before, spread), filesOf(after, spread));
        expect(turned.steps).toEqual(straight.steps);
      }),
      { numRuns: 100 },
    );
  });
});

describe('a plan', () => {
  it('breaks a circle where it comes upon it, and says so', () => {
    const plan = new Plan<string>();
    plan.want('a', 'a', ['b']);
    plan.want('b', 'b', ['a']);
    expect(plan.inOrder()).toEqual([
      { key: 'b', act: 'b', after: [], atOdds: ['a'] },
      { key: 'a', act: 'a', after: ['b'], atOdds: [] },
    ]);
  });

  it('keeps every wait of acts wanted in any order', () => {
    const acts = fc.uniqueArray(fc.tuple(fc.nat({ max: 30 }), fc.array(fc.nat({ max: 30 }))), {
      selector: ([key]) => key,
    });
    fc.assert(
      fc.property(acts, (wanted) => {
        const plan = new Plan<number>();
        for (const [key, waits] of wanted)
          plan.want(`${key}`, key, waits.filter((each) => each < key).map(String));
        const placed = plan.inOrder();
        const where = new Map(placed.map(({ act }, index) => [act, index]));
        expect(where.size).toBe(wanted.length);
        for (const [key, waits] of wanted) {
          for (const each of waits) {
            if (each < key && where.has(each)) expect(where.get(each)).toBeLessThan(where.get(key) ?? -1);
          }
        }
        expect(placed.flatMap(({ atOdds }) => atOdds)).toEqual([]);
      }),
    );
  });
});

describe('two groups that trade a member each', () => {
  const groups = (layout: string, [g, h]: readonly [string, string]): Files => ({
    'storage/all.yaml': `servers: { s: { power: running, guest: linux-lvm } }
volumes:
${['a', 'b', 'c', 'd'].map((name) => `  ${name}: { size: 40 GiB, tier: bulk }\n`).join('')}attachments:
${['a', 'b', 'c', 'd'].map((name) => `  - { volume: ${name}, server: s }\n`).join('')}volume-groups:
  g: { members: [${g}]${layout}, file-systems: { /g: { size: 30 GiB, type: xfs } } }
  h: { members: [${h}], file-systems: { /h: { size: 30 GiB, type: xfs } } }
`,
  });

  it.each([
    ['', false],
    // Neither two images nor two stripes lie on one volume, whatever the sum of their extents.
    [', layout: mirrored, copies: 2', true],
    [', layout: striped, stripes: 2', true],
  ])('let one go before the other comes only where what is left holds all%s: %s', (layout, waits) => {
    const { steps } = branch(groups(layout, ['a, b', 'c, d']), groups(layout, ['a, c', 'b, d']));
    const at = (kind: RegExp, volume: string): number =>
      steps.findIndex(({ procedure, words }) => kind.test(procedure) && words.volume === volume);
    const [leaves, joins] = [at(/^leave/, 'b'), at(/^join/, 'c')];
    expect([leaves, joins]).not.toContain(-1);
    const leaving = steps[leaves];
    if (leaving === undefined) throw new Error('nothing leaves');
    expect(waitsFor(steps, leaving).has(joins + 1)).toBe(waits);
  });
});

describe('a group made of volumes that nobody holds', () => {
  it('waits for one that comes from another site', () => {
    const volumes = (site: string, group: string): Files => ({
      'storage/all.yaml': `volumes:
  a: { size: 40 GiB, tier: bulk, site: north-quay }
  b: { size: 40 GiB, tier: bulk, site: ${site} }
${group}`,
    });
    const { steps } = branch(
      volumes('south-quay', ''),
      volumes('north-quay', 'volume-groups: { g: { members: [a, b] } }\n'),
    );
    const made = steps.find(({ key }) => key === 'make-group g');
    const copied = steps.find(({ key }) => key === 'copy-across b');
    expect(made?.after).toContain(copied?.number);
  });
});

describe('a volume that its server runs from, and that is to take over a full group there', () => {
  const files = (power: string, boot: string, member: string): Files => ({
    'storage/all.yaml': `servers: { s: { power: ${power}, guest: linux-lvm${boot} } }
volumes: { a: { size: 40 GiB, tier: bulk }, root: { size: 40 GiB, tier: bulk } }
attachments: [{ volume: ${member}, server: s }]
volume-groups: { g: { members: [${member}], file-systems: { /g: { size: 30 GiB, type: xfs } } } }
`,
  });

  it('is free once the server stands still, and then nothing is done in its guest: a circle', () => {
    const { steps } = branch(files('running', ', boot: root', 'a'), files('stopped', '', 'root'));
    const joined = steps.find(({ key }) => key === 'join g root');
    const stopped = steps.find(({ key }) => key === 'stop s');
    const snags = steps.flatMap(({ snag, number }) => (snag === undefined ? [] : [{ snag, number }]));
    expect(snags).toHaveLength(1);
    const [only] = snags;
    expect([joined?.number, stopped?.number]).toContain(only?.number);
    expect(only?.snag.kind).toBe('circle');
  });
});

describe('a full group that goes to another site and has a member changed there', () => {
  const at = (site: string, held: string, members: string): Files => ({
    'storage/all.yaml': `servers: { s: { site: south-quay, power: running, guest: linux-lvm } }
volumes:
${['a', 'b', 'c'].map((name) => `  ${name}: { size: 40 GiB, tier: bulk, site: ${site} }\n`).join('')}attachments: [${held}]
volume-groups: { g: { members: [${members}], file-systems: { /g: { size: 70 GiB, type: xfs } } } }
`,
  });
  const everyone = ['a', 'b', 'c'].map((volume) => `{ volume: ${volume}, server: s }`);
  const steps = (held: readonly string[]): readonly Step[] =>
    branch(at('north-quay', '', 'a, b'), at('south-quay', held.join(', '), 'b, c')).steps;

  it('goes there with all that it had, where the old member comes as well', () => {
    const all = steps(everyone);
    expect(all.flatMap(({ snag }) => snag ?? [])).toEqual([]);
    const named = (name: string): Step => {
      const found = all.find(({ key }) => key === name);
      if (found === undefined) throw new Error(`no step ${name}`);
      return found;
    };
    const first = waitsFor(all, named('leave g a'));
    for (const each of ['copy-across a', 'copy-across b', 'activate g s', 'join g c'])
      expect(first, each).toContain(named(each).number);
  });

  it('has its members apart where the old one is not attached there', () => {
    expect(steps(everyone.slice(1)).flatMap(({ snag }) => snag ?? [])).toContainEqual({
      kind: 'apart',
      isSure: true,
      group: 'g',
    });
  });
});

describe('a group on a server that stands still, whose only volume stays there while another takes the group elsewhere', () => {
  const files = (power: string, member: string, at: string): Files => ({
    'storage/all.yaml': `servers: { s: { power: ${power}, guest: linux-lvm }, t: { power: running, guest: linux-lvm } }
volumes: { a: { size: 40 GiB, tier: bulk }, b: { size: 40 GiB, tier: bulk } }
attachments: [{ volume: a, server: s }, { volume: b, server: ${at} }]
volume-groups: { g: { members: [${member}], file-systems: { /g: { size: 30 GiB, type: xfs } } } }
`,
  });

  it('is forgotten by that server before it starts, or it would wait for what is not there', () => {
    const { steps } = branch(files('stopped', 'a', 's'), files('running', 'b', 't'));
    const forgotten = steps.find(({ key }) => key === 'fstab volume-group g /g s');
    const started = steps.find(({ key }) => key === 'start s');
    if (started === undefined) throw new Error('s is not started');
    expect(waitsFor(steps, started)).toContain(forgotten?.number);
  });
});

describe('a member that leaves its group where that goes, and is to be shared with where it came from', () => {
  const files = (attachments: string, members: string, shareable: boolean): Files => ({
    'storage/all.yaml': `servers: { s: { power: stopped }, t: { power: running } }
volumes: { a: { size: 40 GiB, tier: bulk }, b: { size: 40 GiB, tier: bulk, shareable: ${shareable} } }
attachments: [${attachments}]
volume-groups: { g: { members: [${members}], file-systems: { /g: { size: 30 GiB, type: xfs } } } }
`,
  });

  it('comes along with all of the group, and goes back once it is out of it', () => {
    const { steps } = branch(
      files('{ volume: a, server: s }, { volume: b, server: s }', 'a, b', false),
      files('{ volume: a, server: t }, { volume: b, server: s }, { volume: b, server: t }', 'a', true),
    );
    const named = (name: string): Step => {
      const found = steps.find(({ key }) => key === name);
      if (found === undefined) throw new Error(`no step ${name}`);
      return found;
    };
    expect(waitsFor(steps, named('detached g'))).toContain(named('detach b s').number);
    expect(waitsFor(steps, named('attach b s'))).toContain(named('leave g b').number);
  });
});
