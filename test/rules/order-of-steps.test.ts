import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { judgedBranch, judgeFiles, packOf, said } from '../estate/builder.ts';
import { pairs } from '../simulator/estates.ts';

const rule = '{ rule: order-of-steps }';

const found = async (main: string, branch: string, entry = rule) =>
  said(await judgedBranch({ main, branch, entries: [entry] }));

/** A server whose group lies on one of two volumes, and is full. */
const group = (member: number, slots: number, more = ''): string => `team: imagery
servers: { scanner: { power: running, attachment-slots: ${slots} } }
volumes:
  plates-1: { size: 40 GiB, tier: bulk }
  plates-2: { size: 40 GiB, tier: bulk }
${more}volume-groups:
  plates: { extent: 64 MiB, members: [plates-${member}], file-systems: { /plates: { size: 30 GiB, type: xfs } } }
attachments: [ { volume: plates-${member}, server: scanner } ]
`;

/** Two full groups on one server, each with one member. */
const two = (plates: string, prints: string): string => `team: imagery
servers: { scanner: { power: running } }
volumes: { one: { size: 40 GiB, tier: bulk }, other: { size: 40 GiB, tier: bulk } }
volume-groups:
  plates: { extent: 64 MiB, members: [${plates}], file-systems: { /plates: { size: 30 GiB, type: xfs } } }
  prints: { extent: 64 MiB, members: [${prints}], file-systems: { /prints: { size: 30 GiB, type: xfs } } }
attachments: [ { volume: one, server: scanner }, { volume: other, server: scanner } ]
`;

describe('what no order of steps carries out', () => {
  it('lets a group change its only volume where its server has a slot to spare, and not where it has none', async () => {
    expect(await found(group(1, 2), group(2, 2))).toEqual([]);
    expect(await found(group(1, 1), group(2, 1))).toEqual([
      expect.stringMatching(
        /^error new plates-2: no order of the steps carries this out, since all attachment slots of scanner are taken by then and none can be freed before: step \d+, Attach volume plates-2 to scanner$/,
      ),
    ]);
  });

  it('says plainly what is short where there is too little room afterwards, too', async () => {
    const attached = (count: number) => {
      const names = Array.from({ length: count }, (_, index) => `p${index}`);
      return `team: imagery\nservers: { scanner: { power: running, attachment-slots: 2, site: north-quay } }\nvolumes: { ${names.map((name) => `${name}: { size: 40 GiB, tier: bulk, site: north-quay }`).join(', ')} }\nattachments: [ ${names.map((name) => `{ volume: ${name}, server: scanner }`).join(', ')} ]\n`;
    };
    const judged = (quota: string) =>
      judgedBranch({
        main: attached(2),
        branch: attached(3),
        entries: [rule],
        settings: `currency: EUR\nsites: { north-quay: { quota: { ${quota} } } }\n`,
      });
    const [slots, ...more] = (await judged('volumes: 9')).findings;
    expect(more).toEqual([]);
    expect(slots?.message).toMatch(
      /^server scanner has too few attachment slots for what is attached to it afterwards \(3 slots of 2 slots, 1 slot short\), so that this cannot be carried out: step \d+, Attach volume p2 to scanner$/,
    );
    expect(slots?.advice).toMatch(/^Attach fewer volumes to the server/);
    const quotas = (await judged('size: 100 GiB')).findings.map(({ message }) => message);
    expect(quotas).toContainEqual(
      expect.stringMatching(
        /^site north-quay has too low a quota for what is there afterwards \(120 GiB of 100 GiB, 20 GiB short\)/,
      ),
    );
  });

  it('names the steps of a circle: two full groups exchange their only members', async () => {
    const judgement = await judgedBranch({
      main: two('one', 'other'),
      branch: two('other', 'one'),
      entries: [rule],
    });
    const [finding, ...more] = judgement.findings;
    expect(more).toEqual([]);
    expect(finding?.message).toMatch(
      /^no order of the steps carries this out, since these wait for one another in a circle: (step \d+, [^;]+; ){3}step \d+, [^;]+$/,
    );
    for (const each of ['on one ', 'on other ', 'Add one to', 'Add other to'])
      expect(finding?.message).toContain(each);
    expect(finding?.advice).toMatch(/in two branches, with a spare volume or slot between/);
  });

  it('holds a site to its quota on the way, not only at both ends', async () => {
    const plates = (gib: number) =>
      `team: imagery\nvolumes: { plates: { size: ${gib} GiB, tier: bulk, site: north-quay } }\n`;
    const judged = (quota: string) =>
      judgedBranch({
        main: plates(40),
        branch: plates(30),
        entries: [rule],
        settings: `currency: EUR\nsites: { north-quay: { quota: { ${quota} } } }\n`,
      });
    for (const quota of ['volumes: 2', 'size: 70 GiB', 'volumes: 2, size: 70 GiB'])
      expect(said(await judged(quota))).toEqual([]);
    const full = await judged('volumes: 1, size: 70 GiB');
    expect(said(full)).toEqual([
      expect.stringMatching(
        /^error new plates: no order of the steps carries this out, since it goes beyond the quota of north-quay for the number of volumes by then and not enough can be freed before: step \d+, /,
      ),
    ]);
    expect(full.findings[0]?.advice).toMatch(/^Ask the provider for more quota for the time being, or /);
    expect(said(await judged('size: 69 GiB'))).toEqual([
      expect.stringContaining('quota of north-quay for the size of volumes'),
    ]);
  });

  it('says nothing of what went through with it on main already, nor of a branch about something else', async () => {
    expect(await found(two('other', 'one'), two('other', 'one'))).toEqual([]);
    const more = '  plates-3: { size: 1 GiB, tier: bulk }\n';
    expect(await found(group(1, 1), group(1, 1, more))).toEqual([]);
  });

  it('tells of each halt by itself, where a branch with one brings another', async () => {
    const also = (text: string, plates: string, prints: string) =>
      `${text.replace('servers: { ', 'servers: { press: { power: running }, ').replace('volumes:\n', 'volumes:\n  one: { size: 40 GiB, tier: bulk }\n  other: { size: 40 GiB, tier: bulk }\n').replace('volume-groups:\n', `volume-groups:\n  left: { extent: 64 MiB, members: [${plates}], file-systems: { /left: { size: 30 GiB, type: xfs } } }\n  right: { extent: 64 MiB, members: [${prints}], file-systems: { /right: { size: 30 GiB, type: xfs } } }\n`).replace('attachments: [ ', 'attachments: [ { volume: one, server: press }, { volume: other, server: press }, ')}`;
    const halts = await found(also(group(1, 1), 'one', 'other'), also(group(2, 1), 'other', 'one'));
    expect(halts).toHaveLength(2);
  });

  it('is told, not refused, as a warning, and only of what is in scope', async () => {
    const entry = (more: string) => `{ rule: order-of-steps${more} }`;
    const warned = await judgedBranch({
      main: group(1, 1),
      branch: group(2, 1),
      entries: [entry(', level: warning')],
    });
    expect(warned.verdict).toBe('pass');
    expect(warned.findings).toHaveLength(1);
    expect(await found(group(1, 1), group(2, 1), entry(', where: { teams: [ledger] }'))).toEqual([]);
    expect(await found(group(1, 1), group(2, 1), entry(', where: { teams: [imagery] }'))).toHaveLength(1);
  });

  it("is not told of another team's halt where the branch has something of one's own besides", async () => {
    const more = (size: number) => `  notes: { team: ledger, size: ${size} GiB, tier: bulk }\n`;
    const entry = (team: string) => `{ rule: order-of-steps, where: { teams: [${team}] } }`;
    const [main, branch] = [group(1, 1, more(1)), group(2, 1, more(2))];
    expect(await found(main, branch, entry('ledger'))).toEqual([]);
    expect(await found(main, branch, entry('imagery'))).toHaveLength(1);
  });

  it('is what the steps themselves say, whatever the branch', async () => {
    const policy = {
      'ullage.yaml': 'currency: EUR\n',
      'prices/2026.yaml':
        'from: 2026-01-01\ncurrency: EUR\ntiers:\n  bulk: { rate: "0.045", per: GiB-month }\n  steady: { rate: "0.10", per: GiB-month }\nserver-types:\n  small: { running: "0.031", stopped: "0.004" }\n  large: { running: "0.062", stopped: "0.008" }\n',
      'policies/storage.yaml': packOf([rule]),
    };
    let halts = 0;
    await fc.assert(
      fc.asyncProperty(pairs, async ([before, after]) => {
        const judgement = await judgeFiles({ ...policy, ...before }, { ...policy, ...after });
        if (judgement.verdict === 'not judged') return;
        const halted = judgement.runbook.filter(({ snag }) => snag !== undefined);
        expect(judgement.findings.map(({ subject }) => subject).sort(byName)).toEqual(
          halted.map(({ subject }) => subject).sort(byName),
        );
        expect(judgement.verdict).toBe(halted.length > 0 ? 'fail' : 'pass');
        halts += halted.length;
      }),
      { numRuns: 600 },
    );
    expect(halts).toBeGreaterThan(0);
  });
});

const byName = (a: { readonly name: string }, b: { readonly name: string }): number =>
  a.name < b.name ? -1 : a.name > b.name ? 1 : 0;
