/** An estate to be drawn: each server's volumes, the groups on them and the file systems on those, by size. */
import { byText } from '../../base/order.ts';
import type { LayerAccount } from '../../capacity/layers.ts';
import { type Estate, type Subject, subjectKey, type Volume } from '../../estate/estate.ts';
import { exactSize } from '../../estate/size.ts';
import { showMeasure } from './amounts.ts';
import { sentence } from './blocks.ts';
import type { Section } from './model.ts';
import type { DrawnThing, EstatePart, EstateServer, EstateSite, PartOfThing } from './picture.ts';

export interface EstateShown {
  readonly estate: Estate;
  readonly accounts: readonly LayerAccount[];
  /** What the branch touches, and of what a survey shows otherwise; by `subjectKey`. */
  readonly touched: ReadonlySet<string>;
  readonly disputed: ReadonlySet<string>;
}

export const keysOf = (those: readonly { readonly subject: Subject }[]): ReadonlySet<string> =>
  new Set(those.map(({ subject }) => subjectKey(subject)));

/** Nothing where nothing is declared. */
export function estateSection(shown: EstateShown): readonly Section[] {
  const sites = sitesOf(shown);
  if (sites.length === 0) return [];
  return [
    {
      title: 'The estate, drawn by size',
      yields: 4,
      blocks: [
        sentence(
          'Of each server, volumes are in the first row, volume groups in the second and file systems in the third, each above what lies on it.',
        ),
        { kind: 'picture', picture: { kind: 'estate', sites } },
      ],
    },
  ];
}

function sitesOf(shown: EstateShown): readonly EstateSite[] {
  const { estate } = shown;
  const accounts = new Map(shown.accounts.map((each) => [`${each.carrier.kind} ${each.carrier.name}`, each]));
  const sites = new Map<string, { servers: EstateServer[]; unattached: EstateServer | undefined }>();
  const siteOf = (site = 'no site') => {
    const known = sites.get(site) ?? { servers: [], unattached: undefined };
    sites.set(site, known);
    return known;
  };
  for (const server of estate.servers.values()) {
    const held = (estate.held.get(server.name) ?? []).flatMap(
      ({ volume }) => estate.volumes.get(volume) ?? [],
    );
    const note = [server.team, server.power].filter((each) => each !== undefined).join(', ');
    siteOf(server.site).servers.push(serverOf(server.name, note, held, shown, accounts));
  }
  const unattached = new Map<string | undefined, Volume[]>();
  for (const volume of estate.detached.values()) {
    const those = unattached.get(volume.site);
    if (those === undefined) unattached.set(volume.site, [volume]);
    else those.push(volume);
  }
  for (const [site, volumes] of unattached) {
    siteOf(site).unattached = serverOf('unattached', '', volumes, shown, accounts);
  }
  return [...sites]
    .sort(([a], [b]) => byText(a, b))
    .map(([name, { servers, unattached }]) => ({
      name,
      servers: servers.sort((a, b) =>
        a.size === b.size ? byText(a.name, b.name) : a.size < b.size ? 1 : -1,
      ),
      unattached,
    }));
}

type Accounts = ReadonlyMap<string, LayerAccount>;

function serverOf(
  name: string,
  note: string,
  held: readonly Volume[],
  shown: EstateShown,
  accounts: Accounts,
): EstateServer {
  const { estate, touched, disputed } = shown;
  const groupName = (volume: Volume): string => estate.groupOf.get(volume.name)?.name ?? '';
  // Members of one group side by side; what is in none comes last.
  const volumes = held.toSorted(
    (a, b) =>
      Number(groupName(a) === '') - Number(groupName(b) === '') ||
      byText(groupName(a), groupName(b)) ||
      byText(a.name, b.name),
  );
  const marked = (kind: Subject['kind'], thing: string): Pick<DrawnThing, 'touched' | 'disputed'> => ({
    touched: touched.has(subjectKey({ kind, name: thing })),
    disputed: disputed.has(subjectKey({ kind, name: thing })),
  });
  let at = 0n;
  const drawn: DrawnThing[] = [];
  const groups = new Map<string, { readonly from: bigint; size: bigint }>();
  const systems: DrawnThing[] = [];
  for (const volume of volumes) {
    const group = groupName(volume);
    const account = accounts.get(`volume ${volume.name}`);
    const isIdle = group === '' && account === undefined;
    drawn.push({
      name: volume.name,
      words: `${exactSize(volume.size)} ${volume.tier}${isIdle ? ', in no file system' : ''}`,
      from: at,
      size: volume.size,
      parts: isIdle ? [{ part: 'idle', amount: volume.size }] : [],
      ...marked('volume', volume.name),
    });
    if (group !== '') {
      const known = groups.get(group) ?? { from: at, size: 0n };
      known.size += volume.size;
      groups.set(group, known);
    } else if (account !== undefined) systems.push(...systemsOf(account, at, volume.size, marked));
    at += volume.size;
  }
  const carriers = [...groups].map(([group, { from, size }]): DrawnThing => {
    const account = accounts.get(`volume-group ${group}`);
    if (account !== undefined) systems.push(...systemsOf(account, from, size, marked));
    const idle =
      account === undefined || account.notGiven <= 0n
        ? ''
        : `, ${showMeasure('bytes', account.notGiven)} unallocated`;
    const elsewhere = account !== undefined && account.bought > size ? ', partly on other servers' : '';
    return {
      name: group,
      words: `${showMeasure('bytes', account?.bought ?? size)}${idle}${elsewhere}`,
      from,
      size,
      parts:
        account === undefined
          ? []
          : scaled(
              [
                { part: 'kept', amount: account.kept },
                { part: 'given', amount: account.given },
                { part: 'idle', amount: account.notGiven },
              ],
              account.bought,
              size,
            ),
      ...marked('volume-group', group),
    };
  });
  const laid = systems.sort((a, b) => (a.from < b.from ? -1 : a.from > b.from ? 1 : 0));
  return { name, note, size: at, rows: [drawn, carriers, laid], ...marked('server', name) };
}

/** What lies on a carrier, of which so much is on this server, behind what the carrier keeps for itself. */
function systemsOf(
  { bought, kept, devices }: LayerAccount,
  from: bigint,
  here: bigint,
  marked: (kind: Subject['kind'], name: string) => Pick<DrawnThing, 'touched' | 'disputed'>,
): readonly DrawnThing[] {
  const share = (amount: bigint): bigint => (bought === 0n ? 0n : (amount * here) / bought);
  let at = from + share(kept);
  return devices.map((account) => {
    const { system, device, usage } = account;
    const size = share(device);
    const begin = at;
    at += size;
    const used = usage?.last.used;
    return {
      name: system.mount,
      words: `${exactSize(system.size)} ${system.type}${used === undefined ? '' : `, ${showMeasure('bytes', used)} used`}`,
      from: begin,
      size,
      parts: scaled(partsOf(account), device, size),
      ...marked('file-system', system.name),
    };
  });
}

function partsOf(account: LayerAccount['devices'][number]): readonly EstatePart[] {
  if (account.kind === 'unknown') return [{ part: 'undetermined', amount: account.device }];
  const { overhead, reserved, forFiles, usage } = account;
  const used = usage?.last.used;
  return [
    { part: 'kept', amount: overhead + reserved },
    ...(used === undefined
      ? [{ part: 'usable', amount: forFiles } as const]
      : [{ part: 'used', amount: used } as const, { part: 'free', amount: forFiles - used } as const]),
  ];
}

const scaled = (
  parts: readonly { readonly part: PartOfThing; readonly amount: bigint }[],
  whole: bigint,
  to: bigint,
): readonly EstatePart[] =>
  parts.flatMap(({ part, amount }) =>
    amount <= 0n || whole === 0n ? [] : [{ part, amount: (amount * to) / whole }],
  );
