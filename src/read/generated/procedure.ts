/* Generated from schema/ and src/rules/ by `npm run generate`; do not edit. */

/**
 * The kind of guest, as servers name it by guest. That of a shipped one, such as linux-lvm, puts these procedures over the shipped ones.
 */
export type Name = string;
/**
 * The provider, in place of a kind of guest. Its procedures are put over those in plain words.
 */
export type Name1 = string;
/**
 * A name: letters, digits, dot, underscore and hyphen, beginning with a letter or digit, at most 128 characters.
 */
export type Name2 = string;
/**
 * A name: letters, digits, dot, underscore and hyphen, beginning with a letter or digit, at most 128 characters.
 */
export type Name3 = string;
/**
 * What to do, one sentence or two. A name in braces is filled in: {volume}. Write {{ for a brace.
 */
export type Sentence = string;
/**
 * Why it is needed.
 */
export type Sentence1 = string;
/**
 * What is to be seen once it is done.
 */
export type Sentence2 = string;
/**
 * How to step back.
 */
export type Sentence3 = string;
export type Sentence4 = string;
export type Argument = string;
/**
 * The text to write.
 */
export type Argument1 = string;
/**
 * The file to write it to.
 */
export type Argument2 = string;
/**
 * The file system's type, which decides whether it can shrink and whether two servers may mount it.
 */
export type FileSystemType =
  'ext2' | 'ext3' | 'ext4' | 'xfs' | 'btrfs' | 'zfs' | 'ntfs' | 'vfat' | 'gfs2' | 'ocfs2' | 'swap';
/**
 * Where it was read, such as pvresize(8) and the version.
 */
export type Sentence5 = string;

/**
 * Procedures: what each action is called, the commands for it, what is to be seen then and how to step back, for one kind of guest or one provider.
 */
export interface ProcedureFile {
  guest?: Name;
  provider?: Name1;
  /**
   * Of a provider: the sites that are its own; all of them if left out.
   *
   * @minItems 1
   */
  sites?: [Name2, ...Name2[]];
  like?: Name3;
  actions: ProcedureActions;
}
/**
 * What is done, by the action's name.
 */
export interface ProcedureActions {
  'check-backup'?: ProcedureDeclaration;
  'check-group'?: ProcedureDeclaration;
  'check-replacement'?: ProcedureDeclaration;
  'check-member-replacement'?: ProcedureDeclaration;
  'check-root'?: ProcedureDeclaration;
  'check-missed'?: ProcedureDeclaration;
  'check-name'?: ProcedureDeclaration;
  'check-server-there'?: ProcedureDeclaration;
  'check-volume-there'?: ProcedureDeclaration;
  'check-layers'?: ProcedureDeclaration;
  'check-identity'?: ProcedureDeclaration;
  'create-volume'?: ProcedureDeclaration;
  'grow-volume'?: ProcedureDeclaration;
  'move-tier'?: ProcedureDeclaration;
  'create-smaller'?: ProcedureDeclaration;
  'attach-smaller'?: ProcedureDeclaration;
  'detach-old'?: ProcedureDeclaration;
  'fill-smaller'?: ProcedureDeclaration;
  'copy-across'?: ProcedureDeclaration;
  'fill-boot'?: ProcedureDeclaration;
  'install-over'?: ProcedureDeclaration;
  unprotect?: ProcedureDeclaration;
  'unprotect-old'?: ProcedureDeclaration;
  protect?: ProcedureDeclaration;
  share?: ProcedureDeclaration;
  unshare?: ProcedureDeclaration;
  attach?: ProcedureDeclaration;
  'attach-boot'?: ProcedureDeclaration;
  detach?: ProcedureDeclaration;
  'attach-for-a-while'?: ProcedureDeclaration;
  'detach-again'?: ProcedureDeclaration;
  'delete-volume'?: ProcedureDeclaration;
  'delete-old'?: ProcedureDeclaration;
  'create-server'?: ProcedureDeclaration;
  'delete-server'?: ProcedureDeclaration;
  'stop-server'?: ProcedureDeclaration;
  'start-server'?: ProcedureDeclaration;
  'change-server-type'?: ProcedureDeclaration;
  'move-server'?: ProcedureDeclaration;
  'set-boot'?: ProcedureDeclaration;
  'see-device'?: ProcedureDeclaration;
  'see-size'?: ProcedureDeclaration;
  'grow-partition'?: ProcedureDeclaration;
  'grow-inside'?: ProcedureDeclaration;
  'grow-member'?: ProcedureDeclaration;
  'make-group'?: ProcedureDeclaration;
  'make-group-over'?: ProcedureDeclaration;
  'join-group'?: ProcedureDeclaration;
  'join-group-over'?: ProcedureDeclaration;
  'leave-group'?: ProcedureDeclaration;
  'replace-member'?: ProcedureDeclaration;
  'remove-group'?: ProcedureDeclaration;
  'rename-group'?: ProcedureDeclaration;
  're-extent'?: ProcedureDeclaration;
  'convert-layout'?: ProcedureDeclaration;
  'lay-out-anew'?: ProcedureDeclaration;
  deactivate?: ProcedureDeclaration;
  export?: ProcedureDeclaration;
  'check-detached'?: ProcedureDeclaration;
  import?: ProcedureDeclaration;
  activate?: ProcedureDeclaration;
  'stop-use'?: ProcedureDeclaration;
  'check-fstab'?: ProcedureDeclaration;
  unmount?: ProcedureDeclaration;
  'unmount-swap'?: ProcedureDeclaration;
  mount?: ProcedureDeclaration;
  'mount-swap'?: ProcedureDeclaration;
  'export-pool'?: ProcedureDeclaration;
  'import-pool'?: ProcedureDeclaration;
  'make-logical-volume'?: ProcedureDeclaration;
  'extend-logical-volume'?: ProcedureDeclaration;
  'reduce-logical-volume'?: ProcedureDeclaration;
  'cut-logical-volume'?: ProcedureDeclaration;
  'remove-file-system'?: ProcedureDeclaration;
  'give-up-file-system'?: ProcedureDeclaration;
  'make-file-system'?: ProcedureDeclaration;
  'make-file-system-over'?: ProcedureDeclaration;
  'make-anew'?: ProcedureDeclaration;
  'set-reserve'?: ProcedureDeclaration;
  'bring-back'?: ProcedureDeclaration;
  'bring-over'?: ProcedureDeclaration;
  'grow-mounted'?: ProcedureDeclaration;
  'grow-unmounted'?: ProcedureDeclaration;
  'shrink-mounted'?: ProcedureDeclaration;
  'shrink-unmounted'?: ProcedureDeclaration;
  'put-smaller-in-place'?: ProcedureDeclaration;
}
/**
 * What is said here replaces what is said of the same action, key by key; cautions are added.
 */
export interface ProcedureDeclaration {
  does?: Sentence;
  why?: Sentence1;
  seen?: Sentence2;
  back?: Sentence3;
  /**
   * What to make sure of first, beside what Ullage says.
   */
  cautions?: Sentence4[];
  /**
   * How it is done from a command line, as examples, in order; an empty list where there is no such way.
   */
  commands?: CommandDeclaration[];
}
/**
 * One command: run, a list of arguments; or write and into, a text written to a file.
 */
export interface CommandDeclaration {
  /**
   * The program and its arguments, each by itself and without quotes: quoting is done when it is shown. A list within the list is left out where what it asks for is not known or not declared.
   *
   * @minItems 1
   */
  run?: [Argument | [Argument, ...Argument[]], ...(Argument | [Argument, ...Argument[]])[]];
  write?: Argument1;
  into?: Argument2;
  /**
   * The types of file system that it is for; any if left out.
   *
   * @minItems 1
   */
  types?: [FileSystemType, ...FileSystemType[]];
  from?: Sentence5;
}
