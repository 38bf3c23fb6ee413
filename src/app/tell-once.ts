import type { Audience, Message } from '../../shared/messages.js';
import type { OutboxRow, Store } from '../store/store.js';
import type { OpenHouse } from './house.js';

const staff: Audience = { to: 'staff', group: null };

/** Tells staff what a channel says of a place that works, but not as it should; the same words of the same place once for good. */
export async function tellOnce(
  store: Pick<Store, 'getNote' | 'setNote'>,
  house: Pick<OpenHouse, 'tellBeside'>,
  { classId, place }: Pick<OutboxRow, 'classId' | 'place'>,
  words: string,
): Promise<void> {
  const key = `place/${place.channel}/${place.tenant}/${place.room}`;
  const note = `told ${classId}/${key}`;
  const before = JSON.parse((await store.getNote(note)) ?? '[]') as readonly string[];
  if (before.includes(words)) return;
  const message: Message = {
    audience: staff,
    summary: words,
    blocks: [{ type: 'prose', prose: [{ text: words }] }],
  };
  await store.setNote(note, JSON.stringify([...before, words]));
  await house.tellBeside(classId, { do: 'say', key, message });
}
