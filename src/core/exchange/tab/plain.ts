/** Signs that keyboards lack, as players type them; control characters, which could break a line, as spaces. */
export const plainText = (text: string): string =>
  text
    .replace(/♭/g, 'b')
    .replace(/♯/g, '#')
    .replace(/[\p{Cc}\p{Zl}\p{Zp}]+/gu, ' ')
    .trim();

/** Text in lines of at most `width` signs, broken between words; a longer word is cut. */
export function wrap(text: string, width: number): readonly string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(/\s+/).filter(Boolean)) {
    let rest = word;
    if (line !== '' && line.length + 1 + rest.length > width) {
      lines.push(line);
      line = '';
    }
    while (rest.length > width) {
      lines.push(rest.slice(0, width));
      rest = rest.slice(width);
    }
    line = line === '' ? rest : `${line} ${rest}`;
  }
  return line === '' ? lines : [...lines, line];
}
