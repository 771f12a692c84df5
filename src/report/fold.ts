/** A report on a screen: the first problems and findings, and how many more there are; and the steps in brief. */
import { counted } from '../base/wording.ts';
import { sentence } from './model/blocks.ts';
import type { Block, ReportModel, Section } from './model/model.ts';

/** Ours: problems that fit one screen of some fifty lines, at five or six lines each. */
export const mostProblems = 8;

/** Ours: more findings than anybody works through in one sitting. */
export const mostFindings = 50;

/** The report with the first problems and findings alone; those that fail come first, and so stay longest. */
export function folded(model: ReportModel): ReportModel {
  const room = { problem: mostProblems, finding: mostFindings };
  const sections: Section[] = [];
  const hidden = { count: 0, files: 0 };
  for (const section of model.sections) {
    const { lists, brief } = section;
    if (lists === undefined) {
      sections.push(brief === undefined ? section : { ...section, blocks: brief });
      continue;
    }
    const { blocks, left } = cut(section.blocks, room[lists]);
    const shown = countIn(section.blocks) - left;
    room[lists] -= shown;
    if (lists === 'finding') {
      sections.push(
        left === 0 ? section : { ...section, blocks: [...blocks, sentence(leftOut(left, 'finding'))] },
      );
      continue;
    }
    hidden.count += left;
    if (left > 0) hidden.files += 1;
    if (shown > 0) sections.push({ ...section, blocks });
  }
  if (hidden.count === 0) return { ...model, sections };
  const where = hidden.files > 1 ? ` in ${hidden.files} files` : '';
  return {
    ...model,
    sections: [
      ...sections,
      { title: 'And more', blocks: [sentence(leftOut(hidden.count, 'problem', where))] },
    ],
  };
}

const leftOut = (count: number, what: 'problem' | 'finding', where = ''): string =>
  `${counted(count, `more ${what} is`, `more ${what}s are`)} not shown${where}: \`--all\` shows all, and JSON always holds all.`;

const countIn = (blocks: readonly Block[]): number =>
  blocks.reduce((sum, block) => sum + (block.kind === 'entries' ? block.entries.length : 0), 0);

/** The blocks with no more than so many entries, and how many are left out. */
function cut(
  blocks: readonly Block[],
  most: number,
): { readonly blocks: readonly Block[]; readonly left: number } {
  let room = most;
  const kept = blocks.map((block): Block => {
    if (block.kind !== 'entries') return block;
    const entries = block.entries.slice(0, Math.max(0, room));
    room -= entries.length;
    return { ...block, entries };
  });
  return { blocks: kept, left: countIn(blocks) - countIn(kept) };
}
