export { lessonToGive } from './deeds';
export { TextField } from './fields';
export { Students } from './students';
export { type AtRegister, useRegister } from './use-register';
