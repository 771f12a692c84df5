/** Recorded verdicts held against replayed ones: what is missing, what was altered, what says otherwise. */
import type { Attestation, Verdict } from './attest.ts';

/** One commit of main's history as the replay judged it. Ids are those of Git objects. */
export interface ReplayedVerdict {
  readonly commit: string;
  readonly tree: string;
  /** Its first parent; the first commit of all has none. */
  readonly base: string | undefined;
  readonly verdict: Verdict;
  /** The day it was replayed as of, for the message where two verdicts differ. */
  readonly on?: string | undefined;
  /** The level from which a finding failed in the replay. */
  readonly failOn?: 'error' | 'warning' | undefined;
}

/**
 * Why a file of the evidence is not believed: `form`, no attestation that the gate writes; `unsigned`, no signature
 * where signatures are asked for; `signature`, it does not fit the file; `signer`, a key that is not allowed, or was
 * not at that time; `report`, the report beside it is another; `tree`, not the tree of the commit it names.
 */
export type RejectionReason = 'form' | 'unsigned' | 'signature' | 'signer' | 'report' | 'tree';

/** One attestation of the evidence folder. */
export type Evidence =
  | {
      readonly kind: 'attestation';
      /** Its path from the evidence folder. */
      readonly file: string;
      readonly attestation: Attestation;
      /** Who signed it, as the allowed-signers file names them; undefined where signatures were not asked for. */
      readonly signer: string | undefined;
    }
  | {
      readonly kind: 'altered';
      readonly file: string;
      readonly why: RejectionReason;
      readonly message: string;
    };

export type EvidenceFinding =
  | {
      readonly kind: 'missing';
      readonly record: ReplayedVerdict;
      /** An attestation about the same tree or commit, against another base. */
      readonly near: string | undefined;
      readonly message: string;
    }
  | {
      readonly kind: 'altered';
      readonly file: string;
      readonly why: RejectionReason;
      readonly message: string;
    }
  | {
      readonly kind: 'contradicting';
      readonly record: ReplayedVerdict;
      readonly file: string;
      readonly attested: Verdict;
      readonly message: string;
    };

export interface HeldEvidence {
  /** In the order of the records, the altered ones last, by file. */
  readonly findings: readonly EvidenceFinding[];
  /** How many records have an attestation that agrees with the replay. */
  readonly agreeing: number;
  /** Believed attestations about nothing in the span, by file: a branch that was judged again, or never merged. */
  readonly elsewhere: readonly string[];
}

type Believed = Extract<Evidence, { kind: 'attestation' }>;
type Altered = Extract<Evidence, { kind: 'altered' }>;

/**
 * Holds the evidence against the records. An attestation is about a record when it judged the same tree against the
 * same base: a merge commit is made after the gate has judged what it holds, so its own id cannot be in it.
 */
export function holdAgainstEvidence(
  records: readonly ReplayedVerdict[],
  evidence: readonly Evidence[],
): HeldEvidence {
  const treeOf = new Map(records.map(({ commit, base, tree }) => [`${commit} ${base}`, tree]));
  const sorted = evidence
    .map((each) => (each.kind === 'attestation' ? asToTree(each, treeOf) : each))
    .sort((a, b) => (a.file < b.file ? -1 : a.file > b.file ? 1 : 0));
  const believed = sorted.filter((each): each is Believed => each.kind === 'attestation');
  const altered = sorted.filter((each): each is Altered => each.kind === 'altered');
  const byStep = group(believed);
  const near = nearby(believed);
  const findings: EvidenceFinding[] = [];
  const used = new Set<string>();
  let agreeing = 0;
  for (const record of records) {
    const about = byStep.get(step(record.tree, record.base)) ?? [];
    for (const { file } of about) used.add(file);
    if (about.length === 0) {
      findings.push(missing(record, near.get(record.commit) ?? near.get(record.tree)));
      continue;
    }
    if (about.some(({ attestation }) => attestation.verdict === record.verdict)) agreeing += 1;
    for (const each of about) {
      if (each.attestation.verdict !== record.verdict) findings.push(contradicting(record, each));
    }
  }
  return {
    findings: [...findings, ...altered],
    agreeing,
    elsewhere: believed.map(({ file }) => file).filter((file) => !used.has(file)),
  };
}

const step = (tree: string, base: string | undefined): string => `${base ?? ''} ${tree}`;

function group(believed: readonly Believed[]): ReadonlyMap<string, readonly Believed[]> {
  const groups = new Map<string, Believed[]>();
  for (const each of believed) {
    const key = step(each.attestation.headTree, each.attestation.baseCommit);
    const known = groups.get(key);
    if (known === undefined) groups.set(key, [each]);
    else known.push(each);
  }
  return groups;
}

/** The file that judged a commit or a tree, whatever the base. */
function nearby(believed: readonly Believed[]): ReadonlyMap<string, Believed> {
  const near = new Map<string, Believed>();
  for (const each of believed) {
    near.set(each.attestation.headTree, each);
    near.set(each.attestation.headCommit, each);
  }
  return near;
}

/** A commit that went onto main as it was judged has one tree; an attestation that names another was altered. */
function asToTree(each: Believed, treeOf: ReadonlyMap<string, string>): Evidence {
  const { headCommit, headTree, baseCommit } = each.attestation;
  const tree = treeOf.get(`${headCommit} ${baseCommit}`);
  if (tree === undefined || tree === headTree) return each;
  const message = `${each.file} says that commit ${short(headCommit)} has tree ${short(headTree)}, but it has ${short(tree)}`;
  return { kind: 'altered', file: each.file, why: 'tree', message };
}

/** As Git shortens an id for people. */
const short = (id: string): string => id.slice(0, 12);

function missing(record: ReplayedVerdict, near: Believed | undefined): EvidenceFinding {
  const hint =
    near === undefined
      ? ''
      : `; ${near.file} judged ${near.attestation.headTree === record.tree ? 'the same tree' : 'the same commit'} against ${short(near.attestation.baseCommit)}, not against ${record.base === undefined ? 'nothing' : short(record.base)}`;
  return {
    kind: 'missing',
    record,
    near: near?.file,
    message: `no attestation is about commit ${short(record.commit)}, replayed as ${record.verdict}${hint}`,
  };
}

function contradicting(record: ReplayedVerdict, { file, attestation }: Believed): EvidenceFinding {
  const differs = [
    ...(record.on !== undefined && record.on !== attestation.on
      ? [`it was judged as of ${attestation.on}, and replayed as of ${record.on}`]
      : []),
    ...(record.failOn !== undefined &&
    attestation.failOn !== undefined &&
    record.failOn !== attestation.failOn
      ? [`it failed from level ${attestation.failOn}, and the replay from level ${record.failOn}`]
      : []),
  ];
  return {
    kind: 'contradicting',
    record,
    file,
    attested: attestation.verdict,
    message: `${file} says ${attestation.verdict} for commit ${short(record.commit)}, but the replay says ${record.verdict}${differs.length > 0 ? ` (${differs.join('; ')})` : ''}`,
  };
}
