/** What saves a line is fetched when something is saved: the first look does without it. */
type LineFiles = typeof import('./line');

const files = (): Promise<LineFiles> => import('./line');

export const saveAudio: LineFiles['saveAudio'] = async (...asked) => (await files()).saveAudio(...asked);
export const saveMidi: LineFiles['saveMidi'] = async (...asked) => (await files()).saveMidi(...asked);
export const saveMusicXml: LineFiles['saveMusicXml'] = async (...asked) =>
  (await files()).saveMusicXml(...asked);
export const saveMxl: LineFiles['saveMxl'] = async (...asked) => (await files()).saveMxl(...asked);
export const saveTextTab: LineFiles['saveTextTab'] = async (...asked) =>
  (await files()).saveTextTab(...asked);
