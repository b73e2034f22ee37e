/** For every field of a record whether it matters for something: the compiler refuses a table that leaves one out. */
export type FieldTable<Fields> = { readonly [Name in keyof Required<Fields>]: boolean };

/** A table for the fields of a type: `fieldTable<Line>()({ name: false, bars: true })`. */
export const fieldTable =
  <Fields>() =>
  <const Table extends FieldTable<Fields>>(
    table: Table & { readonly [Extra in Exclude<keyof Table, keyof Fields>]: never },
  ): FieldTable<Fields> =>
    table;

/** The fields that matter, in the order of the table. */
export const fieldsThatMatter = <Fields>(table: FieldTable<Fields>): readonly (keyof Fields)[] =>
  // The keys of an object literal are those that its type names.
  (Object.keys(table) as (keyof Fields)[]).filter((name) => table[name]);

/** Whether two records are alike in the fields that matter: the same primitive or the same object. */
export const sameFields = <Fields>(table: FieldTable<Fields>, one: Fields, other: Fields): boolean =>
  fieldsThatMatter(table).every((name) => one[name] === other[name]);
