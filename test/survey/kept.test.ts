/** No secret and no personal datum: what a survey may hold, key by key, and what is planted and must not be in it. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readGathered } from '../../src/survey/gathered.ts';
import { surveyAsText, surveyOf } from '../../src/survey/survey-of.ts';
import { gatherOn } from './server.ts';

/** Every key that a schema lets a file have, with those above it. */
function keysOf(schema: unknown, root: unknown, above = ''): readonly string[] {
  if (typeof schema !== 'object' || schema === null) return [];
  if ('$ref' in schema && typeof schema.$ref === 'string') {
    const name = /^#\/\$defs\/(.*)$/.exec(schema.$ref)?.[1];
    return name === undefined ? [] : keysOf(definition(root, name), root, above);
  }
  const own = 'properties' in schema && typeof schema.properties === 'object' ? schema.properties : null;
  const properties = Object.entries(own ?? {}).flatMap(([key, each]) => {
    const path = above === '' ? key : `${above}.${key}`;
    return [path, ...keysOf(each, root, path)];
  });
  if (
    'properties' in schema &&
    (!('additionalProperties' in schema) || schema.additionalProperties !== false)
  ) {
    throw new Error(`${above} may hold any key`);
  }
  const open = 'propertyNames' in schema ? [`${above}.*`] : [];
  return [...properties, ...open, ...('items' in schema ? keysOf(schema.items, root, above) : [])];
}

function definition(root: unknown, name: string): unknown {
  const all = typeof root === 'object' && root !== null && '$defs' in root ? root.$defs : undefined;
  return typeof all === 'object' && all !== null ? Reflect.get(all, name) : undefined;
}

it('a survey keeps these keys and no other', () => {
  const schema: unknown = JSON.parse(
    readFileSync(new URL('../../schema/survey.json', import.meta.url), 'utf8'),
  );
  expect(keysOf(schema, schema)).toEqual([
    'format',
    'server',
    'at',
    'tools',
    // The tools' names, each with its version.
    'tools.*',
    'unseen',
    'devices',
    'devices.name',
    'devices.type',
    'devices.on',
    'devices.size',
    // A disk's: of a rented one it is the volume's identifier, or its beginning.
    'devices.serial',
    'devices.content',
    'volume-groups',
    'volume-groups.name',
    'volume-groups.extent',
    'volume-groups.extents',
    'volume-groups.free',
    'volume-groups.missing',
    'volume-groups.members',
    'volume-groups.members.device',
    'volume-groups.members.size',
    'volume-groups.members.device-size',
    'volume-groups.members.first-extent',
    'volume-groups.members.extents',
    'volume-groups.members.free',
    'volume-groups.logical-volumes',
    'volume-groups.logical-volumes.name',
    'volume-groups.logical-volumes.size',
    'volume-groups.logical-volumes.layout',
    'volume-groups.logical-volumes.stripes',
    'volume-groups.logical-volumes.copies',
    'volume-groups.logical-volumes.active',
    'file-systems',
    'file-systems.device',
    'file-systems.type',
    // A random one, that mkfs makes up.
    'file-systems.id',
    'file-systems.mounts',
    'file-systems.in-fstab',
    'file-systems.size',
    'file-systems.block-size',
    'file-systems.metadata',
    'file-systems.reserved',
    'file-systems.usable',
    'file-systems.used',
    'file-systems.available',
  ]);
});

/** Names of people and hosts, addresses, credentials: each in a word that is found wherever it turns up. */
const secret = {
  password: 'hunter2-password',
  credentials: 'vault-credentials',
  host: 'archive.gannet-point.example',
  share: 'share-of-ledger',
  address: '192.0.2.77',
  label: 'MARGARETS-STICK',
  partLabel: 'margarets-partition',
  user: 'margaret',
  process: 'container-4711',
  model: 'model-of-the-disk',
};

const planted = {
  mounts: [
    ['/dev/vda1', '/', 'ext4'],
    [`//${secret.host}/${secret.share}`, '/mnt/share', 'cifs'],
    [`${secret.address}:/export`, '/mnt/nfs', 'nfs4'],
    ['/dev/sdx1', `/run/media/${secret.user}/${secret.label}`, 'ext4'],
    ['/dev/sdy1', `/media/${secret.user}/${secret.label}`, 'ext4'],
    ['tmpfs', `/run/user/1000-${secret.user}`, 'tmpfs'],
    ['overlay', `/var/lib/docker/overlay2/${secret.process}/merged`, 'overlay'],
    ['/dev/vdb', `/var/lib/kubelet/pods/${secret.process}/mount`, 'ext4'],
    ['/dev/vdc', `/home/${secret.user}`, 'ext4'],
  ],
  fstab: [
    `# mounted for ${secret.user}`,
    `/dev/vda1 / ext4 x-comment=${secret.user} 0 1`,
    `LABEL=${secret.label} /stick ext4 defaults 0 0`,
    `PARTLABEL="${secret.partLabel}" /part ext4 defaults 0 0`,
    `/dev/disk/by-label/${secret.label} /stick-2 ext4 defaults 0 0`,
    `//${secret.host}/${secret.share} /mnt/share cifs username=${secret.user},password=${secret.password} 0 0`,
    `${secret.host}:/export /mnt/nfs nfs4 defaults 0 0`,
    `/dev/vdc /home/${secret.user} ext4 password=${secret.password},credentials=/etc/${secret.credentials} 0 0`,
    `/dev/vdd /plates ext4 key=${secret.password} 0 0`,
    '',
  ].join('\n'),
};

const devices = ['vda1', 'vdb', 'vdc', 'vdd', 'sdx1', 'sdy1'];

const found = (text: string): readonly string[] =>
  Object.values(secret).filter((word) => text.toLowerCase().includes(word.toLowerCase()));

function kept(out: string): string {
  const gathered = readGathered(Buffer.from(out), 'gathered');
  if (!gathered.ok) throw new Error(JSON.stringify(gathered.problems));
  const made = surveyOf(gathered.value, 'plate-scanner');
  if (!made.ok) throw new Error(JSON.stringify(made.problems));
  return surveyAsText(made.value.survey);
}

/** Tools that print all that they know, whatever they are asked for, where they would not print it as it is. */
const tools = {
  lsblk: `case " $* " in
  *' --json '*) echo '${JSON.stringify({
    blockdevices: devices.map((name) => ({
      name,
      kname: name,
      type: 'disk',
      size: 1 << 30,
      fstype: 'ext4',
      uuid: `id-${name}`,
    })),
  })}' ;;
  *' --raw '*) ${devices.map((name) => `echo '/dev/${name} ext4'`).join('; ')} ;;
esac`,
  findmnt: planted.mounts
    .map(
      ([source, target, type]) =>
        `echo 'SOURCE="${source}" FSROOT="/" TARGET="${target}" FSTYPE="${type}" OPTIONS="rw,password=${secret.password}"'`,
    )
    .join('\n'),
  df: `for last; do :; done
echo 'Filesystem 1024-blocks Used Available Capacity Mounted on'
echo "/dev/vda1 100 50 50 50% $last"`,
  dumpe2fs: `echo 'Filesystem volume name:   ${secret.label}'
echo 'Last mounted on:          /home/${secret.user}'
echo 'Block count:              1000'
echo 'Block size:               4096'`,
  blkid: `echo '/dev/vda1: LABEL="${secret.label}" UUID="id-vda1" TYPE="ext4"'`,
  findfs: 'exit 1',
  hostname: `echo ${secret.host}`,
};

describe('planted among what a server has', () => {
  it('no secret is in what the script prints, nor in what is kept', () => {
    gatherOn({ tools, fstab: planted.fstab, environment: { USER: secret.user } }, ({ code, out }) => {
      expect(code).toBe(0);
      expect(found(out)).toEqual([]);
      expect(found(kept(out))).toEqual([]);
      // What is left out is said, so that nothing of it is taken for missing.
      expect(JSON.parse(kept(out)).unseen).toEqual(expect.arrayContaining(['mounts', 'fstab']));
      // Not because nothing is in it.
      expect(kept(out)).toContain('"in-fstab": "/plates"');
      expect(kept(out)).toContain('"usable": "102400"');
    });
  });

  it('the mounts beneath /home are told where they were asked for, and nothing else of it', () => {
    const environment = { ULLAGE_HOMES: 'told' };
    gatherOn({ tools, fstab: planted.fstab, environment }, ({ out }) => {
      expect(found(out)).toEqual([secret.user]);
      expect(kept(out)).toContain(`"in-fstab": "/home/${secret.user}"`);
      expect(found(kept(out))).toEqual([secret.user]);
      expect(JSON.parse(kept(out)).unseen).not.toContain('mounts');
    });
  });

  it('no secret is kept of what was gathered in some other way', () => {
    const out = JSON.stringify({
      format: 'ullage-gathered-1',
      at: '2026-11-20T06:00:00Z',
      versions: { lsblk: `built for ${secret.user} on ${secret.host}, 2.38.1` },
      lsblk: {
        blockdevices: devices.map((name) => ({
          name,
          type: 'disk',
          size: '1073741824',
          fstype: 'ext4',
          label: secret.label,
          partlabel: secret.partLabel,
          model: secret.model,
          owner: secret.user,
          mountpoint: `/media/${secret.user}`,
          mountpoints: [`/home/${secret.user}`],
        })),
      },
      findmnt: {
        filesystems: planted.mounts.map(([source, target, fstype]) => ({
          source,
          target,
          fstype,
          label: secret.label,
          options: `rw,password=${secret.password}`,
        })),
      },
      fstab: planted.fstab,
      df: [
        'Filesystem 1024-blocks Used Available Capacity Mounted on',
        ...planted.mounts.map(([source, target]) => `${source} 100 50 50 50% ${target}`),
      ].join('\n'),
      superblocks: [
        {
          device: '/dev/vda1',
          text: `Filesystem volume name: ${secret.label}\nBlock count: 9\nBlock size: 1024`,
        },
      ],
      unseen: [{ what: 'use', why: `df: ${secret.host}: stale` }],
    });
    expect(found(kept(out))).toEqual([]);
    expect(kept(out)).toContain('"/"');
  });
});
