import '../../styles/pencil.css';

export { writeOnNeck } from './on-neck';
export { perform } from './perform';
export { pointAt } from './pointed';
export { PencilStrip } from './strip';
export { PencilSurface } from './surface';
