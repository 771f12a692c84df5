import { describe, expect, it } from 'vitest';
import { compareEstates } from '../../src/change/compare.ts';
import { runbookOf } from '../../src/runbook/runbook.ts';
import type { Step } from '../../src/runbook/step.ts';
import { estateOf, judged } from '../estate/builder.ts';

const runbook = (before: string, after: string): readonly Step[] => {
  const [base, head] = [estateOf(before), estateOf(after)];
  return runbookOf(compareEstates(base, head), base, head);
};

const told = (steps: readonly Step[]): readonly string[] =>
  steps.map(({ at, server, does }) => `${at}${at === 'guest' ? ` of ${server ?? 'nobody'}` : ''}: ${does}`);

/** Where the step stands that begins so; a test that fails where there is none, or more than one. */
function at(steps: readonly Step[], start: RegExp): Step {
  const found = steps.filter(({ does }) => start.test(does));
  const [only] = found;
  if (only === undefined || found.length > 1)
    throw new Error(`${found.length} steps ${start}:\n${told(steps).join('\n')}`);
  return only;
}

/** Whether a step waits for another, near or far. */
const waits = (steps: readonly Step[], step: Step, other: Step): boolean =>
  step.after.some((number) => {
    const each = steps[number - 1];
    return each !== undefined && (each === other || waits(steps, each, other));
  });

/** Each waits for the one before it: no luck of the order. */
const order = (steps: readonly Step[], ...starts: readonly RegExp[]): void => {
  const named = starts.map((start) => at(steps, start));
  named.forEach((step, index) => {
    const before = named[index - 1];
    if (before !== undefined) {
      expect(waits(steps, step, before), `${step.does} waits for ${before.does}`).toBe(true);
      expect(step.number).toBeGreaterThan(before.number);
    }
  });
};

/** One stands before the other, though it could be otherwise. */
const sooner = (steps: readonly Step[], ...starts: readonly RegExp[]): void => {
  const numbers = starts.map((start) => at(steps, start).number);
  expect(numbers).toEqual([...numbers].sort((a, b) => a - b));
};

const office = `
servers:
  plate-scanner: { boot: plate-scanner-root, guest: linux-lvm }
  plate-archive: { guest: linux-lvm }
volumes:
  plate-scanner-root: { size: 50 GiB, tier: steady }
  plates-1: { size: 40 GiB, tier: bulk }
  plates-2: { size: 40 GiB, tier: bulk }
  plates-3: { size: 40 GiB, tier: bulk }
  drafts: { size: 10 GiB, tier: bulk, protected: true, file-system: { mount: /drafts, type: ext4 } }
attachments:
  - { volume: plates-1, server: plate-scanner }
  - { volume: plates-2, server: plate-scanner }
  - { volume: plates-3, server: plate-scanner }
  - { volume: drafts, server: plate-scanner }
volume-groups:
  plates: { extent: 64 MiB, members: [plates-1, plates-2, plates-3], file-systems: { /plates: { size: 100 GiB, type: xfs } } }
`;

const beforeTheGroup = office.replace(/volume-groups:[\s\S]*/, '').replace(/.*plates-\d.*\n/g, '');

const changed = (from: string | RegExp, to: string, text = office): string => {
  const after = text.replace(from, to);
  if (after === text) throw new Error(`nothing reads ${from}`);
  return after;
};

describe('growth', () => {
  it('of a boot disk is coaxed through the guest layer by layer, or it is paid for and not usable', () => {
    const steps = runbook(office, changed('root: { size: 50 GiB', 'root: { size: 60 GiB'));
    expect(told(steps)).toEqual([
      'provider: Grow volume plate-scanner-root from 50 GiB to 60 GiB.',
      'guest of plate-scanner: Rescan the device of plate-scanner-root until the guest shows 60 GiB.',
      'guest of plate-scanner: If plate-scanner-root is partitioned, grow the partition that is to be larger, keeping its start; it must be the last one.',
      "guest of plate-scanner: Grow what is on plate-scanner-root, layer by layer: first the volume manager's parts, if any, then the file system.",
    ]);
    expect(steps.map(({ after }) => after)).toEqual([[], [1], [2], [3]]);
    expect(steps[0]?.cautions.join()).toContain('cannot be made smaller again');
    expect(steps[1]?.examples.map(({ command }) => command)).toContain(
      'echo 1 > /sys/class/block/DEVICE_NAME/device/rescan',
    );
  });

  it('is seen in the guest by its bytes, which tools show whatever unit is declared', () => {
    const inGB = (size: number) => changed('root: { size: 50 GiB', `root: { size: ${size} GB`);
    const seen = runbook(inGB(50), inGB(60))[1];
    expect(seen?.seen).toBe('The guest shows 60 GB, 60000000000 bytes, for plate-scanner-root.');
    expect(seen?.examples.map(({ command }) => command)).toContain(
      'lsblk --bytes --output NAME,SIZE,TYPE,MOUNTPOINTS',
    );
  });

  it('of a file system is taken back as its type can be, and said to be for good where it cannot', () => {
    const of = (type: string, size: number): string =>
      `servers: { scan: {} }\nvolumes:\n  p: { size: ${size} GiB, tier: bulk, file-system: { mount: /p, type: ${type} } }\nattachments: [{ volume: p, server: scan }]\n`;
    const back = (type: string) =>
      runbook(of(type, 40), of(type, 60)).find(({ procedure }) => procedure.startsWith('grow-mounted'))?.back;
    expect(back('xfs')).toBe(
      'A file system of type xfs is not made smaller: /p is made as small as it was only as a new one, from its backup.',
    );
    expect(back('ext4')).toBe('Make it as small as it was, while it is unmounted.');
    expect(back('btrfs')).toBe('Make it as small as it was.');
  });

  it('of three members is shown by the group, in whole extents, before the file system is built on it', () => {
    const steps = runbook(
      office,
      changed('size: 100 GiB', 'size: 120 GiB', office.replaceAll('{ size: 40 GiB', '{ size: 50 GiB')),
    );
    // 50 GiB with 64 MiB extents gives 799: what the open-source volume manager (lvm2 2.03.16) reports of a real group.
    expect(at(steps, /^Check that volume group/).does).toContain(`${3 * 799} extents of 64 MiB`);
    expect(at(steps, /^Check that volume group/).after).toHaveLength(3);
    order(
      steps,
      /^Grow plates-3 as a member/,
      /^Check that volume group/,
      /^Extend the logical/,
      /^Grow the file system/,
    );
  });

  it('of an xfs is done mounted, of an ext2 unmounted and mounted again', () => {
    const grown = (type: string): readonly Step[] => {
      const before = office.replace('type: xfs', `type: ${type}`);
      return runbook(before, changed('size: 100 GiB', 'size: 110 GiB', before));
    };
    expect(told(grown('xfs')).join('\n')).not.toMatch(/nmount \/plates/);
    expect(at(grown('xfs'), /^Grow the file system/).does).toContain('while it is mounted');
    order(grown('ext2'), /^Extend the logical/, /unmounted\.$/, /^Mount/);
    order(grown('ext2'), /^Unmount/, /unmounted\.$/);
  });

  it('of a stopped server is seen when it next starts, and of a detached volume when a server holds it', () => {
    const cold = office.replace('plate-scanner: {', 'plate-scanner: { power: stopped,');
    expect(told(runbook(cold, changed('root: { size: 50', 'root: { size: 60', cold)))).toContainEqual(
      expect.stringMatching(/^guest of plate-scanner: When plate-scanner next starts: if/),
    );
    const loose = 'volumes: { a: { size: 1 GiB, tier: bulk, file-system: { mount: /a, type: xfs } } }\n';
    expect(told(runbook(loose, loose.replace('1 GiB', '2 GiB')))).toEqual([
      'provider: Grow volume a from 1 GiB to 2 GiB.',
      expect.stringMatching(/^guest of .*: Once a server holds a: grow the file system \/a/),
    ]);
  });
});

describe('a server that is created with its boot volume', () => {
  it('is not told to make the root file system that its guest runs on', () => {
    const booted =
      'servers: { s: { power: running, boot: r, guest: linux } }\nvolumes: { r: { size: 20 GiB, tier: bulk, file-system: { mount: /, type: ext4 } } }\n';
    const steps = told(runbook('volumes: {}\n', booted));
    expect(steps.filter((step) => /Create a file system|Mount/.test(step))).toEqual([]);
    expect(steps.at(-1)).toContain('Check that the file system / on r is ext4');
  });
});

describe('a member that is replaced by a smaller one', () => {
  it('is no copy to go back to once its data has been moved off it', () => {
    const steps = runbook(office, office.replace('plates-1: { size: 40 GiB', 'plates-1: { size: 30 GiB'));
    order(
      steps,
      /^Add the smaller plates-1/,
      /^Check that volume group plates has the smaller/,
      /^Delete the old/,
    );
    expect(steps.map(({ why }) => why).join()).not.toContain('quickest way back');
  });
});

describe('three volumes grouped, with a file system', () => {
  it('are created, attached and seen before they are a group, and a group before anything lies in it', () => {
    const steps = runbook(beforeTheGroup, office);
    order(
      steps,
      /^Create volume plates-1/,
      /^Attach volume plates-1/,
      /^Check that the new device of plates-1/,
      /^Create volume group plates on plates-1, plates-2 and plates-3/,
      /^Check that volume group/,
      /^Create a logical volume of 100 GiB/,
      /^Create a file system, xfs/,
      /^Mount \/plates/,
    );
    expect(steps.some(({ destroys }) => destroys)).toBe(false);
  });

  it('overwrite nothing unnoticed: a volume that was there is backed up, its file system out of use, first', () => {
    const steps = runbook(
      office,
      changed(
        /drafts: \{.*\}\n/,
        'drafts: { size: 10 GiB, tier: bulk }\n',
        office.replace('plates-3]', 'plates-3, drafts]'),
      ),
    );
    order(steps, /^Check that drafts has/, /^Add drafts to volume group plates; any data/);
    order(steps, /^Unmount \/drafts/, /^Add drafts to volume group plates; any data/);
    expect(at(steps, /^Add drafts to/)).toMatchObject({ destroys: true });
  });

  it('are a group that destroys where they were there before it, and each of them is backed up first', () => {
    const loose = office.replace(/volume-groups:[\s\S]*/, '');
    const steps = runbook(loose, office);
    const made =
      /^Create volume group plates on plates-1, plates-2 and plates-3, .*; any data on them is overwritten/;
    for (const name of ['plates-1', 'plates-2', 'plates-3'])
      order(steps, new RegExp(`^Check that ${name} has a recent enough backup`), made);
    expect(at(steps, made)).toMatchObject({ destroys: true });
    expect(at(steps, made).cautions).not.toEqual([]);
  });
});

describe('a whole group handed over', () => {
  const steps = runbook(
    office,
    office.replace(/(volume: plates-\d, server: )plate-scanner/g, '$1plate-archive'),
  );

  it('is out of use, exported and detached whole before the first member is attached', () => {
    order(
      steps,
      /^Stop whatever uses \/plates on plate-scanner/,
      /^Unmount/,
      /^Deactivate/,
      /as exported/,
      /^Detach volume plates-1/,
      /^Check that all 3 members of volume group plates are detached/,
      /^Attach volume plates-1/,
      /^Check that all 3 members of volume group plates are present/,
      /^Activate/,
      /^Mount/,
    );
    const whole = at(steps, /are detached/).number;
    for (const { number, does } of steps) {
      if (does.startsWith('Detach')) expect(number).toBeLessThan(whole);
      if (does.startsWith('Attach')) expect(number).toBeGreaterThan(whole);
    }
  });

  it('tells a Linux guest its usual commands, each with its source, with the names that are declared filled in', () => {
    const commands = steps.flatMap(({ examples }) => examples);
    expect(commands).toContainEqual({ command: 'vgexport plates', source: 'vgexport(8), lvm2 2.03.16' });
    expect(commands.map(({ command }) => command)).toContain('mount /dev/plates/LOGICAL_VOLUME /plates');
    expect(steps.filter((step) => step.at === 'provider').flatMap(({ examples }) => examples)).toEqual([]);
  });

  it('gives a guest of another kind the same order in words alone', () => {
    const elsewhere = office.replaceAll('linux-lvm', 'windows');
    const others = runbook(
      elsewhere,
      elsewhere.replace(/(volume: plates-\d, server: )plate-scanner/g, '$1plate-archive'),
    );
    expect(others.map(({ at: where, after }) => [where, after])).toEqual(
      steps.map(({ at: where, after }) => [where, after]),
    );
    expect(others.flatMap(({ examples }) => examples)).toEqual([]);
    expect(at(others, /^Rescan the disks, check that plates-1/).server).toBe('plate-archive');
  });

  it('from a stopped server needs nothing unmounted there', () => {
    const cold = office.replace('plate-scanner: {', 'plate-scanner: { power: stopped,');
    const moved = runbook(
      cold,
      cold.replace(/(volume: plates-\d, server: )plate-scanner/g, '$1plate-archive'),
    );
    expect(moved.some((step) => step.at === 'guest' && step.server === 'plate-scanner')).toBe(false);
    expect(told(moved).join('\n')).not.toContain('exported');
  });
});

describe('a volume retired', () => {
  const steps = runbook(office, office.replace(/.*drafts.*\n/g, ''));

  it('is backed up, out of use, detached and not missed before it is deleted, last of all', () => {
    expect(told(steps)).toEqual([
      'check: Check that drafts has a recent enough backup, and that a restore of it has been tried.',
      'guest of plate-scanner: Stop whatever uses /drafts on plate-scanner.',
      'guest of plate-scanner: Unmount /drafts; if it is not coming back to plate-scanner, remove it from fstab as well.',
      'provider: Detach volume drafts from plate-scanner.',
      'provider: Remove the protection of drafts against deletion.',
      'check: Leave drafts unattached until it is certain that nobody needs it.',
      'provider: Delete volume drafts, 10 GiB, for good.',
    ]);
    order(steps, /^Stop what/, /^Unmount/, /^Detach/, /^Leave drafts unattached/, /^Delete/);
    order(steps, /^Check that drafts has/, /^Delete/);
    order(steps, /^Remove the protection/, /^Delete/);
    const last = steps.at(-1);
    expect(last?.destroys).toBe(true);
    expect(last?.cautions.join()).toMatch(
      /backup that you have restored from.*change control.*provider's documentation/,
    );
  });
});

describe('what must wait for its server', () => {
  it('swaps a boot volume while the server is stopped, and makes the new one before', () => {
    const steps = runbook(
      office,
      changed(
        '  plate-scanner-root: {',
        '  plate-scanner-2: { size: 60 GiB, tier: steady }\n  plate-scanner-root: {',
        changed('boot: plate-scanner-root', 'boot: plate-scanner-2'),
      ),
    );
    sooner(steps, /^Create volume/, /^Shut plate-scanner down/);
    order(steps, /^Create volume/, /^Attach volume plate-scanner-2/);
    order(
      steps,
      /^Shut plate-scanner down/,
      /^Detach volume plate-scanner-root/,
      /^Attach volume plate-scanner-2/,
      /^Set plate-scanner to start from/,
      /^Start plate-scanner/,
    );
  });

  it("takes a server's volumes away before the server, and unmounts before it shuts it down", () => {
    const steps = runbook(
      office,
      office
        .replace(/.*plate-scanner: .*\n/, '')
        .replace(/.*server: plate-scanner.*\n/g, '')
        .replace('attachments:', 'attachments: []'),
    );
    order(
      steps,
      /^Unmount \/plates/,
      /^Shut plate-scanner/,
      /^Detach volume plate-scanner-root/,
      /^Delete server/,
    );
    expect(at(steps, /^Delete server/).cautions).not.toEqual([]);
  });
});

describe('what needs no hands', () => {
  it.each([
    ['another team', changed('plates-1: {', 'plates-1: { team: ledger,')],
    ['a reason', changed('plates-1: {', 'plates-1: { reason: the spring survey,')],
  ])('has no step: %s', (_what, after) => {
    expect(runbook(office, after)).toEqual([]);
  });

  it('is a rename: a name to look for, and nothing to carry out', () => {
    const steps = runbook(
      office,
      office.replaceAll('drafts', 'sketches').replace('sketches: {', 'sketches: { formerly: drafts,'),
    );
    expect(steps.filter(({ at: where }) => where === 'provider')).toEqual([]);
    expect(at(steps, /shows the name drafts/).at).toBe('check');
  });

  it('is what is only being declared as it lies there: it is looked at, and nothing else', () => {
    const bare = office.replace(/volume-groups:[\s\S]*/, '');
    const declared = office
      .replace('plates: { extent', 'plates: { existing: true, extent')
      .replace('type: xfs', 'type: xfs, existing: true');
    expect(runbook(bare, declared).map(({ at: where, does }) => [where, does])).toEqual([
      [
        'guest',
        'Check that this is there as declared: volume group plates on plates-1, plates-2 and plates-3 (1917 extents of 64 MiB, ≈119.81 GiB in all), with /plates (xfs, 100 GiB).',
      ],
    ]);
  });
});

it('comes with the judgement', async () => {
  const storage = 'storage/imagery.yaml';
  const judgement = await judged(
    { [storage]: office },
    { [storage]: changed('root: { size: 50', 'root: { size: 60') },
  );
  expect(judgement.runbook.map(({ number }) => number)).toEqual([1, 2, 3, 4]);
  expect((await judged({ [storage]: office }, {})).runbook).toEqual([]);
});

describe('how a file system is made', () => {
  const scanner = (keys: string): string => `
servers:
  plate-scanner: { guest: linux }
volumes:
  plates-1: { size: 40 GiB, tier: bulk, file-system: { mount: /plates, ${keys} } }
attachments:
  - { volume: plates-1, server: plate-scanner }
`;

  it('is told where it is made, with the flags of its tool', () => {
    const steps = runbook('', scanner('type: ext4, reserve: 0.01, block-size: 2 KiB'));
    const made = at(
      steps,
      /^Create a file system, ext4, with a reserve of 1 % and blocks of 2 KiB, for \/plates/,
    );
    expect(made.examples.map(({ command }) => command)).toEqual(['mke2fs -t ext4 -m 1 -b 2048 DEVICE']);
  });

  it('a reserve is set as it lies, and nothing is lost', () => {
    const steps = runbook(scanner('type: ext4'), scanner('type: ext4, reserve: 0.015'));
    expect(told(steps)).toEqual([
      'guest of plate-scanner: Set the reserved blocks of /plates, ext4, to 1.5 %.',
    ]);
    expect(steps[0]?.destroys ?? false).toBe(false);
  });

  it('a block is not: the file system is made anew after a check of its backup, and filled from it', () => {
    const steps = runbook(scanner('type: ext4'), scanner('type: ext4, block-size: 1 KiB'));
    order(steps, /^Check that .*backup/, /^Reformat \/plates on plates-1/, /^Restore what \/plates held/);
  });
});

describe('a server that is declared without volume groups, and has one', () => {
  it('is told which guest has the commands, once', () => {
    const guest = (name: string): string =>
      `servers: { scan: { guest: ${name} } }\nvolumes: { p: { size: 40 GiB, tier: bulk } }\nattachments: [{ volume: p, server: scan }]\n`;
    const group =
      'volume-groups: { plates: { members: [p], file-systems: { /p: { size: 30 GiB, type: xfs } } } }\n';
    const whys = (name: string) =>
      runbook('{}\n', guest(name) + group).flatMap(({ why }) => (why?.includes('guest:') ? why : []));
    expect(whys('linux')).toEqual([
      'scan says guest: linux, for which there is no command; for guest: linux-lvm there is.',
    ]);
    expect(whys('linux-lvm')).toEqual([]);
    expect(whys('other')).toEqual([]);
  });
});
