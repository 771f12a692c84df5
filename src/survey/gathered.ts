/** Reads what the script of `ullage survey script` printed, and says of anything else what it is. */
import { err, type Outcome, ok, type Problem } from '../base/problem.ts';
import { readDocument } from '../read/document.ts';
import type { GatheredFile } from '../read/generated/gathered.ts';
import { isRecord } from '../read/schema-error.ts';
import { validate } from '../read/validate.ts';

/** The version of the format that is read; what is read must say it. */
const gatheredFormat = 'ullage-gathered-1';

/** No server has so many disks that the script prints more. */
export const mostGathered = 8 << 20;

const advice =
  'Give it what the script of `ullage survey script` prints: ullage survey script | ssh SERVER sudo sh > FILE';

/** @param file the name that places give it */
export function readGathered(content: Uint8Array, file: string): Outcome<GatheredFile> {
  const place = { file, line: 1, column: 1 };
  const refuse = (message: string, todo = advice) => err({ place, message, advice: todo });
  if (content.length > mostGathered) return refuse(`it is larger than ${mostGathered >> 20} MiB`);
  const text = decoded(content);
  if (text.trim() === '') return refuse('there is nothing in it');
  let parsed: unknown;
  try {
    parsed = JSON.parse(text);
  } catch (error) {
    const isCut = text.trimStart().startsWith('{') && text.includes('"ullage-gathered-');
    if (!isCut) return refuse(whatItIs(text));
    return refuse(
      `it is cut off or damaged: ${error instanceof Error ? error.message : String(error)}`,
      'Run the script again, and take all that it prints.',
    );
  }
  if (!isRecord(parsed) || !('format' in parsed)) return refuse(jsonThatItIs(parsed));
  if (
    typeof parsed.format === 'string' &&
    parsed.format !== gatheredFormat &&
    /^ullage-gathered-/.test(parsed.format)
  ) {
    return refuse(
      'it is what the script of another version of Ullage prints',
      'Print the script with this version, and run that.',
    );
  }
  const document = readDocument(text, file);
  if (!document.ok) return document;
  const valid = validate('gathered', document.value);
  if (!valid.ok) return err(...valid.problems.map(shorter));
  const { value, problems } = valid.value;
  return problems.length > 0 ? err(...problems.map(shorter)) : ok(value);
}

/**
 * A mount point may be named in bytes that are no text: it is left out, and the rest is good. Some shells of Windows
 * write what is redirected into a file as UTF-16, with a mark in front.
 */
const decoded = (content: Uint8Array): string =>
  new TextDecoder(content[0] === 0xff && content[1] === 0xfe ? 'utf-16le' : 'utf-8').decode(content);

/** What somebody most likely took instead. */
function whatItIs(text: string): string {
  const start = text.trimStart();
  if (/^\{\s*"format": "ullage-gathered-/m.test(start))
    return 'something else stands before what the script prints';
  if (start.startsWith('#!')) return 'it is the script itself, not what it prints';
  if (/^<(!doctype|html|\?xml)/i.test(start)) return 'it is a web page';
  if (/^Filesystem[ \t]/.test(start)) return 'it is what df prints; `ullage reading add` takes that';
  if (/^(NAME|KNAME)[ \t]/.test(start)) return 'it is the table that lsblk prints';
  return 'it is not JSON';
}

function jsonThatItIs(value: unknown): string {
  if (!isRecord(value)) return 'it is JSON, and not what the script prints';
  if ('blockdevices' in value) return 'it is what lsblk alone prints';
  if ('filesystems' in value) return 'it is what findmnt alone prints';
  if ('report' in value) return 'it is what the volume manager alone prints';
  return 'it is JSON, and not what the script prints';
}

/** What a tool prints may be one line of any length. */
const shorter = (problem: Problem): Problem => ({ ...problem, excerpt: problem.excerpt?.slice(0, 200) });
