/**
 * CHANGELOG.md in the form of Keep a Changelog 1.1.0 (https://keepachangelog.com/en/1.1.0/): versions newest first, each
 * `## [1.2.3] - 2026-11-26` with what was added, changed and so on under `###`, and `## [Unreleased]` before them.
 */

/** The kinds of changes that the convention names, in its order. */
const kinds = ['Added', 'Changed', 'Deprecated', 'Removed', 'Fixed', 'Security'];

export interface Release {
  /** `Unreleased`, or a version by Semantic Versioning. */
  readonly version: string;
  readonly date: string | undefined;
  /** What is under the heading, without it. */
  readonly text: string;
}

const heading = /^## \[(Unreleased|\d+\.\d+\.\d+)\](?: - (\d{4}-\d{2}-\d{2}))?( \[YANKED\])?$/;

/** The releases as they stand, newest first, and every line that is not as the convention has it. */
export function readChangelog(text: string): {
  readonly releases: readonly Release[];
  readonly faults: readonly string[];
} {
  const faults: string[] = [];
  const [preamble = '', ...parts] = text.split(/^(?=## )/m);
  if (!preamble.startsWith('# Changelog\n')) faults.push('the first line is not # Changelog');
  const releases = parts.map((part): Release => {
    const [first = '', ...lines] = part.split('\n');
    const [, version = '', date] = heading.exec(first) ?? [];
    if (version === '') faults.push(`not a version: ${first}`);
    if ((version === 'Unreleased') !== (date === undefined)) faults.push(`a version has a date: ${first}`);
    let kind = '';
    for (const line of lines.filter((each) => each !== '')) {
      if (line.startsWith('### ')) {
        kind = line.slice(4);
        if (!kinds.includes(kind)) faults.push(`${version}: not a kind of change: ${line}`);
      } else if (kind === '' || !/^(?:- \S| {2})/.test(line))
        faults.push(`${version}: under no kind: ${line}`);
    }
    const headed = lines
      .map((line) => line.slice(4))
      .filter((each, at) => lines[at] === `### ${each}` && kinds.includes(each));
    if (headed.join() !== kinds.filter((each) => headed.includes(each)).join())
      faults.push(
        `${version}: the kinds of changes are not in the convention's order, or one is there twice`,
      );
    for (const section of lines.join('\n').split(/^(?=### )/m)) {
      const [title = '', ...bullets] = section.trim().split('\n');
      if (title.startsWith('### ') && !bullets.some((line) => line.startsWith('- ')))
        faults.push(`${version}: nothing under ${title}`);
    }
    for (const line of lines.filter((each) => each.startsWith('- ')))
      if (!/^- [`A-Z].*\.$/.test(line)) faults.push(`${version}: not a sentence in one line: ${line}`);
    return { version, date, text: lines.join('\n').trim() };
  });
  const numbers = releases.map(({ version }) => version).filter((version) => version !== 'Unreleased');
  const newestFirst = [...numbers].sort((a, b) => b.localeCompare(a, 'en', { numeric: true }));
  if (numbers.join() !== [...new Set(newestFirst)].join())
    faults.push('the newest version is not first, or is there twice');
  if (releases[0]?.version !== 'Unreleased') faults.push('what is not released yet does not come first');
  return { releases, faults };
}
