// Direction overrides and embeddings can make a text read as what it is not; isolation in the page does the rest.
const unseen = /[\u0000-\u0008\u000b-\u001f\u007f\u202a-\u202e\u2066-\u2069]/gu;

/** A text as it may stand in a page: without direction overrides and control characters. Markup is escaped when the page is written. */
export function plain(text: string): string {
  return text.toWellFormed().replace(unseen, '');
}
