import { failure, type Result, success } from '../../../core/base';
import { pageClock } from '../../clock';
import { openChannel } from '../news';
import { openRegisterDatabase } from './database';
import { describeRegisterFault } from './faults';
import { forgetInLessons } from './forget';
import { createRegister, type Register } from './store';

export type { Register, RegisterList } from './store';

/** Opens the register of this device. */
export const openRegister = (name = 'ground-bass students'): Register =>
  createRegister({
    open: (onLost) => openRegisterDatabase(name, onLost),
    clock: pageClock,
    channel: openChannel(name),
  });

/**
 * Forgets a student's name in the lessons of this device and all that is kept of them.
 * @returns the titles of lessons in whose own words the name still stands; or a sentence
 */
export async function forgetStudentInLessons(name: string): Promise<Result<readonly string[], string>> {
  try {
    return success(await forgetInLessons('ground-bass', name));
  } catch (fault) {
    return failure(describeRegisterFault(fault));
  }
}
