import { createHash } from 'node:crypto';
import { existsSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { fileURLToPath } from 'node:url';
import type { KeyPicture } from './options.js';

interface Asset {
  readonly type: string;
  readonly body: Uint8Array<ArrayBuffer>;
}

/** Files that the room serves, each under a fixed path, with an address that changes with its content. */
export interface Assets {
  readonly get: (path: string) => Asset | undefined;
  /** The address to link, or null where the file isn't there (a script that was not built). */
  readonly href: (path: string) => string | null;
}

/** The browser's script, part by part; live is the first and takes the others. */
const scripts = ['live', 'busy', 'drafts', 'idle', 'news', 'reading', 'small', 'swap'];

/** The browser's script is compiled apart, so when this file runs from its source the built one is taken from dist. */
function scriptFile(name: string): string {
  const beside = fileURLToPath(new URL(`./browser/${name}.js`, import.meta.url));
  const built = beside.replace(/([\\/])src([\\/]channels[\\/])/u, '$1dist$1src$2');
  return existsSync(beside) ? beside : built;
}

/** Where a drawing of a second key is served. */
export function picturePath(name: string): string {
  return `/assets/picture-${name}.svg`;
}

/** Reads everything once, at start. */
export function loadAssets(pictures: readonly KeyPicture[] = []): Assets {
  const { resolve } = createRequire(import.meta.url);
  const face = '@expo-google-fonts/atkinson-hyperlegible';
  const files: readonly (readonly [path: string, file: string, type: string])[] = [
    ['/assets/room.css', resolve('#room/room.css'), 'text/css; charset=utf-8'],
    ['/assets/print.css', resolve('#room/print.css'), 'text/css; charset=utf-8'],
    ['/assets/icon.svg', resolve('#room/icon.svg'), 'image/svg+xml'],
    ['/assets/regular.ttf', resolve(`${face}/400Regular/AtkinsonHyperlegible_400Regular.ttf`), 'font/ttf'],
    ['/assets/bold.ttf', resolve(`${face}/700Bold/AtkinsonHyperlegible_700Bold.ttf`), 'font/ttf'],
    ...scripts.map(
      (name) => [`/assets/${name}.js`, scriptFile(name), 'text/javascript; charset=utf-8'] as const,
    ),
  ];
  const all = new Map<string, Asset & { readonly href: string }>();
  const add = (path: string, type: string, body: Uint8Array<ArrayBuffer>): void => {
    const mark = createHash('sha256').update(body).digest('base64url').slice(0, 12);
    all.set(path, { type, body, href: `${path}?v=${mark}` });
  };
  for (const [path, file, type] of files)
    if (existsSync(file)) add(path, type, new Uint8Array(readFileSync(file)));
  for (const { name, svg } of pictures)
    add(picturePath(name), 'image/svg+xml', new TextEncoder().encode(svg));
  return { get: (path) => all.get(path), href: (path) => all.get(path)?.href ?? null };
}
