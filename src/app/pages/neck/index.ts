export { LINE_NOTES, NECK_LABELS, type NeckLabel, neckChoices, neckPicture } from './picture';
export { ShapesFold } from './shapes-fold';
