export { IdeaDrawer } from './drawer';
