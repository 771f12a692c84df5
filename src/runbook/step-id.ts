/** What a step is ticked off by: the same as long as the same is to be done, whatever its number. */
import { createHash } from 'node:crypto';
import type { Step } from './step.ts';

/** Ten hexadecimal digits, of SHA-256 over what names the step and what is to be done. */
export const stepId = ({ key, does }: Pick<Step, 'key' | 'does'>): string =>
  createHash('sha256')
    .update(JSON.stringify([key, does]))
    .digest('hex')
    .slice(0, 10);
