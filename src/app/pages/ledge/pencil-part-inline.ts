import type { ComponentProps } from 'react';
import { laterPart } from '../at-work';
import type { NeckPencil } from '../pencil';

/**
 * Nobody writes on the practice page that is a single file, so that it does without the pencil: it takes the place of
 * `pencil-part.ts` there.
 */
export const PENCIL = laterPart<ComponentProps<typeof NeckPencil>>('The pencil', async () => () => null);
