/** An invented class for tests of the room: nicknames of birds, a passage of our own. */
import type { Profile } from '../../shared/channel.js';
import { asId, type ClassId, type GroupId, type PersonId } from '../../shared/ids.js';
import type { Audience, Block, Field, Message } from '../../shared/messages.js';
import type { Role } from '../../shared/roles.js';
import type { Register } from '../../shared/strategies.js';

export const classId = asId<ClassId>('class-1');
export const groupId = asId<GroupId>('group-1');

function person(id: string, nickname: string, role: Role, register: Register = '8-10'): Profile {
  const group = role === 'pupil' ? groupId : null;
  return {
    classId,
    person: asId<PersonId>(id),
    nickname,
    role,
    register,
    group,
    className: 'Tuesday readers',
  };
}

/** Everybody of the class by the code of their slip. */
export const slips: Readonly<Record<string, Profile>> = {
  'WREN-2345-67': person('wren', 'Wren', 'pupil'),
  'FNCH-2345-67': person('finch', 'Finch', 'pupil'),
  'PLOVER-LINK': person('plover', 'Plover', 'tutor'),
  'GANNET-LINK': person('gannet', 'Gannet', 'teacher'),
  'HERON-LINK': person('heron', 'Heron', 'administrator'),
  'TERN-LINK': person('tern', 'Tern', 'safeguarding lead'),
  'KNOT-LINK': person('knot', 'Knot', 'safeguarding deputy'),
};

export const part =
  'When the tide goes out, the limpets on the rocks stop moving. Each one clamps its shell down on its own spot. ' +
  'The spot is called a home scar. The limpet has ground it into the stone, so the shell fits like a lid. ' +
  'Inside, a little sea water stays behind and keeps the soft animal moist until the sea comes back.';

/** Offsets of the sentences of `part`. */
export function sentences(text: string): { start: number; end: number }[] {
  return [...text.matchAll(/[^.!?]+[.!?]+\s*/gu)].map((found) => ({
    start: found.index,
    end: found.index + found[0].trimEnd().length,
  }));
}

/** Offsets of all words of a text. */
export function words(text: string): { start: number; end: number }[] {
  return [...text.matchAll(/[\p{L}’']+/gu)].map((found) => ({
    start: found.index,
    end: found.index + found[0].length,
  }));
}

export function message(audience: Audience, summary: string, blocks: readonly Block[]): Message {
  return { audience, summary, blocks };
}

export function prose(text: string, strong?: true): Block {
  return { type: 'prose', prose: [strong ? { text, strong } : { text }] };
}

export const talkTo: Audience = { to: 'channel', group: groupId };
export const staffTo: Audience = { to: 'staff', group: null };

export function own({ person: id }: Pick<Profile, 'person'>): Audience {
  return { to: 'person', person: id };
}

const placeField: Field = {
  kind: 'sentence',
  name: 'place',
  label: 'Which sentence helps?',
  source: part,
  ranges: sentences(part),
  required: false,
};

/** The fields of each step's form. */
export const stepFields: Readonly<Record<string, readonly Field[]>> = {
  question: [
    {
      kind: 'text',
      name: 'text',
      label: 'Your question',
      hint: 'Ask something that a friend can answer.',
      required: true,
      max: 5000,
    },
  ],
  clarify: [
    {
      kind: 'word',
      name: 'place',
      label: 'Tap the word that is hard',
      source: part,
      ranges: words(part),
      required: true,
    },
    {
      kind: 'pick',
      name: 'fixUp',
      label: 'What did you try?',
      required: false,
      options: ['read it again', 'read on', 'look for a clue beside it'].map((value) => ({
        value,
        label: value,
      })),
    },
    { kind: 'text', name: 'text', label: 'What may it mean?', required: true, max: 5000 },
  ],
  answer: [{ kind: 'text', name: 'text', label: 'Your answer', required: true, max: 5000 }, placeField],
};
