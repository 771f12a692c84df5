/**
 * The procedures as data: what each act is called for a person, why it is needed, and how the open-source tools of a
 * Linux guest do it. Steps at the provider are never commands: its own documentation has them.
 * One table, longer than a file should be, so that a runbook's words and commands are read and reviewed in one place.
 *
 * The words for guests other than Linux are from memory, save DiskPart's `extend` and `rescan` (Microsoft Learn).
 */

import { cautions } from '../base/wording.ts';
import type { Server } from '../estate/estate.ts';
import { e2fsprogs, look, lvm2, memory, rescan, utilLinux, xfsprogs } from './commands.ts';
import type { Example, Step } from './step.ts';

export type Guest = NonNullable<Server['guest']>;

/** In braces: a name or a figure of the change. */
type Words = string;

export interface Procedure {
  readonly at: Step['at'];
  /** For any guest, and other words for those that need them. */
  readonly does: Words;
  readonly in?: Partial<Readonly<Record<Guest, Words>>>;
  readonly why?: Words;
  readonly destroys?: true;
  readonly cautions?: readonly string[];
  /** `linux-lvm` guests see both lists, `linux` guests the first. */
  readonly linux?: readonly Example[];
  readonly lvm?: readonly Example[];
}

const grownForGood =
  "A grown volume cannot be made smaller again, and is paid for at once: check its name and its new size twice. Your own change control and the provider's documentation come first.";

export const procedures = {
  // Making sure
  'check-backup': {
    at: 'check',
    does: 'Check that {what} has a recent enough backup, and that a restore of it has been tried.',
    why: 'A later step destroys it, and then only the backup brings it back.',
  },
  'check-group': {
    at: 'check',
    does: 'Check that volume group {group} shows {extents} extents of {extent}, {size} in all, before anything is built on it.',
    why: 'A member of a wrong size, or one too few, shows here.',
    lvm: [lvm2('vgs', 'vgs --options vg_name,vg_extent_size,vg_extent_count,vg_free_count GROUP')],
  },
  'check-replacement': {
    at: 'check',
    does: 'Check that {volume} holds all that {old} held, and that the work on it runs.',
    why: 'The old one is the quickest way back for as long as it is there.',
  },
  'check-missed': {
    at: 'check',
    does: 'Leave {volume} detached until it is sure that nobody misses it.',
    why: 'Detached, it is still billed and can still be attached again; deleted, it cannot.',
  },
  'check-name': {
    at: 'check',
    does: 'Where the provider or the guest shows {old} by that name, have it shown as {name}; nothing else changes.',
    why: 'The next change calls it by its new name, and the right one must be found under it.',
  },
  // At the provider: volumes
  'create-volume': {
    at: 'provider',
    does: 'Create volume {volume}: {size}, tier {tier}{where}.',
  },
  'grow-volume': {
    at: 'provider',
    does: 'Grow volume {volume} from {was} to {size}.',
    cautions: [grownForGood],
  },
  'move-tier': {
    at: 'provider',
    does: 'Move volume {volume} from tier {was} to {tier}.',
    why: 'Whether it can stay attached meanwhile is for the provider to say.',
  },
  'create-smaller': {
    at: 'provider',
    does: 'Create a volume of {size} beside {volume}, which is to take its place and then its name.',
    why: 'A volume is not made smaller where it lies: what is cut off is lost.',
  },
  'attach-smaller': {
    at: 'provider',
    does: 'Attach the smaller {volume} to {server} beside the old one.',
  },
  'detach-old': {
    at: 'provider',
    does: 'Detach the old {volume} from {server}.',
  },
  'fill-smaller': {
    at: 'provider',
    does: 'Fill the smaller {volume} file by file, from the old one or from its backup, with a server that can hold both.',
    why: 'A copy block by block would not fit.',
  },
  'copy-across': {
    at: 'provider',
    does: 'Make {volume} anew at site {site}, with what it holds at {was}: from a backup taken once nothing writes to it any more{how}.',
    why: 'A change of its declaration carries nothing across sites.',
  },
  'fill-boot': {
    at: 'provider',
    does: 'Put on {volume} what {server} is to start from: what {old} held, or a guest made anew.',
  },
  unprotect: {
    at: 'provider',
    does: 'Lift the protection of {volume} against deletion.',
    cautions: [
      'Without it a slip of the hand deletes the volume: check its name, its size and its server twice.',
    ],
  },
  protect: { at: 'provider', does: 'Protect {volume} against deletion.' },
  share: { at: 'provider', does: 'Let several servers hold {volume} at once.' },
  unshare: { at: 'provider', does: 'Let one server alone hold {volume}.' },
  attach: { at: 'provider', does: 'Attach volume {volume} to {server}.' },
  'attach-boot': {
    at: 'provider',
    does: 'Attach volume {volume} to {server} as the volume it starts from.',
  },
  detach: { at: 'provider', does: 'Detach volume {volume} from {server}.' },
  'delete-volume': {
    at: 'provider',
    does: 'Delete volume {volume}, {size}, for good.',
    destroys: true,
    cautions: [cautions],
  },
  'delete-old': {
    at: 'provider',
    does: 'Delete the old {volume}, {size}, for good; the new one keeps or takes its name.',
    destroys: true,
    cautions: [cautions],
  },
  // At the provider: servers
  'create-server': { at: 'provider', does: 'Create server {server}{boot}, {power}.' },
  'delete-server': {
    at: 'provider',
    does: 'Delete server {server}; its volumes stay.',
    why: 'Some providers delete a boot volume with its server unless told to keep it.',
    cautions: [cautions],
  },
  'stop-server': {
    at: 'provider',
    does: 'Shut {server} down from within, and see at the provider that it is stopped.',
    why: 'A boot volume is in use for as long as its server runs, and what is not yet written is lost with it.',
  },
  'start-server': { at: 'provider', does: 'Start {server}, and see that its guest comes up.' },
  'change-server-type': {
    at: 'provider',
    does: 'Change {server} from server type {was} to {type}, while it is stopped.',
    why: 'Some providers change it while it runs; their documentation says.',
  },
  'move-server': {
    at: 'provider',
    does: 'Move {server} from site {was} to {site}, or make it anew there, while it is stopped.',
    why: 'Its volumes must be at the site where it is.',
  },
  'set-boot': { at: 'provider', does: 'Set {server} to start from {volume}.' },
  // In the guest: seeing what the provider did
  'see-device': {
    at: 'guest',
    does: 'See that the new device of {volume} has appeared, with {size}, and write down which it is.',
    in: {
      windows: 'Rescan the disks, see that {volume} has appeared with {size}, and bring it online.',
    },
    why: "Everything after this names the device; the wrong one is somebody else's data.",
    linux: [look],
  },
  'see-size': {
    at: 'guest',
    does: 'Have the device of {volume} looked at again, until the guest shows {size}.',
    in: { windows: 'Rescan the disks until the guest shows {size} for {volume}.' },
    why: 'A guest goes on with the size it saw when it started or when the volume was attached.',
    linux: [rescan, look],
  },
  'grow-partition': {
    at: 'guest',
    does: 'Where {volume} is partitioned, grow the partition that is to have the room, from the same start; it must be the last one.',
    in: { windows: 'Extend the partition on {volume} that is to have the room into what follows it.' },
    why: 'What lies in a partition ends where the partition ends.',
    linux: [memory('growpart DEVICE PARTITION_NUMBER'), utilLinux('partx', 'partx --update DEVICE')],
  },
  'grow-inside': {
    at: 'guest',
    does: "Grow what lies on {volume}, layer by layer: the volume manager's parts where it has any, then the file system.",
    why: 'Until then the room is paid for and nobody can use it.',
    linux: [
      xfsprogs('xfs_growfs', 'xfs_growfs MOUNT_POINT'),
      e2fsprogs('resize2fs', 'resize2fs DEVICE_OR_LOGICAL_VOLUME'),
    ],
    lvm: [
      lvm2('pvresize', 'pvresize DEVICE'),
      lvm2('lvextend', 'lvextend --size +SIZE /dev/GROUP/LOGICAL_VOLUME'),
    ],
  },
  // In the guest: volume groups
  'grow-member': {
    at: 'guest',
    does: 'Grow {volume} as a member of volume group {group}; where it lies in a partition, grow that first.',
    why: 'The group counts a member as large as it was when it joined.',
    lvm: [lvm2('pvresize', 'pvresize DEVICE')],
  },
  'make-group': {
    at: 'guest',
    does: 'Make volume group {group} of {members}, with extents of {extent}.',
    lvm: [lvm2('vgcreate', 'vgcreate --physicalextentsize EXTENT GROUP DEVICE DEVICE...')],
  },
  'make-group-over': {
    at: 'guest',
    does: 'Make volume group {group} of {members}, with extents of {extent}; what lay on them is overwritten.',
    destroys: true,
    cautions: [cautions],
    lvm: [lvm2('vgcreate', 'vgcreate --physicalextentsize EXTENT GROUP DEVICE DEVICE...')],
  },
  'join-group': {
    at: 'guest',
    does: 'Take {volume} into volume group {group}.',
    lvm: [lvm2('vgextend', 'vgextend GROUP DEVICE')],
  },
  'join-group-over': {
    at: 'guest',
    does: 'Take {volume} into volume group {group}; what lay on it is overwritten.',
    destroys: true,
    cautions: [cautions],
    lvm: [lvm2('vgextend', 'vgextend GROUP DEVICE')],
  },
  'leave-group': {
    at: 'guest',
    does: 'Move what lies on {volume} to the other members of volume group {group}, see that nothing is left on it, and take it out of the group.',
    why: 'A member that goes with something on it breaks the group.',
    cautions: [cautions],
    lvm: [
      lvm2('pvmove', 'pvmove DEVICE'),
      lvm2('pvs', 'pvs --options pv_name,pv_used DEVICE'),
      lvm2('vgreduce', 'vgreduce GROUP DEVICE'),
    ],
  },
  'replace-member': {
    at: 'guest',
    does: 'Take the smaller {volume} into volume group {group}, move what lies on the old one over to it and to the others, and take the old one out.',
    why: 'A member that goes with something on it breaks the group.',
    cautions: [cautions],
    lvm: [
      lvm2('vgextend', 'vgextend GROUP NEW_DEVICE'),
      lvm2('pvmove', 'pvmove OLD_DEVICE'),
      lvm2('vgreduce', 'vgreduce GROUP OLD_DEVICE'),
    ],
  },
  'remove-group': {
    at: 'guest',
    does: 'Remove volume group {group} and what lies in it.',
    destroys: true,
    cautions: [cautions],
    lvm: [lvm2('vgremove', 'vgremove GROUP')],
  },
  'rename-group': {
    at: 'guest',
    does: 'Rename volume group {old} to {group}, and wherever the old name stands in a path of a device, such as in the table of mounts.',
    lvm: [lvm2('vgrename', 'vgrename GROUP NEW_NAME')],
  },
  're-extent': {
    at: 'guest',
    does: 'Change the extents of volume group {group} from {was} to {extent}, where what lies in it allows.',
    why: 'Everything in the group must begin and end on a border of the new extents.',
    lvm: [lvm2('vgchange', 'vgchange --physicalextentsize EXTENT GROUP')],
  },
  'convert-layout': {
    at: 'guest',
    does: 'Change the layout of what lies in volume group {group} from {was} to {layout}.',
    lvm: [
      {
        command: 'lvconvert --type TYPE GROUP/LOGICAL_VOLUME',
        source: 'lvmraid(7), lvm2 2.03.16',
      },
    ],
  },
  'lay-out-anew': {
    at: 'guest',
    does: 'Remove what lies in volume group {group}, which is {was}, make its logical volumes and file systems anew, {layout}, and bring their content back from the backup.',
    why: 'Extents side by side cannot be laid end to end where they are, nor the other way round.',
    destroys: true,
    cautions: [cautions],
    lvm: [
      lvm2('lvremove', 'lvremove GROUP/LOGICAL_VOLUME'),
      lvm2('lvcreate', 'lvcreate --stripes STRIPES --size SIZE --name LOGICAL_VOLUME GROUP'),
    ],
  },
  deactivate: {
    at: 'guest',
    does: 'Deactivate volume group {group}.',
    why: 'A group in use must not lose its members.',
    lvm: [lvm2('vgchange', 'vgchange -an GROUP')],
  },
  export: {
    at: 'guest',
    does: 'Mark volume group {group} as exported.',
    why: 'Nothing uses it by mistake until the other server takes it in.',
    lvm: [lvm2('vgexport', 'vgexport GROUP')],
  },
  'check-detached': {
    at: 'check',
    does: 'See that all {count} members of volume group {group} are detached before the first is attached again.',
    why: 'A volume group travels whole; one that is here in part and there in part is broken.',
  },
  import: {
    at: 'guest',
    does: 'See that all {count} members of volume group {group} are there, and take it in.',
    lvm: [lvm2('pvs', 'pvs --options pv_name,vg_name,pv_size'), lvm2('vgimport', 'vgimport GROUP')],
  },
  activate: {
    at: 'guest',
    does: 'Activate volume group {group}.',
    lvm: [lvm2('vgchange', 'vgchange -ay GROUP')],
  },
  // In the guest: file systems
  'stop-use': {
    at: 'guest',
    does: 'Stop what uses {mounts} on {server}.',
    why: 'Nothing can be unmounted while a file on it is open.',
    linux: [{ command: 'fuser --verbose --mount MOUNT_POINT', source: 'fuser(1), psmisc 23.6' }],
  },
  unmount: {
    at: 'guest',
    does: 'Unmount {mount}; where it does not come back to {server}, take it out of the table of mounts too.',
    in: { windows: 'Take {mount} offline.' },
    why: 'What is not yet written reaches the volume, and nothing writes to it from then on.',
    linux: [utilLinux('umount', 'umount MOUNT_POINT')],
  },
  'unmount-swap': {
    at: 'guest',
    does: 'Take the swap space {mount} out of use; where it does not come back to {server}, take it out of the table of mounts too.',
    linux: [utilLinux('swapoff', 'swapoff DEVICE')],
  },
  mount: {
    at: 'guest',
    does: 'Mount {mount}, and put it into the table of mounts.',
    in: { windows: 'Bring {mount} online.' },
    linux: [utilLinux('mount', 'mount DEVICE_OR_LOGICAL_VOLUME MOUNT_POINT')],
  },
  'mount-swap': {
    at: 'guest',
    does: 'Put the swap space {mount} into use, and into the table of mounts.',
    linux: [utilLinux('swapon', 'swapon DEVICE')],
  },
  remount: {
    at: 'guest',
    does: 'Stop what uses {was}, unmount it, mount it at {mount} and write that in the table of mounts.',
    linux: [utilLinux('umount', 'umount MOUNT_POINT'), utilLinux('mount', 'mount DEVICE NEW_MOUNT_POINT')],
  },
  'make-logical-volume': {
    at: 'guest',
    does: 'Make a logical volume of {size} for {mount} in volume group {group}, {layout}.',
  },
  'extend-logical-volume': {
    at: 'guest',
    does: 'Extend the logical volume of {mount} in volume group {group} from {was} to {size}.',
    why: 'The file system can grow to the end of its device and no further.',
    lvm: [lvm2('lvextend', 'lvextend --size SIZE /dev/GROUP/LOGICAL_VOLUME')],
  },
  'reduce-logical-volume': {
    at: 'guest',
    does: 'Reduce the logical volume of {mount} in volume group {group} to {size}, and not below its file system.',
    why: 'What lies beyond the new end is lost.',
    destroys: true,
    cautions: [cautions],
    lvm: [lvm2('lvreduce', 'lvreduce --size SIZE /dev/GROUP/LOGICAL_VOLUME')],
  },
  'remove-file-system': {
    at: 'guest',
    does: 'Remove {mount} from volume group {group} with its logical volume.',
    destroys: true,
    cautions: [cautions],
    lvm: [lvm2('lvremove', 'lvremove /dev/GROUP/LOGICAL_VOLUME')],
  },
  'give-up-file-system': {
    at: 'guest',
    does: 'Give {mount} up: nothing mounts it any more. What lies on {volume} stays until something else is made there.',
    cautions: [cautions],
  },
  'make-file-system': {
    at: 'guest',
    does: 'Make a file system, {type}, for {mount} on {on}.',
  },
  'make-file-system-over': {
    at: 'guest',
    does: 'Make a file system, {type}, for {mount} on {on}, over what lay there.',
    destroys: true,
    cautions: [cautions],
  },
  'make-anew': {
    at: 'guest',
    does: 'Make {mount} on {on} anew: {type}, {size}.',
    why: '{reason}',
    destroys: true,
    cautions: [cautions],
  },
  'bring-back': {
    at: 'guest',
    does: 'Bring back what {mount} held, from its backup, and compare.',
  },
  'bring-over': {
    at: 'guest',
    does: 'Bring over to {volume} what {old} held, from its backup.',
  },
  'grow-mounted': {
    at: 'guest',
    does: 'Grow the file system {mount}, {type}, to the end of its device, while it is mounted.',
    in: { windows: 'Extend {mount} into the room behind it, in the disk management.' },
    why: 'Until then the room is paid for and nobody can use it.',
  },
  'grow-unmounted': {
    at: 'guest',
    does: 'Grow {mount}, {type}, to the end of its device, while it is unmounted.',
  },
  'shrink-mounted': {
    at: 'guest',
    does: 'Shrink the file system {mount}, {type}, to {size} or a little less, while it is mounted.',
    destroys: true,
    cautions: [cautions],
  },
  'shrink-unmounted': {
    at: 'guest',
    does: 'Check the file system {mount}, {type}, and shrink it to {size} or a little less, while it is unmounted.',
    destroys: true,
    cautions: [cautions],
  },
  'put-smaller-in-place': {
    at: 'guest',
    does: 'Make on the smaller {volume} what is on the old one, copy its files across, unmount the old one and put the smaller one in its place.',
    why: 'A copy block by block would not fit.',
    cautions: [cautions],
  },
} as const satisfies Readonly<Record<string, Procedure>>;

export type ProcedureName = keyof typeof procedures;

export const procedureOf = (name: ProcedureName): Procedure => procedures[name];
