import { fill } from '../coaching/catalogue.js';
import { practiceWords } from '../coaching/practice-words.js';
import type { GroupId, PersonId } from '../../shared/ids.js';
import type { Action, Audience, Block, Choice, Message } from '../../shared/messages.js';
import { wordsOf } from '../../shared/said.js';
import type { Register } from '../../shared/strategies.js';
import type { MessageKey, Telling } from '../../shared/tellings.js';
import type { LocalTime } from '../../shared/time.js';
import { registerOf } from './lookup.js';
import type { ClassState, Post } from './state.js';

/** A key of the practice's catalogue. */
export type Wording = keyof typeof practiceWords;
/** Says a sentence of the catalogue. */
export type Speak = (key: Wording, slots?: Readonly<Record<string, string | number>>) => string;

/** Speaks in one register. */
export function speaker(register: Register): Speak {
  return (key, slots = {}) => fill(practiceWords[key], slots, register);
}

/** Speaks to the group, or to one person of it. */
export function speakTo(state: ClassState, person: PersonId | null = null): Speak {
  return speaker(registerOf(state, person));
}

export const toStaff = (group: GroupId | null): Audience => ({ to: 'staff', group });
export const toChannel = (group: GroupId): Audience => ({ to: 'channel', group });
export const toPerson = (person: PersonId): Audience => ({ to: 'person', person });

/** A number to call that no line break cuts in two. */
export function unbroken(number: string): string {
  return number.replaceAll(' ', '\u00a0');
}

/** A nickname, or a word in its place where it is gone. */
export function nameOf(state: ClassState, person: PersonId | null): string {
  const who = person === null ? undefined : state.people[person];
  return (who ? wordsOf(who.nickname) : null) ?? speaker(state.settings.register)('somebody');
}

const dayNames = ['Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday', 'Sunday'] as const;

/** "Tuesday at 14:00". */
export function whenOf(speak: Speak, { weekday, minute }: LocalTime): string {
  const day = dayNames[weekday - 1] ?? dayNames[0];
  return speak('when', { day, time: `${Math.floor(minute / 60)}:${String(minute % 60).padStart(2, '0')}` });
}

/** The words of a post, or a sentence in their place where they are gone. */
export function quoteOf(state: ClassState, post: Post): Block {
  const text = post.text.kind === 'seed' ? post.text.text : wordsOf(post.text);
  const by = post.person === null ? null : nameOf(state, post.person);
  return { type: 'quotation', text: text ?? speaker(state.settings.register)('words gone'), by };
}

export const prose = (text: string): Block => ({ type: 'prose', prose: [{ text }] });
export const heading = (text: string): Block => ({ type: 'heading', text });

/** A list of choices, left out where there are none. */
export function choices(...items: readonly (Choice | null)[]): readonly Block[] {
  const there = items.filter((item) => item !== null);
  return there.length === 0 ? [] : [{ type: 'choices', prompt: null, choices: there }];
}

/** A choice that makes a move or takes a look; `main` for the one next thing. */
export function choice(label: string, action: Action, main = false): Choice {
  return main ? { label, action, main: true } : { label, action };
}

export function move(name: string, args: Readonly<Record<string, string>> = {}): Action {
  return { kind: 'move', name, args };
}

export function look(name: string, args: Readonly<Record<string, string>> = {}): Action {
  return { kind: 'look', name, args };
}

/** A message; without a summary of its own its first heading or prose serves. */
export function message(audience: Audience, blocks: readonly Block[], summary?: string): Message {
  const lines = blocks.flatMap((block) => {
    if (block.type === 'heading') return [block.text];
    return block.type === 'prose' ? [block.prose.map(({ text }) => text).join('')] : [];
  });
  return { audience, summary: summary ?? lines.slice(0, 2).join(' '), blocks };
}

export function say(
  key: MessageKey,
  audience: Audience,
  blocks: readonly Block[],
  summary?: string,
): Telling {
  return { do: 'say', key, message: message(audience, blocks, summary) };
}

export function replace(
  key: MessageKey,
  audience: Audience,
  blocks: readonly Block[],
  summary?: string,
): Telling {
  return { do: 'replace', key, message: message(audience, blocks, summary) };
}

export function withdraw(key: MessageKey, audience: Audience): Telling {
  return { do: 'withdraw', key, audience };
}
