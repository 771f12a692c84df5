/** The documentation's pages: what they show was printed, and where they point there is something. */
import { existsSync } from 'node:fs';
import { dirname, join, relative } from 'node:path';
import MarkdownIt from 'markdown-it';
import { describe, expect, it } from 'vitest';
import { pages, pagesNow, pageText } from './demo/pages.ts';

const top = join(import.meta.dirname, '..');
const now = await pagesNow();

it.each(now)(
  '$page shows what the commands really print (npm run readme writes it anew)',
  ({ is, ought }) => {
    expect(is).toBe(ought);
  },
);

it('is no longer than a person reads: README.md has at most 400 lines', () => {
  expect(pageText('README.md').trimEnd().split('\n').length).toBeLessThanOrEqual(400);
});

const markdown = new MarkdownIt();

/** Every link in the page's text, those in code left out. */
const linksOf = (page: string): readonly string[] =>
  markdown
    .parse(pageText(page), {})
    .flatMap(({ children }) => children ?? [])
    .flatMap((token) => (token.type === 'link_open' ? [String(token.attrGet('href'))] : []));

/** What the code host makes of each heading, common practice: small letters, hyphens, no other signs. */
const anchorsOf = (page: string): readonly string[] =>
  markdown.parse(pageText(page), {}).flatMap((token, index, all) =>
    token.type === 'heading_open'
      ? [
          (all[index + 1]?.content ?? '')
            .toLowerCase()
            .replaceAll(/[^\p{L}\p{N}\s_-]/gu, '')
            .trim()
            .replaceAll(/\s/g, '-'),
        ]
      : [],
  );

describe('a link', () => {
  const links = [...pages, 'DEVELOPERS.md'].flatMap((page) =>
    linksOf(page)
      .filter((link) => !/^[a-z]+:/.test(link))
      .map((link) => ({ page, link })),
  );

  it.each(links)('in $page leads somewhere: $link', ({ page, link }) => {
    const [path = '', anchor] = link.split('#');
    const file = path === '' ? page : relative(top, join(top, dirname(page), decodeURIComponent(path)));
    expect(existsSync(join(top, file))).toBe(true);
    if (anchor !== undefined) expect(anchorsOf(file)).toContain(anchor);
  });

  it('leads from README.md to every other page', () => {
    expect(linksOf('README.md').map((link) => link.split('#')[0])).toEqual(
      expect.arrayContaining(pages.filter((page) => page !== 'README.md')),
    );
  });
});
