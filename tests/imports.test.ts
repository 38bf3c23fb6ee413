import { readFileSync, readdirSync } from 'node:fs';
import { builtinModules } from 'node:module';
import { dirname, join, relative, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';
import { describe, expect, it } from 'vitest';

const root = dirname(dirname(fileURLToPath(import.meta.url)));

/** A room's row: rooms that it may import, ports and types that it may name by `import type`, packages, and whether it is pure. */
interface Row {
  readonly rooms: readonly string[];
  readonly types?: readonly string[];
  /** Packages, each with the one file that wraps it; `*` is any file of the room. */
  readonly packages?: Readonly<Record<string, string>>;
  readonly pure: boolean;
}

const anything = '*';

const rows: Readonly<Record<string, Row>> = {
  shared: { rooms: [], pure: true },
  commands: { rooms: ['shared'], pure: true },
  'src/text': {
    rooms: ['shared'],
    types: ['src/lexicon/lexicon.ts'],
    packages: {
      'parse-english': 'sentences.ts',
      nlcst: 'sentences.ts',
      'natural/lib/natural/stemmers/porter_stemmer.js': 'stem.ts',
      'natural/lib/natural/phonetics/double_metaphone.js': 'sounds.ts',
      'keyword-extractor': 'stop-words.ts',
      'fastest-levenshtein': 'edits.ts',
    },
    pure: true,
  },
  'src/safety': {
    rooms: ['shared'],
    types: ['src/lexicon/lexicon.ts'],
    packages: { obscenity: anything, 'libphonenumber-js': anything, 'linkify-it': anything },
    pure: true,
  },
  'src/judging': { rooms: ['shared', 'src/text'], types: ['src/lexicon/lexicon.ts'], pure: true },
  'src/coaching': { rooms: ['shared'], pure: true },
  'src/progress': { rooms: ['shared', 'src/coaching'], types: ['src/practice/state.ts'], pure: true },
  'src/practice': {
    rooms: ['shared', 'src/coaching', 'src/progress'],
    types: ['src/judging', 'src/safety'],
    pure: true,
  },
  'src/lexicon': {
    rooms: ['shared', 'src/text'],
    packages: {
      syllable: anything,
      'cmu-pronouncing-dictionary': 'make-syllables.ts',
      'dale-chall': 'read-lexicon.ts',
      spache: 'read-lexicon.ts',
    },
    pure: false,
  },
  'src/store': {
    rooms: ['shared'],
    packages: { kysely: anything, 'better-sqlite3': anything, pg: anything },
    pure: false,
  },
  'src/pictures': {
    rooms: ['shared'],
    packages: { '@resvg/resvg-js': anything, 'qrcode-generator': anything },
    pure: false,
  },
  'src/looks': {
    rooms: [
      'shared',
      'src/text',
      'src/judging',
      'src/coaching',
      'src/safety',
      'src/practice',
      'src/progress',
    ],
    types: ['src/store/store.ts'],
    pure: false,
  },
  'src/channels/room': {
    rooms: ['shared'],
    packages: { hono: anything, '@hono/node-server': anything, 'qrcode-generator': anything },
    pure: false,
  },
  'src/channels/discord': {
    rooms: ['shared'],
    packages: { 'discord.js': anything, undici: anything },
    pure: false,
  },
  'src/channels/slack': {
    rooms: ['shared'],
    packages: { '@slack/bolt': anything, '@slack/web-api': anything },
    pure: false,
  },
};

/** What would make a pure room answer differently from one run to the next. */
const impure = [
  { name: 'Date.now', pattern: /\bDate\s*\.\s*now\b/ },
  { name: 'new Date()', pattern: /\bnew\s+Date\s*\(\s*\)/ },
  { name: 'Math.random', pattern: /\bMath\s*\.\s*random\b/ },
  { name: 'process', pattern: /(?<![.\w'"`-])process\s*\.\s*\w/ },
  { name: 'Intl', pattern: /\bIntl\s*\./ },
  { name: 'toLocale', pattern: /\.toLocale(?:String|DateString|TimeString)\s*\(/ },
  { name: 'crypto', pattern: /(?<![.\w])crypto\s*\./ },
  { name: 'performance', pattern: /(?<![.\w])performance\s*\./ },
] as const;

interface Import {
  readonly from: string;
  readonly specifier: string;
  /** File in the project that it resolves to, or null for a package. */
  readonly to: string | null;
  readonly typeOnly: boolean;
}

const config = ts.parseJsonConfigFileContent(
  ts.readConfigFile(join(root, 'tsconfig.json'), (path) => ts.sys.readFile(path)).config,
  ts.sys,
  root,
);

const cache = ts.createModuleResolutionCache(root, (name) => name, config.options);

function filesUnder(folder: string): readonly string[] {
  return readdirSync(join(root, folder), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && /\.tsx?$/.test(entry.name) && !entry.name.endsWith('.d.ts'))
    .map((entry) => relative(root, join(entry.parentPath, entry.name)).split(sep).join('/'))
    .filter((file) => !file.startsWith('src/channels/room/browser/'));
}

function importsOf(file: string, source: string): readonly Import[] {
  const tree = ts.createSourceFile(file, source, ts.ScriptTarget.Latest, true);
  const found: Import[] = [];
  const add = (specifier: string, typeOnly: boolean): void => {
    const { resolvedModule } = ts.resolveModuleName(
      specifier,
      join(root, file),
      config.options,
      ts.sys,
      cache,
    );
    const path =
      resolvedModule && !resolvedModule.isExternalLibraryImport ? resolvedModule.resolvedFileName : null;
    found.push({
      from: file,
      specifier,
      typeOnly,
      to: path ? relative(root, path).split(sep).join('/') : null,
    });
  };
  const visit = (node: ts.Node): void => {
    if (ts.isImportDeclaration(node) && ts.isStringLiteral(node.moduleSpecifier)) {
      const bindings = node.importClause?.namedBindings;
      const each =
        bindings !== undefined &&
        ts.isNamedImports(bindings) &&
        bindings.elements.length > 0 &&
        node.importClause?.name === undefined &&
        bindings.elements.every(({ isTypeOnly }) => isTypeOnly);
      add(node.moduleSpecifier.text, node.importClause?.phaseModifier === ts.SyntaxKind.TypeKeyword || each);
    } else if (
      ts.isExportDeclaration(node) &&
      node.moduleSpecifier &&
      ts.isStringLiteral(node.moduleSpecifier)
    ) {
      add(node.moduleSpecifier.text, node.isTypeOnly);
    } else if (ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword) {
      const [specifier] = node.arguments;
      if (specifier && ts.isStringLiteral(specifier)) add(specifier.text, false);
    } else if (ts.isImportTypeNode(node) && ts.isLiteralTypeNode(node.argument)) {
      if (ts.isStringLiteral(node.argument.literal)) add(node.argument.literal.text, true);
    }
    ts.forEachChild(node, visit);
  };
  visit(tree);
  return found;
}

function roomOf(file: string): string | null {
  const names = Object.keys(rows).filter((name) => file.startsWith(`${name}/`));
  return names.sort((a, b) => b.length - a.length)[0] ?? null;
}

const builtin = new Set(builtinModules);

function packageFault(row: Row, room: string, { from, specifier, typeOnly }: Import): string | null {
  if (specifier.startsWith('node:') || builtin.has(specifier)) {
    return row.pure ? `${from} is in a pure room and imports ${specifier}` : null;
  }
  const name = Object.keys(row.packages ?? {}).find(
    (one) => specifier === one || specifier.startsWith(`${one}/`),
  );
  const wrapper = name === undefined ? undefined : row.packages?.[name];
  if (wrapper === undefined)
    return typeOnly ? null : `${from} imports ${specifier}, which is not in the row of ${room}`;
  return wrapper === anything || from === `${room}/${wrapper}`
    ? null
    : `${from} imports ${specifier}, which only ${wrapper} may`;
}

/** Why an import is forbidden, or null. */
function faultOf(each: Import): string | null {
  const room = roomOf(each.from);
  const row = room === null ? undefined : rows[room];
  if (room === null || row === undefined) return null;
  if (each.to === null) return packageFault(row, room, each);
  const inside = each.to.startsWith(`${room}/`);
  const asset = !/\.tsx?$/.test(each.to);
  const allowed = row.rooms.some((name) => each.to?.startsWith(`${name}/`));
  const byType =
    each.typeOnly && (row.types ?? []).some((name) => each.to === name || each.to?.startsWith(`${name}/`));
  return inside || allowed || byType || (asset && inside) ? null : `${each.from} imports ${each.to}`;
}

/** Source without comments and texts, which may speak of anything. */
function codeOf(source: string): string {
  return source
    .replace(/\/\*[\s\S]*?\*\//g, '')
    .replace(/(?<!:)\/\/.*$/gm, '')
    .replace(/'(?:[^'\\\n]|\\.)*'|"(?:[^"\\\n]|\\.)*"/g, "''");
}

function impuritiesOf(file: string, source: string): readonly string[] {
  const room = roomOf(file);
  if (room === null || rows[room]?.pure !== true) return [];
  const code = codeOf(source);
  return impure.filter(({ pattern }) => pattern.test(code)).map(({ name }) => `${file} uses ${name}`);
}

const files = ['shared', 'commands', 'src'].flatMap(filesUnder);

describe('each room imports only what its row names', () => {
  it('finds the rooms', () => {
    expect(files.length).toBeGreaterThan(50);
    expect(files).toContain('src/text/analyse.ts');
  });

  it('holds for every file', () => {
    const faults = files.flatMap((file) =>
      importsOf(file, readFileSync(join(root, file), 'utf8'))
        .map(faultOf)
        .filter((fault) => fault !== null),
    );
    expect(faults).toEqual([]);
  });

  it('pure rooms use no clock, chance, environment or zone data', () => {
    expect(files.flatMap((file) => impuritiesOf(file, readFileSync(join(root, file), 'utf8')))).toEqual([]);
  });

  it.each([
    ['shared/ids.ts', "import { analyse } from '../src/text/analyse.js';"],
    ['src/text/cut.ts', "import { readFileSync } from 'node:fs';"],
    ['src/text/cut.ts', "import { readLexicon } from '../lexicon/read-lexicon.js';"],
    ['src/text/cut.ts', "import { distance } from 'fastest-levenshtein';"],
    ['src/judging/judge.ts', "import { z } from 'zod';"],
    ['src/judging/judge.ts', "export * from '../coaching/catalogue.js';"],
    ['src/coaching/catalogue.ts', "const text = await import('../text/analyse.js');"],
    ['src/channels/room/page.ts', "import { decide } from '../../practice/state.js';"],
  ])('would catch in %s: %s', (file, source) => {
    expect(importsOf(file, source).map(faultOf)).toEqual([expect.any(String)]);
  });

  it('lets a type of a port through, but not its value', () => {
    const [type] = importsOf('src/text/cut.ts', "import type { Lexicon } from '../lexicon/lexicon.js';");
    const [value] = importsOf('src/text/cut.ts', "import { Lexicon } from '../lexicon/lexicon.js';");
    expect(type && faultOf(type)).toBeNull();
    expect(value && faultOf(value)).toEqual(expect.any(String));
  });

  it.each(['Date.now()', 'new Date()', 'Math.random()', 'process.env', 'Intl.NumberFormat()'])(
    'would catch %s in a pure room',
    (code) => {
      expect(impuritiesOf('src/text/cut.ts', `const x = ${code};`)).toHaveLength(1);
      expect(impuritiesOf('src/text/cut.ts', `// ${code}\nconst x = '${code}';`)).toEqual([]);
      expect(impuritiesOf('src/lexicon/read-lexicon.ts', `const x = ${code};`)).toEqual([]);
    },
  );
});
