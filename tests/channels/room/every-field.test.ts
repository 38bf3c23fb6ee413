/** XSS through every field: markup typed wherever anybody may type stands on every page as words. */
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { lookShapes, mayLook, type LookName } from '../../../shared/looks.js';
import { moveShapes, type Move, type MoveName } from '../../../shared/moves.js';
import { roles, type Role } from '../../../shared/roles.js';
import type { PersonId } from '../../../shared/ids.js';
import { slashCommands } from '../../../commands/all.js';
import { calendar } from '../../../src/app/calendar.js';
import { foundClass, mustMove } from '../../../src/app/founding.js';
import { openHouse, type OpenHouse } from '../../../src/app/house.js';
import { silentLog } from '../../../src/app/log.js';
import { parseCommand } from '../../../src/app/typed-command.js';
import { roomChannel } from '../../../src/channels/room/room.js';
import { lookPaths } from '../../../src/channels/room/paths.js';
import { doorPictures } from '../../../src/pictures/door-pictures.js';
import { memoryStore } from '../../../src/store/memory-store.js';
import type { Store } from '../../../src/store/store.js';
import { fakeJudges } from '../../support/fake-judges.js';
import { readyMoves } from '../../support/ready-moves.js';
import { roomKey } from '../../support/open-room.js';
import { formTo, openWalker } from '../../support/walker.js';

/** Marked for each field, so that a page tells which one it shows. */
const nasty = (mark: string): string => `${mark}</title>"><img src=x onerror=a()>`;
/** Fields that are typed freely, of every move. */
const typed = ['line', 'text', 'page'] as const;

describe('Markup that is typed', () => {
  let store: Store;
  let house: OpenHouse;
  let room: ReturnType<typeof roomChannel>;
  const pages = new Map<string, string>();
  const written = new Set<string>();

  beforeAll(async () => {
    const now = Date.parse('2026-11-25T10:00:00Z');
    store = await memoryStore({ now: () => now });
    const log = silentLog;
    house = openHouse({
      ...{ store, judges: fakeJudges, calendar, clock: { now: () => now }, log, key: roomKey },
      ...{ baseUrl: () => 'http://127.0.0.1', seed: () => 7 },
    });
    const { classId, tutor } = await foundClass(house, {
      name: nasty('make-class name'),
      zone: 'UTC',
      nickname: nasty('tutor').slice(0, 40),
    });
    for (const move of ['make-class name', 'make-class nickname']) written.add(move);
    const write = async (by: PersonId, move: Move): Promise<void> => {
      for (const [field, shape] of Object.entries(moveShapes[move.type]))
        if (typed.some((one) => one === shape) && field.replace('?', '') in move)
          written.add(`${move.type} ${field.replace('?', '')}`);
      await mustMove(house, classId, by, [move]);
    };
    const state = () => house.classes.load(classId);
    await mustMove(house, classId, tutor, readyMoves);
    await write(tutor, { type: 'make-group', name: nasty('group') });
    for (const role of roles)
      await write(tutor, {
        type: 'add-person',
        role,
        nickname: `${role[0]}${role.length}${nasty('n')}`.slice(0, 40),
        ...(role === 'pupil' ? { group: Object.values((await state()).groups)[0]!.id } : {}),
      });
    const people = new Map<Role, PersonId>();
    for (const { id, role } of Object.values((await state()).people)) people.set(role, id);
    const pupil = people.get('pupil')!;
    await write(tutor, { type: 'rename-person', person: pupil, nickname: nasty('pupil').slice(0, 40) });
    for (const setting of ['alarm text', 'alarm number'] as const)
      await write(tutor, { type: 'change-setting', setting, value: nasty(setting) });
    const text = Array.from(
      { length: 3 },
      (_, n) => `Stones lie on ${nasty(`beach ${n}`)}. Birds turn them.`,
    ).join('\n\n');
    await write(tutor, { type: 'add-passage', title: nasty('title'), text, grade: 4 });
    const passage = Object.values((await state()).shelf)[0]!.id;
    await write(tutor, { type: 'write-gist', passage, stop: 0, text: nasty('gist') });
    await write(tutor, { type: 'write-spare-question', passage, stop: 0, text: nasty('spare') });
    const group = Object.values((await state()).groups)[0]!.id;
    await write(tutor, { type: 'set-passage', passage, group });
    await write(tutor, { type: 'start-practice', group });
    await write(pupil, { type: 'visit' });
    await write(pupil, { type: 'pass-prediction' });
    const newest = async () =>
      Object.values((await state()).posts)
        .filter(({ person }) => person === pupil)
        .at(-1)!.id;
    await write(pupil, { type: 'send-draft', do: 'clarify', word: nasty('Stones'), text: nasty('draft') });
    await write(pupil, { type: 'improve-draft', post: await newest(), text: nasty('better') });
    await write(pupil, { type: 'post-draft', post: await newest() });
    await write(tutor, { type: 'confirm-meaning', post: await newest(), meaning: nasty('meaning') });
    await write(pupil, { type: 'send-draft', do: 'question', text: nasty('Why') });
    await write(pupil, { type: 'post-draft', post: await newest() });
    await write(tutor, { type: 'overrule', post: await newest(), level: 1, note: nasty('note') });
    await mustMove(house, classId, tutor, [
      { type: 'change-setting', setting: 'moderation', value: 'hold everything' },
    ]);
    await write(pupil, { type: 'send-draft', do: 'sum-up', text: nasty('sum') });
    await write(pupil, { type: 'post-draft', post: await newest() });
    await write(tutor, { type: 'send-back', post: await newest(), note: nasty('back') });
    await write(tutor, {
      type: 'note-live',
      person: pupil,
      do: 'question',
      level: 1,
      given: 'said',
      text: nasty('said'),
    });
    // Refused, since no such word waits: what is refused is kept nowhere.
    await write(pupil, { type: 'review-word', word: nasty('word'), known: true }).catch(() =>
      written.add('review-word word'),
    );
    await write(pupil, { type: 'tell-grown-up', text: nasty('help') });
    await write(tutor, { type: 'try-alarm' });
    room = roomChannel({
      ...{ host: '127.0.0.1', port: 0, key: roomKey, secureCookies: false, trustProxy: false },
      ...{ log: silentLog, slashCommands, readCommand: parseCommand, pictures: doorPictures },
    });
    await room.start(house);
    const alarm = Object.keys((await state()).alarms)[0] ?? '';
    const post = await newest();
    for (const role of roles) {
      const walker = openWalker(room.url());
      const { secret } = await house.makeSlip({ classId, person: tutor }, people.get(role)!);
      const first = await walker.get(`/in/${secret}`);
      await walker.send(formTo(first.text, '/in'));
      const args = {
        preview: `?passage=${passage}`,
        post: `?post=${post}`,
        'alarm-words': `?alarm=${alarm}`,
      } as const;
      for (const look of Object.keys(lookShapes) as LookName[]) {
        if (!mayLook[look].includes(role) || lookPaths[look] === null) continue;
        const path =
          look === 'step'
            ? '/step/question'
            : `${lookPaths[look]}${look in args ? args[look as keyof typeof args] : ''}`;
        pages.set(`${role} ${path}`, (await walker.get(path)).text);
      }
      for (const path of [
        '/talk',
        '/page',
        '/commands',
        '/slips',
        '/what-is-kept',
        '/nowhere',
        '/commands/roster/slip',
      ])
        pages.set(`${role} ${path}`, (await walker.get(path)).text);
    }
  });
  afterAll(async () => {
    await room.stop();
    await store.close();
  });

  test('was typed into every field of every move that takes free words', () => {
    const all = (Object.keys(moveShapes) as MoveName[]).flatMap((move) =>
      Object.entries(moveShapes[move])
        .filter(([, shape]) => typed.some((one) => one === shape))
        .map(([field]) => `${move} ${field.replace('?', '')}`),
    );
    // A zone is only ever the name of one.
    expect([...written].sort()).toEqual(all.filter((one) => one !== 'make-class zone').sort());
  });

  test('is shown, so that this is a test of something', () => {
    const all = [...pages.values()].join('\n');
    for (const mark of [
      'group',
      'tutor',
      'pupil',
      'alarm text',
      'title',
      'beach 0',
      'gist',
      'Why',
      'help',
      'back',
    ])
      expect([mark, all.includes(`${mark}&lt;/title&gt;`)]).toEqual([mark, true]);
  });

  test('is words on every page of every role', () => {
    expect(pages.size).toBeGreaterThan(50);
    for (const [page, html] of pages) {
      expect([page, html.match(/<img(?! src="\/assets\/picture-)/gu)]).toEqual([page, null]);
      expect([page, html.match(/<script/gu)?.length]).toEqual([page, 1]);
      expect([page, html.match(/<title>/gu)?.length]).toEqual([page, 1]);
      expect([page, /<[a-z]+(?:\s+[a-z-]+(?:="[^"]*")?)*\s+on[a-z]+=/u.test(html)]).toEqual([page, false]);
    }
  });
});
