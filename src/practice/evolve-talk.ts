import type { EventOf } from '../../shared/events.js';
import type { GroupId, PersonId } from '../../shared/ids.js';
import type { Instant } from '../../shared/time.js';
import { withItem, withPerson, withPost, withPractice, withSegment } from './changing.js';
import { pupilsOf, under } from './lookup.js';
import type { ClassState } from './state.js';

type TalkChange = EventOf<
  | 'where-said'
  | 'judged-again'
  | 'overruled'
  | 'meaning-confirmed'
  | 'response-given'
  | 'prediction-checked'
  | 'help-given'
  | 'word-reviewed'
  | 'live-noted'
  | 'person-seen'
  | 'person-away'
  | 'prediction-passed'
>;

/** The class after something said of a post, or about who was there. */
export function evolveTalk(state: ClassState, event: TalkChange): ClassState {
  switch (event.type) {
    case 'where-said':
      return withPost(state, event.post, (post) => ({ ...post, saidWhere: event.where }));
    case 'judged-again':
      return withPost(state, event.post, (post) => ({ ...post, second: event.judgement }));
    case 'overruled':
      return withPost(state, event.post, (post) => ({
        ...post,
        overruled: event.level === null ? null : { level: event.level, as: event.as },
      }));
    case 'meaning-confirmed':
      return confirmMeaning(state, event);
    case 'response-given':
      return withPost(state, event.post, (post) => ({ ...post, response: event.response }));
    case 'prediction-checked':
      return withPost(state, event.post, (post) => ({ ...post, outcome: event.outcome }));
    case 'help-given':
      return giveHelp(state, event);
    case 'word-reviewed':
      return withReview(state, event.person, event.word.toLowerCase(), event.nextAt, event.step);
    case 'live-noted':
      return state;
    case 'person-seen':
      return see(state, event);
    case 'person-away':
      return withPerson(state, event.person, (person) => ({ ...person, away: true }));
    case 'prediction-passed':
      return passPrediction(state, event);
    default:
      return event satisfies never;
  }
}

function withReview(
  state: ClassState,
  person: PersonId,
  word: string,
  nextAt: Instant,
  step: number,
): ClassState {
  return {
    ...state,
    reviews: { ...state.reviews, [person]: { ...state.reviews[person], [word]: nextAt } },
    reviewSteps: { ...state.reviewSteps, [person]: { ...state.reviewSteps[person], [word]: step } },
  };
}

/** A confirmed meaning enters the word review of the whole group; who has met the word before keeps the place in it. */
function confirmMeaning(state: ClassState, event: EventOf<'meaning-confirmed'>): ClassState {
  const post = state.posts[event.post];
  const word = event.word.toLowerCase();
  const kept = { ...state, meanings: { ...state.meanings, [word]: event.meaning } };
  if (!post) return kept;
  return pupilsOf(state, post.group)
    .filter(({ id }) => under(state.reviews[id], word) === undefined)
    .reduce((after, { id }) => withReview(after, id, word, event.reviewAt, 0), kept);
}

function groupOf(state: ClassState, person: PersonId): GroupId | null {
  return state.people[person]?.group ?? null;
}

function giveHelp(state: ClassState, event: EventOf<'help-given'>): ClassState {
  const group = groupOf(state, event.person);
  if (group === null) return state;
  return withSegment(state, group, (segment) =>
    segment.stop === event.stop
      ? { ...segment, helped: { ...segment.helped, [`${event.person}/${event.do}`]: event.step } }
      : segment,
  );
}

/** Whoever comes back belongs to the open segment again. */
function see(state: ClassState, event: EventOf<'person-seen'>): ClassState {
  const back = withPerson(state, event.person, (person) => ({
    ...person,
    lastSeen: event.at,
    away: false,
    missed: event.stop === null ? person.missed : 0,
  }));
  if (event.group === null || event.stop === null || state.people[event.person]?.role !== 'pupil')
    return back;
  return withSegment(back, event.group, (segment) =>
    segment.stop === event.stop
      ? {
          ...segment,
          seen: withItem(segment.seen, event.person),
          active: withItem(segment.active, event.person),
        }
      : segment,
  );
}

function passPrediction(state: ClassState, event: EventOf<'prediction-passed'>): ClassState {
  const group = groupOf(state, event.person);
  if (group === null) return state;
  return withPractice(state, group, (practice) => {
    if (practice.phase === 'waiting' && practice.nextStop === event.stop) {
      return { ...practice, passed: withItem(practice.passed, event.person) };
    }
    if (practice.phase !== 'open' || practice.segment.stop !== event.stop) return practice;
    const { segment } = practice;
    return { ...practice, segment: { ...segment, passed: withItem(segment.passed, event.person) } };
  });
}
