/** The little of the library that the tests use; it ships no types. */
declare module 'verovio/wasm' {
  export default function createModule(): Promise<object>;
}

declare module 'verovio/esm' {
  export const LOG_OFF: number;
  export function enableLog(level: number, module: object): void;
  export class VerovioToolkit {
    constructor(module: object);
    /** False when the document cannot be read. */
    loadData(document: string): boolean | number;
    getMEI(options: object): string;
    /** A Standard MIDI File in base64. */
    renderToMIDI(): string;
  }
}
