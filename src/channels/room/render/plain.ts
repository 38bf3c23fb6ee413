// Controls, direction overrides and characters without width let a text read as what it is not, or flood a line.
const unseen = /[\u0000-\u0008\u000b-\u001f\u007f\u00ad\u200b\u200e\u200f\u202a-\u202e\u2060-\u206f\ufeff]/gu;
const joiners = /([\u200c\u200d])[\u200c\u200d]+/gu;
const stacked = /(\p{M}{4})\p{M}+/gu;

/** A text as it may stand in a page: without what can't be seen, at most four marks on a letter. Markup is escaped when the page is written. */
export function plain(text: string): string {
  return text.toWellFormed().replace(unseen, '').replace(joiners, '$1').replace(stacked, '$1');
}
