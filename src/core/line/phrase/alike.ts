import { remembered, rememberedFor } from '../../base';
import type { Contour, Role } from '../../feel';

const firsts = new Map<string, Contour>();

const textOf = (role: Role): string => {
  switch (role.kind) {
    case 'step':
      return `${role.step}_${role.octave}`;
    case 'repeat':
      return '=';
    default:
      return `${role.kind}_${role.octave}`;
  }
};

/**
 * The first contour that sounds like this one and is priced like it: tunes of a book share many of their bars, so each
 * chord asks once for all of them. The books stay as they are, so each contour is looked up once.
 */
export const firstAlike = rememberedFor((contour: Contour): Contour => {
  const { beats, roles, leads, tags, slot } = contour;
  // A breath may leave its last beat silent: it is the one slot that a price asks for.
  let text = `${leads} ${slot === 'C'} ${tags.join()}`;
  for (const { start, duration } of beats) text += ` ${start}:${duration}`;
  for (const role of roles) text += ` ${textOf(role)}`;
  return remembered(firsts, text, () => contour);
});
