export { followVersions, type NewVersion } from './new-version';
