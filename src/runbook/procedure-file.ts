/** One file of procedures, as it is written: what it says of each action, and what is wrong with it. */
import { offer } from '../base/nearest.ts';
import { outcomeOf, type PartialOutcome, type Place, type Problem } from '../base/problem.ts';
import type { FileSystemType } from '../estate/made.ts';
import type { ReadDocument, Step } from '../read/document.ts';
import type {
  ProcedureFile,
  CommandDeclaration as WrittenCommand,
  ProcedureDeclaration as WrittenProcedure,
} from '../read/generated/procedure.ts';
import { validate } from '../read/validate.ts';
import { type ActionName, actionOf, isAction } from './actions.ts';
import { isClosed, placeholdersIn } from './template.ts';

/** One command: a program with its arguments, or a text written into a file. */
export type Command = {
  /** The types of file system that it is for; any where left out. */
  readonly types?: readonly FileSystemType[];
  /** Where it was read. */
  readonly from: string;
} & (
  | {
      /** A list within the list is left out where something that it asks for is not known. */
      readonly run: readonly (string | readonly string[])[];
    }
  | { readonly write: string; readonly into: string }
);

/** What is said of one action; what is left out is said elsewhere. */
export interface DeclaredProcedure {
  readonly does?: string;
  readonly why?: string;
  readonly seen?: string;
  readonly back?: string;
  readonly cautions?: readonly string[];
  readonly commands?: readonly Command[];
}

export type DeclaredActions = Readonly<Partial<Record<ActionName, DeclaredProcedure>>>;

/** One file, for one kind of guest or one provider. */
export interface DeclaredProcedures {
  readonly of: 'guest' | 'provider';
  readonly name: string;
  /** Of a guest: whose procedures hold for what is not said. */
  readonly like?: string;
  /** Of a provider: the sites that are its own; all where left out. */
  readonly sites?: readonly string[];
  readonly sitePlaces?: readonly Place[];
  readonly actions: DeclaredActions;
  readonly place: Place;
}

export function readProcedures(text: ReadDocument): PartialOutcome<DeclaredProcedures> {
  const valid = validate('procedure', text);
  if (!valid.ok) return valid;
  const { value, document } = valid.value;
  const faults = new Faults(document);
  const of = value.provider === undefined ? 'guest' : 'provider';
  if ((value.guest === undefined) === (value.provider === undefined))
    faults.add(
      [value.guest === undefined ? 'actions' : 'provider'],
      value.guest === undefined
        ? 'this file does not say whose procedures these are'
        : 'this file is for a guest and for a provider',
      'Name the kind of guest with guest:, or the provider with provider:.',
    );
  if (of === 'guest' && value.sites !== undefined)
    faults.add(['sites'], 'only a provider has sites', 'Remove sites.');
  if (of === 'provider' && value.like !== undefined)
    faults.add(['like'], 'a provider is like no other', 'Remove like.');
  const actions = Object.fromEntries(
    Object.entries(value.actions).map(([name, action]) => [
      name,
      action === undefined || !isAction(name) ? {} : procedureOf(name, action, of, faults, document.file),
    ]),
  );
  const declared: DeclaredProcedures = {
    of,
    name: value.guest ?? value.provider ?? '',
    ...optional(value),
    ...(value.sites === undefined
      ? {}
      : { sitePlaces: value.sites.map((_, index) => document.placeOfValue(['sites', index])) }),
    actions,
    place: document.placeOfValue([value.guest === undefined ? 'provider' : 'guest']),
  };
  return outcomeOf(declared, [...valid.value.problems, ...faults.problems]);
}

const optional = ({ like, sites }: ProcedureFile) => ({
  ...(like === undefined ? {} : { like }),
  ...(sites === undefined ? {} : { sites }),
});

/** Gathers what is wrong, each at its place. */
class Faults {
  readonly problems: Problem[] = [];
  readonly #document: ReadDocument;

  constructor(document: ReadDocument) {
    this.#document = document;
  }

  add(path: readonly Step[], message: string, advice: string): void {
    const place = this.#document.placeOfValue(path);
    this.problems.push({ place, message, advice, excerpt: this.#document.excerpt(place) });
  }

  /** What a text asks for and cannot be had. */
  placeholders(path: readonly Step[], text: string, known: readonly string[], of: string): void {
    for (const name of placeholdersIn(text)) {
      if (known.includes(name)) continue;
      this.add(
        path,
        `nothing fills {${name}} in ${of}`,
        `${offer(name, known)}${known.length === 0 ? 'Nothing can be filled in here' : `There are ${known.map((each) => `{${each}}`).join(', ')}`}; write {{ for a brace itself.`,
      );
    }
    if (!isClosed(text))
      this.add(path, 'a brace is open, or closed, by itself', 'Write {{ or }} for a brace itself.');
  }
}

function procedureOf(
  name: ActionName,
  written: WrittenProcedure,
  of: 'guest' | 'provider',
  faults: Faults,
  file: string,
): DeclaredProcedure {
  const path = ['actions', name];
  const { at, words } = actionOf(name);
  if ((at === 'provider') !== (of === 'provider'))
    faults.add(
      path,
      `${name} is done ${at === 'provider' ? 'at a provider' : 'in a guest, or by making sure'}`,
      `Say it in a file with ${at === 'provider' ? 'provider' : 'guest'}:.`,
    );
  for (const key of ['does', 'why', 'seen', 'back'] as const) {
    const text = written[key];
    if (text !== undefined) faults.placeholders([...path, key], text, words, `the words of ${name}`);
  }
  written.cautions?.forEach((text, index) => {
    faults.placeholders([...path, 'cautions', index], text, words, `the words of ${name}`);
  });
  const { does, why, seen, back, cautions, commands } = written;
  return {
    ...(does === undefined ? {} : { does }),
    ...(why === undefined ? {} : { why }),
    ...(seen === undefined ? {} : { seen }),
    ...(back === undefined ? {} : { back }),
    ...(cautions === undefined ? {} : { cautions }),
    ...(commands === undefined
      ? {}
      : {
          commands: commands.flatMap(
            (each, index) => commandOf(each, name, [...path, 'commands', index], faults, file) ?? [],
          ),
        }),
  };
}

/** What stands for several arguments stands alone. */
const several: readonly string[] = ['devices', 'mounts'];

function commandOf(
  { run, write, into, types, from }: WrittenCommand,
  name: ActionName,
  path: readonly Step[],
  faults: Faults,
  file: string,
): Command | undefined {
  const { fills } = actionOf(name);
  const check = (at: readonly Step[], text: string): void => {
    faults.placeholders([...path, ...at], text, fills, `a command of ${name}`);
    const many = placeholdersIn(text).find((each) => several.includes(each) && text !== `{${each}}`);
    if (many !== undefined)
      faults.add([...path, ...at], `{${many}} may be several arguments`, 'Let it stand alone.');
  };
  if (types !== undefined && !fills.includes('type'))
    faults.add([...path, 'types'], `${name} is about no file system`, 'Remove types.');
  const read = { ...(types === undefined ? {} : { types }), from: from ?? file };
  if (run !== undefined && write === undefined && into === undefined) {
    run.forEach((part, index) => {
      if (typeof part === 'string') check(['run', index], part);
      else for (const [inner, text] of part.entries()) check(['run', index, inner], text);
    });
    const [program] = run;
    if (typeof program !== 'string' || placeholdersIn(program).length > 0)
      faults.add([...path, 'run', 0], 'a command begins with a program', 'Name it, with nothing to fill in.');
    return { ...read, run };
  }
  if (run === undefined && write !== undefined && into !== undefined) {
    check(['write'], write);
    check(['into'], into);
    return { ...read, write, into };
  }
  faults.add(
    path,
    'this is no command',
    'Give it run, a list of arguments; or write and into, a text and a file.',
  );
  return undefined;
}
