/** Branded ids: strings that can't be mistaken for one another; unique within one class, class ids within one school. */
declare const brand: unique symbol;
export type Id<Kind extends string> = string & { readonly [brand]: Kind };

export type ClassId = Id<'class'>;
export type GroupId = Id<'group'>;
export type PersonId = Id<'person'>;
export type PassageId = Id<'passage'>;
export type PracticeId = Id<'practice'>;
export type PostId = Id<'post'>;
export type AlarmId = Id<'alarm'>;

/** Takes a plain string for an id; only edges (readers, stores, tests) may do so. */
export function asId<I extends Id<string>>(text: string): I {
  return text as I;
}
