/**
 * Loudness by the package `ebur128-wasm`, the EBU R 128 meter of other people (libebur128 in Rust): the independent reader
 * of what `src/tracks` measures. Its own loader is made for bundlers, so the module is called as it stands.
 */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import * as z from 'zod/mini';

const path = createRequire(import.meta.url).resolve('ebur128-wasm/ebur128_wasm_bg.wasm');
const nothing = (): number => 0;
const measure = z.custom<(...numbers: number[]) => number>((value) => typeof value === 'function');
const { instance } = await WebAssembly.instantiate(readFileSync(path), {
  './ebur128_wasm_bg.js': {
    __wbg_new_693216e109162396: nothing,
    __wbg_stack_0ddaca5d1abfb52f: nothing,
    __wbg_error_09919627ac0992f5: nothing,
    __wbindgen_object_drop_ref: nothing,
  },
});
const wasm = z
  .object({
    memory: z.instanceof(WebAssembly.Memory),
    __wbindgen_malloc: measure,
    ebur128_integrated_stereo: measure,
    ebur128_true_peak_stereo: measure,
  })
  .parse({ ...instance.exports });

/** Puts samples into the module's memory, which takes them from there and frees them itself. */
function given(samples: Float32Array): readonly [number, number] {
  const at = wasm.__wbindgen_malloc(samples.length * 4);
  new Float32Array(wasm.memory.buffer, at, samples.length).set(samples);
  return [at, samples.length];
}

interface Channels {
  readonly sampleRate: number;
  readonly left: Float32Array;
  readonly right: Float32Array;
}

/** In LUFS. */
export const loudnessByOthers = ({ sampleRate, left, right }: Channels): number =>
  wasm.ebur128_integrated_stereo(sampleRate, ...given(left), ...given(right));

/** The true peak in dBTP, of the louder channel. */
export const truePeakByOthers = ({ sampleRate, left, right }: Channels): number =>
  wasm.ebur128_true_peak_stereo(sampleRate, ...given(left), ...given(right));
