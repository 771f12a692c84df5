import { placed } from '../change/place.ts';
import { selected } from '../change/touched.ts';
import { compilePattern, patternAdvice, patternOf } from './pattern.ts';
import type { EntryFault, EntryOf, Parameter, StateRule } from './rule.ts';

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
        for (const declared of selected(kind === 'mount' ? 'file-system' : kind, selection)) {
          const written = declared.kind === 'file-system' ? declared.mount : declared.name;
          if (pattern.matchesWhole(written) || !scope.includes(declared)) continue;
          yield {
            subject: { kind: declared.kind, name: declared.name },
            place: placed(declared, revision),
            message: `the ${spoken[kind]} ${written} does not match the pattern ${source}`,
            // Another name that breaks the pattern was chosen now, whatever the thing was called before.
            excess: new Set([written]),
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

function patternFaults(kind: NamedKind, source: EntryOf<'naming'>[NamedKind]): readonly EntryFault[] {
  const pattern = source === undefined ? undefined : compilePattern(source);
  return pattern !== undefined && 'why' in pattern
    ? [{ path: [kind], message: `${source} is not a valid pattern: ${pattern.why}`, advice: patternAdvice }]
    : [];
}
