import { expect, it } from 'vitest';
import { onlyFinding, standing, underRule } from '../estate/builder.ts';

const rule = 'rule: same-site';
const across = (volumeSite: string, server = 'scanner', formerly = ''): string => `
servers: { ${server}: { site: north-quay${formerly} } }
volumes: { plates-1: { size: 40 GiB, tier: bulk${volumeSite} } }
attachments: [ { volume: plates-1, server: ${server} } ]
`;
const here = across(', site: north-quay');
const there = across(', site: south-quay');

it('a volume is attached at its own site', async () => {
  expect((await underRule(rule, '', here)).verdict).toBe('pass');
});

it('a volume attached across sites would be refused half-way through the change', async () => {
  const judgement = await underRule(rule, here, there);
  expect(judgement.verdict).toBe('fail');
  expect(onlyFinding(judgement).message).toBe(
    'volume plates-1 is at south-quay and attached to scanner, which is at north-quay',
  );
});

it('a volume that names no site is held against none', async () => {
  expect((await underRule(rule, '', across(''))).verdict).toBe('pass');
});

it('a boot volume counts as attached', async () => {
  const boot =
    'servers: { scanner: { site: north-quay, boot: root } }\nvolumes: { root: { size: 5 GiB, tier: bulk, site: south-quay } }\n';
  expect((await underRule(rule, '', boot)).verdict).toBe('fail');
});

it('already across sites on main does not fail, also when the server has a new name', async () => {
  expect(standing(await underRule(rule, there, `# tidied\n${there}`))).toEqual([
    'stands: error unchanged volume plates-1',
  ]);
  const renamed = across(', site: south-quay', 'reader', ', formerly: scanner');
  expect(standing(await underRule(rule, there, renamed))).toEqual([
    'stands: error unchanged volume plates-1',
  ]);
});

it('a second attachment across sites is a finding of its own', async () => {
  const second = there
    .replace('servers: { ', 'servers: { plotter: { site: north-quay }, ')
    .replace('attachments: [ ', 'attachments: [ { volume: plates-1, server: plotter }, ');
  expect(standing(await underRule(rule, there, second))).toEqual([
    'fails: error new volume plates-1',
    'stands: error unchanged volume plates-1',
  ]);
});
