/** What is asked of whoever brings many things at once: are they new, or there already? */
import { counted } from '../../base/wording.ts';
import type { Question } from '../../change/question.ts';

/** Ends without a full stop, such as `5 servers and 12 volumes`. */
export function askedWords({ servers, volumes }: Question): string {
  const parts = [
    ...(servers.length === 0 ? [] : [counted(servers.length, 'server')]),
    ...(volumes.length === 0 ? [] : [counted(volumes.length, 'volume')]),
  ];
  return parts.join(' and ');
}

/** In the first lines: what is not said, how it was taken, and what to write. */
export function questionSentence(question: Question): string {
  const { first, spent } = question;
  const one = question.servers.length + question.volumes.length === 1;
  const [file, ...others] = spent;
  return [
    `${first ? 'Main declares no server and no volume yet. ' : ''}Is what the branch brings new, or there already: ${askedWords(question)}?`,
    ...(file === undefined
      ? [`It does not say, so ${one ? 'it is' : 'they are'} taken for new.`]
      : [
          `\`existing: true\` at the top of ${file}${others.length === 0 ? '' : ` (and ${counted(others.length, 'other file')})`} is on main already and says nothing of what is added later, so ${one ? 'it is' : 'they are'} taken for new.`,
        ]),
    'Write `existing: true` on what is there already, or at the top of a new file for all in it: nothing of that is created. Write `existing: false` on what is new.',
  ].join(' ');
}

/** Before steps that create what may be there. */
export const stepsQuestion = (question: Question): string =>
  `These steps are for storage that does not exist yet: they create ${askedWords(question)}. If any of that is there already, do not carry them out, since they could overwrite what it holds: mark it existing: true and judge again.`;
