export { VersionToPractise } from './choice';
export { Versions } from './strip';
