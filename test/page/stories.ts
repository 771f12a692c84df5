/** Pages of Gannet Point, made from real judgements, and one of nothing but hostile text. */
import type { ReportModel } from '../../src/report/model/model.ts';
import { drawPage } from '../../src/report/page/document.ts';
import { judgementPage } from '../../src/report/page/judgement.ts';
import { judged, mainFiles, mixed, platesGrown, unjudged } from '../report/sample.ts';

const line = '  plates-1: { size: 40 GiB, tier: bulk } # <b>a remark</b>';

export const stories: Readonly<Record<string, () => Promise<string>>> = {
  'a branch that passes, with steps to tick off': async () =>
    judgementPage(await judged(mainFiles, platesGrown)),
  'a branch with every kind of finding': async () => judgementPage(await mixed(), () => line),
  'a branch that does not read': async () =>
    judgementPage(await unjudged(mainFiles, { ...mainFiles, 'storage/imagery.yaml': 'servers: [' })),
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
