import type { Look } from '../../shared/looks.js';
import type { Block, Message } from '../../shared/messages.js';
import type { Group } from '../practice/state.js';
import { digestOf } from '../progress/digest.js';
import type { Digest } from '../progress/digest-shape.js';
import { answer, staff, type Asked } from './asked.js';
import { choice, choices, heading, list, look, prose, quotation, strongProse } from './blocks.js';
import { pupilBlocks } from './digest-pupil.js';
import { groupsAsked } from './groups-asked.js';

function nextBlocks({ next }: Digest): readonly Block[] {
  return [
    heading(staff('next title')),
    ...(next.length === 0 ? [prose(staff('next none'))] : []),
    ...next.flatMap(({ text, reason, post }, at) => [
      strongProse(`${at + 1}.`, text),
      prose(reason),
      ...choices(null, [choice(staff('look closer'), look('post', { post }))]),
    ]),
  ];
}

function groupBlocks(digest: Digest): readonly Block[] {
  const { passages, group, notLed, notAnswered, held, alarms } = digest;
  const lines = [
    ...passages.map(({ title, segments, closed }) => staff('passage read', { title, segments, closed })),
    ...group.words,
    ...(notLed.length === 0 ? [] : [staff('not led', { who: notLed.join(', ') })]),
    ...(notAnswered.length === 0 ? [] : [staff('not answered', { who: notAnswered.join(', ') })]),
    ...(held === 0 ? [] : [staff('held now', { many: held })]),
    ...(alarms === 0 ? [] : [staff('alarms so far', { many: alarms })]),
  ];
  return [heading(staff('group title')), ...list(lines)];
}

function wordBlocks({ words }: Digest): readonly Block[] {
  if (words.length === 0) return [];
  return [
    heading(staff('words title')),
    ...list(
      words.map(({ word, pupils, meaning }) =>
        staff(meaning === null ? 'word open' : 'word known', {
          word,
          who: pupils.join(', '),
          meaning: meaning ?? '',
        }),
      ),
    ),
    ...choices(null, [choice(staff('see words'), look('words'))]),
  ];
}

function predictionBlocks({ predictions }: Digest): readonly Block[] {
  if (predictions.length === 0) return [];
  return [
    heading(staff('predictions title')),
    ...predictions.flatMap(({ text, nickname, outcome, post }) => [
      quotation(text, nickname),
      ...choices(outcome === null ? null : staff('computed outcome', { outcome }), [
        choice(staff('look closer'), look('post', { post })),
      ]),
    ]),
  ];
}

function checkBlocks({ agreement, check }: Digest): readonly Block[] {
  const open = check.filter(({ done }) => !done).length;
  const { checked, same, words, kappa, low, high } = agreement;
  const two = (n: number | null): string => (n ?? 0).toFixed(2);
  const range = kappa === null ? '' : `, ${two(kappa)}, 95 %: ${two(low)} to ${two(high)}`;
  const line = checked === 0 ? staff('agreement none') : staff('agreement', { same, checked, words, range });
  return [
    heading(staff('agreement title')),
    prose(line),
    ...(open === 0
      ? []
      : choices(staff('check open', { many: open }), [choice(staff('see waiting'), look('waiting'))])),
  ];
}

async function oneGroup(asked: Asked, group: Group): Promise<Message> {
  const rows = await asked.port.store.evidence({ classId: asked.state.id });
  const digest = digestOf({ state: asked.state, group: group.id, rows, at: asked.at });
  const title = staff('digest title', { group: group.name, when: asked.port.when(asked.at) });
  return answer(asked, title, [
    heading(title),
    ...nextBlocks(digest),
    ...groupBlocks(digest),
    ...wordBlocks(digest),
    ...predictionBlocks(digest),
    ...digest.pupils.flatMap(pupilBlocks),
    ...checkBlocks(digest),
  ]);
}

/** What a tutor reads before the next session, one message a group; plain blocks, so that it prints as it stands. */
export function digest(
  asked: Asked,
  { group }: Extract<Look, { type: 'digest' }>,
): Promise<readonly Message[]> {
  return Promise.all(groupsAsked(asked, group).map((one) => oneGroup(asked, one)));
}
