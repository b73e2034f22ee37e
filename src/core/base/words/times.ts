/** How long something lasts: `0:42`, `12:05`; whole seconds, rounded. */
export function timeWords(seconds: number): string {
  const whole = Math.round(seconds);
  return `${Math.floor(whole / 60)}:${String(whole % 60).padStart(2, '0')}`;
}
