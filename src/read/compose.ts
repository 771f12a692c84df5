/**
 * YAML text -> its representation graph, by the exact library; or what is wrong with the text, in the user's words.
 * The parser's syntax tree and the library's composer are run together, so that depth is refused while it is read.
 */
import { Composer, type CST, Lexer, Parser, type Document as YamlDocument } from 'yaml';
import { byPlace, err, type Outcome, ok, type Problem, problemKey } from '../base/problem.ts';
import type { Lines } from './lines.ts';
import { deepest } from './value.ts';
import { wordsFor } from './yaml-words.ts';

/** How deep the syntax may nest before it is composed: a level of values takes two of syntax at the most. */
const deepestSyntax = 2 * deepest + 16;

/** The one document of a text, or everything that keeps it from being composed. */
export function compose(text: string, lines: Lines): Outcome<YamlDocument.Parsed> {
  const problemAt = (offset: number, message: string, advice: string): Problem => {
    const place = lines.place(Math.min(offset, Math.max(0, text.length - 1)));
    return { place, message, advice, excerpt: lines.line(place.line) };
  };
  let documents: readonly YamlDocument.Parsed[];
  try {
    documents = composed(text);
  } catch (error) {
    if (error instanceof Refusal) return err(problemAt(error.offset, error.message, error.advice));
    return err(
      error instanceof RangeError
        ? problemAt(0, tooDeep, flatten)
        : problemAt(0, 'the file cannot be read as YAML', 'Check the file with a YAML linter.'),
    );
  }
  const [yaml, second] = documents;
  const errors = [...(yaml?.errors ?? []), ...(yaml?.warnings ?? [])];
  const broken = errors.filter(({ code }) => code !== 'TAG_RESOLVE_FAILED');
  const marker = broken.length === 0 ? null : conflictMarker.exec(text);
  if (marker !== null) {
    const { line } = lines.place(marker.index);
    return err(problemAt(marker.index, `line ${line} is a merge conflict marker`, settleConflict));
  }
  const problems = [
    ...(yaml === undefined ? [] : brokenPlaces(yaml, broken, text, problemAt)),
    ...errors
      .filter(({ code }) => code === 'TAG_RESOLVE_FAILED')
      .map(({ pos }) => problemAt(pos[0], `the tag ${text.slice(...pos)} is not supported`, leaveTagOut)),
  ].sort(byPlace);
  if (second !== undefined) {
    problems.push(
      problemAt(
        second.range[0],
        'a second document begins here, and a file can hold only one',
        'Move it to a file of its own, and remove the lines --- and ... between them.',
      ),
    );
  }
  // The library tells some twice: as an error, and as a warning.
  const once = [...new Map(problems.map((problem) => [problemKey(problem), problem])).values()];
  if (once.length > 0 || yaml === undefined) return err(...once);
  return ok(yaml);
}

/** A line that git writes around the two sides of a conflict. */
const conflictMarker = /^(?:<{7}|={7}|>{7})(?=[ \r\n]|$)/m;

const settleConflict =
  'Resolve the conflict: keep what is right from both sides, and delete the lines <<<<<<<, ======= and >>>>>>>.';

/** The most places that are named in one file whose YAML is broken; what follows is most often their consequence. */
const brokenAtMost = 3;

/** The first thing that is wrong in each line, at the first few lines; the rest is counted. */
function brokenPlaces(
  yaml: YamlDocument.Parsed,
  errors: YamlDocument.Parsed['errors'],
  text: string,
  problemAt: (offset: number, message: string, advice: string) => Problem,
): readonly Problem[] {
  // Where a tab indents, whatever else is wrong comes of it.
  const tabs = errors.filter(({ code }) => code === 'TAB_AS_INDENT');
  const all = (tabs.length > 0 ? tabs : errors).toSorted((a, b) => a.pos[0] - b.pos[0]);
  // Once the document has ended, so that nothing more fits, that is all there is to put right.
  const end = all.findIndex(({ message }) => message.includes('in YAML stream'));
  const inOrder = end === -1 ? all : all.slice(0, end + 1);
  const lineOf = (error: (typeof errors)[number]) => problemAt(error.pos[0], '', '').place?.line;
  const firsts = inOrder.filter((error, index) => {
    const before = inOrder[index - 1];
    return before === undefined || lineOf(error) !== lineOf(before);
  });
  const more = firsts.length - brokenAtMost;
  return firsts.slice(0, brokenAtMost).map((error, index) => {
    const { offset, message, advice } = wordsFor(error, text, yaml);
    return problemAt(
      offset,
      `the YAML is not valid here: ${message}`,
      more > 0 && index === brokenAtMost - 1
        ? `${advice} ${more} more ${more === 1 ? 'line' : 'lines'} below may only be invalid because of these.`
        : advice,
    );
  });
}

export const tooDeep = `values nest more than ${deepest} levels deep`;
export const flatten = 'Flatten the file; no format needs so many levels.';
export const leaveTagOut = 'Remove the tag; text in quotes is always text.';

/** What is refused before the text is composed. */
class Refusal extends Error {
  readonly offset: number;
  readonly advice: string;

  constructor(offset: number, message: string, advice: string) {
    super(message);
    this.offset = offset;
    this.advice = advice;
  }
}

/**
 * The first two documents of a text, as the library's `parseDocument` makes them. The composer recurses, and deep
 * enough it takes the whole process down with it, so the depth is looked at while the syntax is read.
 */
function composed(text: string): readonly YamlDocument.Parsed[] {
  // The library's own check for duplicate keys compares every key of a map with every other; the walk over the
  // values finds the same duplicates with one look-up a key.
  const composer = new Composer({ version: '1.2', schema: 'core', uniqueKeys: false, prettyErrors: false });
  const documents: YamlDocument.Parsed[] = [];
  for (const document of composer.compose(shallowTokens(text), true, text.length)) {
    documents.push(document);
    if (documents.length === 2) break;
  }
  return documents;
}

function* shallowTokens(text: string): Generator<CST.Token> {
  const parser = new Parser();
  let versions = 0;
  for (const lexeme of new Lexer().lex(text)) {
    for (const token of parser.next(lexeme)) {
      // The library lets a second one pass, and the last would silently win.
      if (token.type === 'directive' && token.source.startsWith('%YAML') && ++versions === 2)
        throw new Refusal(token.offset, 'the YAML version is given twice', 'Remove the %YAML lines.');
      yield token;
    }
    if (parser.stack.length > deepestSyntax) throw new Refusal(parser.offset, tooDeep, flatten);
  }
  yield* parser.end();
}
