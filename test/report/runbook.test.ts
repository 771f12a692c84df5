import { describe, expect, it } from 'vitest';
import { judgementReport } from '../../src/report/json.ts';
import { reportMarkdown } from '../../src/report/markdown.ts';
import { reportModel } from '../../src/report/model/judgement.ts';
import { reportText } from '../../src/report/report.ts';
import { gannetPoint, judged } from '../estate/builder.ts';
import { mixed, still } from './sample.ts';

const screen = { width: 10_000, colour: false };

const storage = 'storage/imagery.yaml';

const before = `
servers: { plate-scanner: { boot: plate-scanner-root, guest: linux-lvm } }
volumes: { plate-scanner-root: { size: 50 GiB, tier: steady } }
`;

const grown = () =>
  judged(
    { ...gannetPoint, 'policies/storage.yaml': 'rules: []\n', [storage]: before },
    { [storage]: before.replace('50 GiB', '60 GiB') },
  );

const plates = `
servers: { plate-scanner: { guest: linux-lvm } }
volumes:
  plates-1: { size: 40 GiB, tier: bulk }
  plates-2: { size: 40 GiB, tier: bulk }
  plates-3: { size: 40 GiB, tier: bulk }
attachments:
  - { volume: plates-1, server: plate-scanner }
  - { volume: plates-2, server: plate-scanner }
  - { volume: plates-3, server: plate-scanner }
volume-groups:
  plates: { extent: 64 MiB, members: [plates-1, plates-2, plates-3] }
`;

const threeGrown = () =>
  judged(
    { ...gannetPoint, 'policies/storage.yaml': 'rules: []\n', [storage]: plates },
    { [storage]: plates.replaceAll('40 GiB', '60 GiB') },
  );

describe('the order of steps', () => {
  it('follows the changes, numbered, each with where it is done', async () => {
    const text = reportText(await grown(), screen);
    expect(text.indexOf('Steps, in order (4)')).toBeGreaterThan(text.indexOf('Changes (1)'));
    expect(text).toContain('1  at the provider: Grow volume plate-scanner-root from 50 GiB to 60 GiB.');
    expect(text).toContain('2  in the guest of plate-scanner: Rescan the device');
    expect(text).toContain('Carry these steps out after the merge.');
  });

  it('comes last, after all that the verdict rests on', async () => {
    const judgement = await mixed();
    const titles = reportModel(judgement).sections.map(({ title }) => title);
    expect(titles).toContain('Waivers to review');
    expect(titles.at(-1)).toBe(`Steps, in order (${judgement.runbook.length})`);
  });

  it('shows the commands on a screen, and where each was read where there is room for it', async () => {
    const judgement = await grown();
    const text = reportText(judgement, screen);
    expect(text).toMatch(/^ +example +lsblk --bytes --output NAME,SIZE,TYPE,MOUNTPOINTS$/m);
    expect(text).not.toContain('util-linux');
    expect(reportMarkdown(judgement)).toMatch(/`lsblk [^`]*` \(.*util-linux.*2\.38\.1.*\)$/m);
    const sources = judgementReport(judgement).runbook.flatMap(({ examples }) =>
      examples.map(({ source }) => source),
    );
    expect(sources).toContain('lsblk(8), util-linux 2.38.1');
  });

  it('says once what three volumes grown alike have in common, at the first of them', async () => {
    const text = reportText(await threeGrown(), { ...screen, all: true });
    for (const said of ['A grown volume cannot be made smaller again', 'A guest keeps the size', 'pvresize'])
      expect(text.split(said)).toHaveLength(2);
    for (const [volume, grow, device, member] of [
      ['plates-2', 4, 5, 6],
      ['plates-3', 7, 8, 9],
    ] as const) {
      expect(text).toMatch(new RegExp(`^  ${grow}  .*Grow volume ${volume} .*\\n +as in +step 1$`, 'm'));
      expect(text).toMatch(new RegExp(`^  ${device}  .*device of ${volume} .*\\n +as in +step 2$`, 'm'));
      expect(text).toMatch(new RegExp(`^  ${member}  .*Grow ${volume} as .*\\n +as in +step 3$`, 'm'));
    }
  });

  it('says the cautions again at every step that loses data', async () => {
    const [, section = ''] = reportText(await mixed(), screen).split(/Steps, in order \(\d+\)\n/);
    const destroying = section.split(/\n {2}(?=\d)/).filter((step) => /^\d+ {2}loses data/.test(step));
    expect(destroying.length).toBeGreaterThan(1);
    for (const step of destroying) expect(step).toMatch(/caution +See the cautions above\./);
  });

  it('of a branch that fails says first that none of it is to be done now', async () => {
    const text = reportText(await mixed(), screen);
    const [, section = ''] = text.split(/Steps, in order \(\d+\)\n/);
    expect(section.trimStart()).toMatch(/^The verdict is fail: do not carry out any of these steps now\./);
    expect(reportMarkdown(await mixed())).toContain('do not carry out any of these steps now');
  });

  it('marks what loses data, and names the cautions with it', async () => {
    const text = reportText(await mixed(), screen);
    const [, step = ''] =
      /(\d+ {2}loses data .*Delete volume stray-plates[\s\S]*?)\n(?: {2}\S|$)/.exec(text) ?? [];
    expect(step).toMatch(/caution +See the cautions above\./);
  });

  it('is left out where nothing changes', async () => {
    expect(reportText(await still(), screen)).not.toContain('Steps, in order');
  });

  it('is whole in JSON, and tells which changes each step carries out', async () => {
    const { runbook, changes } = judgementReport(await mixed());
    expect(runbook.map(({ number }) => number)).toEqual(runbook.map((_step, index) => index + 1));
    const done = runbook.find(({ instruction }) => instruction.startsWith('Delete volume stray-plates'));
    expect(done?.carriesOut.map((each) => changes[each]?.kind)).toEqual(['volume-deleted']);
  });
});
