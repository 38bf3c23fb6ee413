import { randomBytes } from 'node:crypto';
import { Fault } from '../../shared/fault.js';
import { asId, type ClassId, type PersonId } from '../../shared/ids.js';
import type { Move } from '../../shared/moves.js';
import { wordsOf } from '../../shared/said.js';
import type { ClassState } from '../practice/state.js';
import type { OpenHouse } from './house.js';
import type { School } from './school.js';

/** Makes moves for somebody one after the other and gives the state that they led to; a refusal becomes a `Fault`. */
export async function mustMove(
  house: OpenHouse,
  classId: ClassId,
  by: PersonId | 'founder',
  moves: readonly Move[],
): Promise<ClassState> {
  for (const move of moves) {
    const reply = await house.act({ classId, by, at: house.now(), move });
    if (!reply.done) {
      throw new Fault(
        'bad input',
        `Cannot do ${move.type}: ${reply.messages.map(({ summary }) => summary).join(' ')}`,
        'Mend it and try again.',
      );
    }
  }
  return house.classes.load(classId);
}

/** A fresh class with its founder, who is its tutor. */
export async function foundClass(
  house: OpenHouse,
  one: { readonly name: string; readonly zone: string; readonly nickname: string },
): Promise<{ readonly classId: ClassId; readonly tutor: PersonId }> {
  const classId = asId<ClassId>(`c${randomBytes(5).toString('hex')}`);
  const state = await mustMove(house, classId, 'founder', [{ type: 'make-class', ...one }]);
  const tutor = personNamed(state, one.nickname);
  if (tutor === null) throw new Error('Cannot found a class, expected its founder in it, got nobody');
  return { classId, tutor };
}

/** Somebody of a class by nickname, whatever the case. */
export function personNamed(state: ClassState, nickname: string): PersonId | null {
  const wanted = nickname.trim().toLowerCase();
  const found = Object.values(state.people).find(
    (one) => !one.removed && wordsOf(one.nickname)?.toLowerCase() === wanted,
  );
  return found?.id ?? null;
}

/** Who may erase somebody else of a class: a tutor or administrator, null where there is none. */
export function whoErases(state: ClassState, person: PersonId): PersonId | null {
  const found = Object.values(state.people).find(
    ({ role, removed, id }) => !removed && (role === 'administrator' || role === 'tutor') && id !== person,
  );
  return found?.id ?? null;
}

/** The class of a school by id or name; with neither, the only one. Throws `Fault` that lists what there is. */
export async function classNamed(
  house: OpenHouse,
  ids: readonly ClassId[],
  wanted: string | undefined,
): Promise<ClassState> {
  const all = await Promise.all(ids.map((id) => house.classes.load(id)));
  const found =
    wanted === undefined
      ? all
      : all.filter(({ id, name }) => id === wanted || name.toLowerCase() === wanted.toLowerCase());
  const [only] = found;
  if (only && found.length === 1) return only;
  const names = all.map(({ id, name }) => `${name} (${id})`).join(', ') || 'none so far';
  throw new Fault(
    'usage',
    `Cannot tell which class, expected one of ${names}`,
    'Use --class with its name or id.',
  );
}

/** A class of the school and somebody in it, as a verb's options name them; `doing` is what the verb does, for the words of the `Fault` that it throws where either isn't there. */
export async function personOfClass(
  { house, store }: Pick<School, 'house' | 'store'>,
  named: { readonly class: string | undefined; readonly nickname: string },
  doing: string,
): Promise<{ readonly state: ClassState; readonly person: PersonId }> {
  const state = await classNamed(house, await store.classes(), named.class);
  const person = personNamed(state, named.nickname);
  if (person !== null) return { state, person };
  throw new Fault(
    'not found',
    `Cannot ${doing}, expected a nickname of “${state.name}”`,
    'Look at the roster.',
  );
}
