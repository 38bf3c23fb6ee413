import { svgDocument } from './svg.js';

/** A plain drawing of an everyday thing; its name is also what is read aloud. */
export interface DoorPicture {
  readonly name: string;
  readonly svg: string;
}

const edge = 'stroke="#21303a" stroke-width="3" stroke-linejoin="round" stroke-linecap="round"';

/** A closed shape with its colour, and open lines over it, in a square of 64. */
function drawn(name: string, colour: string, shape: string, lines = ''): DoorPicture {
  const filled = `<path d="${shape}" fill="${colour}" ${edge}/>`;
  const open = lines === '' ? '' : `<path d="${lines}" fill="none" ${edge}/>`;
  return { name, svg: svgDocument({ title: name, description: '' }, 64, 64, filled + open) };
}

/** Twelve drawings, all ours, from which a pupil chooses three in order; they differ in shape, not by colour alone. */
export const doorPictures: readonly DoorPicture[] = [
  drawn('leaf', '#8fbf8a', 'M12 52C10 26 26 10 54 10C54 38 38 54 12 52Z', 'M8 56L42 22M26 38V26M34 30V20'),
  drawn('boat', '#c98b5a', 'M8 42H56L48 56H16Z', 'M32 42V8L50 36H32M28 14L14 36H28Z'),
  drawn('key', '#e6c65c', 'M20 21A11 11 0 1 1 20 43A11 11 0 1 1 20 21Z', 'M31 32H58M48 32V42M57 32V40'),
  drawn('moon', '#e9e2b0', 'M42 8A25 25 0 1 0 56 44A21 21 0 1 1 42 8Z'),
  drawn('house', '#d9b48f', 'M14 30V56H50V30L32 12Z', 'M6 36L32 10L58 36M28 56V42H38V56'),
  drawn('fish', '#8db9cf', 'M6 32C16 14 36 14 46 32C36 50 16 50 6 32Z M46 32L58 21V43Z', 'M17 28V29'),
  drawn('tree', '#8fbf8a', 'M32 6A18 18 0 1 1 31.9 6Z', 'M28 42V58M36 42V58'),
  drawn('cup', '#cfd8dc', 'M12 16H44V42Q44 54 34 54H22Q12 54 12 42Z', 'M44 22Q57 22 57 32Q57 42 44 42'),
  drawn('umbrella', '#b79ac8', 'M6 32A26 24 0 0 1 58 32Z', 'M32 32V50Q32 57 38 57Q44 57 44 50'),
  drawn('bell', '#e6c65c', 'M14 46Q20 40 20 28Q20 12 32 12Q44 12 44 28Q44 40 50 46Z', 'M32 12V6M28 53H36'),
  drawn('kite', '#e09a8a', 'M32 4L50 24L32 46L14 24Z', 'M32 4V46M14 24H50M32 46Q40 52 32 60'),
  drawn('ladder', '#d9b48f', 'M18 6H24V58H18Z M40 6H46V58H40Z', 'M24 16H40M24 28H40M24 40H40M24 52H40'),
];

/** How many pictures make a key. */
export const picturesOfKey = 3;
