import { describe, expect, it } from 'vitest';
import { onlyFinding, standing, underRule } from '../estate/builder.ts';

const rule = 'rule: group-travels-whole';

const plates = (
  seats: Readonly<Record<string, string | undefined>>,
  servers = 'scanner: {}, plotter: {}',
): string => `
servers: { ${servers} }
volumes: { ${Object.keys(seats)
  .map((name) => `${name}: { size: 40 GiB, tier: bulk }`)
  .join(', ')} }
attachments: [ ${Object.entries(seats)
  .flatMap(([volume, server]) => (server === undefined ? [] : [`{ volume: ${volume}, server: ${server} }`]))
  .join(', ')} ]
volume-groups: { plates: { members: [${Object.keys(seats).join(', ')}] } }
`;
const whole = plates({ a: 'scanner', b: 'scanner', c: 'scanner' });
const split = plates({ a: 'scanner', b: 'scanner', c: 'plotter' });

describe('a volume group', () => {
  it('may travel from one server to another, whole', async () => {
    expect((await underRule(rule, whole, plates({ a: 'plotter', b: 'plotter', c: 'plotter' }))).verdict).toBe(
      'pass',
    );
  });

  it('may be detached whole', async () => {
    expect((await underRule(rule, whole, plates({ a: undefined, b: undefined, c: undefined }))).verdict).toBe(
      'pass',
    );
  });

  it('of which one member is handed over does not start on either side', async () => {
    const judgement = await underRule(rule, whole, split);
    expect(judgement.verdict).toBe('fail');
    expect(onlyFinding(judgement).message).toBe(
      'volume group plates is split: a, b on scanner; c on plotter',
    );
    expect(onlyFinding(judgement).advice).toContain('export the group, detach every member');
  });

  it('of which one member is detached is broken', async () => {
    const { message } = onlyFinding(
      await underRule(rule, whole, plates({ a: 'scanner', b: 'scanner', c: undefined })),
    );
    expect(message).toContain('a, b on scanner; c unattached');
  });

  it('that is new, with a new volume that nothing attaches, is told to attach that one: there is no group to move', async () => {
    const volumes = 'volumes: { a: { size: 40 GiB, tier: bulk }, b: { size: 40 GiB, tier: bulk } }\n';
    const main = `servers: { scanner: {} }\n${volumes}attachments: [ { volume: a, server: scanner }, { volume: b, server: scanner } ]\n`;
    const { advice } = onlyFinding(
      await underRule(rule, main, plates({ a: 'scanner', b: 'scanner', c: undefined }, 'scanner: {}')),
    );
    expect(advice).toMatch(
      /^Attach c to scanner, where the other members are\. To take the group to another server: move all members together: unmount/,
    );
    const two = plates({ a: 'scanner', b: undefined, c: undefined }, 'scanner: {}');
    expect(onlyFinding(await underRule(rule, main, two)).advice).toMatch(
      /^Attach b and c to scanner, where the other member is\./,
    );
    const three = plates({ a: 'scanner', b: 'plotter', c: undefined });
    expect(onlyFinding(await underRule(rule, main, three)).advice).toMatch(/^Move all members together/);
  });

  it('is caught where the attachment and the group stand in different files', async () => {
    const files = (server: string) => ({
      'storage/attached.yaml': `attachments: [ { volume: x, server: scanner }, { volume: y, server: ${server} } ]\n`,
    });
    const declared =
      'servers: { scanner: {}, plotter: {} }\nvolumes: { x: { size: 4 GiB, tier: bulk }, y: { size: 4 GiB, tier: bulk } }\nvolume-groups: { g: { members: [x, y] } }\n';
    const { judged, pack } = await import('../estate/builder.ts');
    const judgement = await judged(
      { ...pack(rule), 'storage/declared.yaml': declared, ...files('scanner') },
      files('plotter'),
    );
    expect(standing(judgement)).toEqual(['fails: error new volume-group g']);
  });
});

describe('split on main already', () => {
  it('does not fail a change that leaves it be, nor one that renames a server', async () => {
    expect(standing(await underRule(rule, split, `# tidied\n${split}`))).toEqual([
      'stands: error unchanged volume-group plates',
    ]);
    const renamed = plates(
      { a: 'scanner', b: 'scanner', c: 'drawer' },
      'scanner: {}, drawer: { formerly: plotter }',
    );
    expect(standing(await underRule(rule, split, renamed))).toEqual([
      'stands: error unchanged volume-group plates',
    ]);
  });

  it('fails a change that splits it otherwise', async () => {
    expect((await underRule(rule, split, plates({ a: 'scanner', b: 'plotter', c: 'plotter' }))).verdict).toBe(
      'fail',
    );
  });

  it('passes the change that brings it together', async () => {
    expect((await underRule(rule, split, whole)).verdict).toBe('pass');
  });
});
