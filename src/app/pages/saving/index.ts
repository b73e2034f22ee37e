export { attempt } from './attempt';
export { fileStem } from './file';
export { prepareHandout, printLessonHandout, saveHandout } from './handout';
export { copyLink, keepAsFile, onlyPiece, saveAsItIs, saveLessonFile } from './lesson';
export { saveAudio, saveMidi, saveMusicXml, saveMxl, saveTextTab } from './line-later';
export { type PictureKind, type SaveNeck, saveNeck, savePicture, standAloneNeck } from './picture';
export { savePracticePage } from './practice';
export { useWork } from './work';
