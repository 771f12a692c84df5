import { execFileSync } from 'node:child_process';
import { statfsSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type DfRow, readDf } from '../../src/capacity/df.ts';

const file = '<standard input>';

function rowsOf(text: string): readonly DfRow[] {
  const read = readDf(text, file);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read.value;
}

function problemsOf(text: string) {
  const read = readDf(text, file);
  if (read.ok) throw new Error('it was read');
  return read.problems;
}

// POSIX.1-2024, utility df, STDOUT: the two header lines, and the format of the rest,
// "%s %d %d %d %d%% %s\n". The specification prints no sample rows, so rows are made by its format.
const header512 = 'Filesystem 512-blocks Used Available Capacity Mounted on';
const header1024 = 'Filesystem 1024-blocks Used Available Capacity Mounted on';
const row = (
  device: string,
  size: bigint,
  used: bigint,
  free: bigint,
  percent: bigint,
  mount: string,
): string => `${device} ${size} ${used} ${free} ${percent}% ${mount}\n`;

describe('df output as POSIX.1-2024 specifies it', () => {
  it('a server that counts in 512-byte units is not read as half as full', () => {
    const line = row('/dev/mapper/plates-plates', 209_608_704n, 1_000n, 209_607_704n, 1n, '/plates');
    expect(rowsOf(`${header512}\n${line}`)[0]?.use?.size).toBe(107_319_656_448n);
    expect(rowsOf(`${header1024}\n${line}`)[0]?.use?.size).toBe(214_639_312_896n);
  });

  it('what is free is below zero once the reserve is being eaten, and the percentage over 100', () => {
    const [read] = rowsOf(`${header1024}\n${row('/dev/vdb', 1000n, 980n, -30n, 104n, '/plates')}`);
    expect(read?.use).toEqual({ size: 1_024_000n, used: 1_003_520n, available: -30_720n });
  });

  it('every row that the format can write is read back, spaces and digits in its names and all', () => {
    const word = fc.stringMatching(/^[A-Za-z0-9/_.%:-]{1,12}$/);
    // A device whose name holds four counts before a word with a slash cannot be told apart by anyone.
    const device = fc.array(word, { minLength: 1, maxLength: 3 }).map((words) => words.join(' '));
    const mount = fc.array(word, { maxLength: 3 }).map((words) => `/${words.join(' ')}`);
    const blocks = fc.bigInt({ min: 0n, max: 10n ** 18n });
    fc.assert(
      fc.property(
        device,
        blocks,
        blocks,
        fc.bigInt({ min: -(10n ** 18n), max: 10n ** 18n }),
        fc.nat(200),
        mount,
        fc.boolean(),
        (name, size, used, free, percent, at, small) => {
          const read = rowsOf(
            `${small ? header512 : header1024}\n${row(name, size, used, free, BigInt(percent), at)}`,
          );
          const unit = small ? 512n : 1024n;
          expect(read).toEqual([
            {
              device: name,
              mount: at,
              line: 2,
              use: { size: size * unit, used: used * unit, available: free * unit },
            },
          ]);
        },
      ),
    );
  });
});

describe('df output as servers really print it', () => {
  it('columns, long device names, and names with spaces', () => {
    const rows = rowsOf(
      [
        'Filesystem                                              1024-blocks      Used Available Capacity Mounted on',
        '/dev/mapper/group--with--a--very--long--name-and--plates  104806400  52403200  52403200      50% /plates',
        '//quay/survey share 2                                          1000       500       500      50% /mnt/survey share 2',
        '/dev/vdd                                                       1000      1000         0     100% /full up 1 2 3 4% /x',
        '',
      ].join('\n'),
    );
    expect(rows.map(({ device, mount }) => [device, mount])).toEqual([
      ['/dev/mapper/group--with--a--very--long--name-and--plates', '/plates'],
      ['//quay/survey share 2', '/mnt/survey share 2'],
      ['/dev/vdd', '/full up 1 2 3 4% /x'],
    ]);
  });

  it('a file system that cannot be measured is kept, without figures', () => {
    const rows = rowsOf(`${header1024}\nnone - - - - /dead\nproc 0 0 0 - /proc\nodd 10 -4 14 - /odd\n`);
    expect(rows.map(({ mount, use }) => [mount, use?.size])).toEqual([
      ['/dead', undefined],
      ['/proc', 0n],
      ['/odd', undefined],
    ]);
  });

  it('any block size that the header names, Windows line ends, a byte-order mark, and two outputs in one', () => {
    const text = `\uFEFF${header1024.replace('1024', '1048576')}\r\n/dev/vdb 2 1 1 50% /a\r\n${header512}\r\n/dev/vdc 2 1 1 50% /b\r\n`;
    expect(rowsOf(text).map(({ use }) => use?.size)).toEqual([2_097_152n, 1024n]);
  });

  it('a mount point keeps a space at its end', () => {
    expect(rowsOf(`${header512}\n/dev/vdb 2 1 1 50% /a \n`)[0]?.mount).toBe('/a ');
  });
});

describe('what is no output of df -P', () => {
  it('rounded sizes are refused, since a rounded size is no reading', () => {
    const human =
      'Filesystem      Size  Used Avail Use% Mounted on\n/dev/vdb        100G   50G   50G  50% /plates\n';
    expect(problemsOf(human)[0]).toMatchObject({
      place: { file, line: 1, column: 1 },
      message: 'this is not the header that df -P prints',
    });
    const units = `${header1024.replace('1024', '1048576')}\n/dev/vdb 100M 50M 50M 50% /plates\n`;
    expect(problemsOf(units)[0]).toMatchObject({
      place: { line: 2 },
      message: 'the sizes carry units, so they are rounded',
    });
  });

  it('other columns, another language, no header, nothing at all', () => {
    for (const text of [
      `${header1024.replace('Filesystem', 'Filesystem Type')}\n/dev/vdb xfs 2 1 1 50% /a\n`,
      'Filesystem 512-blocks Used Available Capacity iused ifree %iused Mounted on\n/dev/disk1 2 1 1 50% 1 2 3% /\n',
      'Dateisystem 1024-Blöcke Benutzt Verfügbar Kapazität Eingehängt auf\n/dev/vdb 2 1 1 50% /a\n',
      '/dev/vdb 2 1 1 50% /a\n',
      '',
      '\n\n',
    ]) {
      expect(problemsOf(text)[0]?.advice).toContain('LC_ALL=C df -P');
    }
  });

  it('every bad line is named, and nothing is taken from the rest', () => {
    const problems = problemsOf(
      `${header512}\ndf: /dead: Stale file handle\n/dev/vdb 2 1 1 50% /a\n/dev/vdc 2 1 1\n`,
    );
    expect(problems.map(({ place, message }) => [place?.line, message.slice(0, 22)])).toEqual([
      [2, 'this is a message of d'],
      [4, 'this is not a line tha'],
    ]);
  });

  it('a hostile line is read to its end, and refused', () => {
    // A pattern that went back for each of its 200,000 words would take minutes.
    expect(problemsOf(`${header512}\n${'1 '.repeat(200_000)}\n`)).toHaveLength(1);
  });
});

// Held against the machine that runs the tests: what its own df prints, and what its kernel says through statfs(2).
describe("this machine's own df", () => {
  const run = (args: readonly string[], environment: Record<string, string> = {}): string =>
    execFileSync('df', [...args], { encoding: 'utf8', env: { ...process.env, LC_ALL: 'C', ...environment } });

  // -B is GNU's own.
  const gnu = execFileSync('sh', ['-c', 'df --version 2>/dev/null || true'], { encoding: 'utf8' }).includes(
    'GNU',
  );
  const forms: readonly (readonly [string, bigint, () => string])[] = [
    ['df -P', gnu ? 1024n : 512n, () => run(['-P'])],
    ['df -Pk', 1024n, () => run(['-Pk'])],
    ['df -P with POSIXLY_CORRECT', 512n, () => run(['-P'], { POSIXLY_CORRECT: '1' })],
    ...(gnu ? [['df -P -B512', 512n, () => run(['-P', '-B512'])] as const] : []),
  ];

  it.each(forms)('%s is read without loss', (_, unit, print) => {
    const text = print();
    const lines = text.trimEnd().split('\n').slice(1);
    const rows = rowsOf(text);
    expect(rows.length).toBe(lines.length);
    expect(rows.length).toBeGreaterThan(0);
    // Printed again from what was read, each line is the line it was, but for its percentage.
    const again = rows.map(({ device, mount, use }) =>
      [
        device,
        ...(use === undefined ? ['-'] : [use.size, use.used, use.available].map((size) => size / unit)),
        mount,
      ].join(' '),
    );
    const were = lines.map((line) => line.replace(/\s+(-|[0-9]+%)(?=\s+\/)/, '').replace(/[ ]+/g, ' '));
    expect(again).toEqual(were);
  });

  it.each(forms)('%s agrees with statfs', (_, unit, print) => {
    let held = 0;
    for (const { mount, use } of rowsOf(print())) {
      if (use === undefined) continue;
      const kernel = statfsSync(mount, { bigint: true });
      // df rounds up to whole blocks. The size stands still; the use moves while the tests run.
      const size = kernel.blocks * kernel.bsize;
      expect(use.size - size).toBeGreaterThanOrEqual(0n);
      expect(use.size - size).toBeLessThan(unit);
      const used = (kernel.blocks - kernel.bfree) * kernel.bsize;
      const difference = use.used > used ? use.used - used : used - use.used;
      expect(difference).toBeLessThan(2n ** 30n);
      held += 1;
    }
    expect(held).toBeGreaterThan(0);
  });
});
