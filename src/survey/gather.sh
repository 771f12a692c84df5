#!/bin/sh
# Gathers, as one JSON document on standard output, what this server's own tools say of its disks, volume groups, file
# systems and mounts. It installs nothing, writes nothing, asks nothing, and takes nothing from standard input. Run by
# the superuser it sees everything; run by anybody else it says what it could not see.
#
# It gathers no host name, address, user, process, mount option or label. Of mounts it tells only those of block
# devices, and of these none inside containers, none beneath /run and /media, and none beneath /home, where names are
# those of people; with ULLAGE_HOMES=told in the environment it tells these, too.
#
# All of it is functions, and the last line runs them: a copy that was cut off on its way does nothing.

LC_ALL=C
PATH=${PATH:-/usr/bin:/bin}:/usr/local/sbin:/usr/sbin:/sbin:/usr/bin:/bin
LVM_SUPPRESS_FD_WARNINGS=1
export LC_ALL PATH LVM_SUPPRESS_FD_WARNINGS
unset POSIXLY_CORRECT DF_BLOCK_SIZE BLOCK_SIZE BLOCKSIZE LSBLK_DEBUG LIBMOUNT_DEBUG LIBBLKID_DEBUG

patience=20 # seconds that each tool may take
unseen=''
new_line='
'

is_there() { command -v "$1" >/dev/null 2>&1; }

# Runs a tool that may hang, and fails with 137 where it did and was killed.
limited() {
  if is_there timeout; then
    timeout -s KILL "$patience" "$@" </dev/null 2>/dev/null
    return
  fi
  "$@" </dev/null 2>/dev/null &
  tool=$!
  (sleep "$patience" && kill -s KILL "$tool") >/dev/null 2>&1 &
  watch=$!
  wait "$tool" 2>/dev/null
  ended=$?
  kill "$watch" 2>/dev/null
  return "$ended"
}

# not_seen WHAT TOOL CODE: what a tool's failure kept from being seen, in this script's own words.
not_seen() {
  if ! is_there "$2"; then why="$2 is not on this server"
  elif [ "$3" -eq 137 ]; then why="$2 did not end within $patience seconds"
  elif [ "$(id -u)" -ne 0 ]; then why="$2 fails (exit code $3); it may need the superuser"
  else why="$2 fails (exit code $3)"
  fi
  left_out "$1" "$why"
}

# left_out WHAT WHY
left_out() { unseen="$unseen${unseen:+,}$new_line    {\"what\": \"$1\", \"why\": \"$2\"}"; }

homes_left_out='those beneath /home are left out; ULLAGE_HOMES=told in the environment of the script tells them'

# Whether a tool that ended well printed JSON at all: some print nothing where there is nothing.
is_json() { case $1 in *'{'*'}'*) ;; *) return 1 ;; esac; }

member() { printf ',\n  "%s": %s' "$1" "$2"; }

# Begins every awk program here: text as JSON has it.
as_json='
  function json(text,   at, out) {
    if (text ~ /^[A-Za-z0-9 _.,:\/=+@-]*$/) return "\"" text "\""
    out = ""
    for (at = 1; at <= length(text); at++) out = out written[substr(text, at, 1)]
    return "\"" out "\""
  }
  BEGIN {
    for (number = 1; number < 256; number++) {
      character = sprintf("%c", number)
      written[character] = number < 32 || number == 127 ? sprintf("\\u%04x", number) : character
    }
    written["\""] = "\\\""
    written["\\"] = "\\\\"
  }
'

# Standard input as one JSON string.
text_as_json() {
  awk "$as_json"'
    { text = (NR == 1 ? "" : text "\n") $0 }
    END { printf "%s", json(text) }
  '
}

# Takes lines of KEY="value" pairs, in which the tools write what is odd as \x20; gives one JSON object for each, with
# these keys only.
pairs_as_json() {
  awk -v keys=" $1 " "$as_json"'
    function digit(text) { return index("0123456789abcdef", tolower(text)) - 1 }
    function plain(text,   at, out) {
      out = ""
      while ((at = index(text, "\\x")) > 0) {
        out = out substr(text, 1, at - 1) sprintf("%c", 16 * digit(substr(text, at + 2, 1)) + digit(substr(text, at + 3, 1)))
        text = substr(text, at + 4)
      }
      return out text
    }
    {
      members = ""
      rest = $0
      while (match(rest, /[A-Za-z0-9:_-]+="[^"]*"/)) {
        pair = substr(rest, RSTART, RLENGTH)
        rest = substr(rest, RSTART + RLENGTH)
        equals = index(pair, "=")
        key = tolower(substr(pair, 1, equals - 1))
        if (key == "maj_min") key = "maj:min"
        if (index(keys, " " key " ") == 0) continue
        value = substr(pair, equals + 2, length(pair) - equals - 2)
        members = members (members == "" ? "" : ", ") json(key) ": " (value == "" ? "null" : json(plain(value)))
      }
      if (members != "") printf "%s\n    {%s}", (lines++ ? "," : ""), members
    }
  '
}

# Of what a tool says of itself, the number of its version only.
version_of() {
  case $1 in
    dumpe2fs | xfs_db) "$1" -V 2>&1 ;;
    lvm) limited lvm version ;;
    *) limited "$1" --version ;;
  esac | sed -n 's/^.* \([0-9][0-9.]*\.[0-9][0-9()]*\).*/\1/p' | sed -n 1p
}

gather_versions() {
  versions=''
  for tool in lsblk findmnt df lvm dumpe2fs xfs_db; do
    if ! is_there "$tool"; then continue; fi
    versions="$versions${versions:+,}$new_line    \"$tool\": \"$(version_of "$tool")\""
  done
  member versions "{$versions$new_line  }"
}

all_columns='NAME KNAME PKNAME MAJ:MIN TYPE SIZE SERIAL FSTYPE UUID'

list_devices() { limited lsblk "$1" --bytes --output "$(printf '%s' "$2" | tr ' ' ',')"; }

gather_devices() {
  columns=$all_columns
  devices=$(list_devices --json "$columns")
  code=$?
  if [ "$code" -ne 0 ] && [ "$code" -ne 137 ] && is_there lsblk; then
    # An older one, without some of the columns or without JSON.
    columns=''
    for column in $all_columns; do
      if list_devices --noheadings "$column" >/dev/null; then columns="$columns${columns:+ }$column"; fi
    done
    devices=$(list_devices --json "$columns")
    code=$?
    if [ "$code" -ne 0 ]; then
      devices=$(list_devices --pairs "$columns")
      code=$?
      keys=$(printf '%s' "$columns" | tr '[:upper:]' '[:lower:]')
      devices="{\"blockdevices\": [$(printf '%s\n' "$devices" | pairs_as_json "$keys")]}"
    fi
  fi
  if [ "$code" -eq 0 ] && ! is_json "$devices"; then devices='{"blockdevices": []}'; fi
  if [ "$code" -eq 0 ]; then member lsblk "$devices"; else not_seen devices lsblk "$code"; fi
  gather_contents
  gather_serials
}

# What lies on the devices, where lsblk has no udev to ask. Without a cache nothing is written.
gather_contents() {
  contents=''
  case $devices in *'"fstype": "'* | *'"fstype":"'*) return ;; esac
  contents=$(limited blkid -c /dev/null -s TYPE -s UUID | sed -n 's/^\([^: ]*\): /NAME="\1" /p')
  member contents "[$(printf '%s\n' "$contents" | pairs_as_json 'name type uuid')]"
}

gather_serials() {
  serials=''
  for file in /sys/block/*/serial /sys/block/*/device/serial; do
    if [ ! -r "$file" ]; then continue; fi
    serial=$(sed -n 1p "$file")
    if [ -z "$serial" ]; then continue; fi
    device=${file#/sys/block/}
    serials="$serials${serials:+,}$new_line    {\"device\": \"${device%%/*}\", \"serial\": $(printf '%s' "$serial" | text_as_json)}"
  done
  member serials "[$serials]"
}

# The kernel's own list of mounts, as findmnt --pairs prints it.
kernel_mounts() {
  awk '
    function hex(text,   at, out, octal) {
      out = ""
      while (match(text, /\\[0-7][0-7][0-7]/)) {
        octal = substr(text, RSTART + 1, 3)
        out = out substr(text, 1, RSTART - 1) sprintf("\\x%02x", substr(octal, 1, 1) * 64 + substr(octal, 2, 1) * 8 + substr(octal, 3, 1))
        text = substr(text, RSTART + 4)
      }
      out = out text
      gsub(/"/, "\\x22", out)
      return out
    }
    {
      for (at = 7; at < NF && $at != "-"; at++) continue
      printf "MAJ:MIN=\"%s\" SOURCE=\"%s\" FSROOT=\"%s\" TARGET=\"%s\" FSTYPE=\"%s\"\n", $3, hex($(at + 2)), hex($4), hex($5), $(at + 1)
    }
  ' /proc/self/mountinfo 2>/dev/null
}

# Leaves of the lines of mounts only those that may be told; those beneath /home, where it is given "told".
mounts_to_tell() {
  block_types=$(awk '$1 != "nodev" { printf "%s ", $1 }' /proc/filesystems 2>/dev/null)
  awk -v types=" ${block_types:-ext2 ext3 ext4 xfs btrfs vfat }" -v homes="$1" '
    function value(key,   start) {
      if (!match($0, key "=\"[^\"]*\"")) return ""
      start = RSTART + length(key) + 2
      return substr($0, start, RLENGTH - length(key) - 3)
    }
    {
      type = value("FSTYPE")
      target = value("TARGET")
      if (index(types, " " type " ") == 0 || type ~ /^(squashfs|erofs|iso9660|udf|cramfs|romfs)$/) next
      if (type != "btrfs" && value("FSROOT") != "/") next
      if (target ~ /^\/(run|media|snap|var\/run|var\/snap)\//) next
      if (target ~ /^\/var\/lib\/(containerd|containers|docker|kubelet|lxc|lxd|machines)\//) next
      if (target ~ /^\/home\// && homes != "told") next
      if (target ~ /\\x[01]|\\x7f/) next
      print
    }
  '
}

gather_mounts() {
  mounts=$(limited findmnt --pairs --noheadings --nofsroot --output MAJ:MIN,SOURCE,FSROOT,TARGET,FSTYPE)
  code=$?
  if [ "$code" -ne 0 ]; then
    mounts=$(kernel_mounts)
    if [ -n "$mounts" ]; then code=0; fi
  fi
  with_homes=$(printf '%s\n' "$mounts" | mounts_to_tell told)
  mounts=$(printf '%s\n' "$mounts" | mounts_to_tell "${ULLAGE_HOMES:-}")
  if [ "$mounts" != "$with_homes" ]; then left_out mounts "$homes_left_out"; fi
  keys='maj:min source fsroot target fstype'
  if [ "$code" -eq 0 ]; then
    member findmnt "{\"filesystems\": [$(printf '%s\n' "$mounts" | pairs_as_json "$keys")]}"
    gather_use
  else
    not_seen mounts findmnt "$code"
    not_seen use findmnt "$code"
  fi
  swaps=$(awk 'NR > 1 && $2 == "partition" { print $1 }' /proc/swaps 2>/dev/null)
  member swaps "$(printf '%s\n' "$swaps" | text_as_json)"
}

# The mount points of the lines of mounts, with what is odd in them as printf takes it.
targets() {
  sed -n 's/.* TARGET="\([^"]*\)".*/\1/p' | awk '
    function digit(text) { return index("0123456789abcdef", tolower(text)) - 1 }
    {
      gsub(/%/, "%%")
      out = ""
      while ((at = index($0, "\\x")) > 0) {
        number = 16 * digit(substr($0, at + 2, 1)) + digit(substr($0, at + 3, 1))
        out = out substr($0, 1, at - 1) sprintf("\\%d%d%d", int(number / 64), int(number / 8) % 8, number % 8)
        $0 = substr($0, at + 4)
      }
      print out $0
    }
  '
}

# df is asked of each mount point by itself, so that no other file system makes it wait.
gather_use() {
  use=''
  usual=$IFS
  IFS=$new_line
  set -f
  for format in $(printf '%s\n' "$mounts" | targets); do
    IFS=$usual
    # shellcheck disable=SC2059
    shown=$(limited df -P "$(printf "$format")")
    code=$?
    if [ "$code" -eq 0 ]; then use="$use$shown$new_line"; else not_seen use df "$code"; fi
  done
  IFS=$usual
  set +f
  member df "$(printf '%s' "$use" | awk 'NR == 1 || !/^Filesystem /' | text_as_json)"
}

# The first three fields of the lines of fstab that mount a block device: further ones may hold what is secret, and
# other sources name hosts. A device that is told by a label is told by its name.
gather_fstab() {
  if [ ! -r /etc/fstab ]; then
    if [ -e /etc/fstab ]; then not_seen fstab cat 1; else member fstab '""'; fi
    return
  fi
  if [ "${ULLAGE_HOMES:-}" != told ] && grep -Eq '^[[:space:]]*(/dev/|[A-Z]*(UUID|LABEL)=)[^[:space:]]*[[:space:]]+/home/' /etc/fstab; then
    left_out fstab "$homes_left_out"
  fi
  lines=$(while read -r source target type rest || [ -n "$source" ]; do
    case $source in
      *LABEL=* | PARTUUID=*) source=$(limited findfs "$(printf '%s' "$source" | tr -d '"')" || echo labelled) ;;
      /dev/disk/by-uuid/* | UUID=*) ;;
      /dev/disk/*) source=$(readlink -f "$source" || echo labelled) ;;
      /dev/*) ;;
      *) continue ;;
    esac
    case $source in /dev/disk/by-uuid/*) ;; /dev/disk/*) source=labelled ;; esac
    case $target in
      /run/* | /media/*) continue ;;
      /home/*) if [ "${ULLAGE_HOMES:-}" != told ]; then continue; fi ;;
    esac
    printf '%s %s %s\n' "$source" "$target" "$type"
  done </etc/fstab)
  member fstab "$(printf '%s\n' "$lines" | text_as_json)"
}

# report TOOL FIELDS: without taking a lock, and without writing what was found where.
report() {
  limited "$1" --readonly --config 'devices { hints = "none" } log { report_command_log = 0 }' \
    --units b --nosuffix --options "$2" --reportformat json
}

# An older volume manager, which has no JSON.
plain_report() {
  rows=$(limited "$1" --readonly --units b --nosuffix --options "$2" --noheadings --nameprefixes --separator ' ')
  code=$?
  rows=$(printf '%s\n' "$rows" | sed "s/'/\"/g" | sed 's/LVM2_//g' | pairs_as_json "$(printf '%s' "$2" | tr ',' ' ')")
  printf '{"report": [{"%s": [%s]}]}' "${1%s}" "$rows"
  return "$code"
}

# gather_report TOOL FIELDS
gather_report() {
  report=$(report "$1" "$2")
  code=$?
  if [ "$code" -ne 0 ] && [ "$code" -ne 137 ] && is_there "$1"; then
    report=$(plain_report "$1" "$2")
    code=$?
  fi
  if [ "$code" -eq 0 ] && ! is_json "$report"; then report='{"report": []}'; fi
  if [ "$code" -eq 0 ]; then member "$1" "$report"; else not_seen volume-groups "$1" "$code"; fi
}

gather_groups() {
  gather_report pvs vg_name,pv_name,pv_attr,pv_size,dev_size,pe_start,pv_pe_count,pv_pe_alloc_count
  gather_report vgs vg_name,vg_extent_size,vg_extent_count,vg_free_count
  gather_report lvs vg_name,lv_name,lv_size,lv_attr,segtype,stripes
}

superblock() {
  case $2 in
    ext2 | ext3 | ext4) limited dumpe2fs -h "$1" ;;
    xfs) limited xfs_db -r -c 'sb 0' -c 'print blocksize dblocks logstart logblocks' "$1" ;;
  esac
}

gather_superblocks() {
  superblocks=''
  # Names that are odd are written with a backslash; no device of a superblock has one.
  systems=$(
    {
      limited lsblk --raw --noheadings --paths --output NAME,FSTYPE
      printf '%s\n' "$contents" | sed -n 's/^NAME="\([^"]*\)".* TYPE="\([^"]*\)".*/\1 \2/p'
      printf '%s\n' "$mounts" | sed -n 's/.* SOURCE="\([^"]*\)".* FSTYPE="\([^"]*\)".*/\1 \2/p'
    } | awk '$2 ~ /^(ext[234]|xfs)$/ && $1 ~ /^\/dev\/[^\\]+$/ && !seen[$1]++ { print $1 "=" $2 }'
  )
  for system in $systems; do
    device=${system%=*}
    type=${system##*=}
    text=$(superblock "$device" "$type")
    code=$?
    if [ "$code" -ne 0 ]; then
      case $type in xfs) not_seen superblocks xfs_db "$code" ;; *) not_seen superblocks dumpe2fs "$code" ;; esac
      continue
    fi
    text=$(printf '%s\n' "$text" | grep -E '^(Block count|Reserved block count|Overhead clusters|Block size|Cluster size):|^(blocksize|dblocks|logstart|logblocks) = ')
    superblocks="$superblocks${superblocks:+,}$new_line    {\"device\": \"$device\", \"text\": $(printf '%s\n' "$text" | text_as_json)}"
  done
  member superblocks "[$superblocks]"
}

gather() {
  if ! awk 'BEGIN { exit 0 }' 2>/dev/null; then
    echo 'The survey needs awk, which POSIX asks of every system and this server has not.' >&2
    return 1
  fi
  printf '{\n  "format": "ullage-gathered-1",\n  "at": "%s"' "$(date -u +%Y-%m-%dT%H:%M:%SZ)"
  if [ "${ULLAGE_HOMES:-}" = told ]; then member asked '["homes"]'; fi
  gather_versions
  gather_devices
  gather_mounts
  gather_fstab
  gather_groups
  gather_superblocks
  member unseen "[$unseen]"
  printf '\n}\n'
}

gather </dev/null
