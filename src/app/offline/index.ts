export { askShared } from './ask-shared';
export { followVersions, type NewVersion } from './new-version';
export { NEWS_FILE, newsSince, readNews, type VersionNews } from './news';
