/** What the steps wait for because a server has one file system at a mount point: umount(8), mount(8), util-linux 2.38.1. */
import { describe, expect, it } from 'vitest';
import { compareEstates } from '../../src/change/compare.ts';
import { runbookOf } from '../../src/runbook/runbook.ts';
import type { Step } from '../../src/runbook/step.ts';
import { estateOf } from '../estate/builder.ts';
import { waitsFor } from './waits-for.ts';

interface Held {
  readonly at: string;
  readonly on?: string;
  readonly type?: string;
  readonly gib?: number;
}

/** Volumes with a file system each, on two servers that run. */
const estate = (volumes: Readonly<Record<string, Held | readonly [Held, string]>>): string => {
  const each = Object.entries(volumes).map(([name, held]) => {
    const [first, second] = Array.isArray(held) ? held : [held, undefined];
    return { name, ...first, second };
  });
  return `servers: { scan: { power: running }, far: { power: running } }
volumes:
${each
  .map(
    ({ name, at, type = 'ext4', gib = 40, second }) =>
      `  ${name}: { size: ${gib} GiB, tier: bulk, shareable: ${second !== undefined}, file-system: { mount: ${at}, type: ${type} } }\n`,
  )
  .join('')}attachments: [${each
    .flatMap(({ name, on, second }) =>
      [on, second].flatMap((server) =>
        server === undefined ? [] : `{ volume: ${name}, server: ${server} }`,
      ),
    )
    .join(', ')}]\n`;
};

const steps = (before: string, after: string): readonly Step[] => {
  const [base, head] = [estateOf(before), estateOf(after)];
  return runbookOf(compareEstates(base, head), base, head);
};

const numberOf = (all: readonly Step[], key: string): number => {
  const found = all.find((step) => step.key === key);
  if (found === undefined) throw new Error(`no step ${key} among ${all.map((step) => step.key).join('; ')}`);
  return found.number;
};

/** Whether one waits for the other, near or far. */
function waits(all: readonly Step[], key: string, earlier: string): boolean {
  const step = all[numberOf(all, key) - 1];
  return step !== undefined && waitsFor(all, step).has(numberOf(all, earlier));
}

describe('a mount point that another file system takes', () => {
  it('is free before that is mounted, or umount takes the new one off and the old is detached in use', () => {
    const all = steps(
      estate({ plates: { at: '/plates', on: 'scan' } }),
      estate({ plates: { at: '/plates' }, charts: { at: '/plates', on: 'scan' } }),
    );
    expect(waits(all, 'mount volume charts /plates scan', 'unmount volume plates /plates scan')).toBe(true);
  });

  it('is free where two on one server swap theirs', () => {
    const all = steps(
      estate({ a: { at: '/x', on: 'scan' }, b: { at: '/y', on: 'scan' } }),
      estate({ a: { at: '/y', on: 'scan' }, b: { at: '/x', on: 'scan' } }),
    );
    expect(waits(all, 'mount volume a /y scan', 'unmount volume b /y scan')).toBe(true);
    expect(waits(all, 'mount volume b /x scan', 'unmount volume a /x scan')).toBe(true);
  });

  it('is free where two servers exchange what they have there', () => {
    const all = steps(
      estate({ a: { at: '/x', on: 'scan' }, b: { at: '/x', on: 'far' } }),
      estate({ a: { at: '/x', on: 'far' }, b: { at: '/x', on: 'scan' } }),
    );
    expect(waits(all, 'mount volume a /x far', 'unmount volume b /x far')).toBe(true);
    expect(waits(all, 'mount volume b /x scan', 'unmount volume a /x scan')).toBe(true);
  });
});

describe('a file system below another', () => {
  const both = (on: string) => estate({ a: { at: '/data', on }, b: { at: '/data/sub', on } });

  it('is unmounted before that, and mounted after it', () => {
    const all = steps(both('scan'), both('far'));
    expect(waits(all, 'unmount volume a /data scan', 'unmount volume b /data/sub scan')).toBe(true);
    expect(waits(all, 'mount volume b /data/sub far', 'mount volume a /data far')).toBe(true);
  });

  it('is unmounted for as long as it takes where only the other goes', () => {
    const all = steps(
      both('scan'),
      estate({ a: { at: '/data', on: 'far' }, b: { at: '/data/sub', on: 'scan' } }),
    );
    expect(waits(all, 'unmount volume a /data scan', 'unmount volume b /data/sub scan')).toBe(true);
    expect(waits(all, 'mount volume b /data/sub scan', 'unmount volume a /data scan')).toBe(true);
  });

  it('is not hidden by one that is new above it', () => {
    const all = steps(
      estate({ b: { at: '/data/sub', on: 'scan' } }),
      estate({ a: { at: '/data', on: 'scan' }, b: { at: '/data/sub', on: 'scan' } }),
    );
    expect(waits(all, 'mount volume a /data scan', 'unmount volume b /data/sub scan')).toBe(true);
    expect(waits(all, 'mount volume b /data/sub scan', 'mount volume a /data scan')).toBe(true);
  });

  it('is mounted only after one that is made anew above it, also where a server that stood still starts', () => {
    const held = (type: string, power: string) =>
      estate({ a: { at: '/data', on: 'scan', type }, b: { at: '/data/sub', on: 'scan' } }).replace(
        'scan: { power: running }',
        `scan: { power: ${power} }`,
      );
    const all = steps(held('ext4', 'stopped'), held('xfs', 'running'));
    expect(waits(all, 'start scan', 'fstab volume b /data/sub scan')).toBe(true);
    expect(waits(all, 'mount volume b /data/sub scan', 'mount volume a /data scan')).toBe(true);
  });

  it('is none where only the names begin alike', () => {
    const all = steps(
      estate({ b: { at: '/data2', on: 'scan' } }),
      estate({ a: { at: '/data', on: 'scan' }, b: { at: '/data2', on: 'scan' } }),
    );
    expect(all.map(({ key }) => key)).not.toContain('unmount volume b /data2 scan');
  });
});

describe('a file system that several servers share', () => {
  const shared = (type: string, gib = 40) => estate({ s: [{ at: '/s', on: 'scan', type, gib }, 'far'] });

  it('is mounted on all of them again when it is made anew', () => {
    const all = steps(shared('gfs2'), shared('ocfs2'));
    for (const server of ['scan', 'far'])
      expect(waits(all, `mount volume s /s ${server}`, 'make volume s /s')).toBe(true);
  });

  it('is mounted on all of them when it is new', () => {
    const bare = shared('gfs2').replace(/, file-system: \{.*?\}/, '');
    const all = steps(bare, shared('gfs2'));
    for (const server of ['scan', 'far'])
      expect(waits(all, `mount volume s /s ${server}`, 'make volume s /s')).toBe(true);
  });

  it('is grown with no other server having it mounted, unless its type knows of them', () => {
    const all = steps(shared('ext4'), shared('ext4', 60));
    const [home, other] = ['far', 'scan'];
    expect(all.find(({ procedure }) => procedure === 'grow-mounted')?.server).toBe(home);
    expect(waits(all, 'grow-system volume s /s', `unmount volume s /s ${other}`)).toBe(true);
    expect(waits(all, `mount volume s /s ${other}`, 'grow-system volume s /s')).toBe(true);
    const clustered = steps(shared('gfs2'), shared('gfs2', 60)).map(({ procedure }) => procedure);
    expect(clustered).toContain('grow-mounted');
    expect(clustered).not.toContain('unmount');
  });

  it('in a volume group is known elsewhere as it was, which is said before it is mounted there again', () => {
    const grouped = (gib: number): string =>
      `${estate({}).replace('attachments: []', '')}  p: { size: 40 GiB, tier: bulk, shareable: true }
attachments: [{ volume: p, server: scan }, { volume: p, server: far }]
volume-groups: { plates: { members: [p], file-systems: { /p: { size: ${gib} GiB, type: ext4 } } } }
`;
    const extended = steps(grouped(20), grouped(30)).find(
      ({ procedure }) => procedure === 'extend-logical-volume',
    );
    expect(extended?.server).toBe('far');
    expect(extended?.cautions.join()).toContain('scan has volume group plates as well');
  });

  it('shows by whom its volume is still held when one lets go of it', () => {
    const alone = estate({ s: { at: '/s', on: 'scan', type: 'gfs2' } }).replace(
      'shareable: false',
      'shareable: true',
    );
    const seen = (all: readonly Step[]) => all.find(({ procedure }) => procedure === 'detach')?.seen;
    expect(seen(steps(shared('gfs2'), alone))).toBe('The provider shows s as attached to scan only.');
    expect(seen(steps(alone, alone.replace(/attachments: .*/, '')))).toBe(
      'The provider shows s as attached to nothing.',
    );
    const none = alone.replace(/attachments: .*/, '');
    expect(seen(steps(shared('gfs2'), none))).toBe('The provider shows s as no longer attached to far.');
  });

  it('is taken from all of them before a smaller volume takes its place, and comes back to all', () => {
    const all = steps(shared('gfs2'), shared('gfs2', 20));
    for (const server of ['scan', 'far']) {
      expect(waits(all, 'fill s', `detach s ${server}`)).toBe(true);
      expect(waits(all, `detach s ${server}`, `unmount volume s /s ${server}`)).toBe(true);
      expect(waits(all, 'delete-old s', `attach s ${server}`)).toBe(true);
      expect(waits(all, 'delete-old s', `mount volume s /s ${server}`)).toBe(true);
    }
  });
});

it('a volume that is made smaller and goes to another server is copied before it is unmounted, and seen in use before the old one is deleted', () => {
  const all = steps(estate({ s: { at: '/s', on: 'scan' } }), estate({ s: { at: '/s', on: 'far', gib: 20 } }));
  expect(waits(all, 'unmount volume s /s scan', 'replaced s')).toBe(true);
  expect(waits(all, 'delete-old s', 'mount volume s /s far')).toBe(true);
});
