import { changeKinds, isOfKinds } from '../change/kinds.ts';
import { placed } from '../change/place.ts';
import { selected } from '../change/touched.ts';
import type { Declaration } from '../estate/estate.ts';
import { changeFacet } from './change-facet.ts';
import { changeFacts, declarationFacts } from './facts.ts';
import { type EntryOf, everyDeclaredKind, type StateRule, type Violation } from './rule.ts';
import { type Miss, missesOf, schemaFaults } from './user-schema.ts';
import type { View } from './view.ts';

/** So many places are named in one message; the rest is counted. */
const named = 3;

export const shape: StateRule<'shape'> = {
  name: 'shape',
  about: 'state',
  level: 'error',
  refuses:
    'Whatever does not match a JSON Schema of your own: a rule without code, for one kind of thing or for changes.',
  why: 'Every estate has rules of its own: a label that finance requires, a type of file system that the backup cannot read.',
  advice: 'Correct the value at the path in the message; the schema is in the rule pack.',
  parameters: {
    of: {
      schema: {
        type: 'string',
        enum: ['server', 'volume', 'volume-group', 'file-system', 'change'],
        description: 'What is checked against the schema, each by itself.',
      },
      looser: 'unknown',
      absent: 'loosest',
    },
    kinds: {
      schema: {
        type: 'array',
        minItems: 1,
        items: { type: 'string', enum: changeKinds },
        description:
          'Only changes of these kinds; all kinds if left out. What is only declared as existing counts as created, attached or joined, too. Only with of: change.',
      },
      looser: 'shorter',
      absent: 'tightest',
    },
    schema: {
      schema: {
        type: 'object',
        description:
          'A JSON Schema (2020-12) that each must satisfy. It sees the keys of the estate files, sizes as numbers under size-gib, and servers, volumes or volume-group for what it is attached to or part of; for a change: change, subject, before and after. Patterns are RE2; $ref stays within the schema.',
      },
      looser: 'unknown',
      absent: 'loosest',
    },
    message: {
      schema: {
        $ref: 'common.json#/$defs/sentence',
        description: 'The beginning of the message about what does not match.',
      },
      looser: 'neither',
      absent: 'default',
    },
  },
  needs: ['schema'],
  requires: ['of'],
  looksAt: ({ of }) => (of === 'change' ? everyDeclaredKind : [of]),
  examples: {
    fails: {
      story: 'A volume is created without a cost centre.',
      branch: `volumes:
  plates-1: { size: 40 GiB, tier: bulk }
`,
      entry: `rule: shape
of: volume
message: Finance requires a cost centre
schema:
  properties:
    labels:
      required: [cost-centre]
      properties:
        cost-centre: { pattern: '^CC-[0-9]{4}$' }
`,
    },
    passes: {
      story: 'It has the label that finance requires.',
      branch: `volumes:
  plates-1: { size: 40 GiB, tier: bulk, labels: { cost-centre: CC-0417 } }
`,
      entry: `rule: shape
of: volume
message: Finance requires a cost centre
schema:
  properties:
    labels:
      required: [cost-centre]
      properties:
        cost-centre: { pattern: '^CC-[0-9]{4}$' }
`,
    },
  },
  verify(entry) {
    const misplaced =
      entry.kinds !== undefined && entry.of !== 'change'
        ? [
            {
              path: ['kinds'],
              message: `kinds selects among changes, and this shape is of ${entry.of}`,
              advice: 'Write of: change, or remove kinds.',
            },
          ]
        : [];
    return [
      ...misplaced,
      ...schemaFaults(entry.schema).map(({ path, ...said }) => ({ path: ['schema', ...path], ...said })),
    ];
  },
  check(entry, scope) {
    const { of } = entry;
    if (of === 'change') return () => [];
    const missed = missesOf(entry.schema);
    return function* (view) {
      for (const thing of selected(of, view.selection)) {
        if (!scope.includes(thing)) continue;
        const misses = missed(declarationFacts(thing, view.estate));
        if (misses.length > 0) yield violationOf(entry, thing, misses, view);
      }
    };
  },
  checkChanges(entry) {
    if (entry.of !== 'change') return () => [];
    const kinds: readonly string[] = entry.kinds ?? changeKinds;
    const missed = missesOf(entry.schema);
    return function* ({ changes, base, head }) {
      for (const change of changes) {
        if (!isOfKinds(change, kinds)) continue;
        const misses = missed(changeFacts(change, base.estate, head.estate));
        if (misses.length === 0) continue;
        const who = `the change ${change.kind} of ${change.subject.kind} ${change.subject.name}`;
        yield {
          subject: change.subject,
          facet: changeFacet(change),
          place: change.place,
          message: messageFor(entry, who, misses),
        };
      }
    };
  },
};

function violationOf(
  entry: EntryOf<'shape'>,
  thing: Declaration,
  misses: readonly Miss[],
  { revision }: View,
): Violation {
  const field = misses[0]?.path.split('/')[1]?.replace('-gib', '');
  return {
    subject: { kind: thing.kind, name: thing.name },
    place: placed(thing, revision, field),
    message: messageFor(entry, `${thing.kind.replace('-', ' ')} ${thing.name}`, misses),
    // Another place that does not fit makes it worse, and so does one that is further beyond its bound; the same place
    // with another wrong value does not.
    excess: new Map(misses.map(({ path, message, beyond }) => [`${path} ${message}`, beyond])),
  };
}

function messageFor({ message }: EntryOf<'shape'>, who: string, misses: readonly Miss[]): string {
  const said = misses.slice(0, named).map(({ path, message: why }) => `${path === '' ? 'it' : path} ${why}`);
  const more = misses.length - named;
  return `${message === undefined ? '' : `${message.replace(/[.:\s]+$/, '')}: `}${who} does not match the shape: ${said.join('; ')}${more > 0 ? `; and ${more} more` : ''}`;
}
