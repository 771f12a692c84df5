/** What stands in a command's way is told in the format that was asked for, whichever the command. */
import { Command } from 'commander';
import { afterAll, describe, expect, it } from 'vitest';
import { addCommands } from '../../src/cli/commands.ts';
import { gannetPoint } from '../estate/builder.ts';
import { makeRepository, removeRepositories } from '../repository.ts';
import { ullage } from './run.ts';

afterAll(removeRepositories);

/** Every command that reads a repository and takes a format, with each. */
const asked = (() => {
  const found: { readonly command: string; readonly format: string }[] = [];
  const walk = (command: Command, path: readonly string[]): void => {
    const formats = command.options.find(({ long }) => long === '--format')?.argChoices ?? [];
    if (command.options.some(({ long }) => long === '--repo'))
      found.push(...formats.map((format) => ({ command: path.join(' '), format })));
    for (const each of command.commands) walk(each, [...path, each.name()]);
  };
  walk(addCommands(new Command('ullage'), { finish: () => {}, write: () => {} }), []);
  return found;
})();

/** A main whose estate names a team that is not listed, so that nothing can be told of it. */
const broken = () =>
  makeRepository({
    files: {
      ...gannetPoint,
      'ullage.yaml': `${gannetPoint['ullage.yaml']}\nteams: [imagery]\n`,
      'storage/imagery.yaml': 'volumes:\n  scans: { size: 1 GiB, tier: bulk, team: imagry }\n',
    },
  });

const wrong = 'the volume scans names the team imagry';
const at = 'storage/imagery.yaml:2';

describe('a problem', () => {
  it('is asked of every command that has formats', () => {
    expect([...new Set(asked.map(({ command }) => command))].sort()).toEqual([
      'audit',
      'cost',
      'gate',
      'headroom',
      'policy check',
      'steps',
      'survey compare',
    ]);
  });

  it.each(asked)('of $command comes out as $format, and says what and where', async ({ command, format }) => {
    const { dir } = broken();
    const span = command === 'audit' ? ['nosuch..main'] : [];
    const { code, out, err } = await ullage(
      ...command.split(' '),
      ...span,
      '--repo',
      dir,
      '--format',
      format,
    );
    expect(code).toBe(2);
    const [what, where] = command === 'audit' ? ['there is no commit nosuch', ''] : [wrong, at];
    switch (format) {
      case 'json': {
        const { verdict, problems } = JSON.parse(out);
        expect(verdict).toBe('not judged');
        expect(problems[0].message).toContain(what);
        if (where !== '') expect(`${problems[0].place.file}:${problems[0].place.line}`).toBe(where);
        return;
      }
      case 'sarif': {
        const [notification] = JSON.parse(out).runs[0].invocations[0].toolExecutionNotifications;
        expect(notification.message.text).toContain(what);
        expect(JSON.stringify(notification.locations)).toContain('storage/imagery.yaml');
        return;
      }
      case 'csv':
      case 'ndjson':
        expect(out).toBe('');
        expect(err).toContain(what);
        expect(err).toContain(where);
        return;
      case 'junit':
        expect(out).toMatch(/^<\?xml /);
        break;
      case 'html':
        expect(out).toMatch(/^<!DOCTYPE html>/);
        break;
      case 'markdown':
        expect(out).toMatch(/^## not judged: /);
        break;
      case 'text':
      case 'mermaid':
        expect(out).not.toMatch(/^[{<#]/);
    }
    expect(out.replaceAll(/\s+/g, ' ')).toContain(what);
    expect(out).toContain(where);
  });
});
