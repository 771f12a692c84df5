/** Mutated estates, judged against the one they came of, and every report that is made of it. */
import MarkdownIt from 'markdown-it';
import { create } from 'xmlbuilder2';
import { parse } from 'yaml';
import type { Judgement } from '../../src/policy/judgement.ts';
import { report, reportFormats } from '../../src/report/report.ts';
import { judgeFiles } from '../estate/builder.ts';
import type { Tally } from './documents.ts';
import { mutated } from './mutate.ts';
import { samples } from './samples.ts';
import { allowedBySchema } from './schemas.ts';
import { pick, random } from './slips.ts';

const base = Object.fromEntries(samples.map(({ path, text }) => [path, text]));

const usualPaths = JSON.stringify({
  storage: 'storage',
  prices: 'prices',
  policies: 'policies',
  waivers: 'waivers',
  readings: 'readings',
});

/** As lenient as a host could be: HTML let through, links found in plain text. */
const markdown = new MarkdownIt({ html: true, linkify: true });

/** What steers a terminal, reorders text or hides; and what a CI host takes for a command. */
const steering = /(?!\n)[\p{Cc}\p{Zl}\p{Zp}\p{Cs}\u200b\u200e\u200f\u202a-\u202e\u2066-\u2069\ufeff]/u;
const commands = /^\s*::|##\[/m;

/** The elements that a report in Markdown is made of. */
const elements = /<(?!\/?(?:h2|h3|ul|li|p|strong|code|pre|table|thead|tbody|tr|th|td)\b)/;

async function liveIn(judgement: Judgement): Promise<readonly string[]> {
  const live: string[] = [];
  for (const format of reportFormats) {
    const text = await report(format, judgement, { width: 100, colour: false });
    if (steering.test(text)) live.push(`a steering character in ${format}`);
    if (format !== 'junit' && commands.test(text)) live.push(`a workflow command in ${format}`);
    switch (format) {
      case 'text':
        break;
      case 'markdown':
        if (elements.test(markdown.render(text))) live.push('an element in markdown');
        break;
      case 'json':
      case 'sarif':
        JSON.parse(text);
        break;
      case 'junit':
        create(text);
        break;
    }
  }
  return live;
}

/** Whatever the head is, it is judged or not judged; one that the schema refuses never passes; no report is live. */
export async function fuzzJudgements(count: number, seed: number): Promise<Tally> {
  const below = random(seed);
  const faults: string[] = [];
  let accepted = 0;
  for (let tried = 0; tried < count; tried++) {
    // Most changes are to the estate, as they are in a repository.
    const changed = new Set(below(4) > 0 ? [samples[1]] : [samples[1], pick(samples, below)]);
    const texts = new Map<string, string>();
    let isRefused = false;
    let hasMoved = false;
    for (const sample of changed) {
      if (sample === undefined) continue;
      const value = JSON.stringify(mutated(parse(sample.text), below, 10) ?? null);
      texts.set(sample.path, value);
      isRefused ||= !allowedBySchema(sample.format, JSON.parse(value));
      hasMoved ||= sample.format === 'settings' && !value.includes(usualPaths);
    }
    const head = { ...base, ...Object.fromEntries(texts) };
    const what = JSON.stringify([...texts]);
    try {
      const judgement = await judgeFiles(base, head);
      if (judgement.verdict !== 'not judged') accepted++;
      // Settings that name another folder leave the files in this one unread.
      if (judgement.verdict !== 'not judged' && isRefused && !hasMoved)
        faults.push(`judged, and the schema refuses it: ${what}`);
      if (judgement.verdict === 'not judged' && judgement.reasons.length === 0)
        faults.push(`no reason: ${what}`);
      for (const each of await liveIn(judgement)) faults.push(`${each}: ${what}`);
    } catch (error) {
      faults.push(`${error instanceof Error ? error.stack : error}: ${what}`);
    }
  }
  return { tried: count, accepted, faults };
}
