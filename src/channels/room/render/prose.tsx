import type { Prose } from '../../../../shared/messages.js';
import { plain } from './plain.js';

/** Spans of prose; each text is kept apart from its surroundings in direction. */
export function Spans({ prose }: { readonly prose: Prose }) {
  return (
    <>
      {prose.map(({ text, strong, lang }) => {
        const words = plain(text);
        if (strong) return <strong {...(lang === undefined ? {} : { lang })}>{words}</strong>;
        return lang === undefined ? <bdi>{words}</bdi> : <bdi lang={lang}>{words}</bdi>;
      })}
    </>
  );
}
