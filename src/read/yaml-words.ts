/**
 * What is wrong with the syntax of a YAML text, in plain words and with what to do: one entry for each kind of error
 * that the library tells apart. Of its own words only those are looked at that tell two slips of one kind apart.
 */
import { type ErrorCode, isCollection, isScalar, visit, type Document as YamlDocument } from 'yaml';
import { quoted } from '../base/nearest.ts';

/** An error as the library has it. */
export interface SyntaxError {
  readonly code: ErrorCode;
  readonly pos: readonly [number, number];
  readonly message: string;
}

export interface Words {
  /** Where it is best looked at: where what is not closed was opened. */
  readonly offset: number;
  readonly message: string;
  readonly advice: string;
}

/** The text about an error. */
interface About {
  readonly document: YamlDocument.Parsed;
  readonly text: string;
  readonly offset: number;
  readonly said: string;
  /** Its line, up to it and from it on. */
  readonly before: string;
  readonly rest: string;
}

type Said = Pick<Words, 'message' | 'advice'> & Partial<Words>;

export function wordsFor(error: SyntaxError, text: string, document: YamlDocument.Parsed): Words {
  const [offset] = error.pos;
  const start = text.lastIndexOf('\n', offset - 1) + 1;
  const end = text.indexOf('\n', offset);
  const about: About = {
    document,
    text,
    offset,
    said: error.message,
    before: text.slice(start, offset),
    rest: text.slice(offset, end === -1 ? undefined : end).trim(),
  };
  return { offset, ...words[error.code](about) };
}

const words: Readonly<Record<ErrorCode, (about: About) => Said>> = {
  TAB_AS_INDENT: () => ({
    message: 'a tab indents this line',
    advice: 'Put spaces in its place; YAML is indented by spaces alone.',
  }),
  BAD_INDENT: (about) =>
    notClosed(about) ?? {
      message: 'this line is indented otherwise than those it belongs with',
      advice:
        'Indent all keys of one mapping alike, and all items of one list; what belongs to a key stands deeper than it.',
    },
  MISSING_CHAR: (about) => notClosed(about) ?? missing(about),
  MULTILINE_IMPLICIT_KEY: noKey,
  BLOCK_AS_IMPLICIT_KEY: (about) =>
    noColon(about) ??
    (/\S:(?:\s|$)/.test(about.rest) && !isItem(about)
      ? {
          message: `a second colon stands on this line: ${quoted(about.rest)}`,
          advice: 'Put a value that holds a colon in quotes, and write each key on a line of its own.',
        }
      : noKey(about)),
  UNEXPECTED_TOKEN: unexpected,
  BLOCK_IN_FLOW: (about) =>
    isItem(about)
      ? {
          message: 'an item begins with a dash within brackets',
          advice: 'Separate what is within [ ] by commas, without dashes: `[a, b]`.',
        }
      : noComma,
  BAD_SCALAR_START: ({ rest }) => {
    const character = firstOf(rest);
    return {
      message: `text cannot begin with ${character}`,
      advice: `Put it in quotes${character === '@' ? ', such as "@imagery"' : ''}.`,
    };
  },
  BAD_DQ_ESCAPE: () => ({
    message: 'a backslash in double quotes does not go with what follows it',
    advice: 'Write two for one, or put the text in single quotes, in which a backslash is one.',
  }),
  DUPLICATE_KEY: () => ({ message: 'a key is there twice', advice: 'Keep one of the two.' }),
  KEY_OVER_1024_CHARS: () => ({
    message: 'a key is longer than 1,024 characters',
    advice: 'Write a colon and a space where it ends.',
  }),
  NON_STRING_KEY: () => ({
    message: 'a key here is not text',
    advice: 'Write each key as plain text followed by a colon.',
  }),
  BAD_DIRECTIVE: () => ({
    message: 'a line that begins with % is not supported',
    advice: 'Remove it; text that begins with % goes in quotes.',
  }),
  MULTIPLE_DOCS: () => ({
    message: 'a second document begins here, and a file can hold only one',
    advice: 'Move it to a file of its own.',
  }),
  ALIAS_PROPS: anchors,
  BAD_ALIAS: anchors,
  BAD_PROP_ORDER: anchors,
  MULTIPLE_ANCHORS: anchors,
  MULTIPLE_TAGS: anchors,
  BAD_COLLECTION_TYPE: anchors,
  TAG_RESOLVE_FAILED: anchors,
  RESOURCE_EXHAUSTION: () => ({
    message: 'this is too much to be read as YAML',
    advice: 'Split the file.',
  }),
  IMPOSSIBLE: general,
};

function anchors(): Said {
  return {
    message: 'anchors (&), aliases (*) and tags (!) are not supported',
    advice: 'Write each value out in full; text that begins with &, * or ! goes in quotes.',
  };
}

function general({ rest }: About): Said {
  return {
    message: rest === '' ? 'something is missing before this line ends' : `${quoted(rest)} cannot stand here`,
    advice:
      'Write each key as `key: value`, indented by spaces; text that holds other characters goes in quotes.',
  };
}

const noComma: Said = {
  message: 'a comma is missing between two entries in brackets',
  advice: 'Separate them by commas: `{ size: 50 GiB, tier: bulk }`.',
};

const firstOf = (text: string): string => [...text][0] ?? '';

const isItem = ({ rest }: About): boolean => /^-(?:\s|$)/.test(rest);

/** A mapping or a list begins behind a key that has no colon. */
function noColon({ before, offset }: About): Said | undefined {
  const [, indent = '', key, bracket] = /^(\s*)([^\s:#{}[\],"']+)\s+([{[])/.exec(before) ?? [];
  return key === undefined
    ? undefined
    : {
        offset: offset - before.length + indent.length,
        message: `a colon is missing behind ${quoted(key)}`,
        advice: `Write \`${key}: ${bracket}\`.`,
      };
}

/** Where a line or its neighbour is taken for a key that goes on over several lines, or has none at all. */
function noKey(about: About): Said {
  const { before, rest } = about;
  if (isItem(about)) {
    return {
      message: 'an item of a list stands among keys',
      advice: 'Indent all items of one list alike, and the keys beside the list less than its items.',
    };
  }
  if (/[:-]\s+$/.test(before)) {
    return {
      message: `the next line is indented deeper, and ${quoted(rest)} is a value already`,
      advice: 'Indent it as this line is; or leave the value out, where the next line belongs to its key.',
    };
  }
  const [, key, value] = /^([^\s:#{}[\],"']+):(\S.*)$/.exec(rest) ?? [];
  if (key !== undefined && value !== undefined) {
    return {
      message: `a space is missing after the colon: ${quoted(rest)}`,
      advice: `Write \`${key}: ${quoted(value)}\`.`,
    };
  }
  return {
    message:
      rest === ''
        ? 'a key is missing its colon'
        : `a colon and a space are missing after a key: ${quoted(rest)}`,
    advice: 'Write each key and its value as `key: value`.',
  };
}

function missing(about: About): Said {
  const { said, before, rest } = about;
  if (rest.startsWith('#') && before.trim() !== '') {
    return {
      message: 'a space is missing before the #',
      advice: 'Write a space before a comment; text that holds a # goes in quotes.',
    };
  }
  if (said.startsWith('Missing , ')) return noComma;
  if (said.startsWith('Missing space after :')) {
    return { message: 'a space is missing after the colon', advice: 'Write it as `key: value`.' };
  }
  if (said.startsWith('Sequence item')) {
    return {
      message: 'this line is no item of the list above it',
      advice:
        'Begin each item with a dash and a space, and indent all that belongs to it as its first key is.',
    };
  }
  if (said.startsWith('Tags and anchors')) return anchors();
  if (said.includes('directives-end')) {
    return {
      message: 'a line --- is missing after the lines that begin with %',
      advice: 'Remove the lines that begin with %.',
    };
  }
  return noKey(about);
}

function unexpected(about: About): Said {
  const { before, rest } = about;
  const character = firstOf(rest);
  const above = before.trim();
  if (character === ']' || character === '}') {
    return {
      message: `this ${character} closes nothing that is open`,
      advice: `Remove it, or write the ${character === ']' ? '[' : '{'} that it closes.`,
    };
  }
  if (character === ',') {
    return {
      message: 'there is nothing before this comma',
      advice: 'Remove it, or write the entry that is missing.',
    };
  }
  if (/[|>][-+0-9]*$/.test(above)) {
    return {
      message: 'text stands on the line of the | or > that begins it',
      advice: 'Write it on the lines below, indented; text that holds | or > goes in quotes.',
    };
  }
  if (isItem(about) && above.endsWith(':')) {
    return {
      message: 'a list begins on the line of its key',
      advice: 'Write its items on the lines below, each after a dash; or in brackets: `[a, b]`.',
    };
  }
  if (/["'\]}]$/.test(above)) {
    return {
      message: `${quoted(rest)} stands after the end of a value`,
      advice:
        "Put the whole value in one pair of quotes (in single quotes, ' is written twice), or a comma between two of a list.",
    };
  }
  return general(about);
}

/** A quote or a bracket that is open at an error, where that is what is wrong. */
function notClosed({ document, text, offset, said }: About): Said | undefined {
  const isQuote = said.startsWith('Missing closing');
  if (!isQuote && !said.includes(' must ')) return undefined;
  let opened: number | undefined;
  visit(document, {
    Node(_, node) {
      const [start = offset, end = offset] = node.range ?? [];
      const isOpen = isQuote
        ? isScalar(node) && /^QUOTE/.test(node.type ?? '')
        : isCollection(node) && node.flow === true;
      if (isOpen && start < offset && end >= Math.min(offset, text.trimEnd().length)) opened = start;
    },
  });
  if (opened === undefined) return undefined;
  const character = text.charAt(opened);
  if (isQuote) {
    return {
      offset: opened,
      message: `the quote ${character} that begins here is not closed`,
      advice: `Write another ${character} where the text ends.`,
    };
  }
  return {
    offset: opened,
    message: `the ${character} that begins here is not closed`,
    advice: `Write ${character === '[' ? ']' : '}'} where it ends; what is within it is indented deeper than its key.`,
  };
}
