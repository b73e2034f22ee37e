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
export { MenuButton, type MenuGroup } from './menu';
