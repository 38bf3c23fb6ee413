import { afterEach, describe, expect, it } from 'vitest';
import type { House } from '../../../shared/channel.js';
import { wordsOf } from '../../../shared/said.js';
import { seenBy, until } from '../../support/discord-person.js';
import { openDiscord, type OpenDiscord } from '../../support/discord-open.js';
import { openDiscordSchool, talkRoom, type DiscordSchool } from '../../support/discord-school.js';
import { discordPerson } from '../../support/discord-person.js';
import { fixturePassage } from './passage.js';

let school: DiscordSchool | null = null;
let extra: OpenDiscord | null = null;
afterEach(async () => {
  expect(school?.standIn.breaches ?? []).toEqual([]);
  await extra?.stop();
  await school?.stop();
  school = extra = null;
});

const started = async (): Promise<DiscordSchool> => {
  school = await openDiscordSchool();
  await fixturePassage(school);
  for (const name of ['Wren', 'Finch', 'Pipit'] as const) {
    await school.as(name).pressLabel(await school.as(name).press('l|turn'), /not sure/iu);
  }
  return school;
};

const drafts = async ({ house, classId, people }: DiscordSchool): Promise<readonly string[]> =>
  Object.values((await house.classes.load(classId)).posts)
    .filter(({ person }) => person === people.Wren)
    .map(({ stage }) => stage.stage);

const questionForm = async ({ as }: DiscordSchool) => {
  const page = await as('Wren').press('l|step|do=question');
  const opens = page.buttons.find(({ main }) => main);
  const { modal } = await as('Wren').press(opens?.id ?? '');
  if (modal === null) throw new Error('no form opened');
  return modal;
};

describe('an interaction that Discord treats badly', () => {
  it('is done and answered once when it comes three times at once, and done once after a restart', async () => {
    const { standIn, as, restart } = await started();
    const form = await questionForm(school as DiscordSchool);
    const sent = as('Wren').start(as('Wren').rawForm(form, { text: 'Why do limpets stop?' }));
    standIn.again(sent);
    standIn.again(sent);
    expect((await seenBy(sent)).text).toContain('Send it');
    await new Promise((done) => setTimeout(done, 200));
    expect(sent.answers).toHaveLength(1);
    expect(sent.refusedAnswers).toBe(0);
    expect(await drafts(school as DiscordSchool)).toEqual(['draft']);
    await restart();
    standIn.again(sent);
    await until(() => sent.refusedAnswers === 1);
    expect(await drafts(school as DiscordSchool)).toEqual(['draft']);
  });

  it('is one draft when a form is sent twice, and another when its words changed', async () => {
    const { as } = await started();
    const form = await questionForm(school as DiscordSchool);
    const [one, two] = await Promise.all([
      as('Wren').send(form, { text: 'Why do limpets stop?' }),
      as('Wren').send(form, { text: 'Why do limpets stop?' }),
    ]);
    expect(two.text).toBe(one.text);
    expect(await drafts(school as DiscordSchool)).toEqual(['draft']);
    await as('Wren').send(form, { text: 'Why do they go home?' });
    const { house, classId, people } = school as DiscordSchool;
    const { posts } = await house.classes.load(classId);
    const texts = Object.values(posts).flatMap(({ person, text }) =>
      person === people.Wren ? [text.kind === 'said' ? wordsOf(text) : text.text] : [],
    );
    expect(texts).toContain('Why do they go home?');
  });

  it('is done though its answer comes too late, and what it led to stands behind "For you"', async () => {
    const { standIn, as } = await started();
    const form = await questionForm(school as DiscordSchool);
    standIn.trouble('POST', /\/callback$/, {
      status: 404,
      body: { code: 10062, message: 'Unknown interaction' },
    });
    const sent = as('Wren').start(as('Wren').rawForm(form, { text: 'Why do limpets stop?' }));
    await until(() => school?.open().logged().includes('404/10062') ?? false);
    expect(sent.answers).toEqual([]);
    expect(await drafts(school as DiscordSchool)).toEqual(['draft']);
    const forYou = await as('Wren').press('l|for-you');
    expect(forYou.text).toContain('Why do limpets stop?');
  });

  it.each([
    ['fails', { status: 502 }],
    ['breaks', 'reset'],
    ['breaks after it arrived', 'reset after'],
  ] as const)('is answered once though the line %s', async (_, does) => {
    const { standIn, as } = await started();
    standIn.trouble('POST', /\/callback$/, does);
    const seen = await as('Wren').press('l|turn');
    expect(seen.text).toContain('Limpets');
    expect(seen.interaction.answers).toHaveLength(1);
  });

  it('is refused in words when it comes out of order', async () => {
    const { as, house, classId, people } = await started();
    const form = await questionForm(school as DiscordSchool);
    const feedback = await as('Wren').send(form, { text: 'Why do limpets stop?' });
    await as('Wren').pressLabel(feedback, 'Leave it');
    const again = await as('Wren').pressLabel(feedback, 'Send it');
    expect(again.text).not.toBe('');
    const posts = Object.values((await house.classes.load(classId)).posts);
    expect(posts.filter(({ person }) => person === people.Wren).map(({ stage }) => stage.stage)).toEqual([
      'left',
    ]);
  });

  it('opens a form again after a restart, from what the button carries', async () => {
    const { as, restart } = await started();
    const page = await as('Wren').press('l|step|do=question');
    await restart();
    const { modal } = await as('Wren').press(page.buttons.find(({ main }) => main)?.id ?? '');
    expect(modal).not.toBeNull();
    await restart();
    const seen = await as('Wren').send(modal ?? {}, { text: 'Why do limpets stop?' });
    expect(seen.text).toContain('Send it');
  });

  it('tells a button of another time what to do', async () => {
    const { as } = await started();
    const seen = await as('Wren').press('something of long ago');
    expect(seen.text).toContain('This button is too old');
    expect((await as('Wren').press('p|nowhere|3')).text).toContain('Ask for it again');
  });

  it('keeps what was typed where the form is refused', async () => {
    const { as, house, classId, group, people } = await started();
    const form = await questionForm(school as DiscordSchool);
    await house.act({ classId, by: people.Plover, at: house.now(), move: { type: 'pause-practice', group } });
    const refused = await as('Wren').send(form, { text: 'Why do limpets stop?' });
    expect(refused.hidden).toBe(true);
    const { modal } = await as('Wren').pressLabel(refused, 'Open it');
    expect(JSON.stringify(modal)).toContain('Why do limpets stop?');
  });
});

/** A house that answers late, or fails. */
function slowHouse(house: House, does: { wait: number; fail: boolean }): House {
  const late =
    <A extends unknown[], R>(act: (...args: A) => Promise<R>) =>
    async (...args: A): Promise<R> => {
      await new Promise((done) => setTimeout(done, does.wait));
      if (does.fail) throw new Error('the disk is on fire');
      return act(...args);
    };
  const move: House['move'] = (update) => house.move(update);
  const look: House['look'] = (...asked) => house.look(...asked);
  return { ...house, move: late(move), look: late(look) };
}

describe('an answer that takes its time', () => {
  it('is deferred without a promise, and then edited in its place', async () => {
    const { standIn, house, as } = await started();
    await school?.open().stop();
    extra = await openDiscord(slowHouse(house, { wait: 1800, fail: false }), {}, standIn);
    const seen = await as('Wren').press('l|turn');
    expect(seen.deferred).toBe(true);
    expect(seen.hidden).toBe(true);
    expect(seen.text).toContain('Limpets');
    expect(seen.interaction.answers[0]?.data?.content).toBeUndefined();
    expect(
      standIn.requests.filter(({ method, path }) => method === 'POST' && path.includes('webhooks')),
    ).toEqual([]);
  });

  it('gives a button for a form that can be opened no more', async () => {
    const { standIn, house, as } = await started();
    const page = await as('Wren').press('l|step|do=question');
    await school?.open().stop();
    const does = { wait: 1800, fail: false };
    extra = await openDiscord(slowHouse(house, does), {}, standIn);
    const late = await as('Wren').press(page.buttons.find(({ main }) => main)?.id ?? '');
    expect(late.deferred).toBe(true);
    does.wait = 0;
    const { modal } = await as('Wren').pressLabel(late, 'Open it');
    expect(modal).not.toBeNull();
  });

  it('says that nothing was kept where the house fails, and keeps what was typed', async () => {
    const { standIn, house, as } = await started();
    const form = await questionForm(school as DiscordSchool);
    await school?.open().stop();
    const does = { wait: 0, fail: true };
    extra = await openDiscord(slowHouse(house, does), {}, standIn);
    const seen = await discordPerson(standIn, '21', talkRoom).send(form, { text: 'Why do limpets stop?' });
    expect(seen.hidden).toBe(true);
    expect(seen.text).toContain('nothing was kept');
    expect(seen.text).toContain('Why do limpets stop?');
    expect(extra.logged()).not.toMatch(/limpets/u);
    does.fail = false;
    expect((await as('Wren').press('l|turn')).text).toContain('Limpets');
  });
});
