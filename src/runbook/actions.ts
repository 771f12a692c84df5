/**
 * The actions that steps are made of: a closed list, in the order in which they are documented. What each is called,
 * and how it is done, is in procedures; what no procedure may leave out is here.
 */
import { cautions } from '../base/wording.ts';
import type { ProcedureActions } from '../read/generated/procedure.ts';

export type ActionName = keyof ProcedureActions;

export interface Action {
  /** Who acts: somebody at the provider's console, somebody inside the guest, or somebody who makes sure. */
  readonly at: 'provider' | 'guest' | 'check';
  /** What can be filled into its sentences: names and figures as people read them. */
  readonly words: readonly string[];
  /** What can be filled into its commands: names and figures as programs take them. */
  readonly fills: readonly string[];
  /** Another action, by whose commands it is done where no procedure gives it its own. */
  readonly as?: ActionName;
  /** What it destroys that only a backup brings back, if anything. */
  readonly destroys?: 'volume' | 'volume-beneath' | 'members' | 'group' | 'file-system';
  /** Said whatever a procedure says. */
  readonly cautions?: readonly string[];
}

const grownForGood =
  "A grown volume cannot be made smaller again, and the new size is billed at once: check its name and its new size twice. Your own change control and the provider's documentation take precedence.";

const oneMistake =
  'Without it a single mistake deletes the volume: check its name, its size and its server twice.';

const server = ['server', 'server-id'] as const;
const volume = ['volume', 'volume-id'] as const;
const size = ['size', 'size-bytes', 'size-gib'] as const;
/** The volume's disk in the guest. */
const disk = [...volume, ...server, 'device', 'device-name'] as const;
/** A file system, and the device that it is on, or is to be on. */
const system = ['mount', 'type', 'device', ...server] as const;
const making = ['reserve', 'block-size', 'inode-ratio', 'reverse-map'] as const;
const layout = ['stripes', 'mirrors', 'layout-type'] as const;

export const actions = {
  'check-backup': { at: 'check', words: ['what'], fills: [] },
  'check-group': { at: 'check', words: ['group', 'extents', 'extent', 'size'], fills: ['group'] },
  'check-replacement': { at: 'check', words: ['volume', 'old'], fills: [...disk] },
  'check-member-replacement': { at: 'check', words: ['group', 'volume', 'old'], fills: ['group'] },
  'check-root': { at: 'guest', words: ['mount', 'on', 'type'], fills: [...system] },
  'check-missed': { at: 'check', words: ['volume'], fills: [...disk] },
  'check-name': { at: 'check', words: ['old', 'name'], fills: [] },
  'check-server-there': { at: 'provider', words: ['server', 'declared'], fills: [...server] },
  'check-volume-there': { at: 'provider', words: ['volume', 'declared'], fills: [...volume] },
  'check-layers': { at: 'guest', words: ['declared'], fills: [] },
  'check-identity': { at: 'provider', words: ['kind', 'name', 'was', 'id'], fills: [], cautions: [cautions] },
  'create-volume': {
    at: 'provider',
    words: ['volume', 'size', 'tier', 'where', 'how'],
    fills: [...volume, ...size, 'tier', 'site'],
  },
  'grow-volume': {
    at: 'provider',
    words: ['volume', 'was', 'size'],
    fills: [...volume, ...size],
    cautions: [grownForGood],
  },
  'move-tier': { at: 'provider', words: ['volume', 'was', 'tier'], fills: [...volume, 'tier'] },
  'create-smaller': {
    at: 'provider',
    words: ['size', 'volume', 'tier', 'how'],
    fills: [...volume, ...size, 'tier', 'site'],
  },
  'attach-smaller': { at: 'provider', words: ['volume', 'server'], fills: [...volume, ...server] },
  'detach-old': { at: 'provider', words: ['volume', 'server'], fills: [...volume, ...server] },
  'fill-smaller': { at: 'provider', words: ['volume'], fills: [...volume] },
  'copy-across': {
    at: 'provider',
    words: ['volume', 'site', 'size', 'tier', 'how', 'was', 'copied'],
    fills: [...volume, ...size, 'tier', 'site'],
  },
  'fill-boot': { at: 'provider', words: ['volume', 'server', 'old'], fills: [...volume, ...server] },
  'install-over': {
    at: 'provider',
    words: ['what', 'volume', 'server'],
    fills: [...volume, ...server],
    destroys: 'volume',
    cautions: [cautions],
  },
  unprotect: { at: 'provider', words: ['volume'], fills: [...volume], cautions: [oneMistake] },
  'unprotect-old': { at: 'provider', words: ['volume'], fills: [...volume], cautions: [oneMistake] },
  protect: { at: 'provider', words: ['volume'], fills: [...volume] },
  share: { at: 'provider', words: ['volume'], fills: [...volume] },
  unshare: { at: 'provider', words: ['volume'], fills: [...volume] },
  attach: { at: 'provider', words: ['volume', 'server'], fills: [...volume, ...server] },
  'attach-boot': { at: 'provider', words: ['volume', 'server'], fills: [...volume, ...server] },
  detach: { at: 'provider', words: ['volume', 'server', 'shown'], fills: [...volume, ...server] },
  'attach-for-a-while': {
    at: 'provider',
    words: ['volume', 'server', 'group'],
    fills: [...volume, ...server],
  },
  'detach-again': {
    at: 'provider',
    words: ['volume', 'server', 'group', 'shown'],
    fills: [...volume, ...server],
  },
  'delete-volume': {
    at: 'provider',
    words: ['volume', 'size'],
    fills: [...volume],
    destroys: 'volume',
    cautions: [cautions],
  },
  'delete-old': {
    at: 'provider',
    words: ['volume', 'size'],
    fills: [...volume],
    destroys: 'volume',
    cautions: [cautions],
  },
  'create-server': {
    at: 'provider',
    words: ['server', 'where', 'boot', 'power'],
    fills: [...server, 'site'],
  },
  'delete-server': { at: 'provider', words: ['server'], fills: [...server], cautions: [cautions] },
  'stop-server': { at: 'provider', words: ['server'], fills: [...server] },
  'start-server': { at: 'provider', words: ['server'], fills: [...server] },
  'change-server-type': { at: 'provider', words: ['server', 'was', 'type'], fills: [...server, 'type'] },
  'move-server': { at: 'provider', words: ['server', 'was', 'site'], fills: [...server, 'site'] },
  'set-boot': { at: 'provider', words: ['server', 'volume'], fills: [...server, ...volume] },
  'see-device': { at: 'guest', words: ['volume', 'size', 'bytes'], fills: [...disk] },
  'see-size': { at: 'guest', words: ['volume', 'size', 'bytes'], fills: [...disk] },
  'grow-partition': { at: 'guest', words: ['volume'], fills: [...disk, 'partition-number'] },
  'grow-inside': {
    at: 'guest',
    words: ['volume'],
    fills: [...disk, 'member-device', 'added-size', 'logical-volume', 'mount', 'file-system-device'],
  },
  'grow-member': { at: 'guest', words: ['volume', 'group'], fills: [...disk, 'group'] },
  'make-group': { at: 'guest', words: ['group', 'members', 'extent'], fills: ['group', 'devices', 'extent'] },
  'make-group-over': {
    at: 'guest',
    as: 'make-group',
    words: ['group', 'members', 'extent'],
    fills: ['group', 'devices', 'extent'],
    destroys: 'members',
    cautions: [cautions],
  },
  'join-group': { at: 'guest', words: ['volume', 'group'], fills: [...disk, 'group'] },
  'join-group-over': {
    at: 'guest',
    as: 'join-group',
    words: ['volume', 'group'],
    fills: [...disk, 'group'],
    destroys: 'volume',
    cautions: [cautions],
  },
  'leave-group': { at: 'guest', words: ['volume', 'group'], fills: [...disk, 'group'], cautions: [cautions] },
  'replace-member': {
    at: 'guest',
    words: ['volume', 'group'],
    fills: [...disk, 'group', 'new-device'],
    cautions: [cautions],
  },
  'remove-group': {
    at: 'guest',
    words: ['group'],
    fills: ['group'],
    destroys: 'group',
    cautions: [cautions],
  },
  'rename-group': { at: 'guest', words: ['old', 'group'], fills: ['old', 'group'] },
  're-extent': { at: 'guest', words: ['group', 'was', 'extent'], fills: ['group', 'extent'] },
  'convert-layout': {
    at: 'guest',
    words: ['group', 'was', 'layout'],
    fills: ['group', 'logical-volume', 'logical-volume-name', ...layout],
  },
  'lay-out-anew': {
    at: 'guest',
    words: ['group', 'was', 'layout'],
    fills: ['group', 'logical-volume', 'logical-volume-name', ...layout, ...size],
    destroys: 'group',
    cautions: [cautions],
  },
  deactivate: { at: 'guest', words: ['group'], fills: ['group'] },
  export: { at: 'guest', words: ['group'], fills: ['group'] },
  'check-detached': { at: 'check', words: ['count', 'group'], fills: ['group'] },
  import: { at: 'guest', words: ['count', 'group'], fills: ['group'] },
  activate: { at: 'guest', words: ['group'], fills: ['group'] },
  'stop-use': { at: 'guest', words: ['mounts', 'server'], fills: ['mounts', ...server] },
  'check-fstab': { at: 'check', words: ['server', 'mount'], fills: ['mount', ...server] },
  unmount: { at: 'guest', words: ['mount', 'server'], fills: [...system] },
  'unmount-swap': { at: 'guest', words: ['mount', 'server'], fills: [...system] },
  mount: { at: 'guest', words: ['mount', 'on'], fills: [...system] },
  'mount-swap': { at: 'guest', words: ['mount'], fills: [...system] },
  'export-pool': { at: 'guest', words: ['mount'], fills: [...system] },
  'import-pool': { at: 'guest', words: ['mount'], fills: [...system] },
  'make-logical-volume': {
    at: 'guest',
    words: ['size', 'mount', 'group', 'layout'],
    fills: [...system, 'group', 'logical-volume-name', ...size, ...layout],
  },
  'extend-logical-volume': {
    at: 'guest',
    words: ['mount', 'group', 'was', 'size'],
    fills: [...system, 'group', ...size],
  },
  'reduce-logical-volume': {
    at: 'guest',
    words: ['mount', 'group', 'size'],
    fills: [...system, 'group', ...size],
    destroys: 'file-system',
    cautions: [cautions],
  },
  'cut-logical-volume': {
    at: 'guest',
    as: 'reduce-logical-volume',
    words: ['mount', 'group', 'was', 'size'],
    fills: [...system, 'group', ...size],
    destroys: 'file-system',
    cautions: [cautions],
  },
  'remove-file-system': {
    at: 'guest',
    words: ['mount', 'group'],
    fills: [...system, 'group'],
    destroys: 'file-system',
    cautions: [cautions],
  },
  'give-up-file-system': {
    at: 'guest',
    words: ['mount', 'volume'],
    fills: [...system],
    cautions: [cautions],
  },
  'make-file-system': { at: 'guest', words: ['type', 'how', 'mount', 'on'], fills: [...system, ...making] },
  'make-file-system-over': {
    at: 'guest',
    words: ['type', 'how', 'mount', 'on'],
    fills: [...system, ...making],
    destroys: 'volume-beneath',
    cautions: [cautions],
  },
  'make-anew': {
    at: 'guest',
    as: 'make-file-system-over',
    words: ['mount', 'on', 'type', 'size', 'how', 'reason'],
    fills: [...system, ...making, ...size],
    destroys: 'file-system',
    cautions: [cautions],
  },
  'set-reserve': { at: 'guest', words: ['mount', 'type', 'reserve'], fills: [...system, 'reserve'] },
  'bring-back': { at: 'guest', words: ['mount'], fills: [...system] },
  'bring-over': { at: 'guest', words: ['volume', 'old'], fills: [...disk] },
  'grow-mounted': { at: 'guest', words: ['mount', 'type', 'back'], fills: [...system] },
  'grow-unmounted': { at: 'guest', words: ['mount', 'type', 'back'], fills: [...system] },
  'shrink-mounted': {
    at: 'guest',
    words: ['mount', 'type', 'size'],
    fills: [...system, ...size],
    destroys: 'file-system',
    cautions: [cautions],
  },
  'shrink-unmounted': {
    at: 'guest',
    as: 'shrink-mounted',
    words: ['mount', 'type', 'size'],
    fills: [...system, ...size],
    destroys: 'file-system',
    cautions: [cautions],
  },
  'put-smaller-in-place': {
    at: 'guest',
    words: ['volume'],
    fills: [...disk, 'new-device'],
    cautions: [cautions],
  },
} as const satisfies Readonly<Record<ActionName, Action>>;

/** Whether a word names an action. */
export const isAction = (name: string): name is ActionName => Object.hasOwn(actions, name);

export const actionOf = (name: ActionName): Action => actions[name];
