/**
 * Reads a small QR code back from its modules, without correcting errors: versions 1 to 3 with medium correction, one
 * block of data, byte mode. Layout, masks and format bits of ISO/IEC 18004, from memory.
 */
const masks: readonly ((row: number, column: number) => boolean)[] = [
  (r, c) => (r + c) % 2 === 0,
  (r) => r % 2 === 0,
  (_, c) => c % 3 === 0,
  (r, c) => (r + c) % 3 === 0,
  (r, c) => (Math.floor(r / 2) + Math.floor(c / 3)) % 2 === 0,
  (r, c) => ((r * c) % 2) + ((r * c) % 3) === 0,
  (r, c) => (((r * c) % 2) + ((r * c) % 3)) % 2 === 0,
  (r, c) => (((r + c) % 2) + ((r * c) % 3)) % 2 === 0,
];

/** The modules of an SVG of one path of rectangles, one unit high, without the border of four. */
export function modulesOfSvg(svg: string): boolean[][] {
  const side = Number(/viewBox="0 0 (\d+) \1"/u.exec(svg)?.[1]);
  const dark = Array.from({ length: side }, () => Array<boolean>(side).fill(false));
  for (const [, x, y, wide] of svg.matchAll(/M(\d+) (\d+)h(\d+)v1h-\d+z/gu)) {
    dark[Number(y)]?.fill(true, Number(x), Number(x) + Number(wide));
  }
  return dark.slice(4, -4).map((row) => row.slice(4, -4));
}

/** Whether a module belongs to the frame: finders with format bits, timing, and the one alignment square of versions 2 and 3. */
function isFrame(row: number, column: number, size: number): boolean {
  const finder =
    (row < 9 && column < 9) || (row < 9 && column >= size - 8) || (row >= size - 8 && column < 9);
  const middle = size - 7;
  const alignment = size > 21 && Math.abs(row - middle) <= 2 && Math.abs(column - middle) <= 2;
  return finder || alignment || row === 6 || column === 6;
}

function dataBits(dark: readonly (readonly boolean[])[]): number[] {
  const size = dark.length;
  // Format bits 5 to 3 from the top, unmasked with 101010000010010, name the mask.
  const format = [2, 3, 4].map((column) => Number(dark[8]?.[column])).join('');
  const mask = masks[Number.parseInt(format, 2) ^ 0b101] ?? masks[0];
  const bits: number[] = [];
  let upward = true;
  for (let right = size - 1; right > 0; right -= 2) {
    if (right === 6) right -= 1;
    for (let step = 0; step < size; step += 1) {
      const row = upward ? size - 1 - step : step;
      for (const column of [right, right - 1]) {
        if (isFrame(row, column, size)) continue;
        bits.push(Number(dark[row]?.[column] !== mask?.(row, column)));
      }
    }
    upward = !upward;
  }
  return bits;
}

/** The text of a small code. */
export function readCode(svg: string): string {
  const dark = modulesOfSvg(svg);
  const bits = dataBits(dark);
  const number = (from: number, long: number): number =>
    Number.parseInt(bits.slice(from, from + long).join(''), 2);
  if (number(0, 4) !== 4) throw new Error(`expected byte mode, got ${number(0, 4)}`);
  const bytes = Array.from({ length: number(4, 8) }, (_, at) => number(12 + at * 8, 8));
  return new TextDecoder('utf-8', { fatal: true }).decode(Uint8Array.from(bytes));
}
