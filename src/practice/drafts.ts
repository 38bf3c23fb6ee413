import type { GroupId, PersonId, PostId } from '../../shared/ids.js';
import type { MoveOf } from '../../shared/moves.js';
import { said } from '../../shared/said.js';
import type { Doing, Help, Strategy } from '../../shared/strategies.js';
import { openPractice, settle } from './advance.js';
import { actorOf, add, groupAt, mint, refuse, timeOf, type Deciding } from './deciding.js';
import { leadsNow } from './duty.js';
import { fadeHelp } from './fade-help.js';
import { hasRead } from './has-read.js';
import { dayOf } from './hours.js';
import { judgePost, judgedOf } from './judge-post.js';
import { groupsOf, isStaff } from './lookup.js';
import { isDoubtful } from './moderation.js';
import type { Screened } from './screen.js';
import { isLeadersQuestion, isOnOpen, sendPost, wouldTakeLead } from './send-post.js';
import type { Person, Post } from './state.js';
import { heldTimes } from './times.js';
import { spotFor, type Spot } from './where-to.js';
import { wakeUp } from './wake-up.js';

/** Drafts of one pupil in five minutes after which the tool asks for a break. */
const mostDrafts = 40;
const shortWhile = 5 * 60_000;
/** Feedback comes in two rounds; the third draft can only be sent. */
const mostRounds = 3;

/** Takes a first draft: judged and answered privately, or held where an adult has to look first. */
export function sendDraft(d: Deciding, move: MoveOf<'send-draft'>, screened: Screened): void {
  const person = actorOf(d);
  const id = groupFor(d, person, move);
  throttle(d, person.id);
  wakeUp(d, id);
  refuseInPause(d, id);
  const spot = spotFor(d, groupAt(d, id), person, move);
  seeOnSegment(d, person);
  const draft = {
    ...spot,
    to: spot.to?.id ?? null,
    person: person.id,
    do: move.do,
    text: said(person.id, move.text),
    word: move.word === undefined ? null : said(person.id, move.word),
    offset: move.offset ?? null,
    place: move.place ?? null,
    fixUp: move.fixUp ?? null,
    findings: screened.findings,
    given: d.act.given,
    help: helpWith(person, move.do),
    led: leads(d, person.id, spot, move.do),
    day: dayOf(timeOf(d), d.act.at),
    round: 1,
  };
  if (!isStaff(d.state, person.id) && isDoubtful(d.state.settings, screened.hold, screened.findings)) {
    const post = mint<PostId>(d, 'p');
    const times = heldTimes(timeOf(d), d.act.at, isLeadersQuestion(d, draft));
    add(d, { type: 'draft-held', ...draft, post, times });
    settle(d, id);
    return;
  }
  const judgement = isScored(d, person, spot, move.do)
    ? judgePost(d, { ...draft, text: move.text, word: move.word ?? null, to: spot.to })
    : null;
  add(d, {
    type: 'draft-judged',
    ...draft,
    post: mint<PostId>(d, 'p'),
    judgement,
    postsItselfAt: idle(d, person),
  });
  fadeHelp(d, person.id, move.do);
}

/** The group that somebody writes in; an adult's is where the post replied to stands, else the one that they lead. */
function groupFor(d: Deciding, person: Person, move: MoveOf<'send-draft'>): GroupId {
  const to = move.question ?? move.to;
  const there = to === undefined ? undefined : d.state.posts[to]?.group;
  const groups = groupsOf(d.state);
  const led = groups.find(({ practice }) => practice.phase === 'open' && leadsNow(practice, person.id));
  const only = groups.length === 1 ? groups[0] : undefined;
  return (
    person.group ??
    (isStaff(d.state, person.id) ? (there ?? led?.id ?? only?.id) : undefined) ??
    refuse('not found', 'Cannot take that, expected somebody of a group, got nobody’s', 'Ask a grown-up.')
  );
}

function throttle(d: Deciding, person: PersonId): void {
  const group = d.state.people[person]?.group;
  const practice = group ? d.state.groups[group]?.practice : undefined;
  if (!group || !practice || practice.phase === 'none') return;
  const ids = d.state.postsOf[`${group}/${practice.passage}`] ?? [];
  const since = d.act.at - shortWhile;
  const lately = ids.filter(
    (id) => d.state.posts[id]?.person === person && (d.state.posts[id]?.at ?? 0) > since,
  );
  if (lately.length < mostDrafts) return;
  refuse(
    'wrong time',
    `Cannot take that now, expected at most ${mostDrafts} posts in five minutes, got more`,
    'Take a short break. Then go on.',
  );
}

/** Nothing is taken while staff have paused the practice. */
function refuseInPause(d: Deciding, id: GroupId): void {
  if (groupAt(d, id).practice.phase !== 'paused') return;
  refuse(
    'wrong time',
    'Cannot take that now, expected a practice that runs, got a paused one',
    'The group has a break. Come back later.',
  );
}

/** Whoever writes was there. */
function seeOnSegment(d: Deciding, person: Person): void {
  const practice = person.group ? openPractice(d, person.group) : null;
  if (person.role !== 'pupil' || practice === null || practice.segment.seen.includes(person.id)) return;
  add(d, { type: 'person-seen', person: person.id, group: person.group, stop: practice.segment.stop });
}

/** The help that a pupil has with a strategy; answering belongs to questioning. */
function helpWith(person: Person, doing: Doing): Help {
  const strategy: Strategy = doing === 'answer' ? 'question' : doing === 'add' ? 'sum-up' : doing;
  return person.help[strategy];
}

function leads(d: Deciding, person: PersonId, spot: Spot, doing: Doing): boolean {
  const practice = openPractice(d, spot.group);
  if (practice === null || !isOnOpen(d, spot)) return false;
  return leadsNow(practice, person) || (doing === 'question' && wouldTakeLead(d, person));
}

/** A prediction made after seeing what it is about isn't scored. */
function isScored(d: Deciding, person: Person, spot: Spot, doing: Doing): boolean {
  if (doing !== 'predict') return true;
  const practice = openPractice(d, spot.group);
  const aboutOpen =
    practice !== null && practice.passage === spot.passage && practice.segment.stop === spot.stop + 1;
  return !spot.late && !(aboutOpen && hasRead(d.state, groupAt(d, spot.group), person.id));
}

/** When a draft sends itself; an adult's doesn't. */
function idle(d: Deciding, person: Person): number | null {
  return isStaff(d.state, person.id) ? null : d.act.at + d.state.settings.idleMinutes * 60_000;
}

/** A post of one's own. */
export function ownPost(d: Deciding, id: PostId): Post {
  const post = d.state.posts[id];
  if (post && post.person === actorOf(d).id) return post;
  return refuse(
    'not found',
    'Cannot do that, expected a post of your own, got another',
    'Pick your own post.',
  );
}

/** Takes an improved draft, of one that isn't sent yet or was sent back. */
export function improveDraft(d: Deciding, move: MoveOf<'improve-draft'>, screened: Screened): void {
  const person = actorOf(d);
  const post = ownPost(d, move.post);
  if (post.stage.stage !== 'draft' && post.stage.stage !== 'sent back') {
    refuse(
      'wrong time',
      'Cannot change that, expected a draft, got a post that is sent',
      'It is sent. You can go on.',
    );
  }
  if (post.round >= mostRounds && post.stage.stage === 'draft') {
    refuse(
      'wrong time',
      `Cannot change that again, expected at most ${mostRounds} drafts`,
      'You can send it now.',
    );
  }
  wakeUp(d, post.group);
  refuseInPause(d, post.group);
  seeOnSegment(d, person);
  const draft = {
    ...{
      post: post.id,
      person: person.id,
      group: post.group,
      passage: post.passage,
      stop: post.stop,
      do: post.do,
    },
    ...{ text: said(person.id, move.text), word: post.word, offset: post.offset, to: post.to },
    ...{ place: move.place ?? post.place, fixUp: move.fixUp ?? post.fixUp, findings: screened.findings },
    ...{
      given: d.act.given,
      help: post.help,
      led: post.led,
      late: post.late,
      day: dayOf(timeOf(d), d.act.at),
    },
    round: post.round + 1,
  };
  if (!isStaff(d.state, person.id) && isDoubtful(d.state.settings, screened.hold, screened.findings)) {
    const times = heldTimes(timeOf(d), d.act.at, isLeadersQuestion(d, post));
    add(d, { type: 'draft-held', ...draft, times });
    settle(d, post.group);
    return;
  }
  const judged = judgedOf(d, post);
  const unscored =
    post.do === 'predict' && post.first === null && post.round > 0 && post.stage.stage === 'draft';
  const judgement =
    judged === null || unscored
      ? null
      : judgePost(d, { ...judged, text: move.text, place: draft.place, fixUp: draft.fixUp });
  add(d, { type: 'draft-judged', ...draft, judgement, postsItselfAt: idle(d, person) });
}

/** Sends one's own draft on. */
export function postDraft(d: Deciding, move: MoveOf<'post-draft'>): void {
  const post = ownPost(d, move.post);
  if (post.stage.stage !== 'draft') {
    refuse(
      'wrong time',
      'Cannot send that, expected a draft, got a post that is sent',
      'It is sent. You can go on.',
    );
  }
  wakeUp(d, post.group);
  sendPost(d, post, isStaff(d.state, post.person) ? 'by staff' : 'by the pupil');
}

/** Leaves one's own draft unsent. */
export function leaveDraft(d: Deciding, move: MoveOf<'leave-draft'>): void {
  const post = ownPost(d, move.post);
  if (post.stage.stage !== 'draft' && post.stage.stage !== 'sent back') {
    refuse(
      'wrong time',
      'Cannot leave that, expected a draft, got a post that is sent',
      'You can take it back.',
    );
  }
  add(d, { type: 'draft-left', post: post.id });
}

/** Takes one's own post back, as long as nobody has replied. */
export function takeBack(d: Deciding, move: MoveOf<'take-back'>): void {
  const post = ownPost(d, move.post);
  const ids = d.state.postsOf[`${post.group}/${post.passage}`] ?? [];
  const replied = ids.some((id) => {
    const other = d.state.posts[id];
    return other?.to === post.id && (other.stage.stage === 'public' || other.stage.stage === 'held');
  });
  if (replied || post.response !== null) {
    refuse(
      'wrong time',
      'Cannot take that back, expected no reply, got one',
      'Somebody has replied. Ask a grown-up.',
    );
  }
  const { stage } = post.stage;
  if (stage !== 'public' && stage !== 'held' && stage !== 'draft') {
    refuse('wrong time', 'Cannot take that back, expected a post that is sent', 'It is not there any more.');
  }
  add(d, { type: 'post-taken-back', post: post.id });
}
