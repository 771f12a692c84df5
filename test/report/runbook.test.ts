import { describe, expect, it } from 'vitest';
import { judgementReport } from '../../src/report/json.ts';
import { reportMarkdown } from '../../src/report/markdown.ts';
import { reportText } from '../../src/report/text.ts';
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

describe('the order of steps', () => {
  it('follows the changes, numbered, each with where it is done', async () => {
    const text = reportText(await grown(), screen);
    expect(text.indexOf('Order of steps (4)')).toBeGreaterThan(text.indexOf('Changes (1)'));
    expect(text).toContain('1  at the provider: Grow volume plate-scanner-root from 50 GiB to 60 GiB.');
    expect(text).toContain('2  in the guest of plate-scanner: Have the device');
    expect(text).toContain('To be done after the merge.');
    expect(text).toMatch(/lsblk .*\(lsblk\(8\), util-linux 2\.38\.1\)/);
  });

  it('of a branch that fails says first that none of it is to be done now', async () => {
    const text = reportText(await mixed(), screen);
    const [, section = ''] = text.split(/Order of steps \(\d+\)\n/);
    expect(section.trimStart()).toMatch(/^The verdict is fail: do none of this now\./);
    expect(reportMarkdown(await mixed())).toContain('do none of this now');
  });

  it('marks what destroys, and names the cautions with it', async () => {
    const text = reportText(await mixed(), screen);
    const [, step = ''] = /(\d+, destroys .*Delete volume stray-plates[\s\S]*?)\n {2}\S/.exec(text) ?? [];
    expect(step).toMatch(/caution +See the cautions above\./);
  });

  it('is left out where nothing changes', async () => {
    expect(reportText(await still(), screen)).not.toContain('Order of steps');
  });

  it('is whole in JSON, and tells which changes each step carries out', async () => {
    const { runbook, changes } = judgementReport(await mixed());
    expect(runbook.map(({ number }) => number)).toEqual(runbook.map((_step, index) => index + 1));
    const done = runbook.find(({ does }) => does.startsWith('Delete volume stray-plates'));
    expect(done?.carriesOut.map((each) => changes[each]?.kind)).toEqual(['volume-deleted']);
  });
});
