/** A key in the wrong place is told where it belongs; a word in the place of a mapping is shown one. */
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { readEstatePart } from '../../src/estate/part.ts';
import { readSettings } from '../../src/estate/settings.ts';
import { readRulePack } from '../../src/policy/pack.ts';
import { whereItBelongs } from '../../src/read/belongs.ts';
import { shapes } from '../../src/read/generated/shapes.ts';
import { documentOf, problemsOf } from '../estate/builder.ts';
import { type SampleFormat, samples } from '../fuzz/samples.ts';
import { allowedBySchema } from '../fuzz/schemas.ts';

const adviceOn = (text: string): readonly string[] =>
  problemsOf(readEstatePart(documentOf(text))).map(({ advice }) => advice);

const volume = (rest: string): string => `volumes:\n  plates-1: { size: 40 GiB, tier: bulk, ${rest} }\n`;

describe('a key that belongs elsewhere', () => {
  it.each([
    [volume('server: plate-scanner'), 'server belongs in an entry of `attachments:`, as in `- {'],
    [volume('mount: /plates'), 'mount belongs under `file-system:`, as in `file-system: { mount: /plates'],
    [volume('type: xfs'), 'type belongs under `file-system:`, as in `file-system: {'],
    [volume('power: running'), 'power belongs in an entry of `servers:`'],
    [volume('name: plates'), 'The name is the key before the colon, here plates-1.'],
    ['volume-groups:\n  g: { members: [a], mount: /a }\n', 'is its own key under `file-systems:`'],
    ['volume-groups:\n  g: { members: [a], type: xfs }\n', 'type belongs in an entry of `file-systems:`'],
    ['currency: EUR\n', '; or of `ullage.yaml`, at the top of the file.'],
    ['plates-1: { size: 1 GiB, tier: bulk }\n', 'It looks like an entry of `volumes:`'],
  ])('%s', (text, advice) => {
    expect(adviceOn(text).join('\n')).toContain(advice);
  });

  it('a parameter of another rule names the rule, and one of a scope the scope', () => {
    const [share, teams] = problemsOf(
      readRulePack(documentOf('rules:\n  - { rule: no-shrink, share: 0.1, teams: [imagery] }\n')),
    );
    expect(share?.advice).toBe('share is a parameter of minimum-headroom.');
    expect(teams?.advice).toBe('teams belongs under `where:`, as in `where: { teams: [ imagery ] }`.');
  });

  it('whatever mapping of a format knows a key, every other mapping of the format says where it belongs', () => {
    const silent: string[] = [];
    let tried = 0;
    for (const [format, all] of Object.entries(shapes)) {
      const mappings = all.flatMap((shape) => ('mapping' in shape ? [shape] : []));
      const keys = new Set(mappings.flatMap(({ mapping }) => Object.keys(mapping.keys)));
      for (const { path, mapping } of mappings) {
        for (const key of keys) {
          if (Object.hasOwn(mapping.keys, key)) continue;
          tried++;
          const told = whereItBelongs({ format, path, key, value: null });
          if (told?.here !== true) silent.push(`${format} ${path.join('/')} ${key}`);
        }
      }
    }
    expect(silent).toEqual([]);
    expect(tried).toBeGreaterThan(500);
  });
});

describe('what is shown as an example', () => {
  it.each([
    ['volumes:\n  plates-1: 40 GiB\n', 'Write it as in `plates-1: { size: 50 GiB, tier: bulk }`.'],
    [
      'attachments: plates-1\n',
      'Write it as in `attachments: [ { volume: plates-1, server: plate-scanner } ]`.',
    ],
    ['attachments: [plates-1]\n', 'Write it as in `- { volume: plates-1, server: plate-scanner }`.'],
  ])('%s', (text, advice) => {
    expect(adviceOn(text)).toEqual([advice]);
  });

  it('is what the schema takes: the example of every mapping and list, where it is to be written', () => {
    const refused: string[] = [];
    let tried = 0;
    const put = (path: readonly string[], value: unknown, all: (typeof shapes)[string]): unknown => {
      const last = path.at(-1);
      if (last === undefined) return value;
      const above = path.slice(0, -1);
      const shape = all?.find((each) => each.path.join('/') === above.join('/'));
      const around: Record<string, unknown> = {};
      if (shape !== undefined && 'example' in shape) {
        const nest: unknown = parse(shape.example);
        return put(
          above,
          Array.isArray(nest) ? [value] : { [Object.keys(Object(nest))[0] ?? '']: value },
          all,
        );
      }
      if (shape !== undefined) {
        // Bands stand in the place of a rate.
        for (const key of shape.mapping.required.filter((each) => each !== 'rate' || last !== 'bands'))
          around[key] = parse(shape.mapping.keys[key] ?? '');
      }
      return put(above, { ...around, [last]: value }, all);
    };
    const isFormat = (name: string): name is SampleFormat => samples.some(({ format }) => format === name);
    for (const [format, all] of Object.entries(shapes)) {
      if (!isFormat(format)) throw new Error(`nothing reads ${format}`);
      for (const shape of all) {
        if (!('example' in shape)) continue;
        // A parameter stands in an entry of its rule, of which there are several at one path.
        if (format === 'rule-pack' && shape.path.length > 2) continue;
        tried++;
        const whole = put(shape.path, parse(shape.example), all);
        if (!allowedBySchema(format, whole))
          refused.push(`${format} ${shape.path.join('/')}: ${shape.example}`);
      }
    }
    expect(refused).toEqual([]);
    expect(tried).toBeGreaterThan(10);
  });
});

it('a site or a team that is not listed is told with the line that lists them', () => {
  const settings = readSettings(
    documentOf('currency: EUR\n\nteams: [imagery]\nsites: { north: {} }\n', 'ullage.yaml'),
  );
  expect(settings.ok && settings.value.listed).toMatchObject({ teams: { line: 3 }, sites: { line: 4 } });
});
