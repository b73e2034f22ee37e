import academico from '@vexflow-fonts/academico/academico.otf?url';
import academicoBold from '@vexflow-fonts/academico/academico-bold.otf?url';
import bravura from '@vexflow-fonts/bravura/bravura.otf?url';
import type { Font } from 'fontkit';
import type { Face } from './runs';

/** The faces of the page, as OpenType files: the PDF library reads no WOFF2. */
const FILES = [
  { name: 'text', family: 'Academico', bold: false, url: academico },
  { name: 'text bold', family: 'Academico', bold: true, url: academicoBold },
  { name: 'music', family: 'Bravura', bold: false, url: bravura },
] as const;

let loaded: Promise<readonly Face[]> | null = null;

/**
 * Fetches the font files once. A failed fetch is tried again at the next call.
 * @throws Error when a file does not arrive
 */
export function loadFaces(): Promise<readonly Face[]> {
  loaded ??= Promise.all(FILES.map(load)).catch((reason: unknown) => {
    loaded = null;
    throw reason;
  });
  return loaded;
}

async function load({ name, family, bold, url }: (typeof FILES)[number]): Promise<Face> {
  const [{ create }, response] = await Promise.all([import('fontkit'), fetch(url)]);
  if (!response.ok) throw new Error(`The font for the handout did not arrive (${response.status})`);
  const font = create(new Uint8Array(await response.arrayBuffer()));
  readAhead(font);
  return { name, family, bold, font };
}

/** A text of which a font's tables of signs, widths and kerning are read. */
const ANY_TEXT = 'Av';

/** A font reads its tables when they are first asked for: ahead of a click on what is made with them. */
function readAhead(font: Font): void {
  font.layout(ANY_TEXT);
  font.createSubset();
}
