/**
 * The shipped commands: each option is one that its manual page has, each argument arrives whole through a shell, and,
 * where the machine lets it, each does what its step says.
 */
import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { shippedProcedures } from '../../src/runbook/generated/shipped.ts';
import type { Command } from '../../src/runbook/procedure-file.ts';
import { shellLine } from '../../src/runbook/shell.ts';
import { elsewhere, type ManualPage, pageOf } from './tools.ts';

const pages: Readonly<Record<string, ManualPage>> = JSON.parse(
  readFileSync(join(import.meta.dirname, 'fixtures/manual-pages.json'), 'utf8'),
);

type Run = Extract<Command, { run: unknown }>;

const shipped: readonly Run[] = shippedProcedures.flatMap(({ actions }) =>
  Object.values(actions).flatMap(({ commands = [] }) =>
    commands.flatMap((each) => ('run' in each ? each : [])),
  ),
);
const checked = shipped.filter(({ run: [program] }) => !elsewhere.includes(`${program}`));

/** What of a command its page does not have. */
function unknownIn(command: Run): readonly string[] {
  const [program] = pageOf(command);
  const page = pages[program];
  if (page === undefined) return [`the page of ${program}`];
  return command.run.slice(1).flatMap((part) => {
    const args = typeof part === 'string' ? [part] : part;
    return args.flatMap((arg) => {
      if (arg.startsWith('-')) return page.options.includes(arg) ? [] : [arg];
      const setting = /^(\w+)=/.exec(arg)?.[1];
      return setting === undefined || page.settings.includes(setting) ? [] : [arg];
    });
  });
}

describe('the options of the shipped commands', () => {
  // The manual pages that Debian 12's packages carry; fixtures/manual-pages.json says which, and in which version.
  it('are all in the manual pages that their packages carry', () => {
    expect(checked.length).toBeGreaterThan(50);
    for (const command of checked) expect(unknownIn(command), JSON.stringify(command.run)).toEqual([]);
  });

  it('would be told of where they are not', () => {
    const from = 'vgcreate(8), lvm2 2.03.16';
    expect(unknownIn({ run: ['vgcreate', '--physical-extent-size', '4M', 'plates'], from })).toEqual([
      '--physical-extent-size',
    ]);
    expect(unknownIn({ run: ['mkfs.xfs', '-m', 'rmap=1', '/dev/vdb'], from })).toEqual(['rmap=1']);
    expect(unknownIn({ run: ['vgmake'], from })).toEqual(['the page of vgmake']);
  });

  it('name the package and the version that they were read in', () => {
    for (const command of checked) {
      const [program] = pageOf(command);
      const { page, source, version } = pages[program] ?? { page: '', source: '', version: '' };
      const upstream = version.replace(/^\d+:/, '').replace(/-[^-]*$/, '');
      expect(command.from).toBe(`${page}, ${source} ${upstream}`);
    }
  });

  it('are nobody’s memory, but for those of OpenZFS, which Debian’s main archive does not carry', () => {
    const unread = shipped.filter(({ from }) => from === 'memory').map(({ run: [program] }) => program);
    expect(new Set(unread)).toEqual(new Set(elsewhere));
  });
});

describe('an argument', () => {
  it('arrives as it is, whatever it holds, in whichever shell', () => {
    const text = fc.string({ unit: 'binary', minLength: 0 }).filter((each) => !each.includes('\0'));
    const hostile = fc.constantFrom(
      "'",
      '"',
      '`id`',
      '$(id)',
      '$HOME',
      'a b',
      '\n',
      '\\',
      '*',
      '~',
      '-n',
      'a=b',
      '#',
      '!',
    );
    fc.assert(
      fc.property(fc.array(fc.oneof(text, hostile), { minLength: 1, maxLength: 6 }), (args) => {
        const { stdout } = spawnSync('sh', ['-c', shellLine(['printf', '%s\\0', ...args])], {
          encoding: 'buffer',
        });
        expect(stdout).toEqual(Buffer.from(args.map((arg) => `${arg}\0`).join('')));
      }),
      { numRuns: 150 },
    );
  });

  it('that stands first is a program, never an assignment', () => {
    expect(shellLine(['PATH=/tmp', 'x'])).toBe("'PATH=/tmp' x");
  });
});
