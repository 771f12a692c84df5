/** Commands with what is known filled in, as a shell takes them; what nobody knows stands in capitals. */
import type { Command } from './procedure-file.ts';
import { shellLine } from './shell.ts';
import type { Example } from './step.ts';
import { filledBy, placeholdersIn } from './template.ts';

/** By placeholder; a list is several arguments. */
export type Fills = Readonly<Record<string, string | readonly string[] | undefined>>;

/** @param type of the file system that the step is about */
export function examplesOf(
  commands: readonly Command[],
  fills: Fills,
  type: string | undefined,
): readonly Example[] {
  return commands.flatMap((command) =>
    (command.types !== undefined && !command.types.some((each) => each === type)) || isForNone(command, fills)
      ? []
      : { command: lineOf(command, fills), source: command.from },
  );
}

function lineOf(command: Command, fills: Fills): string {
  if ('write' in command) {
    const written = text(command.write, fills);
    // What is more than a word, echo may take for an option or an escape.
    const says = /^[A-Za-z0-9]+$/.test(written) ? ['echo', written] : ['printf', '%s\\n', written];
    return `${shellLine(says)} > ${shellLine([text(command.into, fills)])}`;
  }
  return shellLine(argumentsOf(command.run, fills));
}

/** Whether it is known that there is nothing to do it to. */
const isForNone = (command: Command, fills: Fills): boolean =>
  'run' in command &&
  command.run.some((part) => typeof part === 'string' && several(part, fills)?.length === 0);

/** What a program is given. */
export const argumentsOf = (run: readonly (string | readonly string[])[], fills: Fills): readonly string[] =>
  run.flatMap((part) => {
    if (typeof part === 'string') return several(part, fills) ?? [text(part, fills)];
    const known = part.every((each) =>
      placeholdersIn(each).every((name) => fillOf(fills, name) !== undefined),
    );
    return known ? part.map((each) => text(each, fills)) : [];
  });

/** What stands for several arguments. */
function several(part: string, fills: Fills): readonly string[] | undefined {
  const [name] = placeholdersIn(part);
  const value = name === undefined || part !== `{${name}}` ? undefined : fillOf(fills, name);
  return value === undefined || typeof value === 'string' ? undefined : value;
}

const fillOf = (fills: Fills, name: string): string | readonly string[] | undefined =>
  Object.hasOwn(fills, name) ? fills[name] : undefined;

const text = (template: string, fills: Fills): string =>
  filledBy(template, (name) => {
    const value = fillOf(fills, name);
    return value === undefined ? inCapitals(name) : typeof value === 'string' ? value : value.join(' ');
  });

const called: Readonly<Record<string, string>> = { mount: 'MOUNT_POINT' };

const inCapitals = (name: string): string => called[name] ?? name.toUpperCase().replaceAll('-', '_');
