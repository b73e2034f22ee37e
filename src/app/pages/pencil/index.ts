import '../../styles/pencil.css';

export { NeckPencil } from './neck';
export { useNeckOpen } from './neck-open';
export { perform, takeOut } from './perform';
export { PencilSaid } from './said';
export { PencilStrip } from './strip';
export { PencilSurface } from './surface';
