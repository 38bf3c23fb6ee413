import { beforeEach, describe, expect, it } from 'vitest';
import { settingNames } from '../../shared/moves.js';
import { settingDefaults, readSetting } from '../../src/practice/settings.js';
import { settingValue } from '../../src/looks/setting-values.js';
import type { Settings } from '../../src/practice/state.js';
import { aClass, aGroup, finch, group, owl, plover, withPosts, wren } from '../progress/a-class.js';
import { harbour } from '../progress/a-shelf.js';
import { alarm, allWords, asked, gone, looked, now, ownWords, seen, state } from './a-rich-class.js';

beforeEach(() => {
  looked.length = 0;
});

describe('The words of an alarm', () => {
  it('are given to the safeguarding lead, and the look is on record first', async () => {
    const messages = await seen('safeguarding lead', 'alarm-words', { alarm });
    expect(allWords(messages)).toContain('the exact words');
    expect(looked).toEqual([{ ref: 'c-1/3/0', by: owl, at: now }]);
    expect(ownWords(messages)).toContain('Owl, on day 3');
  });

  it('are offered to nobody else', async () => {
    expect(ownWords(await seen('tutor', 'alarms'))).not.toContain('See the exact words (recorded)');
    expect(ownWords(await seen('safeguarding lead', 'alarms'))).toContain('See the exact words (recorded)');
    expect(looked).toEqual([]);
  });
});

describe('The digest as a look', () => {
  it('is one message a group, with measures, quotations with their reasons, and taps to overrule', async () => {
    const messages = await seen('tutor', 'digest');
    expect(messages.map(({ summary }) => summary)).toEqual(['Digest of Sandpipers, on day 3']);
    const blocks = messages[0]?.blocks ?? [];
    const measure = blocks.find((block) => block.type === 'measure' && block.of === 5);
    expect(measure).toEqual({
      type: 'measure',
      label: 'summing up',
      value: 0,
      of: 5,
      words: 'met 0 of 5 (0–46 %): weak, please confirm',
    });
    const quoted = blocks.findIndex(
      (block) => block.type === 'quotation' && block.text === 'sum-up number 5 of mine',
    );
    expect(blocks[quoted + 1]).toEqual({ type: 'prose', prose: [{ text: 'Level 1 by the judge.' }] });
    const taps = blocks[quoted + 2];
    expect(taps?.type === 'choices' && taps.choices.map(({ label }) => label)).toEqual([
      'Level 0',
      'Level 1',
      'Level 2',
      'Level 3',
      'Look closer',
    ]);
  });

  it('names what is held and who has not led', async () => {
    const words = ownWords(await seen('tutor', 'digest'));
    expect(words).toContain('Has not led yet: Plover');
    expect(words).toContain('Held for an adult: 4');
  });
});

describe('One post', () => {
  it('offers the judged level as agreement', async () => {
    const words = ownWords(await seen('tutor', 'post', { post: asked.id }));
    expect(words).toContain('Judged: level 2, inferential (80 % sure).');
    expect(words).toContain('I agree: level 2');
    expect(words).toContain('Level 1');
  });

  it('says when its words are gone', async () => {
    expect(allWords(await seen('tutor', 'post', { post: gone.id }))).toContain('The words are gone');
  });
});

describe('A passage', () => {
  it('is previewed with level and caution, each segment with forms for its gist and spare question', async () => {
    const [message] = await seen('teacher', 'preview', { passage: harbour });
    const words = ownWords([message!]);
    expect(words).toContain(
      'Grade about 4.2 (Flesch-Kincaid); the formulas range from 3.1 to 5.0. Reading ease 82.',
    );
    expect(words.some((line) => line.includes('can differ by three grades'))).toBe(true);
    expect(words).toContain('mooring – definition: “a ring set in stone”');
    const forms = message?.blocks.filter((block) => block.type === 'form') ?? [];
    expect(forms.map(({ action }) => ({ name: action.name, stop: action.args['stop'] }))).toEqual(
      ['0', '1', '2'].flatMap((stop) => [
        { name: 'write-gist', stop },
        { name: 'write-spare-question', stop },
      ]),
    );
  });

  it('is read before it is put on the shelf, and the form carries the text on', async () => {
    const [message] = await seen('teacher', 'preview-text', { text: 'A text.', grade: '4' });
    const form = message?.blocks.find((block) => block.type === 'form');
    expect(form?.type === 'form' && form.action.name).toBe('add-passage');
    expect(allWords([message!])).toContain('"value":"A text."');
  });
});

describe('Settings', () => {
  it('are shown as lines that read back into the same settings', () => {
    const settings: Settings = {
      moderation: 'hold what is doubtful',
      sessions: [
        { weekday: 2, minute: 600 },
        { weekday: 4, minute: 845 },
      ],
      schoolDays: [1, 2, 4],
      opensMinute: 480,
      closesMinute: 1080,
      holidays: ['2026-12-24', '2026-12-25'],
      register: '11-14',
      zone: 'Europe/Paris',
      order: ['predict', 'sum-up', 'clarify', 'question'],
      alarmText: 'Somebody will talk with you.',
      alarmNumber: '12 34',
      termEnds: '2026-12-18',
      wordsKept: 7,
      longestKept: 90,
      yearEnds: '06-30',
      alarmWordsKept: 2,
      idleMinutes: 45,
      alarmMinutes: 20,
      pictureSecret: true,
      staffPassphrase: true,
      questionLine: 'follow the tutor',
    };
    for (const whole of [settings, settingDefaults]) {
      const read = settingNames.reduce(
        (before, name) => readSetting(before, name, settingValue(whole, name)),
        settingDefaults,
      );
      expect(read).toEqual(whole);
    }
  });

  it('have a form each', async () => {
    const [message] = await seen('tutor', 'settings');
    const set = message?.blocks.flatMap((block) =>
      block.type === 'form' && block.action.name === 'change-setting' ? [block.action.args['setting']] : [],
    );
    expect(set).toEqual([...settingNames]);
  });
});

describe('The roster', () => {
  it('says who has a slip', async () => {
    const words = ownWords(await seen('tutor', 'roster'));
    expect(words).toContain('Wren: pupil · Sandpipers · 8-10 · slip good until on day 4 · not here yet');
    expect(words).toContain('Finch: pupil · Sandpipers · 8-10 · no slip · not here yet');
  });

  it('offers erasing to the administrator alone', async () => {
    const erase = 'Erase all that is held on somebody, for good';
    expect(ownWords(await seen('administrator', 'roster'))).toContain(erase);
    expect(ownWords(await seen('teacher', 'roster'))).not.toContain(erase);
  });

  it('offers a split to a group of seven', async () => {
    const base = aClass();
    const more = Object.fromEntries(
      ['a', 'b', 'c', 'd'].map((id) => [`p-${id}`, { ...base.people[wren]!, id: `p-${id}` as typeof wren }]),
    );
    const large = { ...base, people: { ...base.people, ...more } };
    expect(ownWords(await seen('tutor', 'roster', {}, large))).toContain('Split Sandpipers');
    expect(ownWords(await seen('tutor', 'roster', {}, base))).not.toContain('Split Sandpipers');
  });
});

describe('Where the groups are', () => {
  it('says to staff who has done what, and offers what can be done in that phase', async () => {
    const [message] = await seen('teacher', 'where-are-we');
    const words = ownWords([message!]);
    expect(words).toContain('Segment 3 is open until on day 4. Plover leads.');
    expect(words).toContain('Plover: question, sum-up');
    expect(words).toContain('Close this segment');
    const none = { ...state, groups: { [group]: aGroup({ practice: { phase: 'none' } }) } };
    const before = ownWords(await seen('teacher', 'where-are-we', {}, none));
    expect(before).toContain('Start');
    expect(before).not.toContain('Close this segment');
  });
});

describe('At the table', () => {
  it('draws the next leader by the lot, never the one who led last', async () => {
    expect(ownWords(await seen('tutor', 'at-the-table'))).toContain('Next by lot: Plover.');
    const led = { ...state, groups: { [group]: aGroup({ lastLeader: plover, lot: [plover, finch, wren] }) } };
    expect(ownWords(await seen('tutor', 'at-the-table', {}, led))).toContain('Next by lot: Finch.');
  });

  it('shows strong posts and keeps weak ones back', async () => {
    const text = allWords(await seen('tutor', 'at-the-table'));
    expect(text).toContain('The day ends quietly.');
    expect(text).not.toContain('number 5 of mine');
  });
});

describe('Help', () => {
  it('lists to each role the slash commands that it may use', async () => {
    const tutor = ownWords(await seen('tutor', 'help'));
    const pupil = ownWords(await seen('pupil', 'help'));
    expect(tutor.some((line) => line.startsWith('/passages set passage:… group:…'))).toBe(true);
    expect(pupil.some((line) => line.startsWith('/words show'))).toBe(true);
    expect(pupil.some((line) => line.startsWith('/passages'))).toBe(false);
  });
});

describe('An empty class', () => {
  it('can be looked at everywhere', async () => {
    const empty = { ...withPosts([]), groups: {}, shelf: {} };
    for (const name of [
      'waiting',
      'passages',
      'digest',
      'words',
      'roster',
      'settings',
      'at-the-table',
    ] as const) {
      await expect(seen('tutor', name, {}, empty)).resolves.toBeDefined();
    }
    expect(finch).toBeDefined();
  });
});
