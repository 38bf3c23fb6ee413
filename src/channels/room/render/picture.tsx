import qrcode from 'qrcode-generator';
import type { Picture } from '../../../../shared/messages.js';
import { plain } from './plain.js';

/** One bar of a measure, 0..1 of its length, as a drawing; its words stand beside it. */
export function Bar({ part }: { readonly part: number }) {
  const width = Math.round(200 * Math.min(1, Math.max(0, part)));
  return (
    <svg class="bar" viewBox="0 0 200 12" preserveAspectRatio="none" aria-hidden="true" focusable="false">
      <rect class="bar-all" x="0" y="0" width="200" height="12" rx="3" />
      <rect class="bar-part" x="0" y="0" width={width} height="12" rx="3" />
    </svg>
  );
}

/** A text (a link) as a square code for a camera, ISO/IEC 18004, error correction M, with the quiet zone of 4 that it asks for. */
function Code({ text, alternative }: { readonly text: string; readonly alternative: string }) {
  const code = qrcode(0, 'M');
  code.addData(text);
  code.make();
  const size = code.getModuleCount();
  let path = '';
  for (let row = 0; row < size; row += 1)
    for (let column = 0; column < size; column += 1)
      if (code.isDark(row, column)) path += `M${column + 4} ${row + 4}h1v1h-1z`;
  return (
    <svg
      class="code"
      role="img"
      aria-label={plain(alternative)}
      viewBox={`0 0 ${size + 8} ${size + 8}`}
      shape-rendering="crispEdges"
    >
      <rect class="code-ground" x="0" y="0" width={size + 8} height={size + 8} />
      <path class="code-marks" d={path} />
    </svg>
  );
}

/** A picture from data: bars as a table that can be read aloud, or a code. */
export function PictureView({ picture }: { readonly picture: Picture }) {
  const { data } = picture;
  if (typeof data === 'string') return <Code text={data} alternative={picture.alternative} />;
  const most = Math.max(1, ...data.map(({ value, of }) => of ?? value));
  return (
    <table class="bars">
      <caption>{plain(picture.alternative)}</caption>
      <tbody>
        {data.map(({ label, value, of }) => (
          <tr>
            <th scope="row">
              <bdi>{plain(label)}</bdi>
            </th>
            <td class="bars-bar">
              <Bar part={value / (of ?? most)} />
            </td>
            <td>{of === undefined ? String(value) : `${value} / ${of}`}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
