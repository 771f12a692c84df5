/** The little of cli-progress that is used here; the library brings no types of its own. */
declare module 'cli-progress' {
  export interface Options {
    readonly format: string;
    readonly stream: NodeJS.WritableStream;
    readonly clearOnComplete: boolean;
    readonly hideCursor: boolean;
    readonly etaBuffer: number;
  }
  export class SingleBar {
    constructor(options: Options);
    start(total: number, value: number, payload: Readonly<Record<string, string>>): void;
    increment(by: number, payload: Readonly<Record<string, string>>): void;
    stop(): void;
  }
}
