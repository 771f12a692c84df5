import { expect, it } from 'vitest';
import { gannetPoint, judged, pack, said, unjudgedFiles } from '../estate/builder.ts';

const volumes = (rest: string) => ({
  'storage/imagery.yaml': `volumes:\n  plates-1: { size: 40500 MiB, tier: bulk${rest} }\n`,
  'prices/2026.yaml':
    'from: 2026-01-01\ncurrency: EUR\ntiers:\n  bulk: { rate: "0.045", per: GiB-month, step: 1 GiB }\n',
});

const scoped = pack('rule: tier-bounds, where: { teams: [imagery] }');

it('what leaves a scope as bad as it was is not told as mended', async () => {
  const main = { ...scoped, ...volumes(', team: imagery') };
  const given = await judged(main, volumes(', team: ledger'));
  expect(given.verdict).toBe('pass');
  expect(said(given)).toEqual([
    expect.stringMatching(
      /^error unchanged plates-1: .* in the scope of this rule, which the branch takes it out of$/,
    ),
  ]);
  const renamed = await judged(main, {
    'storage/imagery.yaml':
      'volumes:\n  master: { size: 40500 MiB, tier: bulk, team: ledger, formerly: plates-1 }\n',
  });
  expect(said(renamed)).toEqual([expect.stringMatching(/^error unchanged master: /)]);
});

it('what is mended as it leaves is told as that', async () => {
  const main = { ...scoped, ...volumes(', team: imagery') };
  const mended = await judged(main, {
    'storage/imagery.yaml': 'volumes:\n  plates-1: { size: 40 GiB, tier: bulk, team: ledger }\n',
  });
  expect(mended.findings.map(({ baselineState }) => baselineState)).toEqual(['absent']);
});

it('a renamed group, and a renamed server, are one row of headroom each', async () => {
  const office = (group: string, server: string, formerly = false) => ({
    'ullage.yaml': 'currency: EUR\nsites:\n  north-quay: { attachment-slots: 8 }\n',
    'storage/imagery.yaml': `site: north-quay
servers:
  ${server}: { power: running${formerly ? ', formerly: scanner' : ''} }
volumes:
  plates-1: { size: 40 GiB, tier: bulk }
attachments:
  - { volume: plates-1, server: ${server} }
volume-groups:
  ${group}: { members: [plates-1]${formerly ? ', formerly: plates' : ''} }
`,
  });
  const { headroom } = await judged(office('plates', 'scanner'), office('masters', 'bench', true));
  const names = headroom.map(({ before, after }) => [before?.subject.name, after?.subject.name]);
  expect(names).toEqual([
    ['scanner', 'bench'],
    ['plates', 'masters'],
  ]);
});

it('a slip in the team or the site of a whole file is placed at that line', async () => {
  const file = 'volumes:\n  plates-1: { size: 40 GiB, tier: bulk }\nteam: imagry\n';
  const { problems } = await unjudgedFiles(
    { ...gannetPoint, 'ullage.yaml': 'currency: EUR\nteams: [imagery]\n' },
    {
      ...gannetPoint,
      'ullage.yaml': 'currency: EUR\nteams: [imagery]\n',
      'storage/imagery.yaml': file,
    },
  );
  expect(problems[0]).toMatchObject({ place: { line: 3, column: 1 } });
});

it('another price of a server type is placed at that type', async () => {
  const list = (running: string) => ({
    'prices/2026.yaml': `from: 2026-01-01\ncurrency: EUR\ntiers:\n  bulk: { rate: "0.045", per: GiB-month }\nserver-types:\n  small: { running: "${running}" }\n`,
  });
  const { policyChanges } = await judged(list('0.031'), list('0.040'));
  expect(policyChanges.map(({ place }) => [place?.line, place?.column])).toEqual([[6, 3]]);
});
