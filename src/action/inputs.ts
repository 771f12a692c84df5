/** The action's inputs, as the workflow gives them. All that is wrong with them is said at once. */
import { resolve } from 'node:path';
import { err, type Outcome, ok, type Problem } from '../base/problem.ts';
import { alike } from '../git/tree.ts';
import { type ReportFormat, reportFormats } from '../report/report.ts';
import { annotationsOfALevel } from './limits.ts';

export interface ReportTo {
  readonly format: ReportFormat;
  readonly path: string;
}

export interface Inputs {
  /** The checkout, from the workspace. */
  readonly path: string;
  readonly base: string | undefined;
  readonly head: string | undefined;
  readonly now: string | undefined;
  readonly failOn: 'error' | 'warning';
  readonly reports: readonly ReportTo[];
  readonly comment: boolean;
  /** Who writes the comments, where the token does not tell. */
  readonly commentAuthor: string;
  readonly token: string | undefined;
  /** The most annotations of each level. */
  readonly annotations: number;
}

/** An input's text, trimmed; empty where the workflow does not give it. */
export type ReadInput = (name: string) => string;

export function readInputs(read: ReadInput): Outcome<Inputs> {
  const problems: Problem[] = [];
  const given = (name: string): string | undefined => read(name) || undefined;
  const oneOf = <T extends string>(name: string, usual: T, others: readonly T[]): T => {
    const text = given(name) ?? usual;
    const known = [usual, ...others].find((each) => each === text);
    if (known === undefined) {
      problems.push({
        message: `the input ${name} cannot be ${JSON.stringify(text)}`,
        advice: `Write ${[usual, ...others].map((each) => `\`${each}\``).join(' or ')}.`,
      });
    }
    return known ?? usual;
  };
  const reports = reportLines(read('reports'));
  if (!reports.ok) problems.push(...reports.problems);
  const annotations = given('annotations') ?? String(annotationsOfALevel);
  if (!/^\d{1,2}$/.test(annotations) || Number(annotations) > annotationsOfALevel) {
    problems.push({
      message: `the input annotations cannot be ${JSON.stringify(annotations)}`,
      advice: `Write a whole number from 0 to ${annotationsOfALevel}, which is all that the host shows of one level.`,
    });
  }
  const inputs: Inputs = {
    path: given('path') ?? '.',
    base: given('base'),
    head: given('head'),
    now: given('now'),
    failOn: oneOf('fail-on', 'error', ['warning']),
    reports: reports.ok ? reports.value : [],
    comment: oneOf('comment', 'false', ['true']) === 'true',
    commentAuthor: given('comment-author') ?? 'github-actions[bot]',
    token: given('token'),
    annotations: Number(annotations),
  };
  return problems.length > 0 ? err(...problems) : ok(inputs);
}

function reportLines(text: string): Outcome<readonly ReportTo[]> {
  const reports: ReportTo[] = [];
  const problems: Problem[] = [];
  const files = new Set<string>();
  const lines = text.split('\n').map((each) => each.trim());
  for (const line of lines.filter((each) => each !== '')) {
    const equals = line.indexOf('=');
    const format = reportFormats.find((known) => known === line.slice(0, Math.max(0, equals)));
    const path = line.slice(equals + 1).trim();
    if (format !== undefined && path !== '' && !files.has(alike(resolve(path)))) {
      reports.push({ format, path });
      files.add(alike(resolve(path)));
    } else if (format !== undefined && path !== '') {
      problems.push({
        message: `the input reports names the file ${JSON.stringify(path)} for several reports`,
        advice: 'Name a file for each, since one would be written over the other.',
      });
    } else {
      problems.push({
        message: `the input reports cannot have the line ${JSON.stringify(line)}`,
        advice: `Write each line as FORMAT=PATH, with one of ${reportFormats.join(', ')}.`,
      });
    }
  }
  return problems.length > 0 ? err(...problems) : ok(reports);
}
