/** The script of the practice page that is a single file; the lesson stands in the file itself. */
import '../../styles/index.css';
import { createRoot } from 'react-dom/client';
import { StudentPage } from './student-page';

const element = document.getElementById('app');
const embedded = document.getElementById('lesson')?.textContent?.trim() ?? '';
if (element !== null)
  createRoot(element).render(<StudentPage embedded={embedded === '' ? null : embedded} reader={null} />);
