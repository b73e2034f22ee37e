import { failure, type Result, success } from '../../../core/base';
import type { FileReader } from '../../reader';
import type { Session } from '../../state';
import { shown, usualReader } from './being-read';

const UNREAD = {
  'called off': 'The picture was not read any further, and nothing was changed.',
  failed:
    'The part of the page that reads pictures could not be loaded, so nothing was changed. Check that the page is still reachable and try again.',
  silent:
    'Reading this picture came to no end, so it was given up. Nothing was changed. Choose a smaller one.',
} as const;

const NO_PICTURE = 'This file could not be read as a picture. Choose a PNG, JPEG or SVG file.';

/** A way to make the pictures that are chosen smaller beside the page, which shows meanwhile how to stop it. */
export const picturesBeside =
  (session: Session, name: string, reader: FileReader = usualReader()) =>
  async (
    file: Blob,
    size: { readonly width: number; readonly height: number },
  ): Promise<Result<ImageBitmap, string>> => {
    const read = await shown(session, reader, name, () => reader.readPicture(file, size));
    if (!read.ok) return failure(UNREAD[read.problem]);
    return read.value === null ? failure(NO_PICTURE) : success(read.value);
  };
