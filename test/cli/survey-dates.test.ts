import { existsSync } from 'node:fs';
import { afterAll, describe, expect, it } from 'vitest';
import { gannetPoint } from '../estate/builder.ts';
import { makeRepository, removeRepositories } from '../repository.ts';
import { ullage } from './run.ts';

afterAll(removeRepositories);

const gib = (count: number): string => `${BigInt(count) << 30n}`;

const survey = (at: string, size: number): string =>
  `${JSON.stringify(
    {
      format: 'ullage-survey-1',
      server: 'plate-scanner',
      at,
      tools: {},
      unseen: [],
      devices: [{ name: 'vda', type: 'disk', size: gib(size), serial: 'vol-1' }],
      'volume-groups': [],
      'file-systems': [],
    },
    null,
    2,
  )}\n`;

const estate = (size: string): string => `team: imagery
servers: { plate-scanner: { type: small } }
volumes: { plates-1: { id: vol-1, size: ${size}, tier: bulk } }
attachments: [ { volume: plates-1, server: plate-scanner } ]
`;

const entry = '{ rule: surveyed-as-declared, within: 14, too-old: error, missing: error }';

/** What is said of a branch that grows the volume, where main has these surveys. */
async function grown(surveys: Readonly<Record<string, string>>) {
  const repository = makeRepository({
    files: {
      ...gannetPoint,
      'policies/storage.yaml': `rules:\n  - ${entry}\n`,
      'storage/imagery.yaml': estate('40 GiB'),
      ...surveys,
    },
  });
  repository.branch('grow');
  repository.write({ 'storage/imagery.yaml': estate('50 GiB') });
  repository.commit('grow the plates');
  return ullage(
    ...['gate', '--repo', repository.dir, '--base', 'main', '--head', 'grow', '--now', '2026-11-26'],
  );
}

describe('the time of a survey', () => {
  it('is that of the newest for each server: an older one beside it says nothing more', async () => {
    const { code, out } = await grown({
      'surveys/plate-scanner.json': survey('2026-11-20T06:00:00Z', 40),
      'surveys/archive/plate-scanner.json': survey('2026-10-01T06:00:00Z', 30),
    });
    expect([code, out]).toEqual([0, expect.stringContaining('pass')]);
    const other = await grown({
      'surveys/plate-scanner.json': survey('2026-11-20T06:00:00Z', 30),
      'surveys/archive/plate-scanner.json': survey('2026-11-10T06:00:00Z', 40),
    });
    expect(other.code).toBe(1);
    expect(other.out.replace(/\s+/g, ' ')).toContain('a survey of 2026-11-20 shows otherwise');
  });

  it('that two surveys of one server share is refused at its place', async () => {
    const at = '2026-11-20T06:00:00Z';
    const { code, out } = await grown({
      'surveys/a.json': survey(at, 40),
      'surveys/b.json': survey(at, 30),
    });
    expect(code).toBe(2);
    expect(out.replace(/\s+/g, ' ')).toContain(
      'this survey and the one at surveys/a.json:1 are of the same time',
    );
  });

  it('that no calendar has is refused at its place', async () => {
    for (const at of ['2026-13-45T06:00:00Z', '2026-02-30T06:00:00Z', '2026-11-20T99:00:00Z']) {
      const { code, out } = await grown({ 'surveys/plate-scanner.json': survey(at, 40) });
      expect([code, out]).toEqual([2, expect.stringContaining('not a time in the calendar')]);
    }
  });

  it('that is yet to come counts as one too old; a day is allowed for', async () => {
    const ahead = (at: string) => grown({ 'surveys/plate-scanner.json': survey(at, 40) });
    expect((await ahead('2026-11-27T06:00:00Z')).code).toBe(0);
    const { code, out } = await ahead('2099-01-01T00:00:00Z');
    expect([code, out.replace(/\s+/g, ' ')]).toEqual([
      1,
      expect.stringContaining('is dated 2099-01-01, after the day of the judgement'),
    ]);
  });
});

it.skipIf(!existsSync('/proc/self'))('a report where no folder can be made is refused at once', async () => {
  const { dir } = makeRepository({ files: gannetPoint });
  const { code, out } = await ullage(
    'gate',
    '--repo',
    dir,
    '--worktree',
    '--report',
    'json=/proc/none/gate.json',
  );
  expect([code, out]).toEqual([2, expect.stringContaining('cannot be written')]);
});
