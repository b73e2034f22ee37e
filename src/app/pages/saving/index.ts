export { attempt } from './attempt';
export { fileStem, saveFile } from './file';
export * from './files-later';
export { keepAsFile, onlyPiece, saidOfNames, saveAsItIs, saveLessonFile } from './lesson';
export type { LinkedPage } from './link';
export { canSend, fileOf, type MadeFile, type PackedFile, saveMade, saveZip, sendFiles, zipOf } from './made';
export { type PictureKind, type SaveNeck, saveNeck, savePicture, standAloneNeck } from './picture';
export { useWork } from './work';
