import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { fixturePassage } from '../channels/discord/passage.js';
import { seenText } from '../support/discord-payloads.js';
import { openDiscordSchool, staffRoom, talkRoom, type DiscordSchool } from '../support/discord-school.js';

let school: DiscordSchool;
beforeEach(async () => {
  school = await openDiscordSchool();
  school.standIn.forbid(talkRoom, 'write', true);
  await fixturePassage(school);
  await school.sent();
});
afterEach(async () => {
  expect(school.standIn.breaches).toEqual([]);
  await school.stop();
});

/** What the tutor finds in the room: the feed of the class, and the look of what waits. */
const fed = async (): Promise<readonly string[]> => {
  const { house, classId, people } = school;
  const items = await house.feed({ classId, person: people.Plover }, 0);
  return items.map(({ message }) => message.summary).filter((words) => words.includes('could not be sent'));
};
const waiting = async (): Promise<string> => {
  const { house, classId, people } = school;
  return JSON.stringify((await house.look({ classId, person: people.Plover }, 'waiting', {})).messages);
};
const mend = async (): Promise<void> => {
  school.standIn.forbid(talkRoom, 'write', false);
  const tutor = school.as('Plover');
  const asked = await tutor.command('here', 'group', { group: school.group });
  await tutor.pressLabel(asked, 'Yes, all are old enough');
  await school.sent();
};

describe('A place of a platform that takes no messages', () => {
  it('is told to staff once, in the room and in every place of theirs that works, with what to do', async () => {
    const words = /message to Discord could not be sent.*“Send Messages”.*Give it back, then use \/here/u;
    expect(await fed()).toEqual([expect.stringMatching(words)]);
    await school.pass(60_000);
    await school.sent();
    expect(await fed()).toHaveLength(1);
    const told = school.standIn.room(staffRoom).map(seenText);
    expect(told.filter((text) => words.test(text.replaceAll('\n', ' ')))).toHaveLength(1);
  });

  it('stands in the look of what waits until it is mended', async () => {
    expect(await waiting()).toContain('Messages that could not be sent: 1');
    expect(await waiting()).toMatch(/To Discord, .*“Send Messages”/u);
    await mend();
    expect(await waiting()).not.toContain('could not be sent');
  });

  it('is taken back where staff were told once it speaks again, and nothing that waited is lost', async () => {
    await mend();
    expect(await fed()).toEqual([]);
    expect(school.standIn.room(staffRoom).map(seenText).join()).not.toContain('could not be sent');
    expect(school.standIn.room(talkRoom).map(seenText).join()).toContain('Limpets');
  });

  it('is nothing that pupils read', async () => {
    const { house, classId, people } = school;
    const items = await house.feed({ classId, person: people.Wren }, 0);
    expect(JSON.stringify(items)).not.toContain('could not be sent');
    const { messages } = await house.look({ classId, person: people.Wren }, 'for-you', {});
    expect(JSON.stringify(messages)).not.toContain('could not be sent');
  });
});
