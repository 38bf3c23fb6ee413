import type { AlarmId, PassageId, PersonId } from '../../shared/ids.js';
import type { Finding, Judges } from '../../shared/judgements.js';
import type { Act } from '../../shared/moves.js';
import { wordsOf } from '../../shared/said.js';
import { add, mint, timeOf, type Deciding } from './deciding.js';
import { isOpen } from './hours.js';
import { runningOf } from './lookup.js';
import type { ClassState } from './state.js';

/** What the screen says of all that a pupil sent in one move. */
export interface Screened {
  readonly hold: boolean;
  readonly alarm: boolean;
  readonly findings: readonly Finding[];
  /** The words themselves, for the sealed table of an alarm. */
  readonly text: string;
}

const clean: Screened = { hold: false, alarm: false, findings: [], text: '' };

/** What a pupil's move says, in words; nothing where it carries none. */
function textsOf({ move }: Act): readonly string[] {
  if (move.type === 'send-draft') return move.word === undefined ? [move.text] : [move.text, move.word];
  if (move.type === 'improve-draft') return [move.text];
  return move.type === 'tell-grown-up' ? [move.text ?? ''] : [];
}

/** Screens what a pupil sends, before any other rule; adults' words aren't screened. */
export function screenAct(state: ClassState, act: Act, judges: Judges): Screened {
  const { by, move } = act;
  const person = by === 'clock' || by === 'founder' ? undefined : state.people[by];
  const texts = textsOf(act);
  if (person?.role !== 'pupil' || texts.length === 0) return clean;
  const names = Object.values(state.people).flatMap(({ nickname }) => wordsOf(nickname) ?? []);
  const passage = passageText(state, passageBefore(state, act, person.group));
  const screenings = texts
    .filter((text) => text !== '')
    .map((text) => judges.screen({ text, names, ...(passage === '' ? {} : { passage }) }));
  return {
    hold: screenings.some(({ hold }) => hold),
    alarm: move.type === 'tell-grown-up' || screenings.some(({ alarm }) => alarm),
    findings: screenings.flatMap(({ findings }) => findings),
    text: texts.join('\n'),
  };
}

/** The passage whose words are no offence: the one that the group reads, else the one read last. */
function passageBefore(state: ClassState, { move }: Act, id: string | null): PassageId | null {
  const replied = move.type === 'send-draft' ? (move.question ?? move.to) : undefined;
  const post = move.type === 'improve-draft' ? move.post : replied;
  const known = post === undefined ? undefined : state.posts[post]?.passage;
  if (known !== undefined) return known;
  const group = id === null ? undefined : Object.values(state.groups).find((one) => one.id === id);
  if (!group) return null;
  return runningOf(group.practice)?.passage ?? group.finished.at(-1)?.passage ?? null;
}

function passageText(state: ClassState, passage: PassageId | null): string {
  const reading = passage === null ? undefined : state.shelf[passage]?.reading;
  return reading ? [reading.title, ...reading.segments.map(({ text }) => text)].join('\n\n') : '';
}

/** Calls the named adults; the words go to the sealed table, and nothing else comes of the move. */
export function raiseAlarm(d: Deciding, person: PersonId, screened: Screened): void {
  add(d, {
    type: 'alarm-raised',
    alarm: mint<AlarmId>(d, 'a'),
    person,
    group: d.state.people[person]?.group ?? null,
    words: { kind: 'sealed', by: person, text: screened.text },
    findings: screened.findings,
    from: d.act.move.type === 'tell-grown-up' ? 'tell a grown-up' : 'post',
    escalatesAt: d.act.at + d.state.settings.alarmMinutes * 60_000,
    inOpenHours: isOpen(timeOf(d), d.act.at),
  });
}
