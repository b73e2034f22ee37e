import { SaxesParser } from 'saxes';
import { failure, type Result, success } from '../../base';

/** An element as it was read. */
export interface XmlNode {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: readonly XmlNode[];
  /** The text that stands directly in it, without blanks around it. */
  readonly text: string;
}

interface OpenNode extends XmlNode {
  readonly children: XmlNode[];
  text: string;
}

/** Far above any real score, so that a file made to harm ends in a sentence. */
const MOST_ELEMENTS = 1_500_000;
const DEEPEST = 60;

/** What stops the reading; only its sentence leaves this file. */
class XmlFault extends Error {}

function treeOf(text: string): XmlNode {
  const parser = new SaxesParser<{ position: true; xmlns: false }>({ position: true, xmlns: false });
  const document: OpenNode = { name: '', attributes: {}, children: [], text: '' };
  const open: OpenNode[] = [document];
  let count = 0;
  const fail = (message: string): never => {
    throw new XmlFault(message);
  };
  parser.on('error', () =>
    fail(`This file is not well-formed XML: see line ${parser.line}, column ${parser.column + 1}.`),
  );
  parser.on('opentag', ({ name, attributes }) => {
    count += 1;
    if (count > MOST_ELEMENTS) fail('This file holds more than a score can, so it was not read.');
    if (open.length > DEEPEST) fail('The elements of this file stand too deep in each other for a score.');
    const node: OpenNode = { name, attributes, children: [], text: '' };
    open.at(-1)?.children.push(node);
    open.push(node);
  });
  parser.on('closetag', () => {
    const closed = open.pop();
    if (closed) closed.text = closed.text.trim();
  });
  const addText = (said: string): void => {
    const node = open.at(-1);
    if (node) node.text += said;
  };
  parser.on('text', addText);
  parser.on('cdata', addText);
  parser.write(text).close();
  return document.children[0] ?? fail('There is no element in this file.');
}

/**
 * Reads an XML document into a tree. Nothing is fetched, and no entity is known but XML's own five, so neither a
 * DOCTYPE nor an entity can bring anything in. Never throws: a fault is a sentence with line and column.
 */
export function readXml(text: string): Result<XmlNode, { readonly message: string }> {
  try {
    return success(treeOf(text));
  } catch (fault) {
    if (fault instanceof XmlFault) return failure({ message: fault.message });
    return failure({ message: 'This file is not readable as XML.' });
  }
}

export const childrenOf = (node: XmlNode | undefined, name: string): readonly XmlNode[] =>
  node?.children.filter((child) => child.name === name) ?? [];

/** The first child of the name, or that child's child, and so on. */
export const childOf = (node: XmlNode | undefined, ...path: readonly string[]): XmlNode | undefined =>
  path.reduce<XmlNode | undefined>(
    (found, name) => found?.children.find((child) => child.name === name),
    node,
  );

/** The text of a child; null without one. */
export const textOf = (node: XmlNode | undefined, ...path: readonly string[]): string | null =>
  childOf(node, ...path)?.text ?? null;

/** A number in a child's text; null where there is none. */
export function numberOf(node: XmlNode | undefined, ...path: readonly string[]): number | null {
  const text = textOf(node, ...path);
  return text === null ? null : readNumber(text);
}

/** A plain decimal number of a reasonable size, or null. */
export function readNumber(text: string | undefined): number | null {
  if (text === undefined || !/^\s*[+-]?\d{1,12}(?:\.\d{0,12})?\s*$/.test(text)) return null;
  return Number(text);
}
