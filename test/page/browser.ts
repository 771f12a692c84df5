/** A real browser, and what is asked of every page in it. */
import { existsSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { type Browser, chromium, type Page } from 'playwright-core';

const places = [process.env.CHROMIUM, '/usr/bin/chromium'];

/** Debian's package, or the one that is named; the tests that need it are passed over, aloud, where there is none. */
export const executable = places.find((path) => path !== undefined && existsSync(path));

if (executable === undefined) console.warn('No Chromium is installed; pages are not looked at in a browser.');

const flags = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

export const launched = (): Promise<Browser> =>
  chromium.launch({ executablePath: executable ?? '', headless: true, args: flags });

export interface View {
  readonly width: number;
  readonly scheme: 'light' | 'dark';
  readonly media: 'screen' | 'print';
  /** Off, where a reader has them off. */
  readonly scripts?: boolean;
}

export interface Opened {
  readonly page: Page;
  /** What it asked for, but for itself, and what the console said. */
  readonly asked: readonly string[];
  readonly said: readonly string[];
}

const address = 'https://gannet-point.example/page.html';

/** Opens a page as a host would serve it, in a window of its own. Nothing else is answered. */
export async function opened(
  browser: Browser,
  html: string,
  { width, scheme, media, scripts = true }: View,
): Promise<Opened> {
  const context = await browser.newContext({
    viewport: { width, height: 900 },
    colorScheme: scheme,
    javaScriptEnabled: scripts,
  });
  const page = await context.newPage();
  const asked: string[] = [];
  const said: string[] = [];
  page.on('console', (message) => said.push(`${message.type()}: ${message.text()}`));
  page.on('pageerror', (error) => said.push(error.message));
  await context.route('**/*', (route) => {
    const url = route.request().url();
    if (url === address) return route.fulfill({ body: html, contentType: 'text/html; charset=utf-8' });
    asked.push(url);
    return route.abort();
  });
  await page.emulateMedia({ media, colorScheme: scheme });
  await page.goto(address);
  return { page, asked, said };
}

/** By how many pixels it can be scrolled sideways. */
export const sideways = (page: Page): Promise<number> =>
  page.evaluate<number>('document.documentElement.scrollWidth - document.documentElement.clientWidth');

/** Days that are broken at the end of a line, with all that is folded shown. */
export const brokenDays = (page: Page): Promise<readonly string[]> =>
  page.evaluate<string[]>(`(() => {
    const folded = [...document.querySelectorAll('details:not([open])')];
    for (const each of folded) each.open = true;
    const broken = [];
    const walk = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    while (walk.nextNode()) {
      for (const { 0: day, index } of walk.currentNode.data.matchAll(/\\d{4}-\\d\\d-\\d\\d/g)) {
        const range = document.createRange();
        range.setStart(walk.currentNode, index);
        range.setEnd(walk.currentNode, index + day.length);
        const lines = new Set([...range.getClientRects()].map(({ top }) => Math.round(top)));
        if (lines.size > 1) broken.push(walk.currentNode.parentElement.outerHTML.slice(0, 200));
      }
    }
    for (const each of folded) each.open = false;
    return broken;
  })()`);

/** Pairs of texts within one drawing that lie on each other, and texts that reach out of it. */
export const overlaps = (page: Page): Promise<readonly string[]> =>
  page.evaluate<string[]>(`(() => {
    const found = [];
    for (const svg of document.querySelectorAll('svg')) {
      const frame = svg.getBoundingClientRect();
      const texts = [...svg.querySelectorAll('text')]
        .map((text) => ({ text: text.textContent, box: text.getBoundingClientRect() }))
        .filter(({ box }) => box.width > 0);
      texts.forEach(({ text, box: a }, index) => {
        if (a.left < frame.left - 1 || a.right > frame.right + 1 || a.top < frame.top - 1 || a.bottom > frame.bottom + 1)
          found.push(text + ' reaches out');
        for (const { text: other, box: b } of texts.slice(index + 1)) {
          const apart = a.right <= b.left + 0.5 || b.right <= a.left + 0.5 || a.bottom <= b.top + 0.5 || b.bottom <= a.top + 0.5;
          if (!apart) found.push(text + ' / ' + other);
        }
      });
    }
    return found;
  })()`);

const axeSource = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/** What axe-core finds wrong, by rule and element: WCAG 2.2 A and AA, and its own best practices. */
export async function faults(page: Page): Promise<readonly string[]> {
  await page.evaluate(axeSource);
  return page.evaluate<string[]>(
    `axe.run(document).then(({ violations }) => violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => id + ': ' + html.slice(0, 200))))`,
  );
}

const reachable = ':is(a[href], button, input, summary):not([hidden])';

/** What can be used with a pointer and is not come to with the Tab key. */
export async function unreached(page: Page): Promise<readonly string[]> {
  const count = await page.evaluate<number>(
    `(() => { const all = [...document.querySelectorAll('${reachable}')].filter((each) => each.checkVisibility({ contentVisibilityAuto: true }));
      window.wanted = new Set(all); document.addEventListener('focusin', ({ target }) => window.wanted.delete(target)); return all.length; })()`,
  );
  for (let each = 0; each < count + 2; each++) await page.keyboard.press('Tab');
  return page.evaluate<string[]>('[...window.wanted].map((each) => each.outerHTML.slice(0, 200))');
}
