import { describe, expect, it } from 'vitest';
import { barsSvg } from '../../src/pictures/bars-svg.js';
import { qrSvg } from '../../src/pictures/qr-svg.js';
import { svgText } from '../../src/pictures/svg.js';
import { modulesOfSvg, readCode } from './read-code.js';

describe('A square code', () => {
  it.each([
    ['a', 21],
    ['http://127.0.0.1/in', 25],
    ['Möwe 🦆 …', 21],
    ['http://turnstone.test:8080/in/abcd-efgh-jk', 29],
  ])('of %s reads back as it was, %i modules wide', (text, size) => {
    const svg = qrSvg(text);
    expect(readCode(svg)).toBe(text);
    expect(modulesOfSvg(svg)).toHaveLength(size);
  });

  it('stands on white with a border of four modules', () => {
    const svg = qrSvg('a');
    expect(svg).toContain('viewBox="0 0 29 29"');
    expect(svg).toContain('<rect width="29" height="29" fill="#fff"/>');
    expect(svg).toContain('M4 4h7v1');
  });

  it('holds long links and refuses what no code can hold', () => {
    expect(modulesOfSvg(qrSvg('x'.repeat(2331)))).toHaveLength(177);
    for (const text of ['', 'x'.repeat(2332), '🦆'.repeat(600)]) {
      expect(() => qrSvg(text)).toThrow(/expected 1 to 2331 bytes/u);
    }
  });

  it('is named for who can’t see it', () => {
    const svg = qrSvg('a', { title: 'Code of <Wren>', description: 'Opens "the room"' });
    expect(svg).toContain(
      'role="img" viewBox="0 0 29 29"><title>Code of &lt;Wren&gt;</title><desc>Opens &quot;the room&quot;</desc>',
    );
  });
});

describe('Bars', () => {
  const data = [
    { label: 'question', value: 3, of: 5 },
    { label: 'sum-up', value: 0, of: 4 },
    { label: 'words', value: 8 },
    { label: 'posts', value: 2 },
  ];
  const svg = barsSvg({ alternative: 'Tries & met', data });

  it('say in words what they show', () => {
    expect(svg).toContain(
      '<title>Tries &amp; met</title><desc>question: 3 of 5. sum-up: 0 of 4. words: 8. posts: 2</desc>',
    );
    for (const words of ['>question<', '>3 of 5<', '>0 of 4<', '>8<']) expect(svg).toContain(words);
  });

  it('are as long as their share of the whole, or beside the longest', () => {
    const long = [...svg.matchAll(/width="([\d.]+)" height="14" fill="currentColor"/gu)].map(([, n]) =>
      Number(n),
    );
    expect(long).toEqual([148.8, 0, 248, 62]);
  });

  it('have room for a long label, and none at all is a picture too', () => {
    expect(barsSvg({ alternative: 'a', data: [{ label: 'x'.repeat(60), value: 1, of: 1 }] })).toContain(
      'viewBox="0 0 540 44"',
    );
    expect(barsSvg({ alternative: 'none', data: [] })).toContain('<title>none</title></svg>');
    expect(barsSvg({ alternative: 'zero', data: [{ label: 'a', value: 0 }] })).toContain('width="0"');
  });

  it.each([[{ value: -1 }], [{ value: 6, of: 5 }], [{ value: Number.NaN }], [{ value: 1, of: Infinity }]])(
    'refuse %o',
    (bar) => {
      expect(() => barsSvg({ alternative: 'a', data: [{ label: 'a', ...bar }] })).toThrow(
        /Cannot draw a bar/u,
      );
    },
  );
});

describe('Both', () => {
  it('let nobody’s words be markup, nor hold what XML can’t', () => {
    expect(svgText(`<script>&"'\u0000\ud800`)).toBe('&lt;script&gt;&amp;&quot;&#39;\ufffd\ufffd');
    const label = '</text><script>';
    for (const svg of [barsSvg({ alternative: label, data: [{ label, value: 1 }] }), qrSvg(label)]) {
      expect(svg).not.toContain('<script');
      expect(svg).not.toContain('style=');
    }
  });
});
