/** The script of the practice page on a web server, `practice.html`: the lesson comes by a link or from a file. */
import { createRoot } from 'react-dom/client';
import { createFileReader } from '../../reader';
import { StudentPage } from './student-page';

/** Time after the start before files are fetched for later, in milliseconds: the first look comes first. */
const OFFLINE_PAUSE = 2000;

async function keepOffline(): Promise<void> {
  // Where it cannot be fetched, or a frame may keep nothing, all works while there is a network.
  const offline = await import('../../offline').catch(() => null);
  await offline?.followVersions();
}

const element = document.getElementById('app');
if (element !== null) createRoot(element).render(<StudentPage embedded={null} reader={createFileReader()} />);
if (import.meta.env.PROD) window.setTimeout(() => void keepOffline(), OFFLINE_PAUSE);
