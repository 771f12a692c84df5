/* Generated from schema/ and src/rules/ by `npm run generate`; do not edit. */
import type { RulePack } from '../rule-pack.ts';

export const shippedPacks: Readonly<Record<string, RulePack>> = {
  "starter": {
    "file": "shipped pack starter",
    "use": [],
    "entries": [
      {
        "name": "no-shrink",
        "entry": {
          "rule": "no-shrink"
        },
        "place": {
          "file": "shipped pack starter",
          "line": 4,
          "column": 5
        }
      },
      {
        "name": "boot-volume-stays",
        "entry": {
          "rule": "boot-volume-stays"
        },
        "place": {
          "file": "shipped pack starter",
          "line": 5,
          "column": 5
        }
      },
      {
        "name": "exclusive-attachment",
        "entry": {
          "rule": "exclusive-attachment"
        },
        "place": {
          "file": "shipped pack starter",
          "line": 6,
          "column": 5
        }
      },
      {
        "name": "group-travels-whole",
        "entry": {
          "rule": "group-travels-whole"
        },
        "place": {
          "file": "shipped pack starter",
          "line": 7,
          "column": 5
        }
      },
      {
        "name": "same-site",
        "entry": {
          "rule": "same-site"
        },
        "place": {
          "file": "shipped pack starter",
          "line": 8,
          "column": 5
        }
      },
      {
        "name": "tier-bounds",
        "entry": {
          "rule": "tier-bounds"
        },
        "place": {
          "file": "shipped pack starter",
          "line": 9,
          "column": 5
        }
      },
      {
        "name": "deletion-prepared",
        "entry": {
          "rule": "deletion-prepared",
          "backup-within": 30
        },
        "place": {
          "file": "shipped pack starter",
          "line": 10,
          "column": 5
        }
      },
      {
        "name": "detached-volume-owned",
        "entry": {
          "rule": "detached-volume-owned",
          "level": "warning"
        },
        "place": {
          "file": "shipped pack starter",
          "line": 11,
          "column": 5
        }
      },
      {
        "name": "growth-step",
        "entry": {
          "rule": "growth-step",
          "times": 8
        },
        "place": {
          "file": "shipped pack starter",
          "line": 13,
          "column": 5
        }
      },
      {
        "name": "growth-followed-through",
        "entry": {
          "rule": "growth-followed-through"
        },
        "place": {
          "file": "shipped pack starter",
          "line": 14,
          "column": 5
        }
      },
      {
        "name": "destructive-changes-few",
        "entry": {
          "rule": "destructive-changes-few",
          "level": "warning",
          "at-most": 3
        },
        "place": {
          "file": "shipped pack starter",
          "line": 15,
          "column": 5
        }
      },
      {
        "name": "spend-under-a-limit",
        "entry": {
          "rule": "spend-under-a-limit",
          "level": "warning"
        },
        "place": {
          "file": "shipped pack starter",
          "line": 16,
          "column": 5
        }
      },
      {
        "name": "no-stale-rename",
        "entry": {
          "rule": "no-stale-rename"
        },
        "place": {
          "file": "shipped pack starter",
          "line": 17,
          "column": 5
        }
      },
      {
        "name": "policy-apart",
        "entry": {
          "rule": "policy-apart"
        },
        "place": {
          "file": "shipped pack starter",
          "line": 18,
          "column": 5
        }
      },
      {
        "name": "order-of-steps",
        "entry": {
          "rule": "order-of-steps",
          "level": "warning"
        },
        "place": {
          "file": "shipped pack starter",
          "line": 20,
          "column": 5
        }
      },
      {
        "name": "surveyed-as-declared",
        "entry": {
          "rule": "surveyed-as-declared",
          "level": "warning",
          "within": 30
        },
        "place": {
          "file": "shipped pack starter",
          "line": 22,
          "column": 5
        }
      },
      {
        "name": "quota-headroom",
        "entry": {
          "name": "quota-headroom",
          "rule": "minimum-headroom",
          "of": "quota"
        },
        "place": {
          "file": "shipped pack starter",
          "line": 24,
          "column": 5
        }
      },
      {
        "name": "slot-headroom",
        "entry": {
          "name": "slot-headroom",
          "rule": "minimum-headroom",
          "of": "attachment-slots"
        },
        "place": {
          "file": "shipped pack starter",
          "line": 25,
          "column": 5
        }
      },
      {
        "name": "group-headroom",
        "entry": {
          "name": "group-headroom",
          "rule": "minimum-headroom",
          "of": "volume-group"
        },
        "place": {
          "file": "shipped pack starter",
          "line": 26,
          "column": 5
        }
      }
    ]
  },
  "strict": {
    "file": "shipped pack strict",
    "use": [
      {
        "name": "starter",
        "place": {
          "file": "shipped pack strict",
          "line": 2,
          "column": 7
        }
      }
    ],
    "entries": [
      {
        "name": "deletion-prepared",
        "entry": {
          "rule": "deletion-prepared",
          "backup-within": 2
        },
        "place": {
          "file": "shipped pack strict",
          "line": 4,
          "column": 5
        }
      },
      {
        "name": "detached-volume-owned",
        "entry": {
          "rule": "detached-volume-owned",
          "level": "error",
          "at-most": 365
        },
        "place": {
          "file": "shipped pack strict",
          "line": 5,
          "column": 5
        }
      },
      {
        "name": "growth-step",
        "entry": {
          "rule": "growth-step",
          "times": 4,
          "by": "2 TiB"
        },
        "place": {
          "file": "shipped pack strict",
          "line": 6,
          "column": 5
        }
      },
      {
        "name": "growth-followed-through",
        "entry": {
          "rule": "growth-followed-through",
          "idle-share": 0.2
        },
        "place": {
          "file": "shipped pack strict",
          "line": 7,
          "column": 5
        }
      },
      {
        "name": "destructive-changes-few",
        "entry": {
          "rule": "destructive-changes-few",
          "level": "error",
          "at-most": 1
        },
        "place": {
          "file": "shipped pack strict",
          "line": 8,
          "column": 5
        }
      },
      {
        "name": "spend-under-a-limit",
        "entry": {
          "rule": "spend-under-a-limit",
          "level": "error"
        },
        "place": {
          "file": "shipped pack strict",
          "line": 9,
          "column": 5
        }
      },
      {
        "name": "surveyed-as-declared",
        "entry": {
          "rule": "surveyed-as-declared",
          "level": "error",
          "within": 14
        },
        "place": {
          "file": "shipped pack strict",
          "line": 10,
          "column": 5
        }
      },
      {
        "name": "order-of-steps",
        "entry": {
          "rule": "order-of-steps",
          "level": "error"
        },
        "place": {
          "file": "shipped pack strict",
          "line": 11,
          "column": 5
        }
      },
      {
        "name": "quota-headroom",
        "entry": {
          "name": "quota-headroom",
          "rule": "minimum-headroom",
          "of": "quota",
          "share": 0.1
        },
        "place": {
          "file": "shipped pack strict",
          "line": 12,
          "column": 5
        }
      },
      {
        "name": "slot-headroom",
        "entry": {
          "name": "slot-headroom",
          "rule": "minimum-headroom",
          "of": "attachment-slots",
          "count": 1
        },
        "place": {
          "file": "shipped pack strict",
          "line": 13,
          "column": 5
        }
      },
      {
        "name": "group-headroom",
        "entry": {
          "name": "group-headroom",
          "rule": "minimum-headroom",
          "of": "volume-group",
          "share": 0.05
        },
        "place": {
          "file": "shipped pack strict",
          "line": 14,
          "column": 5
        }
      },
      {
        "name": "file-system-headroom",
        "entry": {
          "name": "file-system-headroom",
          "rule": "minimum-headroom",
          "level": "warning",
          "of": "file-system",
          "share": 0.1
        },
        "place": {
          "file": "shipped pack strict",
          "line": 16,
          "column": 5
        }
      }
    ]
  }
};
