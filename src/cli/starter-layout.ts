/**
 * The files that `ullage new` writes: settings, prices and rules that read, and an estate that is commented out, so that
 * nobody's first branch has to delete it.
 */

import { type Paths, settingsFile } from '../estate/settings.ts';

/** Where the schemas go that editors complete by; nothing of Ullage's own reads them. */
export const editorFolder = '.ullage/schema';

/** The formats that are written by hand, and what they share. */
export const editorSchemas = [
  'common',
  'estate',
  'price-list',
  'procedure',
  'rule-pack',
  'settings',
  'waivers',
] as const;

/** The line by which the YAML language server, and with it most editors, knows the schema of a file. */
const modeline = (schema: (typeof editorSchemas)[number], folder = ''): string =>
  `# yaml-language-server: $schema=${folder.replace(/[^/]+\/?/g, '../')}${editorFolder}/${schema}.json\n`;

/** One file of the layout, and what of it a repository may have already. */
export interface StarterFile {
  readonly kind: 'settings' | 'storage' | 'prices' | 'policies' | 'waivers';
  /** From the top of the repository. */
  readonly path: string;
  readonly text: string;
}

/** What the layout is to fit to. `year` dates the price list. */
export interface StarterChoices {
  readonly year: string;
  readonly currency: string;
  readonly paths: Pick<Paths, 'storage' | 'prices' | 'policies' | 'waivers'>;
}

export const starterLayout = ({ year, currency, paths }: StarterChoices): readonly StarterFile[] => [
  {
    kind: 'settings',
    path: settingsFile,
    text: `${modeline('settings')}# Where things are, the currency of the estate, its month and its sites.
currency: ${currency}
month: 730 h          # or: calendar. How long a month is for prices by the hour.
# Once any site is listed, every server and volume names one; a quota is what the provider lets you hold there.
# sites:
#   first-site:
#     quota: { volumes: 50, size: 10 TiB }
#     attachment-slots: 16                   # how many volumes one server can hold
`,
  },
  {
    kind: 'storage',
    path: `${paths.storage}/example.yaml`,
    text: `${modeline('estate', paths.storage)}# An estate file, as an example: all of it is commented out, so that nothing of it is declared. Write your own beside it
# or in its place; have as many as you like, in any folders below ${paths.storage}/.
#
# existing: true              # for what is there already: nothing in this file is created then; leave it out for what is new
# team: example               # the file's own team and site apply to everything in it that has none
# site: first-site
# servers:
#   files-1:
#     power: running          # running | stopped
#     boot: files-1-root      # the volume it starts from; it needs no attachment below
#     guest: linux-lvm
#     type: small             # a server type in the price list, if the server is billed
# volumes:
#   files-1-root: { size: 20 GiB, tier: standard, file-system: { mount: /, type: ext4 } }
#   shared-1: { size: 40 GiB, tier: standard }
#   shared-2: { size: 40 GiB, tier: standard }
# attachments:
#   - { volume: shared-1, server: files-1 }
#   - { volume: shared-2, server: files-1 }
# volume-groups:
#   shared:
#     extent: 4 MiB
#     members: [shared-1, shared-2]
#     file-systems:
#       /srv/shared: { size: 70 GiB, type: xfs }
# A deletion leaves its reason and its evidence behind:
# retired:
#   - { volume: shared-0, on: ${year}-02-01, reason: superseded, backup: vault/shared-0, backed-up: ${year}-01-31 }
`,
  },
  {
    kind: 'prices',
    path: `${paths.prices}/${year}.yaml`,
    text: `${modeline('price-list', paths.prices)}# What each tier and server type costs, from a date on. These figures are made up: replace them with your provider's.
# Amounts are in quotes, so that nothing rounds them.
from: ${year}-01-01
currency: ${currency}
tiers:
  standard: { rate: "0.10", per: GiB-month, minimum: 1 GiB, maximum: 16 TiB, step: 1 GiB }
server-types:                     # an hour
  small: { running: "0.03", stopped: "0.004" }
`,
  },
  {
    kind: 'policies',
    path: `${paths.policies}/storage.yaml`,
    text: `${modeline('rule-pack', paths.policies)}# The rules of this repository. \`ullage rules\` explains each of them.
use: [starter]                # ships with Ullage; what follows adds to it, or overrides it by name
rules:
  # - { name: example-limit, rule: max-monthly-spend, where: { teams: [example] }, limit: "50.00", warn-from: 0.8 }
  - { name: group-headroom, rule: minimum-headroom, of: volume-group, share: 0.05 }
`,
  },
  {
    kind: 'waivers',
    path: `${paths.waivers}/README.md`,
    text: `# Waivers

A waiver allows one rule to be broken for one subject, for a limited time, with a reason and a name. Each goes into a YAML file
in this folder and is merged in a change of its own before the change it is for:

    ${modeline('waivers', paths.waivers).trim()}
    waivers:
      - rule: growth-step
        subject: shared-1
        reason: one-off import
        approved-by: the person responsible
        from: ${year}-05-01
        until: ${year}-06-01
`,
  },
];
