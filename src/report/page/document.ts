/** A report as a page: one file that loads nothing, with all its words in the HTML itself. */
import { createHash } from 'node:crypto';
import { clipped } from '../../base/visible.ts';
import { pageScript, pageStyle } from '../generated/page.ts';
import type { ReportModel, Section } from '../model/model.ts';
import { drawBlock, drawField } from './blocks.ts';
import type { Drawing } from './drawing.ts';
import { type Html, html, own } from './html.ts';
import { patterns } from './patterns.ts';

/**
 * The most bytes of a page's entries and rows, so that the whole is under 10 MB; what has no room is left out by count,
 * with a pointer to the whole. So much of it is kept for the section that yields most, so that something of it is there.
 */
const room = { all: 9_300_000, last: 2_800_000 };

const sourceOf = (text: string): string => `'sha256-${createHash('sha256').update(text).digest('base64')}'`;

/** Nothing is loaded from anywhere; the one style sheet and the one script are let in by what they hold. */
const securityPolicy = [
  "default-src 'none'",
  `style-src ${sourceOf(pageStyle)}`,
  `script-src ${sourceOf(pageScript)}`,
  "base-uri 'none'",
  "form-action 'none'",
].join('; ');

/** @param whole the command that prints all there is, as in `ullage gate --format json` */
export function drawPage(model: ReportModel, whole: string): string {
  const { tone, headline, fields, sections } = model;
  const titled = sections.filter(({ title }) => title !== '');
  const drawn = drawSections(sections, whole);
  const page = html`<!DOCTYPE html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${securityPolicy}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="referrer" content="no-referrer">
<title>${clipped(headline, 120)}</title>
${own('style', pageStyle)}
</head>
<body>
${patterns}
<a class="skip" href="#main">To the report</a>
<header class="${toneClasses[tone]}">
<p class="name">Ullage</p>
<h1>${headline}</h1>
${fields.length === 0 ? undefined : html`<dl class="answers">${fields.map(drawField)}</dl>`}
${titled.length < 2 ? undefined : contents(titled)}
</header>
<main id="main" tabindex="-1">
${sections.map((section) => drawn.get(section))}
</main>
<footer><p>All figures, for programs: <code>${whole}</code>.</p></footer>
${own('script', pageScript)}
</body>
</html>
`;
  return page.toString();
}

const toneClasses = {
  'loses data': 'grave',
  fails: 'grave',
  caution: 'caution',
  plain: 'plain',
} as const;

const contents = (sections: readonly Section[]): Html =>
  html`<nav aria-label="Contents"><ol>${sections.map(({ title }, index) => html`<li><a href="#part-${index + 1}">${title}</a></li>`)}</ol></nav>`;

/** Drawn in the order in which they may take room, which is not that of the page: what can be spared comes last. */
function drawSections(sections: readonly Section[], whole: string): ReadonlyMap<Section, Html> {
  const titled = sections.filter(({ title }) => title !== '');
  const drawing: Drawing = { left: room.all - room.last, whole };
  const drawn = new Map<Section, Html>();
  const ordered = [...sections].sort((a, b) => (a.yields ?? 0) - (b.yields ?? 0));
  for (const [index, section] of ordered.entries()) {
    if (index === ordered.length - 1) drawing.left = Math.max(0, drawing.left) + room.last;
    drawn.set(section, drawSection(section, titled.indexOf(section), drawing));
  }
  return drawn;
}

const drawSection = ({ title, blocks }: Section, index: number, drawing: Drawing): Html =>
  index === -1
    ? html`<div class="part">${blocks.map((block) => drawBlock(block, drawing))}</div>`
    : html`<section class="part" id="part-${index + 1}" aria-labelledby="title-${index + 1}">
<h2 id="title-${index + 1}">${title}</h2>
${blocks.map((block) => drawBlock(block, drawing))}
</section>
`;
