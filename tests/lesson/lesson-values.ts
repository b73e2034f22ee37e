import type * as z from 'zod/mini';

/** What of a schema's definition (Zod 4, `_zod.def`) the walk reads. */
interface Definition {
  readonly type: string;
  readonly shape?: Readonly<Record<string, z.ZodMiniType>>;
  readonly element?: z.ZodMiniType;
  readonly innerType?: z.ZodMiniType;
  readonly in?: z.ZodMiniType;
  readonly options?: readonly z.ZodMiniType[];
  readonly entries?: Readonly<Record<string, string>>;
  readonly values?: readonly unknown[];
}

/** Parts that a lesson holds in several places, so that what comes with them is one line. */
const SHORT: readonly (readonly [path: RegExp, name: string])[] = [
  // A version holds parts of a lesson, in its own words only where it says what differs.
  [/^versions\[\]\.(?=pieces\[\]|handout\.)/, ''],
  [/^versions\[\]\.own\./, ''],
  [/^versions\[\]\.lines\[\]\.own\./, 'pieces[].'],
  [/^versions\[\]\.lines\[\]\.added\[\]/, 'pieces[].bars[]'],
  [/^versions\[\]\.lines\[\]\.bars\[\]\.(?:written\.)?(?=dynamics\[\]|origin = )/, 'bar.'],
  [/^versions\[\]\.lines\[\]\.bars\[\]\.written\.(?:notes|over|was)\[\]/, 'note'],
  [/^pieces\[\]\.(?:bars|parked|takes\[\]\.bars)\[\]/, 'bar'],
  [/^(?:bar\.(?:notes|over)|pieces\[\]\.buildUp\.edits\[\]\.notes)\[\]/, 'note'],
  [/^pieces\[\]\.buildUp\.(?:leftOut\[\]|edits\[\]\.stage)(?= = )/, 'stage'],
  [/^pieces\[\]\.(?:techniques|aims\[\]\.(?:wanted|allowed|forbidden))\[\]/, 'technique'],
  [/^(?:handout\.blocks|pieces\[\]\.leftOut)\[\]/, 'handout block'],
  [/^pieces\[\]/, 'piece'],
];

const shortened = (path: string): string =>
  SHORT.reduce((name, [long, short]) => name.replace(long, short), path);

/**
 * Every field that a lesson may have and every value that is one of a list, one line each: `piece.feel = bossa`.
 * Limits of numbers and lengths are not among them.
 */
export const valuesOf = (schema: z.ZodMiniType): ReadonlySet<string> =>
  new Set(walk(schema, '').map(shortened));

function walk(schema: z.ZodMiniType, path: string): readonly string[] {
  const definition = schema._zod.def as Definition;
  const { shape, element, innerType, options, entries, values } = definition;
  switch (definition.type) {
    case 'object':
      return Object.entries(shape ?? {}).flatMap(([name, field]) => {
        const at = path === '' ? name : `${path}.${name}`;
        return [at, ...walk(field, at)];
      });
    case 'array':
      return element === undefined ? [] : walk(element, `${path}[]`);
    case 'union':
      return (options ?? []).flatMap((option) => walk(option, path));
    case 'pipe':
      return definition.in === undefined ? [] : walk(definition.in, path);
    case 'enum':
      return Object.values(entries ?? {}).map((value) => `${path} = ${value}`);
    case 'literal':
      return path === 'version' ? [] : (values ?? []).map((value) => `${path} = ${String(value)}`);
    default:
      return innerType === undefined ? [] : walk(innerType, path);
  }
}
