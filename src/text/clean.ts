import { joinLines, isList, plainHeading } from './lines.js';

/** A block of a passage after cleaning; a list's items stand on lines of their own. */
export interface Block {
  readonly kind: 'heading' | 'prose' | 'list';
  readonly text: string;
}

/** A passage freed of marks: its title where it begins with a heading, and its blocks in order. */
export interface Cleaned {
  readonly title: string | null;
  readonly blocks: readonly Block[];
}

/** Marks of a markup page that carry no words, and what is left of them; each with an example and one that stays as it is. */
export const inlineMarks: readonly {
  readonly name: string;
  readonly pattern: RegExp;
  readonly leaves: string;
  readonly example: string;
  readonly not: string;
}[] = [
  { name: 'comment', pattern: /<!--[\s\S]*?-->/g, leaves: '', example: '<!-- note -->', not: '<3' },
  {
    name: 'picture',
    pattern: /!\[[^\]\n]*\]\([^)\n]*\)/g,
    leaves: '',
    example: '![a map](map.png)',
    not: 'Stop! [sic]',
  },
  { name: 'footnote', pattern: /\[\^[^\]\n]{1,20}\]:?/g, leaves: '', example: 'salt[^1]', not: 'salt [sea]' },
  {
    name: 'link',
    pattern: /\[([^\]\n]+)\]\([^)\n]*\)/g,
    leaves: '$1',
    example: '[tides](tides.html)',
    not: '[tides]',
  },
  {
    name: 'tag',
    pattern: /<\/?[a-zA-Z][^<>\n]{0,200}>/g,
    leaves: '',
    example: '<b>tide</b>',
    not: '3 < 4 and 5 > 2',
  },
  {
    name: 'strong',
    pattern: /(?<![\p{L}\p{N}*])\*\*(?=\S)([^*\n]+?)(?<=\S)\*\*/gu,
    leaves: '$1',
    example: '**tide**',
    not: '2 ** 3',
  },
  {
    name: 'strong line',
    pattern: /(?<![\p{L}\p{N}_])__(?=\S)([^_\n]+?)(?<=\S)__/gu,
    leaves: '$1',
    example: '__tide__',
    not: 'a__b',
  },
  {
    name: 'emphasis',
    pattern: /(?<![\p{L}\p{N}*])\*(?=\S)([^*\n]+?)(?<=\S)\*/gu,
    leaves: '$1',
    example: '*tide*',
    not: '2 * 3',
  },
  {
    name: 'emphasis line',
    pattern: /(?<![\p{L}\p{N}_])_(?=\S)([^_\n]+?)(?<=\S)_(?![\p{L}\p{N}])/gu,
    leaves: '$1',
    example: '_tide_',
    not: 'a_b',
  },
  { name: 'code', pattern: /`([^`\n]+)`/g, leaves: '$1', example: '`tide`', not: "it's" },
  { name: 'escape', pattern: /\\([*_#`[\]()>+.!-])/g, leaves: '$1', example: '\\*', not: 'a\\b' },
];

const entities: Readonly<Record<string, string>> = {
  amp: '&',
  lt: '<',
  gt: '>',
  quot: '"',
  apos: "'",
  nbsp: ' ',
  mdash: '—',
  ndash: '–',
  hellip: '…',
  rsquo: '’',
  lsquo: '‘',
  rdquo: '”',
  ldquo: '“',
};

/** One kind of line end and of space; invisible marks go. Curly quotes and dashes stay as written. */
export function plainCharacters(raw: string): string {
  return raw
    .toWellFormed()
    .replace(/\r\n?|\u2028/g, '\n')
    .replace(/[\f\v\u2029]/g, '\n\n')
    .replace(/[\u00ad\u200b-\u200f\u2060\ufeff\u202a-\u202e\u2066-\u2069]/g, '')
    .replace(/\t/g, '    ')
    .replace(/[\u00a0\u2000-\u200a\u202f\u3000]/g, ' ')
    .replace(/&(\w+);/g, (whole, name: string) =>
      Object.hasOwn(entities, name) ? (entities[name] ?? whole) : whole,
    )
    .normalize('NFC');
}

function withoutMarks(text: string): string {
  let plain = text;
  for (const { pattern, leaves } of inlineMarks) plain = plain.replace(pattern, leaves);
  return plain;
}

/** Front matter, fenced code and rules are no prose. */
function withoutFrames(text: string): string {
  return text
    .replace(/^---\n[\s\S]*?\n---(?=\n|$)/, '')
    .replace(/^ {0,3}(```+|~~~+)[^\n]*\n[\s\S]*?(?:\n {0,3}\1[^\n]*(?=\n|$)|$)/gm, '\n')
    .replace(/^ {0,3}(?:(?:\* *){3,}|(?:- *){3,}|(?:_ *){3,})$/gm, '');
}

function readBlock(lines: readonly string[]): readonly Block[] {
  const blocks: Block[] = [];
  let rest: string[] = [];
  const flush = () => {
    const kept = rest.filter((line) => line.trim() !== '');
    if (kept.length > 0) {
      blocks.push(
        isList(kept)
          ? { kind: 'list', text: joinLines(kept, true) }
          : { kind: 'prose', text: joinLines(kept, false) },
      );
    }
    rest = [];
  };
  for (const [n, line] of lines.entries()) {
    const hash = /^ {0,3}#{1,6}\s+(.*?)\s*#*\s*$/.exec(line);
    const under =
      /^ {0,3}(?:=+|-{2,})\s*$/.test(lines[n + 1] ?? '') && line.trim() !== '' && rest.length === 0;
    if (hash || under) {
      flush();
      blocks.push({ kind: 'heading', text: (hash ? (hash[1] ?? '') : line).trim() });
    } else if (!/^ {0,3}(?:=+|-{2,})\s*$/.test(line)) rest.push(line.replace(/^ {0,3}> ?/, ''));
  }
  flush();
  return blocks.filter(({ text }) => text !== '');
}

/** Frees a passage in plain text or Markdown of its marks. */
export function cleanText(raw: string): Cleaned {
  const plain = withoutMarks(withoutFrames(plainCharacters(raw)));
  const groups = splitGroups(plain.split('\n').map((line) => line.trimEnd()));
  const found = groups.flatMap(readBlock);
  const blocks = found.map((block, n) =>
    block.kind === 'prose' && plainHeading(block.text, found[n + 1]?.kind === 'prose')
      ? { kind: 'heading' as const, text: block.text }
      : block,
  );
  const first = blocks[0];
  if (first?.kind === 'heading' && blocks.length > 1) return { title: first.text, blocks: blocks.slice(1) };
  return { title: null, blocks };
}

/** Lines parted by blank ones; where a text has no blank line and every line is a long one, each is a paragraph. */
function splitGroups(lines: readonly string[]): readonly (readonly string[])[] {
  const full = lines.filter((line) => line !== '');
  const long = full.filter((line) => line.length > 100).length;
  const eachAlone = full.length > 1 && long / full.length > 0.5;
  const groups: string[][] = [[]];
  for (const line of lines) {
    const indented = /^ {2,}\S/.test(line) && !/^ *(?:[-*+•]|\d+[.)]) /.test(line);
    if (line === '' || indented || (eachAlone && (groups.at(-1)?.length ?? 0) > 0)) groups.push([]);
    if (line !== '') groups.at(-1)?.push(indented ? line.trimStart() : line);
  }
  return groups.filter((group) => group.length > 0);
}
