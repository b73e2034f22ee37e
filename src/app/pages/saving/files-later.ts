/** What saves and prints is fetched when something is saved: the first look does without it. */
type LineFiles = typeof import('./line');

const files = (): Promise<LineFiles> => import('./line');

export const saveAudio: LineFiles['saveAudio'] = async (...asked) => (await files()).saveAudio(...asked);
export const midiOf: LineFiles['midiOf'] = async (...asked) => (await files()).midiOf(...asked);
export const musicXmlOf: LineFiles['musicXmlOf'] = async (...asked) => (await files()).musicXmlOf(...asked);
export const saveMidi: LineFiles['saveMidi'] = async (...asked) => (await files()).saveMidi(...asked);
export const saveMusicXml: LineFiles['saveMusicXml'] = async (...asked) =>
  (await files()).saveMusicXml(...asked);
export const saveMxl: LineFiles['saveMxl'] = async (...asked) => (await files()).saveMxl(...asked);
export const saveTextTab: LineFiles['saveTextTab'] = async (...asked) =>
  (await files()).saveTextTab(...asked);

type Stems = typeof import('./version-stem');

export const versionStem: Stems['versionStem'] = async (...asked) =>
  (await import('./version-stem')).versionStem(...asked);

type Links = typeof import('./link');

export const copyLink: Links['copyLink'] = async (...asked) => (await import('./link')).copyLink(...asked);

type PracticeFiles = typeof import('./practice');

const practice = (): Promise<PracticeFiles> => import('./practice');

export const savePracticePage: PracticeFiles['savePracticePage'] = async (...asked) =>
  (await practice()).savePracticePage(...asked);
export const practicePageOf: PracticeFiles['practicePageOf'] = async (...asked) =>
  (await practice()).practicePageOf(...asked);

type HandoutFiles = typeof import('./handout');

const handout = (): Promise<HandoutFiles> => import('./handout');

export const writtenHandout: HandoutFiles['writtenHandout'] = async (...asked) =>
  (await handout()).writtenHandout(...asked);
export const handoutApart: HandoutFiles['handoutApart'] = async (...asked) =>
  (await handout()).handoutApart(...asked);
export const saveHandout: HandoutFiles['saveHandout'] = async (...asked) =>
  (await handout()).saveHandout(...asked);
export const readyToPrint: HandoutFiles['readyToPrint'] = async (...asked) =>
  (await handout()).readyToPrint(...asked);
export const printLessonHandout: HandoutFiles['printLessonHandout'] = async (...asked) =>
  (await handout()).printLessonHandout(...asked);

/** Fetches what a PDF is made with, ahead of being asked for one; what does not come now is asked for again then. */
export const prepareHandout = (): Promise<void> =>
  import('../../../handout').then(
    ({ preparePdf }) => preparePdf(),
    () => undefined,
  );
