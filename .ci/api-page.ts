/**
 * The library's page, `src/API.md`, made of what is exported and its comments: by API Extractor's own model of it, in
 * one page, since a page for each of hundreds of members is read by nobody.
 */
import {
  ApiClass,
  ApiDocumentedItem,
  ApiFunction,
  ApiInterface,
  type ApiItem,
  ApiItemKind,
  ApiModel,
  ApiTypeAlias,
  ApiVariable,
} from '@microsoft/api-extractor-model';
import {
  DocCodeSpan,
  type DocComment,
  DocErrorText,
  DocEscapedText,
  DocFencedCode,
  DocLinkTag,
  type DocNode,
  DocParagraph,
  DocPlainText,
  DocSoftBreak,
} from '@microsoft/tsdoc';

/** A comment's text as Markdown. */
function written(node: DocNode | undefined): string {
  if (node === undefined) return '';
  if (node instanceof DocPlainText) return node.text;
  if (node instanceof DocCodeSpan) return `\`${node.code}\``;
  if (node instanceof DocEscapedText) return node.decodedText;
  if (node instanceof DocErrorText) return node.text;
  if (node instanceof DocSoftBreak) return ' ';
  if (node instanceof DocLinkTag) return node.linkText ?? node.urlDestination ?? '';
  if (node instanceof DocFencedCode) return `\n\`\`\`${node.language}\n${node.code.trimEnd()}\n\`\`\`\n`;
  const inner = node.getChildNodes().map(written).join('');
  return node instanceof DocParagraph ? `${inner.trim()}\n\n` : inner;
}

const textOf = (node: DocNode | undefined): string =>
  written(node)
    .replaceAll(/\n{3,}/g, '\n\n')
    .trim();

const commentOf = (item: ApiItem): DocComment | undefined =>
  item instanceof ApiDocumentedItem ? item.tsdocComment : undefined;

const summaryOf = (item: ApiItem): string => textOf(commentOf(item)?.summarySection);

/** On one line, as a signature is declared. */
const oneLine = (text: string): string => text.replaceAll(/\s+/g, ' ').trim();

const blocksOf = (comment: DocComment | undefined, tag: string): readonly string[] =>
  (comment?.customBlocks ?? [])
    .filter(({ blockTag }) => blockTag.tagName.toLowerCase() === tag)
    .map(({ content }) => textOf(content));

function functionOf(item: ApiFunction | ApiVariable): string {
  const comment = commentOf(item);
  const returns = textOf(comment?.returnsBlock?.content);
  return [
    `### ${item.displayName}`,
    summaryOf(item),
    `\`\`\`ts\n${item.excerpt.text.replace(/^export declare (?:function|const) /, '').trim()}\n\`\`\``,
    (comment?.params.blocks ?? [])
      .map(({ parameterName, content }) => `- \`${parameterName}\`: ${textOf(content)}`)
      .join('\n'),
    returns === '' ? '' : `It gives ${returns.replace(/\.?$/, '.')}`,
    textOf(comment?.remarksBlock?.content),
    ...blocksOf(comment, '@throws'),
    ...blocksOf(comment, '@example').map((example) => `For example:\n\n${example}`),
  ]
    .filter((part) => part !== '')
    .join('\n\n');
}

const longest = 150;

/** What a type is made of: its members' names, or what it stands for where that is short. */
function madeOf(item: ApiItem): string {
  if (item instanceof ApiInterface || item instanceof ApiClass) {
    const extended = item instanceof ApiInterface ? item.extendsTypes.map(({ excerpt }) => excerpt.text) : [];
    return [...extended, ...item.members.map(({ displayName }) => displayName)]
      .map((name) => `\`${oneLine(name)}\``)
      .join(', ');
  }
  const stands = item instanceof ApiTypeAlias ? oneLine(item.typeExcerpt.text) : '';
  return stands.length > longest ? '' : `\`${stands.replaceAll('|', '\\|')}\``;
}

const rowOf = (item: ApiItem): string =>
  `| \`${item.displayName}\` | ${oneLine(summaryOf(item)).replaceAll('|', '\\|')} | ${madeOf(item)} |`;

/** @param model where API Extractor wrote what it found */
export function apiPage(model: string): string {
  const library = new ApiModel().loadPackage(model);
  const items = library.entryPoints.flatMap(({ members }) => members);
  const functions = items.filter((item) => item instanceof ApiFunction || item instanceof ApiVariable);
  const types = items.filter(({ kind }) =>
    [ApiItemKind.Interface, ApiItemKind.TypeAlias, ApiItemKind.Class].includes(kind),
  );
  const left = items.length - functions.length - types.length;
  if (left > 0)
    throw new Error(`${left} exports are neither functions nor types, and have no place in src/API.md`);
  return `${[
    '<!-- Written by `npm run api` from what src/index.ts exports; do not edit. -->',
    '# The library',
    textOf(library.tsdocComment?.summarySection),
    textOf(library.tsdocComment?.remarksBlock?.content),
    `Functions: ${functions.map(({ displayName }) => `[${displayName}](#${displayName.toLowerCase()})`).join(', ')}. [The types](#types) come after them.`,
    '## Functions',
    ...functions.map(functionOf),
    '## Types',
    'Each by its name; the declarations in `dist/index.d.ts` say of every member what it holds.',
    `| type | what it is | made of |\n| --- | --- | --- |\n${types.map(rowOf).join('\n')}`,
  ]
    .filter((part) => part !== '')
    .join('\n\n')}\n`;
}
