import { placed } from '../change/place.ts';
import type { Selection } from '../change/touched.ts';
import type { Declared, Subject } from '../estate/estate.ts';
import { compilePattern, patternAdvice, patternOf } from './pattern.ts';
import type { EntryFault, EntryOf, Parameter, StateRule } from './rule.ts';
import type { Scoped } from './view.ts';

const kinds = ['server', 'volume', 'volume-group', 'mount'] as const;

type NamedKind = (typeof kinds)[number];

const parameterFor = (what: string): Parameter => ({
  schema: {
    type: 'string',
    minLength: 1,
    description: `The pattern (RE2) that ${what} must match from end to end.`,
  },
  // Which of two patterns lets more through cannot be told from their texts.
  looser: 'unknown',
  absent: 'loosest',
});

export const naming: StateRule<'naming'> = {
  name: 'naming',
  about: 'state',
  level: 'error',
  refuses: "A name of a server, a volume, a volume group or a mount point that breaks the estate's pattern.",
  why: 'At three in the morning a name is all there is to go by. Names that follow one pattern say who owns a volume and what it is for, and they sort together.',
  advice:
    'Choose a name that follows the pattern; where the thing exists already, carry its old name in formerly:.',
  parameters: {
    server: parameterFor("a server's name"),
    volume: parameterFor("a volume's name"),
    'volume-group': parameterFor("a volume group's name"),
    mount: parameterFor('the mount point of a file system'),
  },
  needs: [...kinds],
  looksAt: (entry) =>
    kinds
      .filter((kind) => entry[kind] !== undefined)
      .map((kind) => (kind === 'mount' ? 'file-system' : kind)),
  examples: {
    fails: {
      story: 'A new volume has a name that follows no pattern.',
      branch: `volumes:
  Temp_new: { size: 40 GiB, tier: bulk }
`,
      entry: "{ rule: naming, volume: '[a-z]+(-[a-z]+)*-[0-9]+' }",
    },
    passes: {
      story: 'It is named after what it holds, with a number.',
      branch: `volumes:
  survey-plates-7: { size: 40 GiB, tier: bulk }
`,
      entry: "{ rule: naming, volume: '[a-z]+(-[a-z]+)*-[0-9]+' }",
    },
  },
  verify: (entry) => kinds.flatMap((kind) => patternFaults(kind, entry[kind])),
  check(entry, scope) {
    const patterns = kinds.flatMap((kind) => {
      const source = entry[kind];
      return source === undefined ? [] : [{ kind, source, pattern: patternOf(source) }];
    });
    return function* ({ selection, revision }) {
      for (const { kind, source, pattern } of patterns) {
        for (const { subject, text, declared } of namesOf(kind, selection)) {
          if (pattern.matchesWhole(text) || !scope.includes(declared)) continue;
          yield {
            subject,
            place: placed(declared, revision),
            message: `the ${spoken[kind]} ${text} does not match the pattern ${source}`,
          };
        }
      }
    };
  },
};

const spoken: Readonly<Record<NamedKind, string>> = {
  server: 'server name',
  volume: 'volume name',
  'volume-group': 'volume group name',
  mount: 'mount point',
};

interface Name {
  readonly subject: Subject;
  readonly text: string;
  readonly declared: Declared & Scoped;
}

function* namesOf(kind: NamedKind, selection: Selection): Iterable<Name> {
  switch (kind) {
    case 'server':
      for (const declared of selection.servers)
        yield { subject: { kind, name: declared.name }, text: declared.name, declared };
      return;
    case 'volume':
      for (const declared of selection.volumes) {
        yield { subject: { kind, name: declared.name }, text: declared.name, declared };
      }
      return;
    case 'volume-group':
      for (const declared of selection.groups)
        yield { subject: { kind, name: declared.name }, text: declared.name, declared };
      return;
    case 'mount':
      for (const declared of selection.fileSystems) {
        yield { subject: { kind: 'file-system', name: declared.name }, text: declared.mount, declared };
      }
  }
}

function patternFaults(kind: NamedKind, source: EntryOf<'naming'>[NamedKind]): readonly EntryFault[] {
  const pattern = source === undefined ? undefined : compilePattern(source);
  return pattern !== undefined && 'why' in pattern
    ? [{ path: [kind], message: `${source} is not a valid pattern: ${pattern.why}`, advice: patternAdvice }]
    : [];
}
