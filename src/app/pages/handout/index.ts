export { HandoutChoices } from './choices';
export { useDesigner } from './view';
