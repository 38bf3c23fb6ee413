import { Fault, type FaultCode } from '../../shared/fault.js';
import type { ClassEvent } from '../../shared/events.js';
import { mayMove, type Act } from '../../shared/moves.js';
import { decideClass } from './decide-class.js';
import { decidePeople } from './decide-people.js';
import { decideRunning } from './decide-running.js';
import { decideShelf } from './decide-shelf.js';
import { decideStaff } from './decide-staff.js';
import { decideTalk } from './decide-talk.js';
import { actorOf, deciding, refuse, type Deciding, type DecideTools } from './deciding.js';
import { due } from './due.js';
import { improveDraft, leaveDraft, postDraft, sendDraft, takeBack } from './drafts.js';
import { passTime } from './pass-time.js';
import { raiseAlarm, screenAct, type Screened } from './screen.js';
import type { ClassState } from './state.js';

export type { DecideTools } from './deciding.js';

/** What a class makes of a move: events (none where nothing changes), or a refusal that changes nothing. */
export type Decision =
  | { readonly events: readonly ClassEvent[] }
  | {
      readonly refusal: { readonly code: FaultCode; readonly message: string; readonly remedy: string };
    };

/** Decides a move: its texts are screened before any other rule, then who may, then phase, then hold, then judging. */
export function decide(state: ClassState, act: Act, tools: DecideTools): Decision {
  const d = deciding(state, act, tools);
  try {
    const screened = screenAct(state, act, tools.judges);
    if (screened.alarm) {
      raiseAlarm(d, actorOf(d).id, screened);
    } else {
      permit(d);
      doWhatIsDue(d);
      dispatch(d, screened);
    }
    return { events: d.events };
  } catch (problem) {
    if (!(problem instanceof Fault)) throw problem;
    const { code, message, remedy } = problem;
    return { refusal: { code, message, remedy } };
  }
}

/** What was due before the act is done first, as the clock's: who comes a minute after a close is late. */
function doWhatIsDue(d: Deciding): void {
  const next = due(d.state);
  if (next === null || next > d.act.at || d.act.by === 'clock') return;
  d.by = 'clock';
  passTime(d);
  d.by = d.act.by;
}

/** Who may: the clock lets time pass, a founder makes a class, and everybody else has a role in it. */
function permit(d: Deciding): void {
  const { by, move } = d.act;
  if (by === 'clock' || by === 'founder') {
    const own = by === 'clock' ? 'time-passed' : 'make-class';
    if (move.type !== own)
      refuse('not allowed', 'Cannot do that, expected somebody of the class', 'Sign in.');
    return;
  }
  const person = actorOf(d);
  if (!person.removed && mayMove[move.type].includes(person.role)) return;
  refuse(
    'not allowed',
    'Cannot do that, expected somebody who may, got another role',
    'Ask a grown-up of your class.',
  );
}

function dispatch(d: Deciding, screened: Screened): void {
  const { move } = d.act;
  switch (move.type) {
    case 'make-class':
    case 'change-setting':
    case 'open-strategy':
    case 'close-strategy':
    case 'make-group':
    case 'split-group':
      return decideClass(d, move);
    case 'add-person':
    case 'rename-person':
    case 'move-pupil':
    case 'remove-person':
    case 'erase-person':
    case 'reset-second-key':
    case 'set-goal':
    case 'set-help':
      return decidePeople(d, move);
    case 'add-passage':
    case 'withdraw-passage':
    case 'write-gist':
    case 'write-spare-question':
    case 'set-passage':
    case 'unset-passage':
      return decideShelf(d, move);
    case 'start-practice':
    case 'pause-practice':
    case 'resume-practice':
    case 'close-segment':
    case 'undo-close':
    case 'extend-segment':
    case 'read-live':
    case 'end-practice':
    case 'name-leader':
    case 'skip-leader':
    case 'pair-leader':
    case 'quiet-pass':
    case 'take-lead':
      return decideRunning(d, move);
    case 'note-live':
    case 'note-led':
    case 'release':
    case 'send-back':
    case 'remove':
    case 'overrule':
    case 'confirm-meaning':
    case 'acknowledge-alarm':
    case 'try-alarm':
      return decideStaff(d, move);
    case 'visit':
    case 'pass-prediction':
    case 'say-where':
    case 'respond':
    case 'check-prediction':
    case 'ask-help':
    case 'tell-grown-up':
    case 'review-word':
      return decideTalk(d, move);
    case 'send-draft':
      return sendDraft(d, move, screened);
    case 'improve-draft':
      return improveDraft(d, move, screened);
    case 'post-draft':
      return postDraft(d, move);
    case 'leave-draft':
      return leaveDraft(d, move);
    case 'take-back':
      return takeBack(d, move);
    case 'time-passed':
      return passTime(d);
    default:
      return move satisfies never;
  }
}
