/** What our own files carry beside the music, so that they come back as they went out. */

/** The name of the field of a MusicXML file (`miscellaneous-field`) in which the feel's id stands. */
export const FEEL_FIELD = 'feel';

/** Before the feel's id in a text event at the beginning of a MIDI file. */
export const FEEL_TEXT = 'Ground Bass, feel: ';
