import { strToU8, type Zippable, zipSync } from 'fflate';
import { element, printXml, tag } from './xml';

const MEDIA_TYPE = 'application/vnd.recordare.musicxml';

/** Files in a zip need a time; a fixed one keeps the clock out, so the same lesson gives the same file. */
const FIXED_TIME = 315_662_400_000;

/**
 * A MusicXML document in its compressed form: a zip whose first file names the media type, uncompressed, and
 * whose container file names the score (MusicXML 4.0, "Compressed .mxl files").
 */
export function packMxl(musicXml: string): Uint8Array {
  const container = printXml(
    tag(
      'container',
      tag(
        'rootfiles',
        element('rootfile', { 'full-path': 'score.musicxml', 'media-type': `${MEDIA_TYPE}+xml` }),
      ),
    ),
  );
  const files: Zippable = {
    mimetype: [strToU8(MEDIA_TYPE), { level: 0 }],
    'META-INF/container.xml': strToU8(container),
    'score.musicxml': strToU8(musicXml),
  };
  return zipSync(files, { level: 9, mtime: FIXED_TIME });
}
