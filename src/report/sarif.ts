/**
 * A judgement as SARIF 2.1.0 (OASIS), cut only where a code host would refuse all of it, and then with a count. The standard's published types hold what is written to
 * its form, and JSON is the platform's own; a builder on top of them would add a way of saying it and no check.
 */
import { gzipSync } from 'node:zlib';
import type {
  Invocation,
  Location,
  Log,
  Notification,
  PropertyBag,
  ReportingDescriptor,
  Result,
  Run,
  Suppression,
} from 'sarif';
import type { Place, Problem } from '../base/problem.ts';
import { uriOf } from '../base/uri.ts';
import { visible } from '../base/visible.ts';
import { counted, exact } from '../base/wording.ts';
import type { RevisionPlace } from '../change/place.ts';
import type { Finding, Judgement } from '../policy/judgement.ts';
import type { PolicyRule, RuleOrigin, Waiver } from '../policy/policy.ts';
import { type Money, showMoney } from '../price/money.ts';
import { ruleOf } from '../rules/registry.ts';
import { version } from '../version.ts';
import { fingerprint } from './fingerprint.ts';
import { jsonText } from './json-text.ts';
import { markdownAdvice, markdownText } from './markdown-text.ts';
import { groupFindings } from './model/findings.ts';
import { notReadSentence } from './model/not-read.ts';
import { questionSentence } from './model/question.ts';
import { unreadSentence } from './model/unread-main.ts';

export interface SarifOptions {
  /** The version of the tool; Ullage's own where left out. */
  readonly toolVersion?: string;
  /** The repository's root as an absolute `file:` URI that ends in `/`; where left out, the reader knows it. */
  readonly repositoryRoot?: string;
  /** Whether it is to be whole, though a code host may refuse it. */
  readonly all?: boolean;
}

/**
 * What a code host takes of an upload. Its documentation, "SARIF results exceed hard limit": 25,000 results a run (of
 * which it shows the worst 5,000), 20 runs a file, 25,000 rules a run, 1,000 locations a result; "SARIF results file is
 * too large": 10 MB compressed by gzip. Of ours there is one run, and one location a result; of MB the smaller reading.
 */
export const hostLimits = { results: 25_000, gzipBytes: 10_000_000 } as const;

const root = '%SRCROOT%';

/**
 * Writes a judgement as SARIF 2.1.0 (OASIS): whole with `all`, and otherwise the worst of it, as much as a code host
 * takes, with a count of what is left out.
 *
 * @example
 * ```js
 * import { judgeRepository, reportSarif } from 'ullage';
 *
 * const judgement = await judgeRepository('.', { base: 'main', head: 'smaller-plates', on: '2026-11-20' });
 * console.log(JSON.parse(reportSarif(judgement)).runs[0].results[0].ruleId); // no-shrink
 * ```
 */
export function reportSarif(judgement: Judgement, options: SarifOptions = {}): string {
  const all = judgement.verdict === 'not judged' ? [] : judgement.findings;
  let shown = options.all === true ? all : worst(all, hostLimits.results);
  for (;;) {
    const log: Log = {
      $schema: 'https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json',
      version: '2.1.0',
      runs: [runOf(judgement, shown, options)],
    };
    const text = jsonText(log);
    if (options.all === true || shown.length === 0 || isTaken(text)) return text;
    shown = worst(all, Math.floor(shown.length / 2));
  }
}

/** Text that is no longer than the limit is not made longer by compressing it than a few bytes in a thousand. */
const isTaken = (text: string): boolean =>
  Buffer.byteLength(text) < hostLimits.gzipBytes * 0.99 || gzipSync(text).byteLength <= hostLimits.gzipBytes;

/** So many at most, in their own order: those that fail before warnings, and those before what is on main already. */
function worst(findings: readonly Finding[], most: number): readonly Finding[] {
  if (findings.length <= most) return findings;
  const kept = new Set([...groupFindings(findings).values()].flat().slice(0, most));
  return findings.filter((finding) => kept.has(finding));
}

function runOf(
  judgement: Judgement,
  shown: readonly Finding[],
  { toolVersion = version, repositoryRoot }: SarifOptions,
): Run {
  const leftOut = judgement.verdict === 'not judged' ? 0 : judgement.findings.length - shown.length;
  const inForce = judgement.verdict === 'not judged' ? [] : judgement.rules;
  const indexOf = new Map(inForce.map(({ name }, index) => [name, index]));
  return {
    tool: {
      driver: {
        name: 'Ullage',
        version: toolVersion,
        semanticVersion: toolVersion,
        language: 'en',
        rules: inForce.map(descriptor),
        notifications: [
          notJudgedDescriptor,
          unreadMainDescriptor,
          questionDescriptor,
          leftOutDescriptor,
          notReadDescriptor,
        ],
      },
    },
    automationDetails: {
      // The part before the last slash is the category, the same in every run (3.17.3).
      id: `ullage/gate/${judgement.head?.commit ?? ''}`,
      description: { text: 'The judgement of a branch against the main branch.' },
    },
    originalUriBaseIds: {
      [root]: {
        ...(repositoryRoot === undefined ? {} : { uri: repositoryRoot }),
        description: { text: 'The root of the repository.' },
      },
    },
    columnKind: 'utf16CodeUnits',
    invocations: [invocationOf(judgement, leftOut)],
    results: shown.map((finding) => resultOf(finding, indexOf.get(finding.entry))),
    properties: { ...summaryOf(judgement), ...(leftOut === 0 ? {} : { leftOut }) },
  };
}

function summaryOf(judgement: Judgement): PropertyBag {
  const { verdict, reasons, base, head, on } = judgement;
  const common = {
    verdict,
    reasons: [...reasons],
    ...(base === undefined ? {} : { baseCommit: base.commit }),
    ...(head === undefined ? {} : { headCommit: head.commit }),
    ...(on === '' ? {} : { on }),
  };
  if (judgement.verdict === 'not judged') return common;
  const { currencyBefore, currency, before, after, difference } = judgement.cost;
  const shown = (amount: Money, unit = currency): string => showMoney(amount, unit);
  const { unreadMain } = judgement;
  return {
    ...common,
    ...(unreadMain === undefined
      ? {}
      : {
          unreadMain: {
            comparedWith: unreadMain.comparedWith?.commit ?? null,
            commits: unreadMain.commits,
            policy: { ...unreadMain.policy },
            pricedByBranch: [...unreadMain.pricedByBranch],
          },
        }),
    cost: {
      currencyBefore,
      currency,
      before: shown(before, currencyBefore),
      after: shown(after),
      ...(difference === undefined ? {} : { difference: shown(difference) }),
    },
  };
}

/**
 * Text for a message. A brace is doubled because a single one begins a placeholder (3.11.5), and what would read
 * as an embedded link (3.11.6) is broken, so that no proposer puts a link of theirs into a report.
 */
const messageText = (text: string): string =>
  visible(text).replaceAll('](', ']\\u{28}').replaceAll(/[{}]/g, '$&$&');

const messageMarkdown = (markdown: string): string => markdown.replaceAll(/[{}]/g, '$&$&');

function descriptor({ name, entry, level, origin }: PolicyRule): ReportingDescriptor {
  const rule = ruleOf(entry);
  return {
    id: visible(name),
    name: entry.rule,
    shortDescription: { text: messageText(rule.refuses) },
    fullDescription: { text: messageText(`${rule.refuses} ${rule.why}`) },
    help: {
      text: messageText(`${rule.why} ${rule.advice}`),
      markdown: messageMarkdown(`${markdownText(rule.why)}\n\n${markdownAdvice(rule.advice)}`),
    },
    defaultConfiguration: { level },
    properties: { rule: entry.rule, ...originProperties(origin) },
  };
}

function originProperties(origin: RuleOrigin): Readonly<Record<string, string>> {
  switch (origin.kind) {
    case 'repository':
      return {};
    case 'shipped':
      return { shippedIn: origin.pack };
    case 'elsewhere': {
      const { pack, repository, commit, at } = origin;
      return { pack, repository, commit, file: visible(`${at.file}:${at.line}`) };
    }
  }
}

function resultOf(finding: Finding, ruleIndex: number | undefined): Result {
  const { message, advice, waiver, subject, facet, place } = finding;
  return {
    ruleId: visible(finding.entry),
    ...(ruleIndex === undefined ? {} : { ruleIndex }),
    level: finding.level,
    message: {
      text: `${messageText(message)}\n\n${messageText(advice)}`,
      markdown: messageMarkdown(`${markdownText(message)}\n\n${markdownAdvice(advice)}`),
    },
    locations: [
      {
        ...locationOf(place),
        logicalLocations: [
          {
            name: visible(subject.name),
            kind: subject.kind,
            fullyQualifiedName: visible(`${subject.kind} ${subject.name}`),
          },
        ],
        ...(place.revision === 'base' ? { message: { text: 'Its place on the base.' } } : {}),
      },
    ],
    partialFingerprints: { 'finding/v1': fingerprint(finding) },
    baselineState: finding.baselineState,
    // An empty list says that nothing is suppressed; a missing one would leave it unknown (3.27.23).
    suppressions: waiver === undefined ? [] : [suppressionOf(waiver)],
    properties: {
      rule: finding.rule,
      subject: { kind: subject.kind, name: subject.name },
      ...(facet === undefined ? {} : { facet }),
      fails: finding.fails,
      revision: place.revision,
    },
  };
}

const suppressionOf = (waiver: Waiver): Suppression => ({
  kind: 'external',
  status: 'accepted',
  justification: visible(waiver.reason),
  location: locationOf(waiver.place),
  properties: { approvedBy: waiver.approvedBy, from: waiver.from, until: waiver.until },
});

const locationOf = ({ file, line, column }: Place | RevisionPlace): Location => ({
  physicalLocation: {
    artifactLocation: { uri: uriOf(file), uriBaseId: root },
    region: { startLine: line, startColumn: column },
  },
});

const notJudgedId = 'not-judged';

const notJudgedDescriptor: ReportingDescriptor = {
  id: notJudgedId,
  shortDescription: { text: 'Nothing could be judged.' },
  fullDescription: {
    text: 'What could not be judged is never a pass: correct what is named, and judge again.',
  },
  defaultConfiguration: { level: 'error' },
};

const unreadMainId = 'main-unread';

const unreadMainDescriptor: ReportingDescriptor = {
  id: unreadMainId,
  shortDescription: { text: 'The main branch itself cannot be read.' },
  fullDescription: {
    text: 'What it is compared with is its nearest ancestor that reads, and everything since is judged as one change.',
  },
  defaultConfiguration: { level: 'warning' },
};

const notReadId = 'file-not-read';

const notReadDescriptor: ReportingDescriptor = {
  id: notReadId,
  shortDescription: { text: 'A file that looks like one of Ullage lies where none is read.' },
  defaultConfiguration: { level: 'warning' },
};

const questionId = 'new-or-existing';

const questionDescriptor: ReportingDescriptor = {
  id: questionId,
  shortDescription: { text: 'The branch does not say whether what it brings is new or there already.' },
  fullDescription: {
    text: 'It is taken for new, and the steps create it: what is there already is to be marked existing: true.',
  },
  defaultConfiguration: { level: 'warning' },
};

const leftOutId = 'findings-left-out';

const leftOutDescriptor: ReportingDescriptor = {
  id: leftOutId,
  shortDescription: { text: 'Not every finding is in this file.' },
  fullDescription: {
    text: 'A code host refuses a file of too many results, or too large a file, as a whole; the JSON report has every finding.',
  },
  defaultConfiguration: { level: 'warning' },
};

const leftOutSentence = (count: number): string =>
  `${counted(count, 'finding is', 'findings are')} left out here, since a code host takes at most ${exact(BigInt(hostLimits.results))} results and 10 MB compressed; the JSON report has every one, and so has this one with --all.`;

function invocationOf(judgement: Judgement, leftOut: number): Invocation {
  const warned = (id: string, index: number, text: string): Notification => ({
    descriptor: { id, index },
    level: 'warning',
    message: { text: messageText(text) },
  });
  const { notRead = [] } = judgement;
  const unread = notRead.map(
    (file): Notification => ({
      ...warned(notReadId, 4, notReadSentence(file)),
      locations: [locationOf({ file: file.file, line: 1, column: 1 })],
    }),
  );
  if (judgement.verdict !== 'not judged') {
    const { unreadMain, question } = judgement;
    const notifications = [
      ...(unreadMain === undefined ? [] : [warned(unreadMainId, 1, unreadSentence(unreadMain))]),
      ...(question === undefined ? [] : [warned(questionId, 2, questionSentence(question))]),
      ...(leftOut === 0 ? [] : [warned(leftOutId, 3, leftOutSentence(leftOut))]),
      ...unread,
    ];
    return {
      executionSuccessful: true,
      ...(notifications.length === 0 ? {} : { toolExecutionNotifications: notifications }),
    };
  }
  return {
    executionSuccessful: false,
    toolExecutionNotifications: [...judgement.problems.map(notificationOf), ...unread],
  };
}

const notificationOf = ({ place, revision, message, advice }: Problem): Notification => ({
  descriptor: { id: notJudgedId, index: 0 },
  level: 'error',
  message: { text: `${messageText(message)}\n\n${messageText(advice)}` },
  ...(place === undefined ? {} : { locations: [locationOf(place)] }),
  ...(revision === undefined ? {} : { properties: { revision } }),
});
