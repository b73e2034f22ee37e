export { LineStudied } from './studied';
