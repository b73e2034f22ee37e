import academico from '@vexflow-fonts/academico/academico.otf?url';
import academicoBold from '@vexflow-fonts/academico/academico-bold.otf?url';
import bravura from '@vexflow-fonts/bravura/bravura.otf?url';
import { glyphCoverage } from './coverage';
import type { PdfFont } from './runs';

/** The faces of the page, as OpenType files: the PDF library reads no WOFF2. */
const FACES = [
  { name: 'text', family: 'Academico', bold: false, url: academico },
  { name: 'text bold', family: 'Academico', bold: true, url: academicoBold },
  { name: 'music', family: 'Bravura', bold: false, url: bravura },
] as const;

let loaded: Promise<readonly PdfFont[]> | null = null;

/**
 * Fetches the fonts once. A failed fetch is tried again at the next call.
 * @throws Error when a font file does not arrive
 */
export function pdfFonts(): Promise<readonly PdfFont[]> {
  loaded ??= Promise.all(FACES.map(load)).catch((reason: unknown) => {
    loaded = null;
    throw reason;
  });
  return loaded;
}

async function load(face: (typeof FACES)[number]): Promise<PdfFont> {
  const response = await fetch(face.url);
  if (!response.ok) throw new Error(`The font for the handout did not arrive (${response.status})`);
  const file = new Uint8Array(await response.arrayBuffer());
  return { name: face.name, family: face.family, bold: face.bold, file, covers: glyphCoverage(file) };
}
