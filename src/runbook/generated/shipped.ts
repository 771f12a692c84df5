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
      "make-group-over": {
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
      "join-group-over": {
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
            "from": "lvmraid(7), lvm2 2.03.16",
            "run": [
              "lvconvert",
              "--type",
              "{layout-type}",
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
              "-an",
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
              "-ay",
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
      "cut-logical-volume": {
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
              "--output",
              "NAME,SIZE,TYPE,MOUNTPOINTS"
            ]
          }
        ]
      },
      "see-size": {
        "commands": [
          {
            "from": "Red Hat Enterprise Linux 6, Virtualization Administration Guide, blockresize: SCSI devices are rescanned by hand, virtio-blk devices need it not; the path under /sys/class/block from memory",
            "write": "1",
            "into": "/sys/class/block/{device-name}/device/rescan"
          },
          {
            "from": "lsblk(8), util-linux 2.38.1",
            "run": [
              "lsblk",
              "--output",
              "NAME,SIZE,TYPE,MOUNTPOINTS"
            ]
          }
        ]
      },
      "grow-partition": {
        "commands": [
          {
            "from": "memory",
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
      "make-anew": {
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
            "from": "memory",
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
            "from": "memory",
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
      },
      "shrink-unmounted": {
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
        "why": "A later step deletes or overwrites it, and then only the backup can restore it."
      },
      "check-group": {
        "does": "Check that volume group {group} shows {extents} extents of {extent}, {size} in all, before anything is built on it.",
        "why": "A member that is missing or has the wrong size shows here."
      },
      "check-replacement": {
        "does": "Check that {volume} holds everything that {old} held, and that whatever uses it works.",
        "why": "As long as the old one exists, it is the quickest way back."
      },
      "check-member-replacement": {
        "does": "Check that volume group {group} has the smaller {volume} as a member and no longer has {old}, and that whatever uses the group works.",
        "why": "The data has been moved off the old one, so it is no copy of it; but deleting a volume that is still a member would break the group."
      },
      "check-root": {
        "does": "Check that the file system {mount} on {on} is {type}, as declared.",
        "why": "What a server starts from is made by the image or the installer that the server starts from, never from within the guest that runs on it."
      },
      "check-missed": {
        "does": "Leave {volume} unattached until it is certain that nobody needs it.",
        "why": "An unattached volume is still billed, but it can be attached again; a deleted one cannot."
      },
      "check-name": {
        "does": "Where the provider or the guest shows the name {old}, change it to {name}; nothing else changes.",
        "why": "The next change refers to it by its new name."
      },
      "check-layers": {
        "does": "Check that this is there as declared: {declared}.",
        "why": "It is only being declared, so nothing is created, attached or formatted. `ullage survey compare` tells where it differs from a survey; where it does, correct the declaration before anything else is changed."
      },
      "see-device": {
        "does": "Check that the new device of {volume} has appeared, with {size}, and note its name.",
        "why": "All later steps use the device's name; with the wrong one they change somebody else's data."
      },
      "see-size": {
        "does": "Rescan the device of {volume} until the guest shows {size}.",
        "why": "A guest keeps the size it saw when it started or when the volume was attached."
      },
      "grow-partition": {
        "does": "If {volume} is partitioned, grow the partition that is to be larger, keeping its start; it must be the last one.",
        "why": "A file system cannot be larger than its partition."
      },
      "grow-inside": {
        "does": "Grow what is on {volume}, layer by layer: first the volume manager's parts, if any, then the file system.",
        "why": "Until then the added capacity is paid for but cannot be used."
      },
      "grow-member": {
        "does": "Grow {volume} as a member of volume group {group}; if it is in a partition, grow that first.",
        "why": "The group keeps using the size a member had when it joined."
      },
      "make-group": {
        "does": "Create volume group {group} on {members}, with extents of {extent}."
      },
      "make-group-over": {
        "does": "Create volume group {group} on {members}, with extents of {extent}; any data on them is overwritten."
      },
      "join-group": {
        "does": "Add {volume} to volume group {group}."
      },
      "join-group-over": {
        "does": "Add {volume} to volume group {group}; any data on it is overwritten."
      },
      "leave-group": {
        "does": "Move the data on {volume} to the other members of volume group {group}, check that nothing is left on it, and remove it from the group.",
        "why": "Removing a member that still holds data breaks the group."
      },
      "replace-member": {
        "does": "Add the smaller {volume} to volume group {group}, move the data on the old one to it and to the other members, and remove the old one.",
        "why": "Removing a member that still holds data breaks the group."
      },
      "remove-group": {
        "does": "Remove volume group {group} and everything in it."
      },
      "rename-group": {
        "does": "Rename volume group {old} to {group}, also wherever the old name is part of a device path, such as in fstab."
      },
      "re-extent": {
        "does": "Change the extents of volume group {group} from {was} to {extent}, if its contents allow it.",
        "why": "Everything in the group must start and end on a boundary of the new extents."
      },
      "convert-layout": {
        "does": "Change the layout of the logical volumes in volume group {group} from {was} to {layout}."
      },
      "lay-out-anew": {
        "does": "Remove everything in volume group {group}, which is {was}, create its logical volumes and file systems again, {layout}, and restore their contents from the backup.",
        "why": "Striped extents cannot be made linear in place, nor the other way round."
      },
      "deactivate": {
        "does": "Deactivate volume group {group}.",
        "why": "A group in use must not lose its members."
      },
      "export": {
        "does": "Mark volume group {group} as exported.",
        "why": "Nothing can use it by mistake until the other server imports it."
      },
      "check-detached": {
        "does": "Check that all {count} members of volume group {group} are detached before the first is attached again.",
        "why": "A volume group must be moved as a whole; one that is split between servers is broken."
      },
      "import": {
        "does": "Check that all {count} members of volume group {group} are present, and import it."
      },
      "activate": {
        "does": "Activate volume group {group}."
      },
      "stop-use": {
        "does": "Stop whatever uses {mounts} on {server}.",
        "why": "A file system cannot be unmounted while a file on it is open."
      },
      "check-fstab": {
        "does": "Before {server} next starts, remove {mount} from its fstab.",
        "why": "It will not be there then, and the guest would wait for it, or not come up."
      },
      "unmount": {
        "does": "Unmount {mount}; if it is not coming back to {server}, remove it from fstab as well.",
        "why": "Data not yet written then reaches the volume, and nothing writes to it any more."
      },
      "unmount-swap": {
        "does": "Take the swap space {mount} out of use; if it is not coming back to {server}, remove it from fstab as well."
      },
      "mount": {
        "does": "Mount {mount}, and add it to fstab."
      },
      "mount-swap": {
        "does": "Put the swap space {mount} into use, and add it to fstab."
      },
      "export-pool": {
        "does": "Export the pool of {mount}.",
        "why": "Two servers that have imported one pool destroy it; and data not yet written then reaches the volume."
      },
      "import-pool": {
        "does": "Make sure that the pool of {mount} is imported on this server and on no other, and that it is mounted at {mount}."
      },
      "make-logical-volume": {
        "does": "Create a logical volume of {size} for {mount} in volume group {group}, {layout}."
      },
      "extend-logical-volume": {
        "does": "Extend the logical volume of {mount} in volume group {group} from {was} to {size}.",
        "why": "A file system can only grow to the end of its device."
      },
      "reduce-logical-volume": {
        "does": "Reduce the logical volume of {mount} in volume group {group} to {size}, but not below the size of its file system.",
        "why": "Whatever is beyond the new end is lost."
      },
      "cut-logical-volume": {
        "does": "Reduce the logical volume of {mount} in volume group {group} from {was} to {size}; the file system on it is created again.",
        "why": "A file system of this type cannot be made smaller: what it holds comes back from its backup."
      },
      "remove-file-system": {
        "does": "Remove {mount} and its logical volume from volume group {group}."
      },
      "give-up-file-system": {
        "does": "Stop using {mount}: nothing mounts it any more. The data on {volume} stays until something else is created there."
      },
      "make-file-system": {
        "does": "Create a file system, {type}{how}, for {mount} on {on}."
      },
      "make-file-system-over": {
        "does": "Create a file system, {type}{how}, for {mount} on {on}; any data there is overwritten."
      },
      "make-anew": {
        "does": "Reformat {mount} on {on}: {type}, {size}{how}.",
        "why": "{reason}"
      },
      "set-reserve": {
        "does": "Set the reserved blocks of {mount}, {type}, to {reserve} %.",
        "why": "It can be set while the file system is in use, and nothing it holds is touched."
      },
      "bring-back": {
        "does": "Restore what {mount} held from its backup, and compare."
      },
      "bring-over": {
        "does": "Restore to {volume} what {old} held, from its backup."
      },
      "grow-mounted": {
        "does": "Grow the file system {mount}, {type}, to the end of its device, while it is mounted.",
        "why": "Until then the added capacity is paid for but cannot be used."
      },
      "grow-unmounted": {
        "does": "Grow {mount}, {type}, to the end of its device, while it is unmounted."
      },
      "shrink-mounted": {
        "does": "Shrink the file system {mount}, {type}, to {size} or a little less, while it is mounted."
      },
      "shrink-unmounted": {
        "does": "Check the file system {mount}, {type}, and shrink it to {size} or a little less, while it is unmounted."
      },
      "put-smaller-in-place": {
        "does": "Stop whatever uses {volume}. Create on the smaller {volume} what is on the old one, copy the files across and compare, unmount the old one and mount the smaller one in its place.",
        "why": "A block-by-block copy would not fit, and what is written during the copy would be lost."
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
        "why": "It is only being declared, so nothing is created, attached or formatted. `ullage survey compare` tells where it differs from a survey; where it does, correct the declaration before anything else is changed."
      },
      "check-volume-there": {
        "does": "Check that volume {volume} is there as declared: {declared}.",
        "why": "It is only being declared, so nothing is created, attached or formatted. `ullage survey compare` tells where it differs from a survey; where it does, correct the declaration before anything else is changed."
      },
      "check-identity": {
        "does": "Find out which {kind} {name} is: the one with the id {was}, as on main, or the one with the id {id}. Change nothing about either before that is settled.",
        "why": "Another id is another {kind}: whatever is done next would be done to that one."
      },
      "create-volume": {
        "does": "Create volume {volume}: {size}, tier {tier}{where}{how}."
      },
      "grow-volume": {
        "does": "Grow volume {volume} from {was} to {size}."
      },
      "move-tier": {
        "does": "Move volume {volume} from tier {was} to {tier}.",
        "why": "Whether it can stay attached meanwhile is in the documentation of the provider."
      },
      "create-smaller": {
        "does": "Create a volume of {size} beside {volume}, tier {tier}{how}, to replace it and then take its name.",
        "why": "A volume cannot be made smaller in place: whatever is cut off is lost."
      },
      "attach-smaller": {
        "does": "Attach the smaller {volume} to {server} beside the old one."
      },
      "detach-old": {
        "does": "Detach the old {volume} from {server}."
      },
      "fill-smaller": {
        "does": "Copy the files to the smaller {volume}, from the old one or from its backup, on a server that both can be attached to.",
        "why": "A block-by-block copy would not fit."
      },
      "copy-across": {
        "does": "Create {volume} again at site {site}: {size}, tier {tier}{how}. Restore to it what it holds at {was}, from a backup taken when nothing writes to it any more{copied}.",
        "why": "Changing its declaration does not copy its data to another site."
      },
      "fill-boot": {
        "does": "Put on {volume} what {server} is to start from: what {old} held, or a newly installed guest."
      },
      "install-over": {
        "does": "Put {what} on {volume}, with the image or the installer that {server} is to start from; any data there is overwritten.",
        "why": "What a server starts from is never made from within the guest that runs on it."
      },
      "unprotect": {
        "does": "Remove the protection of {volume} against deletion."
      },
      "unprotect-old": {
        "does": "Remove the protection of the old {volume} against deletion."
      },
      "protect": {
        "does": "Protect {volume} against deletion."
      },
      "share": {
        "does": "Allow {volume} to be attached to several servers at once."
      },
      "unshare": {
        "does": "Allow {volume} to be attached to one server only."
      },
      "attach": {
        "does": "Attach volume {volume} to {server}."
      },
      "attach-boot": {
        "does": "Attach volume {volume} to {server} as its boot volume."
      },
      "detach": {
        "does": "Detach volume {volume} from {server}."
      },
      "delete-volume": {
        "does": "Delete volume {volume}, {size}, for good."
      },
      "delete-old": {
        "does": "Delete the old {volume}, {size}, for good; the new one keeps or takes its name."
      },
      "create-server": {
        "does": "Create server {server}{where}{boot}, {power}."
      },
      "delete-server": {
        "does": "Delete server {server}; its volumes stay.",
        "why": "Some providers delete a boot volume with its server unless told to keep it."
      },
      "stop-server": {
        "does": "Shut {server} down from within its guest, and check at the provider that it is stopped.",
        "why": "A boot volume is in use as long as its server runs, and data that is not yet written would be lost."
      },
      "start-server": {
        "does": "Start {server}, and check that its guest comes up."
      },
      "change-server-type": {
        "does": "Change {server} from server type {was} to {type}, while it is stopped.",
        "why": "Some providers can change it while the server runs; their documentation says so."
      },
      "move-server": {
        "does": "Move {server} from site {was} to {site}, or create it again there, while it is stopped.",
        "why": "Its volumes must be at the same site."
      },
      "set-boot": {
        "does": "Set {server} to start from {volume}."
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
