import type { MoveOf } from '../../shared/moves.js';
import { openPractice, settle } from './advance.js';
import { actorOf, add, groupAt, personAt, refuse, type Deciding } from './deciding.js';
import { leaderQuestion, leadsNow } from './duty.js';
import { passLead } from './leading.js';
import { isStaff } from './lookup.js';
import { drawLeader } from './lot.js';
import type { Group, Practice } from './state.js';

type LeaderMove = MoveOf<'name-leader' | 'skip-leader' | 'pair-leader' | 'quiet-pass' | 'take-lead'>;
type Led = Extract<Practice, { phase: 'open' | 'waiting' }>;

/** Moves about who leads, in the open segment or in the one that opens next. */
export function decideLeader(d: Deciding, move: LeaderMove): void {
  switch (move.type) {
    case 'name-leader':
      return nameLeader(d, move);
    case 'skip-leader':
      return skipLeader(d, move);
    case 'pair-leader':
      return pairLeader(d, move);
    case 'quiet-pass':
      return quietPass(d);
    case 'take-lead':
      return takeLead(d);
    default:
      return move satisfies never;
  }
}

function ledPractice(group: Group): Led {
  const { practice } = group;
  if (practice.phase === 'open' || (practice.phase === 'waiting' && practice.leg !== null)) return practice;
  return refuse(
    'wrong time',
    'Cannot change who leads, expected a part that is open or next',
    'Start the practice.',
  );
}

function stopOf(practice: Led): number {
  return practice.phase === 'open' ? practice.segment.stop : practice.nextStop;
}

/** The leader of the open segment, or the one drawn for the next. */
function leaderOf(practice: Led) {
  if (practice.phase === 'open') return practice.segment.leader;
  return practice.leg?.leaders[practice.leg.done] ?? null;
}

function nameLeader(d: Deciding, move: MoveOf<'name-leader'>): void {
  const group = groupAt(d, move.group);
  const practice = ledPractice(group);
  const person = personAt(d, move.person);
  if (person.group !== group.id && !isStaff(d.state, person.id)) {
    refuse(
      'bad input',
      'Cannot name this leader, expected somebody of the group or an adult',
      'Pick another person.',
    );
  }
  add(d, {
    ...{ type: 'leader-changed', group: group.id, stop: stopOf(practice) },
    ...{ leader: person.id, partner: null, from: leaderOf(practice), why: 'named' },
  });
  settle(d, group.id);
}

function skipLeader(d: Deciding, move: MoveOf<'skip-leader'>): void {
  const group = groupAt(d, move.group);
  const practice = ledPractice(group);
  if (practice.phase === 'open') return passLead(d, group.id, 'skipped', []);
  drawNext(d, group, practice, 'skipped');
}

/** Draws another leader for the segment that opens next. */
function drawNext(
  d: Deciding,
  group: Group,
  practice: Extract<Led, { phase: 'waiting' }>,
  why: 'skipped' | 'quiet pass',
): void {
  const now = leaderOf(practice);
  const others = group.lot.filter((person) => person !== now && d.state.people[person]?.away === false);
  const leader = drawLeader(others, group.led, group.lastLeader, d.chance);
  if (leader === null)
    refuse('wrong time', 'Cannot pass the lead on, expected another pupil, got none', 'Ask an adult.');
  add(d, {
    type: 'leader-changed',
    group: group.id,
    stop: practice.nextStop,
    leader,
    partner: null,
    from: now,
    why,
  });
}

function pairLeader(d: Deciding, move: MoveOf<'pair-leader'>): void {
  const group = groupAt(d, move.group);
  const practice = openPractice(d, group.id);
  const person = personAt(d, move.person);
  if (practice === null || practice.segment.leader === null || practice.segment.leader === person.id) {
    return refuse(
      'wrong time',
      'Cannot pair, expected an open part with another leader',
      'Name a leader first.',
    );
  }
  if (person.group !== group.id && !isStaff(d.state, person.id)) {
    refuse('bad input', 'Cannot pair, expected somebody of the group or an adult', 'Pick another person.');
  }
  const { stop, leader } = practice.segment;
  add(d, {
    type: 'leader-changed',
    group: group.id,
    stop,
    leader,
    partner: person.id,
    from: leader,
    why: 'paired',
  });
}

/** Each pupil may pass once a leg, and nobody is told why. */
function quietPass(d: Deciding): void {
  const person = actorOf(d);
  const group = person.group === null ? null : groupAt(d, person.group);
  if (group === null)
    return refuse('not found', 'Cannot pass, expected somebody of a group', 'Ask a grown-up.');
  const practice = ledPractice(group);
  if (leaderOf(practice) !== person.id) {
    refuse(
      'wrong time',
      'Cannot pass, expected the leader, got another',
      'You do not lead now. All is well.',
    );
  }
  if (practice.leg?.quietPassed.includes(person.id)) {
    refuse(
      'wrong time',
      'Cannot pass again, expected one pass until the session',
      'Ask a grown-up. They can help.',
    );
  }
  if (practice.phase === 'open') passLead(d, group.id, 'quiet pass', [person.id]);
  else drawNext(d, group, practice, 'quiet pass');
}

/** An adult may take the lead at any time, a pupil once it is offered or free. */
function takeLead(d: Deciding): void {
  const person = actorOf(d);
  const staff = isStaff(d.state, person.id);
  const groups = Object.values(d.state.groups);
  const only = groups.length === 1 ? groups[0] : undefined;
  const group = person.group === null ? (staff ? only : undefined) : d.state.groups[person.group];
  const practice = group ? openPractice(d, group.id) : null;
  if (!group || practice === null) {
    return refuse(
      'wrong time',
      'Cannot take the lead, expected a part that is open',
      'Wait for the next part.',
    );
  }
  if (leadsNow(practice, person.id)) return;
  const { offeredTo, leader, stop } = practice.segment;
  const free = leader === null || offeredTo?.includes(person.id) === true;
  if (!staff && (!free || leaderQuestion(d.state, group, practice) !== null)) {
    refuse(
      'wrong time',
      'Cannot take the lead, expected one that is free',
      'Somebody leads this part. Answer them.',
    );
  }
  add(d, {
    ...{ type: 'leader-changed', group: group.id, stop, leader: person.id, partner: null, from: leader },
    why: 'took the lead',
  });
}
