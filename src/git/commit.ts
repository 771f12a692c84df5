/** A commit object's text -> who, when, why, and what it stands on. Nothing is run and no signature is verified. */
import { err, type Outcome, ok } from '../base/problem.ts';

export interface Signature {
  readonly name: string;
  readonly email: string;
  /** RFC 3339, with the offset that was written down. */
  readonly date: string;
}

export interface Commit {
  readonly id: string;
  readonly tree: string;
  /** As the commit names them, also where a shallow clone does not hold them. */
  readonly parents: readonly string[];
  readonly author: Signature;
  readonly committer: Signature;
  /** Whether a signature is there at all. Whose it is, and whether it is good, is not known. */
  readonly signature: 'present' | 'absent';
  /** The whole message, trailers and all. */
  readonly message: string;
}

export function parseCommit(id: string, content: Uint8Array): Outcome<Commit> {
  const raw = Buffer.from(content.buffer, content.byteOffset, content.byteLength);
  const end = raw.indexOf('\n\n');
  const head = end === -1 ? raw : raw.subarray(0, end);
  // Headers are ASCII but for the people's names; latin1 keeps every byte until the encoding is known.
  const headers = head
    .toString('latin1')
    .replace(/\n$/, '')
    .split('\n')
    .filter((line) => !line.startsWith(' '))
    .map((line) => {
      const space = line.indexOf(' ');
      return { key: line.slice(0, space), value: line.slice(space + 1) };
    });
  const all = (key: string) => headers.filter((header) => header.key === key).map(({ value }) => value);
  const decode = decoderFor(all('encoding')[0]);
  const tree = all('tree')[0];
  const author = signatureOf(all('author')[0], decode);
  const committer = signatureOf(all('committer')[0], decode);
  if (tree === undefined || author === undefined || committer === undefined) {
    return err({
      message: `the commit ${id} has no tree, author or date`,
      advice: 'Run `git fsck` in the repository, and repair what it reports.',
    });
  }
  return ok({
    id,
    tree,
    parents: all('parent'),
    author,
    committer,
    signature: headers.some(({ key }) => key === 'gpgsig' || key === 'gpgsig-sha256') ? 'present' : 'absent',
    message: end === -1 ? '' : decode(raw.subarray(end + 2)),
  });
}

type Decode = (bytes: Uint8Array) => string;

function decoderFor(encoding: string | undefined): Decode {
  let decoder = new TextDecoder('utf-8');
  try {
    decoder = new TextDecoder(encoding ?? 'utf-8');
  } catch {
    // An encoding nobody knows: what is ASCII in it is still read.
  }
  return (bytes) => decoder.decode(bytes);
}

function signatureOf(line: string | undefined, decode: Decode): Signature | undefined {
  const parts = /^(.*?) ?<([^<>]*)> (-?\d{1,12}) ([+-])(\d{2})(\d{2})$/.exec(line ?? '');
  if (parts === null) return undefined;
  const [, name = '', email = '', seconds, sign, hours, minutes] = parts;
  const offset = (Number(hours) * 60 + Number(minutes)) * (sign === '-' ? -1 : 1);
  const local = new Date((Number(seconds) + offset * 60) * 1000);
  if (Number(hours) > 23 || Number(minutes) > 59 || !/^[0-9]{4}-/.test(isoOr(local))) return undefined;
  const text = (part: string) => decode(Buffer.from(part, 'latin1'));
  return {
    name: text(name),
    email: text(email),
    date: `${isoOr(local).slice(0, 19)}${offset === 0 ? 'Z' : `${sign}${hours}:${minutes}`}`,
  };
}

const isoOr = (date: Date): string => (Number.isNaN(date.getTime()) ? '' : date.toISOString());
