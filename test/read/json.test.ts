import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readDocument } from '../../src/read/document.ts';
import { jsonText, readJson } from '../../src/read/json.ts';
import { validate } from '../../src/read/validate.ts';

const survey = {
  format: 'ullage-survey-1',
  server: 'plate-scanner',
  at: '2026-11-20T06:00:00Z',
  tools: { lsblk: '2.38.1' },
  unseen: [],
  devices: [{ name: 'vda', type: 'disk', size: '1' }],
  'volume-groups': [],
  'file-systems': [],
};

/** What the schema makes of a text, by either reader. */
const said = (read: typeof readJson, text: string) => {
  const document = read(text, 'surveys/plate-scanner.json');
  if (!document.ok) return document.problems;
  const valid = validate('survey', document.value);
  return valid.ok ? [valid.value.value, valid.value.problems] : valid.problems;
};

/** A survey with some key or value in it that is another, or twice, or hostile. */
const spoilt = fc
  .tuple(
    fc.constantFrom(
      'format',
      'server',
      'at',
      'tools',
      'unseen',
      'devices',
      '__proto__',
      'constructor',
      'size',
      '1',
      '"',
    ),
    fc.oneof(fc.jsonValue({ maxDepth: 2 }), fc.constantFrom('ullage-survey-1', {}, [], 1e21, -0, 2 ** 53)),
    fc.constantFrom('top', 'device', 'twice', 'tight'),
  )
  .map(([key, value, how]) => {
    const [device = {}] = survey.devices;
    const with_ = (object: object) => Object.fromEntries([...Object.entries(object), [key, value]]);
    if (how === 'device') return jsonText({ ...survey, devices: [with_(device)] });
    if (how === 'twice')
      return jsonText(survey).replace('{', `{\n  ${JSON.stringify(key)}: ${JSON.stringify(value)},`);
    return how === 'tight' ? JSON.stringify(with_(survey)) : jsonText(with_(survey));
  });

describe('JSON that this program wrote', () => {
  it('is read as YAML would be: the same value, the same problems at the same places', () => {
    fc.assert(
      fc.property(fc.oneof(spoilt, fc.constant(jsonText(survey))), (text) => {
        expect(said(readJson, text)).toEqual(said(readDocument, text));
      }),
      { numRuns: 500 },
    );
  });

  it('and no key in it twice is passed over', () => {
    const text = jsonText(survey).replace('"server"', '"server": "another",\n  "server"');
    const read = readJson(text, 'a.json');
    expect(read.ok ? '' : read.problems.map(({ message }) => message)).toEqual([
      'the key server is there twice (first on line 3)',
    ]);
  });

  it('that is none is refused with its place', () => {
    const read = readJson(`${jsonText(survey).slice(0, -5)}`, 'a.json');
    expect(read.ok).toBe(false);
  });
});
