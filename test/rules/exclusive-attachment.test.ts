import { describe, expect, it } from 'vitest';
import { gannetPoint, onlyFinding, standing, underRule } from '../estate/builder.ts';

const rule = 'rule: exclusive-attachment';

const shared = (
  volume: string,
  holders: readonly string[],
  names = ['scanner', 'plotter', 'press'],
): string => `
servers: { ${names.map((name) => `${name}: {}`).join(', ')} }
volumes:
  plates-1: { size: 40 GiB, tier: bulk, ${volume} }
attachments: [ ${holders.map((server) => `{ volume: plates-1, server: ${server} }`).join(', ')} ]
`;
const xfs = 'file-system: { mount: /plates, type: xfs }';
const gfs2 = 'file-system: { mount: /plates, type: gfs2 }';
const limited = {
  files: {
    'prices/2026.yaml': (gannetPoint['prices/2026.yaml'] ?? '').replace(
      'rate: "0.045", per: GiB-month',
      'rate: "0.045", per: GiB-month, servers-a-volume: 2',
    ),
  },
};

describe('one volume on two servers', () => {
  it('destroys an ordinary file system', async () => {
    const judgement = await underRule(rule, shared(xfs, ['scanner']), shared(xfs, ['scanner', 'plotter']));
    expect(judgement.verdict).toBe('fail');
    expect(onlyFinding(judgement)).toMatchObject({
      message: 'volume plates-1 is attached to 2 servers at once (plotter, scanner), and it is not shareable',
      advice:
        'To share it, declare it shareable and give it a cluster-aware file system (gfs2, ocfs2); otherwise detach it from all servers but one, where nothing on it is mounted any more.',
    });
  });

  it('shareable as the provider may call it, an ordinary file system on it is none the safer', async () => {
    const after = shared(`shareable: true, ${xfs}`, ['scanner', 'plotter']);
    expect(onlyFinding(await underRule(rule, shared(xfs, ['scanner']), after)).message).toContain(
      'its file system /plates (xfs) is not cluster-aware',
    );
  });

  it('shareable and with no file system declared, nobody can tell', async () => {
    const after = shared('shareable: true', ['scanner', 'plotter']);
    expect(onlyFinding(await underRule(rule, shared('', ['scanner']), after))).toMatchObject({
      message: expect.stringContaining('no cluster-aware file system'),
      // What is done already is not advised.
      advice: expect.stringMatching(
        /^To share it, declare the cluster-aware file system .* that is on it; otherwise/,
      ),
    });
  });

  it('put right: shareable, with a cluster-aware file system', async () => {
    const after = shared(`shareable: true, ${gfs2}`, ['scanner', 'plotter']);
    expect((await underRule(rule, shared(gfs2, ['scanner']), after)).verdict).toBe('pass');
  });

  it('put right: handed over, so that it is on one at a time', async () => {
    expect((await underRule(rule, shared(xfs, ['scanner']), shared(xfs, ['plotter']))).verdict).toBe('pass');
  });
});

it("holds at its tier's limit of servers and breaks one above", async () => {
  const cluster = `shareable: true, ${gfs2}`;
  const two = shared(cluster, ['scanner', 'plotter']);
  expect((await underRule(rule, shared(cluster, ['scanner']), two, limited)).verdict).toBe('pass');
  const three = shared(cluster, ['scanner', 'plotter', 'press']);
  expect(onlyFinding(await underRule(rule, two, three, limited)).message).toContain('its tier bulk allows 2');
});

it('looks at the file systems of the group that a volume is a member of', async () => {
  const grouped = (type: string): string =>
    `${shared('shareable: true', ['scanner', 'plotter'])}volume-groups:\n  plates: { members: [plates-1], file-systems: { /plates: { size: 30 GiB, type: ${type} } } }\n`;
  expect((await underRule(rule, '', grouped('ocfs2'))).verdict).toBe('pass');
  expect((await underRule(rule, '', grouped('ext4'))).verdict).toBe('fail');
});

describe('already wrong on main', () => {
  const wrong = shared(xfs, ['scanner', 'plotter']);

  it('does not fail a change that leaves it be', async () => {
    expect(standing(await underRule(rule, wrong, `# tidied\n${wrong}`))).toEqual([
      'stands: error unchanged volume plates-1',
    ]);
  });

  it('fails one that adds a third server', async () => {
    const worse = await underRule(rule, wrong, shared(xfs, ['scanner', 'plotter', 'press']));
    expect(standing(worse)).toEqual(['fails: error updated volume plates-1']);
  });

  it('fails one that swaps a server for another, for the new one has not mounted it yet', async () => {
    expect((await underRule(rule, wrong, shared(xfs, ['scanner', 'press']))).verdict).toBe('fail');
  });

  it('fails one that takes a safeguard away on the same servers', async () => {
    const three = ['scanner', 'plotter', 'press'];
    const before = shared(`shareable: true, ${gfs2}`, three);
    const after = shared(`shareable: true, ${xfs}`, three);
    expect(standing(await underRule(rule, before, after, limited))).toEqual([
      'fails: error updated volume plates-1',
    ]);
  });

  it('does not fail one that only renames a server', async () => {
    const renamed = wrong
      .replaceAll('plotter', 'drawer')
      .replace('drawer: {}', 'drawer: { formerly: plotter }');
    expect(standing(await underRule(rule, wrong, renamed))).toEqual([
      'stands: error unchanged volume plates-1',
    ]);
  });

  it('passes one that mends it, and shows it as gone', async () => {
    const mended = await underRule(rule, wrong, shared(xfs, ['scanner']));
    expect(mended.verdict).toBe('pass');
    expect(mended.findings.map(({ baselineState }) => baselineState)).toEqual(['absent']);
  });
});
