import { describe, expect, it } from 'vitest';
import { schemaFaults } from '../../src/rules/user-schema.ts';
import { judgedBranch, packOf, readPack, refusedFor, said } from '../estate/builder.ts';

const costCentre = `rule: shape
of: volume
message: Finance requires a cost centre.
schema:
  properties:
    labels:
      required: [cost-centre]
      properties:
        cost-centre: { pattern: '^CC-[0-9]{4}$' }`;

const volume = (labels: string, size = '50 GiB'): string =>
  `volumes:\n  plates-1: { size: ${size}, tier: bulk, labels: ${labels} }\n`;

const found = async (branch: string, entry: string, main?: string) =>
  said(await judgedBranch({ ...(main === undefined ? {} : { main }), branch, entries: [entry] }));

const shapeOf = (of: string, schema: string, more = ''): string =>
  `{ rule: shape, of: ${of}, schema: ${schema}${more} }`;

describe('a rule without code, about things', () => {
  it('passes a volume that fits', async () => {
    expect(await found(volume('{ cost-centre: CC-1234 }'), costCentre)).toEqual([]);
  });

  it('fails one that does not, with the path at which it fails', async () => {
    expect(await found(volume('{ cost-centre: CC-12345 }'), costCentre)).toEqual([
      'error new plates-1: Finance requires a cost centre: volume plates-1 does not match the shape: /labels/cost-centre must match pattern "^CC-[0-9]{4}$"',
    ]);
    expect(await found(volume('{}'), costCentre)).toEqual([
      'error new plates-1: Finance requires a cost centre: volume plates-1 does not match the shape: /labels/cost-centre is missing',
    ]);
  });

  it('points at the key of the declaration that fails', async () => {
    const { findings } = await judgedBranch({ branch: volume('{}'), entries: [costCentre] });
    expect(findings[0]?.place).toMatchObject({ file: 'storage/imagery.yaml', line: 2, column: 41 });
  });

  it('lets what was so on main stand, in whatever way it is wrong, and fails another fault', async () => {
    const both = shapeOf(
      'volume',
      '{ properties: { labels: { required: [owner] }, size-gib: { maximum: 100 } } }',
    );
    expect((await found(volume('{}'), both, volume('{}')))[0]).toMatch(/^error unchanged/);
    expect((await found(volume('{}', '150 GiB'), both, volume('{}', '200 GiB')))[0]).toMatch(
      /^error unchanged/,
    );
    expect((await found(volume('{}', '200 GiB'), both, volume('{}', '150 GiB')))[0]).toMatch(
      /^error updated/,
    );
    expect((await found(volume('{}', '200 GiB'), both, volume('{}')))[0]).toMatch(/^error updated/);
  });

  it('holds a size at the bound to the byte: 50 GB is less than 50 GiB, and not a whole number of them', async () => {
    const whole = shapeOf('volume', '{ properties: { size-gib: { maximum: 50, multipleOf: 1 } } }');
    expect(await found(volume('{}', '50 GiB'), whole)).toEqual([]);
    expect((await found(volume('{}', '51 GiB'), whole))[0]).toContain('/size-gib must be <= 50');
    expect((await found(volume('{}', '50 GB'), whole))[0]).toContain('/size-gib must be multiple of 1');
  });

  it('sees what a thing is tied to', async () => {
    const estate = `
servers:
  plate-scanner: { power: stopped }
volumes:
  plates-1: { size: 50 GiB, tier: bulk }
attachments:
  - { volume: plates-1, server: plate-scanner }
volume-groups:
  plates:
    members: [plates-1]
    file-systems:
      /plates: { size: 20 GiB, type: xfs }
`;
    const findings = await Promise.all(
      [
        shapeOf('server', '{ properties: { volumes: { maxItems: 0 } } }'),
        shapeOf('volume', '{ properties: { volume-group: { const: charts } } }'),
        shapeOf(
          'volume-group',
          '{ properties: { file-systems: { items: { properties: { type: { enum: [ext4] } } } } } }',
        ),
        shapeOf(
          'file-system',
          '{ properties: { servers: { contains: { const: other } }, on: { required: [nothing] } } }',
        ),
      ].map((entry) => found(estate, entry)),
    );
    expect(findings.flat().map((each) => each.replace(/.*the shape: /, ''))).toEqual([
      '/volumes must NOT have more than 0 items',
      '/volume-group must be "charts"',
      '/file-systems/0/type must be one of "ext4"',
      '/servers/0 must be "other"; /servers must contain at least 1 valid item(s); /on/nothing is missing',
    ]);
  });

  it('names three places and counts the rest', async () => {
    const entry = shapeOf('volume', '{ properties: { labels: { required: [a, b, c, d, e] } } }');
    expect((await found(volume('{}'), entry))[0]).toMatch(/\/labels\/c is missing; and 2 more$/);
  });

  it('is for its own scope alone', async () => {
    expect(
      await found(volume('{}'), shapeOf('volume', '{ required: [owner] }', ', where: { tiers: [brisk] }')),
    ).toEqual([]);
  });
});

describe('a rule without code, about changes', () => {
  const calm = shapeOf(
    'change',
    '{ properties: { after: { properties: { size-gib: { maximum: 100 } } } } }',
    ', kinds: [volume-grown]',
  );

  it('looks at the kinds it names and no others', async () => {
    expect(await found(volume('{}', '200 GiB'), calm)).toEqual([]);
    expect(await found(volume('{}', '200 GiB'), calm, volume('{}', '300 GiB'))).toEqual([]);
    expect(await found(volume('{}', '100 GiB'), calm, volume('{}'))).toEqual([]);
    expect(await found(volume('{}', '101 GiB'), calm, volume('{}'))).toEqual([
      'error new plates-1: the change volume-grown of volume plates-1 does not match the shape: /after/size-gib must be <= 100',
    ]);
  });

  it('says nothing of what main has done before', async () => {
    expect(await found(volume('{}', '200 GiB'), calm, volume('{}', '200 GiB'))).toEqual([]);
  });

  it('can refuse a kind of change outright', async () => {
    const never = shapeOf('change', '{ not: { properties: { change: { const: volume-deleted } } } }');
    expect((await found('volumes: {}\n', never, volume('{}')))[0]).toContain(
      'the change volume-deleted of volume plates-1',
    );
  });

  it('sees who is attached to whom', async () => {
    const main = `servers:\n  a: {}\n  b: {}\n${volume('{}')}`;
    const attach = (server: string): string =>
      `${main}attachments:\n  - { volume: plates-1, server: ${server} }\n`;
    const only = shapeOf('change', '{ properties: { server: { const: a } } }', ', kinds: [attached]');
    expect(await found(attach('a'), only, main)).toEqual([]);
    expect((await found(attach('b'), only, main))[0]).toContain('/server must be "a"');
  });
});

describe('a schema that cannot be used is refused when the pack is read', () => {
  const refused = (schema: string): readonly string[] => refusedFor(shapeOf('volume', schema));

  it('at the place of the fault', () => {
    expect(refused("{ properties: { name: { pattern: '[a-z' } } }")).toEqual([
      '2:73 [a-z is not a valid pattern: missing closing ]: `[a-z`',
    ]);
    expect(refused('{ properties: { name: { minLenght: 3 } } }')).toEqual([
      '2:75 minLenght is not a keyword that a shape can use',
    ]);
    expect(refused('{ type: volume }')).toHaveLength(1);
    expect(refused('{ required: owner }').join()).toContain('required must be array');
  });

  it('offers the nearest keyword', () => {
    const pack = readPack(packOf([shapeOf('volume', '{ additionalProperty: false }')]));
    expect(pack.ok ? '' : pack.problems[0]?.advice).toContain('Did you mean additionalProperties?');
  });

  it('where it asks for another document, or names itself as one', () => {
    expect(refused('{ $ref: "https://example.org/shape.json" }').join()).toContain(
      'leads out of this schema',
    );
    expect(refused('{ $ref: "file:///etc/passwd" }').join()).toContain('leads out of this schema');
    expect(refused('{ $ref: "other.json#/x" }').join()).toContain('leads out of this schema');
    expect(refused('{ $id: "https://example.org/shape.json" }').join()).toContain('is not a keyword');
    expect(refused('{ $dynamicRef: "#x" }').join()).toContain('is not a keyword');
    expect(refused('{ $ref: "#/$defs/none" }').join()).toContain('there is nothing at');
  });

  it('lets a reference within it be followed', async () => {
    const entry = shapeOf('volume', '{ $ref: "#/$defs/v", $defs: { v: { required: [owner] } } }');
    expect((await found(volume('{}'), entry))[0]).toContain('/owner is missing');
  });

  it('where it comes back to itself', () => {
    expect(refused('{ $ref: "#" }').join()).toContain('refers back to itself');
    expect(
      refused('{ allOf: [ { $ref: "#/$defs/a" } ], $defs: { a: { not: { $ref: "#/$defs/a" } } } }').join(),
    ).toContain('refers back to itself');
  });

  it('where references double it again and again', () => {
    const defs = Object.fromEntries(
      Array.from({ length: 40 }, (_each, index) => [
        `d${index}`,
        index === 39
          ? { minimum: 0 }
          : { allOf: [{ $ref: `#/$defs/d${index + 1}` }, { $ref: `#/$defs/d${index + 1}` }] },
      ]),
    );
    // Whoever counted them one by one would not be done this year: that it ends is the check.
    const [fault] = schemaFaults({ $ref: '#/$defs/d0', $defs: defs });
    expect(fault?.message).toMatch(/^the schema has [0-9.e+]+ parts/);
  });

  it('where it nests too deep or is too long', () => {
    const deep = Array.from({ length: 25 }).reduce<object>((inner) => ({ not: inner }), {});
    expect(schemaFaults({ not: deep }).map(({ message }) => message)).toEqual([
      'the schema nests more than 20 levels deep',
    ]);
    const long = Object.fromEntries(Array.from({ length: 3000 }, (_each, index) => [`p${index}`, {}]));
    expect(schemaFaults({ properties: long })[0]?.message).toContain('parts');
  });

  it('where it asks for __proto__, which would be passed over', () => {
    expect(refused('{ properties: { __proto__: { minimum: 1 } } }').join()).toContain(
      '__proto__ cannot be used',
    );
  });

  it('where it leaves out what it is of, or names kinds of something else', () => {
    expect(refusedFor('{ rule: shape, schema: {} }')).toHaveLength(1);
    expect(refusedFor('{ rule: shape, of: volume, kinds: [attached], schema: {} }').join()).toContain(
      'kinds selects among changes',
    );
  });

  it('a format is checked or refused, never passed over', async () => {
    expect(refused('{ properties: { owner: { format: email } } }').join()).toContain(
      'the format email is not checked',
    );
    const entry = shapeOf(
      'volume',
      '{ properties: { labels: { properties: { until: { format: date } } } } }',
    );
    expect((await found(volume('{ until: "2026-02-30" }'), entry))[0]).toContain('/labels/until');
    expect(await found(volume('{ until: "2026-02-28" }'), entry)).toEqual([]);
  });
});

describe('patterns in a schema', () => {
  it('are each their own: one is not run in place of another', async () => {
    const entry = shapeOf(
      'volume',
      "{ properties: { name: { pattern: '^plates' }, tier: { pattern: '^b' } } }",
    );
    expect(await found(volume('{}'), entry)).toEqual([]);
    expect((await found(volume('{}'), entry.replace('^b', '^s')))[0]).toContain(
      '/tier must match pattern "^s"',
    );
    expect((await found(volume('{}'), entry.replace('^plates', '^charts')))[0]).toContain('/name must match');
  });

  it('run in linear time', async () => {
    const entry = shapeOf(
      'volume',
      "{ properties: { labels: { additionalProperties: { pattern: '^(a+)+$' } } } }",
    );
    // A backtracking engine needs 2^5000 steps for it: that it ends is the check.
    expect(await found(volume(`{ x: "${'a'.repeat(5000)}!" }`), entry)).toHaveLength(1);
  });

  it('run in linear time as names, too', async () => {
    const entry = shapeOf(
      'volume',
      "{ properties: { labels: { patternProperties: { '^(a+)+$': false } } } }",
    );
    // Likewise, of 2^100 steps.
    expect(await found(volume(`{ ${'a'.repeat(100)}: x, ${'a'.repeat(100)}-b: y }`), entry)).toHaveLength(1);
  });
});

describe('mappings in a schema', () => {
  it.each([
    ['{ properties: { labels: { const: { purpose: scans } } } }', '{ purpose: scans }', '{ purpose: logs }'],
    ['{ properties: { labels: { enum: [{}, { purpose: scans }] } } }', '{}', '{ purpose: scans, kept: y }'],
  ])('equal what holds the same: %s', async (schema, same, other) => {
    expect(await found(volume(same), shapeOf('volume', schema))).toEqual([]);
    expect(await found(volume(other), shapeOf('volume', schema))).toHaveLength(1);
  });

  it.each(['valueOf', 'toString'])(
    'that hide %s are a miss wherever they are compared, and end no judgement',
    async (name) => {
      const entry = shapeOf('volume', '{ properties: { labels: { const: { kept: y } } } }');
      expect(await found(volume(`{ ${name}: x }`), entry)).toHaveLength(1);
      const same = shapeOf('volume', `{ properties: { labels: { const: { ${name}: x } } } }`);
      expect(await found(volume(`{ ${name}: x }`), same)).toEqual([
        expect.stringContaining('cannot be compared with the schema'),
      ]);
    },
  );

  it.each(['constructor', 'toString', 'valueOf'])('do not hold %s unless it was written', async (name) => {
    const entry = shapeOf('volume', `{ properties: { labels: { required: [${name}] } } }`);
    expect(await found(volume('{}'), entry)).toHaveLength(1);
    expect(await found(volume(`{ ${name}: x }`), entry)).toEqual([]);
  });
});
