/**
 * Fills the README's marked blocks with what the commands really print on the demo, and with the rules' own pages.
 * `<!-- output: ARGS -->` is followed by the output of `ullage ARGS`, `<!-- rules -->` by every rule. With `--check` it
 * writes nothing and fails where the README differs.
 */
import { readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { reportRule } from '../../src/report/rules.ts';
import { rules } from '../../src/rules/registry.ts';
import { ullage } from '../cli/run.ts';
import { buildDemo, demoDay } from './gannet-point.ts';

const readme = join(import.meta.dirname, '../../README.md');
const marker = /(<!-- (output: ([^\n]+?)|rules) -->\n)(?:[\s\S]*?<!-- end -->\n|)/g;

async function output(repository: string, args: string): Promise<string> {
  const [, command = '', more = ''] = /^((?:survey )?\S+) ?(.*)$/.exec(args) ?? [];
  const rest = more.split(' ').filter((word) => word !== '');
  const branch = command === 'gate' ? ['--base', 'main', '--head', ...rest] : [...rest, '--at', 'main'];
  const day = command === 'headroom' ? [] : ['--now', demoDay];
  const { out } = await ullage(...command.split(' '), '--repo', repository, ...branch, ...day);
  const shown = command === 'gate' ? `ullage gate --base main --head ${rest.join(' ')}` : `ullage ${args}`;
  return `\`\`\`text\n$ ${shown}\n${out.trimEnd()}\n\`\`\``;
}

const rulePages = (): string =>
  Object.values(rules)
    .map((rule) => reportRule(rule, 'markdown', { width: 100, colour: false }).trim())
    .join('\n\n');

/** The README as it should read now. */
export async function readmeText(): Promise<{ readonly is: string; readonly ought: string }> {
  const is = readFileSync(readme, 'utf8');
  const repository = buildDemo();
  try {
    let ought = '';
    let from = 0;
    for (const match of is.matchAll(marker)) {
      const [whole, line = '', , args] = match;
      const filled = args === undefined ? rulePages() : await output(repository, args);
      ought += `${is.slice(from, match.index)}${line}\n${filled}\n\n<!-- end -->\n`;
      from = match.index + whole.length;
    }
    return { is, ought: ought + is.slice(from) };
  } finally {
    rmSync(repository, { recursive: true });
  }
}

/** Writes the README anew; used by `npm run readme`. */
export const writeReadme = async (): Promise<void> => writeFileSync(readme, (await readmeText()).ought);
