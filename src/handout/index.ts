export { buildHandout, handoutPdf } from './build';
export { readLogo } from './logo';
export { type BlockChoice, blockChoices, moveBlock, showBlock } from './model/blocks';
export { applyPreset, HANDOUT_PRESETS, type HandoutPreset, presetOf } from './model/presets';
export { type FullSettings, fullSettings } from './model/settings';
export { barsPicture, type PictureRows } from './pictures/bars';
export { pngFile, standAlone, svgFile } from './pictures/files';
export { preparePrint, printHandout } from './print';
export * from './types';
