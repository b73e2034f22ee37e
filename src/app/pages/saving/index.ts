export { attempt } from './attempt';
export { fileStem, saveFile } from './file';
export * from './files-later';
export { copyLink, keepAsFile, type LinkedPage, onlyPiece, saveAsItIs, saveLessonFile } from './lesson';
export { canSend, fileOf, type MadeFile, saveMade, saveZip, sendFiles, zipOf } from './made';
export { type PictureKind, type SaveNeck, saveNeck, savePicture, standAloneNeck } from './picture';
export { useWork } from './work';
