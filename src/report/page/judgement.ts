/** A judgement as a page. */
import type { Judgement } from '../../policy/judgement.ts';
import type { LineAt } from '../model/findings.ts';
import { reportModel } from '../model/judgement.ts';
import { drawPage } from './document.ts';

export const judgementPage = (judgement: Judgement, lineAt?: LineAt): string =>
  drawPage(reportModel(judgement, lineAt), 'ullage gate --format json');
