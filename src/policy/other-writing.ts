/**
 * Waivers whose subject is written otherwise than findings have it: in other letters, with its kind before it, with
 * another kind than it has, under the name it had before it was renamed, or a file system by its mount point alone. They
 * cover nothing, since a waiver is never stretched; but what is meant can be told, with the line to write.
 */
import { baseSubject, type Renames } from '../change/renames.ts';
import type { Subject } from '../estate/estate.ts';
import type { Finding } from './judgement.ts';
import type { Waiver } from './policy.ts';
import { isFor } from './waiver.ts';

/** A waiver as it would have to be written, in one line of a waivers file. */
export interface OtherWriting {
  readonly subject: Subject;
  readonly line: string;
}

/**
 * The first finding that a waiver covers nothing of for its writing alone.
 *
 * @param findings those that stand and no waiver covers
 */
export function otherWriting(
  waiver: Waiver,
  findings: readonly Finding[],
  renames: Renames,
): OtherWriting | undefined {
  const meant = findings.find(({ rule, entry, subject }) => {
    const named = { name: entry, entry: { rule } };
    const asFinding: Waiver = { ...waiver, subject: subject.name, kind: subject.kind };
    return (
      isFor(asFinding, named, subject) &&
      !isFor(waiver, named, subject) &&
      writingsOf(subject, renames).has(plain(waiver.subject))
    );
  });
  return meant === undefined
    ? undefined
    : {
        subject: meant.subject,
        line: lineOf(waiver, meant.subject.name, waiver.kind === undefined ? undefined : meant.subject.kind),
      };
}

/** The waiver's line for the one of some names that it is another writing of. */
export function lineForName(waiver: Waiver, names: Iterable<string>): string | undefined {
  const meant = [...names].filter((name) => plain(name) === plain(waiver.subject));
  const [only, ...others] = meant;
  return only === undefined || others.length > 0 ? undefined : lineOf(waiver, only, waiver.kind);
}

const kindWords =
  /^(?:the )?(?:volume[- ]group|volume|server|team|site|label|file[- ]system|group)[\s:/]+(?=\S)/;

/** Without what letters and kinds add. */
const plain = (text: string): string => text.trim().toLowerCase().replace(kindWords, '');

function writingsOf(subject: Subject, renames: Renames): ReadonlySet<string> {
  const names = [subject.name, baseSubject(renames, subject).name];
  const writings = names.flatMap((name) => {
    const at = name.indexOf(':');
    if (subject.kind !== 'file-system' || at < 0) return [name];
    const [on, mount] = [name.slice(0, at), name.slice(at + 1)];
    return [name, mount, `${on}${mount}`, `${on} ${mount}`];
  });
  return new Set(writings.map(plain));
}

/** Whole, so that nothing of what was approved is lost in writing it anew. */
function lineOf(waiver: Waiver, subject: string, kind: string | undefined): string {
  const keys: readonly (readonly [string, string | undefined])[] = [
    ['rule', waiver.rule],
    ['name', waiver.name],
    ['subject', subject],
    ['kind', kind],
    ['up-to', waiver.upTo?.written],
    ['reason', waiver.reason],
    ['approved-by', waiver.approvedBy],
    ['from', waiver.from],
    ['until', waiver.until],
  ];
  const written = keys.flatMap(([key, value]) =>
    value === undefined ? [] : [`${key}: ${scalar(key, value)}`],
  );
  return `- { ${written.join(', ')} }`;
}

/** A JSON string is a YAML scalar, too; dates and plain words stand as people write them. */
const scalar = (key: string, value: string): string =>
  key === 'from' ||
  key === 'until' ||
  (key !== 'up-to' && /^[A-Za-z][A-Za-z0-9 ._/-]*$/.test(value) && !isWord(value))
    ? value
    : JSON.stringify(value);

/** What YAML takes for something else than text. */
const isWord = (value: string): boolean => /^(?:true|false|null|yes|no|on|off)$/i.test(value.trim());
