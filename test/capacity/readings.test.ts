import { execFileSync, spawn } from 'node:child_process';
import { once } from 'node:events';
import {
  lstatSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { hostname, tmpdir } from 'node:os';
import { join } from 'node:path';
import { buildSync } from 'esbuild';
import fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { err, ok } from '../../src/base/problem.ts';
import { readDf } from '../../src/capacity/df.ts';
import { type NewReadings, rowsToAppend } from '../../src/capacity/new-readings.ts';
import {
  fillableBytes,
  type Reading,
  readingsAsCsv,
  readingsHeader,
  readingTime,
  readReadings,
} from '../../src/capacity/readings.ts';
import { summariseReadings, useKey } from '../../src/capacity/use-summary.ts';
import { appendSafely } from '../../src/cli/append.ts';
import { bytes } from '../../src/estate/size.ts';

const file = 'readings/2026.csv';
const start = Date.parse('2026-01-05T06:00:00Z');
const timeAt = (hours: number): string =>
  `${new Date(start + hours * 3_600_000).toISOString().slice(0, 19)}Z`;

const reading = (over: Partial<Reading> = {}): Reading => ({
  server: 'plate-scanner',
  mount: '/plates',
  at: timeAt(0),
  size: bytes(1000n),
  used: bytes(600n),
  available: bytes(350n),
  ...over,
});

const csv = (readings: readonly Reading[]): string => readingsHeader + readingsAsCsv(readings);

describe('a file of readings', () => {
  it('every reading that is written is read back', () => {
    const size = fc.bigInt({ min: 0n, max: 10n ** 19n - 1n }).map(bytes);
    const some = fc.record({
      server: fc.stringMatching(/^[a-z][a-z0-9-]{0,10}$/),
      mount: fc
        .string({ unit: fc.constantFrom('a', ' ', ',', '"', 'é', '/', '=', '%'), maxLength: 8 })
        .map((rest) => `/${rest}`),
      at: fc.integer({ min: 0, max: 90_000 }).map(timeAt),
      size,
      used: size,
      available: fc.bigInt({ min: -(10n ** 19n) + 1n, max: 10n ** 19n - 1n }).map(bytes),
    });
    const key = ({ server, mount, at }: Reading): string => JSON.stringify([server, mount, at]);
    fc.assert(
      fc.property(fc.uniqueArray(some, { selector: key, maxLength: 20 }), (readings) => {
        expect(readReadings(csv(readings), file)).toEqual({ readings, problems: [] });
      }),
    );
  });

  it('each malformed row is named by line and column, and the others are read', () => {
    const text = [
      'server,mount,at,size,used,available',
      'plate-scanner,/plates,2026-01-05T06:00:00Z,1000,600,350',
      'plate-scanner,"/plates, old",2026-02-30T06:00:00Z,1000,600,350',
      'plate-scanner,/plates,2026-01-06T06:00:00+01:00,1000,600,350',
      '',
      'plate-scanner,/plates,2026-01-06T06:00:00Z,1000 GiB,600,350',
      'plate-scanner,plates,2026-01-06T06:00:00Z,1000,600,350',
      'plate-scanner,/plates,2026-01-06T06:00:00Z,1000,600',
      'plate-scanner,/plates,2026-01-06T06:00:00Z,1000,-6,350',
      'plate-scanner,/pl"ates,2026-01-06T06:00:00Z,1000,6,350',
      'plate-scanner,/plates,2026-01-06T06:00:00Z,1000,601,-50',
      ',/plates,2026-01-06T06:00:00Z,1000,601,-50',
      'plate-scanner,/plates,2026-01-06T06:00:00Z,1000,601,x',
    ].join('\r\n');
    const { readings, problems } = readReadings(text, file);
    expect(readings.map(({ used }) => used)).toEqual([600n, 601n]);
    expect(problems.map(({ place, message }) => `${place?.line}:${place?.column} ${message}`)).toEqual([
      '3:30 2026-02-30T06:00:00Z is not a time in UTC with whole seconds',
      '4:23 2026-01-06T06:00:00+01:00 is not a time in UTC with whole seconds',
      '6:44 the size 1000 GiB is not a whole number of bytes',
      '7:15 plates is not a mount point',
      '8:1 a reading has 6 fields, and this row has 5',
      '9:49 the used size -6 is not a whole number of bytes',
      '10:1 a quotation mark is inside a field',
      '12:1 the server has no name',
      '13:53 the available size x is not a whole number of bytes',
    ]);
  });

  it('a file without its first row is not taken for readings with one lost', () => {
    const { problems } = readReadings(readingsAsCsv([reading(), reading({ at: timeAt(1) })]), file);
    expect(problems[0]).toMatchObject({
      place: { file, line: 1, column: 1 },
      advice: `Write ${readingsHeader.trim()} as the first row.`,
    });
  });

  it('a quotation mark that is never closed does not hide the rows below without a word', async () => {
    const text = `${csv([reading()])}plate-scanner,"/plates,${timeAt(1)},1,1,1\n${readingsAsCsv([reading({ at: timeAt(2) })])}`;
    const problem = { place: { file, line: 3 }, message: 'a quotation mark is opened here and not closed' };
    expect(readReadings(text, file).problems).toMatchObject([problem]);
    const long =
      text + readingsAsCsv(Array.from({ length: 5000 }, (_, hour) => reading({ at: timeAt(hour + 3) })));
    expect((await summariseReadings([{ file, chunks: [long] }])).problems[0]).toMatchObject(problem);
  });

  it('a row that a merge doubled counts once; two that contradict each other are a problem', () => {
    expect(readReadings(csv([reading(), reading()]), file)).toMatchObject({
      readings: [reading()],
      problems: [],
    });
    expect(readReadings(csv([reading(), reading({ used: bytes(1n) })]), file).problems).toMatchObject([
      {
        place: { file, line: 3 },
        message: `plate-scanner:/plates has two readings for ${timeAt(0)}, and they differ`,
      },
    ]);
  });

  it('times with an offset or a fraction come to UTC and whole seconds', () => {
    expect(readingTime('2026-11-20T07:30:00.999+01:30')).toBe('2026-11-20T06:00:00Z');
    expect(readingTime('2026-11-20t06:00:00z')).toBe('2026-11-20T06:00:00Z');
    for (const text of [
      '2026-11-20',
      '2026-02-29T06:00:00Z',
      '2026-11-20T24:00:00Z',
      '2026-11-20T06:00:00',
      'now',
      '0000-01-01T00:00:00+01:00',
    ]) {
      expect(readingTime(text), text).toBeUndefined();
    }
  });

  it('full, for those who are not root, is without the reserve', () => {
    expect(fillableBytes(reading())).toBe(950n);
  });
});

describe('a summary of many readings', () => {
  const hourly = (days: number): Reading[] =>
    Array.from({ length: days * 24 }, (_, hour) => reading({ at: timeAt(hour), used: bytes(BigInt(hour)) }));

  it('keeps the first, the last, and the highest of each half of the latest days', async () => {
    const readings = hourly(10);
    const summary = await summariseReadings([{ file, chunks: [csv(readings)] }], { days: 3 });
    const plates = summary.fileSystems.get(useKey('plate-scanner', '/plates'));
    expect([summary.rows, plates?.count, plates?.first, plates?.last]).toEqual([
      240,
      240,
      readings[0],
      readings[239],
    ]);
    // The series begins at six in the morning and rises by the hour: it is highest at eleven and at 23 o'clock, and at
    // five on the last day. Of three days there are at most six halves.
    expect(plates?.highest).toEqual([185, 197, 209, 221, 233, 239].map((hour) => readings[hour]));
  });

  it('is the same however the rows are ordered, cut into chunks and spread over files', async () => {
    const readings = [...hourly(6), ...hourly(4).map((each) => ({ ...each, mount: '/scratch é' }))];
    const straight = await summariseReadings([{ file, chunks: [csv(readings)] }], { days: 3 });
    await fc.assert(
      fc.asyncProperty(
        fc.shuffledSubarray(readings, { minLength: readings.length }),
        fc.integer({ min: 1, max: 999 }),
        fc.nat(readings.length),
        async (mixed, size, cut) => {
          const chunked = (part: readonly Reading[]): Uint8Array[] => {
            const content = Buffer.from(csv(part));
            return Array.from({ length: Math.ceil(content.length / size) }, (_, index) =>
              content.subarray(index * size, (index + 1) * size),
            );
          };
          const summary = await summariseReadings(
            [
              { file: 'a.csv', chunks: chunked(mixed.slice(0, cut)) },
              { file: 'b.csv', chunks: chunked(mixed.slice(cut)) },
            ],
            { days: 3 },
          );
          expect(new Map([...summary.fileSystems].sort())).toEqual(new Map([...straight.fileSystems].sort()));
          expect(summary.problems).toEqual([]);
        },
      ),
      { numRuns: 25 },
    );
  });

  it('a file of nothing but bad rows is told in the first hundred and a count', async () => {
    const summary = await summariseReadings([{ file, chunks: [readingsHeader, 'x\n'.repeat(1000)] }]);
    expect([summary.problems.length, summary.problemsLeftOut, summary.rows]).toEqual([100, 900, 0]);
    expect(summary.problems[99]?.place?.line).toBe(101);
  });

  it('two readings of one time that differ are a problem here too', async () => {
    const chunks = [csv([reading(), reading({ used: bytes(1n) }), reading()])];
    expect((await summariseReadings([{ file, chunks }])).problems).toMatchObject([{ place: { line: 3 } }]);
  });

  it('a disk that fails while it is read is not taken for the end of the file', async () => {
    async function* failing() {
      yield csv([reading()]);
      throw new Error('EIO: i/o error');
    }
    await expect(summariseReadings([{ file, chunks: failing() }])).rejects.toThrow('EIO');
  });

  it('a hundred times the rows take no more memory', () => {
    // In a process of its own, whose heap is too small to hold the rows: 300,000 of them take well over 50 MB.
    const program = buildSync({
      stdin: {
        contents: `
          import { summariseReadings } from './src/capacity/use-summary.ts';
          function* chunks() {
            yield 'server,mount,at,size,used,available\\n';
            for (let block = 0; block < 300; block += 1) {
              let text = '';
              for (let row = 0; row < 1000; row += 1) {
                const at = new Date(Date.UTC(2016, 0, 1) + (block * 1000 + row) * 60_000).toISOString().slice(0, 19) + 'Z';
                text += 'plate-scanner,/plates,' + at + ',107374182400,' + (block * 1000 + row) + ',1\\n';
              }
              yield text;
            }
          }
          summariseReadings([{ file: 'many.csv', chunks: chunks() }]).then(({ rows, fileSystems }) =>
            console.log(rows, [...fileSystems.values()].map(({ count, highest, last }) => [count, highest.length, String(last.used)]).join()));
        `,
        resolveDir: new URL('../..', import.meta.url).pathname,
        loader: 'ts',
      },
      bundle: true,
      platform: 'node',
      format: 'cjs',
      write: false,
    }).outputFiles[0]?.text;
    const output = execFileSync(process.execPath, ['--max-old-space-size=24', '-'], {
      input: program ?? '',
      encoding: 'utf8',
    });
    expect(output.trim()).toBe('300000 300000,417,299999');
  }, 60_000);
});

describe('which lines of df become readings', () => {
  const printed = [
    'Filesystem 1024-blocks Used Available Capacity Mounted on',
    'udev 100 0 100 0% /dev',
    'tmpfs 100 1 99 1% /run',
    '/dev/vda1 1000 500 400 56% /',
    '/dev/mapper/plates-plates 2000 900 1100 45% /plates',
    'quay:/dead - - - - /dead',
  ].join('\n');
  const df = readDf(printed, '<standard input>');
  const rows = df.ok ? df.value : [];
  const declared = (...mounts: readonly string[]) =>
    new Map(mounts.map((mount) => [mount, bytes(2_060_000n)]));
  const wanted = (over: Partial<NewReadings> = {}): NewReadings => ({
    server: 'plate-scanner',
    at: timeAt(48),
    now: timeAt(48),
    rows,
    declared: new Map([
      ['plate-scanner', declared('/plates', '/scratch', '/dead')],
      ['ledger-1', declared('/ledger')],
    ]),
    newest: new Map(),
    ...over,
  });
  /** The newest readings, by mount point, so many hours after the start. */
  const readAt = (hours: Readonly<Record<string, number>>) =>
    new Map(
      Object.entries(hours).map(([mount, hour]) => [mount, { at: timeAt(hour), size: bytes(2_048_000n) }]),
    );
  const problemsOf = (over: Partial<NewReadings>) => {
    const result = rowsToAppend(wanted(over));
    if (result.ok) throw new Error('it was taken');
    return result.problems;
  };

  it('the declared file systems are taken; memory, devices and the root are left out and listed', () => {
    const result = rowsToAppend(wanted());
    expect(result).toEqual({
      ok: true,
      value: {
        readings: [
          reading({
            at: timeAt(48),
            size: bytes(2_048_000n),
            used: bytes(921_600n),
            available: bytes(1_126_400n),
          }),
        ],
        leftOut: [
          { mount: '/dev', device: 'udev', why: 'not declared' },
          { mount: '/run', device: 'tmpfs', why: 'not declared' },
          { mount: '/', device: '/dev/vda1', why: 'not declared' },
          { mount: '/dead', device: 'quay:/dead', why: 'not measured' },
        ],
        notShown: ['/scratch'],
      },
    });
  });

  it('output from the wrong server, or a mount point misspelt, is refused with the nearest', () => {
    const others = rows.map((row) => (row.mount === '/plates' ? { ...row, mount: '/plate' } : row));
    const [problem] = problemsOf({ rows: others });
    expect(problem?.message).toBe(
      'none of the 5 file systems that df shows is a declared one of plate-scanner with figures',
    );
    expect(problem?.advice).toContain('Did you mean /plates? ');
    expect(problemsOf({ only: ['/platse'] })).toMatchObject([
      {
        message: 'no file system /platse is declared on plate-scanner',
        advice: 'Did you mean /plates? Declared on plate-scanner: /plates, /scratch, /dead.',
      },
    ]);
    expect(problemsOf({ server: 'plate-scaner' })).toMatchObject([
      {
        message: 'no file system is declared on a server plate-scaner',
        advice: expect.stringContaining('Did you mean plate-scanner? '),
      },
    ]);
  });

  it('a mount point asked for that is not mounted, or not measured, is refused', () => {
    expect(problemsOf({ only: ['/plates', '/scratch', '/dead'] }).map(({ message }) => message)).toEqual([
      'df does not show /scratch',
      'df could not measure /dead',
    ]);
  });

  it('a reading no newer than what is there is refused, and so is one from the future', () => {
    expect(problemsOf({ newest: readAt({ '/plates': 49 }) })[0]?.message).toBe(
      `${timeAt(48)} is older than the newest reading of plate-scanner:/plates, ${timeAt(49)}`,
    );
    expect(problemsOf({ newest: readAt({ '/plates': 48 }) })[0]?.message).toContain('already');
    expect(problemsOf({ at: timeAt(73) })[0]?.message).toContain('is in the future');
    expect(rowsToAppend(wanted({ newest: readAt({ '/plates': 47, '/': 99 }) })).ok).toBe(true);
  });

  it('a size at odds with the declared one is refused, unless told otherwise or the reading before had it too', () => {
    const small = new Map([['plate-scanner', new Map([['/plates', bytes(200_000n)]])]]);
    expect(problemsOf({ declared: small })).toMatchObject([
      {
        message: 'plate-scanner:/plates is declared with 200 kB, and df measured 2000 KiB',
        advice: expect.stringContaining('--any-size'),
      },
    ]);
    expect(rowsToAppend(wanted({ declared: small, anySize: true })).ok).toBe(true);
    expect(rowsToAppend(wanted({ declared: small, newest: readAt({ '/plates': 47 }) })).ok).toBe(true);
  });
});

describe('adding to a file', () => {
  let folder = '';
  let path = '';
  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), 'readings-'));
    path = join(folder, 'readings', '2026.csv');
  });
  afterEach(() => rmSync(folder, { recursive: true, force: true }));

  const appending = { header: readingsHeader, patienceMs: 200 };
  const add = (...readings: Reading[]) =>
    appendSafely(path, appending, async () => ok(readingsAsCsv(readings)));

  it('makes the folder and the file with its header, then adds below', async () => {
    await add(reading());
    await add(reading({ at: timeAt(1) }));
    expect(readFileSync(path, 'utf8')).toBe(csv([reading(), reading({ at: timeAt(1) })]));
    expect(readdirSync(join(folder, 'readings'))).toEqual(['2026.csv']);
  });

  it('ends a last line that an editor left open, and keeps the mode and a symbolic link', async () => {
    await add(reading());
    writeFileSync(path, csv([reading()]).trimEnd(), { mode: 0o640 });
    execFileSync('chmod', ['640', path]);
    symlinkSync('2026.csv', join(folder, 'readings', 'now.csv'));
    await appendSafely(join(folder, 'readings', 'now.csv'), appending, async () =>
      ok(readingsAsCsv([reading({ at: timeAt(1) })])),
    );
    expect(readFileSync(path, 'utf8')).toBe(csv([reading(), reading({ at: timeAt(1) })]));
    expect(statSync(path).mode & 0o777).toBe(0o640);
    expect(lstatSync(join(folder, 'readings', 'now.csv')).isSymbolicLink()).toBe(true);
  });

  it('a refusal, or nothing to add, leaves no file and no lock', async () => {
    const no = err({ message: 'no', advice: 'no' });
    expect(await appendSafely(path, appending, async () => no)).toEqual(no);
    await appendSafely(path, appending, async () => ok(''));
    await appendSafely(path, appending, async () => Promise.reject(new Error('gone'))).then((result) =>
      expect(result.ok).toBe(false),
    );
    expect(readdirSync(join(folder, 'readings'))).toEqual([]);
  });

  it('twenty at once lose none', async () => {
    const patient = { header: readingsHeader, patienceMs: 20_000 };
    const all = Array.from({ length: 20 }, (_, hour) => reading({ at: timeAt(hour) }));
    const results = await Promise.all(
      all.map((each) => appendSafely(path, patient, async () => ok(readingsAsCsv([each])))),
    );
    expect(results.every(({ ok }) => ok)).toBe(true);
    const { readings, problems } = readReadings(readFileSync(path, 'utf8'), path);
    expect(problems).toEqual([]);
    expect(new Set(readings.map(({ at }) => at)).size).toBe(20);
  });

  it('a lock that a killed process left is named, with the process, and not broken', async () => {
    await add(reading());
    const gone = spawn(process.execPath, ['-e', '']);
    await once(gone, 'exit');
    writeFileSync(`${path}.lock`, `${gone.pid} ${hostname()}\n`);
    const result = await add(reading({ at: timeAt(1) }));
    expect(result).toMatchObject({
      ok: false,
      problems: [{ message: expect.stringContaining(`process ${gone.pid} was adding readings`) }],
    });
    writeFileSync(`${path}.lock`, `${process.pid} ${hostname()}\n`);
    expect(await add(reading({ at: timeAt(1) }))).toMatchObject({
      problems: [{ message: expect.stringContaining('another process') }],
    });
    expect(readFileSync(path, 'utf8')).toBe(csv([reading()]));
  });

  /** The real code in a process of its own, so that it can be killed or starved. */
  const program = (folderOf: string, body: string): string => {
    const bundle = join(folderOf, 'append.mjs');
    buildSync({
      stdin: {
        contents: `import { appendSafely } from './src/cli/append.ts';\n${body}`,
        resolveDir: new URL('../..', import.meta.url).pathname,
        loader: 'ts',
      },
      bundle: true,
      platform: 'node',
      format: 'esm',
      outfile: bundle,
    });
    return bundle;
  };

  it('a write that fails half-way leaves the file as it was', async () => {
    await add(...Array.from({ length: 50 }, (_, hour) => reading({ at: timeAt(hour) })));
    const before = readFileSync(path, 'utf8');
    const bundle = program(
      folder,
      `const result = await appendSafely(${JSON.stringify(path)}, { header: 'h\\n' }, async () => ({ ok: true, value: 'x,y\\n'.repeat(50_000) }));
       console.log(JSON.stringify(result));
       process.exitCode = result.ok ? 0 : 2;`,
    );
    // A limit on the size of files stands for a full disk: the old rows fit under it, the new ones do not.
    const child = spawn('bash', [
      '-c',
      `ulimit -f 32; trap '' XFSZ; exec "$0" "$1"`,
      process.execPath,
      bundle,
    ]);
    let output = '';
    child.stdout.on('data', (chunk) => {
      output += chunk;
    });
    await once(child, 'close');
    expect(child.exitCode).toBe(2);
    expect(output).toContain('nothing was added');
    expect(readFileSync(path, 'utf8')).toBe(before);
    expect(readdirSync(join(folder, 'readings'))).toEqual(['2026.csv']);
  });

  it('killed while it writes, it leaves whole rows and all that were there; nobody sees half of them', async () => {
    // Each addition is one block of rows with its number, so that half of one would show, in the size alone.
    const block = 20_000;
    const header = 'number,row\n';
    const bundle = program(
      folder,
      `for (let number = Number(process.argv[2]); ; number += 1) {
         const value = (String(number).padStart(9, '0') + ',row\\n').repeat(${block});
         await appendSafely(${JSON.stringify(path)}, { header: ${JSON.stringify(header)} }, async () => ({ ok: true, value }));
         console.log(number);
       }`,
    );
    const sizeOf = (name: string): number => statSync(name, { throwIfNoEntry: false })?.size ?? 0;
    const isWhole = (size: number): boolean =>
      size === 0 || (size - header.length) % (block * '000000001,row\n'.length) === 0;
    let written = 0;
    for (let kill = 1; kill <= 6; kill += 1) {
      const child = spawn(process.execPath, [bundle, String(written + 1)]);
      let said = '';
      child.stdout.on('data', (chunk) => {
        said += chunk;
      });
      await once(child.stdout, 'data');
      // Watched without a pause, and killed in the midst of the next new file.
      const until = Date.now() + 5000;
      const before = sizeOf(path);
      let midst = false;
      while (!midst && Date.now() < until) {
        const size = sizeOf(path);
        expect(isWhole(size), `${size} bytes are seen`).toBe(true);
        midst = size > before && sizeOf(`${path}.new`) > 0;
      }
      child.kill('SIGKILL');
      await once(child, 'close');
      expect(midst).toBe(true);
      const [first, ...lines] = readFileSync(path, 'utf8').trimEnd().split('\n');
      expect(first).toBe(header.trim());
      written = lines.length / block;
      expect(
        lines.every(
          (line, index) => line === `${String(Math.floor(index / block) + 1).padStart(9, '0')},row`,
        ),
      ).toBe(true);
      expect(Number.isInteger(written)).toBe(true);
      // What it said was added is there; the last may have been added and not yet said.
      expect(written).toBeGreaterThanOrEqual(Number(said.trim().split('\n').at(-1)));
      // What a person does who reads the message.
      rmSync(`${path}.lock`, { force: true });
    }
    expect(written).toBeGreaterThanOrEqual(6);
  }, 60_000);
});
