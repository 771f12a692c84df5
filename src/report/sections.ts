/**
 * What a judgement says to a person, in order, and not yet in any form: the terminal and Markdown both draw this, so
 * that the two never disagree. Every text here may carry input and is made harmless by whoever draws it.
 */

import { byPlace, type Place, type Problem } from '../base/problem.ts';
import { cautions, counted } from '../base/wording.ts';
import { freeShare, type Room } from '../capacity/headroom.ts';
import type { Change } from '../change/change.ts';
import { describeChange, destroys } from '../change/kinds.ts';
import type { RevisionPlace } from '../change/place.ts';
import type { Subject } from '../estate/estate.ts';
import type {
  Finding,
  Judged,
  Judgement,
  LimitUse,
  NotJudged,
  PastChange,
  Proposed,
  RoomChange,
} from '../policy/judgement.ts';
import type { Waiver } from '../policy/policy.ts';
import type { WaiverUse } from '../policy/waiver.ts';
import type { CauseKind, TeamDelta } from '../price/delta.ts';
import { compareMoney, type Money, subtractMoney } from '../price/money.ts';
import type { Level } from '../rules/rule.ts';
import type { PolicyChange } from '../rules/view.ts';
import { showAmount, showDifference, showLeft, showMeasure, showShare } from './amounts.ts';
import { clipped } from './escape.ts';
import { runbookSection } from './runbook.ts';
import type { TableOf } from './table.ts';

/** How grave it is, for an accent. What it means is always in the words. */
export type Tone = 'grave' | 'caution' | 'plain';

/**
 * One labelled line. Advice may write commands between backticks; an example is a command, and the page it was read
 * in is for whoever has room for it; a place is a file's, with a word on where.
 */
export type Field =
  | { readonly label: string; readonly form: 'text' | 'advice'; readonly text: string }
  | { readonly label: string; readonly form: 'example'; readonly command: string; readonly source: string }
  | { readonly label: string; readonly form: 'place'; readonly place: Place; readonly note: string };

export interface Entry {
  readonly lead: { readonly word: string; readonly tone: Tone } | undefined;
  readonly text: string;
  readonly excerpt: { readonly source: string; readonly place: Place } | undefined;
  readonly fields: readonly Field[];
}

export type Block =
  | { readonly kind: 'sentence'; readonly text: string }
  | { readonly kind: 'entries'; readonly entries: readonly Entry[] }
  | { readonly kind: 'table'; readonly table: TableOf };

export interface Section {
  readonly title: string;
  readonly blocks: readonly Block[];
}

/** The first lines answer: the verdict and why, the cost, what to do. The sections follow. */
export interface ReportModel {
  readonly tone: Tone;
  readonly headline: string;
  readonly fields: readonly Field[];
  readonly sections: readonly Section[];
}

const longestHeadline = 400;

/** The verdict and the reason on one line, harmless in any place. */
export function summaryLine(judgement: Judgement): string {
  const [first = 'no reason given', ...others] = judgement.reasons;
  switch (judgement.verdict) {
    case 'pass': {
      const count = judgement.changes.filter(destroys).length;
      const loss = count === 0 ? [] : [`${count} ${count === 1 ? 'destroys' : 'destroy'} ${lost}`];
      return `pass: ${clipped([first, ...loss, ...others].join('; '), longestHeadline)}`;
    }
    case 'fail': {
      const more = others.length === 0 ? '' : `, and ${counted(others.length, 'more finding')}`;
      const loss = destroySentence(judgement.changes);
      return `fail: ${clipped(first, longestHeadline)}${more}${loss === undefined ? '' : `; ${loss}`}`;
    }
    case 'not judged':
      return `not judged: ${clipped(first, longestHeadline)}`;
  }
}

const lost = 'what only a backup brings back';

/** How many changes destroy; undefined where none does. */
function destroySentence(changes: readonly Change[]): string | undefined {
  const count = changes.filter(destroys).length;
  return count === 0 ? undefined : `${counted(count, 'change destroys', 'changes destroy')} ${lost}`;
}

export function reportModel(judgement: Judgement): ReportModel {
  switch (judgement.verdict) {
    case 'pass':
    case 'fail':
      return judgedModel(judgement);
    case 'not judged':
      return notJudgedModel(judgement);
  }
}

const sentence = (text: string): Block => ({ kind: 'sentence', text });

const line = (label: string, text: string): Field => ({ label, form: 'text', text });

const at = (place: Place, note = ''): Field => ({ label: 'at', form: 'place', place, note });

const atRevision = (place: RevisionPlace): Field => at(place, place.revision === 'base' ? 'on main' : '');

/** A commit's id as it is usually shortened; anything else, such as `worktree`, as it is. */
const shortCommit = (commit: string): string =>
  /^[0-9a-f]{40,64}$/.test(commit) ? commit.slice(0, 12) : commit === 'worktree' ? 'the work tree' : commit;

function judgedModel(judged: Judged): ReportModel {
  const groups = findingGroups(judged.findings);
  return {
    tone: judged.verdict === 'fail' ? 'grave' : 'plain',
    headline: summaryLine(judged),
    fields: [
      line('Cost', costSentence(judged)),
      whatToDo(judged),
      ...(judged.findings.length === 0 ? [] : [line('Findings', countGroups(groups))]),
      line('Judged', judgedSentence(judged)),
    ],
    sections: [
      ...groups.map(findingSection),
      ...cautionSection(judged),
      ...changeSection(judged.changes),
      ...costSections(judged),
      ...headroomSection(judged.headroom),
      ...policySection(judged),
      ...waiverSection(judged),
      ...runbookSection(judged),
    ],
  };
}

// The first lines

function costSentence({ cost, afterAtJudgingPrices }: Judged): string {
  const { currency, before, after, difference } = cost;
  const sentences = [
    difference.isZero()
      ? `${showAmount(before, currency)} a month on main, the same after the merge.`
      : `${showAmount(before, currency)} a month on main, ${showAmount(after, currency)} after the merge: ${showDifference(difference, currency)}.`,
  ];
  if (afterAtJudgingPrices !== undefined) {
    sentences.push(
      `That is at the prices that the branch proposes; at those on main, which judge, it would be ${showAmount(afterAtJudgingPrices, currency)}.`,
    );
  }
  if (cost.detached.gt(0)) {
    sentences.push(
      `After it, ${showAmount(cost.detached, currency)} a month goes to volumes that no server holds; they are billed until they are deleted.`,
    );
  }
  return sentences.join(' ');
}

function whatToDo({ verdict, findings, changes, policyChanges }: Judged): Field {
  const loosened = policySentence(policyChanges);
  const failing = findings.filter(({ fails }) => fails);
  const [first] = failing;
  if (verdict === 'fail' && first !== undefined) {
    const rest =
      failing.length === 1 ? '' : ` For the ${counted(failing.length - 1, 'other finding')}, see below.`;
    return { label: 'To do', form: 'advice', text: `${adviceOf(first)}${rest}${loosened}` };
  }
  const loss = destroySentence(changes);
  if (loss !== undefined) {
    return line('To do', `Read the cautions below before you merge: ${loss}.${loosened}`);
  }
  const read = findings.some((finding) => groupOf(finding) === 'warns')
    ? ' Read the warnings and notes below.'
    : '';
  return line('To do', `No rule forbids the merge.${loosened}${read}`);
}

/** A pass is not the last word on a looser policy; what cannot be told counts as looser. */
function policySentence(changes: readonly PolicyChange[]): string {
  const looser = changes.filter(({ direction }) => direction === 'looser').length;
  const count = looser + changes.filter(({ direction }) => direction === 'unknown').length;
  if (count === 0) return '';
  const loosens = looser === count ? 'loosens' : looser === 0 ? 'may loosen' : 'loosens, or may loosen,';
  return ` It ${loosens} the policy in ${counted(count, 'place')}; whoever answers for the policy decides. See Policy changes.`;
}

function judgedSentence({ base, head, on, policyFrom, failOn }: Judged): string {
  const whose =
    policyFrom === 'base' ? 'by the policy on main' : "by the branch's own policy, because main has none yet";
  const strict = failOn === 'warning' ? ', and warnings fail too' : '';
  return `${shortCommit(head.commit)} against main at ${shortCommit(base.commit)}, as of ${on}, ${whose}${strict}.`;
}

// Findings

const groupTitles = {
  fails: 'What fails it',
  warns: 'Warnings and notes',
  stands: 'Already on main, and not made worse',
  waived: 'Let stand by a waiver',
  gone: 'Put right by this change',
} as const;

type GroupName = keyof typeof groupTitles;

interface FindingGroup {
  readonly name: GroupName;
  readonly findings: readonly Finding[];
}

function groupOf({ baselineState, fails, waiver }: Finding): GroupName {
  if (baselineState === 'absent') return 'gone';
  if (fails) return 'fails';
  if (waiver !== undefined) return 'waived';
  return baselineState === 'unchanged' ? 'stands' : 'warns';
}

const groupOrder: readonly GroupName[] = ['fails', 'warns', 'stands', 'waived', 'gone'];

/** Those that fail first; the order within, worst first, is the judgement's own. */
const findingGroups = (findings: readonly Finding[]): readonly FindingGroup[] =>
  groupOrder
    .map((name) => ({ name, findings: findings.filter((finding) => groupOf(finding) === name) }))
    .filter((group) => group.findings.length > 0);

const countGroups = (groups: readonly FindingGroup[]): string =>
  `${groups.map(({ name, findings }) => groupCount(name, findings.length)).join(', ')}.`;

function groupCount(name: GroupName, count: number): string {
  switch (name) {
    case 'fails':
      return `${count} that ${count === 1 ? 'fails' : 'fail'}`;
    case 'warns':
      return counted(count, 'warning or note', 'warnings or notes');
    case 'stands':
      return `${count} already on main`;
    case 'waived':
      return `${count} waived`;
    case 'gone':
      return `${count} put right`;
  }
}

const findingSection = ({ name, findings }: FindingGroup): Section => ({
  title: groupTitles[name],
  blocks: [{ kind: 'entries', entries: findings.map((finding) => findingEntry(finding, name)) }],
});

const tones: Readonly<Record<Level, Tone>> = { error: 'grave', warning: 'caution', note: 'plain' };

const ruleOf = ({ rule, entry }: Finding): string => (rule === entry ? rule : `${entry} (${rule})`);

function findingEntry(finding: Finding, group: GroupName): Entry {
  const { level, message, place, baselineState, waiver } = finding;
  const open = group === 'fails' || group === 'warns' || group === 'stands';
  return {
    lead: { word: level, tone: open ? tones[level] : 'plain' },
    text: `${ruleOf(finding)}: ${message}`,
    excerpt: undefined,
    fields: [
      atRevision(place),
      ...(baselineState === 'updated' ? [line('state', 'Already on main, and made worse here.')] : []),
      ...(waiver === undefined
        ? []
        : [line('waiver', waiverWords(waiver)), { ...at(waiver.place), label: 'waived' }]),
      ...(open ? [{ label: 'advice', form: 'advice', text: adviceOf(finding) } as const] : []),
    ],
  };
}

const waiverWords = ({ reason, approvedBy, until }: Waiver): string =>
  `${reason}; approved by ${approvedBy}, until ${until}.`;

/** The advice without the cautions, which are said once for all. */
const adviceOf = ({ advice }: Finding): string =>
  advice.includes(cautions) ? `${advice.replace(cautions, '').trim()} See the cautions.` : advice;

/** Shown once wherever a step destroys, or is advised with care. */
function cautionSection({ changes, findings }: Judged): readonly Section[] {
  const advised = findings.some(
    (finding) => groupOf(finding) !== 'gone' && finding.advice.includes(cautions),
  );
  const loss = destroySentence(changes);
  if (loss === undefined && !advised) return [];
  const count = loss === undefined ? 'What is advised here cannot all be undone.' : `${loss}.`;
  return [{ title: 'Cautions', blocks: [sentence(count), sentence(cautions)] }];
}

// Changes

function changeSection(changes: readonly Change[]): readonly Section[] {
  if (changes.length === 0) return [];
  const entries = changes.map(
    (change): Entry => ({
      lead: destroys(change) ? { word: 'destroys', tone: 'grave' } : undefined,
      text: describeChange(change),
      excerpt: undefined,
      fields: [atRevision(change.place)],
    }),
  );
  return [{ title: `Changes (${changes.length})`, blocks: [{ kind: 'entries', entries }] }];
}

// Cost

const left = (title: string) => ({ title, align: 'left' }) as const;
const right = (title: string) => ({ title, align: 'right' }) as const;

const causeWords: Readonly<Record<CauseKind, string>> = {
  quantity: 'quantity',
  'tier-move': 'another tier or server type',
  'price-change': 'other prices',
};

function costSections({ cost, limits, afterAtJudgingPrices }: Judged): readonly Section[] {
  const { currency, teams, causes } = cost;
  if (teams.length === 0 && limits.length === 0) return [];
  const lowestFirst = limits.toSorted((a, b) => compareMoney(a.limit, b.limit));
  const alike = teams.map((team) => lowestFirst.find((limit) => isTeamsOwn(limit, team)));
  const joined = new Set(alike);
  const apart = limits.filter((limit) => !joined.has(limit));
  const why = causes.filter(({ difference }) => !difference.isZero());
  const amounts = (before: Money, after: Money): readonly string[] => [
    showAmount(before, currency),
    showAmount(after, currency),
    showDifference(subtractMoney(after, before), currency),
  ];
  const against = ({ limit, after }: LimitUse): readonly string[] => [
    showAmount(limit, currency),
    showLeft(limit, after, currency),
  ];
  const noneFor = (team: string): readonly string[] =>
    apart.some(({ subject }) => subject.kind === 'team' && subject.name === team)
      ? ['see below', '']
      : ['none', ''];
  const columns = [
    right('On main'),
    right('After'),
    right('Difference'),
    right('Limit'),
    left('Against the limit'),
  ];
  const blocks: Block[] = [];
  if (teams.length > 0) {
    const rows = teams.map((team, index) => {
      const limit = alike[index];
      return [
        team.team === '' ? 'no team' : team.team,
        ...amounts(team.before, team.after),
        ...(limit === undefined ? noneFor(team.team) : against(limit)),
      ];
    });
    const total = ['together', ...amounts(cost.before, cost.after), '', ''];
    blocks.push({
      kind: 'table',
      table: { columns: [left('Team'), ...columns], rows: teams.length > 1 ? [...rows, total] : rows },
    });
  }
  if (apart.length > 0) {
    const rows = apart.map((limit) => [
      `${limit.entry}: ${subjectWords(limit.subject)}`,
      ...amounts(limit.before, limit.after),
      ...against(limit),
    ]);
    blocks.push({ kind: 'table', table: { columns: [left('Limit for'), ...columns], rows } });
  }
  if (afterAtJudgingPrices !== undefined && limits.length > 0) {
    blocks.push(sentence('Limits are held against the prices on main, which judge.'));
  }
  if (why.length > 0) {
    const parts = why.map(
      ({ cause, difference }) => `${causeWords[cause]} ${showDifference(difference, currency)}`,
    );
    blocks.push(sentence(`The difference comes of: ${parts.join('; ')}.`));
  }
  return [{ title: 'Cost a month', blocks }];
}

/** Whether a limit is for just what a team's line sums; one for some of its tiers stands by itself. */
const isTeamsOwn = ({ subject, before, after }: LimitUse, team: TeamDelta): boolean =>
  subject.kind === 'team' &&
  subject.name === team.team &&
  compareMoney(before, team.before) === 0 &&
  compareMoney(after, team.after) === 0;

function subjectWords({ kind, name }: Subject): string {
  switch (kind) {
    case 'estate':
      return 'the estate';
    case 'branch':
      return 'the branch';
    case 'scope':
      return 'what it is for';
    case 'volume-group':
      return `volume group ${name}`;
    case 'file-system':
      return `file system ${name}`;
    case 'server':
    case 'volume':
    case 'site':
    case 'team':
    case 'label':
      return `${kind} ${name}`;
  }
}

// Headroom

/** Free room below this share is shown, changed or not. */
const tight = 0.1;

const isTouched = ({ before, after }: RoomChange): boolean =>
  before === undefined ||
  after === undefined ||
  before.capacity !== after.capacity ||
  before.taken !== after.taken;

const isTight = ({ after }: RoomChange): boolean => after !== undefined && freeShare(after) < tight;

function headroomSection(rooms: readonly RoomChange[]): readonly Section[] {
  if (rooms.length === 0) return [];
  const shown = rooms.filter((room) => isTouched(room) || isTight(room));
  const rest = rooms.length - shown.length;
  const untouched = `${counted(rest, 'room is', 'rooms are')} as before, with at least a tenth free.`;
  const table: TableOf = {
    columns: [
      left('Room'),
      right('Capacity'),
      right('Taken'),
      right('Free'),
      right('Free share'),
      right('Free on main'),
    ],
    rows: shown.flatMap(roomRow),
  };
  return [
    {
      title: 'Headroom',
      blocks: [
        ...(shown.length === 0 ? [] : [{ kind: 'table', table } as const]),
        ...(rest === 0 ? [] : [sentence(shown.length === 0 ? untouched : `Besides: ${untouched}`)]),
      ],
    },
  ];
}

function roomRow({ before, after }: RoomChange): readonly (readonly string[])[] {
  const room = after ?? before;
  if (room === undefined) return [];
  const show = (amount: bigint): string => showMeasure(room.measure, amount);
  const main = before === undefined ? 'not there' : show(before.free);
  return [
    after === undefined
      ? [roomWords(room), 'gone', '', '', '', main]
      : [roomWords(after), show(after.capacity), show(after.taken), show(after.free), showShare(after), main],
  ];
}

function roomWords({ layer, subject, measure }: Room): string {
  switch (layer) {
    case 'quota':
      return `quota of ${subject.name}, ${measure === 'bytes' ? 'size' : measure}`;
    case 'attachment-slots':
      return `attachment slots of ${subject.name}`;
    case 'volume-group':
    case 'file-system':
      return subjectWords(subject);
  }
}

// Policy

/** So many past changes are named; the JSON report names all. */
const pastNamed = 5;

/** What the proposed rules would have meant for what main let through before. */
function pastSentences({ onPast }: Proposed): readonly Block[] {
  if (onPast === undefined) return [];
  const { changes, stopped, letThrough } = onPast;
  const named = (past: readonly PastChange[]): string => {
    const shown = past
      .slice(0, pastNamed)
      .map(({ commit, on, subject }) => `${commit.slice(0, 12)} of ${on} (${clipped(subject, 60)})`);
    const more = past.length - shown.length;
    return `${shown.join('; ')}${more > 0 ? `; and ${more} more` : ''}`;
  };
  return [
    sentence(
      `Tried on the last ${counted(changes, 'change')} of main, the proposed rules would have stopped ${stopped.length} that passed, and let through ${letThrough.length} that failed.`,
    ),
    ...(stopped.length === 0 ? [] : [sentence(`Would have been stopped: ${named(stopped)}.`)]),
    ...(letThrough.length === 0 ? [] : [sentence(`Would have passed: ${named(letThrough)}.`)]),
  ];
}

function policySection({ policyChanges, proposed, policyFrom }: Judged): readonly Section[] {
  if (policyFrom === 'head') {
    return [
      {
        title: 'Policy',
        blocks: [
          sentence(
            "Main has no policy yet, so the branch's own policy judged. Once it is merged, the policy on main judges.",
          ),
        ],
      },
    ];
  }
  if (policyChanges.length === 0) return [];
  const blocks: Block[] = [{ kind: 'entries', entries: policyChanges.map(policyEntry) }];
  if (proposed !== undefined) {
    const reasons = proposed.reasons.length === 0 ? '' : `: ${proposed.reasons.join('; ')}`;
    blocks.push(
      sentence(`By the policy that the branch proposes the verdict would be ${proposed.verdict}${reasons}.`),
      sentence('It does not count here: the policy on main judges until the proposed one is merged.'),
      ...pastSentences(proposed),
    );
  }
  return [{ title: `Policy changes (${policyChanges.length})`, blocks }];
}

const policyKinds: Readonly<Record<PolicyChange['of'], string>> = {
  rule: 'rule ',
  waiver: 'waiver ',
  // The name of a list says that it is one.
  'price-list': '',
  settings: 'settings ',
};

function policyEntry({ direction, of, name, key, from, to, place }: PolicyChange): Entry {
  const what = `${policyKinds[of]}${name}${key === undefined ? '' : `, ${key}`}`;
  return {
    lead: {
      word: directionWord(direction),
      tone: direction === 'looser' || direction === 'unknown' ? 'caution' : 'plain',
    },
    text: `${what} ${alteration(name, from, to)}`,
    excerpt: undefined,
    fields: place === undefined ? [] : [atRevision(place)],
  };
}

function directionWord(direction: PolicyChange['direction']): string {
  switch (direction) {
    case 'tighter':
    case 'looser':
    case 'neither':
      return direction;
    case 'unknown':
      return 'cannot be told';
  }
}

/** A rule that its entry does not rename says its name once. */
function alteration(name: string, from: string | undefined, to: string | undefined): string {
  if (from === undefined && to === undefined) return 'is altered';
  if (from === undefined) return to === name ? 'is new' : `is new: ${to}`;
  if (to === undefined) return from === name ? 'is taken away' : `is taken away; it was ${from}`;
  return `goes from ${from} to ${to}`;
}

// Waivers

/** A waiver that is over is of interest where its subject is, or the policy; else there are the more of them the older the estate. */
function waiverSection(judged: Judged): readonly Section[] {
  const { waivers: uses, findings, changes, policyChanges } = judged;
  const named = new Set([...findings, ...changes].map(({ subject }) => subject.name));
  const isQuiet = ({ state, waiver }: WaiverUse): boolean =>
    state === 'expired' && policyChanges.length === 0 && !named.has(waiver.subject);
  const quiet = uses.filter(isQuiet);
  const entries = uses.flatMap((use): readonly Entry[] => {
    if (isQuiet(use)) return [];
    const said = waiverState(use);
    const { rule, subject, place } = use.waiver;
    return said === undefined
      ? []
      : [
          {
            lead: { word: said.word, tone: 'caution' },
            text: `the waiver of ${rule} for ${subject} ${said.text}`,
            excerpt: undefined,
            fields: [at(place)],
          },
        ];
  });
  const blocks: Block[] = entries.length === 0 ? [] : [{ kind: 'entries', entries }];
  if (quiet.length > 0) {
    const count = `${counted(quiet.length, entries.length === 0 ? 'waiver has' : 'more waiver has', entries.length === 0 ? 'waivers have' : 'more waivers have')} expired`;
    blocks.push(sentence(`${count}; see ${folderOf(quiet.map(({ waiver }) => waiver.place.file))}.`));
  }
  return blocks.length === 0 ? [] : [{ title: 'Waivers to look at', blocks }];
}

/** The folder that all of some files lie in; the files themselves where there is none. */
function folderOf(files: readonly string[]): string {
  const [first = '', ...others] = files;
  const steps = first.split('/').slice(0, -1);
  const shared = steps.filter((_, depth) => {
    const upTo = `${steps.slice(0, depth + 1).join('/')}/`;
    return others.every((file) => file.startsWith(upTo));
  });
  return shared.length === 0 ? [...new Set(files)].join(', ') : `${shared.join('/')}/`;
}

function waiverState({
  state,
  waiver,
}: WaiverUse): { readonly word: string; readonly text: string } | undefined {
  switch (state) {
    case 'used':
    case 'not yet':
      return undefined;
    case 'unused':
      return { word: 'unused', text: 'lets nothing stand; take it out if it is no longer wanted' };
    case 'expired':
      return { word: 'expired', text: `ended on ${waiver.until}; take it out, or have it approved anew` };
    case 'unknown rule':
      return { word: 'unknown rule', text: 'names a rule that the policy does not know; put the name right' };
  }
}

// Not judged

function notJudgedModel(judgement: NotJudged): ReportModel {
  const { problems, base, head, on } = judgement;
  const what = [
    ...(head === undefined ? [] : [shortCommit(head.commit)]),
    ...(base === undefined ? [] : [`against main at ${shortCommit(base.commit)}`]),
  ].join(' ');
  const [only] = problems;
  return {
    tone: 'caution',
    headline:
      problems.length > 1
        ? `not judged: ${counted(problems.length, 'problem')} to put right`
        : summaryLine(judgement),
    fields: [
      problems.length === 1 && only !== undefined
        ? { label: 'To do', form: 'advice', text: only.advice }
        : line(
            'To do',
            'Put right what is named below and judge again. What is not judged is not let through.',
          ),
      ...(what === '' && on === ''
        ? []
        : [line('Asked', `${what === '' ? 'a judgement' : what}${on === '' ? '' : `, as of ${on}`}.`)]),
    ],
    sections: problemSections(problems),
  };
}

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
    ...(whole.length === 0 ? [] : [problemSection('What stands in the way', whole)]),
    ...[...byFile].map(([file, inFile]) => problemSection(file, inFile)),
  ];
}

const problemSection = (title: string, problems: readonly Problem[]): Section => ({
  title,
  blocks: [{ kind: 'entries', entries: problems.map(problemEntry) }],
});

function problemEntry({ place, message, advice, excerpt, revision }: Problem): Entry {
  return {
    lead: undefined,
    text: message,
    excerpt:
      place === undefined || excerpt === undefined || excerpt.trim() === ''
        ? undefined
        : { source: excerpt, place },
    fields: [
      ...(place === undefined ? [] : [at(place, revision === 'base' ? 'on main already' : '')]),
      { label: 'advice', form: 'advice', text: advice },
    ],
  };
}
