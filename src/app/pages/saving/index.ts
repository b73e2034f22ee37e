export { attempt } from './attempt';
export { fileStem } from './file';
export {
  prepareHandout,
  printLessonHandout,
  saveAudio,
  saveHandout,
  saveMidi,
  saveMusicXml,
  saveMxl,
  saveTextTab,
} from './files-later';
export { copyLink, keepAsFile, onlyPiece, saveAsItIs, saveLessonFile } from './lesson';
export { canSend, fileOf, type MadeFile, saveMade, saveZip, sendFiles } from './made';
export { type PictureKind, type SaveNeck, saveNeck, savePicture, standAloneNeck } from './picture';
export { savePracticePage } from './practice';
export { useWork } from './work';
