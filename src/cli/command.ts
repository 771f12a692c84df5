/** What the tables of commands share: where a command prints to, and the options that several have. */
import { type Command, InvalidArgumentError, Option } from 'commander';
import type { Finished } from './edge.ts';

/** What becomes of a command's run. */
export interface Sink {
  readonly finish: (finished: Finished) => void;
  /** Takes what a command prints before its end is known. */
  readonly write: (text: string) => void;
}

/** An option that takes one of a few words. The record makes the compiler see that every one of them is offered. */
export const oneOf = <T extends string>(
  flags: string,
  description: string,
  words: Readonly<Record<T, true>>,
) => new Option(flags, description).choices(Object.keys(words));

export const repo = (): Option => new Option('--repo <dir>', 'the repository').default('.');

export const at = (): Option => new Option('--at <ref>', 'a revision (default: the files as they are)');

/** A whole number of no more digits than make sense. */
export const wholeNumber =
  (digits: number, advice: string) =>
  (text: string): number => {
    if (!/^[0-9]+$/.test(text) || text.length > digits) throw new InvalidArgumentError(advice);
    return Number(text);
  };

/** Adds a command beneath another, whose settings it takes over: where it prints, and that it never exits. */
export type AddCommand = (above: Command, sink: Sink) => Command;

export function withCommands(above: Command, beneath: readonly AddCommand[], sink: Sink): Command {
  for (const add of beneath) add(above, sink);
  return above;
}
