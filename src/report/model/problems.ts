/** Problems, each at its place, file by file. */
import { byPlace, type Problem } from '../../base/problem.ts';
import { counted } from '../../base/wording.ts';
import { advice, at, entries } from './blocks.ts';
import type { Entry, ReportModel, Section } from './model.ts';

/** What could not be read, where there is nothing else to report. */
export const problemsModel = (problems: readonly Problem[]): ReportModel => ({
  tone: 'caution',
  headline: counted(problems.length, 'problem'),
  fields: [],
  sections: problemSections(problems),
});

/** Problems by file, in order of place; those of no file first. */
export function problemSections(problems: readonly Problem[]): readonly Section[] {
  const byFile = new Map<string, Problem[]>();
  for (const problem of [...problems].sort(byPlace)) {
    const file = problem.place?.file ?? '';
    const inFile = byFile.get(file);
    if (inFile === undefined) byFile.set(file, [problem]);
    else inFile.push(problem);
  }
  const whole = byFile.get('') ?? [];
  byFile.delete('');
  return [
    ...(whole.length === 0 ? [] : [problemSection('Problems', whole)]),
    ...[...byFile].map(([file, inFile]) => problemSection(file, inFile)),
  ];
}

const problemSection = (title: string, problems: readonly Problem[]): Section => ({
  title,
  blocks: [entries(problems.map(problemEntry))],
  lists: 'problem',
});

const problemEntry = ({ place, message, advice: todo, excerpt, revision }: Problem): Entry => ({
  text: message,
  excerpt:
    place === undefined || excerpt === undefined || excerpt.trim() === ''
      ? undefined
      : { source: excerpt, place },
  fields: [
    ...(place === undefined ? [] : [at(place, revision === 'base' ? 'already on main' : '')]),
    advice('advice', todo),
  ],
});
