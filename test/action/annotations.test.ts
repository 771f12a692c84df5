import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { annotationsOf } from '../../src/action/annotations.ts';
import { annotationsOfALevel, commentBytes, summaryBytes } from '../../src/action/limits.ts';
import { summaryOf } from '../../src/action/summary.ts';
import { gate } from '../../src/cli/gate.ts';
import { type Finding, type Judged, notJudged } from '../../src/policy/judgement.ts';
import { removeRepositories } from '../repository.ts';
import { hosted, plates } from './run.ts';

let judged: Judged;
let finding: Finding;

beforeAll(async () => {
  const { origin, base, merge } = hosted(plates('60 GiB'));
  const judgement = await gate({ repo: origin.dir, base, head: merge, now: '2026-11-20', failOn: 'error' });
  if (judgement.verdict === 'not judged') throw new Error(judgement.reasons.join());
  judged = judgement;
  const [first] = judgement.findings;
  if (first === undefined) throw new Error('the proposal is over its limit');
  finding = first;
});
afterAll(removeRepositories, 60_000);

const at = (line: number) => ({ revision: 'head' as const, file: 'storage/imagery.yaml', line, column: 3 });

const many = (count: number, edit: Partial<Finding>): readonly Finding[] =>
  Array.from({ length: count }, (_, index) => ({ ...finding, place: at(index + 1), ...edit }));

const failing = { level: 'error', baselineState: 'new', fails: true } as const;
const warned = { level: 'warning', baselineState: 'new', fails: false } as const;
const noted = { level: 'note', baselineState: 'new', fails: false } as const;
const onMain = { level: 'error', baselineState: 'unchanged', fails: false } as const;

const failed = (findings: readonly Finding[]): Judged => ({ ...judged, verdict: 'fail', findings });
const passed = (findings: readonly Finding[]): Judged => ({ ...judged, verdict: 'pass', findings });

describe('annotations', () => {
  it('stand at the very line of what is wrong, after the verdict', () => {
    const { shown, leftOut } = annotationsOf(failed(many(1, failing)), 10);
    expect(shown.map(({ level, title, place }) => ({ level, title, place }))).toEqual([
      { level: 'error', title: 'Ullage: fail', place: undefined },
      {
        level: 'error',
        title: 'imagery-limit: error',
        place: { file: 'storage/imagery.yaml', line: 1, column: 3 },
      },
    ]);
    expect(shown[1]?.message).toContain(finding.message);
    expect(leftOut).toBe(0);
  });

  it('begin with the worst: what fails, then what is new, then what is on main already', () => {
    const findings = [
      ...many(1, { ...noted, entry: 'd' }),
      ...many(1, { ...onMain, level: 'warning', entry: 'c' }),
      ...many(1, { ...warned, entry: 'b' }),
      ...many(1, { ...failing, entry: 'a' }),
    ];
    expect(annotationsOf(failed(findings), 10).shown.map(({ title }) => title)).toEqual([
      'Ullage: fail',
      'a: error',
      'b: warning',
      'c: warning, already on main',
      'd: note',
    ]);
  });

  it('are no errors where the change does not fail for them', () => {
    const { shown } = annotationsOf(passed(many(3, onMain)), 10);
    expect(shown.map(({ level }) => level)).toEqual(['warning', 'warning', 'warning']);
  });

  it('of a warning that fails a stricter run are errors', () => {
    const { shown } = annotationsOf(failed(many(1, { ...warned, fails: true })), 10);
    expect(shown.map(({ level }) => level)).toEqual(['error', 'error']);
  });

  it('leave out what is waived and what is gone', () => {
    const waiver = {
      rule: finding.rule,
      subject: finding.subject.name,
      kind: undefined,
      reason: 'spring survey',
      approvedBy: 'head of imagery',
      from: '2026-01-01',
      until: '2027-01-01',
      place: { file: 'waivers/2026.yaml', line: 2, column: 5 },
    };
    const findings = [...many(1, { ...noted, waiver }), ...many(1, { ...noted, baselineState: 'absent' })];
    expect(annotationsOf(passed(findings), 10).shown).toEqual([]);
  });

  it('of what is gone from the head have no line there, and say where it stood', () => {
    const gone = {
      ...failing,
      place: { revision: 'base' as const, file: 'storage/old.yaml', line: 7, column: 3 },
    };
    const shown = annotationsOf(failed(many(1, gone)), 10).shown[1];
    expect(shown?.place).toBeUndefined();
    expect(shown?.message).toContain('storage/old.yaml:7:3');
  });

  it('of a file that cannot be read stand at its place, unless that is main’s', () => {
    const place = { file: 'storage/imagery.yaml', line: 4, column: 9 };
    const judgement = notJudged(
      [
        { place, revision: 'head', message: 'a size without a unit', advice: 'Write 50 GiB.' },
        { place, revision: 'base', message: 'a size without a unit', advice: 'Write 50 GiB.' },
      ],
      '2026-11-20',
    );
    expect(annotationsOf(judgement, 10).shown.map((each) => each.place)).toEqual([
      undefined,
      place,
      undefined,
    ]);
  });

  it('with none asked for say the verdict alone', () => {
    expect(annotationsOf(failed(many(3, failing)), 0).shown.map(({ title }) => title)).toEqual([
      'Ullage: fail',
    ]);
    expect(annotationsOf(passed(many(3, warned)), 0).shown).toEqual([]);
  });

  it('never are more of a level than the host shows, and what is left out is counted', () => {
    const count = fc.nat({ max: 30 });
    const most = fc.integer({ min: 1, max: annotationsOfALevel });
    fc.assert(
      fc.property(count, count, count, count, most, (errors, warnings, notes, old, limit) => {
        const findings = [
          ...many(errors, failing),
          ...many(warnings, warned),
          ...many(notes, noted),
          ...many(old, onMain),
        ];
        const { shown, leftOut } = annotationsOf(errors > 0 ? failed(findings) : passed(findings), limit);
        for (const level of ['error', 'warning', 'notice'] as const) {
          expect(shown.filter((each) => each.level === level).length).toBeLessThanOrEqual(limit);
        }
        const ofOurs = shown.filter(({ title }) => title.startsWith('Ullage: ')).length;
        expect(shown.length - ofOurs + leftOut).toBe(findings.length);
        const counted = shown.some(({ message }) => message.includes(`${leftOut} annotation`));
        expect(counted).toBe(leftOut > 0);
      }),
    );
  });

  it('carry no control, whatever a name brings', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), fc.string({ unit: 'binary' }), (message, entry) => {
        const { shown } = annotationsOf(failed(many(1, { ...failing, message, advice: message, entry })), 10);
        for (const each of shown) {
          expect(each.title).not.toMatch(/[\p{Cc}\p{Cf}]|::/u);
          expect(each.message).not.toMatch(/(?!\n)[\p{Cc}\p{Cf}]|::/u);
        }
      }),
    );
  });
});

describe('the summary and the comment', () => {
  const notes = [
    'The input base does not count on the event push.',
    'A name with | bars, <b>tags</b> and @everybody.',
  ];

  it.each([
    ['the summary', summaryBytes],
    ['the comment', commentBytes],
  ])('of a very large change: %s keeps to its limit and counts what it leaves out', (_, limit) => {
    const large = failed(many(20_000, failing));
    const whole = summaryOf(large, { limit: Number.MAX_SAFE_INTEGER, notes, fullReport: undefined });
    expect(Buffer.byteLength(whole)).toBeGreaterThan(limit);
    const text = summaryOf(large, { limit, notes, fullReport: 'out/gate.json' });
    expect(Buffer.byteLength(text)).toBeLessThanOrEqual(limit);
    expect(text.startsWith('## ')).toBe(true);
    expect(text).toContain('Left out here');
    expect(text).toContain('out/gate.json');
    expect(text).toContain('The input base does not count');
  });

  it('show notes as text', () => {
    const text = summaryOf(judged, { limit: summaryBytes, notes, fullReport: undefined });
    expect(text).toContain('`<b>tags</b>`');
    expect(text).toContain('`@everybody`');
  });
});
