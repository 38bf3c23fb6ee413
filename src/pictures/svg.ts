const escapes: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** Escapes a text for SVG, as content or in an attribute; characters that XML can't hold become U+FFFD. */
export function svgText(text: string): string {
  return text
    .toWellFormed()
    .replace(/[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]/gu, '\ufffd')
    .replace(/[&<>"']/gu, (letter) => escapes[letter] ?? letter);
}

/** What a picture is called and what it says, for who can't see it. */
export interface PictureWords {
  readonly title: string;
  readonly description: string;
}

/** An SVG document of a size in its own units, read aloud by title and description. It has no style and no script, so that it stands under a strict content policy. */
export function svgDocument(
  { title, description }: PictureWords,
  width: number,
  height: number,
  content: string,
): string {
  const described = description === '' ? '' : `<desc>${svgText(description)}</desc>`;
  return (
    `<svg xmlns="http://www.w3.org/2000/svg" role="img" viewBox="0 0 ${width} ${height}">` +
    `<title>${svgText(title)}</title>${described}${content}</svg>`
  );
}
