/**
 * Fills the marked blocks of the documentation's pages: with what the commands really print on the demo, and with the
 * rules' own pages. `<!-- output: ARGS -->` is followed by the output of `ullage ARGS`, `<!-- output, first part: ARGS -->`
 * by it up to the first empty line, `<!-- rules -->` by every rule.
 */
import { readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { reportRule } from '../../src/report/rules.ts';
import { rules } from '../../src/rules/registry.ts';
import { ullage } from '../cli/run.ts';
import { buildDemo, demoDay } from './gannet-point.ts';

const top = join(import.meta.dirname, '../..');

/** Every page that a user reads, from the top of the repository. */
export const pages = [
  'README.md',
  'src/API.md',
  'src/cli/README.md',
  'schema/README.md',
  'policies/README.md',
  '.github/action/README.md',
  '.github/SECURITY.md',
] as const;

export const pageText = (page: string): string => readFileSync(join(top, page), 'utf8');

const marker =
  /(<!-- (?:output(?<part>, first part)?: (?<args>[^\n]+?)|rules) -->\n)(?:[\s\S]*?<!-- end -->\n|)/g;

async function output(repository: string, args: string, whole: boolean): Promise<string> {
  const [, command = '', more = ''] = /^((?:survey )?\S+) ?(.*)$/.exec(args) ?? [];
  const rest = more.split(' ').filter((word) => word !== '');
  const branch = command === 'gate' ? ['--base', 'main', '--head', ...rest] : [...rest, '--at', 'main'];
  const day = command === 'headroom' ? [] : ['--now', demoDay];
  const { out } = await ullage(...command.split(' '), '--repo', repository, ...branch, ...day);
  const shown = command === 'gate' ? `ullage gate --base main --head ${rest.join(' ')}` : `ullage ${args}`;
  const said = whole ? out : (out.split('\n\n')[0] ?? '');
  return `\`\`\`text\n$ ${shown}\n${said.trimEnd()}\n\`\`\``;
}

const rulePages = (): string =>
  Object.values(rules)
    .map((rule) => reportRule(rule, 'markdown', { width: 100, colour: false }).trim())
    .join('\n\n');

/** Each page as it is, and as it should read now. */
export async function pagesNow(): Promise<
  readonly { readonly page: string; readonly is: string; readonly ought: string }[]
> {
  const repository = buildDemo();
  try {
    const all = [];
    for (const page of pages) {
      const is = pageText(page);
      let ought = '';
      let from = 0;
      for (const match of is.matchAll(marker)) {
        const [whole, line = ''] = match;
        const { args, part } = match.groups ?? {};
        const filled = args === undefined ? rulePages() : await output(repository, args, part === undefined);
        ought += `${is.slice(from, match.index)}${line}\n${filled}\n\n<!-- end -->\n`;
        from = match.index + whole.length;
      }
      all.push({ page, is, ought: ought + is.slice(from) });
    }
    return all;
  } finally {
    rmSync(repository, { recursive: true });
  }
}

/** Writes the pages anew; used by `npm run readme`. */
export async function writePages(): Promise<void> {
  for (const { page, is, ought } of await pagesNow()) {
    if (is !== ought) writeFileSync(join(top, page), ought);
  }
}
