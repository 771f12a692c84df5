/** One valid file of every format, with nearly every key that the format has, for mutations to begin from. */
import type { Outcome } from '../../src/base/problem.ts';
import { readEstatePart } from '../../src/estate/part.ts';
import { readSettings } from '../../src/estate/settings.ts';
import { readRulePack } from '../../src/policy/pack.ts';
import { readWaivers } from '../../src/policy/waiver.ts';
import { readPriceList } from '../../src/price/price-list.ts';
import type { ReadDocument } from '../../src/read/document.ts';
import { readProcedures } from '../../src/runbook/procedure-file.ts';

export type SampleFormat = 'estate' | 'price-list' | 'rule-pack' | 'settings' | 'waivers' | 'procedure';

export interface Sample {
  readonly format: SampleFormat;
  readonly path: string;
  readonly text: string;
  readonly read: (document: ReadDocument) => Outcome<unknown>;
}

export const samples: readonly Sample[] = [
  {
    format: 'settings',
    path: 'ullage.yaml',
    read: readSettings,
    text: `
currency: EUR
month: calendar
paths: { storage: storage, prices: prices, policies: policies, waivers: waivers, readings: readings }
sites:
  north-quay: { quota: { volumes: 200, size: 40 TiB }, attachment-slots: 32 }
  south-quay: { quota: { volumes: 100, size: 10 TiB }, attachment-slots: 16 }
teams: [soundings, imagery, ledger]
`,
  },
  {
    format: 'estate',
    path: 'storage/imagery.yaml',
    read: readEstatePart,
    text: `
team: imagery
site: north-quay
labels: { purpose: scans, kept: 'yes' }
servers:
  plate-scanner: { power: running, boot: plate-scanner-root, guest: linux-lvm, type: small, iops: 300, attachment-slots: 16, labels: { room: "2" } }
  plate-archive: { id: "4711", power: stopped, team: ledger, site: north-quay }
  old-scanner: { existing: true, power: stopped, formerly: first-scanner }
volumes:
  plate-scanner-root: { size: 50 GiB, tier: steady }
  plates-1: { size: 40 GiB, tier: bulk, protected: true, id: 6f1c2b0e-9d1a-4f0e-8a55-2f6f0c1d7e11 }
  plates-2: { size: 40 GiB, tier: bulk, labels: { purpose: plates } }
  plates-3: { size: 40 GiB, tier: bulk, existing: true }
  master-plates: { size: 100 GiB, tier: brisk, shareable: true, owner: head of imagery, reason: travels between servers, retain-until: 2027-03-31 }
  logs: { size: 20 GiB, tier: bulk, team: ledger, site: north-quay, formerly: old-logs, file-system: { mount: /var/log, type: ext4, size: 15 GiB, existing: true } }
attachments:
  - { volume: plates-1, server: plate-scanner }
  - { volume: plates-2, server: plate-scanner }
  - { volume: plates-3, server: plate-scanner }
  - { volume: logs, server: plate-scanner, existing: true }
volume-groups:
  plates:
    extent: 64 MiB
    members: [plates-1, plates-2, plates-3]
    layout: striped
    stripes: 3
    team: imagery
    labels: { purpose: plates }
    file-systems:
      /plates: { size: 100 GiB, type: xfs, existing: true, reverse-map: true }
      /scans: { size: 5 GiB, type: ext4, reserve: 0.01, block-size: 4 KiB, inode-ratio: 16 KiB }
retired:
  - { volume: plates-0, on: 2026-11-20, reason: superseded by plates-1, backup: vault/plates-0, backed-up: 2026-11-19 }
  - { file-system: "plates:/old", on: 2026-11-20, reason: nobody reads it }
`,
  },
  {
    format: 'price-list',
    path: 'prices/2026.yaml',
    read: readPriceList,
    text: `
from: 2026-01-01
currency: EUR
tiers:
  bulk: { rate: "0.045", per: GiB-month, minimum: 1 GiB, maximum: 16 TiB, step: 1 GiB, iops-per-gib: 3, iops-maximum: 16000, minimum-billed: 10 GiB }
  steady: { rate: "0.10", per: GB-month, servers-a-volume: 2 }
  brisk: { per: GiB-month, flat: "1.50", bands: [ { up-to: 1 TiB, rate: "0.25" }, { rate: "0.22" } ] }
server-types:
  small: { running: "0.031", stopped: "0.004" }
`,
  },
  {
    format: 'rule-pack',
    path: 'policies/storage.yaml',
    read: readRulePack,
    text: `
use: [starter]
rules:
  - { name: imagery-limit, rule: max-monthly-spend, level: error, where: { teams: [imagery], sites: [north-quay] }, limit: "120.00", warn-from: 0.8 }
  - { name: each-team, rule: max-monthly-spend, each: team, limit: "500.00", from: 2026-01-01, until: 2026-12-31 }
  - { rule: minimum-headroom, level: error, of: volume-group, share: 0.01 }
  - { rule: growth-step, level: warning, times: 4, by: 2 TiB }
  - { rule: naming, level: note, volume: "^[a-z0-9-]+$", server: "^[a-z0-9-]+$", mount: "^/" }
  - { name: owners, rule: shape, of: volume, schema: { type: object, properties: { size: { type: object } }, required: [name] } }
  - { rule: freeze, from: 2026-12-20, until: 2027-01-03, reason: the year's end }
  - { rule: destructive-changes-few, at-most: 3 }
  - { rule: no-shrink, enabled: true }
`,
  },
  {
    format: 'waivers',
    path: 'waivers/2026.yaml',
    read: readWaivers,
    text: `
waivers:
  - { rule: growth-step, subject: plates-1, kind: volume, reason: one-off import of the spring survey, approved-by: head of imagery, from: 2026-05-01, until: 2027-06-01 }
  - { rule: imagery-limit, subject: imagery, reason: agreed in May, approved-by: head of imagery, from: 2026-05-01, until: 2027-06-01 }
`,
  },
  {
    format: 'procedure',
    path: 'procedures/nightjar.yaml',
    read: readProcedures,
    text: `
guest: nightjar
like: linux-lvm
actions:
  see-size: { does: "Look again until {volume} has {size}.", why: It keeps the old size., seen: "{size}", back: Nothing to step back from. }
  grow-mounted:
    commands:
      - { types: [ext4, xfs], run: [grow, [--type, "{type}"], "{device}"], from: grow(8) }
      - { write: "1", into: "/sys/{device}/size" }
  remove-group: { cautions: ["Ask the harbour master of {group}."] }
`,
  },
];
