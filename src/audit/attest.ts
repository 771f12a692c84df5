/**
 * One judgement as an attestation: an in-toto Statement v1 in canonical JSON, that the audit can hold against its
 * replay years later.
 *
 * The predicate is the SLSA Verification Summary (https://slsa.dev/verification_summary/v1, text of SLSA 1.2). The
 * in-toto Simple Verification Result (https://in-toto.io/attestation/svr/v0.1) was the other choice. Its text lists
 * "the passing properties" alone, so it has no way to record a refusal, and leaves the policy to an extension. The
 * Verification Summary's `verificationResult` is PASSED or FAILED, and its `policy` is required: an audit needs both.
 */
import canonicalize from 'canonicalize';
import { err, type Outcome, ok } from '../base/problem.ts';
import type { TreeFile } from '../git/tree.ts';
import type { Judgement } from '../policy/judgement.ts';
import { version } from '../version.ts';

const statementType = 'https://in-toto.io/Statement/v1';
const summaryType = 'https://slsa.dev/verification_summary/v1';

/** Ullage's gate as a verifier, and the name of what it adds. RFC 2606 keeps `.example` from ever having an owner. */
const verifierId = 'https://ullage.example/gate/v1';
const judgementField = 'https://ullage.example/judgement/v1';

/** The text of the Verification Summary lets a producer name levels of its own, none beginning with SLSA_. */
const passedLevel = 'ULLAGE_GATE';

export type Verdict = Judgement['verdict'];

/** What was judged, by the ids of Git objects. */
export interface JudgedRevisions {
  /** The tip of the branch. */
  readonly headCommit: string;
  /** The tree that was judged: what main would hold after the merge. */
  readonly headTree: string;
  readonly baseCommit: string;
  /** The settings, prices, rule packs and waivers that the policy is made of, at the revision whose policy judged. */
  readonly policyFiles: readonly TreeFile[];
}

/** The JSON report of the same judgement. */
export interface ReportDigest {
  /** Lower-case hexadecimal. */
  readonly sha256: string;
  /** The file that it was written to, without its folder; absent when it was not kept. */
  readonly name?: string | undefined;
}

/** What an attestation says, read back. */
export interface Attestation {
  readonly headCommit: string;
  readonly headTree: string;
  readonly baseCommit: string;
  readonly verdict: Verdict;
  /** When it was judged: RFC 3339, in UTC. */
  readonly time: string;
  /** The day it was judged as of. */
  readonly on: string;
  /** The level from which a finding failed; absent when nothing was judged. */
  readonly failOn: 'error' | 'warning' | undefined;
  readonly report: ReportDigest;
  readonly version: string;
}

type Verified = 'PASSED' | 'FAILED';

/** Only a pass is PASSED. What could not be judged is FAILED: "indicates policy evaluation failed", as SLSA has it. */
const resultOf = (verdict: Verdict): Verified => (verdict === 'pass' ? 'PASSED' : 'FAILED');

/** A Git object as a URI of the registered scheme `gitoid`; its id's length tells the hash. */
const gitoid = (kind: 'commit' | 'tree', id: string): string =>
  `gitoid:${kind}:${id.length === 64 ? 'sha256' : 'sha1'}:${id}`;

export interface AttestOptions {
  /** RFC 3339, in UTC. */
  readonly time: string;
  readonly report: ReportDigest;
}

/** RFC 8785: the same value gives the same bytes, so that a signature over them can be checked by anybody. */
export function canonicalJson(value: object): string {
  const text = canonicalize(value);
  if (text === undefined) throw new TypeError('the value cannot be written as JSON');
  return text;
}

/** Writes a judgement down as an attestation: one line of canonical JSON, with no line feed at its end. */
export function attest(judgement: Judgement, revisions: JudgedRevisions, options: AttestOptions): string {
  const { headCommit, headTree, baseCommit, policyFiles } = revisions;
  const { verdict, on } = judgement;
  const judged = judgement.verdict === 'not judged' ? undefined : judgement;
  const passed = verdict === 'pass';
  const policy =
    judged?.policyFrom === 'head'
      ? { uri: gitoid('tree', headTree), digest: { gitTree: headTree } }
      : { uri: gitoid('commit', baseCommit), digest: { gitCommit: baseCommit } };
  return canonicalJson({
    _type: statementType,
    subject: [
      { name: 'head', digest: { gitCommit: headCommit } },
      { name: 'judged', digest: { gitTree: headTree } },
    ],
    predicateType: summaryType,
    predicate: {
      verifier: { id: verifierId, version: { ullage: version } },
      timeVerified: options.time,
      // The same branch may pass on one main and fail on the next. The resource is main as it was, so that what was
      // let through there cannot be shown for a merge into another main.
      resourceUri: gitoid('commit', baseCommit),
      policy: {
        ...policy,
        annotations: {
          files: policyFiles.map(({ path, blob }) => ({ name: path, digest: { gitBlob: blob } })),
        },
      },
      verificationResult: resultOf(verdict),
      verifiedLevels: [passed ? passedLevel : 'FAILED'],
      [judgementField]: {
        verdict,
        on,
        ...(judged === undefined ? {} : { failOn: judged.failOn, policyFrom: judged.policyFrom }),
        base: { digest: { gitCommit: baseCommit } },
        // Only where main itself does not read: the ancestor whose estate stood in for main's, if any reads.
        ...(judged?.unreadMain === undefined
          ? {}
          : {
              unreadMain:
                judged.unreadMain.comparedWith === undefined
                  ? {}
                  : { comparedWith: { digest: { gitCommit: judged.unreadMain.comparedWith.commit } } },
            }),
        report: {
          ...(options.report.name === undefined ? {} : { name: options.report.name }),
          digest: { sha256: options.report.sha256 },
          mediaType: 'application/json',
        },
      },
    },
  });
}

const isObject = (value: unknown): value is Readonly<Record<string | number, unknown>> =>
  typeof value === 'object' && value !== null;

/** The value at a path of keys; undefined where there is none. Only a value's own keys count. */
function at(value: unknown, ...path: readonly (string | number)[]): unknown {
  let inner = value;
  for (const key of path) inner = isObject(inner) && Object.hasOwn(inner, key) ? inner[key] : undefined;
  return inner;
}

/** Whether a parsed file sets out to be an attestation of Ullage's; other tools' may lie beside them. */
export const isAttestation = (parsed: unknown): boolean =>
  at(parsed, '_type') === statementType &&
  at(parsed, 'predicateType') === summaryType &&
  at(parsed, 'predicate', 'verifier', 'id') === verifierId;

const objectId = /^(?:[0-9a-f]{40}|[0-9a-f]{64})$/;
const utcTime = /^[0-9]{4}-[0-9]{2}-[0-9]{2}T[0-9]{2}:[0-9]{2}:[0-9]{2}(?:\.[0-9]+)?Z$/;
const verdicts: readonly Verdict[] = ['pass', 'fail', 'not judged'];

const textAt = (value: unknown, pattern: RegExp, ...path: readonly (string | number)[]): string => {
  const text = at(value, ...path);
  return typeof text === 'string' && pattern.test(text) ? text : '';
};

/** Reads an attestation back, and refuses one that the gate cannot have written. */
export function readAttestation(text: string, parsed: unknown, file: string): Outcome<Attestation> {
  const altered = (why: string): Outcome<never> =>
    err({ message: `${file} ${why}`, advice: 'Use the attestation as the gate stored it.' });
  if (!isAttestation(parsed)) return altered("is not an attestation of Ullage's gate");
  const predicate = at(parsed, 'predicate');
  const judgement = at(predicate, judgementField);
  const verdict = verdicts.find((known) => known === at(judgement, 'verdict'));
  const failOn = at(judgement, 'failOn');
  const name = at(judgement, 'report', 'name');
  const attestation = {
    headCommit: textAt(parsed, objectId, 'subject', 0, 'digest', 'gitCommit'),
    headTree: textAt(parsed, objectId, 'subject', 1, 'digest', 'gitTree'),
    baseCommit: textAt(judgement, objectId, 'base', 'digest', 'gitCommit'),
    time: textAt(predicate, utcTime, 'timeVerified'),
    on: textAt(judgement, /^[0-9]{4}-[0-9]{2}-[0-9]{2}$/, 'on'),
    version: textAt(predicate, /./, 'verifier', 'version', 'ullage'),
  };
  const sha256 = textAt(judgement, /^[0-9a-f]{64}$/, 'report', 'digest', 'sha256');
  const lacking = [
    ...Object.entries(attestation),
    ['report digest', sha256],
    ['verdict', verdict ?? ''],
  ].filter(([, value]) => value === '');
  if (verdict === undefined || lacking.length > 0) {
    return altered(`does not say ${lacking.map(([what]) => what).join(', ')} as the gate does`);
  }
  if (at(predicate, 'verificationResult') !== resultOf(verdict)) {
    return altered('gives a result that is not its verdict');
  }
  if (at(predicate, 'resourceUri') !== gitoid('commit', attestation.baseCommit)) {
    return altered('names two bases');
  }
  if (!isCanonical(text, parsed)) return altered('is not written as the gate writes it');
  return ok({
    ...attestation,
    verdict,
    failOn: failOn === 'error' || failOn === 'warning' ? failOn : undefined,
    report: { sha256, name: typeof name === 'string' ? name : undefined },
  });
}

/** A key given twice, a space or another order of keys: two readers could take such a text for different things. */
function isCanonical(text: string, parsed: unknown): boolean {
  try {
    return isObject(parsed) && canonicalJson(parsed) === text;
  } catch {
    return false; // A half of a surrogate pair, or nesting deeper than the stack.
  }
}
