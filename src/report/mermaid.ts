/** Steps and what each waits for, as a flowchart in Mermaid's notation, which many hosts draw. */

import { clipped, visible } from '../base/visible.ts';
import type { Step } from '../runbook/step.ts';
import type { Done } from '../runbook/ticks.ts';

/** A sentence that a box still holds. */
const longest = 120;

/** @param done steps whose boxes are rounded, as words in them say too */
export function mermaid(steps: readonly Step[], done: Done): string {
  const shown = new Set(steps.map(({ number }) => number));
  const boxes = steps.map(({ number, does, destroys }) => {
    const text = escaped(
      `${number}${done.has(number) ? ' (done)' : ''}${destroys ? ' (loses data)' : ''}: ${clipped(does, longest)}`,
    );
    return done.has(number) ? `  s${number}("${text}")` : `  s${number}["${text}"]`;
  });
  const arrows = steps.flatMap(({ number, after }) =>
    after.filter((each) => shown.has(each)).map((each) => `  s${each} --> s${number}`),
  );
  return `${['flowchart TD', ...boxes, ...arrows].join('\n')}\n`;
}

/** Whatever the notation, or the HTML that it becomes, may take for a sign of its own is written as its code point. */
const escaped = (text: string): string =>
  visible(text).replace(/[^A-Za-z0-9 .,:()/_-]/gu, (character) => `#${character.codePointAt(0)};`);
