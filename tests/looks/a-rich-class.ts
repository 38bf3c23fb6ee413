import type { EventOf } from '../../shared/events.js';
import { asId, type AlarmId } from '../../shared/ids.js';
import type { Block, Message } from '../../shared/messages.js';
import { readLook, type LookName } from '../../shared/looks.js';
import { said } from '../../shared/said.js';
import { slashCommands } from '../../commands/all.js';
import type { LookPort } from '../../src/looks/port.js';
import { lookAt } from '../../src/looks/look-at.js';
import type { ClassState } from '../../src/practice/state.js';
import {
  curlew,
  day,
  finch,
  group,
  held,
  heron,
  knot,
  monday,
  owl,
  plover,
  post,
  row,
  tern,
  tries,
  withPosts,
  wren,
} from '../progress/a-class.js';
import { harbour, lantern, passages } from '../progress/a-shelf.js';
import { questionJudged, sumUpJudged } from '../progress/judged.js';

export const now = monday + 2 * day + 3_600_000;
export const alarm = asId<AlarmId>('al-1');
export const people = {
  pupil: wren,
  tutor: tern,
  teacher: curlew,
  administrator: heron,
  'safeguarding lead': owl,
  'safeguarding deputy': knot,
};

const here = { stop: 2, at: now - 60_000 };
export const asked = post(plover, 'question', 'why do the crews say nothing', {
  ...here,
  led: true,
  first: questionJudged(2, 'inferential'),
});
export const seeded = post(wren, 'question', '', {
  ...here,
  person: null,
  seeded: 'text',
  text: { kind: 'seed', text: 'What do the crews hang up?' },
});
export const answered = post(finch, 'answer', 'they are tired', { ...here, to: asked.id });
export const sumUp = post(plover, 'sum-up', 'The day ends quietly.', {
  ...here,
  led: true,
  first: sumUpJudged(2),
});
export const draft = post(wren, 'sum-up', 'boats come home', {
  ...here,
  stage: { stage: 'draft', postsItselfAt: now + 1_800_000 },
  first: sumUpJudged(1),
  latest: sumUpJudged(1),
});
export const safe = post(wren, 'question', 'who sings at night', {
  ...here,
  stage: held('everything', now - 7200_000),
  first: questionJudged(1, 'literal'),
});
export const doubtful = post(finch, 'question', 'you are a stupid boat', {
  ...here,
  stage: held('doubtful', now - 7200_000),
  findings: [{ kind: 'hurtful', rule: 'rude word', place: { in: 'text', start: 10, end: 16 } }],
});
export const alarmed = post(finch, 'sum-up', 'words that nobody but owl may read', {
  ...here,
  stage: held('alarm', now - 7200_000),
  findings: [{ kind: 'alarm', rule: 'harm', place: { in: 'text', start: 0, end: 5 } }],
});
export const clarified = post(wren, 'clarify', 'maybe a rope', { stop: 0, word: said(wren, 'mooring') });
export const hiddenWord = post(finch, 'clarify', 'a guess', {
  stop: 1,
  word: said(finch, 'creeps'),
  stage: held('everything', now),
});
export const predicted = post(finch, 'predict', 'they will sail', { stop: 0, outcome: null });
export const sentBack = post(wren, 'question', 'what', {
  ...here,
  stage: { stage: 'sent back', note: said(tern, 'Ask about the nets.') },
});
export const gone = post(wren, 'question', '', {
  stop: 0,
  text: { kind: 'said', by: wren, gone: 'expired' },
});
const weak = tries(finch, 'sum-up', [0, 1, 1, 0, 1]);

const posts = [
  ...[asked, seeded, answered, sumUp, draft, safe, doubtful, alarmed, clarified, hiddenWord, predicted],
  ...[sentBack, gone],
  ...weak.posts,
];
const rows = [row(asked, 2), row(sumUp, 2), row(draft, 1), ...weak.rows];

/** Three pupils in the middle of a passage, with one of everything. */
export const state: ClassState = withPosts(posts, {
  alarms: {
    [alarm]: {
      id: alarm,
      person: finch,
      at: now - 7200_000,
      escalatesAt: now + 7200_000,
      acknowledgedBy: null,
      escalated: true,
    },
  },
});

/** What the record of looks at alarms holds after the looks of a test. */
export const looked: { ref: string; by: string; at: number }[] = [];

const raised: EventOf<'alarm-raised'> = {
  type: 'alarm-raised',
  at: now,
  by: finch,
  alarm,
  person: finch,
  group,
  words: { kind: 'sealed', by: finch, ref: 'c-1/3/0' },
  findings: [],
  from: 'post',
  escalatesAt: now,
  inOpenHours: true,
};

export const port: LookPort = {
  store: {
    events: () => Promise.resolve([raised]),
    evidence: () => Promise.resolve(rows),
    sealedWords: (ref, by, at) => {
      looked.push({ ref, by, at });
      return Promise.resolve('the exact words');
    },
    sealedLooks: (ref) => Promise.resolve(looked.filter((one) => one.ref === ref) as never),
    stuck: () => Promise.resolve([]),
    secondKey: (_, person) =>
      Promise.resolve(person === wren ? { kind: 'pictures', hash: 'x', misses: 10, missedAt: now } : null),
    slipsOf: (classId) =>
      Promise.resolve([{ classId, person: wren, madeAt: now, expiresAt: now + day, revoked: false }]),
  },
  judges: {
    read: () => passages[lantern]!.reading,
  },
  when: (at) => `on day ${Math.floor((at - monday) / day) + 1}`,
  commands: slashCommands,
};

/** Arguments for looks that need some. */
export const sampleArgs: Readonly<Partial<Record<LookName, Readonly<Record<string, string>>>>> = {
  step: { do: 'sum-up' },
  preview: { passage: harbour },
  'preview-text': { text: 'A text.' },
  'alarm-words': { alarm },
  post: { post: asked.id },
};

/** Takes a look in the rich class. */
export function seen(
  by: keyof typeof people | (typeof people)[keyof typeof people],
  name: LookName,
  args: Readonly<Record<string, string>> = sampleArgs[name] ?? {},
  in_: ClassState = state,
): Promise<readonly Message[]> {
  const person = by in people ? people[by as keyof typeof people] : (by as typeof wren);
  return lookAt(port, in_, person, readLook(name, args), now);
}

/** All words of messages but for what the text or a person said. */
export function ownWords(messages: readonly Message[]): readonly string[] {
  return messages.flatMap(({ summary, blocks }) => [summary, ...blocks.flatMap(wordsOfBlock)]);
}

function wordsOfBlock(block: Block): readonly string[] {
  switch (block.type) {
    case 'heading':
      return [block.text];
    case 'prose':
      return [block.prose.map(({ text }) => text).join('')];
    case 'quotation':
      return block.by === null ? [] : [block.by];
    case 'list':
      return block.items.map((item) => item.map(({ text }) => text).join(''));
    case 'measure':
      return [block.label, block.words];
    case 'picture':
      return [block.picture.alternative];
    case 'choices':
      return [...(block.prompt === null ? [] : [block.prompt]), ...block.choices.map(({ label }) => label)];
    case 'form':
      return [
        block.title,
        block.submit,
        ...block.fields.flatMap((field) => [
          field.label,
          ...('hint' in field && field.hint !== undefined ? [field.hint] : []),
          ...(field.kind === 'pick' ? field.options.map(({ label }) => label) : []),
        ]),
      ];
    default:
      return block satisfies never;
  }
}

/** Every text that messages show, quotations too. */
export function allWords(messages: readonly Message[]): string {
  return JSON.stringify(messages);
}
