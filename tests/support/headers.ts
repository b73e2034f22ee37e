/** Reads the example of a web server's headers: its tables of headers by address, and its content types. */
import { readFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';

const EXAMPLE = fileURLToPath(new URL('../../build/headers.example.conf', import.meta.url));

export interface ExampleHeaders {
  /** Headers of a file, by its address from the root of the host, with its query. */
  of(address: string): Readonly<Record<string, string>>;
}

const unquoted = (text: string): string => text.replace(/^"(.*)"$/, '$1');

/** The blocks `keyword name { … }` of the file; no block of these kinds holds another. */
const blocksOf = (text: string, head: RegExp): readonly { readonly name: string; readonly body: string }[] =>
  [...text.matchAll(new RegExp(`${head.source}\\s*\\{(?<body>[^}]*)\\}`, 'g'))].map(({ groups }) => ({
    name: groups?.name ?? '',
    body: groups?.body ?? '',
  }));

/** A line's words; what stands in quotes is one. */
const wordsOf = (body: string): readonly (readonly string[])[] =>
  body
    .split('\n')
    .map((line) =>
      (
        line
          .replace(/#.*/, '')
          .replace(/;\s*$/, '')
          .match(/"[^"]*"|\S+/g) ?? []
      ).map(unquoted),
    )
    .filter((words) => words.length > 0);

export async function readExampleHeaders(): Promise<ExampleHeaders> {
  const text = await readFile(EXAMPLE, 'utf8');
  const maps = blocksOf(text, /map \$(?<name>\w+ \$\w+)/).map(({ name, body }) => {
    const [source = '', target = ''] = name.split(' $');
    return { source, target, rows: wordsOf(body) };
  });
  const types = new Map(
    blocksOf(text, /(?<name>types)/).flatMap(({ body }) =>
      wordsOf(body).flatMap(([type = '', ...endings]) => endings.map((ending) => [ending, type] as const)),
    ),
  );
  const added = [...text.matchAll(/add_header (\S+) (".*?"|\S+) always;/g)].map(
    ([, name = '', value = '']) => [name, unquoted(value)] as const,
  );
  /** The first pattern that holds, else the default (the documentation of the map directive). */
  const look = ({ rows }: (typeof maps)[number], value: string): string =>
    (rows.find(([key = '']) => key.startsWith('~') && new RegExp(key.slice(1)).test(value)) ??
      rows.find(([key]) => key === 'default'))?.[1] ?? '';
  return {
    of: (address) => {
      const path = address.replace(/\?.*/, '');
      const values = new Map(
        maps.map((each) => [each.target, look(each, each.source === 'uri' ? path : address)] as const),
      );
      const ending = /\.(\w+)$/.exec(path.endsWith('/') ? `${path}index.html` : path)?.[1] ?? '';
      return {
        'Content-Type': types.get(ending) ?? 'application/octet-stream',
        ...Object.fromEntries(
          added.map(([name, value]) => [
            name,
            value.startsWith('$') ? (values.get(value.slice(1)) ?? '') : value,
          ]),
        ),
      };
    },
  };
}
