import { expect, it } from 'vitest';
import { judged, pack, standing } from '../estate/builder.ts';

const volume = (size: string): string =>
  `volumes:\n  plates-1: { size: ${size}, tier: bulk, team: imagery }\n`;
const limit = (amount: string) =>
  pack(
    'rule: policy-apart',
    `name: imagery-limit, rule: max-monthly-spend, where: { teams: [imagery] }, limit: "${amount}"`,
  );
const main = { ...limit('100.00'), 'storage/imagery.yaml': volume('40 GiB') };
const grown = { 'storage/imagery.yaml': volume('60 GiB') };

it('a looser policy beside a storage change is refused, and named', async () => {
  const judgement = await judged(main, { ...limit('200.00'), ...grown });
  expect(standing(judgement)).toEqual(['fails: error new branch head']);
  expect(judgement.reasons).toEqual([
    'policy-apart: the branch changes storage (1 change) and loosens the policy that applies to it: imagery-limit (limit)',
  ]);
});

it('apart, each passes', async () => {
  expect((await judged(main, limit('200.00'))).verdict).toBe('pass');
  expect((await judged(main, grown)).verdict).toBe('pass');
});

it('a tighter policy may come with a storage change', async () => {
  expect((await judged(main, { ...limit('50.00'), ...grown })).verdict).toBe('pass');
});

it('a server that raises its own slots is no storage change beside them, and is one beside anything else looser', async () => {
  const sites = { 'ullage.yaml': 'currency: EUR\nsites:\n  north-quay: { attachment-slots: 8 }\n' };
  const server = (more: string) => ({
    'storage/scanner.yaml': `site: north-quay\nservers:\n  scanner: { power: stopped${more} }\n`,
  });
  const before = { ...limit('100.00'), ...sites, ...server('') };
  const raised = server(', attachment-slots: 9');
  expect((await judged(before, raised)).verdict).toBe('pass');
  expect((await judged(before, { ...raised, ...limit('200.00') })).reasons).toEqual([
    'policy-apart: the branch changes storage (1 change) and loosens the policy that applies to it: imagery-limit (limit), scanner (attachment-slots)',
  ]);
});

it('what cannot be told to be tighter is taken for looser', async () => {
  const each = pack(
    'rule: policy-apart',
    'name: imagery-limit, rule: max-monthly-spend, each: team, limit: "100.00"',
  );
  expect((await judged(main, { ...each, ...grown })).verdict).toBe('fail');
});

it('a rule taken out, a waiver brought along, the rule itself switched off: all looser', async () => {
  const waiver = {
    'waivers/a.yaml':
      'waivers:\n  - { rule: growth-step, subject: plates-1, reason: import, approved-by: head, from: 2026-11-01, until: 2026-12-31 }\n',
  };
  expect((await judged(main, { ...pack('rule: policy-apart'), ...grown })).verdict).toBe('fail');
  expect((await judged(main, { ...waiver, ...grown })).verdict).toBe('fail');
  expect((await judged(main, { ...pack('rule: policy-apart, enabled: false'), ...grown })).verdict).toBe(
    'fail',
  );
});

it('advises what works where a new server brings more slots than its site has', async () => {
  const sites = {
    'ullage.yaml': 'currency: EUR\nsites:\n  north-quay: { attachment-slots: 4 }\n',
    'storage/imagery.yaml': 'site: north-quay\nvolumes:\n  plates-1: { size: 10 GiB, tier: bulk }\n',
  };
  const server = (more: string) => ({
    'storage/scanner.yaml': `site: north-quay\nservers:\n  scanner: { power: stopped${more} }\n`,
  });
  const before = { ...limit('100.00'), ...sites };
  const [finding] = (await judged(before, server(', attachment-slots: 9'))).findings;
  expect(finding?.advice).toBe(
    'Leave the attachment-slots of scanner as main has them in this branch, or out where the server is new, and raise them in a later one that changes nothing else.',
  );
  expect((await judged(before, server(''))).verdict).toBe('pass');
  expect((await judged({ ...before, ...server('') }, server(', attachment-slots: 9'))).verdict).toBe('pass');
});
