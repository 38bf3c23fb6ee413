import type { Prose } from '../../../../shared/messages.js';
import { plain } from './plain.js';

/** A language tag's letters (RFC 5646), or nothing where it is none. */
function tag(lang: string | undefined): { readonly lang?: string } {
  return lang !== undefined && /^[a-zA-Z]{2,8}(?:-[a-zA-Z0-9]{1,8})*$/.test(lang) ? { lang } : {};
}

/** Spans of prose; each text is kept apart from its surroundings in direction. */
export function Spans({ prose }: { readonly prose: Prose }) {
  return (
    <>
      {prose.map(({ text, strong, lang }) => {
        const words = plain(text);
        return strong ? <strong {...tag(lang)}>{words}</strong> : <bdi {...tag(lang)}>{words}</bdi>;
      })}
    </>
  );
}
