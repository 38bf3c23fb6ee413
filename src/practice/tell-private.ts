import { helpFor, type HelpStep } from '../coaching/help.js';
import type { EventOf } from '../../shared/events.js';
import type { PersonId } from '../../shared/ids.js';
import type { Block } from '../../shared/messages.js';
import { wordsOf } from '../../shared/said.js';
import type { Telling } from '../../shared/tellings.js';
import { isStaff, registerOf, runningOf, segmentText, under } from './lookup.js';
import type { ClassState } from './state.js';
import { choice, choices, look, move, nameOf, prose, say, speakTo, toPerson, type Wording } from './told.js';

type PrivateEvent = EventOf<
  | 'prediction-passed'
  | 'pupil-nudged'
  | 'lead-offered'
  | 'where-said'
  | 'response-given'
  | 'prediction-checked'
  | 'help-given'
  | 'word-reviewed'
>;

/** What one pupil is told, in the tray that only they (and the tutor) read. */
export function tellPrivate(state: ClassState, event: PrivateEvent): readonly Telling[] {
  switch (event.type) {
    case 'prediction-passed':
      return [toOne(state, event.person, 'passed')];
    case 'pupil-nudged':
      return [toOne(state, event.person, 'one thing left')];
    case 'lead-offered':
      return event.to.map((person) => offer(state, person));
    case 'where-said': {
      const person = state.posts[event.post]?.person ?? null;
      return person === null ? [] : [toOne(state, person, 'where thanks')];
    }
    case 'response-given':
      return tellResponse(state, event);
    case 'prediction-checked': {
      const person = state.posts[event.post]?.person ?? null;
      return person === null ? [] : [toOne(state, person, event.outcome)];
    }
    case 'help-given':
      return tellHelp(state, event);
    case 'word-reviewed':
      return [reviewed(state, event)];
    default:
      return event satisfies never;
  }
}

function toOne(state: ClassState, person: PersonId, key: Wording, more: readonly Block[] = []): Telling {
  const speak = speakTo(state, person);
  return say(`for/${person}/${state.version}`, toPerson(person), [prose(speak(key)), ...more]);
}

function offer(state: ClassState, person: PersonId): Telling {
  const speak = speakTo(state, person);
  return toOne(
    state,
    person,
    'lead is free',
    choices(
      choice(speak('ask a question'), look('step', { do: 'question' }), true),
      choice(speak('take the lead'), move('take-lead')),
    ),
  );
}

/** The author of an answer hears what the asker says of it; a place to look again is quoted from the text. */
function tellResponse(state: ClassState, event: EventOf<'response-given'>): readonly Telling[] {
  const answer = state.posts[event.post];
  if (!answer || answer.person === null || isStaff(state, answer.person)) return [];
  const speak = speakTo(state, answer.person);
  const key = `response/${answer.id}/${state.version}`;
  const name = nameOf(state, event.by === 'clock' || event.by === 'founder' ? null : event.by);
  switch (event.response) {
    case 'helpful':
      return [say(key, toPerson(answer.person), [prose(speak('helpful'))])];
    case 'that is what I meant':
      return [say(key, toPerson(answer.person), [prose(speak('said that is it', { name }))])];
    case 'look again here': {
      const text = segmentText(state, answer.passage, answer.stop);
      const here = event.place === null ? '' : text.slice(event.place.start, event.place.end);
      const again = look('step', { do: 'answer', question: answer.to ?? '' });
      return [
        say(key, toPerson(answer.person), [
          prose(speak('said look again', { name })),
          ...(here === '' ? [] : [{ type: 'quotation', text: here, by: null, reading: true } as const]),
          ...choices(choice(speak('answer again'), again, true)),
        ]),
      ];
    }
    default:
      return event.response satisfies never;
  }
}

function helpStep(step: number): HelpStep {
  return step >= 4 ? 4 : step === 3 ? 3 : step === 2 ? 2 : 1;
}

function tellHelp(state: ClassState, event: EventOf<'help-given'>): readonly Telling[] {
  const group = state.people[event.person]?.group;
  const running = group && state.groups[group] ? runningOf(state.groups[group].practice) : null;
  if (running === null) return [];
  const speak = speakTo(state, event.person);
  const { words, choices: picks = [] } = helpFor(event.do, helpStep(event.step), {
    segment: segmentText(state, running.passage, event.stop),
    gist: state.shelf[running.passage]?.gists[event.stop] ?? null,
    register: registerOf(state, event.person),
  });
  return [
    say(`help/${event.person}/${state.version}`, toPerson(event.person), [
      prose(words),
      ...(picks.length === 0
        ? []
        : [prose(speak('pick one')), { type: 'list', items: picks.map((text) => [{ text }]) } as const]),
    ]),
  ];
}

function reviewed(state: ClassState, event: EventOf<'word-reviewed'>): Telling {
  const speak = speakTo(state, event.person);
  const meaning = under(state.meanings, event.word.toLowerCase());
  const words = meaning === undefined ? null : wordsOf(meaning);
  const told = event.known || words === null ? [] : [prose(speak('it means', { meaning: words }))];
  return toOne(state, event.person, event.known ? 'word known' : 'word again', told);
}
