/** A step of the keyboard or the pointer, as WebDriver and WebDriver BiDi both have it (W3C, `actions`). */
export type InputAction =
  | { readonly type: 'keyDown' | 'keyUp'; readonly value: string }
  | {
      readonly type: 'pointerMove';
      readonly x: number;
      readonly y: number;
      readonly duration: number;
      readonly origin: 'viewport';
    }
  | { readonly type: 'pointerDown' | 'pointerUp'; readonly button: 0 };

/** A device with what it does. */
export interface InputSource {
  readonly type: 'key' | 'pointer';
  readonly id: string;
  readonly actions: readonly InputAction[];
}

/** A browser that is driven from outside, over an open standard. */
export interface DrivenBrowser {
  /** With its version: `Firefox 153.8.0`. */
  readonly name: string;
  /** Opens an address in a window whose content is about so large, in CSS pixels. */
  open(address: string, size: { readonly width: number; readonly height: number }): Promise<void>;
  /** The value of a script's expression, which can be written as JSON; null where it has none. */
  evaluate(expression: string): Promise<unknown>;
  act(source: InputSource): Promise<void>;
  /** A picture of the window as PNG. */
  picture(): Promise<Buffer>;
  /** Errors that the console has had, where the standard hands them on. */
  readonly complaints: readonly string[];
  close(): Promise<void>;
}

/** Why a browser is not driven on this machine. */
export interface Skipped {
  readonly skipped: string;
}
