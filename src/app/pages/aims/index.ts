export { BarAims } from './bar-aims';
export { FurtherAims } from './further-aims';
export { Aims } from './settings';
export { Techniques } from './techniques';
