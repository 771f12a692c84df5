import { describe, expect, it } from 'vitest';
import { onlyFinding, standing, underRule } from '../estate/builder.ts';

const rule = 'rule: boot-volume-stays';

const estate = (scanner: string, plotter = 'power: running', more = ''): string => `
servers:
  scanner: { ${scanner} }
  plotter: { ${plotter} }
volumes:
  root: { size: 50 GiB, tier: steady }
  spare: { size: 50 GiB, tier: steady }
${more}`;

describe('the boot volume of a running server', () => {
  it('is not detached: the guest would hang with writes in flight', async () => {
    const judgement = await underRule(rule, estate('boot: root'), estate(''));
    const { message, advice } = onlyFinding(judgement);
    expect(judgement.verdict).toBe('fail');
    expect(message).toBe('scanner starts from root, which would be detached while scanner runs');
    expect(advice).toContain('Stop the server first (power: stopped)');
  });

  it('is not swapped for another', async () => {
    expect((await underRule(rule, estate('boot: root'), estate('boot: spare'))).verdict).toBe('fail');
  });

  it('is not moved to another server', async () => {
    const { message } = onlyFinding(await underRule(rule, estate('boot: root'), estate('', 'boot: root')));
    expect(message).toContain('would be moved to plotter while scanner runs');
  });

  it('is not deleted', async () => {
    const without =
      'servers:\n  scanner: {}\n  plotter: {}\nvolumes:\n  spare: { size: 50 GiB, tier: steady }\n';
    expect((await underRule(rule, estate('boot: root'), without)).reasons.join()).toContain(
      'would be deleted',
    );
  });

  it('is not moved to another site', async () => {
    const at = (site: string) => estate('boot: root').replace('root: { ', `root: { site: ${site}, `);
    expect((await underRule(rule, at('north-quay'), at('south-quay'))).reasons.join()).toContain(
      'moved to site south-quay',
    );
  });

  it('is not demoted to a volume like any other', async () => {
    const attached = estate('', '', 'attachments: [ { volume: root, server: scanner } ]\n');
    expect(standing(await underRule(rule, estate('boot: root'), attached))).toEqual([
      'fails: error new server scanner',
    ]);
  });

  it('may grow, change its tier and have a new name', async () => {
    const renamed = estate('boot: root2').replace(
      'root: { size: 50 GiB',
      'root2: { formerly: root, size: 60 GiB',
    );
    expect(
      (await underRule(rule, estate('boot: root'), renamed.replace('tier: steady', 'tier: brisk'))).verdict,
    ).toBe('pass');
  });
});

describe('what only has another name is told of formerly before anything is stopped', () => {
  it('the server', async () => {
    const renamed = estate('boot: root').replace('scanner:', 'reader:');
    const { advice } = onlyFinding(await underRule(rule, estate('boot: root'), renamed));
    expect(advice).toMatch(
      /^If reader is the same server under another name, write formerly: scanner on it; nothing is stopped, detached or deleted then\. Stop/,
    );
    const formerly = renamed.replace('boot: root', 'boot: root, formerly: scanner');
    expect((await underRule(rule, estate('boot: root'), formerly)).findings).toEqual([]);
  });

  it('the volume', async () => {
    const renamed = estate('boot: master').replace('  root:', '  master:');
    const { advice } = onlyFinding(await underRule(rule, estate('boot: root'), renamed));
    expect(advice).toMatch(/^If master is the same volume under another name, write formerly: root on it/);
  });

  it('and a server that goes, with none like it, is not', async () => {
    const other = estate('boot: root').replace('scanner: {', 'reader: { site: south-quay,');
    expect(onlyFinding(await underRule(rule, estate('boot: root'), other)).advice).toMatch(/^Stop/);
  });
});

describe('the boot volume of a running server is not written over where it is', () => {
  const booting = (rest: string, power = 'running'): string =>
    `servers:\n  scanner: { power: ${power}, boot: root }\nvolumes:\n  root: { size: 50 GiB, tier: steady${rest}`;

  it.each([
    [
      'by a group made on it',
      booting(' }\nvolume-groups:\n  all: { members: [root] }\n'),
      'making the volume group all',
    ],
    [
      'by a file system made on it',
      booting(', file-system: { mount: /, type: ext4 } }\n'),
      'making a file system',
    ],
  ])('%s', async (_story, after, said) => {
    const { message, level } = onlyFinding(await underRule(rule, booting(' }\n'), after));
    expect([level, message]).toEqual(['error', expect.stringContaining(`would be overwritten by ${said}`)]);
  });

  it('by a group that takes it in beside its own members', async () => {
    const grouped = (members: string): string =>
      `${booting(' }\n')}  other: { size: 50 GiB, tier: steady }\nvolume-groups:\n  all: { members: [${members}] }\n`;
    expect(onlyFinding(await underRule(rule, grouped('other'), grouped('other, root'))).message).toContain(
      'would be overwritten as it joins the volume group all while scanner runs',
    );
  });

  it('and that of a stopped one is for other rules to guard', async () => {
    const after = booting(' }\nvolume-groups:\n  all: { members: [root] }\n', 'stopped');
    expect((await underRule(rule, booting(' }\n', 'stopped'), after)).verdict).toBe('pass');
  });
});

describe('put right', () => {
  it('a server stopped before, or by this change, lets its boot volume go', async () => {
    expect((await underRule(rule, estate('boot: root'), estate('power: stopped'))).verdict).toBe('pass');
    expect(
      (await underRule(rule, estate('boot: root, power: stopped'), estate('power: stopped'))).verdict,
    ).toBe('pass');
    expect((await underRule(rule, estate('boot: root, power: stopped'), estate(''))).verdict).toBe('pass');
  });

  it('a stopped server that goes takes its boot volume with it, and a running one is stopped first', async () => {
    const gone =
      'servers:\n  plotter: {}\nvolumes:\n  root: { size: 50 GiB, tier: steady }\n  spare: { size: 50 GiB, tier: steady }\n';
    expect((await underRule(rule, estate('boot: root, power: stopped'), gone)).verdict).toBe('pass');
    const running = await underRule(rule, estate('boot: root'), gone);
    expect([running.verdict, onlyFinding(running).message]).toEqual([
      'fail',
      expect.stringContaining('and scanner deleted'),
    ]);
  });
});

it('two running servers that start from one volume are each told', async () => {
  const both = estate('boot: root', 'boot: root');
  const neither = estate('', '');
  const judgement = await underRule(rule, both, neither);
  expect(judgement.findings.map(({ message }) => message.slice(0, 7)).sort()).toEqual(['plotter', 'scanner']);
});

it('a server without a boot volume on main is none of this change when it gets one', async () => {
  expect((await underRule(rule, estate(''), estate('boot: root'))).findings).toEqual([]);
});
