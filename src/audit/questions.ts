/** What the records of a span answer. Each question takes records oldest first, as the walk gives them. */
import { daysBetween } from '../estate/dates.ts';
import type { AuditRecord } from './record.ts';

/** Failing changes that were merged all the same. */
export const mergedAnyway = (records: readonly AuditRecord[]): readonly AuditRecord[] =>
  records.filter(({ verdict }) => verdict === 'fail');

export interface Loosening {
  readonly record: AuditRecord;
  readonly change: AuditRecord['policyChanges'][number];
}

/** Every alteration that let more through, or may have: what cannot be told to be tighter is listed, too. */
export const loosenings = (records: readonly AuditRecord[]): readonly Loosening[] =>
  records.flatMap((record) =>
    record.policyChanges
      .filter(({ direction }) => direction === 'looser' || direction === 'unknown')
      .map((change) => ({ record, change })),
  );

export interface SpendStep {
  readonly record: AuditRecord;
  /** `null` for what belongs to no team. */
  readonly team: string | null;
  readonly before: string;
  readonly after: string;
  /** Of `before`; it differs in the step that brings another currency. */
  readonly currencyBefore: string;
  readonly currency: string;
}

/** What each team's storage cost from when on: the first record, and each that changed it. */
export function spendByTeam(records: readonly AuditRecord[]): readonly SpendStep[] {
  const last = new Map<string | null, string>();
  return records.flatMap((record): readonly SpendStep[] => {
    const { cost } = record;
    if (cost === null) return [];
    return cost.teams.flatMap(({ team, before, after }): readonly SpendStep[] => {
      if (last.get(team) === after) return [];
      const known = last.get(team) ?? before;
      last.set(team, after);
      const { currencyBefore, currency } = cost;
      return [{ record, team, before: known, after, currencyBefore, currency }];
    });
  });
}

/** Where a violation came from or went to: a commit, or the base by itself as a day passed or the policy changed. */
export interface Turn {
  readonly on: string;
  readonly commit: string;
  readonly by: 'commit' | 'day or policy' | 'before';
}

export interface OpenViolation {
  readonly entry: string;
  readonly rule: string;
  readonly level: string;
  readonly subject: AuditRecord['findings'][number]['subject'];
  readonly message: string;
  readonly opened: Turn;
  /** `undefined` where it still stands at the end. */
  readonly closed: Turn | undefined;
  /** From the day it came to the day it went, or to the last record; never below 0, whatever the clocks said. */
  readonly days: number;
}

interface Open {
  readonly said: Omit<OpenViolation, 'closed' | 'days'>;
}

/** How long each violation stood, in the order in which they came. */
export function openViolations(records: readonly AuditRecord[]): readonly OpenViolation[] {
  const open = new Map<string, Open>();
  const all: { readonly said: Open['said']; closed: Turn | undefined }[] = [];
  const entries = new Map<Open['said'], (typeof all)[number]>();
  const come = (said: Open['said'], facet: string | null): void => {
    const key = keyOf(said.entry, said.subject, facet);
    if (open.has(key)) return;
    open.set(key, { said });
    const entry = { said, closed: undefined };
    all.push(entry);
    entries.set(said, entry);
  };
  const go = (key: string, turn: Turn): void => {
    const known = open.get(key);
    const entry = known === undefined ? undefined : entries.get(known.said);
    if (entry !== undefined) entry.closed = turn;
    open.delete(key);
  };
  for (const { commit, on, between, findings, renamed } of records) {
    const itself: Turn = { on, commit, by: between?.began === true ? 'before' : 'day or policy' };
    for (const { entry, subject, facet } of between?.fixed ?? []) go(keyOf(entry, subject, facet), itself);
    for (const { facet, ...said } of between?.new ?? []) come({ ...said, opened: itself }, facet);
    const moved = renamed.map(({ entry, from, to }) => {
      const key = keyOf(entry, from.subject, from.facet);
      const known = open.get(key);
      open.delete(key);
      return { known, key: keyOf(entry, to.subject, to.facet) };
    });
    for (const { known, key } of moved) if (known !== undefined) open.set(key, known);
    const turn: Turn = { on, commit, by: 'commit' };
    for (const { about, baselineState, entry, rule, level, subject, facet, message } of findings) {
      if (about === 'change') continue;
      if (baselineState === 'absent') go(keyOf(entry, subject, facet), turn);
      else come({ entry, rule, level, subject, message, opened: turn }, facet);
    }
  }
  const end = records.at(-1)?.on ?? '';
  return all.map(({ said, closed }) => ({
    ...said,
    closed,
    days: Math.max(0, daysBetween(said.opened.on, closed?.on ?? end)),
  }));
}

const keyOf = (entry: string, { kind, name }: OpenViolation['subject'], facet: string | null): string =>
  JSON.stringify([entry, kind, name, facet]);

export interface WaiverHistory {
  readonly waiver: AuditRecord['waivers'][number]['waiver'];
  /** Records in which it let a finding stand. */
  readonly used: readonly AuditRecord[];
  /** Records in which a finding was beyond what it covers. */
  readonly outgrown: readonly AuditRecord[];
  /** Records after its date in which there still was a finding that it had been for. */
  readonly expired: readonly AuditRecord[];
  /** Records in which only the writing of its subject kept it from a finding, and the line to write instead. */
  readonly written: readonly AuditRecord[];
  readonly writeInstead: string | null;
}

type WaiverState = AuditRecord['waivers'][number]['state'];

/** Which waivers were used, which were still wanted after their date, and which only their writing kept from use. */
export function waiversUsed(records: readonly AuditRecord[]): readonly WaiverHistory[] {
  const uses = new Map<
    string,
    {
      readonly waiver: WaiverHistory['waiver'];
      readonly by: Readonly<Record<WaiverState, AuditRecord[]>>;
      writeInstead: string | null;
    }
  >();
  for (const record of records) {
    for (const { waiver, state, writeInstead } of record.waivers) {
      const { rule, name, subject, kind, upTo, from, until, approvedBy } = waiver;
      const key = JSON.stringify([rule, name, subject, kind, upTo, from, until, approvedBy]);
      const known = uses.get(key) ?? {
        waiver,
        by: { used: [], outgrown: [], expired: [], 'written otherwise': [] },
        writeInstead: null,
      };
      uses.set(key, known);
      known.by[state].push(record);
      known.writeInstead = writeInstead ?? known.writeInstead;
    }
  }
  return [...uses.values()].map(({ waiver, by, writeInstead }) => ({
    waiver,
    used: by.used,
    outgrown: by.outgrown,
    expired: by.expired,
    written: by['written otherwise'],
    writeInstead,
  }));
}
