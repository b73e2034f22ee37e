import type { SystemLayout } from '../../../score';

/**
 * From how far the large view is read. ISO 9241-303 (visual displays, from memory) asks for characters of 16 minutes of
 * arc at least and recommends 20 to 22; a capital or digit is as high as the font's capitals. For the staff there is no
 * such standard: a part with staves of 6.5 mm lies 0.8 m from the eyes on a stand, so that a space covers 7 minutes
 * (common practice, no source).
 *
 * CSS tells no page how large its screen is, so the view says for which screen it reckons, and that can be changed.
 */
export const LEAST_MINUTES = { text: 16, staff: 7 } as const;

/** What is to be read from there. */
const ACROSS_MM = 3000;

/** Academico's digits are as high as its capitals: so much of the font's size (by its font file). */
export const DIGIT_HEIGHT = 0.722;

const tangentOf = (minutes: number): number => Math.tan((minutes / 60 / 180) * Math.PI);

/** Millimetres that cover so many minutes of arc for whoever stands three metres away. */
export const heightSeen = (minutes: number): number => tangentOf(minutes) * ACROSS_MM;

/** A screen's diagonals in inches that can be told: a telephone to a picture on the wall. */
export const SCREEN_INCHES = { least: 4, most: 200 } as const;

/** Usual screen of a desk, in inches. */
const DESK_INCHES = 24;
/** Tablets and telephones have about so many millimetres in a CSS pixel (150 to 163 an inch, from memory). */
const TOUCHED_PIXEL_MM = 0.165;

/**
 * The diagonal that a screen is taken for until somebody tells it, in whole inches.
 * @param touched - whether it is touched, and has no mouse: then it is a tablet or telephone
 */
export const guessedInches = (width: number, height: number, touched: boolean): number =>
  touched ? Math.round((Math.hypot(width, height) * TOUCHED_PIXEL_MM) / 25.4) : DESK_INCHES;

/** Millimetres of a CSS pixel where so many pixels fill a screen of that diagonal. */
export const pixelOf = (inches: number, width: number, height: number): number =>
  (inches * 25.4) / Math.max(1, Math.hypot(width, height));

export type ReadPart = 'music' | 'neck';

/** How far away parts of the view are read, in millimetres. */
export type ReadFrom = Partial<Record<ReadPart, number>>;

/** What is read while one plays. */
const READ: readonly string[] = ['fret', 'degree', 'counting', 'chord'];
/** A staff space in the drawing's own units. */
const UNITS = 10;

/** A staff space of a system in CSS pixels, on a tab alone as well. */
export const spaceOf = ({ scale }: Pick<SystemLayout, 'scale'>): number => scale * UNITS;

/**
 * From how far it can be read, by the smallest thing in it.
 * @param staff - whether there is a staff
 * @param neck - font size of the smallest word on the neck in CSS pixels; null without the neck
 * @param millimetres - of a CSS pixel
 */
export function readFrom(
  systems: readonly Pick<SystemLayout, 'ink' | 'scale'>[],
  { staff, neck, millimetres }: { staff: boolean; neck: number | null; millimetres: number },
): ReadFrom {
  const texts = systems.flatMap(({ ink, scale }) =>
    ink.flatMap((mark) => (mark.kind === 'text' && READ.includes(mark.role) ? [mark.size * scale] : [])),
  );
  const ofText = (size: number) => (size * DIGIT_HEIGHT * millimetres) / tangentOf(LEAST_MINUTES.text);
  const ofStaff = (space: number) => (space * millimetres) / tangentOf(LEAST_MINUTES.staff);
  const spaces = staff ? systems.map(spaceOf) : [];
  const music = Math.min(...texts.map(ofText), ...spaces.map(ofStaff));
  return { ...(Number.isFinite(music) ? { music } : {}), ...(neck === null ? {} : { neck: ofText(neck) }) };
}

/** Sizes in CSS pixels of digits and staff that are just read from three metres. */
export const leastAcross = (
  millimetres: number,
): { readonly digits: number; readonly staffSpace: number } => ({
  digits: heightSeen(LEAST_MINUTES.text) / millimetres / DIGIT_HEIGHT,
  staffSpace: heightSeen(LEAST_MINUTES.staff) / millimetres,
});

/** Whether all of it is read from three metres; a centimetre is not asked for. */
export const isReadAcross = (read: ReadFrom): boolean =>
  Object.values(read).every((from) => from >= ACROSS_MM - 10);

/** `2.4 m`, never more than it is. */
export const inMetres = (millimetres: number): string => `${Math.floor(millimetres / 100 + 0.1) / 10} m`;
