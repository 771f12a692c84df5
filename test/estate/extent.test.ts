import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { extentProblem } from '../../src/estate/extent.ts';
import { readEstatePart } from '../../src/estate/part.ts';
import { bytes } from '../../src/estate/size.ts';
import { documentOf, problemsOf } from './builder.ts';

/** What vgcreate of the version in the file's name said to each size; the file says how it was asked. */
const measured: {
  readonly acceptedExtents: readonly string[];
  readonly refusedExtents: readonly string[];
  readonly groups: readonly (readonly [string, string, number, number])[];
} = JSON.parse(readFileSync(new URL('../capacity/fixtures/lvm2-2.03.16.json', import.meta.url), 'utf8'));

const problemWith = (extent: string): string | undefined =>
  problemsOf(
    readEstatePart(documentOf(`volume-groups:\n  plates: { extent: ${extent}, members: [plates-1] }\n`)),
  )[0]?.message;

describe('an extent size is valid exactly where the volume manager takes it', () => {
  it.each(measured.acceptedExtents)('%s bytes is taken', (extent) => {
    expect(extentProblem(bytes(BigInt(extent)))).toBeUndefined();
  });

  it.each(measured.refusedExtents)('%s bytes is refused', (extent) => {
    expect(extentProblem(bytes(BigInt(extent)))).toBeTypeOf('string');
  });

  it('and every size that made a group passes', () => {
    for (const [, extent] of measured.groups) expect(extentProblem(bytes(BigInt(extent)))).toBeUndefined();
  });
});

describe('an estate file is held to the same test', () => {
  // At the bounds, as vgcreate of lvm2 2.03.16 answered: 512 bytes, steps of 128 KiB, below 2 TiB.
  it.each(['0.5 KiB', '384 KiB', '6 MiB', '96 MiB', '1.5 GiB', '1 TiB', '2147483520 KiB'])(
    '%s is taken',
    (extent) => {
      expect(problemWith(extent)).toBeUndefined();
    },
  );

  it.each([
    ['0.25 KiB', /at least one sector/],
    ['3 KiB', /multiple of 128 KiB/],
    ['192 KiB', /multiple of 128 KiB/],
    ['4 MB', /multiple of 128 KiB/],
    ['2 TiB', /smaller than 2 TiB/],
    ['4 TiB', /smaller than 2 TiB/],
  ])('%s is refused', (extent, why) => {
    expect(problemWith(extent)).toMatch(why);
  });
});
