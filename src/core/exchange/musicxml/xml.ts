/** An XML element; a string among its children is text, so nothing a person typed can become markup. */
export interface Element {
  readonly name: string;
  readonly attributes: Attributes;
  readonly children: readonly (Element | string)[];
}

type Attributes = Readonly<Record<string, string | number>>;
export type Child = Element | string | number | null | readonly Child[];

/** Children that are null are left out, lists are taken apart, numbers become text. */
export const element = (name: string, attributes: Attributes = {}, ...children: Child[]): Element => ({
  name,
  attributes,
  children: children.flatMap(plainChildren),
});

/** An element without attributes. */
export const tag = (name: string, ...children: Child[]): Element => element(name, {}, ...children);

function plainChildren(child: Child): (Element | string)[] {
  if (child === null) return [];
  if (typeof child === 'string' || typeof child === 'number') return [String(child)];
  if ('name' in child) return [child];
  return child.flatMap(plainChildren);
}

const ESCAPES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
};

/** Signs that no XML 1.0 document may hold, not even escaped (XML 1.0, production 2), become a question mark. */
const FORBIDDEN = /[^\t\n\r\u{20}-\u{D7FF}\u{E000}-\u{FFFD}\u{10000}-\u{10FFFF}]/gu;

const escapeText = (text: string): string =>
  text.replace(FORBIDDEN, '?').replace(/[&<>"]/g, (sign) => ESCAPES[sign] ?? sign);

function print({ name, attributes, children }: Element, indent: string): string {
  const start = Object.entries(attributes).reduce(
    (text, [attribute, value]) => `${text} ${attribute}="${escapeText(String(value))}"`,
    `${indent}<${name}`,
  );
  if (children.length === 0) return `${start}/>\n`;
  if (children.some((child) => typeof child === 'string')) {
    const text = children.map((child) =>
      typeof child === 'string' ? escapeText(child) : print(child, '').trimEnd(),
    );
    return `${start}>${text.join('')}</${name}>\n`;
  }
  const inner = children.map((child) => (typeof child === 'string' ? '' : print(child, `${indent} `)));
  return `${start}>\n${inner.join('')}${indent}</${name}>\n`;
}

/** The whole document, UTF-8 declared, one element a line. */
export const printXml = (root: Element, doctype = ''): string =>
  `<?xml version="1.0" encoding="UTF-8"?>\n${doctype}${print(root, '')}`;
