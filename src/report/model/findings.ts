/** Findings, those that fail first. */

import { cautions, counted } from '../../base/wording.ts';
import type { RevisionPlace } from '../../change/place.ts';
import type { Finding } from '../../policy/judgement.ts';
import type { Waiver } from '../../policy/policy.ts';
import type { Level } from '../../rules/rule.ts';
import { advice, at, atRevision, entries, line } from './blocks.ts';
import { leaveWords, outgrownWords } from './coverage.ts';
import type { Entry, Excerpt, Section, Tone } from './model.ts';

const groups = ['fails', 'warns', 'on main', 'waived', 'fixed'] as const;

export type FindingGroup = (typeof groups)[number];

const titles: Readonly<Record<FindingGroup, string>> = {
  fails: 'Findings that fail the change',
  warns: 'Warnings and notes',
  'on main': 'Already on main, not made worse',
  waived: 'Waived',
  fixed: 'Fixed by this change',
};

export function groupOf({ baselineState, fails, waiver }: Finding): FindingGroup {
  if (baselineState === 'absent') return 'fixed';
  if (fails) return 'fails';
  if (waiver !== undefined) return 'waived';
  return baselineState === 'unchanged' ? 'on main' : 'warns';
}

type Grouped = ReadonlyMap<FindingGroup, readonly Finding[]>;

/** Those that fail first; the order within, worst first, is the judgement's own. Groups without findings are left out. */
export function groupFindings(findings: readonly Finding[]): Grouped {
  const grouped = new Map<FindingGroup, Finding[]>(groups.map((group) => [group, []]));
  for (const finding of findings) grouped.get(groupOf(finding))?.push(finding);
  return new Map([...grouped].filter(([, members]) => members.length > 0));
}

export const countGroups = (grouped: Grouped): string =>
  `${[...grouped].map(([group, { length }]) => groupCount(group, length)).join(', ')}.`;

/** Where a rule is explained: that of the finding that stands first. */
export const wayToRule = (grouped: Grouped): string => {
  const [first] = [...grouped.values()].flat();
  return first === undefined ? '' : `\`ullage rules ${first.rule}\` explains the rule of the first.`;
};

function groupCount(group: FindingGroup, count: number): string {
  switch (group) {
    case 'fails':
      return `${count} failing`;
    case 'warns':
      return counted(count, 'warning or note', 'warnings or notes');
    case 'on main':
      return `${count} already on main`;
    case 'waived':
    case 'fixed':
      return `${count} ${group}`;
  }
}

/** The source line at a place, for whoever shows it. */
export type LineAt = (place: RevisionPlace) => string | undefined;

export const findingSections = (grouped: Grouped, lineAt: LineAt): readonly Section[] =>
  [...grouped].map(([group, findings]) => ({
    title: titles[group],
    blocks: [entries(findings.map((finding) => findingEntry(finding, group, lineAt)))],
    lists: 'finding',
    yields: yields[group],
  }));

/** What nobody has to do anything about for this change can be spared before the changes and their steps. */
const yields: Readonly<Record<FindingGroup, number>> = {
  fails: 0,
  warns: 0,
  'on main': 1,
  waived: 2,
  fixed: 3,
};

const tones: Readonly<Record<Level, Tone>> = { error: 'fails', warning: 'caution', note: 'plain' };

const ruleOf = ({ rule, entry }: Finding): string => (rule === entry ? rule : `${entry} (${rule})`);

/** Whether somebody still has to do something about it. */
const isOpen = (group: FindingGroup): boolean =>
  group === 'fails' || group === 'warns' || group === 'on main';

function findingEntry(finding: Finding, group: FindingGroup, lineAt: LineAt): Entry {
  const { level, message, place, baselineState, waiver } = finding;
  const open = isOpen(group);
  const leave = leaveWords(finding);
  return {
    tag: { word: level, tone: open ? tones[level] : 'plain' },
    text: `${ruleOf(finding)}: ${message}`,
    excerpt: excerptAt(place, lineAt),
    fields: [
      atRevision(place),
      ...(baselineState === 'updated'
        ? [line('state', 'Already on main, and made worse by this change.')]
        : []),
      ...(waiver === undefined
        ? []
        : [line('waiver', waiverWords(waiver)), at(waiver.place, '', 'waived at')]),
      ...(leave === undefined ? [] : [line('ceiling', leave)]),
      ...(finding.outgrown === undefined ? [] : [line('waiver', outgrownWords(finding.outgrown, finding))]),
      ...(open ? [advice('advice', adviceOf(finding))] : []),
    ],
  };
}

/** So many lines to either side of the one that is meant. */
const around = 3;

function excerptAt(place: RevisionPlace, lineAt: LineAt): Excerpt | undefined {
  const source = lineAt(place);
  if (source === undefined) return undefined;
  const lines = (from: number, until: number): readonly string[] =>
    Array.from({ length: Math.max(0, until - from) }, (_, index) =>
      lineAt({ ...place, line: from + index }),
    ).filter((each) => each !== undefined);
  const { line: at } = place;
  return {
    source,
    place,
    before: lines(Math.max(1, at - around), at),
    after: lines(at + 1, at + 1 + around),
  };
}

const waiverWords = ({ reason, approvedBy, until, upTo }: Waiver): string =>
  `${reason}; approved by ${approvedBy}, until ${until}${upTo === undefined ? '' : `, up to ${upTo.written}`}.`;

/** The advice without the cautions, which are said once for all. */
export const adviceOf = ({ advice: whole }: Finding): string =>
  whole.includes(cautions) ? `${whole.replace(cautions, '').trim()} See the cautions.` : whole;
