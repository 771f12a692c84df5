/** One slip in writing is one problem, told where it was made, with what to write instead. */
import { describe, expect, it } from 'vitest';
import { parse, stringify } from 'yaml';
import type { Problem } from '../../src/base/problem.ts';
import { readEstatePart } from '../../src/estate/part.ts';
import { readRulePack } from '../../src/policy/pack.ts';
import { readDocument } from '../../src/read/document.ts';
import { shapes } from '../../src/read/generated/shapes.ts';
import { type Format, validate } from '../../src/read/validate.ts';
import { problemsOf } from '../estate/builder.ts';

const told = ({ place, message, advice }: Problem): string => `${place?.line}: ${message}. ${advice}`;

const estateSays = (text: string): readonly string[] => {
  const document = readDocument(text, 'storage/imagery.yaml');
  return problemsOf(document.ok ? readEstatePart(document.value) : document).map(told);
};

const packSays = (text: string): readonly string[] => {
  const document = readDocument(text, 'policies/storage.yaml');
  return problemsOf(document.ok ? readRulePack(document.value) : document).map(told);
};

describe('a key that is indented one level too deep, or too little', () => {
  it.each([
    [
      'attachments among the volumes',
      'volumes:\n  plates-1: { size: 40 GiB, tier: bulk }\n  attachments:\n    - { volume: plates-1, server: scanner }\n',
      '3: attachments is indented too deep, and is taken for a name under volumes. attachments belongs at the top of the file; move it to the left.',
    ],
    [
      'file systems beside the group',
      'volume-groups:\n  plates:\n    members: [plates-1]\n  file-systems:\n    /plates: { size: 1 GiB, type: xfs }\n',
      '4: file-systems is not indented deep enough, and is taken for a name under volume-groups. file-systems belongs in an entry of `volume-groups:`; move it to the right.',
    ],
    [
      'a mount point beside its list',
      'volume-groups:\n  plates:\n    members: [plates-1]\n    file-systems:\n    /plates: { size: 1 GiB, type: xfs }\n',
      '5: /plates is not a key of plates of volume-groups, and nothing stands under file-systems. /plates belongs under `file-systems:`; move it to the right.',
    ],
    [
      'the only key of a group, which then has nothing',
      'volume-groups:\n  plates:\n  members: [plates-1]\n',
      '3: members is not indented deep enough, and is taken for a name under volume-groups. members belongs in an entry of `volume-groups:`; move it to the right.',
    ],
    [
      'a volume at the top',
      'volumes:\nplates-1: { size: 40 GiB, tier: bulk }\n',
      '2: plates-1 is not a key of an estate file, and nothing stands under volumes. plates-1 belongs under `volumes:`; move it to the right.',
    ],
    [
      'a tier in the file system, and none on the volume',
      'volumes:\n  plates-1:\n    size: 40 GiB\n    file-system:\n      mount: /plates\n      type: xfs\n      tier: bulk\n',
      '7: tier is not a key of file-system of plates-1. tier belongs in an entry of `volumes:`; move it to the left.',
    ],
    [
      'a team of one volume, or of all',
      'volumes:\n  plates-1: { size: 40 GiB, tier: bulk }\n  team: imagery\n',
      '3: team is taken for a name under volumes. team belongs at the top of the file, or in an entry of `volumes:`; move it to the left or to the right.',
    ],
  ])('%s', (_story, text, problem) => {
    expect(estateSays(text)).toEqual([problem]);
  });

  it('of a volume that is called as a key is, and is written as a volume, is none', () => {
    expect(estateSays('volumes:\n  team: { size: 40 GiB, tier: bulk }\n')).toEqual([]);
    expect(estateSays('volumes:\n  team: { size: 40, tier: bulk }\n')).toEqual([
      '2: size of team is 40, which is not a size. Write 40 GiB or 40 GB.',
    ]);
  });

  const formats: readonly Format[] = ['estate', 'price-list', 'rule-pack', 'settings', 'waivers'];

  it('whatever key of a format it is, is one problem at that key, with its right place', () => {
    const wrong: string[] = [];
    let tried = 0;
    for (const format of formats) {
      for (const { text, key, side } of misindentations(format)) {
        const document = readDocument(text, 'f.yaml');
        if (!document.ok) throw new Error(text);
        const outcome = validate(format, document.value);
        const problems = outcome.ok ? outcome.value.problems : outcome.problems;
        // What may stand there, too, is no slip that can be seen.
        if (problems.length === 0) continue;
        tried++;
        const [only, ...others] = problems;
        const isTold =
          only?.message.startsWith(key) === true &&
          only.advice.includes(`${key} belongs`) &&
          only.advice.includes(`the ${side}`);
        if (!isTold || others.length > 0)
          wrong.push(`${format}, ${side}\n${text}${problems.map(told).join('\n')}\n`);
      }
    }
    expect(wrong).toEqual([]);
    expect(tried).toBeGreaterThan(100);
  });
});

interface Misindentation {
  readonly text: string;
  readonly key: string;
  /** Where it is to go. */
  readonly side: 'left' | 'right';
}

/** Every key of a format's mappings, put under the key before it, or beside the key that it belongs under. */
function misindentations(format: string): readonly Misindentation[] {
  const all = shapes[format] ?? [];
  const shapeAt = (path: readonly string[]) => all.find((each) => each.path.join('/') === path.join('/'));
  const exampleIn = (path: readonly string[], key: string): unknown => {
    const shape = shapeAt(path);
    return shape === undefined || !('mapping' in shape) ? undefined : parse(shape.mapping.keys[key] ?? '');
  };
  const around = (path: readonly string[], value: unknown): unknown => {
    const last = path.at(-1);
    if (last === undefined) return value;
    const above = path.slice(0, -1);
    const shape = shapeAt(above);
    if (shape === undefined || !('mapping' in shape)) {
      const nest: unknown = shape === undefined ? {} : parse(shape.example);
      return around(above, Array.isArray(nest) ? [value] : { [Object.keys(Object(nest))[0] ?? '']: value });
    }
    const required = shape.mapping.required.filter(
      (key) => key !== last && !(key === 'rate' && last === 'bands'),
    );
    return around(above, {
      ...Object.fromEntries(required.map((key) => [key, exampleIn(above, key)])),
      [last]: value,
    });
  };
  const isNest = (value: unknown): value is object =>
    typeof value === 'object' && value !== null && !Array.isArray(value);
  const found: Misindentation[] = [];
  for (const shape of all) {
    // Parameters of a rule stand in an entry of their rule, of which there are several at one path.
    if (!('mapping' in shape) || (format === 'rule-pack' && shape.path.length > 1)) continue;
    const { path, mapping } = shape;
    const wanted = Object.fromEntries(mapping.required.map((key) => [key, exampleIn(path, key)]));
    for (const key of Object.keys(mapping.keys)) {
      const value = exampleIn(path, key);
      if (value === null || value === undefined) continue;
      const { [key]: _moved, ...rest } = wanted;
      for (const before of Object.keys(mapping.keys)) {
        const nest = exampleIn(path, before);
        const below = shapeAt([...path, before]);
        // What it is put under may know it, too.
        const isKnown = below !== undefined && 'mapping' in below && Object.hasOwn(below.mapping.keys, key);
        if (before === key || !isNest(nest) || isKnown) continue;
        const { [before]: _nest, ...others } = rest;
        const text = stringify(around(path, { ...others, [before]: { ...nest, [key]: value } }));
        found.push({ text, key, side: 'left' });
      }
      if (path.at(-1) !== '*' || mapping.namedBy === undefined) continue;
      const name = mapping.namedBy === 'MountPoint' ? '/one' : 'one';
      const nest = { [name]: Object.keys(rest).length === 0 ? null : rest, [key]: value };
      found.push({ text: stringify(around(path.slice(0, -1), nest)), key, side: 'right' });
    }
  }
  return found;
}

describe('within brackets', () => {
  it.each([
    [
      '{ size: 1,000 GB, tier: bulk }',
      'size of plates-1 is written 1,000 GB, and a comma ends a value within brackets. Write 1000 GB, without a comma.',
    ],
    ['{ size:50 GiB, tier: bulk }', 'a space is missing after the colon: size:50 GiB. Write `size: 50 GiB`.'],
    ['{ size: 50 GiB, tier:bulk }', 'a space is missing after the colon: tier:bulk. Write `tier: bulk`.'],
  ])('%s', (volume, problem) => {
    expect(estateSays(`volumes:\n  plates-1: ${volume}\n`)).toEqual([`2: ${problem}`]);
  });

  it('members without brackets of their own', () => {
    expect(estateSays('volume-groups:\n  plates: { members: plates-1, plates-2 }\n')).toEqual([
      '2: members of plates is written plates-1, plates-2, and a list stands in brackets of its own. Write `members: [ plates-1, plates-2 ]`.',
    ]);
  });
});

describe('what was written is what is advised, in the form that is taken', () => {
  const volume = (rest: string): string =>
    `volumes:\n  plates-1:\n    size: 50 GiB\n    tier: bulk\n    ${rest}\n`;
  it.each([
    [volume('retain-until: 31.12.2026'), 'Write 2026-12-31.'],
    [volume('retain-until: 2026/12/31'), 'Write 2026-12-31.'],
    [volume('retain-until: 31.13.2026'), 'A full date as RFC 3339 writes it'],
    [volume('retain-until: 1/2/2026'), 'A full date as RFC 3339 writes it'],
    [volume('shareable: yes'), 'Write true.'],
    [volume('shareable: "off"'), 'Write false.'],
    [volume('shareable: perhaps'), 'several servers'],
    [volume('').replace('50 GiB', '1,000 GB'), 'Write 1000 GB, without anything between the digits.'],
    [
      volume('').replace('50 GiB', "1'000'000 MiB"),
      'Write 1000000 MiB, without anything between the digits.',
    ],
    [volume('').replace('50 GiB', '1,5 TiB'), 'is not a size'],
    [volume('').replace('size: 50', 'size:50'), 'Write `size: 50 GiB`.'],
    [
      'volume-groups:\n  plates:\n    members: plates-1, plates-2\n',
      'Write `members: [ plates-1, plates-2 ]`.',
    ],
    [
      'attachments:\n  - { volume: plates-1, server: [scanner, plotter] }\n',
      'Write one here, and another entry of `attachments:` for each of the others.',
    ],
  ])('%s', (text, advice) => {
    expect(estateSays(text)).toEqual([expect.stringContaining(advice)]);
  });

  it.each([
    ['use: strict\n', 'Write `use: [ strict ]`.'],
    ['rules:\n  - { rule: max-monthly-spend, limit: "3.00", warn-from: 80 }\n', 'for 80 %, write 0.8.'],
    ['rules:\n  - { rule: max-monthly-spend, limit: "3.00", warn-from: 80% }\n', 'for 80 %, write 0.8.'],
    ['rules:\n  - { rule: max-monthly-spend, limit: "3.00", warn-from: 800 }\n', 'is more than 1'],
  ])('%s', (text, advice) => {
    expect(packSays(text)).toEqual([expect.stringContaining(advice)]);
  });
});
