/** Days: RFC 3339 full-dates, in UTC. They compare rightly as text. */

import type { Problem } from '../base/problem.ts';

/** Whether the text is a day that the calendar has. */
export function isDay(text: string): boolean {
  if (!/^[0-9]{4}-[0-9]{2}-[0-9]{2}$/.test(text)) return false;
  const time = Date.parse(`${text}T00:00:00Z`);
  return !Number.isNaN(time) && new Date(time).toISOString().slice(0, 10) === text;
}

/** Whether the text, written as an RFC 3339 date-time, is a time of a day that the calendar has. */
export const isTime = (text: string): boolean => isDay(text.slice(0, 10)) && !Number.isNaN(Date.parse(text));

/** What is said to a program that gives another day of a judgement. */
export const notADay = (text: string): Problem => ({
  message: `the day of the judgement, ${JSON.stringify(text) ?? 'nothing'}, is not in the calendar`,
  advice: 'Give a date such as 2026-11-20.',
});

const millisecondsADay = 86_400_000;

/** Whole days from `from` to `to`; negative when `to` is the earlier. */
export const daysBetween = (from: string, to: string): number =>
  Math.round((Date.parse(`${to}T00:00:00Z`) - Date.parse(`${from}T00:00:00Z`)) / millisecondsADay);

/** Whether a day is still to come. One is allowed for, since clocks and time zones differ. */
export const isToCome = (day: string, on: string): boolean => daysBetween(on, day) > 1;

export const addDays = (day: string, count: number): string =>
  new Date(Date.parse(`${day}T00:00:00Z`) + count * millisecondsADay).toISOString().slice(0, 10);

/** The hours of the calendar month that holds the day. */
export function hoursOfMonth(day: string): number {
  const year = Number(day.slice(0, 4));
  const month = Number(day.slice(5, 7));
  return new Date(Date.UTC(year, month, 0)).getUTCDate() * 24;
}

/** Days from one to another, both counted in; an end that is left out is open. */
export interface Span {
  readonly from?: string | undefined;
  readonly until?: string | undefined;
}

/** Whether a day is within the span. */
export const holdsOn = ({ from, until }: Span, day: string): boolean =>
  (from === undefined || from <= day) && (until === undefined || day <= until);

/** Whether there is a day on which both hold. */
export const holdTogether = (a: Span, b: Span): boolean =>
  (a.from === undefined || b.until === undefined || a.from <= b.until) &&
  (b.from === undefined || a.until === undefined || b.from <= a.until);
