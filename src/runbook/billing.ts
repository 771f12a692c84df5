/** What billing does from a step on: an order of steps is an order of costs, too. */
import { baseName, type Renames } from '../change/renames.ts';
import type { Estate } from '../estate/estate.ts';
import type { EstateCost } from '../price/cost.ts';
import type { CostLine } from '../price/line.ts';
import type { Money } from '../price/money.ts';
import type { Step } from './step.ts';

/** Amounts are for a month, in the currency that the two costs have. */
export type Billing =
  | { readonly kind: 'begins'; readonly name: string; readonly monthly: Money }
  | { readonly kind: 'changes'; readonly name: string; readonly from: Money; readonly monthly: Money }
  | { readonly kind: 'ends'; readonly name: string; readonly monthly: Money }
  /** Of a volume that no server has any more. */
  | { readonly kind: 'goes on'; readonly name: string; readonly monthly: Money };

interface Billed {
  readonly head: Estate;
  readonly renames: Pick<Renames, 'servers' | 'volumes'>;
  /** Main as it is, and as it is to be, at the same prices. */
  readonly before: EstateCost;
  readonly after: EstateCost;
}

/** By the number of the step; a step that billing does not see has none. */
export function billingOf(steps: readonly Step[], billed: Billed): ReadonlyMap<number, Billing> {
  const found = new Map<number, Billing>();
  // What is changed in several steps has its new price once the last of them is done.
  const last = new Map<string, number>();
  for (const step of steps) {
    const changed = changedBy(step);
    if (changed !== undefined) last.set(`${changed.kind} ${changed.name}`, step.number);
  }
  for (const step of steps) {
    const billing = billingFrom(step, billed, last);
    if (billing !== undefined) found.set(step.number, billing);
  }
  return found;
}

/** Of what a step changes the price, where it does not create or delete it. */
function changedBy({ procedure, words, carriesOut }: Step) {
  const { volume = '', server = '' } = words;
  switch (procedure) {
    case 'grow-volume':
    case 'move-tier':
      return { kind: 'volumes', name: volume } as const;
    case 'change-server-type':
      return { kind: 'servers', name: server } as const;
    case 'stop-server':
    case 'start-server':
      // A server that only stands still on the way is as it was when the month is over.
      return carriesOut.length > 0 ? ({ kind: 'servers', name: server } as const) : undefined;
    default: // billing does not see the other actions
      return undefined;
  }
}

function billingFrom(
  step: Step,
  { head, renames, before, after }: Billed,
  last: ReadonlyMap<string, number>,
): Billing | undefined {
  const { volume = '', server = '' } = step.words;
  const changed = changedBy(step);
  if (changed !== undefined) {
    const { kind, name } = changed;
    return last.get(`${kind} ${name}`) === step.number
      ? changes(name, before[kind].get(baseName(renames[kind], name)), after[kind].get(name))
      : undefined;
  }
  switch (step.procedure) {
    case 'create-volume':
    case 'create-smaller':
    case 'copy-across':
      return changes(volume, undefined, after.volumes.get(volume));
    case 'create-server':
      return changes(server, undefined, after.servers.get(server));
    case 'delete-volume':
      return changes(volume, before.volumes.get(volume), undefined);
    case 'delete-old':
      return changes(volume, before.volumes.get(baseName(renames.volumes, volume)), undefined);
    case 'delete-server':
      return changes(server, before.servers.get(server), undefined);
    case 'detach': {
      const line = after.volumes.get(volume);
      const isHeld = (head.holders.get(volume) ?? []).length > 0;
      return line === undefined || isHeld
        ? undefined
        : { kind: 'goes on', name: volume, monthly: line.monthly };
    }
    default: // billing does not see the other actions
      return undefined;
  }
}

/** From one line to another: what has none is not billed. */
function changes(name: string, was: CostLine | undefined, now: CostLine | undefined): Billing | undefined {
  if (was === undefined)
    return now === undefined ? undefined : { kind: 'begins', name, monthly: now.monthly };
  if (now === undefined) return { kind: 'ends', name, monthly: was.monthly };
  return was.monthly.equals(now.monthly)
    ? undefined
    : { kind: 'changes', name, from: was.monthly, monthly: now.monthly };
}
