import { describe, expect, it } from 'vitest';
import { asId, type ClassId, type PersonId, type PostId } from '../../shared/ids.js';
import { said } from '../../shared/said.js';
import { memoryStore } from '../../src/store/memory-store.js';
import { commitOf, drafted, joined, messageOf, sayOf, tryOf } from '../support/commits.js';

const oak = asId<ClassId>('oak');
const wren = asId<PersonId>('p1');
const tutor = asId<PersonId>('t1');

describe('What is held on a person', () => {
  it('is given whole as plain data, without secrets and without what others wrote', async () => {
    const store = await memoryStore();
    const note = {
      type: 'post-sent-back',
      at: 30,
      by: tutor,
      post: asId<PostId>('a'),
      note: said(tutor, 'Once more'),
    } as const;
    const events = [
      joined('p1', 'Wren'),
      joined('p2', 'Lark'),
      drafted('p1', 'a', 'Why do eels go home?'),
      note,
      drafted('p2', 'b', 'Because they must', 40, { do: 'answer', to: asId('a') }),
    ];
    const message = messageOf({ to: 'person', person: wren }, 'For you');
    await store.commit([
      commitOf(oak, 0, {
        events,
        tellings: [{ at: 31, telling: sayOf('m', message) }],
        evidence: [tryOf('p1', 'a'), tryOf('p2', 'b')],
      }),
    ]);
    await store.saveSlip('hash', { classId: oak, person: wren, madeAt: 1, expiresAt: 9, revoked: false });
    await store.saveSession({ id: 's', classId: oak, person: wren, startedAt: 1, seenAt: 2, expiresAt: 3 });
    await store.bindIdentity({ channel: 'slack', tenant: 'T', user: 'U', classId: oak, person: wren });
    const held = await store.exportPerson(oak, wren);
    expect(held).toEqual({
      classId: oak,
      person: wren,
      nicknames: [{ at: 10, text: 'Wren', gone: null }],
      words: [{ at: 20, text: 'Why do eels go home?', gone: null }],
      sealed: [],
      looksAtSealed: [],
      posts: ['a'],
      evidence: [tryOf('p1', 'a')],
      events: [
        { version: 1, event: events[0] },
        { version: 3, event: events[2] },
        { version: 4, event: note },
      ],
      messages: [{ at: 31, message }],
      slips: [{ classId: oak, person: wren, madeAt: 1, expiresAt: 9, revoked: false }],
      secondKeys: [],
      sessions: [{ startedAt: 1, seenAt: 2, expiresAt: 3 }],
      identities: [{ channel: 'slack', tenant: 'T', user: 'U' }],
      places: [],
    });
    expect(JSON.parse(JSON.stringify(held))).toEqual(held);
    await store.erasePerson(oak, wren);
    expect(JSON.stringify(await store.exportPerson(oak, wren))).not.toMatch(/Wren|eels|Once more|For you/u);
    await store.close();
  });
});
