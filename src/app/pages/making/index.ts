export { InOne } from './in-one';
export { MadeFiles } from './made-files';
export { useMaking } from './making';
