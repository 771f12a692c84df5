/** A span of time as an axis whose labels keep apart, however narrow it is drawn. */
import { scaleUtc } from 'd3-scale';
import type { DaySpan } from '../model/picture.ts';
import { type Html, html } from './html.ts';

export const timeOf = (day: string): number => Date.parse(day);

export const oneDay = 86_400_000;

/** In milliseconds; at least a day, so that a single one has a width. */
export function domainOf({ from, until }: DaySpan): readonly [number, number] {
  const [first, last] = [timeOf(from), timeOf(until)];
  return [first, Math.max(last, first + oneDay)];
}

interface Tick {
  /** In per cent of the width. */
  readonly at: number;
  readonly label: string;
}

/** In the narrowest page, a date takes so much of the width. */
const apart = 26;

export function ticksOf(domain: readonly [number, number]): readonly Tick[] {
  const scale = scaleUtc([...domain], [0, 100]);
  let last = -100;
  return scale.ticks(4).flatMap((time) => {
    const at = scale(time);
    if (at < apart / 2 || at > 100 - apart / 2 || at - last < apart) return [];
    last = at;
    return [{ at, label: time.toISOString().slice(0, 10) }];
  });
}

export const timeAxis = (domain: readonly [number, number]): Html =>
  html`<svg class="axis" width="100%" height="20" aria-hidden="true" focusable="false">${ticksOf(domain).map(
    ({ at, label }) =>
      html`<line x1="${at.toFixed(2)}%" x2="${at.toFixed(2)}%" y1="0" y2="4"/><text x="${at.toFixed(2)}%" y="17">${label}</text>`,
  )}</svg>`;
