/**
 * A judgement as JUnit XML, the form that every CI host shows as tests. One case for each finding, as hosts show one
 * failure a case and follow a case by its name from run to run; one case that passes for each rule entry that finds
 * nothing. A finding that fails is a failure, a waived one is skipped with the reason, and any other (a warning, or
 * what was already wrong on main) passes with its text beside it.
 */
import { create } from 'xmlbuilder2';
import type { XMLBuilder } from 'xmlbuilder2/lib/interfaces.js';
import type { Problem } from '../base/problem.ts';
import { visible } from '../base/visible.ts';
import type { Finding, Judged, Judgement, NotJudged } from '../policy/judgement.ts';
import { type Money, showMoney } from '../price/money.ts';
import { leaveWords } from './model/coverage.ts';
import { questionSentence } from './model/question.ts';
import { unreadSentence } from './model/unread-main.ts';

/**
 * Writes a judgement as JUnit XML: a case for each finding, and one that passes for each rule that finds nothing. What
 * XML cannot hold of a name is spelt out.
 *
 * @example
 * ```js
 * import { judgeRepository, reportJunit } from 'ullage';
 *
 * const judgement = await judgeRepository('.', { base: 'main', head: 'smaller-plates', on: '2026-11-20' });
 * console.log(reportJunit(judgement).includes('<failure')); // true
 * ```
 */
export function reportJunit(judgement: Judgement): string {
  const document = create({ version: '1.0', encoding: 'UTF-8' });
  if (judgement.verdict === 'not judged') writeNotJudged(document, judgement);
  else writeJudged(document, judgement);
  return `${document.end({ prettyPrint: true })}\n`;
}

/** Visible text without the two that XML has no way of writing (XML 1.0, 2.2). */
export const xmlText = (text: string): string =>
  visible(text).replaceAll(
    /[\ufffe\uffff]/g,
    (character) => `\\u{${character.charCodeAt(0).toString(16).toUpperCase()}}`,
  );

/**
 * Text for the builder. It leaves what looks like a reference (`&lt;`, `&#0;`) as it stands, so that a name could
 * write itself as another, or as none that XML has; every ampersand is given to it escaped.
 */
const literal = (text: string): string => xmlText(text).replaceAll('&', '&amp;');

/** Several lines, each made visible by itself. */
const lines = (...parts: readonly string[]): string => parts.map(literal).join('\n');

interface Counts {
  readonly tests: number;
  readonly failures: number;
  readonly errors: number;
  readonly skipped: number;
}

function suiteIn(
  document: XMLBuilder,
  { tests, failures, errors, skipped }: Counts,
  properties: Readonly<Record<string, string>>,
): XMLBuilder {
  const suite = document
    .ele('testsuites', { name: 'ullage', tests, failures, errors })
    .ele('testsuite', { name: 'ullage gate', tests, failures, errors, skipped });
  const list = suite.ele('properties');
  for (const [name, value] of Object.entries(properties))
    list.ele('property', { name, value: literal(value) });
  return suite;
}

function writeNotJudged(document: XMLBuilder, judgement: NotJudged): void {
  const { verdict, reasons, base, head, on } = judgement;
  // No host takes a suite without an error for anything but good news.
  const problems: readonly Problem[] =
    judgement.problems.length > 0
      ? judgement.problems
      : [{ message: reasons.join('; '), advice: 'Judge again.' }];
  const suite = suiteIn(
    document,
    { tests: problems.length, failures: 0, errors: problems.length, skipped: 0 },
    {
      verdict,
      reasons: reasons.join('; '),
      ...(base === undefined ? {} : { base: base.commit }),
      ...(head === undefined ? {} : { head: head.commit }),
      ...(on === '' ? {} : { on }),
    },
  );
  for (const problem of problems) {
    suite
      .ele('testcase', { classname: verdict, name: literal(whereOf(problem)) })
      .ele('error', { type: verdict, message: literal(problem.message) })
      .txt(lines(`${whereOf(problem)}: ${problem.message}`, problem.advice));
  }
}

const whereOf = ({ place }: Problem): string =>
  place === undefined ? 'the revisions' : `${place.file}:${place.line}:${place.column}`;

function writeJudged(document: XMLBuilder, judged: Judged): void {
  const { verdict, reasons, base, head, on, cost, findings, rules } = judged;
  const found = new Set(findings.map(({ entry }) => entry));
  const clear = rules.filter(({ name }) => !found.has(name));
  const shown = (amount: Money, currency = cost.currency): string =>
    `${showMoney(amount, currency)} ${currency}`;
  const suite = suiteIn(
    document,
    {
      tests: findings.length + clear.length,
      failures: findings.filter(({ fails }) => fails).length,
      errors: 0,
      skipped: findings.filter(isWaived).length,
    },
    {
      verdict,
      reasons: reasons.join('; '),
      base: base.commit,
      head: head.commit,
      ...(judged.unreadMain === undefined ? {} : { main: unreadSentence(judged.unreadMain) }),
      ...(judged.question === undefined ? {} : { question: questionSentence(judged.question) }),
      on,
      'cost before': shown(cost.before, cost.currencyBefore),
      'cost after': shown(cost.after),
      ...(cost.difference === undefined ? {} : { 'cost difference': shown(cost.difference) }),
    },
  );
  for (const finding of findings) writeFinding(suite, finding);
  for (const { name } of clear) suite.ele('testcase', { classname: literal(name), name: 'nothing found' });
}

const isWaived = ({ fails, waiver }: Finding): boolean => !fails && waiver !== undefined;

function writeFinding(suite: XMLBuilder, finding: Finding): void {
  const { entry, subject, facet, level, baselineState, message, waiver, fails } = finding;
  const name = `${subject.kind} ${subject.name}${facet === undefined ? '' : `, ${facet}`}`;
  const testcase = suite.ele('testcase', { classname: literal(entry), name: literal(name) });
  if (fails) {
    testcase.ele('failure', { type: level, message: literal(message) }).txt(textOf(finding));
  } else if (waiver !== undefined) {
    const { reason, approvedBy, until } = waiver;
    const leave = leaveWords(finding);
    testcase.ele('skipped', {
      message: literal(
        `waived until ${until}, approved by ${approvedBy}: ${reason}${leave === undefined ? '' : `. ${leave}`}`,
      ),
    });
    testcase.ele('system-out').txt(textOf(finding));
  } else {
    testcase.ele('system-out').txt(`${level}, ${baselineState}: ${textOf(finding)}`);
  }
}

const textOf = ({ message, advice, place: { revision, file, line, column } }: Finding): string =>
  lines(message, `${file}:${line}:${column}${revision === 'base' ? ' on the base' : ''}`, advice);
