import { wordsOf } from '../../shared/said.js';
import type { EvidenceRow } from '../../shared/evidence.js';
import type { Reason } from '../../shared/judgements.js';
import { fill } from '../coaching/catalogue.js';
import { digestWords } from '../coaching/digest-words.js';
import { explain, type ReasonTexts } from '../coaching/explain.js';
import type { ClassState, Post } from '../practice/state.js';

/** The texts that the reasons of a post point into; a text that is gone is empty, so that nothing is quoted from it. */
export function textsOf(state: ClassState, post: Post): ReasonTexts {
  const segments = state.shelf[post.passage]?.reading.segments ?? [];
  const next = segments[post.stop + 1]?.text;
  const reply = Object.values(state.posts).find(({ to, do: doing }) => to === post.id && doing === 'answer');
  const answer = reply === undefined ? null : wordsOf(reply.text);
  return {
    segment: segments[post.stop]?.text ?? '',
    text: wordsOf(post.text) ?? '',
    ...(next === undefined ? {} : { next }),
    ...(answer === null ? {} : { answer }),
  };
}

/** Reasons of a judgement on a post, each in a tutor's words with its quotation. */
export function reasonsOf(state: ClassState, post: Post, reasons: readonly Reason[]): readonly string[] {
  const texts = textsOf(state, post);
  return [...new Set(reasons.map((reason) => explain(reason, texts)))];
}

/** Why a try was judged as it was, on one line: who settled it, then at most two reasons. */
export function whyOf(state: ClassState, row: EvidenceRow): string {
  const level = row.level ?? '';
  if (row.post === null) return fill(digestWords['noted live'], { level });
  if (row.settledBy === 'tutor') return fill(digestWords['settled by tutor'], { level });
  const post = state.posts[row.post];
  const reasons = post === undefined ? [] : reasonsOf(state, post, row.reasons).slice(0, 2);
  return reasons.length === 0
    ? fill(digestWords['judged alone'], { level })
    : fill(digestWords['judged because'], { level, reasons: reasons.join('; ') });
}
