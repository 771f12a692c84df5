import fc from 'fast-check';
import { HtmlValidate } from 'html-validate';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { visible } from '../../src/base/visible.ts';
import { subtractMoney } from '../../src/price/money.ts';
import { drawPage } from '../../src/report/page/document.ts';
import { judgementPage } from '../../src/report/page/judgement.ts';
import { hostile } from '../report/hostile.ts';
import { judged, mainFiles, mixed, platesGrown } from '../report/sample.ts';
import {
  brokenDays,
  executable,
  faults,
  launched,
  type Opened,
  opened,
  overlaps,
  sideways,
  unreached,
  type View,
} from './browser.ts';
import { hostilePage, largePage, stories } from './stories.ts';

const wide: View = { width: 1440, scheme: 'light', media: 'screen' };

const views: readonly (View & { readonly axe: boolean })[] = [
  { width: 360, scheme: 'light', media: 'screen', axe: true },
  { width: 768, scheme: 'dark', media: 'screen', axe: false },
  { width: 1440, scheme: 'dark', media: 'screen', axe: true },
  { ...wide, axe: false },
  { width: 768, scheme: 'light', media: 'print', axe: true },
];

/** The ratio of two colours' relative luminances as WCAG 2.2 defines it; 1 where one is no colour. */
function contrast(a: string, b: string): number {
  const luminance = (colour: string): number | undefined => {
    const [red, green, blue] = [...colour.matchAll(/\d+/g)].map(([each]) => {
      const share = Number(each) / 255;
      return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
    });
    return red === undefined || green === undefined || blue === undefined
      ? undefined
      : 0.2126 * red + 0.7152 * green + 0.0722 * blue;
  };
  const [one, other] = [luminance(a), luminance(b)];
  if (one === undefined || other === undefined) return 1;
  return (Math.max(one, other) + 0.05) / (Math.min(one, other) + 0.05);
}

/** Each story is told once, and its page looked at by every test. */
const told = new Map<string, Promise<string>>();

function pageOf(name: string): Promise<string> {
  const known = told.get(name) ?? stories[name]?.() ?? Promise.reject(new Error(`no story ${name}`));
  told.set(name, known);
  return known;
}

describe.each(Object.entries(stories))('%s, as a page', (name, make) => {
  it('is valid HTML', async () => {
    const validator = new HtmlValidate({ extends: ['html-validate:standard', 'html-validate:a11y'] });
    const { results } = await validator.validateString(await pageOf(name));
    const messages = results.flatMap((each) => each.messages);
    expect(messages.map(({ ruleId, message, line }) => `${line} ${ruleId}: ${message}`)).toEqual([]);
  });

  it('has the same bytes twice', async () => expect(await make()).toBe(await pageOf(name)));
});

describe.skipIf(executable === undefined)('in a browser', () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await launched();
  });
  afterAll(() => browser?.close());

  async function using<T>(html: string, view: View, use: (opened: Opened) => Promise<T>): Promise<T> {
    const shown = await opened(browser, html, view);
    try {
      return await use(shown);
    } finally {
      await shown.page.context().close();
    }
  }

  const texts = "document.querySelector('main').textContent";
  const unseen = `[...document.querySelectorAll('main *, header *, footer *')].filter((each) => each.localName !== 'script'
    && !each.closest('svg, details:not([open]) > :not(summary)') && each.textContent.trim() !== '' && !each.checkVisibility())
    .map((each) => each.outerHTML.slice(0, 200))`;

  it.each(Object.keys(stories))(
    '%s is whole, quiet, reached by the keyboard, and read whole with scripts switched off',
    async (name) => {
      const html = await pageOf(name);
      const withScript = await using(html, wide, async ({ page, asked, said }) => {
        const text = await page.evaluate<string>(texts);
        expect(await unreached(page)).toEqual([]);
        for (const { width, scheme, media, axe } of views) {
          await page.setViewportSize({ width, height: 900 });
          await page.emulateMedia({ media, colorScheme: scheme });
          const at = `at ${width} pixels, ${scheme}, ${media}`;
          expect(await sideways(page), at).toBeLessThanOrEqual(0);
          expect(await overlaps(page), at).toEqual([]);
          expect(await brokenDays(page), at).toEqual([]);
          if (axe) expect(await faults(page), at).toEqual([]);
        }
        expect(asked).toEqual([]);
        expect(said).toEqual([]);
        return text;
      });
      await using(html, { ...wide, scripts: false }, async ({ page, asked, said }) => {
        expect(await page.evaluate<string[]>(unseen)).toEqual([]);
        // What scripts add are ways to sort and to search, never a word of the report.
        const alone = await page.evaluate<string>(texts);
        expect(withScript.replaceAll('Show only what holds', '')).toBe(alone);
        expect(
          await page.evaluate<number>("document.querySelectorAll('th button, input[type=search]').length"),
        ).toBe(0);
        expect([asked, said]).toEqual([[], []]);
      });
    },
  );

  it('keeps what is ticked, for these steps alone', async () => {
    const html = judgementPage(await judged(mainFiles, platesGrown));
    await using(html, wide, async ({ page }) => {
      await page.getByRole('checkbox').nth(1).check();
      await page.reload();
      const ticked = await page.evaluate<string[]>(
        "[...document.querySelectorAll(':checked')].map(({ value }) => value)",
      );
      expect(ticked).toEqual(['2']);
    });
  });

  it("shows the judgement's own figures", async () => {
    const { cost, limits, headroom } = await mixed();
    await using(judgementPage(await mixed()), wide, async ({ page }) => {
      const rows = await page.evaluate<string[][]>(
        `[...document.querySelectorAll('tbody tr')].map((row) => [row.cells[0].textContent, ...[...row.querySelectorAll('data')].map(({ value }) => value)])`,
      );
      const exact = (...amounts: readonly { toFixed(): string }[]) => amounts.map((each) => each.toFixed());
      for (const { team, before, after } of cost.teams) {
        const limit = limits.find(({ subject }) => subject.name === team)?.limit;
        const left = limit === undefined ? [] : [limit, subtractMoney(limit, after)];
        expect(rows).toContainEqual([team, ...exact(before, after, subtractMoney(after, before), ...left)]);
        expect(rows).toContainEqual([team, after.toFixed()]);
      }
      expect(rows).toContainEqual(['on main', ...exact(cost.before)]);
      expect(rows).toContainEqual(['after the merge', ...exact(cost.after)]);
      const quantity = cost.causes.find(({ cause }) => cause === 'quantity')?.difference;
      expect(rows).toContainEqual(['changes in quantity', quantity?.toFixed()]);
      const [group] = headroom.filter(({ after }) => after?.layer === 'volume-group');
      const sizes = [group?.after?.capacity, group?.after?.taken, group?.after?.free, group?.before?.free];
      expect(rows).toContainEqual(['volume group plates', ...sizes.map(String)]);
    });
  });

  it('keeps hostile text text: no element of its own, nothing run, nothing loaded', async () => {
    const drawn = fc.sample(hostile, { numRuns: 60, seed: Number(process.env.SEED ?? 1) });
    const texts = [
      '<script>window.hit = 1</script>',
      '"><img src=x onerror="window.hit = 1">',
      "'><svg onload=window.hit=1>",
      '</style><script>window.hit = 1</script>',
      '</title><script>window.hit = 1</script>',
      '<meta http-equiv=refresh content=0;url=https://a.example>',
      '<a href="javascript:window.hit=1">x</a>',
      '`<b>`',
      'x'.repeat(2000),
      '測量局'.repeat(300),
      ...drawn.filter((text) => text !== ''),
    ];
    const tagsOf = (html: string) =>
      using(html, wide, async ({ page, asked, said }) => {
        expect(asked).toEqual([]);
        expect(said).toEqual([]);
        expect(await page.evaluate('window.hit')).toBeUndefined();
        const texts = await page.evaluate<string[]>(
          "[...document.querySelectorAll('.list p > span:last-child')].map((each) => each.textContent)",
        );
        const tags = await page.evaluate<string[]>(
          "[...document.querySelectorAll('*')].map((each) => each.localName + [...each.attributes].map(({ name }) => (name === 'class' ? '' : ' ' + name)).join(''))",
        );
        for (const width of [360, 768]) {
          await page.setViewportSize({ width, height: 900 });
          expect(await sideways(page), `at ${width} pixels`).toBeLessThanOrEqual(0);
        }
        return { texts, tags };
      });
    const harmless = await tagsOf(hostilePage(texts.map(() => 'plates-1')));
    const shown = await tagsOf(hostilePage(texts));
    expect(shown.texts).toEqual(texts.map(visible));
    expect(shown.tags).toEqual(harmless.tags);
  });

  it('draws every volume of the estate at its size, and outlines what the branch touches', async () => {
    const html = await pageOf('a branch beside the whole estate');
    await using(html, wide, async ({ page }) => {
      const [texts, shares] = await page.evaluate<[string, Record<string, string[]>]>(
        `[document.querySelector('.estate').textContent,
          Object.fromEntries([...document.querySelectorAll('.estate tbody tr')].map((row) => [row.cells[0].firstChild.textContent.trim(),
            [...row.querySelectorAll('g:first-child > :is(.thing, .touched, .disputed)')].map((rect) => rect.getAttribute('class') + ' ' + rect.getAttribute('width'))]))]`,
      );
      // 3 volumes grown to 50 GiB beside a boot volume of 50 GiB: a quarter each.
      expect(shares['plate-scanner']).toEqual([...Array(3).fill('touched 25%'), 'thing 25%']);
      // All servers lie on one scale: as wide beside each other as they are large.
      const servers = await page.evaluate<{ size: number; width: number; room: number }[]>(
        `[...document.querySelectorAll('.estate tbody tr')].map((row) => ({ size: Number(row.querySelector('td.figure data').value),
          width: row.querySelector('svg').getBoundingClientRect().width, room: row.querySelector('p').getBoundingClientRect().width }))`,
      );
      const largest = Math.max(...servers.map(({ size }) => size));
      expect(new Set(servers.map(({ size }) => size)).size).toBeGreaterThan(1);
      for (const { size, width, room } of servers) expect(width / room).toBeCloseTo(size / largest, 2);
      for (const name of ['depths-1', 'ledger-books', 'master-plates']) expect(texts).toContain(name);
      expect(texts).toContain('plates-1 50 GiB bulk (changed)');
    });
  });

  it.each(['light', 'dark'] as const)(
    'outlines every part of a drawing at 3 to 1 or more against the page, %s (WCAG 2.2, 1.4.11)',
    async (scheme) => {
      const kinds = [
        'was',
        'now',
        'used',
        'free',
        'whole',
        'reserved',
        'overhead',
        'undetermined',
        'step',
        'thing',
        'touched',
        'disputed',
      ];
      const html = await pageOf('a branch beside the whole estate');
      await using(html, { ...wide, scheme }, async ({ page }) => {
        for (const media of ['screen', 'print'] as const) {
          await page.emulateMedia({ media, colorScheme: scheme });
          const [paper = '', ...strokes] = await page.evaluate<string[]>(
            `(() => { const svg = document.querySelector('.estate svg'); const paper = document.createElementNS(svg.namespaceURI, 'rect');
            svg.append(paper); const of = (name, what) => { paper.setAttribute('class', name); return getComputedStyle(paper)[what]; };
            return [of('ground', 'fill'), ...${JSON.stringify(kinds)}.map((name) => of(name, 'stroke'))]; })()`,
          );
          const low = kinds.filter((_, index) => contrast(strokes[index] ?? '', paper) < 3);
          expect(low, media).toEqual([]);
        }
      });
    },
  );

  it('links every verdict and loosening on the axis to the row that tells of it', async () => {
    const html = await pageOf('the audit of a year');
    await using(html, wide, async ({ page }) => {
      const links = await page.evaluate<{ row: string; told: string | null }[]>(
        `[...document.querySelectorAll('figure td a')].map((link) => ({ row: link.closest('tr').cells[0].textContent,
          told: document.querySelector(link.getAttribute('href'))?.textContent ?? null }))`,
      );
      const verdicts = links.filter(({ row }) => row === 'pass' || row === 'fail');
      expect(verdicts.filter(({ row }) => row === 'fail')).toHaveLength(4);
      expect(verdicts).toHaveLength(8);
      for (const { row, told } of verdicts) expect(told).toContain(row);
      expect(links.filter(({ row }) => row === 'policy loosened')).toHaveLength(1);
      expect(links.every(({ told }) => told !== null)).toBe(true);
    });
  });

  it('leaves out what is already on main before the steps, and says so where it stood', () => {
    const entries = (word: string, count: number) => ({
      kind: 'entries' as const,
      entries: Array.from({ length: count }, (_, index) => ({
        text: `${word} ${index} ${'x'.repeat(1000)}`,
        fields: [],
      })),
    });
    const html = drawPage(
      {
        tone: 'plain',
        headline: 'pass',
        fields: [],
        sections: [
          { title: 'Already on main', blocks: [entries('finding', 10_000)], yields: 1 },
          { title: 'Steps', blocks: [entries('step', 6000)] },
        ],
      },
      'ullage gate --format json',
    );
    expect(Buffer.byteLength(html)).toBeLessThan(10_000_000);
    expect(html).toContain('step 5999 ');
    expect(html.indexOf('finding 0 ')).toBeLessThan(html.indexOf('step 0 '));
    const [, findings = '', steps = ''] = html.split('<section');
    const kept = findings.split('<li').length - 1;
    expect(findings).toContain(
      `${10_000 - kept} more are left out of this page. <code>ullage gate --format json</code>`,
    );
    expect(steps).not.toContain('left out');
  });

  it('opens with 10,000 findings and 20,000 volumes, under 10 MB, and says what it leaves out', async () => {
    const html = largePage();
    expect(Buffer.byteLength(html)).toBeLessThan(10_000_000);
    await using(html, wide, async ({ page, said }) => {
      const [findings = 0, servers = 0, left = 0] = await page.evaluate<number[]>(
        `[document.querySelectorAll('.list > li').length, document.querySelectorAll('.estate tbody tr').length,
          [...document.querySelectorAll('.left-out')].reduce((sum, { textContent }) => sum + Number.parseInt(textContent), 0)]`,
      );
      expect(findings).toBeGreaterThan(5000);
      expect(servers).toBeGreaterThan(500);
      expect(findings + servers + left).toBe(11_000);
      await page.locator('input[type=search]').first().fill('finding 4242 of');
      await expect
        .poll(() => page.locator('[role=status]').first().textContent(), { timeout: 10_000 })
        .toBe('1 of 10000 entries');
      const found = await page.evaluate<number>(
        "document.querySelectorAll('.list > li:not([hidden])').length",
      );
      expect(found).toBe(1);
      expect(said).toEqual([]);
    });
  });
});
