// placeholder, the owner of this file overwrites it
export const allocatable = (_c: unknown): bigint => 0n;
export const extentsFor = (_s: unknown, _e: unknown, _l: unknown): bigint => 0n;
export const groupCapacity = (_g: unknown): unknown => 0n;
