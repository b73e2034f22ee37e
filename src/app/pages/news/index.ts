export { NewsList } from './list';
export { WhatIsNew } from './what-is-new';
