/**
 * Whether the page is shown inside a page of another origin, directly or further out: there, whoever made that page
 * could lay something over it that leads clicks astray, and the browser may give it a storage of its own.
 */
export function isInForeignFrame(innermost: Window = window): boolean {
  const { origin } = innermost.location;
  try {
    for (let each = innermost; each.parent !== each; each = each.parent)
      if (each.parent.location.origin !== origin) return true;
    return false;
  } catch {
    // The browser lets no page look into one of another origin.
    return true;
  }
}
