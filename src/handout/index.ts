export { buildHandout, handoutPdf } from './build';
export { preparePrint, printHandout } from './print';
export * from './types';
