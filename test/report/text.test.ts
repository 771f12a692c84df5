import fc from 'fast-check';
import stringWidth from 'string-width';
import { beforeAll, describe, expect, it } from 'vitest';
import { cautions } from '../../src/base/wording.ts';
import type { Judged, NotJudged } from '../../src/policy/judgement.ts';
import { reportText, summaryLine } from '../../src/report/report.ts';
import { hostile } from './hostile.ts';
import {
  depthsGrown,
  edited,
  judged,
  limitRaised,
  mainFiles,
  platesGrown,
  unitsTidied,
  unjudged,
  withHostileText,
} from './sample.ts';

const plain = { width: 100, colour: false };

/** A text's words on one line, so that where it wraps does not matter. */
const unwrapped = (text: string): string => text.replace(/\s+/g, ' ');

const occurrences = (text: string, part: string): number => text.split(part).length - 1;

const brokenFiles = edited(
  edited(mainFiles, 'storage/imagery.yaml', 'plates-1: { size: 40 GiB', 'plates-1: { size: 40'),
  'storage/ledger.yaml',
  'tier: brisk',
  'tire: brisk',
);

let grown: Judged;
let tidied: Judged;
let raised: Judged;
let broken: NotJudged;
let wrecked: NotJudged;

beforeAll(async () => {
  grown = await judged(mainFiles, platesGrown);
  tidied = await judged(mainFiles, unitsTidied);
  raised = await judged(mainFiles, limitRaised);
  broken = await unjudged(mainFiles, brokenFiles);
  wrecked = await unjudged(brokenFiles, brokenFiles);
});

describe('the first lines', () => {
  it('of a growth that passes say so, what it costs before, after and more, and that no rule forbids it', () => {
    const [verdict = '', cost = '', todo = ''] = reportText(grown, { width: 400, colour: false }).split('\n');
    expect(verdict).toMatch(/^pass: no rule objects to 4 changes/);
    const { before, after, difference } = grown.cost;
    expect(difference?.toString()).toBe('1.35');
    expect(unwrapped(cost)).toContain(
      `${before.toFixed(2)} EUR a month on main, ${after.toFixed(2)} EUR after the merge: +1.35 EUR.`,
    );
    expect(todo).toContain('No rule forbids the merge.');
    expect(todo).not.toContain('policy');
  });

  it('of a slip from GiB to GB say that it fails, why, and what to do', () => {
    const lines = reportText(tidied, { width: 400, colour: false }).split('\n');
    expect(lines[0]).toMatch(/^fail: no-shrink: .*plate-scanner-root.*3,687,091,200 bytes fewer/);
    expect(lines[2]).toMatch(/^ {2}To do +Keep the size/);
  });

  it('of what could not be judged count the problems, or give the only one at once', async () => {
    expect(reportText(broken, plain)).toMatch(/^not judged: 2 problems to correct\n/);
    const once = unwrapped(reportText(broken, plain)).match(/size of plates-1 is 40/g);
    expect(once).toHaveLength(1);
    // The line that goes with the exit code has no report below it.
    expect(summaryLine(broken)).toMatch(/^not judged: storage\/imagery\.yaml:\d+:\d+: .*, and 1 more$/);
    const single = await unjudged(
      mainFiles,
      edited(mainFiles, 'storage/ledger.yaml', 'tier: brisk', 'tire: brisk'),
    );
    expect(unwrapped(reportText(single, plain))).toMatch(
      /^not judged: storage\/ledger\.yaml:\d+:\d+: tire is not/,
    );
  });

  it('count the changes that lose data, whatever the verdict', () => {
    expect(summaryLine(tidied)).toMatch(/; 1 change loses data that only a backup can restore$/);
    expect(
      summaryLine({ ...tidied, verdict: 'pass', reasons: ['no rule objects to 1 change', 'more'] }),
    ).toBe('pass: no rule objects to 1 change; 1 change loses data that only a backup can restore; more');
    expect(summaryLine(grown)).not.toContain('data');
  });

  it('leave a looser policy to those who answer for it, also where it passes', async () => {
    const todo = (judgement: Judged) =>
      reportText(judgement, { width: 2_000, colour: false })
        .split('\n')
        .find((each) => /^ {2}To do/.test(each));
    const policy = (from: string, to: string) =>
      judged(mainFiles, edited(mainFiles, 'policies/storage.yaml', from, to));
    const looser = await policy('limit: "70.00"', 'limit: "170.00"');
    expect(looser.verdict).toBe('pass');
    expect(todo(looser)).toMatch(
      /No rule forbids the merge\. It loosens the policy in 1 place; that is for whoever is responsible for the policy to decide\. See Policy changes\.$/,
    );
    const tighter = await policy('limit: "70.00"', 'limit: "69.00"');
    expect(todo(tighter)).not.toContain('policy');
    const unknown = await judged(
      mainFiles,
      edited(mainFiles, 'ullage.yaml', 'currency: EUR', 'currency: EUR\npaths: { readings: measured }'),
    );
    expect(todo(unknown)).toContain('It may loosen the policy in 1 place;');
    expect(unwrapped(reportText(unknown, plain))).toContain(
      'undetermined settings ullage.yaml, paths.readings',
    );
  });

  it('are the line that goes with the exit code', () => {
    for (const judgement of [grown, tidied, raised]) {
      const wide = reportText(judgement, { width: 2_000, colour: false });
      expect(wide.split('\n')[0]).toBe(summaryLine(judgement));
    }
    expect(summaryLine(raised)).toMatch(/, and 1 more finding$/);
  });

  it('say plainly that a first adoption was judged by the policy of its own branch', async () => {
    const first = await judged({}, mainFiles);
    const text = unwrapped(reportText(first, plain));
    expect(text).toContain("by the branch's own policy, because main has none yet");
    expect(text).toContain('Main has no policy yet, so the branch was judged by its own.');
  });
});

describe('what follows', () => {
  it('puts the findings that fail first, with rule, place and advice', () => {
    const text = reportText(tidied, plain);
    const place = tidied.findings[0]?.place;
    expect(text.indexOf('Findings that fail the change')).toBeGreaterThan(0);
    expect(text.indexOf('Findings that fail the change')).toBeLessThan(text.indexOf('Changes ('));
    expect(text).toContain(`at      ${place?.file}:${place?.line}:${place?.column}`);
  });

  it('says the cautions once where a change destroys, and not at all where none does', () => {
    expect(occurrences(unwrapped(reportText(tidied, plain)), cautions)).toBe(1);
    expect(unwrapped(reportText(tidied, plain))).toContain(
      '1 change loses data that only a backup can restore.',
    );
    expect(unwrapped(reportText(grown, plain))).not.toContain(cautions);
  });

  it('tells a branch that raised its own limit what its own policy would have said, and that it does not count', () => {
    const text = unwrapped(reportText(raised, plain));
    expect(text).toContain('looser rule imagery-limit, limit changes from 70.00 to 170.00');
    expect(text).toContain('Under the policy that the branch proposes, the verdict would be');
    expect(text).toContain('It does not count here');
  });

  it('holds each team against its limit', () => {
    const row = reportText(raised, { width: 140, colour: false })
      .split('\n')
      .find((line) => /^ {2}imagery /.test(line));
    const limit = raised.limits.find(({ subject }) => subject.name === 'imagery');
    expect(row).toContain(`${limit?.before.toFixed(2)} EUR`);
    expect(row).toContain(`${limit?.after.toFixed(2)} EUR`);
    expect(row).toContain('70.00 EUR');
    expect(row).toContain(`over by ${limit?.after.minus(70).toFixed(2)} EUR`);
  });

  it('shows the rooms that the change touches and counts the rest', () => {
    const text = unwrapped(reportText(grown, plain));
    expect(text).toContain('volume group plates');
    expect(text).toMatch(/\d+ other layers are unchanged, with at least a tenth free\./);
    expect(text).not.toContain('attachment slots of plate-scanner');
  });

  it('tells the three causes of a difference apart', () => {
    expect(unwrapped(reportText(grown, plain))).toContain(
      'The difference comes from changes in quantity (+1.35 EUR).',
    );
  });

  it('names waivers that have run out where the policy or their subject is touched, and counts them elsewhere', async () => {
    const named = 'expired the waiver of growth-step for depths-1 expired on 2026-06-01';
    const counted = '1 waiver has expired; see waivers/.';
    for (const [judgement, is, isNot] of [
      [grown, counted, named],
      [raised, named, counted],
      [await judged(mainFiles, depthsGrown), named, counted],
    ] as const) {
      const text = unwrapped(reportText(judgement, plain));
      expect(text).toContain(is);
      expect(text).not.toContain(isNot);
    }
  });

  it('calls a rule by its name once, and no key by a name that no file has', async () => {
    const taken = await judged(mainFiles, edited(mainFiles, 'prices/2026.yaml', '"0.045"', '"0.0001"'));
    expect(unwrapped(reportText(taken, plain))).toMatch(
      /looser prices from 2026-01-01, tier bulk, rate changes from 0\.045 to 0\.0001: -9\.88 EUR a month for the estate on main, so its spend limits are reached later at prices\/2026\.yaml/,
    );
    const [sample] = taken.policyChanges;
    if (sample === undefined) throw new Error('no policy change');
    const rule = {
      ...sample,
      direction: 'looser',
      of: 'rule',
      key: undefined,
      to: undefined,
      written: undefined,
      monthly: undefined,
    } as const;
    const said = (name: string, from: string) =>
      unwrapped(reportText({ ...taken, policyChanges: [{ ...rule, name, from }] }, plain));
    expect(said('no-shrink', 'no-shrink')).toContain('rule no-shrink is removed at');
    expect(said('cap', 'max-monthly-spend')).toContain('rule cap is removed; it was max-monthly-spend at');
  });

  it('says what stood on main before, what the change puts right, and what a waiver lets stand', async () => {
    const [finding] = tidied.findings;
    if (finding === undefined) throw new Error('nothing was found');
    const waiver = {
      rule: 'no-shrink',
      subject: 'plate-scanner-root',
      kind: undefined,
      reason: 'moved to a smaller one by hand',
      approvedBy: 'head of imagery',
      from: '2026-11-01',
      until: '2026-12-01',
      place: { file: 'waivers/2026.yaml', line: 3, column: 5 },
    };
    const onMain = { ...finding.place, revision: 'base' as const };
    const text = unwrapped(
      reportText(
        {
          ...tidied,
          findings: [
            { ...finding, baselineState: 'updated' },
            { ...finding, baselineState: 'unchanged', fails: false },
            { ...finding, waiver, fails: false },
            { ...finding, baselineState: 'absent', fails: false, place: onMain },
          ],
        },
        plain,
      ),
    );
    expect(text).toContain('Findings 1 failing, 1 already on main, 1 waived, 1 fixed.');
    expect(text).toContain('Already on main, and made worse by this change.');
    expect(text).toContain('moved to a smaller one by hand; approved by head of imagery, until 2026-12-01.');
    expect(text).toContain(`${onMain.file}:${onMain.line}:${onMain.column} on main`);
    const titles = [
      'Findings that fail the change',
      'Already on main, not made worse',
      'Waived',
      'Fixed by this change',
    ];
    expect(titles.map((title) => text.indexOf(title))).toEqual(
      titles.map((title) => text.indexOf(title)).sort((a, b) => a - b),
    );
    for (const title of titles) expect(text).toContain(title);
  });

  it('prices another length of the month, as a cause of its own', async () => {
    const calendar = await judged(
      mainFiles,
      edited(mainFiles, 'ullage.yaml', 'month: 730 h', 'month: calendar'),
    );
    const text = unwrapped(reportText(calendar, { width: 200, colour: false }));
    // Four small servers, three of them running: November has 720 hours, ten fewer than 730.
    const hours = calendar.cost.causes.find(({ cause }) => cause === 'month-change');
    expect(hours?.difference?.toFixed()).toBe(calendar.cost.difference?.toFixed());
    expect(calendar.cost.difference?.lt(0)).toBe(true);
    expect(text).toContain('The difference comes from another length of the month (-');
  });

  it('shows what it cost in the currency that it was in, and compares no two', async () => {
    const dollars = await judged(
      mainFiles,
      edited(
        edited(mainFiles, 'ullage.yaml', 'currency: EUR', 'currency: USD'),
        'prices/2026.yaml',
        'currency: EUR',
        'currency: USD',
      ),
    );
    const text = unwrapped(reportText(dollars, { width: 200, colour: false }));
    expect(text).toContain(
      '238.92 EUR a month on main, 238.92 USD after the merge; the two currencies are not compared.',
    );
    expect(text).toMatch(/imagery 62\.16 EUR 62\.16 USD/);
    expect(text).toMatch(/150\.00 EUR/);
    expect(text).not.toMatch(/150\.00 USD/);
    expect([dollars.cost.difference, dollars.cost.causes.map(({ cause }) => cause)]).toEqual([
      undefined,
      ['currency-change'],
    ]);
  });

  it('holds limits against the prices on main where a branch alters prices, and says so', async () => {
    const dearer = await judged(mainFiles, edited(mainFiles, 'prices/2026.yaml', '"0.045"', '"0.09"'));
    const text = unwrapped(reportText(dearer, { width: 140, colour: false }));
    expect(dearer.cost.difference?.toFixed(2)).toBe('9.90');
    expect(text).toContain('The difference comes from price changes (+9.90 EUR).');
    expect(text).toContain('at the prices on main, which decide the verdict, it would be 238.92 EUR');
    expect(text).toContain('Limits are checked at the prices on main, which decide the verdict.');
    expect(text).toMatch(/imagery 62\.16 EUR 72\.06 EUR \+9\.90 EUR see below/);
    expect(text).toMatch(
      /imagery-limit: team imagery 62\.16 EUR 62\.16 EUR 0\.00 EUR 70\.00 EUR 7\.84 EUR\b/,
    );
  });

  it('calls a group that does not have enough capacity short, not full', async () => {
    const asked = await judged(
      mainFiles,
      edited(mainFiles, 'storage/imagery.yaml', '/plates: { size: 100 GiB', '/plates: { size: 140 GiB'),
    );
    expect(unwrapped(reportText(asked, { width: 140, colour: false }))).toContain('≈20.19 GiB short');
  });

  it('tells detached volumes apart, which are billed all the same', async () => {
    const text = unwrapped(reportText(grown, plain));
    expect(grown.cost.detached.toFixed(2)).not.toBe('0.00');
    expect(text).toContain(
      `After the merge, ${grown.cost.detached.toFixed(2)} EUR a month is for unattached volumes`,
    );
  });

  it('says of a broken file on main that it is there already', () => {
    const text = reportText(wrecked, plain);
    expect(text).toContain('already on main');
    expect(reportText(broken, plain)).not.toContain('already on main');
  });
});

describe('any terminal', () => {
  it.each([40, 52, 80, 100])('of %i columns is not overrun', (width) => {
    for (const judgement of [grown, tidied, raised, broken]) {
      for (const line of reportText(judgement, { width, colour: false }).split('\n')) {
        expect(stringWidth(line), line).toBeLessThanOrEqual(width);
      }
    }
  });

  it('without colour says the same in the same words', () => {
    for (const judgement of [grown, tidied, raised, broken]) {
      const coloured = reportText(judgement, { width: 80, colour: true });
      // biome-ignore lint/suspicious/noControlCharactersInRegex: these are the escapes that are looked for
      const stripped = coloured.replace(/\u001b\[[0-9;]*m/g, '');
      expect(coloured).not.toBe(stripped);
      expect(stripped).toBe(reportText(judgement, { width: 80, colour: false }));
    }
  });

  it('gets the same bytes twice', () => {
    expect(reportText(raised, plain)).toBe(reportText(raised, plain));
  });

  it('is not steered by anything that a branch writes', () => {
    fc.assert(
      fc.property(hostile, fc.integer({ min: 40, max: 120 }), (text, width) => {
        const shown = reportText(withHostileText(tidied, text), { width, colour: false });
        expect(shown.replaceAll('\n', '')).not.toMatch(/[\p{Cc}\p{Cf}\p{Zl}\p{Zp}\p{Cs}]/u);
        expect(shown).not.toMatch(/^\s*::/m);
        expect(shown).not.toContain('##[');
        for (const line of shown.split('\n')) expect(stringWidth(line), line).toBeLessThanOrEqual(width);
        const coloured = reportText(withHostileText(tidied, text), { width, colour: true });
        // biome-ignore lint/suspicious/noControlCharactersInRegex: only our own few escapes may be there
        const uncoloured = coloured.replace(/\u001b\[(?:1|22|31|33|39)m/g, '');
        expect(uncoloured).toBe(shown);
      }),
      { numRuns: 60 },
    );
  });
});
