import { spawnSync } from 'node:child_process';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readGathered } from '../../src/survey/gathered.ts';
import { gatheringScript } from '../../src/survey/generated/script.ts';
import { surveyOf } from '../../src/survey/survey-of.ts';
import { fixture, gatherOn, type Played, shells } from './server.ts';

/** What is gathered, and the survey that is made of it. */
function surveyed(played: Played) {
  let found: ReturnType<typeof read> | undefined;
  gatherOn(played, ({ code, out, err }) => {
    expect([code, err]).toEqual([0, '']);
    found = read(out);
  });
  if (found === undefined) throw new Error('nothing was gathered');
  return found;
}

function read(out: string) {
  const gathered = readGathered(Buffer.from(out), 'gathered');
  if (!gathered.ok) throw new Error(JSON.stringify(gathered.problems));
  const made = surveyOf(gathered.value, 'plate-scanner');
  if (!made.ok) throw new Error(JSON.stringify(made.problems));
  return { out, gathered: gathered.value, ...made.value };
}

const print = (text: string): string => `cat <<'END'\n${text}\nEND\n`;

/** As lsblk of a version that has JSON. */
const lsblk = (json: string): string =>
  `case " $* " in *' --version '*) echo 'lsblk from util-linux 2.38.1' ;; *' --json '*) ${print(json)} ;; esac`;

const findmnt = (...lines: readonly string[]): string => print(lines.join('\n'));

const dfOf = (blocks: number): string => `for last; do :; done
echo 'Filesystem 1024-blocks Used Available Capacity Mounted on'
printf '/dev/vdb ${blocks} 100 200 1%% %s\\n' "$last"`;

const oneDisk = (fstype: string | null) =>
  JSON.stringify({
    blockdevices: [
      {
        name: 'vdb',
        kname: 'vdb',
        pkname: null,
        'maj:min': '254:16',
        type: 'disk',
        size: 1 << 30,
        serial: 'plates-1',
        fstype,
        uuid: null,
      },
    ],
  });

describe.each(shells)('the script under $program', (shell) => {
  it('is read without an error', () => {
    const { status, stderr } = spawnSync(shell.program, [...shell.flags, '-n'], {
      input: gatheringScript,
      encoding: 'utf8',
    });
    expect([status, stderr]).toEqual([0, '']);
  });

  it('gathers the same of a server with awkward names, and writes nothing', () => {
    const { out, survey } = surveyed({
      shell,
      tools: {
        lsblk: lsblk(oneDisk('ext4')),
        // As findmnt --pairs writes a double quote, a backslash, a percent sign and an accent in the C locale.
        findmnt: findmnt(
          String.raw`MAJ:MIN="254:16" SOURCE="/dev/vdb" FSROOT="/" TARGET="/old \x22plates\x22 100% \x5c caf\xc3\xa9" FSTYPE="ext4"`,
        ),
        df: dfOf(1000),
      },
    });
    expect(survey['file-systems']).toEqual([
      {
        device: 'vdb',
        type: 'ext4',
        mounts: ['/old "plates" 100% \\ café'],
        usable: '1024000',
        used: '102400',
        available: '204800',
      },
    ]);
    expect(() => JSON.parse(out)).not.toThrow();
  });
});

describe('the script', () => {
  it('that was cut off on its way does nothing', () => {
    const end = gatheringScript.lastIndexOf('gather </dev/null');
    fc.assert(
      fc.property(fc.integer({ min: 0, max: end }), (length) => {
        const { stdout } = spawnSync('sh', ['-s'], {
          input: gatheringScript.slice(0, length),
          encoding: 'utf8',
        });
        expect(stdout).toBe('');
      }),
      { numRuns: 25, examples: [[end]] },
    );
  });

  it('takes no line of standard input for itself, whatever a tool does', () => {
    const { gathered } = surveyed({
      tools: {
        lsblk: `cat >/dev/null\n${lsblk(oneDisk(null))}`,
        df: 'cat',
        findmnt: 'cat >/dev/null; exit 1',
      },
    });
    expect(gathered.lsblk?.blockdevices).toHaveLength(1);
  });

  it('of a server without disks, where the tools print nothing, is a survey of nothing', () => {
    const nothing = { lsblk: '', findmnt: '', pvs: '', vgs: '', lvs: '' };
    const { survey } = surveyed({ tools: nothing });
    expect([survey.unseen, survey.devices, survey['volume-groups'], survey['file-systems']]).toEqual([
      [],
      [],
      [],
      [],
    ]);
  });

  it('without awk says so, and prints nothing', () => {
    gatherOn({ without: ['awk'] }, ({ code, out, err }) => {
      expect([code, out, err]).toEqual([1, '', expect.stringContaining('needs awk')]);
    });
  });

  it('says what it could not see, and why: no tool, a tool that fails, one that hangs', () => {
    const { unseen, survey } = surveyed({
      patience: 1,
      fstab: '',
      tools: {
        lsblk: 'sleep 30',
        findmnt: findmnt('MAJ:MIN="254:16" SOURCE="/dev/vdb" FSROOT="/" TARGET="/plates" FSTYPE="ext4"'),
        df: 'exit 3',
        dumpe2fs: 'exit 1',
      },
    });
    const privilege = process.getuid?.() === 0 ? '' : '; it may need the superuser';
    expect(unseen.map(({ what, why }) => [what, why])).toEqual([
      ['devices', 'lsblk did not end within 1 seconds'],
      ['use', `df fails (exit code 3)${privilege}`],
      ['volume-groups', 'pvs is not on this server'],
      ['volume-groups', 'vgs is not on this server'],
      ['volume-groups', 'lvs is not on this server'],
      ['superblocks', `dumpe2fs fails (exit code 1)${privilege}`],
    ]);
    expect(survey.unseen).toEqual(['devices', 'use', 'volume-groups', 'superblocks']);
  });

  it('waits no longer for a tool that hangs where there is no timeout', () => {
    const began = Date.now();
    const { unseen } = surveyed({
      patience: 1,
      without: ['timeout'],
      tools: { lsblk: 'exec sleep 30', findmnt: 'exit 1' },
    });
    expect(unseen[0]?.why).toBe('lsblk did not end within 1 seconds');
    expect(Date.now() - began).toBeLessThan(20_000);
  });
});

describe('an older server', () => {
  // The columns that lsblk of util-linux 2.20.1 has: a pull request to balena-io-modules/drivelist prints it.
  const old = `for argument; do
  case $argument in
    --json | --version) exit 1 ;;
    *PKNAME* | *SERIAL*) exit 1 ;;
    --pairs) pairs=yes ;;
  esac
done
if [ -n "$pairs" ]; then ${print(fixture('lsblk-2.20.1.txt'))}
fi`;

  it('without JSON and without some columns shows the same devices', () => {
    const { survey } = surveyed({
      tools: { lsblk: old, findmnt: 'exit 1' },
      sys: { 'sda/serial': '5000cca0bbce87e7\n' },
    });
    expect(survey.devices).toEqual([
      { name: 'mapper/plates-scans', type: 'lvm', size: '75161927680', content: 'xfs' },
      { name: 'sda', type: 'disk', size: '53687091200', serial: '5000cca0bbce87e7' },
      { name: 'sda1', type: 'part', on: ['sda'], size: '1048576' },
      { name: 'sda2', type: 'part', on: ['sda'], size: '53684994048', content: 'ext4' },
      { name: 'sdb', type: 'disk', size: '42949672960', content: 'LVM2_member' },
      { name: 'sdc', type: 'disk', size: '42949672960', content: 'LVM2_member' },
    ]);
  });

  it('whose volume manager has no JSON shows the same groups', () => {
    // lvm2 has --reportformat from 2.02.158 on (from memory); --nameprefixes is older: lvmreport(7).
    const plain = (row: string): string =>
      `case "$*" in *reportformat*) exit 3 ;; *nameprefixes*) echo "  ${row}" ;; *) exit 3 ;; esac`;
    const { survey } = surveyed({
      tools: {
        lsblk: old,
        findmnt: 'exit 1',
        pvs: plain(
          "LVM2_VG_NAME='plates' LVM2_PV_NAME='/dev/sdb' LVM2_PV_ATTR='a--' LVM2_PV_SIZE='42882564096' LVM2_DEV_SIZE='42949672960' LVM2_PV_PE_COUNT='639' LVM2_PV_PE_ALLOC_COUNT='600'",
        ),
        vgs: plain(
          "LVM2_VG_NAME='plates' LVM2_VG_EXTENT_SIZE='67108864' LVM2_VG_EXTENT_COUNT='639' LVM2_VG_FREE_COUNT='39'",
        ),
        lvs: plain(
          "LVM2_VG_NAME='plates' LVM2_LV_NAME='scans' LVM2_LV_SIZE='40265318400' LVM2_LV_ATTR='-wi-XX----' LVM2_SEGTYPE='striped' LVM2_STRIPES='1'",
        ),
      },
    });
    expect(survey['volume-groups']).toEqual([
      {
        name: 'plates',
        extent: '67108864',
        extents: 639,
        free: 39,
        missing: 0,
        members: [
          { device: 'sdb', size: '42882564096', 'device-size': '42949672960', extents: 639, free: 39 },
        ],
        'logical-volumes': [{ name: 'scans', size: '40265318400', layout: 'linear', active: true }],
      },
    ]);
  });

  it('without findmnt shows the mounts that the kernel lists', () => {
    // Source of the line's form: proc(5), /proc/pid/mountinfo, with a space and a double quote in the mount point.
    const line = String.raw`36 35 254:16 / /old\040"plates" rw,noatime master:1 shared:2 - ext4 /dev/vdb rw,errors=continue`;
    const { survey } = surveyed({
      tools: { lsblk: lsblk(oneDisk('ext4')), df: dfOf(1000) },
      mountinfo: `${line}\n37 35 0:30 / /mnt/archive rw - nfs4 vault.gannet-point.example:/plates rw,addr=192.0.2.7\n`,
    });
    expect(survey['file-systems'].map(({ mounts }) => mounts)).toEqual([['/old "plates"']]);
  });
});
