/** A large estate to measure on: so many volumes in so many files, and what a branch changes in them. */

export interface Size {
  readonly volumes: number;
  readonly files: number;
}

/** One file: servers with a boot volume, data volumes and a group of three each; five volumes a server. */
export function estateFile(file: number, volumes: number): string {
  const servers: string[] = [];
  const declared: string[] = [];
  const attachments: string[] = [];
  const groups: string[] = [];
  for (let server = 0; server * 5 < volumes; server++) {
    const name = `f${file}-s${server}`;
    servers.push(`  ${name}: { power: running, boot: ${name}-root, guest: linux-lvm }`);
    declared.push(`  ${name}-root: { size: 20 GiB, tier: steady }`);
    const members = [1, 2, 3].map((number) => `${name}-d${number}`);
    for (const member of [...members, `${name}-log`]) {
      const log = member.endsWith('log') ? `\n    file-system: { mount: /var/log, type: ext4 }` : '';
      declared.push(`  ${member}:\n    size: 40 GiB\n    tier: bulk\n    labels: { purpose: measure }${log}`);
      attachments.push(`  - { volume: ${member}, server: ${name} }`);
    }
    groups.push(
      `  ${name}-g:\n    extent: 64 MiB\n    members: [${members.join(', ')}]\n    file-systems:\n      /srv/${name}: { size: 107 GiB, type: xfs }`,
    );
  }
  return [
    `team: team-${file % 7}`,
    'site: north-quay',
    'servers:',
    ...servers,
    'volumes:',
    ...declared,
    'attachments:',
    ...attachments,
    'volume-groups:',
    ...groups,
    '',
  ].join('\n');
}

export const fixed: Files = {
  'ullage.yaml':
    'currency: EUR\nsites:\n  north-quay: { quota: { volumes: 1000000, size: 4000 TiB }, attachment-slots: 32 }\n',
  'prices/2026.yaml':
    'from: 2026-01-01\ncurrency: EUR\ntiers:\n  bulk: { rate: "0.045", per: GiB-month }\n  steady: { rate: "0.10", per: GiB-month }\n',
  'policies/storage.yaml':
    'use: [starter]\nrules:\n  - { name: whole, rule: max-monthly-spend, limit: "1000000.00" }\n  - { name: teams, rule: max-monthly-spend, each: team, limit: "500000.00" }\n',
};

/** Path -> what the file holds. */
export type Files = Readonly<Record<string, string>>;

/** The whole estate. */
export function estateFiles({ volumes, files }: Size): Files {
  const texts = Array.from({ length: files }, (_each, file) => estateFile(file, volumes / files));
  return { ...fixed, ...Object.fromEntries(texts.map((text, file) => [`storage/e${file}.yaml`, text])) };
}

/** The files that a branch alters: the first volume of each is grown. */
export function grown(main: Files, changed: number): Files {
  const paths = Object.keys(main).filter((path) => path.startsWith('storage/'));
  return Object.fromEntries(
    paths.slice(0, changed).map((path) => [path, main[path]?.replace('size: 40 GiB', 'size: 60 GiB') ?? '']),
  );
}
