/** Texts made from others by small slips of the hand, drawn from a seed: the same seed gives the same texts. */

/** A small random source (mulberry32), so that a seed names one series of texts on every machine. */
export function random(seed: number): (below: number) => number {
  let state = seed >>> 0;
  return (below) => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) % below;
  };
}

export const pick = <T>(from: readonly T[], below: (count: number) => number): T => {
  const one = from[below(from.length)];
  if (one === undefined) throw new RangeError('nothing to pick from');
  return one;
};

/** What YAML gives a meaning to, what almost has one, and what no editor would have meant to save. */
const pieces: readonly string[] = [
  ...'\n \t:-?,[]{}#&*!|>\'"%@`~.+0x1eE_=<',
  ': ',
  ' #',
  '- ',
  '? ',
  '\n  ',
  '\n    ',
  '\n\n',
  '---',
  '\n---\n',
  '\n...\n',
  '- - ',
  '{ a: b }',
  '[ a, b ]',
  '{a}',
  '[a: b]',
  '""',
  "''",
  '"a":b',
  'a: b',
  ': :',
  ' : ',
  ',,',
  '|\n',
  '>-\n',
  '|2\n',
  '&a ',
  '*a',
  '!!str ',
  '!a ',
  '%YAML 1.2\n---\n',
  '<<: ',
  '__proto__',
  'null',
  'true',
  'yes',
  '.inf',
  '.nan',
  '0o7',
  '0x1F',
  '1e3',
  '-1',
  '+1',
  '1_000',
  '2026-11-20',
  '40 GiB',
  'constructor',
  '\\',
  '\\x41',
  '\\u0041',
  '\\z',
  "''",
  '""',
  '\r',
  '\r\n',
  '\u0085',
  '\u00a0',
  '\u2028',
  '\ufeff',
  '\u0007',
  '\ud800',
  '\u{1f600}',
  'é',
  'x'.repeat(600),
  'x'.repeat(1100),
  '    ',
  '[\n',
  '\n]',
  '{\n',
  '\n}',
  '# x\n',
  'a:',
  '-',
  '\n- ',
  '\na: ',
  '\n  b: ',
  '\n c: ',
];

/** One text with one to four slips in it. */
export function slipped(text: string, others: readonly string[], below: (count: number) => number): string {
  let now = text;
  for (let slips = 1 + below(4); slips > 0; slips--) now = slip(now, others, below);
  return now;
}

function slip(text: string, others: readonly string[], below: (count: number) => number): string {
  const at = below(text.length + 1);
  const to = at + below(Math.min(12, text.length - at + 1));
  const lines = text.split('\n');
  const line = below(lines.length);
  switch (below(10)) {
    case 0:
    case 1:
    case 2:
      return text.slice(0, at) + pick(pieces, below) + text.slice(at);
    case 3:
      return text.slice(0, at) + text.slice(to);
    case 4:
      return text.slice(0, at) + pick(pieces, below) + text.slice(to);
    case 5:
      return lines.toSpliced(line, 1, ' '.repeat(below(7)) + (lines[line] ?? '').trimStart()).join('\n');
    case 6:
      return lines.toSpliced(below(lines.length), 0, lines[line] ?? '').join('\n');
    case 7:
      return lines.toSpliced(line, 1).join('\n');
    case 8: {
      const other = pick(others, below).split('\n');
      return lines.toSpliced(line, 0, pick(other, below)).join('\n');
    }
    default: {
      const other = pick(others, below);
      const from = below(other.length + 1);
      return text.slice(0, at) + other.slice(from, from + below(30)) + text.slice(at);
    }
  }
}
