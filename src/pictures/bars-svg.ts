import { Fault } from '../../shared/fault.js';
import { svgDocument, svgText } from './svg.js';

/** One bar: a value out of `of`, or beside the largest of the others where there is no `of`. */
export interface Bar {
  readonly label: string;
  readonly value: number;
  readonly of?: number;
}

/** Bars with what is read aloud in their place. */
export interface Bars {
  readonly alternative: string;
  readonly data: readonly Bar[];
}

// Units of the drawing; a letter of size 14 is reckoned at most 9 wide.
const row = 44;
const width = 320;
const letter = 9;
const figures = 72;

/** The figure beside a bar: "3 of 5", or "3". */
function figure({ value, of }: Bar): string {
  return of === undefined ? String(value) : `${value} of ${of}`;
}

function checked(bar: Bar): Bar {
  const { value, of } = bar;
  const fits =
    Number.isFinite(value) && value >= 0 && (of === undefined || (Number.isFinite(of) && value <= of));
  if (fits) return bar;
  throw new Fault(
    'bad input',
    `Cannot draw a bar, expected a value from 0 up to its whole, got ${figure(bar)}`,
    'Look at the figures.',
  );
}

function barSvg(bar: Bar, at: number, largest: number, room: number): string {
  const y = at * row;
  const whole = bar.of ?? largest;
  const long = whole === 0 ? 0 : Math.round((bar.value / whole) * room * 100) / 100;
  return (
    `<text x="0" y="${y + 15}" font-size="14" fill="currentColor">${svgText(bar.label)}</text>` +
    `<rect x="0.5" y="${y + 22.5}" width="${room}" height="14" fill="none" stroke="currentColor"/>` +
    `<rect x="0.5" y="${y + 22.5}" width="${long}" height="14" fill="currentColor"/>` +
    `<text x="${room + 8}" y="${y + 34}" font-size="14" fill="currentColor">${svgText(figure(bar))}</text>`
  );
}

/** Bars under each other, each with its label and its figure in words, in the colour of the text around them; wide enough for the longest label. */
export function barsSvg({ alternative, data }: Bars): string {
  const bars = data.map(checked);
  const longest = Math.max(0, ...bars.map(({ label }) => label.length * letter));
  const wide = Math.max(width, longest);
  const largest = Math.max(0, ...bars.filter(({ of }) => of === undefined).map(({ value }) => value));
  const room = wide - figures;
  const description = bars.map((bar) => `${bar.label}: ${figure(bar)}`).join('. ');
  const drawn = bars.map((bar, at) => barSvg(bar, at, largest, room)).join('');
  return svgDocument({ title: alternative, description }, wide, Math.max(1, bars.length * row), drawn);
}
