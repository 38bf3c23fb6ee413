import type { PersonId } from '../../shared/ids.js';
import type { Doing } from '../../shared/strategies.js';
import type { Instant } from '../../shared/time.js';
import { isReply, leadsNow, type OpenPractice } from './duty.js';
import { goalOf, isShown, openFor, postsOfPassage, postsOn, runningOf, segmentsOf } from './lookup.js';
import type { ClassState, Group, Post } from './state.js';
import { answersTo } from './tell-talk.js';
import type { Step, Turn } from './turn.js';
import { answeredBy, hasAnswered, ownOf } from './turn-talk.js';

/** Steps of a pupil in order; the first is the one next thing. */
export function stepsOf(
  state: ClassState,
  group: Group,
  person: PersonId,
  at: Instant,
  phase: Turn['phase'],
): readonly Step[] {
  const { practice } = group;
  const drafts = draftSteps(state, group, person);
  switch (phase) {
    case 'paused':
      return [];
    case 'none':
      return [...drafts, ...leftOver(state, group, person), ...wordSteps(state, person, at)];
    case 'waiting':
      return [...drafts, ...leftOver(state, group, person), ...wordSteps(state, person, at)];
    case 'look first': {
      const stop = practice.phase === 'open' ? practice.segment.stop : 0;
      return [{ step: 'look first', stop }, ...drafts];
    }
    case 'open':
    case 'done':
      return practice.phase === 'open' ? openSteps(state, group, practice, person, at, drafts) : drafts;
    default:
      return phase satisfies never;
  }
}

function passageOf(group: Group) {
  return runningOf(group.practice)?.passage ?? group.finished.at(-1)?.passage ?? null;
}

function draftSteps(state: ClassState, group: Group, person: PersonId): readonly Step[] {
  return ownOf(state, group, passageOf(group), person)
    .filter(({ stage }) => stage.stage === 'draft' || stage.stage === 'sent back')
    .map(({ id }) => ({ step: 'finish draft', post: id }));
}

/** Who leads asks, later sums up and predicts; who doesn't answers the leader first, then does one thing of their own. */
function openSteps(
  state: ClassState,
  group: Group,
  practice: OpenPractice,
  person: PersonId,
  at: Instant,
  drafts: readonly Step[],
): readonly Step[] {
  const leads = leadsNow(practice, person);
  const mine = answeredBy(state, group, practice.passage, practice.segment.stop, person);
  const answers = answerSteps(state, group, practice, person);
  const own = ownSteps(state, practice, person, mine);
  const checks = checkSteps(state, group, practice, person);
  const replied = mine.some(isReply);
  const duties = leads
    ? leaderSteps(state, group, practice, person, at, mine)
    : replied
      ? [...own, ...answers]
      : [...answers.slice(0, 1), ...own, ...answers.slice(1)];
  const offered = practice.segment.offeredTo?.includes(person) === true && !practice.segment.spareAsked;
  const steps = [
    ...drafts,
    ...(offered && !leads ? [{ step: 'take the lead' } as const] : []),
    ...(leads ? duties : [...duties.slice(0, 1), ...checks]),
    ...(leads ? checks : duties.slice(1)),
    ...respondSteps(state, group, practice, person),
    ...whereSteps(mine),
    ...(leads ? answers : addSteps(state, group, practice, person, mine)),
    ...wordSteps(state, person, at),
  ];
  return steps;
}

function doStep(doing: Doing): Step {
  return { step: 'do', do: doing, to: null };
}

/** The leader's question, a hard word; after two answers or most of the time the sum-up and what may come. */
function leaderSteps(
  state: ClassState,
  group: Group,
  practice: OpenPractice,
  person: PersonId,
  at: Instant,
  mine: readonly Post[],
): readonly Step[] {
  const open = openFor(state, person);
  const has = (doing: Doing): boolean => mine.some((post) => post.do === doing);
  const asks = open.includes('question') && !has('question');
  const answered = postsOn(state, group.id, practice.passage, practice.segment.stop).filter(
    (post) => post.do === 'answer' && post.person !== person && isShown(post),
  );
  const wraps = answered.length >= 2 || at >= practice.segment.times.wrapAt;
  const sumUp = open.includes('sum-up') && !has('sum-up') ? [doStep('sum-up')] : [];
  const clarify = open.includes('clarify') && !has('clarify') ? [doStep('clarify')] : [];
  const predict =
    open.includes('predict') && !has('predict') && !isLast(state, practice) ? [doStep('predict')] : [];
  const ask = asks ? [doStep('question')] : [];
  return wraps ? [...ask, ...sumUp, ...predict, ...clarify] : [...ask, ...clarify, ...sumUp, ...predict];
}

function isLast(state: ClassState, { passage, segment }: OpenPractice): boolean {
  return segment.stop + 1 >= segmentsOf(state, passage);
}

/** Questions that one hasn't answered: the leader's first, then one that nobody has answered, then the others. */
function answerSteps(
  state: ClassState,
  group: Group,
  practice: OpenPractice,
  person: PersonId,
): readonly Step[] {
  const open = postsOn(state, group.id, practice.passage, practice.segment.stop).filter(
    (post) =>
      post.do === 'question' && isShown(post) && post.person !== person && !hasAnswered(state, post, person),
  );
  const rank = (post: Post): number => {
    if (leadsNow(practice, post.person)) return 0;
    if (practice.segment.leader === null && post.seeded !== null) return 0;
    return answersTo(state, post).length === 0 ? 1 : 2;
  };
  return open.toSorted((a, b) => rank(a) - rank(b)).map(({ id }) => ({ step: 'do', do: 'answer', to: id }));
}

/** One thing of one's own: the goal first, then the others in the class's order; a sum-up of one's own comes last. */
function ownSteps(
  state: ClassState,
  practice: OpenPractice,
  person: PersonId,
  mine: readonly Post[],
): readonly Step[] {
  const goal = goalOf(state, person);
  const free = openFor(state, person)
    .filter((doing) => !mine.some((post) => post.do === doing))
    .filter((doing) => doing !== 'predict' || !isLast(state, practice));
  const rank = (doing: Doing): number => (doing === goal ? 0 : doing === 'sum-up' ? 2 : 1);
  return free.toSorted((a, b) => rank(a) - rank(b)).map(doStep);
}

/** Own predictions about the open segment whose outcome isn't said yet. */
function checkSteps(
  state: ClassState,
  group: Group,
  practice: OpenPractice,
  person: PersonId,
): readonly Step[] {
  return answeredBy(state, group, practice.passage, practice.segment.stop - 1, person)
    .filter((post) => post.do === 'predict' && post.outcome === null && post.stage.stage !== 'draft')
    .filter((post) => post.first !== null || post.stage.stage === 'held')
    .map(({ id }) => ({ step: 'check prediction', post: id }));
}

/** Answers to one's own questions of which nothing is said yet. */
function respondSteps(
  state: ClassState,
  group: Group,
  practice: OpenPractice,
  person: PersonId,
): readonly Step[] {
  return postsOfPassage(state, group.id, practice.passage)
    .filter((post) => post.do === 'question' && post.person === person && isShown(post))
    .flatMap((question) => answersTo(state, question))
    .filter((answer) => answer.response === null && answer.person !== person)
    .map(({ id }) => ({ step: 'respond', post: id }));
}

function whereSteps(mine: readonly Post[]): readonly Step[] {
  return mine
    .filter(
      ({ first, second, saidWhere, stage }) =>
        first?.kind === 'question' &&
        first.value === 'unsure' &&
        second === null &&
        saidWhere === null &&
        stage.stage !== 'draft',
    )
    .map(({ id }) => ({ step: 'say where', post: id }));
}

/** The public sum-up, to which one thing can be added. */
function addSteps(
  state: ClassState,
  group: Group,
  practice: OpenPractice,
  person: PersonId,
  mine: readonly Post[],
): readonly Step[] {
  const sumUp = postsOn(state, group.id, practice.passage, practice.segment.stop).findLast(
    (post) => post.do === 'sum-up' && isShown(post) && post.person !== person,
  );
  const added = mine.some((post) => post.do === 'add');
  return sumUp && !added ? [{ step: 'do', do: 'add', to: sumUp.id }] : [];
}

/** Between segments: answers to say something of, and questions of the passage that one hasn't answered. */
function leftOver(state: ClassState, group: Group, person: PersonId): readonly Step[] {
  const passage = passageOf(group);
  if (passage === null) return [];
  const posts = postsOfPassage(state, group.id, passage);
  const questions = posts.filter((post) => post.do === 'question' && isShown(post));
  const answers: readonly Step[] = questions
    .filter((post) => post.person !== person && !hasAnswered(state, post, person))
    .toSorted((a, b) => answersTo(state, a).length - answersTo(state, b).length || b.stop - a.stop)
    .map(({ id }) => ({ step: 'do', do: 'answer', to: id }));
  const respond: readonly Step[] = questions
    .filter((post) => post.person === person)
    .flatMap((question) => answersTo(state, question))
    .filter((answer) => answer.response === null && answer.person !== person)
    .map(({ id }) => ({ step: 'respond', post: id }));
  return [...respond, ...answers];
}

/** Words that are due to come back. */
function wordSteps(state: ClassState, person: PersonId, at: Instant): readonly Step[] {
  return Object.entries(state.reviews[person] ?? {})
    .filter(([, next]) => next <= at)
    .map(([word]) => ({ step: 'review word', word }));
}
