import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { openRoom, type OpenRoom } from '../../support/open-room.js';
import { formTo, openWalker } from '../../support/walker.js';

let room: OpenRoom;
beforeEach(async () => {
  room = await openRoom();
});
afterEach(() => room.stop());

describe('A pupil', () => {
  test('comes in with the code of the slip and sees what to do now as the one big button', async () => {
    const walker = openWalker(room.url);
    const page = await walker.signIn('WREN-2345-67');
    expect(page.status).toBe(200);
    expect(page.text).toContain('<h1>The limpet’s home, part 2</h1>');
    expect(page.text).toContain('the limpets on the rocks stop moving');
    expect(page.text.match(/class="button main"/gu)).toHaveLength(1);
    expect(page.text).toContain('Ask a question');
  });

  test('comes in by the link of the slip, which opens nothing before the button is pressed', async () => {
    const walker = openWalker(room.url);
    const door = await walker.get('/in/WREN-2345-67');
    expect(room.house.guessers).toEqual([]);
    const page = await walker.send(formTo(door.text, '/in'));
    expect(page.text).toContain('Ask a question');
  });

  test('asks a question, is told about it, and posts it into the talk', async () => {
    const walker = openWalker(room.url);
    await walker.signIn('WREN-2345-67');
    const step = await walker.get('/step/question');
    const told = await walker.send(formTo(step.text, '/move/send-draft'), { text: 'why does it go back?' });
    expect(told.text).toContain('About your question');
    expect(told.text).toContain('why does it go back?');
    const posted = await walker.send(formTo(told.text, '/move/post-draft'));
    expect(posted.text).toContain('Your question is in the talk now.');
    const talk = await walker.get('/talk');
    expect(talk.text).toContain('why does it go back?');
  });

  test('finds a draft on the own page when the answer to it was lost, once', async () => {
    const walker = openWalker(room.url);
    await walker.signIn('WREN-2345-67');
    const step = await walker.get('/step/question');
    const form = formTo(step.text, '/move/send-draft');
    await walker.post(form.action, { ...form.fields, text: 'why does it go back?' });
    const page = await walker.get('/');
    expect(page.text.match(/why does it go back\?/gu)).toHaveLength(1);
  });

  test('who presses twice has it done once and is answered the same', async () => {
    const walker = openWalker(room.url);
    await walker.signIn('WREN-2345-67');
    const step = await walker.get('/step/question');
    const form = formTo(step.text, '/move/send-draft');
    const fields = { ...form.fields, text: 'why?' };
    const [first, second] = await Promise.all([
      walker.post(form.action, fields),
      walker.post(form.action, fields),
    ]);
    expect([first.status, second.status]).toEqual([303, 303]);
    const id = room.house.updates[0]?.id ?? '';
    expect(room.house.updates.map((update) => update.id)).toEqual([id, id]);
    expect(room.house.done.get(id)).toBe(1);
    const answers = await Promise.all([first, second].map(({ location }) => walker.get(location ?? '')));
    for (const { text } of answers) expect(text).toContain('About your question');
  });

  test('each form that is shown carries an update id of its own', async () => {
    const walker = openWalker(room.url);
    await walker.signIn('WREN-2345-67');
    const ids = [1, 2, 3].map(async () => {
      const page = await walker.get('/step/question');
      return formTo(page.text, '/move/send-draft').fields['_update'];
    });
    expect(new Set(await Promise.all(ids)).size).toBe(3);
  });

  test('keeps what was typed when a move is refused, with the reason on top', async () => {
    const walker = openWalker(room.url);
    await walker.signIn('WREN-2345-67');
    const step = await walker.get('/step/answer');
    const again = await walker.send(formTo(step.text, '/move/send-draft'), {
      text: 'refuse me <please>',
      place: '0-61',
    });
    expect(again.status).toBe(422);
    expect(again.text).toContain('This part has closed.');
    const form = formTo(again.text, '/move/send-draft');
    expect(form.html).toContain('refuse me &lt;please&gt;');
    expect(form.html).toMatch(/value="0-61"[^>]*checked/u);
    expect(form.html).toContain('id="kept"');
  });

  test('gets the words back to copy where their form is gone', async () => {
    const walker = openWalker(room.url);
    await walker.signIn('WREN-2345-67');
    const step = await walker.get('/step/question');
    const form = formTo(step.text, '/move/send-draft');
    const again = await walker.send(
      { ...form, fields: { ...form.fields, _back: '/words' } },
      { text: 'refuse me kindly' },
    );
    expect(again.text).toMatch(/Here are your words[\s\S]*<textarea[^>]*readonly[^>]*>\s*refuse me kindly/u);
  });

  test('loses no words when the house fails', async () => {
    const walker = openWalker(room.url);
    await walker.signIn('WREN-2345-67');
    const step = await walker.get('/step/question');
    room.house.failNext(new Error('the disk is full of my long question'));
    const again = await walker.send(formTo(step.text, '/move/send-draft'), { text: 'my long question' });
    expect(again.status).toBe(500);
    expect(formTo(again.text, '/move/send-draft').html).toContain('my long question');
    expect(again.text).not.toContain('the disk is full');
    expect(room.logged()).not.toContain('my long question');
  });

  test('loses no words when they were signed out meanwhile', async () => {
    const walker = openWalker(room.url);
    await walker.signIn('WREN-2345-67');
    const step = await walker.get('/step/question');
    room.house.pass(31 * 60_000);
    const out = await walker.send(formTo(step.text, '/move/send-draft'), { text: 'my long question' });
    expect(out.status).toBe(403);
    expect(out.text).toContain('my long question');
    expect(out.text).toContain('The code on your slip');
    expect(room.house.updates).toEqual([]);
  });

  test('can say that a grown-up typed it', async () => {
    const walker = openWalker(room.url);
    await walker.signIn('WREN-2345-67');
    const step = await walker.get('/step/question');
    await walker.send(formTo(step.text, '/move/send-draft'), { text: 'why?', _given: 'scribed' });
    await walker.send(formTo(step.text, '/move/send-draft'), { text: 'why?', _update: '', _given: 'heard' });
    expect(room.house.updates.map(({ given }) => given)).toEqual(['scribed', 'typed']);
  });

  test.each(['/', '/talk', '/words', '/where', '/step/question', '/page', '/for-you', '/nowhere'])(
    'can tell a grown-up on the page %s, with words or without',
    async (path) => {
      const walker = openWalker(room.url);
      await walker.signIn('WREN-2345-67');
      const page = await walker.get(path);
      const sent = await walker.send(formTo(page.text, '/move/tell-grown-up'), {});
      expect(sent.status === 200 || path === '/nowhere').toBe(true);
      expect(room.house.updates.map(({ move, fields }) => ({ move, fields }))).toEqual([
        { move: 'tell-grown-up', fields: {} },
      ]);
    },
  );
});

describe('What the head of the page leads to anyway', () => {
  test('is not said again among the choices of a look, nor is a second form to tell a grown-up', async () => {
    const walker = openWalker(room.url);
    const page = await walker.signIn('WREN-2345-67');
    expect(page.text.match(/href="\/words"/gu)).toHaveLength(1);
    expect(page.text).not.toContain('Elsewhere');
    expect(page.text.match(/action="\/move\/tell-grown-up"/gu)).toHaveLength(1);
  });
});

describe('The staff side', () => {
  test.each([
    ['PLOVER-LINK', '/waiting'],
    ['GANNET-LINK', '/waiting'],
    ['HERON-LINK', '/roster'],
    ['TERN-LINK', '/alarms'],
  ])('%s begins at %s', async (code, home) => {
    const walker = openWalker(room.url);
    const page = await walker.get('/');
    const form = formTo(page.text, '/in');
    await walker.post('/in', { ...form.fields, code });
    expect((await walker.get('/')).location).toBe(home);
    expect((await walker.get(home)).status).toBe(200);
  });

  test('publishes what was held and stays on its page', async () => {
    const walker = openWalker(room.url);
    await walker.signIn('PLOVER-LINK');
    const page = await walker.get('/waiting');
    const after = await walker.send(formTo(page.text, '/move/release'));
    expect(after.status).toBe(200);
    expect(after.text).toContain('Held: 2');
    expect(room.house.updates.map(({ move, fields }) => [move, fields])).toEqual([
      ['release', { posts: 'wren-post' }],
    ]);
  });

  test('types a slash command, and gets it back to mend when it can’t be read', async () => {
    const walker = openWalker(room.url);
    await walker.signIn('PLOVER-LINK');
    const page = await walker.get('/commands');
    const done = await walker.send(formTo(page.text, '/command'), { line: '/practice start group:Limpets' });
    expect(done.text).toContain('Done: /practice start.');
    expect(room.house.commands).toEqual([
      { name: 'practice', action: 'start', options: { group: 'Limpets' } },
    ]);
    const again = await walker.send(formTo(done.text, '/command'), { line: '/practise begin' });
    expect(again.status).toBe(422);
    expect(again.text).toContain('Cannot do /practise');
    expect(formTo(again.text, '/command').html).toContain('/practise begin');
  });

  test('picks a command and fills in the form made from its data', async () => {
    const walker = openWalker(room.url);
    await walker.signIn('PLOVER-LINK');
    const page = await walker.get('/commands/held/publish');
    const form = formTo(page.text, '/command');
    expect(form.html.match(/type="checkbox"/gu)).toHaveLength(2);
    const body = new FormData();
    for (const [name, value] of Object.entries(form.fields)) body.append(name, value);
    body.append('posts', 'p1');
    body.append('posts', 'p2');
    await walker.post('/command', body);
    expect(room.house.commands).toEqual([{ name: 'held', action: 'publish', options: { posts: 'p1,p2' } }]);
  });

  test('every command that a role may do has a form, and no other', async () => {
    const walker = openWalker(room.url);
    await walker.signIn('HERON-LINK');
    const page = await walker.get('/commands');
    const links = [...page.text.matchAll(/href="(\/commands\/[^"]+)"/gu)].map(([, path = '']) => path);
    expect(links).toContain('/commands/roster/erase');
    expect(links).not.toContain('/commands/held/publish');
    for (const path of links) expect((await walker.get(path)).status).toBe(200);
    expect((await walker.get('/commands/held/publish')).status).toBe(404);
  });

  test('shows a new slip once as a code for a camera', async () => {
    const walker = openWalker(room.url);
    await walker.signIn('HERON-LINK');
    const page = await walker.get('/commands/roster/slip');
    const done = await walker.send(formTo(page.text, '/command'), { person: 'wren' });
    expect(done.text).toContain('ABCD-EFGH-23');
    expect(done.text).toMatch(/<svg class="code" role="img" aria-label="The link as a square code"/u);
  });

  test('previews a text too long for an address', async () => {
    const walker = openWalker(room.url);
    await walker.signIn('PLOVER-LINK');
    const page = await walker.get('/passages');
    const text = 'The crab waits. '.repeat(2000);
    const seen = await walker.send(formTo(page.text, '/look/preview-text'), { text });
    expect(seen.status).toBe(200);
    expect(seen.text).toContain(text.trim());
  });
});
