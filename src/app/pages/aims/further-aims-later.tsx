import type { ComponentProps } from 'react';
import { Later, laterPart } from '../at-work';
import type { FurtherAims as Part } from './further-aims';

const FURTHER = laterPart('Further aims', async () => (await import('./further-aims')).FurtherAims);

/** What is asked beyond the techniques comes after the first look. */
export const FurtherAims = (given: ComponentProps<typeof Part>) => <Later part={FURTHER} given={given} />;
