/** Pages of Gannet Point, made from real judgements, and one of nothing but hostile text. */
import type { Room } from '../../src/capacity/headroom.ts';
import { bytes } from '../../src/estate/size.ts';
import { money } from '../../src/price/money.ts';
import type { ReportModel } from '../../src/report/model/model.ts';
import type { DrawnThing, Picture } from '../../src/report/model/picture.ts';
import { drawPage } from '../../src/report/page/document.ts';
import { judgementPage } from '../../src/report/page/judgement.ts';
import { ullage } from '../cli/run.ts';
import { judged, mainFiles, mixed, platesGrown, unjudged } from '../report/sample.ts';
import { copyOf, makeRepository, type TestRepository } from '../repository.ts';
import { years } from './office.ts';

const line = '  plates-1: { size: 40 GiB, tier: bulk } # <b>a remark</b>';

/** What a command prints of the office. */
async function printed(...args: readonly string[]): Promise<string> {
  const repo = args.includes('--repo') ? [] : ['--repo', years().dir];
  const { out, err } = await ullage(...args, ...repo, '--format', 'html');
  if (!out.startsWith('<!DOCTYPE html>')) throw new Error(`${out}${err}`);
  return out;
}

const branch = (): TestRepository =>
  copyOf('a branch of Gannet Point', () => {
    const repository = makeRepository({ files: mainFiles });
    repository.branch('grow');
    repository.write(platesGrown);
    repository.commit('grow');
    return repository;
  });

export const stories: Readonly<Record<string, () => Promise<string>>> = {
  'a branch that passes, with steps to tick off': async () =>
    judgementPage(await judged(mainFiles, platesGrown)),
  'a branch with every kind of finding': async () => judgementPage(await mixed(), () => line),
  'a branch that does not read': async () =>
    judgementPage(await unjudged(mainFiles, { ...mainFiles, 'storage/imagery.yaml': 'servers: [' })),
  'a branch beside the whole estate': async () => {
    const { dir } = branch();
    return printed('gate', '--base', 'main', '--head', 'grow', '--now', '2026-11-20', '--repo', dir);
  },
  'what the estate costs': () => printed('cost', '--at', 'main', '--now', '2026-11-20'),
  'what it costs by volume': () => printed('cost', '--at', 'main', '--by', 'volume', '--now', '2026-11-20'),
  'its headroom, with a forecast': () => printed('headroom', '--at', 'main', '--now', '2026-11-20'),
  'what surveys show': () => printed('survey', 'compare', '--at', 'main', '--now', '2026-11-20'),
  'the audit of a year': () => printed('audit'),
  'one question to the audit': () => printed('audit', '--show', 'spend'),
};

/** Every kind of picture, with the text wherever one has text. */
function picturesOf(text: string): readonly Picture[] {
  const span = { from: '2026-01-01', until: '2026-11-20' };
  const [less, more] = [money('1'), money('2')];
  const room: Room = {
    layer: 'volume-group',
    subject: { kind: 'volume-group', name: text },
    belonging: { team: text, site: text, labels: {} },
    place: { file: text, line: 1, column: 1 },
    measure: 'bytes',
    capacity: 2n,
    taken: 1n,
    free: 1n,
  };
  const thing: DrawnThing = {
    name: text,
    words: text,
    from: 0n,
    size: 10n,
    parts: [{ part: 'idle', amount: 1n }],
    touched: true,
    disputed: true,
  };
  const server = { ...thing, note: text, rows: [[thing], [thing], [thing]] as const };
  return [
    { kind: 'amounts', currency: 'EUR', rows: [{ name: text, before: less, after: more, limit: more }] },
    { kind: 'sums', currency: 'EUR', by: text, rows: [{ name: text, amount: more }] },
    {
      kind: 'bridge',
      currency: 'EUR',
      before: less,
      after: more,
      causes: [{ name: text, difference: less }],
    },
    { kind: 'rooms', rows: [{ name: text, before: room, after: room }] },
    {
      kind: 'spend',
      ...{ caption: text, of: text, spent: text },
      currency: 'EUR',
      span,
      rows: [{ name: text, steps: [{ on: span.from, amount: more }], limits: [] }],
    },
    {
      kind: 'days',
      caption: text,
      columns: [text, text],
      span,
      rows: [{ name: text, days: [span.from], stretches: [{ ...span, as: 'over' }], figure: text }],
    },
    {
      kind: 'forecast',
      name: text,
      capacity: 10n,
      readings: [
        { at: span.from, used: 1n },
        { at: span.until, used: 2n },
      ],
      resized: [],
      declared: [{ on: span.from, of: 'volume group', from: bytes(1n), to: bytes(2n) }],
      declaredSince: span.from,
      outlook: { earliest: 1, middle: 2, latest: 3 },
    },
    { kind: 'estate', sites: [{ name: text, servers: [server], unattached: server }] },
  ];
}

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
        ...picturesOf(text).map((picture) => ({ kind: 'picture', picture }) as const),
      ],
    })),
  };
  return drawPage(model, 'ullage gate --format json');
}

/** A report of 10,000 findings, and 1,000 servers of 20 volumes each. */
export function largePage(): string {
  const entries = Array.from({ length: 10_000 }, (_, index) => ({
    tag: { word: 'error', tone: 'fails' } as const,
    text: `growth-step: finding ${index} of volume v-${index} that would grow from 40 GiB to 50 GiB, 1.25 times its size`,
    excerpt: { source: line, place: { file: 'storage/imagery.yaml', line: index, column: 3 } },
    fields: [
      {
        label: 'advice',
        form: 'text',
        text: 'Check the size; if it is meant, grow it in several changes. '.repeat(3),
      },
    ] as const,
  }));
  const volumes = (server: number) =>
    Array.from({ length: 20 }, (_, index) => ({
      name: `v-${server}-${index}`,
      words: '50 GiB bulk',
      from: BigInt(index) * 50n,
      size: 50n,
      parts: [{ part: 'idle', amount: 50n }] as const,
      touched: index < 10,
      disputed: false,
    }));
  const servers = Array.from({ length: 1000 }, (_, server) => ({
    name: `server-${server}`,
    note: 'imagery, running',
    size: 1000n,
    touched: false,
    disputed: false,
    rows: [volumes(server), [], []] as const,
  }));
  const sites = [{ name: 'north-quay', servers, unattached: undefined }];
  const model: ReportModel = {
    tone: 'fails',
    headline: 'fail: 10,000 findings',
    fields: [],
    sections: [
      { title: 'Findings', blocks: [{ kind: 'entries', entries }] },
      { title: 'The estate', blocks: [{ kind: 'picture', picture: { kind: 'estate', sites } }] },
    ],
  };
  return drawPage(model, 'ullage gate --format json');
}
