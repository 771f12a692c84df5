/**
 * The procedures as data: what each act is called for a person, why it is needed, and how the open-source tools of a
 * Linux guest do it. Steps at the provider are never commands: its own documentation has them.
 * One table, longer than a file should be, so that a runbook's words and commands are read and reviewed in one place.
 *
 * The words for guests other than Linux are from memory, save DiskPart's `extend` and `rescan` (Microsoft Learn).
 *
 * In one file, since it is one table.
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
  "A grown volume cannot be made smaller again, and the new size is billed at once: check its name and its new size twice. Your own change control and the provider's documentation take precedence.";

const onlyDeclared =
  'It is only being declared, so nothing is created, attached or formatted. `ullage survey compare` tells where it differs from a survey; where it does, correct the declaration before anything else is changed.';

export const procedures = {
  // Making sure
  'check-backup': {
    at: 'check',
    does: 'Check that {what} has a recent enough backup, and that a restore of it has been tried.',
    why: 'A later step deletes or overwrites it, and then only the backup can restore it.',
  },
  'check-group': {
    at: 'check',
    does: 'Check that volume group {group} shows {extents} extents of {extent}, {size} in all, before anything is built on it.',
    why: 'A member that is missing or has the wrong size shows here.',
    lvm: [lvm2('vgs', 'vgs --options vg_name,vg_extent_size,vg_extent_count,vg_free_count GROUP')],
  },
  'check-replacement': {
    at: 'check',
    does: 'Check that {volume} holds everything that {old} held, and that whatever uses it works.',
    why: 'As long as the old one exists, it is the quickest way back.',
  },
  'check-member-replacement': {
    at: 'check',
    does: 'Check that volume group {group} has the smaller {volume} as a member and no longer has {old}, and that whatever uses the group works.',
    why: 'The data has been moved off the old one, so it is no copy of it; but deleting a volume that is still a member would break the group.',
    lvm: [lvm2('pvs', 'pvs --options pv_name,vg_name,pv_size')],
  },
  'check-root': {
    at: 'guest',
    does: 'Check that the file system {mount} on {on} is {type}, as declared.',
    why: 'What a server starts from is made by the image or the installer that the server starts from, never from within the guest that runs on it.',
  },
  'check-missed': {
    at: 'check',
    does: 'Leave {volume} unattached until it is certain that nobody needs it.',
    why: 'An unattached volume is still billed, but it can be attached again; a deleted one cannot.',
  },
  'check-name': {
    at: 'check',
    does: 'Where the provider or the guest shows the name {old}, change it to {name}; nothing else changes.',
    why: 'The next change refers to it by its new name.',
  },
  'check-server-there': {
    at: 'provider',
    does: 'Check that server {server} is there as declared: {declared}.',
    why: onlyDeclared,
  },
  'check-volume-there': {
    at: 'provider',
    does: 'Check that volume {volume} is there as declared: {declared}.',
    why: onlyDeclared,
  },
  'check-layers': {
    at: 'guest',
    does: 'Check that this is there as declared: {declared}.',
    why: onlyDeclared,
    linux: [look, utilLinux('findmnt', 'findmnt --df --real')],
    lvm: [
      lvm2('vgs', 'vgs --options vg_name,vg_extent_size,vg_extent_count,vg_free_count'),
      lvm2('lvs', 'lvs --units b --options vg_name,lv_name,lv_size'),
    ],
  },
  'check-identity': {
    at: 'provider',
    does: 'Find out which {kind} {name} is: the one with the id {was}, as on main, or the one with the id {id}. Change nothing about either before that is settled.',
    why: 'Another id is another {kind}: whatever is done next would be done to that one.',
    cautions: [cautions],
  },
  // At the provider: volumes
  'create-volume': {
    at: 'provider',
    does: 'Create volume {volume}: {size}, tier {tier}{where}{how}.',
  },
  'grow-volume': {
    at: 'provider',
    does: 'Grow volume {volume} from {was} to {size}.',
    cautions: [grownForGood],
  },
  'move-tier': {
    at: 'provider',
    does: 'Move volume {volume} from tier {was} to {tier}.',
    why: 'Whether it can stay attached meanwhile is in the documentation of the provider.',
  },
  'create-smaller': {
    at: 'provider',
    does: 'Create a volume of {size} beside {volume}, tier {tier}{how}, to replace it and then take its name.',
    why: 'A volume cannot be made smaller in place: whatever is cut off is lost.',
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
    does: 'Copy the files to the smaller {volume}, from the old one or from its backup, on a server that both can be attached to.',
    why: 'A block-by-block copy would not fit.',
  },
  'copy-across': {
    at: 'provider',
    does: 'Create {volume} again at site {site}: {size}, tier {tier}{how}. Restore to it what it holds at {was}, from a backup taken when nothing writes to it any more{copied}.',
    why: 'Changing its declaration does not copy its data to another site.',
  },
  'fill-boot': {
    at: 'provider',
    does: 'Put on {volume} what {server} is to start from: what {old} held, or a newly installed guest.',
  },
  'install-over': {
    at: 'provider',
    does: 'Put {what} on {volume}, with the image or the installer that {server} is to start from; any data there is overwritten.',
    why: 'What a server starts from is never made from within the guest that runs on it.',
    destroys: true,
    cautions: [cautions],
  },
  unprotect: {
    at: 'provider',
    does: 'Remove the protection of {volume} against deletion.',
    cautions: [
      'Without it a single mistake deletes the volume: check its name, its size and its server twice.',
    ],
  },
  'unprotect-old': {
    at: 'provider',
    does: 'Remove the protection of the old {volume} against deletion.',
    cautions: [
      'Without it a single mistake deletes the volume: check its name, its size and its server twice.',
    ],
  },
  protect: { at: 'provider', does: 'Protect {volume} against deletion.' },
  share: { at: 'provider', does: 'Allow {volume} to be attached to several servers at once.' },
  unshare: { at: 'provider', does: 'Allow {volume} to be attached to one server only.' },
  attach: { at: 'provider', does: 'Attach volume {volume} to {server}.' },
  'attach-boot': {
    at: 'provider',
    does: 'Attach volume {volume} to {server} as its boot volume.',
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
  'create-server': { at: 'provider', does: 'Create server {server}{where}{boot}, {power}.' },
  'delete-server': {
    at: 'provider',
    does: 'Delete server {server}; its volumes stay.',
    why: 'Some providers delete a boot volume with its server unless told to keep it.',
    cautions: [cautions],
  },
  'stop-server': {
    at: 'provider',
    does: 'Shut {server} down from within its guest, and check at the provider that it is stopped.',
    why: 'A boot volume is in use as long as its server runs, and data that is not yet written would be lost.',
  },
  'start-server': { at: 'provider', does: 'Start {server}, and check that its guest comes up.' },
  'change-server-type': {
    at: 'provider',
    does: 'Change {server} from server type {was} to {type}, while it is stopped.',
    why: 'Some providers can change it while the server runs; their documentation says so.',
  },
  'move-server': {
    at: 'provider',
    does: 'Move {server} from site {was} to {site}, or create it again there, while it is stopped.',
    why: 'Its volumes must be at the same site.',
  },
  'set-boot': { at: 'provider', does: 'Set {server} to start from {volume}.' },
  // In the guest: seeing what the provider did
  'see-device': {
    at: 'guest',
    does: 'Check that the new device of {volume} has appeared, with {size}, and note its name.',
    in: {
      windows: 'Rescan the disks, check that {volume} has appeared with {size}, and bring it online.',
    },
    why: "All later steps use the device's name; with the wrong one they change somebody else's data.",
    linux: [look],
  },
  'see-size': {
    at: 'guest',
    does: 'Rescan the device of {volume} until the guest shows {size}.',
    in: { windows: 'Rescan the disks until the guest shows {size} for {volume}.' },
    why: 'A guest keeps the size it saw when it started or when the volume was attached.',
    linux: [rescan, look],
  },
  'grow-partition': {
    at: 'guest',
    does: 'If {volume} is partitioned, grow the partition that is to be larger, keeping its start; it must be the last one.',
    in: { windows: 'Extend the partition on {volume} that is to be larger into the space behind it.' },
    why: 'A file system cannot be larger than its partition.',
    linux: [memory('growpart DEVICE PARTITION_NUMBER'), utilLinux('partx', 'partx --update DEVICE')],
  },
  'grow-inside': {
    at: 'guest',
    does: "Grow what is on {volume}, layer by layer: first the volume manager's parts, if any, then the file system.",
    why: 'Until then the added capacity is paid for but cannot be used.',
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
    does: 'Grow {volume} as a member of volume group {group}; if it is in a partition, grow that first.',
    why: 'The group keeps using the size a member had when it joined.',
    lvm: [lvm2('pvresize', 'pvresize DEVICE')],
  },
  'make-group': {
    at: 'guest',
    does: 'Create volume group {group} on {members}, with extents of {extent}.',
    lvm: [lvm2('vgcreate', 'vgcreate --physicalextentsize EXTENT GROUP DEVICE DEVICE...')],
  },
  'make-group-over': {
    at: 'guest',
    does: 'Create volume group {group} on {members}, with extents of {extent}; any data on them is overwritten.',
    destroys: true,
    cautions: [cautions],
    lvm: [lvm2('vgcreate', 'vgcreate --physicalextentsize EXTENT GROUP DEVICE DEVICE...')],
  },
  'join-group': {
    at: 'guest',
    does: 'Add {volume} to volume group {group}.',
    lvm: [lvm2('vgextend', 'vgextend GROUP DEVICE')],
  },
  'join-group-over': {
    at: 'guest',
    does: 'Add {volume} to volume group {group}; any data on it is overwritten.',
    destroys: true,
    cautions: [cautions],
    lvm: [lvm2('vgextend', 'vgextend GROUP DEVICE')],
  },
  'leave-group': {
    at: 'guest',
    does: 'Move the data on {volume} to the other members of volume group {group}, check that nothing is left on it, and remove it from the group.',
    why: 'Removing a member that still holds data breaks the group.',
    cautions: [cautions],
    lvm: [
      lvm2('pvmove', 'pvmove DEVICE'),
      lvm2('pvs', 'pvs --options pv_name,pv_used DEVICE'),
      lvm2('vgreduce', 'vgreduce GROUP DEVICE'),
    ],
  },
  'replace-member': {
    at: 'guest',
    does: 'Add the smaller {volume} to volume group {group}, move the data on the old one to it and to the other members, and remove the old one.',
    why: 'Removing a member that still holds data breaks the group.',
    cautions: [cautions],
    lvm: [
      lvm2('vgextend', 'vgextend GROUP NEW_DEVICE'),
      lvm2('pvmove', 'pvmove OLD_DEVICE'),
      lvm2('vgreduce', 'vgreduce GROUP OLD_DEVICE'),
    ],
  },
  'remove-group': {
    at: 'guest',
    does: 'Remove volume group {group} and everything in it.',
    destroys: true,
    cautions: [cautions],
    lvm: [lvm2('vgremove', 'vgremove GROUP')],
  },
  'rename-group': {
    at: 'guest',
    does: 'Rename volume group {old} to {group}, also wherever the old name is part of a device path, such as in fstab.',
    lvm: [lvm2('vgrename', 'vgrename GROUP NEW_NAME')],
  },
  're-extent': {
    at: 'guest',
    does: 'Change the extents of volume group {group} from {was} to {extent}, if its contents allow it.',
    why: 'Everything in the group must start and end on a boundary of the new extents.',
    lvm: [lvm2('vgchange', 'vgchange --physicalextentsize EXTENT GROUP')],
  },
  'convert-layout': {
    at: 'guest',
    does: 'Change the layout of the logical volumes in volume group {group} from {was} to {layout}.',
    lvm: [
      {
        command: 'lvconvert --type TYPE GROUP/LOGICAL_VOLUME',
        source: 'lvmraid(7), lvm2 2.03.16',
      },
    ],
  },
  'lay-out-anew': {
    at: 'guest',
    does: 'Remove everything in volume group {group}, which is {was}, create its logical volumes and file systems again, {layout}, and restore their contents from the backup.',
    why: 'Striped extents cannot be made linear in place, nor the other way round.',
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
    why: 'Nothing can use it by mistake until the other server imports it.',
    lvm: [lvm2('vgexport', 'vgexport GROUP')],
  },
  'check-detached': {
    at: 'check',
    does: 'Check that all {count} members of volume group {group} are detached before the first is attached again.',
    why: 'A volume group must be moved as a whole; one that is split between servers is broken.',
  },
  import: {
    at: 'guest',
    does: 'Check that all {count} members of volume group {group} are present, and import it.',
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
    does: 'Stop whatever uses {mounts} on {server}.',
    why: 'A file system cannot be unmounted while a file on it is open.',
    linux: [{ command: 'fuser --verbose --mount MOUNT_POINT', source: 'fuser(1), psmisc 23.6' }],
  },
  'check-fstab': {
    at: 'check',
    does: 'Before {server} next starts, remove {mount} from its fstab.',
    why: 'It will not be there then, and the guest would wait for it, or not come up.',
  },
  unmount: {
    at: 'guest',
    does: 'Unmount {mount}; if it is not coming back to {server}, remove it from fstab as well.',
    in: { windows: 'Take {mount} offline.' },
    why: 'Data not yet written then reaches the volume, and nothing writes to it any more.',
    linux: [utilLinux('umount', 'umount MOUNT_POINT')],
  },
  'unmount-swap': {
    at: 'guest',
    does: 'Take the swap space {mount} out of use; if it is not coming back to {server}, remove it from fstab as well.',
    linux: [utilLinux('swapoff', 'swapoff DEVICE')],
  },
  mount: {
    at: 'guest',
    does: 'Mount {mount}, and add it to fstab.',
    in: { windows: 'Bring {mount} online.' },
    linux: [utilLinux('mount', 'mount DEVICE_OR_LOGICAL_VOLUME MOUNT_POINT')],
  },
  'mount-swap': {
    at: 'guest',
    does: 'Put the swap space {mount} into use, and add it to fstab.',
    linux: [utilLinux('swapon', 'swapon DEVICE')],
  },
  'make-logical-volume': {
    at: 'guest',
    does: 'Create a logical volume of {size} for {mount} in volume group {group}, {layout}.',
  },
  'extend-logical-volume': {
    at: 'guest',
    does: 'Extend the logical volume of {mount} in volume group {group} from {was} to {size}.',
    why: 'A file system can only grow to the end of its device.',
    lvm: [lvm2('lvextend', 'lvextend --size SIZE /dev/GROUP/LOGICAL_VOLUME')],
  },
  'reduce-logical-volume': {
    at: 'guest',
    does: 'Reduce the logical volume of {mount} in volume group {group} to {size}, but not below the size of its file system.',
    why: 'Whatever is beyond the new end is lost.',
    destroys: true,
    cautions: [cautions],
    lvm: [lvm2('lvreduce', 'lvreduce --size SIZE /dev/GROUP/LOGICAL_VOLUME')],
  },
  'cut-logical-volume': {
    at: 'guest',
    does: 'Reduce the logical volume of {mount} in volume group {group} from {was} to {size}; the file system on it is created again.',
    why: 'A file system of this type cannot be made smaller: what it holds comes back from its backup.',
    destroys: true,
    cautions: [cautions],
    lvm: [lvm2('lvreduce', 'lvreduce --size SIZE /dev/GROUP/LOGICAL_VOLUME')],
  },
  'remove-file-system': {
    at: 'guest',
    does: 'Remove {mount} and its logical volume from volume group {group}.',
    destroys: true,
    cautions: [cautions],
    lvm: [lvm2('lvremove', 'lvremove /dev/GROUP/LOGICAL_VOLUME')],
  },
  'give-up-file-system': {
    at: 'guest',
    does: 'Stop using {mount}: nothing mounts it any more. The data on {volume} stays until something else is created there.',
    cautions: [cautions],
  },
  'make-file-system': {
    at: 'guest',
    does: 'Create a file system, {type}{how}, for {mount} on {on}.',
  },
  'make-file-system-over': {
    at: 'guest',
    does: 'Create a file system, {type}{how}, for {mount} on {on}; any data there is overwritten.',
    destroys: true,
    cautions: [cautions],
  },
  'make-anew': {
    at: 'guest',
    does: 'Reformat {mount} on {on}: {type}, {size}{how}.',
    why: '{reason}',
    destroys: true,
    cautions: [cautions],
  },
  'set-reserve': {
    at: 'guest',
    does: 'Set the reserved blocks of {mount}, {type}, to {reserve} %.',
    why: 'It can be set while the file system is in use, and nothing it holds is touched.',
    linux: [e2fsprogs('tune2fs', 'tune2fs -m RESERVE_PER_CENT DEVICE_OR_LOGICAL_VOLUME')],
  },
  'bring-back': {
    at: 'guest',
    does: 'Restore what {mount} held from its backup, and compare.',
  },
  'bring-over': {
    at: 'guest',
    does: 'Restore to {volume} what {old} held, from its backup.',
  },
  'grow-mounted': {
    at: 'guest',
    does: 'Grow the file system {mount}, {type}, to the end of its device, while it is mounted.',
    in: { windows: 'Extend {mount} into the space behind it, in Disk Management.' },
    why: 'Until then the added capacity is paid for but cannot be used.',
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
    does: 'Stop whatever uses {volume}. Create on the smaller {volume} what is on the old one, copy the files across and compare, unmount the old one and mount the smaller one in its place.',
    why: 'A block-by-block copy would not fit, and what is written during the copy would be lost.',
    cautions: [cautions],
  },
} as const satisfies Readonly<Record<string, Procedure>>;

export type ProcedureName = keyof typeof procedures;

export const procedureOf = (name: ProcedureName): Procedure => procedures[name];
