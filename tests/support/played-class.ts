import { calendar } from '../../src/app/calendar.js';
import { demoPassages, fixtureText } from '../../src/app/demo-class.js';
import { foundClass, mustMove, personNamed } from '../../src/app/founding.js';
import { openHouse, type OpenHouse } from '../../src/app/house.js';
import { silentLog } from '../../src/app/log.js';
import type { Reply } from '../../shared/channel.js';
import type { ClassId, GroupId, PersonId, PostId } from '../../shared/ids.js';
import type { Judges } from '../../shared/judgements.js';
import { lookShapes, mayLook, type LookName } from '../../shared/looks.js';
import type { Move } from '../../shared/moves.js';
import { strategies } from '../../shared/strategies.js';
import type { Store } from '../../src/store/store.js';
import { fakeJudges } from './fake-judges.js';

export const playedKey = 'a key for tests only, long enough to sign';
/** A Tuesday morning in school hours. */
export const playedFrom = Date.UTC(2026, 9, 6, 9);
export const pupilNames = ['Wren', 'Finch', 'Pipit'] as const;

/** A house over a store whose clock is moved by hand. */
export interface Played {
  readonly house: OpenHouse;
  readonly store: Store;
  readonly clock: { now: () => number; pass: (milliseconds: number) => void };
}

/** Opens the house of a test over a store. */
export function openPlayed(
  makeStore: (now: () => number) => Promise<Store>,
  judges: Judges = fakeJudges,
): Promise<Played> {
  let now = playedFrom;
  const clock = { now: () => now, pass: (milliseconds: number) => void (now += milliseconds) };
  return makeStore(clock.now).then((store) => ({
    store,
    clock,
    house: openHouse({
      store,
      judges,
      calendar,
      clock,
      log: silentLog,
      key: playedKey,
      baseUrl: () => 'http://127.0.0.1',
      seed: () => 7,
    }),
  }));
}

/** A class in the middle of its first part, everybody by nickname. */
export interface PlayedClass {
  readonly classId: ClassId;
  readonly group: GroupId;
  readonly people: Readonly<Record<string, PersonId>>;
  act(by: string, move: Move): Promise<Reply>;
}

/** Makes a class whose practice runs; its people's nicknames and its name end in a mark. */
export async function playClass({ house }: Played, mark = ''): Promise<PlayedClass> {
  const tutor = `Plover${mark}`;
  const { classId, tutor: founder } = await foundClass(house, {
    name: `Harbour Readers${mark}`,
    zone: 'UTC',
    nickname: tutor,
  });
  const made = await mustMove(house, classId, founder, [
    { type: 'add-person', nickname: `Heron${mark}`, role: 'teacher' },
    { type: 'add-person', nickname: `Curlew${mark}`, role: 'administrator' },
    { type: 'add-person', nickname: `Egret${mark}`, role: 'safeguarding lead' },
    { type: 'change-setting', setting: 'moderation', value: 'publish' },
    { type: 'change-setting', setting: 'alarm text', value: 'Somebody is in the library.' },
    { type: 'change-setting', setting: 'alarm number', value: '000 000' },
  ]);
  const group = Object.values(made.groups)[0]?.id;
  if (group === undefined) throw new Error('Cannot play a class, expected a group, got none');
  await mustMove(house, classId, founder, [
    ...pupilNames.map(
      (name) => ({ type: 'add-person', nickname: `${name}${mark}`, role: 'pupil', group }) as const,
    ),
    ...strategies
      .filter((one) => !made.groups[group]?.open.includes(one))
      .map((strategy) => ({ type: 'open-strategy', strategy }) as const),
  ]);
  const shelved = await mustMove(house, classId, founder, [
    { type: 'add-passage', text: fixtureText(demoPassages[0]), grade: 5 },
  ]);
  const passage = Object.values(shelved.shelf)[0]?.id;
  if (passage === undefined) throw new Error('Cannot play a class, expected a passage, got none');
  const state = await mustMove(house, classId, founder, [
    { type: 'set-passage', passage, group },
    { type: 'start-practice', group },
  ]);
  const names = [...pupilNames, 'Plover', 'Heron', 'Curlew', 'Egret'];
  const people = Object.fromEntries(
    names.map((name) => {
      const person = personNamed(state, `${name}${mark}`);
      if (person === null) throw new Error(`Cannot play a class, expected ${name}, got nobody`);
      return [name, person];
    }),
  );
  return {
    classId,
    group,
    people,
    act: (by, move) => {
      const person = people[by];
      if (person === undefined) throw new Error(`Cannot act, expected somebody of the class, got ${by}`);
      return house.act({ classId, by: person, at: house.now(), move });
    },
  };
}

/** All that the people of a played class wrote, each with a word that stands nowhere else. */
export const written = {
  prediction: 'I predict the zanthor will turn because the tide is early',
  question: 'Why did the quibbleton come back before the water did?',
  answer: 'Because the marrowfen was still wet from the night',
  clarify: 'It may mean the dapplewick that comes twice',
  sumUp: 'The harbour folk read the fennimore by its marks.',
  held: 'Another question that waits about the gorsebottom?',
  note: 'Please look once more at the tansyloo',
  sealed: 'nobody at home listens to the kestrelune',
  heard: 'said aloud that the brackenby is brave',
} as const;

async function mustAct(one: PlayedClass, by: string, move: Move): Promise<void> {
  const reply = await one.act(by, move);
  if (!reply.done) throw new Error(`Cannot play ${move.type} by ${by}: ${reply.why ?? ''}`);
}

/** Lets everybody write something of each kind, adults too. */
export async function writeAll({ house }: Played, one: PlayedClass): Promise<void> {
  const { classId } = one;
  const newest = async (by: string): Promise<PostId> => {
    const { posts } = await house.classes.load(classId);
    const mine = Object.values(posts).filter(({ person }) => person === one.people[by]);
    const post = mine.at(-1);
    if (!post) throw new Error(`Cannot find a post by ${by}`);
    return post.id;
  };
  const send = async (by: string, move: Extract<Move, { type: 'send-draft' }>): Promise<PostId> => {
    await mustAct(one, by, move);
    const post = await newest(by);
    await mustAct(one, by, { type: 'post-draft', post });
    return post;
  };
  for (const by of pupilNames) await one.act(by, { type: 'visit' });
  const question = await send('Wren', { type: 'send-draft', do: 'question', text: written.question });
  await send('Finch', { type: 'send-draft', do: 'answer', text: written.answer, question });
  const clarified = await send('Finch', {
    type: 'send-draft',
    do: 'clarify',
    text: written.clarify,
    word: 'tide',
  });
  await send('Pipit', { type: 'send-draft', do: 'sum-up', text: written.sumUp });
  await send('Pipit', { type: 'send-draft', do: 'predict', text: written.prediction });
  await mustAct(one, 'Plover', { type: 'change-setting', setting: 'moderation', value: 'hold everything' });
  const held = await send('Wren', { type: 'send-draft', do: 'question', text: written.held });
  await mustAct(one, 'Plover', { type: 'send-back', post: held, note: written.note });
  await mustAct(one, 'Plover', {
    type: 'overrule',
    post: question,
    level: 3,
    as: 'inferential',
    note: written.note,
  });
  await mustAct(one, 'Plover', { type: 'confirm-meaning', post: clarified, meaning: written.clarify });
  await mustAct(one, 'Plover', {
    type: 'note-live',
    person: one.people['Pipit'] as PersonId,
    do: 'question',
    level: 2,
    given: 'said',
    text: written.heard,
  });
  await one.act('Finch', { type: 'tell-grown-up', text: written.sealed });
}

/** One taking of a look. */
export interface Taken {
  readonly by: string;
  readonly name: LookName;
  readonly reply: Reply;
}

/** Takes every look that anybody may take, of every post, passage, group, step and alarm. */
export async function takeEveryLook({ house }: Played, one: PlayedClass): Promise<readonly Taken[]> {
  const state = await house.classes.load(one.classId);
  const valuesFor = (kind: string, field: string): readonly string[] => {
    if (field === 'do') return ['predict', 'question', 'answer', 'clarify', 'sum-up', 'add'];
    if (kind === 'post') return Object.keys(state.posts);
    if (kind === 'passage') return Object.keys(state.shelf);
    if (kind === 'group') return Object.keys(state.groups);
    if (kind === 'alarm') return Object.keys(state.alarms);
    return ['Some words. And more of them.'];
  };
  const taken: Taken[] = [];
  for (const [by, person] of Object.entries(one.people)) {
    const role = state.people[person]?.role;
    for (const name of Object.keys(mayLook) as LookName[]) {
      if (role === undefined || !mayLook[name].includes(role)) continue;
      let needed: Record<string, string>[] = [{}];
      const more: Record<string, string>[] = [];
      for (const [field, shape] of Object.entries(lookShapes[name])) {
        const plain = field.replace('?', '');
        const values = plain === 'grade' ? [] : valuesFor(String(shape), plain);
        const withIt = needed.flatMap((fields) => values.map((value) => ({ ...fields, [plain]: value })));
        // What may be left out is given alone.
        if (field.endsWith('?')) more.push(...withIt);
        else needed = withIt;
      }
      const asked = [...needed, ...more];
      for (const fields of asked)
        taken.push({ by, name, reply: await house.look({ classId: one.classId, person }, name, fields) });
    }
  }
  return taken;
}
