import { readFileSync } from 'node:fs';
import { validateXML } from 'xmllint-wasm';

const schemaFile = (name: string): string =>
  readFileSync(new URL(`../reference/musicxml-4.0/${name}`, import.meta.url), 'utf8');

/**
 * What the W3C's schema of MusicXML 4.0 has against the documents, a line each; nothing when all are valid.
 * (W3C Music Notation Community Group, MusicXML 4.0, Final Community Group Report, 2021; kept beside the tests.)
 */
export async function schemaFaults(
  documents: readonly string[],
  schema: 'musicxml.xsd' | 'container.xsd' = 'musicxml.xsd',
): Promise<readonly string[]> {
  const result = await validateXML({
    xml: documents.map((contents, index) => ({ fileName: `${index}.xml`, contents })),
    schema: [{ fileName: schema, contents: schemaFile(schema) }],
    preload: ['xlink.xsd', 'xml.xsd'].map((fileName) => ({ fileName, contents: schemaFile(fileName) })),
    initialMemoryPages: 1024,
    maxMemoryPages: 4096,
  });
  return result.valid ? [] : result.errors.map((fault) => fault.rawMessage);
}
