export { SheetView } from './sheet';
