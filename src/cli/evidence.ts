/** Reads a folder of attestations, and says which of them are to be believed. */
import { createHash } from 'node:crypto';
import { lstat, readdir, readFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { type Attestation, isAttestation, readAttestation } from '../audit/attest.ts';
import type { Evidence, RejectionReason } from '../audit/evidence.ts';
import { err, type Outcome, ok } from '../base/problem.ts';
import { shown } from '../git/tree.ts';
import { reasonOf } from './edge.ts';
import { type AllowedSigners, allowedSigners, verify } from './signing.ts';

/** Far above what the gate writes, and far below what would fill the memory. */
const largestAttestation = 8 * 1024 * 1024;

/** Verifying starts two processes a file; more at once than this gains nothing on a small machine. */
const atOnce = 4;

export interface EvidenceOptions {
  /** The file of allowed signers; where it is left out, signatures are not asked for. */
  readonly allowedSigners?: string | undefined;
}

/**
 * Every attestation in a folder and in those below it, by path. What is no attestation is left out: other tools'
 * statements, reports, anything that is neither JSON nor signed.
 */
export async function readEvidence(
  folder: string,
  options: EvidenceOptions = {},
): Promise<Outcome<readonly Evidence[]>> {
  const allowed =
    options.allowedSigners === undefined ? undefined : await allowedSigners(options.allowedSigners);
  if (allowed !== undefined && !allowed.ok) return allowed;
  let names: readonly string[];
  try {
    names = (await filesBelow(folder)).sort();
  } catch (error) {
    return err({
      message: `the evidence in ${shown(folder)} cannot be read: ${shown(reasonOf(error))}`,
      advice: 'Name the folder that holds the attestations with --evidence FOLDER.',
    });
  }
  const present = new Set(names);
  const waiting = names.filter((name) => !name.endsWith('.sig')).values();
  const read: Evidence[] = [];
  const problems: Outcome<never>[] = [];
  const reader = async (): Promise<void> => {
    for (const name of waiting) {
      if (problems.length > 0) return;
      const one = await readOne({ folder, name, present, allowed: allowed?.value });
      if (!one.ok) problems.push(one);
      else if (one.value !== undefined) read.push(one.value);
    }
  };
  await Promise.all(Array.from({ length: atOnce }, reader));
  const [problem] = problems;
  if (problem !== undefined) return problem;
  return ok(read.sort((a, b) => (a.file < b.file ? -1 : 1)));
}

/** Paths below a folder. Node's own recursive listing follows links, which could lead out of it or round in it. */
async function filesBelow(folder: string, above = ''): Promise<string[]> {
  const entries = await readdir(join(folder, above), { withFileTypes: true });
  const nested = await Promise.all(
    entries.map((entry) => {
      const name = above === '' ? entry.name : `${above}/${entry.name}`;
      return entry.isDirectory() ? filesBelow(folder, name) : [name];
    }),
  );
  return nested.flat();
}

interface OneFile {
  readonly folder: string;
  readonly name: string;
  readonly present: ReadonlySet<string>;
  readonly allowed: AllowedSigners | undefined;
}

async function readOne({ folder, name, present, allowed }: OneFile): Promise<Outcome<Evidence | undefined>> {
  const file = shown(name);
  const altered = (why: RejectionReason, what: string): Outcome<Evidence> =>
    ok({ kind: 'altered', file, why, message: `${file} ${what}` });
  const path = join(folder, name);
  const signed = present.has(`${name}.sig`);
  const claims = signed || name.endsWith('.json');
  const kind = await lstat(path).catch(() => undefined);
  // A link could show a file that is not in the evidence, and would be followed with the auditor's rights.
  if (!kind?.isFile()) return claims ? altered('form', 'is not a regular file') : ok(undefined);
  if (kind.size > largestAttestation) {
    return signed ? altered('form', 'is larger than any attestation') : ok(undefined);
  }
  const text = await readFile(path).then(decode, () => undefined);
  if (text === undefined) return claims ? altered('form', 'cannot be read as text') : ok(undefined);
  const parsed = parse(text);
  if (parsed === undefined) return claims ? altered('form', 'is not JSON') : ok(undefined);
  // A signature over something else may be another tool's: only what sets out to be an attestation is held to be one.
  if (!isAttestation(parsed.value)) return ok(undefined);
  const read = readAttestation(text, parsed.value, file);
  if (!read.ok) return altered('form', (read.problems[0]?.message ?? '').slice(file.length + 1));
  const attestation = read.value;
  if (allowed === undefined) return reportOf({ folder, name, present }, attestation, undefined);
  if (!signed) return altered('unsigned', 'is not signed');
  const signature = `${path}.sig`;
  if (!(await lstat(signature).catch(() => undefined))?.isFile()) {
    return altered('signature', 'has a signature that is not a regular file');
  }
  const verified = await verify(text, { signature, time: attestation.time }, allowed);
  if (!verified.ok) return verified;
  switch (verified.value.kind) {
    case 'good':
      return reportOf({ folder, name, present }, attestation, verified.value.signer);
    case 'bad signature':
      return altered('signature', verified.value.message);
    case 'bad signer':
      return altered('signer', verified.value.message);
  }
}

/** A report kept beside its attestation under its own name must be the one that was attested. */
async function reportOf(
  { folder, name, present }: Omit<OneFile, 'allowed'>,
  attestation: Attestation,
  signer: string | undefined,
): Promise<Outcome<Evidence>> {
  const file = shown(name);
  const { name: report, sha256 } = attestation.report;
  const beside = report === undefined ? undefined : join(dirname(name), report).replaceAll('\\', '/');
  // The name comes from the attestation: it counts only where the folder's own listing has it, in the same place.
  if (beside !== undefined && report?.search(/[/\\]/) === -1 && present.has(beside)) {
    const path = join(folder, beside);
    const kind = await lstat(path).catch(() => undefined);
    const content = kind?.isFile() ? await readFile(path).catch(() => undefined) : undefined;
    if (content === undefined || createHash('sha256').update(content).digest('hex') !== sha256) {
      const message = `${file} attests another report than ${shown(beside)} beside it`;
      return ok({ kind: 'altered', file, why: 'report', message });
    }
  }
  return ok({ kind: 'attestation', file, attestation, signer });
}

const strictUtf8 = new TextDecoder('utf-8', { fatal: true, ignoreBOM: true });

/** Undefined for what is no UTF-8: shown with stand-ins, it would no longer be what was signed. */
function decode(content: Uint8Array): string | undefined {
  try {
    return strictUtf8.decode(content);
  } catch {
    return undefined;
  }
}

function parse(text: string): { readonly value: unknown } | undefined {
  try {
    return { value: JSON.parse(text) };
  } catch {
    return undefined;
  }
}
