import fc from 'fast-check';
import MarkdownIt from 'markdown-it';
import { describe, expect, it } from 'vitest';
import { clipped, visible } from '../../src/base/visible.ts';
import { markdownAdvice, markdownBlock, markdownCode, markdownText } from '../../src/report/markdown-text.ts';
import { markdownTable } from '../../src/report/table.ts';
import { hostile } from './hostile.ts';

/** As lenient as a host could be: HTML let through, links found in plain text, tables (GFM). */
const markdown = new MarkdownIt({ html: true, linkify: true, typographer: false });

/**
 * A code span of spaces alone keeps all of them (CommonMark 0.31, 6.1: one space is taken off each end unless the
 * whole is spaces); markdown-it takes two off from three spaces on, so that this reads them as the standard does.
 */
markdown.inline.ruler.before('backticks', 'code_of_spaces', (state, silent) => {
  const [whole, fence = '', spaces = ''] = /^(`+)( +)\1(?!`)/.exec(state.src.slice(state.pos)) ?? [];
  if (whole === undefined) return false;
  if (!silent) Object.assign(state.push('code_inline', 'code', 0), { markup: fence, content: spaces });
  state.pos += whole.length;
  return true;
});

/** What a reader sees of one paragraph, and the kinds of token it is made of. */
function seen(source: string): { text: string; kinds: ReadonlySet<string> } {
  const tokens = markdown.parse(source, {});
  const inline = tokens.flatMap(({ children }) => children ?? []);
  return {
    text: inline.map(({ content }) => content).join(''),
    kinds: new Set([...tokens, ...inline].map(({ type }) => type)),
  };
}

const paragraph = ['paragraph_open', 'inline', 'paragraph_close', 'text', 'code_inline'];

describe('text from whoever proposed the branch, made visible', () => {
  it.each([
    ['a line break that would forge a second line', 'a\nb\r\nc', 'a\\nb\\r\\nc'],
    ['an escape that would clear the screen', '\u001b[2Jx', '\\u{1B}[2Jx'],
    ['the one-byte form of the same (C1)', '\u009b2Jx', '\\u{9B}2Jx'],
    ['a bidirectional override that would turn a name round', 'fdp\u202eexe', 'fdp\\u{202E}exe'],
    ['an isolate', '\u2066x\u2069', '\\u{2066}x\\u{2069}'],
    ['a zero-width space that makes two names look one', 'plates\u200b-1', 'plates\\u{200B}-1'],
    ['a no-break space', 'a\u00a0b', 'a\\u{A0}b'],
    ['a tag character', 'x\u{e0041}', 'x\\u{E0041}'],
    ['half a surrogate pair', 'x\ud800', 'x\\u{D800}'],
    ['a filler that shows as nothing', 'x\u3164', 'x\\u{3164}'],
    ['a workflow command', '::error::all is well', ':\\u{3A}error:\\u{3A}all is well'],
    ['an older workflow command', '##[add-mask]x', '#\\u{23}[add-mask]x'],
  ])('spells out %s', (_, text, shown) => expect(visible(text)).toBe(shown));

  it('leaves what the trade and the world write alone', () => {
    for (const text of [
      'plates-1',
      'größer als 50 GiB',
      '測量局',
      'глубины',
      'مسح',
      '/srv/depths',
      'a\\b',
      '⚓',
    ]) {
      expect(visible(text)).toBe(text);
    }
  });

  it('leaves nothing unseen, whatever comes', () => {
    fc.assert(
      fc.property(hostile, (text) => {
        const shown = visible(text);
        expect(shown).not.toMatch(/[\p{Cc}\p{Cf}\p{Zl}\p{Zp}\p{Cs}]/u);
        expect(shown).not.toContain('::');
        expect(shown).not.toContain('##[');
        expect(visible(shown)).toBe(shown);
      }),
      { numRuns: 500 },
    );
  });

  it('cuts a name as long as a file', () => {
    expect(clipped('x'.repeat(1_000_000), 10)).toBe(`${'x'.repeat(9)}…`);
    expect(clipped('x'.repeat(10), 10)).toBe('x'.repeat(10));
    fc.assert(
      fc.property(
        hostile,
        fc.integer({ min: 1, max: 20 }),
        (text, most) => [...clipped(text, most)].length <= most,
      ),
    );
  });
});

describe('Markdown that shows the text and nothing else', () => {
  it('keeps the bracket that a word opens within its code, and a question mark out of it', () => {
    expect(markdownText('(lvs(8), lvm2)')).toBe('(`lvs(8)`, lvm2)');
    expect(markdownText('Did you mean a_b? Yes.')).toBe('Did you mean `a_b`? Yes.');
  });

  it.each([
    '<img src=x onerror=alert(1)>',
    '<!-- hidden -->',
    '</td></tr></table>',
    '[click](https://gannet-point.example)',
    '![x](https://gannet-point.example/x.png)',
    '<https://gannet-point.example>',
    'www.gannet-point.example',
    'https://gannet-point.example',
    'avery@gannet-point.example',
    'mailto:avery@gannet-point.example',
    '@imagery',
    '#12',
    'GH-12',
    'office/estate#12',
    ':anchor:',
    '**bold** _it_ ~~gone~~',
    '`code`',
    '``` fence',
    '~~~ fence',
    '# heading',
    '- item',
    '+ item',
    '1. item',
    '1) item',
    '> quote',
    '---',
    '===',
    '=',
    '    indented',
    'a | b',
    '&lt;script&gt; &#64;imagery',
    'ends with a backslash \\',
    'ends with spaces  ',
    '$x^2$',
    '[x]: https://gannet-point.example',
    '[^1]',
    'deadbeefcafe',
    '`',
    '` `` ```',
    'a`b``c',
    ' ',
    '  ',
    '     ',
  ])('shows %j as it is', (text) => {
    const { text: shown, kinds } = seen(markdownText(text));
    expect(shown).toBe(visible(text));
    for (const kind of kinds) expect(paragraph).toContain(kind);
  });

  // Hosts look for mentions, issues, commits and emoji once Markdown is done; within code they do not.
  it.each([
    '@imagery',
    '#12',
    'GH-12',
    'office/estate#12',
    ':anchor:',
    '0123abc',
    'a@b.example',
    'www.x.example',
  ])('puts %s in code, where a host does not look for references', (text) =>
    expect(markdownText(`see ${text}, please`)).toBe(`see \`${text}\`, please`),
  );

  it('leaves a plain sentence plain', () => {
    const text =
      "volume plates-1 grows from 40 GiB to 60.5 GiB, by 20.5 GiB (+3,687,091,200 bytes); it's the team's.";
    expect(markdownText(text)).toBe(text);
  });

  it('shows any text as it is, with no element but code', () => {
    fc.assert(
      fc.property(hostile, (text) => {
        const shown = seen(markdownText(text));
        expect(shown.text).toBe(visible(text));
        for (const kind of shown.kinds) expect(paragraph).toContain(kind);
        const code = seen(markdownCode(text));
        expect(code.text).toBe(visible(text));
        for (const kind of code.kinds) expect(paragraph).toContain(kind);
      }),
      { numRuns: 2000 },
    );
  });

  it('shows any text in a cell of a table as it is, and adds neither cells nor rows', () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(hostile, hostile), { minLength: 1, maxLength: 3 }), (rows) => {
        const { head, rows: lines } = markdownTable({
          columns: [
            { title: 'One', align: 'left' },
            { title: 'Two', align: 'right' },
          ],
          rows,
        });
        const tokens = markdown.parse([head, ...lines].join('\n'), {});
        const cells: string[] = [];
        tokens.forEach((token, index) => {
          if (token.type === 'td_open') {
            const { children } = tokens[index + 1] ?? {};
            cells.push((children ?? []).map(({ content }) => content).join(''));
            for (const { type } of children ?? []) expect(['text', 'code_inline']).toContain(type);
          }
        });
        expect(cells).toEqual(rows.flat().map(visible));
      }),
      { numRuns: 1000 },
    );
  });

  it('keeps a cell of spaces as wide as it is, beside a backtick or not', () => {
    const { head, rows } = markdownTable({
      columns: [
        { title: 'One', align: 'left' },
        { title: 'Two', align: 'right' },
      ],
      rows: [['`', '     ']],
    });
    expect(rows).toEqual(['| `` ` `` | `     ` |']);
    const inline = markdown.parse([head, ...rows].join('\n'), {}).flatMap(({ children }) => children ?? []);
    expect(inline.filter(({ type }) => type === 'code_inline').map(({ content }) => content)).toEqual([
      '`',
      '     ',
    ]);
  });

  it('shows what advice writes between backticks as code, and nothing else changes', () => {
    expect(markdownAdvice('Run `ullage new` (or `ullage rules`), then see @imagery.')).toBe(
      'Run `ullage new` (or `ullage rules`), then see `@imagery`.',
    );
    fc.assert(
      fc.property(hostile, hostile, (a, b) => {
        const { text, kinds } = seen(markdownAdvice(`${a} \`${b}\` ${a}`));
        for (const kind of kinds) expect(paragraph).toContain(kind);
        expect(text.replaceAll('`', '')).toBe(visible(`${a} \`${b}\` ${a}`).replaceAll('`', ''));
      }),
      { numRuns: 1000 },
    );
  });

  it('lets no source line out of its block', () => {
    fc.assert(
      fc.property(hostile, (text) => {
        const tokens = markdown.parse(markdownBlock([`1: ${visible(text)}`]), {});
        expect(tokens.map(({ type, content }) => [type, content])).toEqual([
          ['fence', `1: ${visible(text)}\n`],
        ]);
      }),
      { numRuns: 500 },
    );
  });
});
