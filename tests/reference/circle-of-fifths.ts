/**
 * Key signatures as the circle of fifths gives them: sharps (positive) or flats, the major key, its relative
 * minor, and the altered notes in their order. Open Music Theory, "Key signatures" (CC BY-SA 4.0), computed
 * independently with music21 10.5.0 (BSD-3).
 */
export const CIRCLE_OF_FIFTHS = [
  [-7, 'C♭', 'A♭', 'B♭, E♭, A♭, D♭, G♭, C♭, F♭'],
  [-6, 'G♭', 'E♭', 'B♭, E♭, A♭, D♭, G♭, C♭'],
  [-5, 'D♭', 'B♭', 'B♭, E♭, A♭, D♭, G♭'],
  [-4, 'A♭', 'F', 'B♭, E♭, A♭, D♭'],
  [-3, 'E♭', 'C', 'B♭, E♭, A♭'],
  [-2, 'B♭', 'G', 'B♭, E♭'],
  [-1, 'F', 'D', 'B♭'],
  [0, 'C', 'A', ''],
  [1, 'G', 'E', 'F♯'],
  [2, 'D', 'B', 'F♯, C♯'],
  [3, 'A', 'F♯', 'F♯, C♯, G♯'],
  [4, 'E', 'C♯', 'F♯, C♯, G♯, D♯'],
  [5, 'B', 'G♯', 'F♯, C♯, G♯, D♯, A♯'],
  [6, 'F♯', 'D♯', 'F♯, C♯, G♯, D♯, A♯, E♯'],
  [7, 'C♯', 'A♯', 'F♯, C♯, G♯, D♯, A♯, E♯, B♯'],
] as const;
