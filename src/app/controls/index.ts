export { useModal } from './dialog';
export {
  CheckField,
  draftMark,
  holdsDraft,
  NumberField,
  NumberWord,
  SelectField,
  SelectWord,
  SwitchWord,
} from './fields';
export { FileButton } from './file-button';
export { MenuButton, type MenuGroup } from './menu';
