/** Pages of Gannet Point, made from real judgements, and one of nothing but hostile text. */
import type { ReportModel } from '../../src/report/model/model.ts';
import { drawPage } from '../../src/report/page/document.ts';
import { judgementPage } from '../../src/report/page/judgement.ts';
import { ullage } from '../cli/run.ts';
import { judged, mainFiles, mixed, platesGrown, unjudged } from '../report/sample.ts';
import { years } from './office.ts';

const line = '  plates-1: { size: 40 GiB, tier: bulk } # <b>a remark</b>';

/** What a command prints of the office. */
async function printed(...args: readonly string[]): Promise<string> {
  const { dir } = years();
  const { out, err } = await ullage(...args, '--repo', dir, '--format', 'html');
  if (!out.startsWith('<!DOCTYPE html>')) throw new Error(`${out}${err}`);
  return out;
}

export const stories: Readonly<Record<string, () => Promise<string>>> = {
  'a branch that passes, with steps to tick off': async () =>
    judgementPage(await judged(mainFiles, platesGrown)),
  'a branch with every kind of finding': async () => judgementPage(await mixed(), () => line),
  'a branch that does not read': async () =>
    judgementPage(await unjudged(mainFiles, { ...mainFiles, 'storage/imagery.yaml': 'servers: [' })),
  'what the estate costs': () => printed('cost', '--at', 'main', '--now', '2026-11-20'),
  'what it costs by volume': () => printed('cost', '--at', 'main', '--by', 'volume', '--now', '2026-11-20'),
  'its headroom, with a forecast': () => printed('headroom', '--at', 'main', '--now', '2026-11-20'),
  'what surveys show': () => printed('survey', 'compare', '--at', 'main', '--now', '2026-11-20'),
  'the audit of a year': () => printed('audit'),
  'one question to the audit': () => printed('audit', '--show', 'spend'),
};

/** Every place of a page that text can come to, once for each text. */
export function hostilePage(texts: readonly string[]): string {
  const [first = ''] = texts;
  const model: ReportModel = {
    tone: 'plain',
    headline: first,
    fields: [{ label: first, form: 'text', text: first }],
    sections: texts.map((text) => ({
      title: `of ${text}`,
      blocks: [
        { kind: 'sentence', text },
        {
          kind: 'entries',
          entries: [
            {
              tag: { word: text, tone: 'fails' },
              text,
              excerpt: { source: `a${text}`, place: { file: text, line: 1, column: 1 } },
              fields: [
                { label: text, form: 'text', text },
                { label: text, form: 'example', command: text, source: text },
                { label: text, form: 'place', place: { file: text, line: 1, column: 1 }, note: text },
              ],
            },
          ],
        },
        { kind: 'table', table: { columns: [{ title: `of ${text}`, holds: 'words' }], rows: [[text]] } },
        { kind: 'legend', parts: [{ part: 'used', text }] },
      ],
    })),
  };
  return drawPage(model, 'ullage gate --format json');
}
