import { eachMatch } from './each-match.js';
import { LinkifyIt } from 'linkify-it';
import type { Finding } from '../../shared/judgements.js';
import type { Folded } from './folding.js';

/** Endings of network names that a school meets; few, since with all of them "Mr.Fox" would be a link. "example" and "test" are reserved for trying things. */
const endings =
  'com org net edu gov info biz io co uk us ca au de fr es it pl nl be at ch ie in eu gg tv me app dev xyz site online link club shop store live page world school example test'.split(
    ' ',
  );

const finder = new LinkifyIt({ fuzzyLink: true, fuzzyEmail: true, fuzzyIP: true, tlds: endings });

const spelt =
  /(?<![\p{L}\p{N}])(?:hxxps?|https?|ftp)\s?:\s?\/{0,2}\S+|(?<![\p{L}\p{N}])www\s?(?:\.|dot)\s?\S+|(?<![\p{L}\p{N}])[\p{L}\p{N}-]{2,30}(?: (?:dot|punkt|punto|kropka|point) | ?[([{]\s?(?:dot|\.)\s?[)\]}] ?)(?:com|org|net|edu|info|io|co|uk|de|fr|gg|tv|example|test|app|me|xyz)(?![\p{L}\p{N}])(?: slash [\p{L}\p{N}-]+)*|[\p{L}\p{N}-]{2,30}\.(?:com|org|net|co\.uk|example|gg|tv|io)(?![\p{L}\p{N}])/gu;

/** Links, plain or spelt out; an e-mail address is a personal detail. */
export function linksIn(text: string, folded: Folded): readonly Finding[] {
  const found: Finding[] = (finder.match(text) ?? []).map((match) => ({
    kind: match.schema === 'mailto:' ? 'personal' : 'link',
    rule: match.schema === 'mailto:' ? 'e-mail address' : 'link',
    place: { in: 'text', start: match.index, end: match.lastIndex },
  }));
  for (const match of eachMatch(spelt, folded.text)) {
    const place = {
      in: 'text',
      start: folded.starts[match.index] ?? 0,
      end: folded.ends[match.index + match[0].length - 1] ?? 0,
    } as const;
    if (!found.some((one) => one.place.start < place.end && place.start < one.place.end)) {
      found.push({ kind: 'link', rule: 'link spelt out', place });
    }
  }
  return found;
}
