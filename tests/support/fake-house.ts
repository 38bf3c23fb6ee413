import type { House, Profile, Reply, TypedCommand, Update, Who } from '../../shared/channel.js';
import { Fault } from '../../shared/fault.js';
import { mayLook, isLookName } from '../../shared/looks.js';
import type { Message } from '../../shared/messages.js';
import { isMoveName, mayMove, readMove } from '../../shared/moves.js';
import { message, own, prose, slips, talkTo } from './fake-class.js';
import { fakeLooks, feedback, type FakeState } from './fake-looks.js';

/** A house that keeps everything in memory, with what a test wants to see and to change. */
export interface FakeHouse extends House {
  /** Every update that was asked for, in order, double presses included. */
  readonly updates: Update[];
  /** How often each update was really done. */
  readonly done: Map<string, number>;
  readonly commands: TypedCommand[];
  /** From whom guesses came. */
  readonly guessers: string[];
  readonly sessions: Map<string, Who>;
  /** Second keys by person; an empty one is still to be chosen. */
  readonly secondKeys: Map<string, string>;
  listeners(): number;
  /** Puts a message into the feed and tells whoever listens. */
  post(it: Message): void;
  /** Moves the clock on. */
  pass(milliseconds: number): void;
  /** The next move throws this. */
  failNext(why: Error): void;
  /** A look is answered with these messages from now on. */
  show(look: string, messages: (who: Profile) => readonly Message[]): void;
}

const guesses = 10;

function note(who: Profile, text: string): Message {
  return message(own(who), text, [prose(text)]);
}

/** Opens a fake house over the invented class. */
export function openFakeHouse(): FakeHouse {
  const state: FakeState = { drafts: new Map(), feed: [] };
  const replies = new Map<string, Reply>();
  const looks = new Map<string, (who: Profile) => readonly Message[]>();
  const watchers = new Set<() => void>();
  const misses = new Map<string, number>();
  let now = Date.UTC(2026, 9, 6, 9);
  let failure: Error | null = null;
  let seq = 0;

  const profileOf = (who: Who): Profile => {
    const found = Object.values(slips).find(({ person }) => person === who.person);
    if (!found) throw new Error('nobody of that id');
    return found;
  };
  const say = (it: Message): void => {
    seq += 1;
    state.feed.push({ seq, key: `m${seq}`, at: now, message: it });
    for (const changed of [...watchers]) changed();
  };

  const perform = (update: Update, who: Profile): Reply => {
    if (!isMoveName(update.move) || !mayMove[update.move].includes(who.role))
      return { done: false, messages: [note(who, 'Cannot do that, expected somebody who may. Ask them.')] };
    const { fields } = update;
    if (update.move === 'send-draft' || update.move === 'improve-draft') {
      const text = fields['text'] ?? '';
      if (text.includes('refuse me'))
        return { done: false, messages: [note(who, 'This part has closed. Go to the next part.')] };
      const draft = { text, do: fields['do'] ?? 'question' };
      state.drafts.set(who.person, draft);
      say(feedback(who, draft));
      return { done: true, messages: [feedback(who, draft)] };
    }
    if (update.move === 'post-draft') {
      const draft = state.drafts.get(who.person);
      state.drafts.delete(who.person);
      const told = state.feed.findIndex(({ message: { summary, audience } }) => {
        return (
          summary === 'About your question' && audience.to === 'person' && audience.person === who.person
        );
      });
      if (told >= 0) state.feed.splice(told, 1);
      if (draft)
        say(
          message(talkTo, `${who.nickname} asked something`, [
            { type: 'quotation', text: draft.text, by: who.nickname },
          ]),
        );
      return { done: true, messages: [note(who, 'Your question is in the talk now.')] };
    }
    return { done: true, messages: [] };
  };

  const house: FakeHouse = {
    updates: [],
    done: new Map(),
    commands: [],
    guessers: [],
    sessions: new Map(),
    secondKeys: new Map(),
    async move(update) {
      if (failure) {
        const why = failure;
        failure = null;
        throw why;
      }
      const who = profileOf(update.who);
      if (update.move !== 'visit') house.updates.push(update);
      const before = replies.get(update.id);
      if (before) return before;
      house.done.set(update.id, (house.done.get(update.id) ?? 0) + 1);
      let reply: Reply;
      try {
        readMove(update.move, update.fields);
        reply = perform(update, who);
      } catch (why) {
        if (!(why instanceof Fault)) throw why;
        reply = { done: false, messages: [note(who, `${why.message}. ${why.remedy}`)] };
      }
      replies.set(update.id, reply);
      return reply;
    },
    async look(asker, look, fields) {
      const who = profileOf(asker);
      if (!isLookName(look) || !mayLook[look].includes(who.role))
        return { done: false, messages: [note(who, 'Cannot show that.')] };
      const other = looks.get(look);
      return { done: true, messages: other ? other(who) : (fakeLooks[look]?.(who, fields, state) ?? []) };
    },
    async command(asker, _id, command) {
      house.commands.push(command);
      const who = profileOf(asker);
      if (command.name === 'roster' && command.action === 'slip') {
        const link = 'http://127.0.0.1/in/ABCD-EFGH-23';
        return {
          done: true,
          messages: [
            message(own(who), 'A new slip', [
              { type: 'heading', text: 'A new slip' },
              { type: 'list', items: [[{ text: 'Code: ' }, { text: 'ABCD-EFGH-23', strong: true }]] },
              {
                type: 'picture',
                picture: { kind: 'code', alternative: 'The link as a square code', data: link },
              },
            ]),
          ],
        };
      }
      if (command.name === 'roster' && command.action === 'sheet')
        return {
          done: true,
          messages: [
            message(own(who), 'Slips', [{ type: 'heading', text: 'Slips of Limpets' }]),
            ...['Wren', 'Finch', 'Pipit', 'Dunlin', 'Knot', 'Dunnock'].map((nickname) =>
              message(own(who), nickname, [
                { type: 'heading', text: nickname },
                prose('Tuesday readers'),
                prose('Go to this page: http://127.0.0.1:8080/'),
                prose('Write your code: ABCD-EFGH-23', true),
                {
                  type: 'picture',
                  picture: {
                    kind: 'code',
                    alternative: 'The link as a square code',
                    data: 'http://127.0.0.1:8080/in/ABCD-EFGH-23',
                  },
                },
                prose('This slip is only for you. Keep it safe. It is good until Friday 26.3. at 9:00.'),
              ]),
            ),
          ],
        };
      return { done: true, messages: [note(who, `Done: /${command.name} ${command.action}.`)] };
    },
    async suggest(_who, source) {
      if (source === 'groups') return [{ value: 'group-1', label: 'Limpets' }];
      if (source === 'pupils' || source === 'people')
        return [
          { value: 'wren', label: 'Wren' },
          { value: 'finch', label: 'Finch' },
        ];
      if (source === 'held')
        return [
          { value: 'p1', label: 'Wren: question' },
          { value: 'p2', label: 'Finch: answer' },
        ];
      if (source === 'passages') return [{ value: 'passage-1', label: 'The limpet’s home' }];
      return Array.from({ length: 25 }, (_, at) => ({ value: String(at), label: String(at + 1) }));
    },
    async feed(asker, after) {
      const who = profileOf(asker);
      const adult = who.role === 'tutor' || who.role === 'teacher';
      return state.feed.filter(({ seq, message: { audience } }) => {
        if (seq <= after) return false;
        if (audience.to === 'person') return audience.person === who.person;
        return audience.to === 'staff' ? adult : adult || who.role === 'pupil';
      });
    },
    listen(_who, changed) {
      watchers.add(changed);
      return () => watchers.delete(changed);
    },
    profile: async (who) => profileOf(who),
    async signIn(secret, from, second) {
      house.guessers.push(from);
      if ((misses.get(from) ?? 0) >= guesses) return { refused: 'Too many tries. Wait ten minutes.' };
      const found = slips[secret.trim().toUpperCase()];
      if (!found) {
        misses.set(from, (misses.get(from) ?? 0) + 1);
        return { refused: 'This code does not open anything. Look at your slip again.' };
      }
      const kind = found.role === 'pupil' ? 'pictures' : 'passphrase';
      const key = house.secondKeys.get(found.person);
      if (key !== undefined && second === undefined) return { asks: kind, choose: key === '', why: null };
      if (key === '' && second !== undefined) house.secondKeys.set(found.person, second);
      else if (key !== undefined && key !== second)
        return { asks: kind, choose: false, why: 'Those are not your pictures. Try again.' };
      const session = crypto.randomUUID().replaceAll('-', '');
      house.sessions.set(session, found);
      return { session, who: found };
    },
    session: async (id) => house.sessions.get(id) ?? null,
    async signOut(id) {
      house.sessions.delete(id);
    },
    async tellGrownUp(secret, from, updateId, text) {
      house.guessers.push(from);
      const found = slips[secret.trim().toUpperCase()];
      if (!found) return { refused: 'This code does not open anything.' };
      return house.move({ id: updateId, who: found, move: 'tell-grown-up', fields: { text } });
    },
    async choosePictures(who, pictures) {
      house.secondKeys.set(who.person, pictures);
      return { done: true, messages: [note(profileOf(who), 'Your three pictures are kept.')] };
    },
    hasSecondKey: async (who) => (house.secondKeys.get(who.person) ?? '') !== '',
    makeSlip: async () => ({
      secret: 'ABCD-EFGH-23',
      link: 'http://127.0.0.1/in/ABCD-EFGH-23',
      until: now + 14 * 24 * 3600_000,
    }),
    now: () => now,
    identify: async () => null,
    join: async () => ({ refused: 'not here' }),
    bindPlace: async () => ({ done: false, messages: [] }),
    listeners: () => watchers.size,
    post: say,
    pass(milliseconds) {
      now += milliseconds;
    },
    failNext(why) {
      failure = why;
    },
    show(look, messages) {
      looks.set(look, messages);
    },
  };
  return house;
}
