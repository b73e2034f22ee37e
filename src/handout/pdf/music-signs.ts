/**
 * What the music font's signs mean in Unicode (The Unicode Standard 15, block Musical Symbols, U+1D100 to U+1D1FF, and
 * the accidentals of Miscellaneous Symbols), for who copies, searches or hears the text of a file. The font has them in
 * the private area, at the code points of SMuFL 1.4; a sign that Unicode does not have alone, such as a flag, says nothing.
 */
const PLAIN: Readonly<Record<number, string>> = {
  57415: '𝄋',
  57416: '𝄌',
  57424: '𝄞',
  57442: '𝄢',
  57449: '𝄥',
  57453: 'TAB',
  57454: 'TAB',
  57504: '𝅜',
  57506: '𝅝',
  57507: '𝅗',
  57508: '𝅘',
  57511: '𝅃',
  57512: '𝅃',
  57513: '𝅃',
  57831: '.',
  57952: '♭',
  57953: '♮',
  57954: '♯',
  57955: '𝄪',
  57956: '𝄫',
  57962: '(',
  57963: ')',
  58528: '𝅻',
  58529: '𝅻',
  58530: '𝅼',
  58531: '𝅼',
  58532: '𝅽',
  58533: '𝅽',
  58540: '𝅿',
  58541: '𝅿',
  58546: '𝅽𝅼',
  58547: '𝅽𝅼',
  58560: '𝄐',
  58595: '𝄻',
  58596: '𝄼',
  58597: '𝄽',
  58598: '𝄾',
  58599: '𝄿',
  58600: '𝅀',
  58601: '𝅁',
  58612: '𝄻',
  58613: '𝄼',
  58656: '𝆏',
  58658: '𝆑',
  58666: '𝆏𝆏𝆏',
  58667: '𝆏𝆏',
  58668: '𝆐𝆏',
  58669: '𝆐𝆑',
  58671: '𝆑𝆑',
  58672: '𝆑𝆑𝆑',
};

/** Figures of time signatures and of tuplets, from 0 to 9. */
const FIGURES = [0xe080, 0xe880] as const;
const PRIVATE = { first: 0xe000, last: 0xf8ff } as const;

/** What the text means where it holds signs of the music font; null where it is Unicode already. */
export function meaningOf(text: string): string | null {
  const characters = [...text];
  return characters.some(isPrivate) ? characters.map(meaningOfOne).join('') : null;
}

const codeOf = (character: string): number => character.codePointAt(0) ?? 0;

const isPrivate = (character: string): boolean =>
  codeOf(character) >= PRIVATE.first && codeOf(character) <= PRIVATE.last;

function meaningOfOne(character: string): string {
  if (!isPrivate(character)) return character;
  const code = codeOf(character);
  const zero = FIGURES.find((first) => code >= first && code < first + 10);
  return zero === undefined ? (PLAIN[code] ?? '') : String(code - zero);
}
