import qrcode from 'qrcode-generator';
import { Fault } from '../../shared/fault.js';
import { svgDocument, type PictureWords } from './svg.js';

/** Light modules around a code (ISO/IEC 18004 asks for four; from memory). */
const quiet = 4;

/** Most bytes that a code with medium correction holds (ISO/IEC 18004, version 40-M; from memory). */
const mostBytes = 2331;

const usual: PictureWords = { title: 'A square code for a camera', description: '' };

/** The modules of a code, row by row, true for dark. */
function modulesOf(text: string): readonly (readonly boolean[])[] {
  const bytes = new TextEncoder().encode(text);
  if (bytes.length === 0 || bytes.length > mostBytes) {
    throw new Fault(
      'bad input',
      `Cannot draw a code, expected 1 to ${mostBytes} bytes of text, got ${bytes.length}`,
      'Use a shorter link.',
    );
  }
  const code = qrcode(0, 'M');
  // One letter for each byte, since the package takes the low byte of each letter.
  code.addData(String.fromCharCode(...bytes), 'Byte');
  code.make();
  const size = [...Array(code.getModuleCount()).keys()];
  return size.map((row) => size.map((column) => code.isDark(row, column)));
}

/** Dark runs of a row as rectangles of one path. */
function rowPath(row: readonly boolean[], y: number): string {
  let path = '';
  for (let x = 0; x < row.length; x += 1) {
    if (!row[x]) continue;
    const from = x;
    while (row[x + 1]) x += 1;
    path += `M${from + quiet} ${y + quiet}h${x + 1 - from}v1h-${x + 1 - from}z`;
  }
  return path;
}

/** A text, at most 2331 bytes of UTF-8, as a QR code: black on white, medium correction, one unit a module, with its quiet border. */
export function qrSvg(text: string, words: PictureWords = usual): string {
  const modules = modulesOf(text);
  const side = modules.length + 2 * quiet;
  return svgDocument(
    words,
    side,
    side,
    `<rect width="${side}" height="${side}" fill="#fff"/>` +
      `<path fill="#000" shape-rendering="crispEdges" d="${modules.map(rowPath).join('')}"/>`,
  );
}
