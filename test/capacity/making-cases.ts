/** File systems made otherwise than by default. */
import fc from 'fast-check';
import type { Making } from '../../src/estate/made.ts';
import { bytes, unitBytes } from '../../src/estate/size.ts';

const { MiB, GiB, TiB } = unitBytes;

/** As mke2fs is told; what is left out is left to it. */
export interface MadeExt {
  readonly type: 'ext2' | 'ext3' | 'ext4';
  /** In bytes. */
  readonly device: string;
  readonly perCent?: number;
  readonly block?: number;
  readonly ratio?: number;
}

/** Of 64 MiB to 100 GiB, most of them small. */
export const extMade: fc.Arbitrary<MadeExt> = fc
  .record(
    {
      type: fc.constantFrom('ext4', 'ext4', 'ext3', 'ext2'),
      device: fc
        .oneof(fc.bigInt({ min: 64n * MiB, max: 8n * GiB }), fc.bigInt({ min: 64n * MiB, max: 100n * GiB }))
        .map(String),
      perCent: fc.constantFrom(0, 0.5, 1, 1.5, 2, 7, 10, 33, 50),
      block: fc.constantFrom(1024, 2048, 4096),
      ratio: fc.constantFrom(8192, 20_000, 32_768, 65_536, 1 << 20),
    },
    { requiredKeys: ['type', 'device'] },
  )
  .map((made): MadeExt => made);

export const flagsOf = ({ perCent, block, ratio }: MadeExt): readonly string[] => [
  ...(perCent === undefined ? [] : ['-m', `${perCent}`]),
  ...(block === undefined ? [] : ['-b', `${block}`]),
  ...(ratio === undefined ? [] : ['-i', `${ratio}`]),
];

export const byDefault: Making = {
  reserve: undefined,
  blockSize: undefined,
  inodeRatio: undefined,
  reverseMap: undefined,
};

export const makingOf = ({ perCent, block, ratio }: MadeExt): Making => ({
  ...byDefault,
  reserve: perCent === undefined ? undefined : perCent / 100,
  blockSize: block === undefined ? undefined : bytes(BigInt(block)),
  inodeRatio: ratio === undefined ? undefined : bytes(BigInt(ratio)),
});

export const xfsDevice: fc.Arbitrary<bigint> = fc.oneof(
  fc.bigInt({ min: 300n * MiB, max: 20n * GiB }),
  fc.bigInt({ min: 300n * MiB, max: 2n * TiB }),
);
