/** The first lines: the verdict and why, and what to do. */

import { clipped } from '../../base/visible.ts';
import { counted } from '../../base/wording.ts';
import type { Judged, Judgement } from '../../policy/judgement.ts';
import { advice, line } from './blocks.ts';
import { lossSentence } from './changes.ts';
import { adviceOf, groupOf } from './findings.ts';
import type { Field } from './model.ts';
import { policySentence } from './policy-changes.ts';
import { shortCommit } from './subjects.ts';

const longestHeadline = 400;

/** The verdict and the reason on one line, harmless in any place. */
export function summaryLine(judgement: Judgement): string {
  const [first = 'no reason given', ...others] = judgement.reasons;
  switch (judgement.verdict) {
    case 'pass': {
      const loss = lossSentence(judgement.changes) ?? [];
      const { notRead = [], uncommitted } = judgement;
      const unread =
        notRead.length === 0 ? [] : [`${counted(notRead.length, 'file was', 'files were')} not read`];
      const unjudged = uncommitted === undefined ? [] : [uncommittedWords(uncommitted)];
      return `pass: ${clipped([first].concat(unread, unjudged, loss, others).join('; '), longestHeadline)}`;
    }
    case 'fail': {
      const more = others.length === 0 ? '' : `, and ${counted(others.length, 'more finding')}`;
      const loss = lossSentence(judgement.changes);
      return `fail: ${clipped(first, longestHeadline)}${more}${loss === undefined ? '' : `; ${loss}`}`;
    }
    case 'not judged':
      return `not judged: ${clipped(first, longestHeadline)}`;
  }
}

const uncommittedWords = (files: number): string =>
  files === 1
    ? '1 file is changed and not committed, and was not judged'
    : `${files} files are changed and not committed, and were not judged`;

/** What is on the disk alone, and was not looked at. */
export const notCommittedFields = (files: number | undefined): readonly Field[] =>
  files === undefined
    ? []
    : [
        advice(
          'Not judged',
          `${counted(files, 'file that is', 'files that are')} changed and not committed; \`ullage gate --worktree\` judges ${files === 1 ? 'it' : 'them'}.`,
        ),
      ];

export function whatToDo({ verdict, findings, changes, policyChanges }: Judged): Field {
  const loosened = policySentence(policyChanges);
  const failing = findings.filter(({ fails }) => fails);
  const [first] = failing;
  if (verdict === 'fail' && first !== undefined) {
    return advice('To do', `${adviceOf(first)}${othersBelow(failing.length - 1)}${loosened}`);
  }
  const loss = lossSentence(changes);
  if (loss !== undefined) {
    return line('To do', `Read the cautions below before you merge: ${loss}.${loosened}`);
  }
  const read = findings.some((finding) => groupOf(finding) === 'warns')
    ? ' Read the warnings and notes below.'
    : '';
  return line('To do', `No rule forbids the merge.${loosened}${read}`);
}

const othersBelow = (others: number): string =>
  others === 0 ? '' : ` For the other ${others === 1 ? 'finding' : `${others} findings`}, see below.`;

/** What was compared, on which day, and by whose policy. */
export function judgedSentence({ base, head, on, policyFrom, failOn, unreadMain }: Judged): string {
  const none = unreadMain === undefined ? 'none yet' : 'none that reads';
  const whose =
    policyFrom === 'base' ? 'by the policy on main' : `by the branch's own policy, because main has ${none}`;
  const strict = failOn === 'warning' ? '; warnings fail as well' : '';
  const main =
    base.commit === 'nothing' ? 'a main branch without a commit' : `main at ${shortCommit(base.commit)}`;
  return `${shortCommit(head.commit)} against ${main}, as of ${on}, ${whose}${strict}.`;
}
