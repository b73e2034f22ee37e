export { Adding } from './adding';
export { givingOf } from './deeds';
export { TextField } from './fields';
export { Students } from './students';
