import { describe, expect, it } from 'vitest';
import { mayLook, readLook, type LookName } from '../../shared/looks.js';
import type { Message } from '../../shared/messages.js';
import { mayMove, readMove, type MoveName } from '../../shared/moves.js';
import { roles, type Role } from '../../shared/roles.js';
import { sentencesIn, wordsIn } from '../coaching/reading-words.js';
import { finch, plover, wren } from '../progress/a-class.js';
import { allWords, ownWords, people, sampleArgs, seen, state } from './a-rich-class.js';
import { allPressed } from './pressing.js';

const names = Object.keys(mayLook) as LookName[];
const table = names.flatMap((name) =>
  roles.map((role) => ({ name, role, may: mayLook[name].includes(role) })),
);
const doings = ['predict', 'question', 'answer', 'clarify', 'sum-up', 'add'];

function mustWork(role: Role, messages: readonly Message[]): number {
  const all = allPressed(messages);
  for (const { label, action, fields } of all) {
    const raw = { ...fields, ...action.args };
    if (action.kind === 'move') {
      expect(readMove(action.name, raw).type, label).toBe(action.name);
      expect(mayMove[action.name as MoveName], `${role} presses ${label}`).toContain(role);
    } else {
      expect(readLook(action.name, raw).type, label).toBe(action.name);
      expect(mayLook[action.name as LookName], `${role} presses ${label}`).toContain(role);
    }
  }
  return all.length;
}

describe('Who may look at what', () => {
  it.each(table)('$role, $name: $may', async ({ name, role, may }) => {
    const look = seen(role, name);
    if (may) expect(await look).not.toEqual([]);
    else await expect(look).rejects.toMatchObject({ code: 'not allowed' });
  });

  it('nobody who was taken off the roster', async () => {
    const gone = { ...state, people: { ...state.people, [wren]: { ...state.people[wren]!, removed: true } } };
    await expect(seen('pupil', 'turn', {}, gone)).rejects.toMatchObject({ code: 'not allowed' });
  });

  it('what is not there is not found', async () => {
    await expect(seen('tutor', 'post', { post: 'nothing' })).rejects.toMatchObject({ code: 'not found' });
    await expect(seen('tutor', 'digest', { group: 'nothing' })).rejects.toMatchObject({ code: 'not found' });
  });
});

describe('Everything that can be pressed', () => {
  it.each(table.filter(({ may }) => may))('works for the $role in $name', async ({ name, role }) => {
    mustWork(role, await seen(role, name));
  });

  it.each(doings)('works in the form of %s', async (doing) => {
    expect(mustWork('pupil', await seen('pupil', 'step', { do: doing }))).toBeGreaterThan(0);
  });

  it('works on the page of every pupil and on every post', async () => {
    for (const pupil of [wren, finch, plover]) mustWork('pupil', await seen(pupil, 'turn', {}));
    for (const post of Object.keys(state.posts)) mustWork('tutor', await seen('tutor', 'post', { post }));
  });
});

const shown = [
  ...table.filter(({ may }) => may).map(({ name, role }) => ({ name, role, args: sampleArgs[name] ?? {} })),
  ...doings.map((doing) => ({ name: 'step' as const, role: 'pupil' as const, args: { do: doing } })),
];

describe('Every message', () => {
  it.each(shown)(
    '$name for the $role has one main thing at most, a summary, a heading',
    async ({ name, role, args }) => {
      for (const message of await seen(role, name, args)) {
        expect(message.audience).toEqual({ to: 'person', person: people[role] });
        expect(message.summary).not.toBe('');
        expect(message.blocks[0]?.type).toBe('heading');
        const mains = message.blocks.flatMap((block): readonly unknown[] => {
          if (block.type === 'choices') return block.choices.filter(({ main }) => main);
          return block.type === 'form' && block.main ? [block] : [];
        });
        expect(mains.length).toBeLessThanOrEqual(1);
        expect(allWords([message])).not.toMatch(/undefined|NaN|\[object/u);
      }
    },
  );
});

/** What is never said to a pupil. */
const never = /\b(?:copied|copy|wrong|literal|inferential|levels?|segments?|weak|score|fail(?:ed)?)\b/iu;

describe('What children read', () => {
  it.each(shown.filter(({ role, name }) => role === 'pupil' && name !== 'help'))(
    '$name $args.do: short sentences, and no word of the trade that judges',
    async ({ name, args }) => {
      for (const pupil of [wren, finch, plover]) {
        for (const words of ownWords(await seen(pupil, name, args))) {
          expect(words).not.toMatch(never);
          for (const sentence of sentencesIn(words))
            expect(wordsIn(sentence).length, sentence).toBeLessThanOrEqual(12);
        }
      }
    },
  );
});

describe('The words of an alarm', () => {
  it.each(table.filter(({ may, name }) => may && name !== 'alarm-words'))(
    'do not stand in $name for the $role',
    async ({ name, role }) => {
      expect(allWords(await seen(role, name))).not.toMatch(
        /nobody but owl|exact words that|the exact words"/u,
      );
    },
  );
});
