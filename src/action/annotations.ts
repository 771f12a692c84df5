/** Annotations: findings and problems at their very lines, the worst first, no more than the host shows. */

import { byPlace, type Place, type Problem } from '../base/problem.ts';
import { clipped, visible } from '../base/visible.ts';
import { counted } from '../base/wording.ts';
import type { Finding, Judged, Judgement, NotJudged } from '../policy/judgement.ts';
import { summaryLine } from '../report/report.ts';
import { levels } from '../rules/rule.ts';

export type AnnotationLevel = 'error' | 'warning' | 'notice';

export interface Annotation {
  readonly level: AnnotationLevel;
  /** A few words, on one line, harmless. */
  readonly title: string;
  /** Harmless, with line feeds of ours. */
  readonly message: string;
  /** In the head; absent where the line is not there, or no line is meant. */
  readonly place: Place | undefined;
}

export interface Annotations {
  /** The verdict first where it is not pass, then the worst. */
  readonly shown: readonly Annotation[];
  readonly leftOut: number;
}

/**
 * @param most annotations of each level; with 0 there is none but the verdict's
 */
export function annotationsOf(judgement: Judgement, most: number): Annotations {
  const all = judgement.verdict === 'not judged' ? ofProblems(judgement) : ofFindings(judgement);
  const verdictToo = judgement.verdict === 'pass' ? 0 : 1;
  const room: Record<AnnotationLevel, number> = { error: most - verdictToo, warning: most, notice: most };
  const fitting = all.filter(({ level }) => {
    room[level] -= 1;
    return room[level] >= 0;
  });
  const leftOut = all.length - fitting.length;
  // A passing run has no annotation of its verdict that could carry the count.
  const counts = verdictToo === 0 && leftOut > 0 && most > 0;
  const shown = counts ? withRoomForANotice(fitting, most) : fitting;
  const left = all.length - shown.length;
  const count =
    left === 0 ? '' : `${counted(left, 'annotation')} left out here; the job's summary has them all.`;
  return {
    shown: [
      ...(verdictToo === 0 ? [] : [verdictOf(judgement, count)]),
      ...shown,
      ...(counts
        ? [{ level: 'notice' as const, title: 'Ullage: left out', message: count, place: undefined }]
        : []),
    ],
    leftOut: left,
  };
}

function withRoomForANotice(fitting: readonly Annotation[], most: number): readonly Annotation[] {
  const notices = fitting.filter(({ level }) => level === 'notice');
  const last = notices.length < most ? undefined : notices.at(-1);
  return fitting.filter((each) => each !== last);
}

const verdictOf = (judgement: Judgement, count: string): Annotation => ({
  level: 'error',
  title: `Ullage: ${judgement.verdict}`,
  message: [summaryLine(judgement), ...(count === '' ? [] : [count])].join('\n'),
  place: undefined,
});

const longestTitle = 120;

/** What fails comes first, then what this change brings or makes worse, then what is on main already. */
function ofFindings({ findings }: Judged): readonly Annotation[] {
  const state = { new: 0, updated: 0, unchanged: 1, absent: 2 } as const;
  return findings
    .filter(({ baselineState, waiver }) => baselineState !== 'absent' && waiver === undefined)
    .sort(
      (a, b) =>
        Number(b.fails) - Number(a.fails) ||
        levels.indexOf(a.level) - levels.indexOf(b.level) ||
        state[a.baselineState] - state[b.baselineState] ||
        byPlace(asProblem(a), asProblem(b)),
    )
    .map(ofFinding);
}

const asProblem = ({ place, message, advice }: Finding): Problem => ({ place, message, advice });

function ofFinding(finding: Finding): Annotation {
  const { entry, level, baselineState, fails, place, message, advice } = finding;
  const onMain = baselineState === 'unchanged' ? ', already on main' : '';
  const gone = place.revision === 'base';
  return {
    // An error that is not this change's is no error of this run: a pass shows none.
    level: fails ? 'error' : level === 'note' ? 'notice' : 'warning',
    title: clipped(`${entry}: ${level}${onMain}`, longestTitle),
    message: [
      visible(message),
      visible(advice),
      ...(gone ? [visible(`Its last place was ${place.file}:${place.line}:${place.column} on main.`)] : []),
    ].join('\n'),
    place: gone ? undefined : placeIn(place),
  };
}

const placeIn = ({ file, line, column }: Place): Place => ({ file, line, column });

function ofProblems({ problems }: NotJudged): readonly Annotation[] {
  return [...problems].sort(byPlace).map(({ place, revision, message, advice }) => {
    const here = place !== undefined && revision !== 'base';
    return {
      level: 'error' as const,
      title: 'Cannot be judged',
      message: [
        visible(message),
        visible(advice),
        ...(place === undefined || here
          ? []
          : [visible(`In ${place.file}:${place.line}:${place.column} on main.`)]),
      ].join('\n'),
      place: here ? placeIn(place) : undefined,
    };
  });
}
