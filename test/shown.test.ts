/** What the pages show to be typed: each command line is one that the command takes, each file one that reads. */
import { Command, CommanderError } from 'commander';
import MarkdownIt from 'markdown-it';
import { describe, expect, it } from 'vitest';
import { addCommands } from '../src/cli/commands.ts';
import { readDocument } from '../src/read/document.ts';
import { isRecord } from '../src/read/schema-error.ts';
import { type Format, validate } from '../src/read/validate.ts';
import { pages, pageText } from './demo/pages.ts';

const markdown = new MarkdownIt();

interface Shown {
  readonly page: string;
  readonly text: string;
}

const tokensOf = (page: string) =>
  markdown.parse(pageText(page), {}).flatMap((token) => [token, ...(token.children ?? [])]);

const everyPage = [...pages, 'DEVELOPERS.md'];

const fences = (language: RegExp): readonly Shown[] =>
  everyPage.flatMap((page) =>
    tokensOf(page)
      .filter(({ type, info }) => type === 'fence' && language.test(info.trim()))
      .map(({ content }) => ({ page, text: content })),
  );

const inCode: readonly Shown[] = everyPage.flatMap((page) =>
  tokensOf(page)
    .filter(({ type }) => type === 'code_inline')
    .map(({ content }) => ({ page, text: content })),
);

/** The words of each command line of ours in some shell, without comments and without what is done with its output. */
const linesOfOurs = (text: string): readonly (readonly string[])[] =>
  text
    .replaceAll(/\\\n\s*/g, ' ')
    .split('\n')
    .flatMap((line) => line.replace(/(?:^|\s)#.*$/, '').split(/&&|\|\|?|;|\$\(|\)/))
    .map((part) =>
      part
        .trim()
        .replace(/^\$ /, '')
        .replace(/^(?:exec|then|run:|- run:|npx(?: --\S+)*) /, ''),
    )
    .filter((part) => /^ullage(?: |$)/.test(part))
    .map((part) => {
      const words = part.replace(/ \d?>>? ?\S+/g, '').match(/'[^']*'|"[^"]*"|\S+/g) ?? [];
      return words.slice(1).map((word) => word.replace(/^(['"])(.*)\1$/, '$2'));
    });

/** What the command says against a line, were it run; it is not. */
async function objection(words: readonly string[]): Promise<CommanderError | undefined> {
  const program = new Command('ullage').version('0').exitOverride();
  program.configureOutput({ writeOut: () => {}, writeErr: () => {} });
  addCommands(program, { finish: () => {}, write: () => {} });
  const still = (command: Command): void => {
    if (command.commands.length === 0) command.action(() => {});
    for (const each of command.commands) still(each);
  };
  still(program);
  try {
    await program.parseAsync([...words], { from: 'user' });
  } catch (error) {
    if (error instanceof CommanderError) return error.exitCode === 0 ? undefined : error;
    throw error;
  }
  return undefined;
}

describe('a command line that a page shows', () => {
  const whole = fences(/^(?:sh|text|console|bash|yaml)$/).flatMap(({ page, text }) =>
    linesOfOurs(text).map((words) => ({ page, line: words.join(' '), words })),
  );
  const mentioned = inCode.flatMap(({ page, text }) =>
    linesOfOurs(text).map((words) => ({ page, line: words.join(' '), words })),
  );

  it('is found: no page of commands goes unread', () => {
    expect(whole.length).toBeGreaterThan(30);
    expect(mentioned.length).toBeGreaterThan(30);
  });

  it.each(whole)('is taken as it stands: ullage $line ($page)', async ({ words }) => {
    expect((await objection(words))?.message).toBeUndefined();
  });

  it.each(mentioned)('is taken where it is mentioned: ullage $line ($page)', async ({ words }) => {
    const against = await objection(words);
    // A mention may leave out what the command is to be done with, and name a command that has others beneath it.
    const isShort = ['commander.missingArgument', 'commander.missingMandatoryOptionValue', 'commander.help'];
    expect(isShort.includes(against?.code ?? '') ? undefined : against?.message).toBeUndefined();
  });
});

describe('a file that a page shows', () => {
  /** Which format a document is of: each has keys that no other has. */
  function formatOf(value: Readonly<Record<string, unknown>>): Format | 'workflow' {
    const keys = Object.keys(value);
    const has = (...some: readonly string[]): boolean => some.some((key) => keys.includes(key));
    if (has('jobs', 'steps', 'uses', 'repos')) return 'workflow';
    if (has('waivers')) return 'waivers';
    if (has('rules', 'use')) return 'rule-pack';
    if (has('tiers', 'server-types')) return 'price-list';
    if (has('guest', 'actions', 'provider')) return 'procedure';
    return has('currency', 'packs', 'provider-list', 'sites', 'month') ? 'settings' : 'estate';
  }

  // A rule's example shows an entry with the files it is about; test/rules/ judges each as it is shown.
  const files = fences(/^ya?ml$/).filter(({ text }) => !text.startsWith('# the entry in a pack'));

  it.each(files)('reads, and is valid by its schema: $page $text', ({ page, text }) => {
    const document = readDocument(text, page);
    if (!document.ok) throw new Error(document.problems.map(({ message }) => message).join('; '));
    const { value } = document.value;
    if (!isRecord(value)) return expect(text).toMatch(/^# yaml-language-server: /);
    const format = formatOf(value);
    if (format === 'workflow') return;
    // A part of the settings is shown without the currency that the whole has.
    const shown =
      format === 'settings' && !('currency' in value)
        ? readDocument(`currency: EUR\n${text}`, page)
        : document;
    if (!shown.ok) throw new Error('the settings do not read with a currency');
    const valid = validate(format, shown.value);
    const problems = valid.ok ? valid.value.problems : valid.problems;
    expect(problems.map(({ place, message }) => `${place?.line}: ${message}`)).toEqual([]);
  });
});
