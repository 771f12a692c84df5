/** Limits in words. */
import { bytes, exactSize } from '../../estate/size.ts';

/** A size as it may be written, a count as it is; nothing where there is no limit. */
export const showLimit = (limit: bigint | number | undefined): string | undefined =>
  typeof limit === 'bigint' ? exactSize(bytes(limit)) : limit?.toString();
