/** `ullage survey script`: prints the shell script that surveys a server. */
import { gatheringScript } from '../survey/generated/script.ts';
import type { Finished } from './edge.ts';

export const runSurveyScript = (): Finished => ({ output: gatheringScript, code: 0 });
