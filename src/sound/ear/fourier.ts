/** A spectrum: real and imaginary parts side by side. */
export interface Spectrum {
  readonly re: Float64Array;
  readonly im: Float64Array;
}

export const emptySpectrum = (size: number): Spectrum => ({
  re: new Float64Array(size),
  im: new Float64Array(size),
});

/**
 * The discrete Fourier transform of complex numbers in place (J. W. Cooley and J. W. Tukey, "An algorithm for the machine
 * calculation of complex Fourier series", 1965).
 * @param size - a power of two
 */
export function createFourier(size: number) {
  const half = size / 2;
  const cos = Float64Array.from({ length: half }, (_, index) => Math.cos((2 * Math.PI * index) / size));
  const sin = Float64Array.from({ length: half }, (_, index) => Math.sin((2 * Math.PI * index) / size));
  const mirrored = new Uint32Array(size);
  for (let index = 1; index < size; index += 1)
    mirrored[index] = ((mirrored[index >> 1] ?? 0) >> 1) | ((index & 1) * half);

  const sortMirrored = ({ re, im }: Spectrum): void => {
    for (let index = 0; index < size; index += 1) {
      const other = mirrored[index] ?? 0;
      if (other <= index) continue;
      [re[index], re[other]] = [re[other] ?? 0, re[index] ?? 0];
      [im[index], im[other]] = [im[other] ?? 0, im[index] ?? 0];
    }
  };

  /** Joins all neighbouring pieces of so many values each in pairs. */
  const join = ({ re, im }: Spectrum, width: number, sign: 1 | -1): void => {
    const stride = half / width;
    for (let at = 0; at < width; at += 1) {
      const c = cos[at * stride] ?? 0;
      const s = sign * (sin[at * stride] ?? 0);
      for (let upper = at; upper < size; upper += 2 * width) {
        const lower = upper + width;
        const lowerRe = re[lower] ?? 0;
        const lowerIm = im[lower] ?? 0;
        const turnedRe = lowerRe * c - lowerIm * s;
        const turnedIm = lowerRe * s + lowerIm * c;
        const upperRe = re[upper] ?? 0;
        const upperIm = im[upper] ?? 0;
        re[upper] = upperRe + turnedRe;
        im[upper] = upperIm + turnedIm;
        re[lower] = upperRe - turnedRe;
        im[lower] = upperIm - turnedIm;
      }
    }
  };

  /** @param sign - −1 forwards, 1 back */
  const run = (spectrum: Spectrum, sign: 1 | -1): void => {
    sortMirrored(spectrum);
    for (let width = 1; width < size; width *= 2) join(spectrum, width, sign);
  };

  return {
    forwards: (spectrum: Spectrum): void => run(spectrum, -1),
    back: (spectrum: Spectrum): void => {
      run(spectrum, 1);
      for (let index = 0; index < size; index += 1) {
        spectrum.re[index] = (spectrum.re[index] ?? 0) / size;
        spectrum.im[index] = (spectrum.im[index] ?? 0) / size;
      }
    },
  };
}
