export { type AtRegister, useRegister } from './use-register';
