import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { estateFile } from '../../bench/estate.ts';
import { whatHolds } from '../../src/base/problem.ts';
import { readAgain } from '../../src/estate/again.ts';
import type { EstatePart } from '../../src/estate/estate.ts';
import { readEstatePart } from '../../src/estate/part.ts';
import { FieldPlaces, readDocument } from '../../src/read/document.ts';
import { pick, random, slipped } from '../fuzz/slips.ts';
import { fixtures, suiteTexts } from '../read/texts.ts';

const file = 'storage/a.yaml';

function whole(text: string): EstatePart | undefined {
  const document = readDocument(text, file);
  const part = document.ok ? readEstatePart(document.value) : document;
  return part.ok ? whatHolds(part) : undefined;
}

const fieldNames = ['team', 'site', 'size', 'tier', 'boot', 'members', 'mount', 'existing', 'formerly', 'id'];

/** A part as plain values, with the place of each of its fields. */
const plain = (value: unknown): unknown =>
  JSON.parse(
    JSON.stringify(value, (key, each: unknown) => {
      if (key === 'fields' && each instanceof FieldPlaces)
        return fieldNames.map((name) => each.of(name) ?? null);
      return typeof each === 'bigint' ? `${each}` : each;
    }),
  );

type Kind = 'read whole' | 'read again';

/** Reads a text after another, and holds what comes back against reading it whole. */
function compared(before: string, after: string): Kind {
  const part = whole(before);
  const again = part === undefined ? undefined : readAgain({ text: before, part }, after);
  if (again === undefined) return 'read whole';
  const fresh = whole(after);
  expect(fresh, `read again, and refused whole:\n${after}`).toBeDefined();
  expect(plain(again)).toEqual(plain(fresh));
  return 'read again';
}

/** An estate file in the hand of somebody who writes comments, lists and mappings over several lines. */
const written = `# an estate
team: imagery
site: north-quay
servers:
  # the first
  s1: { power: running, boot: s1-root }
  s2:
    power: stopped
    boot: s2-root # as it was
  s3: {}
  s4: {}

volumes:
  s1-root: { size: 20 GiB, tier: steady }
  s2-root:
    size: 20 GiB
    tier: steady

  # the plates
  plates-1: { size: 40 GiB, tier: bulk }
  plates-2:
    size: 40 GiB
    tier: bulk
    labels: { purpose: plates }
    file-system: { mount: /plates, type: ext4 }
  "7": { size: 1 GiB, tier: bulk }
  'eight': { size: 1 GiB, tier: bulk }
  nine: { size: 9 GiB, tier: bulk }
  ten: { size: 10 GiB, tier: bulk }
attachments:
- { volume: plates-1, server: s1 }
- volume: plates-2
  server: s2
- { volume: eight, server: s3 }
- { volume: nine, server: s3 }
volume-groups:
  g1: { members: [plates-1] }
  g2:
    members:
      - nine
    file-systems:
      /srv/nine: { size: 5 GiB, type: xfs }
  g3: { members: [ten] }
retired:
  - { volume: plates-0, on: 2026-11-20, reason: superseded, backup: vault/plates-0 }
  - { volume: plates-0, on: 2026-10-20, reason: superseded, backup: vault/plates-0 }
  - { volume: plates-00, on: 2026-10-20, reason: superseded, backup: vault/plates-0 }
`;

const own: readonly string[] = [
  written,
  written.replace('"7"', '"seven"'),
  written.replace('"7"', '"seven"').replaceAll('\n- ', '\n  - ').replaceAll('\n  server', '\n    server'),
  estateFile(0, 40),
  estateFile(1, 25),
];

const estates: readonly string[] = [...own, ...fixtures.filter((text) => whole(text) !== undefined)];

describe('a file read again by what differs says what reading it whole says', () => {
  it('where lines of it are altered, taken out, doubled, moved, or come from elsewhere', () => {
    const anywhere = estates.flatMap((text) => text.split('\n'));
    const odd = [
      '---',
      '...',
      'volumes:',
      '  plates-1: { size: 1 GiB, tier: bulk }',
      'team: ledger',
      '  "',
      '"',
    ];
    const edit = fc.record({
      at: fc.nat(),
      gone: fc.nat({ max: 3 }),
      come: fc.array(fc.oneof(fc.constantFrom(...anywhere), fc.constantFrom(...odd)), { maxLength: 2 }),
      indent: fc.constantFrom('', '', '', ' ', '  '),
      /** Put in the place of every number of the line instead. */
      number: fc.option(fc.integer({ min: 1, max: 60 }), { freq: 1 }),
    });
    const kinds: Kind[] = [];
    fc.assert(
      fc.property(
        fc.oneof(fc.constantFrom(...own), fc.constantFrom(...estates)),
        fc.array(edit, { minLength: 1, maxLength: 2 }),
        fc.boolean(),
        (before, edits, sameCount) => {
          const lines = before.split('\n');
          for (const { at, gone, come, indent, number } of edits) {
            const line = at % lines.length;
            if (number !== null) lines[line] = lines[line]?.replaceAll(/\d+/g, `${number}`) ?? '';
            else lines.splice(line, sameCount ? come.length : gone, ...come.map((each) => indent + each));
          }
          kinds.push(compared(before, lines.join('\n')));
        },
      ),
      { numRuns: 2000 },
    );
    expect(kinds.filter((kind) => kind === 'read again').length).toBeGreaterThan(100);
  });

  it('where a hand slips in it', () => {
    const below = random(20261126);
    const kinds = Array.from({ length: 2000 }, () => {
      const before = pick(own, below);
      return compared(before, slipped(before, [...fixtures, ...suiteTexts], below));
    });
    expect(kinds.filter((kind) => kind === 'read again').length).toBeGreaterThan(50);
  });

  it('and takes what stands where it stood as the very objects that they were', () => {
    const before = estateFile(0, 40);
    const part = whole(before);
    const again = part && readAgain({ text: before, part }, before.replace('40 GiB', '60 GiB'));
    const kept = again?.volumes.filter((volume, index) => volume === part?.volumes[index]);
    expect([again?.volumes.length, kept?.length]).toEqual([40, 39]);
  });
});
