export { packMxl } from './musicxml/mxl';
export { writeMusicXml } from './musicxml/score';
