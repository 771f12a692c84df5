/** A judgement as a page. */
import type { Judgement } from '../../policy/judgement.ts';
import type { LineAt } from '../model/findings.ts';
import { reportModel } from '../model/judgement.ts';
import { drawPage } from './document.ts';

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
  drawPage(reportModel(judgement, lineAt), 'ullage gate --format json');
