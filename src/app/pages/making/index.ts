export { MadeFiles } from './made-files';
export { useMaking } from './making';
