/**
 * The moves by which an author might slip out of a rule. Each works on what a branch declares, whatever the rule, so
 * that a new rule meets all of them.
 */
import { parse, stringify } from 'yaml';
import type { Files } from '../estate/builder.ts';

type Values = Readonly<Record<string, unknown>>;

/** One estate file as it is parsed. */
export interface EstateFile extends Values {
  readonly servers?: Readonly<Record<string, Values | null>>;
  readonly volumes?: Readonly<Record<string, Values>>;
  readonly attachments?: readonly { readonly volume: string; readonly server: string }[];
  readonly 'volume-groups'?: Readonly<Record<string, Values>>;
}

/** What a branch has, as far as moves alter it. */
export interface Branch {
  /** Estate files by path. */
  readonly estate: Readonly<Record<string, EstateFile>>;
  /** Files besides, laid over main's. */
  readonly files: Files;
}

export interface Told {
  readonly main: EstateFile;
  /** The entries of main's rule pack, in YAML's flow or block style. */
  readonly entries: readonly string[];
}

/** One way in which a move can be made. */
export interface Moved {
  /** Such as `volumes plates-1`; told where it fails. */
  readonly what: string;
  readonly branch: Branch;
}

/** Every way in which a move can be made in a branch; none where there is nothing that it could be made with. */
export type Move = (branch: Branch, told: Told) => readonly Moved[];

const isValues = (value: unknown): value is Values =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

export function parseEstate(text: string): EstateFile {
  const parsed: unknown = parse(text);
  if (parsed === null) return {};
  if (!isValues(parsed)) throw new Error('no estate file');
  return parsed;
}

/** Each value written out where it stands: files may hold no aliases. */
const written = (value: unknown): string => stringify(value, { aliasDuplicateObjects: false });

export const textOf = (file: EstateFile): string => written(file);

const kinds = ['servers', 'volumes', 'volume-groups'] as const;

type Kind = (typeof kinds)[number];

interface Thing {
  readonly file: string;
  readonly kind: Kind;
  readonly name: string;
}

const thingsOf = ({ estate }: Branch): readonly Thing[] =>
  Object.entries(estate).flatMap(([file, doc]) =>
    kinds.flatMap((kind) => Object.keys(doc[kind] ?? {}).map((name) => ({ file, kind, name }))),
  );

const withFile = (branch: Branch, file: string, doc: EstateFile): Branch => ({
  ...branch,
  estate: { ...branch.estate, [file]: doc },
});

/** The branch with more said of one thing. */
function saying(branch: Branch, { file, kind, name }: Thing, more: Values): Branch {
  const doc = branch.estate[file] ?? {};
  const things = doc[kind] ?? {};
  return withFile(branch, file, { ...doc, [kind]: { ...things, [name]: { ...things[name], ...more } } });
}

const each =
  (applies: (thing: Thing) => boolean, more: Values): Move =>
  (branch) =>
    thingsOf(branch)
      .filter(applies)
      .map((thing) => ({ what: `${thing.kind} ${thing.name}`, branch: saying(branch, thing, more) }));

const all =
  (applies: (thing: Thing) => boolean, more: Values): Move =>
  (branch) => {
    const things = thingsOf(branch).filter(applies);
    if (things.length < 2) return [];
    return [{ what: 'all', branch: things.reduce((made, thing) => saying(made, thing, more), branch) }];
  };

const always = (): boolean => true;

const isVolume = ({ kind }: Thing): boolean => kind === 'volumes';

const hasSite = ({ kind }: Thing): boolean => kind !== 'volume-groups';

const followed = (names: unknown, from: string, to: string): unknown =>
  Array.isArray(names) ? names.map((name: unknown) => (name === from ? to : name)) : names;

/** The branch with a thing under another name, wherever it is named. */
function renamed(branch: Branch, { file, kind, name }: Thing, to: string, formerly: boolean): Branch {
  const doc = branch.estate[file] ?? {};
  const things = Object.entries(doc[kind] ?? {}).map(([key, value]) =>
    key === name ? [to, { ...value, ...(formerly ? { formerly: name } : {}) }] : [key, value],
  );
  const moved = withFile(branch, file, { ...doc, [kind]: Object.fromEntries(things) });
  const estate = Object.entries(moved.estate).map(([path, each]): [string, EstateFile] => [
    path,
    {
      ...each,
      ...(each.attachments === undefined
        ? {}
        : {
            attachments: each.attachments.map(({ volume, server }) => ({
              volume: kind === 'volumes' && volume === name ? to : volume,
              server: kind === 'servers' && server === name ? to : server,
            })),
          }),
      ...(kind === 'volumes' && each.servers !== undefined
        ? {
            servers: Object.fromEntries(
              Object.entries(each.servers).map(([server, value]) => [
                server,
                value?.boot === name ? { ...value, boot: to } : value,
              ]),
            ),
          }
        : {}),
      ...(kind === 'volumes' && each['volume-groups'] !== undefined
        ? {
            'volume-groups': Object.fromEntries(
              Object.entries(each['volume-groups']).map(([group, value]) => [
                group,
                { ...value, members: followed(value.members, name, to) },
              ]),
            ),
          }
        : {}),
    },
  ]);
  return { ...moved, estate: Object.fromEntries(estate) };
}

const otherName =
  (formerly: boolean): Move =>
  (branch, { main }) =>
    thingsOf(branch)
      // What main does not have can carry on no old name.
      .filter(({ kind, name }) => main[kind]?.[name] !== undefined)
      .map((thing) => ({
        what: `${thing.kind} ${thing.name}`,
        branch: renamed(branch, thing, `${thing.name}x`, formerly),
      }));

const otherMount: Move = (branch) =>
  thingsOf(branch).flatMap((thing): readonly Moved[] => {
    const value = branch.estate[thing.file]?.[thing.kind]?.[thing.name];
    const what = `${thing.kind} ${thing.name}`;
    const own = value?.['file-system'];
    if (isValues(own))
      return [{ what, branch: saying(branch, thing, { 'file-system': { ...own, mount: `${own.mount}x` } }) }];
    const systems = value?.['file-systems'];
    if (!isValues(systems)) return [];
    const moved = Object.entries(systems).map(([mount, system]) => [`${mount}x`, system]);
    return [{ what, branch: saying(branch, thing, { 'file-systems': Object.fromEntries(moved) }) }];
  });

/** What lies there already, or what is new, wherever a file may say so. */
const declared =
  (existing: boolean): Move =>
  (branch) => [
    ...thingsOf(branch).flatMap((thing): readonly Moved[] => {
      const value = branch.estate[thing.file]?.[thing.kind]?.[thing.name];
      const what = `${thing.kind} ${thing.name}`;
      const own = value?.['file-system'];
      const systems = value?.['file-systems'];
      return [
        { what, branch: saying(branch, thing, { existing }) },
        ...(isValues(own)
          ? [
              {
                what: `${what} file system`,
                branch: saying(branch, thing, { 'file-system': { ...own, existing } }),
              },
            ]
          : []),
        ...(isValues(systems)
          ? Object.entries(systems).map(([mount, system]) => ({
              what: `${what} ${mount}`,
              branch: saying(branch, thing, {
                'file-systems': { ...systems, [mount]: { ...(isValues(system) ? system : {}), existing } },
              }),
            }))
          : []),
      ];
    }),
    ...Object.entries(branch.estate).flatMap(([file, doc]): readonly Moved[] => [
      { what: `all of ${file}`, branch: withFile(branch, file, { existing, ...doc }) },
      ...(doc.attachments ?? []).map((_, index) => ({
        what: `attachment ${index}`,
        branch: withFile(branch, file, {
          ...doc,
          attachments: (doc.attachments ?? []).map((each, at) =>
            at === index ? { ...each, existing } : each,
          ),
        }),
      })),
    ]),
  ];

/** Each thing of a branch marked by itself. */
const declaredEach: Move = (branch) => [
  {
    what: 'one by one',
    branch: thingsOf(branch).reduce((made, thing) => saying(made, thing, { existing: true }), branch),
  },
];

const defaultsOf = ({ team, site, labels }: EstateFile): Values => ({
  ...(team === undefined ? {} : { team }),
  ...(site === undefined ? {} : { site }),
  ...(labels === undefined ? {} : { labels }),
});

const otherFile: Move = ({ estate, files }) => [
  {
    what: 'as they are',
    branch: {
      estate: Object.fromEntries(
        Object.entries(estate).map(([path, doc]) => [path.replace('.yaml', '-2.yaml'), doc]),
      ),
      files,
    },
  },
];

const ownFile: Move = (branch) =>
  thingsOf(branch).map((thing) => {
    const doc = branch.estate[thing.file] ?? {};
    const { [thing.name]: own, ...rest } = doc[thing.kind] ?? {};
    const left = withFile(branch, thing.file, { ...doc, [thing.kind]: rest });
    const file = { ...defaultsOf(doc), [thing.kind]: { [thing.name]: own ?? {} } };
    return {
      what: `${thing.kind} ${thing.name}`,
      branch: withFile(left, `storage/own-${thing.name}.yaml`, file),
    };
  });

const reversed = (value: unknown): unknown => {
  if (!isValues(value)) return value;
  return Object.fromEntries(
    Object.entries(value)
      .reverse()
      .map(([key, below]) => [key, reversed(below)]),
  );
};

const otherOrder: Move = (branch) => [
  {
    what: 'keys, attachments and members from last to first',
    branch: {
      ...branch,
      estate: Object.fromEntries(
        Object.entries(branch.estate).map(([path, doc]): [string, EstateFile] => {
          const turned = reversed(doc);
          const { attachments } = doc;
          return [
            path,
            {
              ...(isValues(turned) ? turned : {}),
              ...(attachments === undefined ? {} : { attachments: [...attachments].reverse() }),
            },
          ];
        }),
      ),
    },
  },
];

/** A waiver for whatever the branch declares, or main did. */
const ownWaivers: Move = (branch, { main, entries }) => {
  const rules = entries.flatMap((entry) => {
    const parsed: unknown = parse(entry);
    return isValues(parsed) ? [parsed.name ?? parsed.rule] : [];
  });
  const names = new Set([
    ...thingsOf(branch).map(({ name }) => name),
    ...kinds.flatMap((kind) => Object.keys(main[kind] ?? {})),
    'head',
    'imagery',
    'estate',
    'north-quay',
  ]);
  const waivers = rules.flatMap((rule) =>
    [...names].map((subject) => ({
      rule,
      subject,
      reason: 'none',
      'approved-by': 'the author',
      from: '2026-01-01',
      until: '2026-12-31',
    })),
  );
  return [
    {
      what: 'for all',
      branch: { ...branch, files: { ...branch.files, 'waivers/own.yaml': written({ waivers }) } },
    },
  ];
};

const policies = 'policies/storage.yaml';

const ownPolicy =
  (what: string, altered: (entry: Values) => Values | undefined): Move =>
  (branch, { entries }) => {
    const rules = entries.flatMap((entry) => {
      const parsed: unknown = parse(entry);
      return isValues(parsed) ? (altered(parsed) ?? []) : [];
    });
    return [{ what, branch: { ...branch, files: { ...branch.files, [policies]: written({ rules }) } } }];
  };

const cheaper: Move = (branch) => [
  {
    what: 'at a thousandth',
    branch: {
      ...branch,
      files: {
        ...branch.files,
        'prices/own.yaml': `from: 2026-11-01
currency: EUR
tiers:
  bulk: { rate: "0.00001", per: GiB-month }
  steady: { rate: "0.00001", per: GiB-month }
  brisk: { rate: "0.00001", per: GiB-month }
server-types:
  small: { running: "0", stopped: "0" }
`,
      },
    },
  },
];

/** A limit with room for everything, for whoever is said to answer for it. */
const ownLimit: Move = (branch, { entries }) => {
  const own = branch.files[policies];
  const altered: unknown = own === undefined ? undefined : parse(own);
  const rules = isValues(altered) ? altered.rules : entries.map((entry): unknown => parse(entry));
  const limit = { name: 'own', rule: 'max-monthly-spend', limit: '1000000.00' };
  const files = {
    ...branch.files,
    [policies]: written({ rules: [...(Array.isArray(rules) ? rules : []), limit] }),
  };
  return [{ what: 'a million', branch: { ...branch, files } }];
};

export const moves: Readonly<Record<string, Move>> = {
  'another team on one thing': each(always, { team: 'ledger' }),
  'another team on all': all(always, { team: 'ledger' }),
  'another site on one thing': each(hasSite, { site: 'east-quay' }),
  'another site on all': all(hasSite, { site: 'east-quay' }),
  'another tier on one volume': each(isVolume, { tier: 'brisk' }),
  'another tier on all': all(isVolume, { tier: 'brisk' }),
  'another label on one thing': each(always, { labels: { grade: 'z' } }),
  'another label on all': all(always, { labels: { grade: 'z' } }),
  'another name, with formerly': otherName(true),
  'another name, without': otherName(false),
  'another mount point': otherMount,
  'existing: true': declared(true),
  'existing: true on each': declaredEach,
  'existing: false': declared(false),
  'another file for all': otherFile,
  'a file of its own': ownFile,
  'another order': otherOrder,
  'a waiver brought along': ownWaivers,
  'the rule left out': ownPolicy('all', () => undefined),
  'the rule turned off': ownPolicy('all', (entry) => ({ ...entry, enabled: false })),
  'the rule made a note': ownPolicy('all', (entry) => ({ ...entry, level: 'note' })),
  'the rule for somebody else': ownPolicy('all', (entry) => ({ ...entry, where: { teams: ['nobody'] } })),
  'a lower price brought along': cheaper,
  'a limit brought along': ownLimit,
};
