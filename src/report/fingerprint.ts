/** What a finding is known by from one run to the next, whatever lines were added above it. */
import { createHash } from 'node:crypto';
import type { Finding } from '../policy/judgement.ts';

/** SHA-256 in hexadecimal over the entry, the subject and the facet: no place, no message, no figure. */
export const fingerprint = ({ entry, subject, facet }: Finding): string =>
  createHash('sha256')
    .update(JSON.stringify([entry, subject.kind, subject.name, facet ?? null]))
    .digest('hex');
