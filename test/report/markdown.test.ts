import fc from 'fast-check';
import MarkdownIt from 'markdown-it';
import { beforeAll, describe, expect, it } from 'vitest';
import { cautions } from '../../src/base/wording.ts';
import type { Judged, NotJudged } from '../../src/policy/judgement.ts';
import { reportMarkdown } from '../../src/report/markdown.ts';
import { reportText, summaryLine } from '../../src/report/report.ts';
import { type Files, judged as judgedOver, pack } from '../estate/builder.ts';
import { hostile } from './hostile.ts';
import { edited, judged, limitRaised, mainFiles, unitsTidied, unjudged, withHostileText } from './sample.ts';

const markdown = new MarkdownIt({ html: true, linkify: true });

const intended = new Set([
  'heading_open',
  'heading_close',
  'bullet_list_open',
  'bullet_list_close',
  'list_item_open',
  'list_item_close',
  'paragraph_open',
  'paragraph_close',
  'inline',
  'text',
  'strong_open',
  'strong_close',
  'code_inline',
  'fence',
  'table_open',
  'table_close',
  'thead_open',
  'thead_close',
  'tbody_open',
  'tbody_close',
  'tr_open',
  'tr_close',
  'th_open',
  'th_close',
  'td_open',
  'td_close',
]);

const tokensOf = (source: string) => {
  const tokens = markdown.parse(source, {});
  return [...tokens, ...tokens.flatMap(({ children }) => children ?? [])];
};

const kindsOf = (source: string): readonly string[] => [...new Set(tokensOf(source).map(({ type }) => type))];

/** What stays on the page, paragraph by paragraph. */
const readable = (source: string): string =>
  tokensOf(source)
    .filter(({ type }) => type === 'inline')
    .map(({ children }) => (children ?? []).map(({ content }) => content).join(''))
    .join('\n');

let tidied: Judged;
let raised: Judged;
let broken: NotJudged;

beforeAll(async () => {
  tidied = await judged(mainFiles, unitsTidied);
  raised = await judged(mainFiles, limitRaised);
  broken = await unjudged(mainFiles, edited(mainFiles, 'storage/ledger.yaml', 'tier: brisk', 'tire: brisk'));
});

describe('Markdown for a page on a code host', () => {
  it('begins with the verdict and the reason, then cost and what to do', () => {
    const [first = '', second = '', third = ''] = readable(reportMarkdown(tidied)).split('\n');
    expect(first).toBe(summaryLine(tidied));
    expect(second).toMatch(/^Cost: .* EUR a month on main/);
    expect(third).toMatch(/^To do: Keep the size/);
  });

  it('is made of the few elements that we mean, and they all come out', () => {
    for (const judgement of [tidied, raised, broken]) {
      for (const kind of kindsOf(reportMarkdown(judgement))) expect(intended).toContain(kind);
    }
    expect(kindsOf(reportMarkdown(raised))).toEqual(
      expect.arrayContaining(['table_open', 'code_inline', 'strong_open']),
    );
    expect(kindsOf(reportMarkdown(broken))).toContain('fence');
  });

  it('shows a command that a sentence of ours names as code, whole', () => {
    const code = [tidied, raised, broken].flatMap((judgement) =>
      tokensOf(reportMarkdown(judgement)).flatMap(({ type, content }) =>
        type === 'code_inline' ? [content] : [],
      ),
    );
    expect(code).toContain('ullage steps');
    expect(code.filter((each) => each.includes('`'))).toEqual([]);
  });

  it('says what the terminal says', () => {
    const words = (text: string): string => text.replace(/[\s:|]+/g, ' ');
    for (const judgement of [tidied, raised]) {
      const onPage = words(readable(reportMarkdown(judgement)));
      for (const { message } of judgement.findings) {
        expect(onPage).toContain(words(message));
        expect(words(reportText(judgement, { width: 5_000, colour: false }))).toContain(words(message));
      }
    }
    expect(readable(reportMarkdown(tidied)).split(cautions).length).toBe(2);
  });

  it('draws one row a team, and the sum', () => {
    const rows = tokensOf(reportMarkdown(raised)).filter(({ type }) => type === 'table_open').length;
    expect(rows).toBeGreaterThanOrEqual(1);
    expect(readable(reportMarkdown(raised))).toContain('total');
  });

  it('gets the same bytes twice', () => expect(reportMarkdown(raised)).toBe(reportMarkdown(raised)));

  it('holds no element of a proposer’s making, whatever the names', () => {
    const told = (text: string): string => reportMarkdown(withHostileText(tidied, text));
    const shape = (source: string): readonly string[] => tokensOf(source).map(({ type }) => type);
    const blocks = (types: readonly string[]): readonly string[] =>
      types.filter((type) => !/^(?:text|code_inline)$/.test(type));
    const usual = blocks(shape(told('plates-1')));
    fc.assert(
      fc.property(hostile, (text) => {
        const source = told(text);
        const types = shape(source);
        expect([...new Set(types)].filter((type) => !intended.has(type))).toEqual([]);
        // The same blocks in the same order: no list, row, heading or link came in, and none went.
        expect(blocks(types)).toEqual(usual);
        expect(markdown.render(source)).not.toMatch(
          /<(?!\/?(?:h2|h3|ul|li|p|strong|code|pre|table|thead|tbody|tr|th|td)\b)/,
        );
      }),
      { numRuns: 200 },
    );
  });
});

describe('an identifier that the provider gave, or somebody wrote', () => {
  const files = (id: string): Files => ({
    'storage/imagery.yaml': `volumes:\n  plates-1: { size: 40 GiB, tier: bulk, id: ${JSON.stringify(id)} }\n`,
  });
  /** What of a hostile text the format takes; the rest is refused where it stands. */
  const ids = hostile
    .map((text) => text.replace(/[\p{Cc}\p{Cs}]/gu, '').slice(0, 200))
    .filter((text) => text !== '' && text !== 'vol-1');

  it('stays where it is told, in the change, the finding and the step', async () => {
    const told = async (id: string): Promise<Judged> =>
      judgedOver({ ...pack('rule: deletion-prepared'), ...files('vol-1') }, files(id));
    const blocks = (source: string): readonly string[] =>
      tokensOf(source).flatMap(({ type }) => (/^(?:text|code_inline)$/.test(type) ? [] : [type]));
    const usual = blocks(reportMarkdown(await told('vol-2')));
    await fc.assert(
      fc.asyncProperty(ids, async (id) => {
        const judgement = await told(id);
        expect(judgement.changes.map(({ kind }) => kind)).toEqual(['volume-changed-id']);
        expect(blocks(reportMarkdown(judgement))).toEqual(usual);
        const lines = reportText(judgement, { width: 100, colour: false }).split('\n');
        for (const line of lines) expect(line).not.toMatch(/[\p{Cc}\u202e\u2066]/u);
      }),
      { numRuns: 100 },
    );
  });
});

describe('within a host’s limit', () => {
  const many = (count: number): Judged => {
    const [finding] = tidied.findings;
    const [change] = tidied.changes;
    if (finding === undefined || change === undefined) throw new Error('nothing was found');
    return {
      ...tidied,
      findings: Array.from({ length: count }, (_, index) => ({
        ...finding,
        message: `finding number ${index}`,
      })),
      changes: Array.from({ length: count }, () => change),
    };
  };

  it('leaves a report alone that fits', () => {
    expect(reportMarkdown(tidied, { limit: 1_048_576 })).toBe(reportMarkdown(tidied));
  });

  it.each([1_200, 4_000, 65_536])(
    'cuts to %i bytes, counts what it left out and points to the rest',
    (limit) => {
      const cut = reportMarkdown(many(3_000), {
        limit,
        fullReport: 'https://ci.gannet-point.example/runs/7',
      });
      expect(Buffer.byteLength(cut)).toBeLessThanOrEqual(limit);
      expect(readable(cut).split('\n')[0]).toBe(summaryLine(many(3_000)));
      const shown = (readable(cut).match(/finding number \d+/g) ?? []).length;
      expect(readable(cut)).toContain(`Findings that fail the change: ${3_000 - shown} lines`);
      expect(cut).toContain('[The whole report](<https://ci.gannet-point.example/runs/7>)');
    },
  );

  it('uses the room there is', () => {
    const cut = reportMarkdown(many(3_000), { limit: 65_536 });
    expect(Buffer.byteLength(cut)).toBeGreaterThan(60_000);
  });

  it('gives the verdict in whatever room there is', () => {
    for (const limit of [4, 10, 50, 200, 400]) {
      const cut = reportMarkdown(many(50), { limit, fullReport: 'gate-report' });
      expect(Buffer.byteLength(cut)).toBeLessThanOrEqual(limit);
      expect(cut).toContain('fail');
    }
  });

  it('makes no link out of an address that could hold anything else', () => {
    for (const fullReport of [
      'javascript:alert(1)',
      'https://x.example/>[a](b)',
      'out/gate.md',
      'https://x.example/ "t"',
    ]) {
      const cut = reportMarkdown(many(3_000), { limit: 4_000, fullReport });
      expect(kindsOf(cut)).not.toContain('link_open');
      expect(readable(cut)).toContain(fullReport);
    }
  });

  it('keeps its limit and its shape, whatever the names and the limit', () => {
    fc.assert(
      fc.property(hostile, fc.integer({ min: 10, max: 3_000 }), (text, limit) => {
        const cut = reportMarkdown(withHostileText(tidied, text), { limit, fullReport: text });
        expect(Buffer.byteLength(cut)).toBeLessThanOrEqual(limit);
        for (const kind of kindsOf(cut)) expect([...intended, 'link_open', 'link_close']).toContain(kind);
      }),
      { numRuns: 200 },
    );
  });
});
