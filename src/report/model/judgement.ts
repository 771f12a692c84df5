/** A judgement as a report: the first lines answer, the sections follow. */
import { counted } from '../../base/wording.ts';
import type { Judged, Judgement, NotJudged } from '../../policy/judgement.ts';
import { advice, line } from './blocks.ts';
import { cautionSection } from './cautions.ts';
import { changeSection } from './changes.ts';
import { costSection, costSentence } from './cost.ts';
import { countGroups, findingSections, groupFindings, type LineAt, wayToRule } from './findings.ts';
import { headroomSection } from './headroom.ts';
import type { ReportModel } from './model.ts';
import { notReadFields } from './not-read.ts';
import { policySection } from './policy-changes.ts';
import { problemSections } from './problems.ts';
import { questionSentence } from './question.ts';
import { stepSection } from './steps.ts';
import { shortCommit } from './subjects.ts';
import { unreadSentence } from './unread-main.ts';
import { judgedSentence, notCommittedFields, summaryLine, whatToDo } from './verdict.ts';
import { waiverSection } from './waivers.ts';

/** @param lineAt gives the lines that findings are about, where the report has room for them */
export function reportModel(judgement: Judgement, lineAt: LineAt = () => undefined): ReportModel {
  switch (judgement.verdict) {
    case 'pass':
    case 'fail':
      return judgedModel(judgement, lineAt);
    case 'not judged':
      return notJudgedModel(judgement);
  }
}

function judgedModel(judged: Judged, lineAt: LineAt): ReportModel {
  const grouped = groupFindings(judged.findings);
  return {
    tone: judged.verdict === 'fail' ? 'fails' : 'plain',
    headline: summaryLine(judged),
    fields: [
      ...(judged.unreadMain === undefined ? [] : [line('Main', unreadSentence(judged.unreadMain))]),
      ...notReadFields(judged.notRead),
      ...notCommittedFields(judged.uncommitted),
      line('Cost', costSentence(judged)),
      ...(judged.question === undefined ? [] : [advice('Question', questionSentence(judged.question))]),
      whatToDo(judged),
      ...(grouped.size === 0 ? [] : [advice('Findings', `${countGroups(grouped)} ${wayToRule(grouped)}`)]),
      line('Judged', judgedSentence(judged)),
    ],
    sections: [
      ...findingSections(grouped, lineAt),
      ...cautionSection(judged),
      ...changeSection(judged.changes),
      ...costSection(judged),
      ...headroomSection(judged.headroom),
      ...policySection(judged),
      ...waiverSection(judged),
      ...stepSection(judged),
    ],
  };
}

function notJudgedModel(judgement: NotJudged): ReportModel {
  const { problems, base, head, on } = judgement;
  const compared = [
    ...(head === undefined ? [] : [shortCommit(head.commit)]),
    ...(base === undefined
      ? []
      : [
          base.commit === 'nothing'
            ? 'against a main branch without a commit'
            : `against main at ${shortCommit(base.commit)}`,
        ]),
  ].join(' ');
  const asked = [compared, on === '' ? '' : `as of ${on}`].filter((part) => part !== '');
  const [only] = problems;
  return {
    tone: 'caution',
    headline:
      problems.length > 1
        ? `not judged: ${counted(problems.length, 'problem')} to correct`
        : summaryLine(judgement),
    fields: [
      problems.length === 1 && only !== undefined
        ? advice('To do', only.advice)
        : line('To do', 'Correct the problems below and judge again. What is not judged does not pass.'),
      ...notReadFields(judgement.notRead),
      ...notCommittedFields(judgement.uncommitted),
      ...(asked.length === 0 ? [] : [line('Compared', `${asked.join(', ')}.`)]),
    ],
    sections: problemSections(problems),
  };
}
