export { FingeringChoices } from './choices';
