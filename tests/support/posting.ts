import type { ClassId, PersonId } from '../../shared/ids.js';
import type { Move } from '../../shared/moves.js';
import type { OpenHouse } from '../../src/app/house.js';

/** Makes a move of somebody; throws with its words where it is refused. */
export async function mustAct(house: OpenHouse, classId: ClassId, by: PersonId, move: Move): Promise<void> {
  const reply = await house.act({ classId, by, at: house.now(), move });
  if (!reply.done) throw new Error(`Cannot ${move.type}: ${reply.why ?? ''}`);
}

/** A question of a pupil, sent and posted at once, as from the room. */
export async function ask(house: OpenHouse, classId: ClassId, by: PersonId, text: string): Promise<void> {
  const before = new Set(Object.keys((await house.classes.load(classId)).posts));
  await mustAct(house, classId, by, { type: 'send-draft', do: 'question', text });
  const { posts } = await house.classes.load(classId);
  const draft = Object.values(posts).find(({ id }) => !before.has(id));
  if (!draft) throw new Error('Cannot ask, expected a draft, got none');
  await mustAct(house, classId, by, { type: 'post-draft', post: draft.id });
}

/** Which of some texts stand in a room, in the order in which they stand there, each as often as it does. */
export function order(standing: readonly string[], texts: readonly string[]): readonly string[] {
  return standing.flatMap((words) => texts.filter((text) => words.includes(text)));
}
