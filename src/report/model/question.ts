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
  const asked = `${first ? 'Main declares no server and no volume yet. ' : ''}Is what the branch brings new, or there already: ${askedWords(question)}?`;
  const taken = one ? 'it is taken' : 'they are taken';
  if (file === undefined) {
    return `${asked} It does not say, so ${taken} for new. Write \`existing: true\` on what is there already, or at the top of a new file for all in it: nothing of that is created. Write \`existing: false\` on what is new.`;
  }
  // Once it is merged, the line only misleads.
  const where = `${file}${others.length === 0 ? '' : ` (and of ${counted(others.length, 'other file')})`}`;
  return `${asked} \`existing: true\` at the top of ${where} was for what it was merged with and is not for what is added since, so ${taken} for new. If ${one ? 'it is' : 'all of them are'} new, delete that line, which is no longer needed. If not, write \`existing: true\` on ${one ? 'it' : 'those that are there already'}: nothing of ${one ? 'it' : 'them'} is created then.`;
}

/** Before steps that create what may be there. */
export const stepsQuestion = (question: Question): string =>
  `These steps are for storage that does not exist yet: they create ${askedWords(question)}. If any of that is there already, do not carry them out, since they could overwrite what it holds: mark it existing: true and judge again.`;
