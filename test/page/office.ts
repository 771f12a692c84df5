/** A year and a half of Gannet Point's main branch: growth, a loosened limit, a waiver, a violation that stood, readings. */
import { type Edits, historyOf } from '../audit/history.ts';
import { mainFiles } from '../report/sample.ts';
import { copyOf, type TestRepository } from '../repository.ts';

const imagery = 'storage/imagery.yaml';
const policy = 'policies/storage.yaml';

/** Use that grows by about half a gibibyte a day, with a wave of a week; as `df -P` counts it, in KiB. */
function readings(): string {
  const lines = ['server,mount,at,size,used,available'];
  const [size, begin] = [104_806_400, Date.parse('2026-06-01T04:00:00Z')];
  for (let day = 0; day < 150; day++) {
    const used = Math.round(20_000_000 + day * 480_000 + (day % 7) * 90_000);
    const time = new Date(begin + day * 86_400_000).toISOString().slice(0, 19);
    lines.push(`plate-scanner,/plates,${time}Z,${size * 1024},${used * 1024},${(size - used) * 1024}`);
  }
  return `${lines.join('\n')}\n`;
}

export const years = (): TestRepository => copyOf('a year of Gannet Point', written);

function written(): TestRepository {
  // The estate is written down first, and surveyed later.
  const entries = Object.entries(mainFiles);
  const surveys = Object.fromEntries(entries.filter(([file]) => file.startsWith('surveys/')));
  let files: Readonly<Record<string, string>> = Object.fromEntries(
    entries.filter(([file]) => !(file in surveys)),
  );
  const edit = (file: string, from: string, to: string): Edits => {
    const text = files[file] ?? '';
    if (!text.includes(from)) throw new Error(`${file} does not hold: ${from}`);
    files = { ...files, [file]: text.replaceAll(from, () => to) };
    return { [file]: files[file] ?? '' };
  };
  const steps: { readonly edits: Edits; readonly date: string; readonly message: string }[] = [
    { edits: files, date: '2026-01-12T10:00:00Z', message: 'The estate as it is' },
    {
      edits: edit(imagery, 'plates-1: { size: 40 GiB', 'plates-1: { size: 60 GiB'),
      date: '2026-02-03T10:00:00Z',
      message: 'More room for plates',
    },
    { edits: surveys, date: '2026-02-10T10:00:00Z', message: 'What a survey shows' },
    {
      edits: edit('storage/soundings.yaml', 'depths-1: { size: 200 GiB', 'depths-1: { size: 280 GiB'),
      date: '2026-03-17T10:00:00Z',
      message: 'The spring survey',
    },
    {
      edits: edit(
        policy,
        'limit: "150.00" }',
        `limit: "190.00" }
  - { name: site-limit, rule: max-monthly-spend, each: site, limit: "260.00" }
  - { name: brisk-limit, rule: max-monthly-spend, where: { teams: [soundings], tiers: [brisk] }, limit: "160.00" }
  - { name: whole-limit, rule: max-monthly-spend, limit: "300.00" }`,
      ),
      date: '2026-04-02T10:00:00Z',
      message: 'A higher limit',
    },
    {
      edits: edit('storage/soundings.yaml', 'depths-2: { size: 200 GiB', 'depths-2: { size: 300 GiB'),
      date: '2026-05-20T10:00:00Z',
      message: 'The spring survey, again',
    },
    {
      edits: {
        ...edit(policy, 'limit: "70.00"', 'limit: "68.00"'),
        ...edit(policy, 'limit: "300.00"', 'limit: "290.00"'),
      },
      date: '2026-07-01T10:00:00Z',
      message: 'A lower limit',
    },
    {
      edits: {
        ...edit(imagery, 'plates-2: { size: 40 GiB', 'plates-2: { size: 240 GiB'),
        'readings/plates.csv': readings(),
      },
      date: '2026-09-09T10:00:00Z',
      message: 'Room for a year',
    },
    {
      edits: edit(imagery, 'plates-1: { size: 60 GiB', 'plates-1: { size: 61 GiB'),
      date: '2026-11-09T10:00:00Z',
      message: 'A little more',
    },
  ];
  return historyOf(steps);
}
