import { readFileSync, readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';

/** Every file below a folder. */
export function filesBelow(folder: string): string[] {
  return readdirSync(folder).flatMap((name) => {
    const path = join(folder, name);
    return statSync(path).isDirectory() ? filesBelow(path) : [path];
  });
}

/** Every form in which a text could lie in a file: UTF-8, UTF-16 and as JSON escapes it, once and twice, with and without \u. */
export function formsOf(text: string): Buffer[] {
  const once = JSON.stringify(text).slice(1, -1);
  const twice = JSON.stringify(once).slice(1, -1);
  const ascii = [...once]
    .map((letter) =>
      letter > '~'
        ? [...Array(letter.length).keys()]
            .map((at) => `\\u${letter.charCodeAt(at).toString(16).padStart(4, '0')}`)
            .join('')
        : letter,
    )
    .join('');
  const forms = [text, once, twice, ascii].map((form) => Buffer.from(form, 'utf8'));
  return [...forms, Buffer.from(text, 'utf16le')];
}

/** The files below a folder that hold a text in any of its forms. */
export function filesHolding(folder: string, text: string): string[] {
  const forms = formsOf(text);
  return filesBelow(folder).filter((path) => {
    const bytes = readFileSync(path);
    return forms.some((form) => bytes.includes(form));
  });
}
