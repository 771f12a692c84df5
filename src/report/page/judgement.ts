/** A judgement as a page, with what only a page has room for. */
import type { Judgement } from '../../policy/judgement.ts';
import { type EstateShown, estateSection, keysOf } from '../model/estate.ts';
import type { LineAt } from '../model/findings.ts';
import { reportModel } from '../model/judgement.ts';
import { drawPage } from './document.ts';

/** What is not in the judgement: the lines that findings are about, and the whole estate after the merge. */
export interface Besides {
  readonly lineAt?: LineAt;
  readonly estate?: Omit<EstateShown, 'touched'>;
}

export function judgementPageWith(judgement: Judgement, { lineAt, estate }: Besides): string {
  const model = reportModel(judgement, lineAt);
  const drawn =
    estate === undefined || judgement.verdict === 'not judged'
      ? []
      : estateSection({ ...estate, touched: keysOf(judgement.changes) });
  return drawPage({ ...model, sections: [...model.sections, ...drawn] }, 'ullage gate --format json');
}

/**
 * Writes a judgement as one HTML page that loads nothing.
 *
 * @param lineAt the source line at a place of a finding, to show beside it; none is shown where left out
 *
 * @example
 * ```js
 * import { judgeRepository, reportHtml } from 'ullage';
 *
 * const judgement = await judgeRepository('.', { base: 'main', head: 'smaller-plates', on: '2026-11-20' });
 * console.log(reportHtml(judgement).startsWith('<!DOCTYPE html>')); // true
 * ```
 */
export const judgementPage = (judgement: Judgement, lineAt?: LineAt): string =>
  judgementPageWith(judgement, lineAt === undefined ? {} : { lineAt });
