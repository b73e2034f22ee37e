import '../../styles/pencil.css';

export { writeOnNeck } from './on-neck';
export { perform } from './perform';
export { PencilStrip } from './strip';
export { PencilSurface } from './surface';
