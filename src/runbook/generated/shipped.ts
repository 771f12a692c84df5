/* Generated from src/runbook/procedures/ by `npm run generate`; do not edit. */
import type { DeclaredProcedures } from '../procedure-file.ts';

export const shippedProcedures: readonly DeclaredProcedures[] = [
  {
    "of": "guest",
    "name": "linux-lvm",
    "like": "linux",
    "actions": {
      "check-group": {
        "commands": [
          {
            "from": "vgs(8), lvm2 2.03.16",
            "run": [
              "vgs",
              "--options",
              "vg_name,vg_extent_size,vg_extent_count,vg_free_count",
              "{group}"
            ]
          }
        ]
      },
      "check-member-replacement": {
        "commands": [
          {
            "from": "pvs(8), lvm2 2.03.16",
            "run": [
              "pvs",
              "--options",
              "pv_name,vg_name,pv_size"
            ]
          }
        ]
      },
      "check-layers": {
        "commands": [
          {
            "from": "vgs(8), lvm2 2.03.16",
            "run": [
              "vgs",
              "--options",
              "vg_name,vg_extent_size,vg_extent_count,vg_free_count"
            ]
          },
          {
            "from": "lvs(8), lvm2 2.03.16",
            "run": [
              "lvs",
              "--units",
              "b",
              "--options",
              "vg_name,lv_name,lv_size"
            ]
          },
          {
            "from": "lsblk(8), util-linux 2.38.1",
            "run": [
              "lsblk",
              "--output",
              "NAME,SIZE,TYPE,MOUNTPOINTS"
            ]
          },
          {
            "from": "findmnt(8), util-linux 2.38.1",
            "run": [
              "findmnt",
              "--df",
              "--real"
            ]
          }
        ]
      },
      "grow-inside": {
        "commands": [
          {
            "from": "pvresize(8), lvm2 2.03.16",
            "run": [
              "pvresize",
              "{member-device}"
            ]
          },
          {
            "from": "lvextend(8), lvm2 2.03.16",
            "run": [
              "lvextend",
              "--size",
              "+{added-size}",
              "{logical-volume}"
            ]
          },
          {
            "from": "xfs_growfs(8), xfsprogs 6.1.0",
            "run": [
              "xfs_growfs",
              "{mount}"
            ]
          },
          {
            "from": "resize2fs(8), e2fsprogs 1.47.0",
            "run": [
              "resize2fs",
              "{file-system-device}"
            ]
          }
        ]
      },
      "grow-member": {
        "commands": [
          {
            "from": "pvresize(8), lvm2 2.03.16",
            "run": [
              "pvresize",
              "{device}"
            ]
          }
        ]
      },
      "make-group": {
        "commands": [
          {
            "from": "vgcreate(8), lvm2 2.03.16",
            "run": [
              "vgcreate",
              "--physicalextentsize",
              "{extent}",
              "{group}",
              "{devices}"
            ]
          }
        ]
      },
      "join-group": {
        "commands": [
          {
            "from": "vgextend(8), lvm2 2.03.16",
            "run": [
              "vgextend",
              "{group}",
              "{device}"
            ]
          }
        ]
      },
      "leave-group": {
        "commands": [
          {
            "from": "pvmove(8), lvm2 2.03.16",
            "run": [
              "pvmove",
              "{device}"
            ]
          },
          {
            "from": "pvs(8), lvm2 2.03.16",
            "run": [
              "pvs",
              "--options",
              "pv_name,pv_used",
              "{device}"
            ]
          },
          {
            "from": "vgreduce(8), lvm2 2.03.16",
            "run": [
              "vgreduce",
              "{group}",
              "{device}"
            ]
          }
        ]
      },
      "replace-member": {
        "commands": [
          {
            "from": "vgextend(8), lvm2 2.03.16",
            "run": [
              "vgextend",
              "{group}",
              "{new-device}"
            ]
          },
          {
            "from": "pvmove(8), lvm2 2.03.16",
            "run": [
              "pvmove",
              "{device}"
            ]
          },
          {
            "from": "vgreduce(8), lvm2 2.03.16",
            "run": [
              "vgreduce",
              "{group}",
              "{device}"
            ]
          }
        ]
      },
      "remove-group": {
        "commands": [
          {
            "from": "vgremove(8), lvm2 2.03.16",
            "run": [
              "vgremove",
              "{group}"
            ]
          }
        ]
      },
      "rename-group": {
        "commands": [
          {
            "from": "vgrename(8), lvm2 2.03.16",
            "run": [
              "vgrename",
              "{old}",
              "{group}"
            ]
          }
        ]
      },
      "re-extent": {
        "commands": [
          {
            "from": "vgchange(8), lvm2 2.03.16",
            "run": [
              "vgchange",
              "--physicalextentsize",
              "{extent}",
              "{group}"
            ]
          }
        ]
      },
      "convert-layout": {
        "commands": [
          {
            "from": "lvconvert(8), lvm2 2.03.16",
            "run": [
              "lvconvert",
              "--type",
              "{layout-type}",
              [
                "--mirrors",
                "{mirrors}"
              ],
              "{logical-volume}"
            ]
          }
        ]
      },
      "lay-out-anew": {
        "commands": [
          {
            "from": "lvremove(8), lvm2 2.03.16",
            "run": [
              "lvremove",
              "{logical-volume}"
            ]
          },
          {
            "from": "lvcreate(8), lvm2 2.03.16",
            "run": [
              "lvcreate",
              [
                "--stripes",
                "{stripes}"
              ],
              [
                "--type",
                "raid1",
                "--mirrors",
                "{mirrors}"
              ],
              "--size",
              "{size}",
              "--name",
              "{logical-volume-name}",
              "{group}"
            ]
          }
        ]
      },
      "deactivate": {
        "commands": [
          {
            "from": "vgchange(8), lvm2 2.03.16",
            "run": [
              "vgchange",
              "--activate",
              "n",
              "{group}"
            ]
          }
        ]
      },
      "export": {
        "commands": [
          {
            "from": "vgexport(8), lvm2 2.03.16",
            "run": [
              "vgexport",
              "{group}"
            ]
          }
        ]
      },
      "import": {
        "commands": [
          {
            "from": "pvs(8), lvm2 2.03.16",
            "run": [
              "pvs",
              "--options",
              "pv_name,vg_name,pv_size"
            ]
          },
          {
            "from": "vgimport(8), lvm2 2.03.16",
            "run": [
              "vgimport",
              "{group}"
            ]
          }
        ]
      },
      "activate": {
        "commands": [
          {
            "from": "vgchange(8), lvm2 2.03.16",
            "run": [
              "vgchange",
              "--activate",
              "y",
              "{group}"
            ]
          }
        ]
      },
      "make-logical-volume": {
        "commands": [
          {
            "from": "lvcreate(8), lvm2 2.03.16",
            "run": [
              "lvcreate",
              [
                "--stripes",
                "{stripes}"
              ],
              [
                "--type",
                "raid1",
                "--mirrors",
                "{mirrors}"
              ],
              "--size",
              "{size}",
              "--name",
              "{logical-volume-name}",
              "{group}"
            ]
          }
        ]
      },
      "extend-logical-volume": {
        "commands": [
          {
            "from": "lvextend(8), lvm2 2.03.16",
            "run": [
              "lvextend",
              "--size",
              "{size}",
              "{device}"
            ]
          }
        ]
      },
      "reduce-logical-volume": {
        "commands": [
          {
            "from": "lvreduce(8), lvm2 2.03.16",
            "run": [
              "lvreduce",
              "--size",
              "{size}",
              "{device}"
            ]
          }
        ]
      },
      "remove-file-system": {
        "commands": [
          {
            "from": "lvremove(8), lvm2 2.03.16",
            "run": [
              "lvremove",
              "{device}"
            ]
          }
        ]
      }
    },
    "place": {
      "file": "shipped procedures linux-lvm.yaml",
      "line": 2,
      "column": 8
    }
  },
  {
    "of": "guest",
    "name": "linux",
    "like": "other",
    "actions": {
      "check-layers": {
        "commands": [
          {
            "from": "lsblk(8), util-linux 2.38.1",
            "run": [
              "lsblk",
              "--output",
              "NAME,SIZE,TYPE,MOUNTPOINTS"
            ]
          },
          {
            "from": "findmnt(8), util-linux 2.38.1",
            "run": [
              "findmnt",
              "--df",
              "--real"
            ]
          }
        ]
      },
      "see-device": {
        "commands": [
          {
            "from": "lsblk(8), util-linux 2.38.1",
            "run": [
              "lsblk",
              "--bytes",
              "--output",
              "NAME,SIZE,TYPE,MOUNTPOINTS"
            ]
          }
        ]
      },
      "see-size": {
        "commands": [
          {
            "from": "Red Hat Enterprise Linux 6, Virtualization Administration Guide, blockresize",
            "write": "1",
            "into": "/sys/class/block/{device-name}/device/rescan"
          },
          {
            "from": "lsblk(8), util-linux 2.38.1",
            "run": [
              "lsblk",
              "--bytes",
              "--output",
              "NAME,SIZE,TYPE,MOUNTPOINTS"
            ]
          }
        ]
      },
      "grow-partition": {
        "commands": [
          {
            "from": "growpart(1), cloud-utils 0.33",
            "run": [
              "growpart",
              "{device}",
              "{partition-number}"
            ]
          },
          {
            "from": "partx(8), util-linux 2.38.1",
            "run": [
              "partx",
              "--update",
              "{device}"
            ]
          }
        ]
      },
      "grow-inside": {
        "commands": [
          {
            "from": "xfs_growfs(8), xfsprogs 6.1.0",
            "run": [
              "xfs_growfs",
              "{mount}"
            ]
          },
          {
            "from": "resize2fs(8), e2fsprogs 1.47.0",
            "run": [
              "resize2fs",
              "{file-system-device}"
            ]
          }
        ]
      },
      "stop-use": {
        "commands": [
          {
            "from": "fuser(1), psmisc 23.6",
            "run": [
              "fuser",
              "--verbose",
              "--mount",
              "{mounts}"
            ]
          }
        ]
      },
      "unmount": {
        "commands": [
          {
            "from": "umount(8), util-linux 2.38.1",
            "run": [
              "umount",
              "{mount}"
            ]
          }
        ]
      },
      "unmount-swap": {
        "commands": [
          {
            "from": "swapoff(8), util-linux 2.38.1",
            "run": [
              "swapoff",
              "{device}"
            ]
          }
        ]
      },
      "mount": {
        "commands": [
          {
            "from": "mount(8), util-linux 2.38.1",
            "run": [
              "mount",
              "{device}",
              "{mount}"
            ]
          }
        ]
      },
      "mount-swap": {
        "commands": [
          {
            "from": "swapon(8), util-linux 2.38.1",
            "run": [
              "swapon",
              "{device}"
            ]
          }
        ]
      },
      "export-pool": {
        "commands": [
          {
            "from": "memory",
            "run": [
              "zpool",
              "export",
              "POOL"
            ]
          }
        ]
      },
      "import-pool": {
        "commands": [
          {
            "from": "memory",
            "run": [
              "zpool",
              "import",
              "POOL"
            ]
          }
        ]
      },
      "make-file-system": {
        "commands": [
          {
            "types": [
              "ext2",
              "ext3",
              "ext4"
            ],
            "from": "mke2fs(8), e2fsprogs 1.47.0",
            "run": [
              "mke2fs",
              "-t",
              "{type}",
              [
                "-m",
                "{reserve}"
              ],
              [
                "-b",
                "{block-size}"
              ],
              [
                "-i",
                "{inode-ratio}"
              ],
              "{device}"
            ]
          },
          {
            "types": [
              "xfs"
            ],
            "from": "mkfs.xfs(8), xfsprogs 6.1.0",
            "run": [
              "mkfs.xfs",
              [
                "-b",
                "size={block-size}"
              ],
              [
                "-m",
                "rmapbt={reverse-map}"
              ],
              "{device}"
            ]
          },
          {
            "types": [
              "btrfs"
            ],
            "from": "mkfs.btrfs(8), btrfs-progs 6.2",
            "run": [
              "mkfs.btrfs",
              "{device}"
            ]
          },
          {
            "types": [
              "zfs"
            ],
            "from": "memory",
            "run": [
              "zpool",
              "create",
              "-m",
              "{mount}",
              "POOL",
              "{device}"
            ]
          },
          {
            "types": [
              "swap"
            ],
            "from": "mkswap(8), util-linux 2.38.1",
            "run": [
              "mkswap",
              "{device}"
            ]
          }
        ]
      },
      "make-file-system-over": {
        "commands": [
          {
            "types": [
              "ext2",
              "ext3",
              "ext4"
            ],
            "from": "mke2fs(8), e2fsprogs 1.47.0",
            "run": [
              "mke2fs",
              "-t",
              "{type}",
              [
                "-m",
                "{reserve}"
              ],
              [
                "-b",
                "{block-size}"
              ],
              [
                "-i",
                "{inode-ratio}"
              ],
              "{device}"
            ]
          },
          {
            "types": [
              "xfs"
            ],
            "from": "mkfs.xfs(8), xfsprogs 6.1.0",
            "run": [
              "mkfs.xfs",
              "-f",
              [
                "-b",
                "size={block-size}"
              ],
              [
                "-m",
                "rmapbt={reverse-map}"
              ],
              "{device}"
            ]
          },
          {
            "types": [
              "btrfs"
            ],
            "from": "mkfs.btrfs(8), btrfs-progs 6.2",
            "run": [
              "mkfs.btrfs",
              "-f",
              "{device}"
            ]
          },
          {
            "types": [
              "swap"
            ],
            "from": "mkswap(8), util-linux 2.38.1",
            "run": [
              "mkswap",
              "{device}"
            ]
          }
        ]
      },
      "set-reserve": {
        "commands": [
          {
            "from": "tune2fs(8), e2fsprogs 1.47.0",
            "run": [
              "tune2fs",
              "-m",
              "{reserve}",
              "{device}"
            ]
          }
        ]
      },
      "grow-mounted": {
        "commands": [
          {
            "types": [
              "ext2",
              "ext3",
              "ext4"
            ],
            "from": "resize2fs(8), e2fsprogs 1.47.0",
            "run": [
              "resize2fs",
              "{device}"
            ]
          },
          {
            "types": [
              "xfs"
            ],
            "from": "xfs_growfs(8), xfsprogs 6.1.0",
            "run": [
              "xfs_growfs",
              "{mount}"
            ]
          },
          {
            "types": [
              "btrfs"
            ],
            "from": "btrfs-filesystem(8), btrfs-progs 6.2",
            "run": [
              "btrfs",
              "filesystem",
              "resize",
              "max",
              "{mount}"
            ]
          },
          {
            "types": [
              "zfs"
            ],
            "from": "zpool-online(8), OpenZFS 2.2.2",
            "run": [
              "zpool",
              "online",
              "-e",
              "POOL",
              "{device}"
            ]
          },
          {
            "types": [
              "ntfs"
            ],
            "from": "ntfsresize(8), ntfs-3g 2022.10.3",
            "run": [
              "ntfsresize",
              "{device}"
            ]
          },
          {
            "types": [
              "gfs2"
            ],
            "from": "gfs2_grow(8), gfs2-utils 3.5.0",
            "run": [
              "gfs2_grow",
              "{mount}"
            ]
          },
          {
            "types": [
              "ocfs2"
            ],
            "from": "tunefs.ocfs2(8), ocfs2-tools 1.8.7",
            "run": [
              "tunefs.ocfs2",
              "--volume-size",
              "{device}"
            ]
          },
          {
            "types": [
              "swap"
            ],
            "from": "swapoff(8), util-linux 2.38.1",
            "run": [
              "swapoff",
              "{device}"
            ]
          },
          {
            "types": [
              "swap"
            ],
            "from": "mkswap(8), util-linux 2.38.1",
            "run": [
              "mkswap",
              "{device}"
            ]
          },
          {
            "types": [
              "swap"
            ],
            "from": "swapon(8), util-linux 2.38.1",
            "run": [
              "swapon",
              "{device}"
            ]
          }
        ]
      },
      "grow-unmounted": {
        "commands": [
          {
            "types": [
              "ext2",
              "ext3",
              "ext4"
            ],
            "from": "e2fsck(8), e2fsprogs 1.47.0",
            "run": [
              "e2fsck",
              "-f",
              "{device}"
            ]
          },
          {
            "types": [
              "ext2",
              "ext3",
              "ext4"
            ],
            "from": "resize2fs(8), e2fsprogs 1.47.0",
            "run": [
              "resize2fs",
              "{device}"
            ]
          },
          {
            "types": [
              "xfs"
            ],
            "from": "xfs_growfs(8), xfsprogs 6.1.0",
            "run": [
              "xfs_growfs",
              "{mount}"
            ]
          },
          {
            "types": [
              "btrfs"
            ],
            "from": "btrfs-filesystem(8), btrfs-progs 6.2",
            "run": [
              "btrfs",
              "filesystem",
              "resize",
              "max",
              "{mount}"
            ]
          },
          {
            "types": [
              "ntfs"
            ],
            "from": "ntfsresize(8), ntfs-3g 2022.10.3",
            "run": [
              "ntfsresize",
              "{device}"
            ]
          },
          {
            "types": [
              "gfs2"
            ],
            "from": "gfs2_grow(8), gfs2-utils 3.5.0",
            "run": [
              "gfs2_grow",
              "{mount}"
            ]
          },
          {
            "types": [
              "ocfs2"
            ],
            "from": "tunefs.ocfs2(8), ocfs2-tools 1.8.7",
            "run": [
              "tunefs.ocfs2",
              "--volume-size",
              "{device}"
            ]
          },
          {
            "types": [
              "swap"
            ],
            "from": "swapoff(8), util-linux 2.38.1",
            "run": [
              "swapoff",
              "{device}"
            ]
          },
          {
            "types": [
              "swap"
            ],
            "from": "mkswap(8), util-linux 2.38.1",
            "run": [
              "mkswap",
              "{device}"
            ]
          },
          {
            "types": [
              "swap"
            ],
            "from": "swapon(8), util-linux 2.38.1",
            "run": [
              "swapon",
              "{device}"
            ]
          }
        ]
      },
      "shrink-mounted": {
        "commands": [
          {
            "types": [
              "ext2",
              "ext3",
              "ext4"
            ],
            "from": "e2fsck(8), e2fsprogs 1.47.0",
            "run": [
              "e2fsck",
              "-f",
              "{device}"
            ]
          },
          {
            "types": [
              "ext2",
              "ext3",
              "ext4"
            ],
            "from": "resize2fs(8), e2fsprogs 1.47.0",
            "run": [
              "resize2fs",
              "{device}",
              "{size}"
            ]
          },
          {
            "types": [
              "btrfs"
            ],
            "from": "btrfs-filesystem(8), btrfs-progs 6.2",
            "run": [
              "btrfs",
              "filesystem",
              "resize",
              "{size}",
              "{mount}"
            ]
          },
          {
            "types": [
              "ntfs"
            ],
            "from": "ntfsresize(8), ntfs-3g 2022.10.3",
            "run": [
              "ntfsresize",
              "--size",
              "{size-bytes}",
              "{device}"
            ]
          },
          {
            "types": [
              "swap"
            ],
            "from": "swapoff(8), util-linux 2.38.1",
            "run": [
              "swapoff",
              "{device}"
            ]
          },
          {
            "types": [
              "swap"
            ],
            "from": "mkswap(8), util-linux 2.38.1",
            "run": [
              "mkswap",
              "{device}"
            ]
          },
          {
            "types": [
              "swap"
            ],
            "from": "swapon(8), util-linux 2.38.1",
            "run": [
              "swapon",
              "{device}"
            ]
          }
        ]
      }
    },
    "place": {
      "file": "shipped procedures linux.yaml",
      "line": 2,
      "column": 8
    }
  },
  {
    "of": "guest",
    "name": "other",
    "actions": {
      "check-backup": {
        "does": "Check that {what} has a recent enough backup, and that a restore of it has been tried.",
        "why": "A later step deletes or overwrites it, and then only the backup can restore it.",
        "seen": "A file restored from the backup is what it was."
      },
      "check-group": {
        "does": "Check that volume group {group} shows {extents} extents of {extent}, {size} in all, before anything is built on it.",
        "why": "A member that is missing or has the wrong size shows here.",
        "seen": "The group shows {extents} extents of {extent}."
      },
      "check-replacement": {
        "does": "Check that {volume} holds everything that {old} held, and that whatever uses it works.",
        "why": "As long as the old one exists, it is the quickest way back.",
        "seen": "Whatever uses {volume} works, and a comparison with {old} shows no difference."
      },
      "check-member-replacement": {
        "does": "Check that volume group {group} has the smaller {volume} as a member and no longer has {old}, and that whatever uses the group works.",
        "why": "The data has been moved off the old one, so it is no copy of it; but deleting a volume that is still a member would break the group.",
        "seen": "The group lists {volume} and not {old}."
      },
      "check-root": {
        "does": "Check that the file system {mount} on {on} is {type}, as declared.",
        "why": "What a server starts from is made by the image or the installer that the server starts from, never from within the guest that runs on it.",
        "seen": "The guest shows {type} at {mount}."
      },
      "check-missed": {
        "does": "Leave {volume} unattached until it is certain that nobody needs it.",
        "why": "An unattached volume is still billed, but it can be attached again; a deleted one cannot.",
        "seen": "Nobody has asked for {volume}.",
        "back": "Attach it again."
      },
      "check-name": {
        "does": "Where the provider or the guest shows the name {old}, change it to {name}; nothing else changes.",
        "why": "The next change refers to it by its new name.",
        "seen": "Only {name} is shown.",
        "back": "Change it back to {old}."
      },
      "check-layers": {
        "does": "Check that this is there as declared: {declared}.",
        "why": "It is only being declared, so nothing is created, attached or formatted. `ullage survey compare` tells where it differs from a survey; where it does, correct the declaration before anything else is changed.",
        "seen": "The guest shows all of it as declared."
      },
      "see-device": {
        "does": "Check that the new device of {volume} has appeared, with {size}, and note its name.",
        "why": "All later steps use the device's name; with the wrong one they change somebody else's data.",
        "seen": "One new device of {size}, {bytes} bytes, is there, with what is expected on it and nothing else."
      },
      "see-size": {
        "does": "Rescan the device of {volume} until the guest shows {size}.",
        "why": "A guest keeps the size it saw when it started or when the volume was attached.",
        "seen": "The guest shows {size}, {bytes} bytes, for {volume}."
      },
      "grow-partition": {
        "does": "If {volume} is partitioned, grow the partition that is to be larger, keeping its start; it must be the last one.",
        "why": "A file system cannot be larger than its partition, nor than the mapping of an encrypted volume, which is grown as well.",
        "seen": "The partition ends where {volume} ends, and begins where it did.",
        "back": "A partition can be made as small as it was, as long as nothing on it has grown."
      },
      "grow-inside": {
        "does": "Grow what is on {volume}, layer by layer: first the volume manager's parts, if any, then the file system.",
        "why": "Until then the added capacity is paid for but cannot be used.",
        "seen": "Every layer on {volume} shows the new size.",
        "back": "Where every layer can be made smaller, make them as small as they were, the file system first."
      },
      "grow-member": {
        "does": "Grow {volume} as a member of volume group {group}; if it is in a partition, grow that first.",
        "why": "The group keeps using the size a member had when it joined.",
        "seen": "The group shows more free extents.",
        "back": "The member can be made as small as it was, as long as its new extents are free."
      },
      "make-group": {
        "does": "Create volume group {group} on {members}, with extents of {extent}.",
        "seen": "The group shows its members and its free extents.",
        "back": "Remove the group again, as long as nothing is in it."
      },
      "make-group-over": {
        "does": "Create volume group {group} on {members}, with extents of {extent}; any data on them is overwritten.",
        "seen": "The group shows its members and its free extents.",
        "back": "Nothing brings it back but its backup."
      },
      "join-group": {
        "does": "Add {volume} to volume group {group}.",
        "seen": "The group lists {volume} and more free extents.",
        "back": "Remove {volume} from the group, as long as none of its extents are used."
      },
      "join-group-over": {
        "does": "Add {volume} to volume group {group}; any data on it is overwritten.",
        "seen": "The group lists {volume} and more free extents.",
        "back": "Nothing brings it back but its backup."
      },
      "leave-group": {
        "does": "Move the data on {volume} to the other members of volume group {group}, check that nothing is left on it, and remove it from the group.",
        "why": "Removing a member that still holds data breaks the group.",
        "seen": "The group no longer lists {volume}, and everything in it is as it was.",
        "back": "Add {volume} to the group again."
      },
      "replace-member": {
        "does": "Add the smaller {volume} to volume group {group}, move the data on the old one to it and to the other members, and remove the old one.",
        "why": "Removing a member that still holds data breaks the group.",
        "seen": "The group lists the smaller {volume} only, and everything in it is as it was.",
        "back": "Add the old one to the group again, and move the data back to it."
      },
      "remove-group": {
        "does": "Remove volume group {group} and everything in it.",
        "seen": "The group is no longer listed.",
        "back": "Nothing brings it back but its backup."
      },
      "rename-group": {
        "does": "Rename volume group {old} to {group}, also wherever the old name is part of a device path, such as in fstab.",
        "seen": "The group is listed as {group}, and everything in it is mounted after a restart.",
        "back": "Rename it back to {old}."
      },
      "re-extent": {
        "does": "Change the extents of volume group {group} from {was} to {extent}, if its contents allow it.",
        "why": "Everything in the group must start and end on a boundary of the new extents.",
        "seen": "The group shows extents of {extent}.",
        "back": "Change them back to {was}."
      },
      "convert-layout": {
        "does": "Change the layout of the logical volumes in volume group {group} from {was} to {layout}.",
        "seen": "The logical volumes show as {layout}.",
        "back": "Change them back to {was}, as long as the group has the room."
      },
      "lay-out-anew": {
        "does": "Remove everything in volume group {group}, which is {was}, create its logical volumes and file systems again, {layout}, and restore their contents from the backup.",
        "why": "Striped extents cannot be made linear in place, nor the other way round.",
        "seen": "The logical volumes show as {layout}, and the restored files are what they were.",
        "back": "Nothing brings it back but its backup."
      },
      "deactivate": {
        "does": "Deactivate volume group {group}.",
        "why": "A group in use must not lose its members.",
        "seen": "No logical volume of {group} is active.",
        "back": "Activate it again."
      },
      "export": {
        "does": "Mark volume group {group} as exported.",
        "why": "Nothing can use it by mistake until the other server imports it.",
        "seen": "The group shows as exported.",
        "back": "Import it again where its members are."
      },
      "check-detached": {
        "does": "Check that all {count} members of volume group {group} are detached before the first is attached again.",
        "why": "A volume group must be moved as a whole; one that is split between servers is broken.",
        "seen": "The provider shows none of the {count} as attached.",
        "back": "Attach all of them to the server that had them, and import the group there."
      },
      "import": {
        "does": "Check that all {count} members of volume group {group} are present, and import it.",
        "seen": "The group shows with {count} members, none of them missing.",
        "back": "Mark it as exported again."
      },
      "activate": {
        "does": "Activate volume group {group}.",
        "seen": "The logical volumes of {group} are active.",
        "back": "Deactivate it again."
      },
      "stop-use": {
        "does": "Stop whatever uses {mounts} on {server}.",
        "why": "A file system cannot be unmounted while a file on it is open.",
        "seen": "No process uses {mounts}.",
        "back": "Start again what was stopped."
      },
      "check-fstab": {
        "does": "Before {server} next starts, remove {mount} from its fstab.",
        "why": "It will not be there then, and the guest would wait for it, or not come up.",
        "seen": "No line of fstab is about {mount}.",
        "back": "Put the line back."
      },
      "unmount": {
        "does": "Unmount {mount}; if it is not coming back to {server}, remove it from fstab as well.",
        "why": "Data not yet written then reaches the volume, and nothing writes to it any more.",
        "seen": "{mount} is in no list of what is mounted.",
        "back": "Mount it again, and put its line back into fstab."
      },
      "unmount-swap": {
        "does": "Take the swap space {mount} out of use; if it is not coming back to {server}, remove it from fstab as well.",
        "seen": "{mount} is in no list of swap spaces.",
        "back": "Put it into use again."
      },
      "mount": {
        "does": "Mount {mount} from {on}, and add it to fstab.",
        "seen": "{mount} is mounted, with the size and the files that are expected.",
        "back": "Unmount it again, and take its line out of fstab."
      },
      "mount-swap": {
        "does": "Put the swap space {mount} into use, and add it to fstab.",
        "seen": "{mount} is in the list of swap spaces.",
        "back": "Take it out of use again."
      },
      "export-pool": {
        "does": "Export the pool of {mount}.",
        "why": "Two servers that have imported one pool destroy it; and data not yet written then reaches the volume.",
        "seen": "The pool is no longer listed on this server.",
        "back": "Import it here again."
      },
      "import-pool": {
        "does": "Make sure that the pool of {mount} is imported on this server and on no other, and that it is mounted at {mount}.",
        "seen": "The pool of {mount} is listed here, and mounted.",
        "back": "Export it again."
      },
      "make-logical-volume": {
        "does": "Create a logical volume of {size} for {mount} in volume group {group}, {layout}.",
        "seen": "A logical volume of {size} is listed in {group}.",
        "back": "Remove it again, as long as nothing is on it."
      },
      "extend-logical-volume": {
        "does": "Extend the logical volume of {mount} in volume group {group} from {was} to {size}.",
        "why": "A file system can only grow to the end of its device.",
        "seen": "The logical volume shows {size}.",
        "back": "Reduce it to {was} again, as long as its file system has not grown."
      },
      "reduce-logical-volume": {
        "does": "Reduce the logical volume of {mount} in volume group {group} to {size}, but not below the size of its file system.",
        "why": "Whatever is beyond the new end is lost.",
        "seen": "The logical volume shows {size}, and the file system on it passes its check.",
        "back": "Nothing brings it back but its backup."
      },
      "cut-logical-volume": {
        "does": "Reduce the logical volume of {mount} in volume group {group} from {was} to {size}; the file system on it is created again.",
        "why": "A file system of this type cannot be made smaller: what it holds comes back from its backup.",
        "seen": "The logical volume shows {size}.",
        "back": "Nothing brings it back but its backup."
      },
      "remove-file-system": {
        "does": "Remove {mount} and its logical volume from volume group {group}.",
        "seen": "{mount} is mounted nowhere, and its logical volume is not listed.",
        "back": "Nothing brings it back but its backup."
      },
      "give-up-file-system": {
        "does": "Stop using {mount}: nothing mounts it any more. The data on {volume} stays until something else is created there.",
        "seen": "Nothing mounts {mount}, also after a restart.",
        "back": "Mount it again: the data on {volume} is untouched until something else is created there."
      },
      "make-file-system": {
        "does": "Create a file system, {type}{how}, for {mount} on {on}.",
        "seen": "The device shows {type}.",
        "back": "Nothing is lost if it is made again, as long as nothing has been written to it."
      },
      "make-file-system-over": {
        "does": "Create a file system, {type}{how}, for {mount} on {on}; any data there is overwritten.",
        "seen": "The device shows {type}.",
        "back": "Nothing brings it back but its backup."
      },
      "make-anew": {
        "does": "Reformat {mount} on {on}: {type}, {size}{how}.",
        "why": "{reason}",
        "seen": "The device shows {type}, and nothing is on it.",
        "back": "Nothing brings it back but its backup."
      },
      "set-reserve": {
        "does": "Set the reserved blocks of {mount}, {type}, to {reserve} %.",
        "why": "It can be set while the file system is in use, and nothing it holds is touched.",
        "seen": "The superblock shows {reserve} % of its blocks as reserved.",
        "back": "Set what it was before."
      },
      "bring-back": {
        "does": "Restore what {mount} held from its backup, and compare.",
        "seen": "A comparison with the backup shows no difference."
      },
      "bring-over": {
        "does": "Restore to {volume} what {old} held, from its backup.",
        "seen": "A comparison with the backup shows no difference."
      },
      "grow-mounted": {
        "does": "Grow the file system {mount}, {type}, to the end of its device, while it is mounted.",
        "why": "Until then the added capacity is paid for but cannot be used.",
        "seen": "`df` shows the new size of {mount}.",
        "back": "{back}"
      },
      "grow-unmounted": {
        "does": "Grow {mount}, {type}, to the end of its device, while it is unmounted.",
        "seen": "The file system shows its new size when it is mounted again.",
        "back": "{back}"
      },
      "shrink-mounted": {
        "does": "Shrink the file system {mount}, {type}, to {size} or a little less, while it is mounted.",
        "seen": "`df` shows no more than {size} for {mount}.",
        "back": "Nothing brings it back but its backup."
      },
      "shrink-unmounted": {
        "does": "Check the file system {mount}, {type}, and shrink it to {size} or a little less, while it is unmounted.",
        "seen": "Its check finds nothing, and it shows no more than {size}.",
        "back": "Nothing brings it back but its backup."
      },
      "put-smaller-in-place": {
        "does": "Stop whatever uses {volume}. Create on the smaller {volume} what is on the old one, copy the files across and compare, unmount the old one and mount the smaller one in its place.",
        "why": "A block-by-block copy would not fit, and what is written during the copy would be lost.",
        "seen": "Whatever uses {volume} works, and a comparison with the old one shows no difference.",
        "back": "Mount the old one again: it still holds everything until it is deleted."
      }
    },
    "place": {
      "file": "shipped procedures other.yaml",
      "line": 2,
      "column": 8
    }
  },
  {
    "of": "provider",
    "name": "any",
    "actions": {
      "check-server-there": {
        "does": "Check that server {server} is there as declared: {declared}.",
        "why": "It is only being declared, so nothing is created, attached or formatted. `ullage survey compare` tells where it differs from a survey; where it does, correct the declaration before anything else is changed.",
        "seen": "The provider shows {server} as declared."
      },
      "check-volume-there": {
        "does": "Check that volume {volume} is there as declared: {declared}.",
        "why": "It is only being declared, so nothing is created, attached or formatted. `ullage survey compare` tells where it differs from a survey; where it does, correct the declaration before anything else is changed.",
        "seen": "The provider shows {volume} as declared."
      },
      "check-identity": {
        "does": "Find out which {kind} {name} is: the one with the id {was}, as on main, or the one with the id {id}. Change nothing about either before that is settled.",
        "why": "Another id is another {kind}: whatever is done next would be done to that one.",
        "seen": "It is settled which of the two {name} is, and both are as they were."
      },
      "create-volume": {
        "does": "Create volume {volume}: {size}, tier {tier}{where}{how}.",
        "seen": "The provider shows {volume} with {size}, attached to nothing.",
        "back": "Delete {volume} again, as long as nothing has been put on it."
      },
      "grow-volume": {
        "does": "Grow volume {volume} from {was} to {size}.",
        "seen": "The provider shows {volume} with {size}.",
        "back": "A grown volume cannot be made smaller: {was} comes back only as a new volume and a copy of the files."
      },
      "move-tier": {
        "does": "Move volume {volume} from tier {was} to {tier}.",
        "why": "Whether it can stay attached meanwhile is in the documentation of the provider.",
        "seen": "The provider shows {volume} in tier {tier}.",
        "back": "Move {volume} back to tier {was}, where the provider lets it go back."
      },
      "create-smaller": {
        "does": "Create a volume of {size} beside {volume}, tier {tier}{how}, to replace it and then take its name.",
        "why": "A volume cannot be made smaller in place: whatever is cut off is lost.",
        "seen": "The provider shows a second volume of {size}.",
        "back": "Delete the new volume again; the old one is untouched."
      },
      "attach-smaller": {
        "does": "Attach the smaller {volume} to {server} beside the old one.",
        "seen": "The guest of {server} shows both disks.",
        "back": "Detach the smaller one again."
      },
      "detach-old": {
        "does": "Detach the old {volume} from {server}.",
        "seen": "The provider shows the old {volume} as attached to nothing.",
        "back": "Attach the old one to {server} again."
      },
      "fill-smaller": {
        "does": "Copy the files to the smaller {volume}, from the old one or from its backup, on a server that both can be attached to.",
        "why": "A block-by-block copy would not fit.",
        "seen": "A comparison of the files shows no difference.",
        "back": "Keep using the old one: it still holds everything."
      },
      "copy-across": {
        "does": "Create {volume} again at site {site}: {size}, tier {tier}{how}. Restore to it what it holds at {was}, from a backup taken when nothing writes to it any more{copied}.",
        "why": "Changing its declaration does not copy its data to another site.",
        "seen": "A comparison of the files at both sites shows no difference.",
        "back": "Keep using {volume} at {was}, and delete the copy."
      },
      "fill-boot": {
        "does": "Put on {volume} what {server} is to start from: what {old} held, or a newly installed guest.",
        "seen": "{server} would find a guest to start from on {volume}.",
        "back": "Keep starting {server} from what it started from."
      },
      "install-over": {
        "does": "Put {what} on {volume}, with the image or the installer that {server} is to start from; any data there is overwritten.",
        "why": "What a server starts from is never made from within the guest that runs on it.",
        "seen": "The image or the installer reports that it is done.",
        "back": "Nothing brings it back but its backup."
      },
      "unprotect": {
        "does": "Remove the protection of {volume} against deletion.",
        "seen": "The provider shows {volume} as not protected.",
        "back": "Protect {volume} again."
      },
      "unprotect-old": {
        "does": "Remove the protection of the old {volume} against deletion.",
        "seen": "The provider shows the old {volume} as not protected.",
        "back": "Protect it again."
      },
      "protect": {
        "does": "Protect {volume} against deletion.",
        "seen": "The provider shows {volume} as protected.",
        "back": "Remove the protection again."
      },
      "share": {
        "does": "Allow {volume} to be attached to several servers at once.",
        "seen": "The provider shows {volume} as one that several servers may have.",
        "back": "Allow it on one server only, as long as no second one has it."
      },
      "unshare": {
        "does": "Allow {volume} to be attached to one server only.",
        "seen": "The provider shows {volume} as one that a single server may have.",
        "back": "Allow it on several servers again."
      },
      "attach": {
        "does": "Attach volume {volume} to {server}.",
        "seen": "The provider shows {volume} as attached to {server}.",
        "back": "Detach {volume} again, once nothing on {server} uses it."
      },
      "attach-boot": {
        "does": "Attach volume {volume} to {server} as its boot volume.",
        "seen": "The provider shows {volume} as what {server} starts from.",
        "back": "Detach {volume} again before {server} is started."
      },
      "detach": {
        "does": "Detach volume {volume} from {server}.",
        "seen": "The provider shows {volume} as {shown}.",
        "back": "Attach {volume} to {server} again."
      },
      "attach-for-a-while": {
        "does": "Attach {volume} to {server} for a while.",
        "why": "Volume group {group} can only move its data to {volume} where its other members are.",
        "seen": "The provider shows {volume} as attached to {server}.",
        "back": "Detach {volume} from {server} again, as long as it is no member of {group}."
      },
      "detach-again": {
        "does": "Detach {volume} from {server} again.",
        "why": "It is a member of volume group {group} now, and goes where that goes.",
        "seen": "The provider shows {volume} as {shown}.",
        "back": "Attach {volume} to {server} again."
      },
      "delete-volume": {
        "does": "Delete volume {volume}, {size}, for good.",
        "seen": "The provider no longer lists {volume}.",
        "back": "Nothing brings it back but its backup."
      },
      "delete-old": {
        "does": "Delete the old {volume}, {size}, for good; the new one keeps or takes its name.",
        "seen": "The provider no longer lists the old {volume}.",
        "back": "Nothing brings it back but its backup."
      },
      "create-server": {
        "does": "Create server {server}{where}{boot}, {power}.",
        "seen": "The provider shows {server}, {power}.",
        "back": "Delete {server} again; its volumes stay."
      },
      "delete-server": {
        "does": "Delete server {server}; its volumes stay.",
        "why": "Some providers delete a boot volume with its server unless told to keep it.",
        "seen": "The provider no longer lists {server}, and its volumes are still there.",
        "back": "Create {server} again and attach its volumes; its address and its other settings may not come back."
      },
      "stop-server": {
        "does": "Shut {server} down from within its guest, and check at the provider that it is stopped.",
        "why": "A boot volume is in use as long as its server runs, and data that is not yet written would be lost.",
        "seen": "The provider shows {server} as stopped.",
        "back": "Start {server} again."
      },
      "start-server": {
        "does": "Start {server}, and check that its guest comes up.",
        "seen": "The guest of {server} answers, and everything in its fstab is mounted.",
        "back": "Shut {server} down again."
      },
      "change-server-type": {
        "does": "Change {server} from server type {was} to {type}, while it is stopped.",
        "why": "Some providers can change it while the server runs; their documentation says so.",
        "seen": "The provider shows {server} as {type}.",
        "back": "Change it back to {was} while it is stopped."
      },
      "move-server": {
        "does": "Move {server} from site {was} to {site}, or create it again there, while it is stopped.",
        "why": "Its volumes must be at the same site.",
        "seen": "The provider shows {server} at {site}.",
        "back": "Move it back to {was}, as long as its volumes are still there."
      },
      "set-boot": {
        "does": "Set {server} to start from {volume}.",
        "seen": "The provider shows that {server} starts from {volume}.",
        "back": "Set {server} to start from what it started from before."
      }
    },
    "place": {
      "file": "shipped procedures provider.yaml",
      "line": 3,
      "column": 11
    }
  },
  {
    "of": "guest",
    "name": "windows",
    "like": "other",
    "actions": {
      "see-device": {
        "does": "Rescan the disks, check that {volume} has appeared with {size}, and bring it online."
      },
      "see-size": {
        "does": "Rescan the disks until the guest shows {size} for {volume}."
      },
      "grow-partition": {
        "does": "Extend the partition on {volume} that is to be larger into the space behind it."
      },
      "unmount": {
        "does": "Take {mount} offline."
      },
      "mount": {
        "does": "Bring {mount} online."
      },
      "grow-mounted": {
        "does": "Extend {mount} into the space behind it, in Disk Management."
      }
    },
    "place": {
      "file": "shipped procedures windows.yaml",
      "line": 2,
      "column": 8
    }
  }
];
