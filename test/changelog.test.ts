import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { readChangelog } from '../.ci/changelog.ts';

const text = readFileSync(join(import.meta.dirname, '../CHANGELOG.md'), 'utf8');
const top = '# Changelog\n\n## [Unreleased]\n\n';
const faults = (rest: string): readonly string[] => readChangelog(`${top}${rest}`).faults;

describe('CHANGELOG.md', () => {
  it('has the form of Keep a Changelog, each entry a sentence under its kind of change', () => {
    expect(readChangelog(text).faults).toEqual([]);
  });

  it('begins with what is not released yet', () => {
    expect(readChangelog(text).releases[0]?.version).toBe('Unreleased');
    expect(readChangelog('# Changelog\n\n## [1.0.0] - 2026-01-02\n').faults).toEqual([
      'what is not released yet does not come first',
    ]);
  });

  it.each([
    [
      'a heading of another name',
      '### News\n\n- It is faster.\n',
      'Unreleased: not a kind of change: ### News',
    ],
    [
      'a heading with nothing under it',
      '### Added\n\n### Fixed\n\n- It stops.\n',
      'Unreleased: nothing under ### Added',
    ],
    ['an entry under no heading', '- It is faster.\n', 'Unreleased: under no kind: - It is faster.'],
    [
      'half a sentence',
      '### Added\n\n- more speed\n',
      'Unreleased: not a sentence in one line: - more speed',
    ],
    [
      'headings in another order',
      '### Fixed\n\n- It stops.\n\n### Added\n\n- It starts.\n',
      "Unreleased: the kinds of changes are not in the convention's order, or one is there twice",
    ],
    [
      'a heading twice',
      '### Fixed\n\n- It stops.\n\n### Fixed\n\n- It starts.\n',
      "Unreleased: the kinds of changes are not in the convention's order, or one is there twice",
    ],
    [
      'a version without a date',
      '## [1.0.0]\n\n### Added\n\n- It starts.\n',
      'a version has a date: ## [1.0.0]',
    ],
    [
      'an older version first',
      '## [1.0.0] - 2026-01-02\n\n## [1.1.0] - 2026-02-03\n',
      'the newest version is not first, or is there twice',
    ],
  ])('is refused for %s', (_, rest, fault) => {
    expect(faults(rest)).toEqual([fault]);
  });
});
