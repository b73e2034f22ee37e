/**
 * The address of the practice page beside another page of the app.
 * @param address - of that page; its query is dropped, the lesson that it may hold goes along
 */
export function practiceAddress(address: string): string {
  const practice = new URL('practice.html', address);
  practice.hash = new URL(address).hash;
  return practice.href;
}
