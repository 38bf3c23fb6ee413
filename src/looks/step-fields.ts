import type { Field } from '../../shared/messages.js';
import { fixUps, type Doing } from '../../shared/strategies.js';
import type { SegmentReading } from '../../shared/text.js';
import { say, type Asked, type LooksKey } from './asked.js';
import { pick, sameOptions, typed } from './blocks.js';

/** Children's posts are short; more is let through, and the judges speak of length. */
const longest = 1000;

/** What a step's form is filled with already: a stem that was tapped, or the old text of a draft. */
export interface Filled {
  readonly text?: string;
}

function textField(asked: Asked, doing: Doing, filled: Filled): Field {
  return typed('text', 'text', say(asked, `label ${doing}`), {
    max: longest,
    hint: say(asked, `hint ${doing}`),
    ...(filled.text === undefined ? {} : { value: filled.text }),
  });
}

/** A sentence of the segment, tapped as what shows it. */
export function sentenceField(
  asked: Asked,
  segment: SegmentReading,
  label: LooksKey,
  required = false,
): Field {
  return {
    kind: 'sentence',
    name: 'place',
    label: say(asked, label),
    source: segment.text,
    ranges: segment.sentences,
    required,
  };
}

/** Every word of a text, so that each can be tapped. */
export function wordRanges(text: string): readonly { readonly start: number; readonly end: number }[] {
  return [...text.matchAll(/\p{L}[\p{L}\p{M}]*(?:[’'-]\p{L}+)*/gu)].map(({ index, 0: word }) => ({
    start: index,
    end: index + word.length,
  }));
}

/** The fields of a step; `segment` is null on the card before the first one. */
export function stepFields(
  asked: Asked,
  doing: Doing,
  segment: SegmentReading | null,
  filled: Filled,
): readonly Field[] {
  const text = textField(asked, doing, filled);
  if (segment === null) return [text];
  switch (doing) {
    case 'predict':
      return [text, sentenceField(asked, segment, 'tap clue')];
    case 'question':
    case 'add':
      return [text];
    case 'answer':
      return [text, sentenceField(asked, segment, 'tap shows')];
    case 'sum-up':
      return [text, sentenceField(asked, segment, 'tap most')];
    case 'clarify':
      return [
        {
          kind: 'word',
          name: 'place',
          label: say(asked, 'tap word'),
          source: segment.text,
          ranges: wordRanges(segment.text),
          required: false,
        },
        typed('line', 'word', say(asked, 'write word'), { required: false, max: 60 }),
        pick('fixUp', say(asked, 'pick fix-up'), sameOptions(fixUps), false),
        text,
      ];
    default:
      return doing satisfies never;
  }
}
