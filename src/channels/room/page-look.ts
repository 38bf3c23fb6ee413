/** How a page looks to one reader, kept in a cookie of the device: nothing about the person. */
export const pageLooks = {
  size: ['normal', 'large', 'largest'],
  spacing: ['normal', 'wide'],
  ground: ['sand', 'foam', 'night'],
} as const;

export type PageLook = { readonly [K in keyof typeof pageLooks]: (typeof pageLooks)[K][number] };
type PageLookName = keyof PageLook;

const names = Object.keys(pageLooks) as PageLookName[];

/** Reads "normal.wide.sand"; whatever isn't among the choices becomes the first of them. */
export function readPageLook(raw: string | undefined): PageLook {
  const parts = (raw ?? '').split('.');
  return pageLookOf(Object.fromEntries(names.map((name, at) => [name, parts[at]])));
}

/** The choices of a form, checked. */
export function pageLookOf(fields: Readonly<Record<string, string | undefined>>): PageLook {
  const pick = <K extends PageLookName>(name: K): PageLook[K] => {
    const choices: readonly string[] = pageLooks[name];
    return (choices.find((choice) => choice === fields[name]) ?? choices[0]) as PageLook[K];
  };
  return { size: pick('size'), spacing: pick('spacing'), ground: pick('ground') };
}

/** The cookie's value. */
export function writePageLook(look: PageLook): string {
  return names.map((name) => look[name]).join('.');
}

/** Classes of the page's root. */
export function classesOf(look: PageLook): string {
  return names.map((name) => `${name}-${look[name]}`).join(' ');
}
