import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { asId } from '../../shared/ids.js';
import { blankReply, repeats, unnamed, withoutNames } from '../../src/store/blanking.js';
import { textFinder } from '../../src/store/find-texts.js';
import { messageOf } from '../support/commits.js';

describe('A nickname', () => {
  it.each([
    ['goes as a whole word', 'Wren leads, says Wren.', 'somebody leads, says somebody.'],
    ['goes with its ending', "Wren's turn", "somebody's turn"],
    ['stays inside another word', 'Wrench and McWren', 'Wrench and McWren'],
    ['stays in another case', 'a wren sings', 'a wren sings'],
    ['goes between marks', '(Wren)…“Wren”', '(somebody)…“somebody”'],
  ])('%s', (_, text, expected) => expect(withoutNames(text, ['Wren'])).toBe(expected));

  it.each([
    ['C++', 'C++ and C', 'somebody and C'],
    ['Élan', 'Élan, Élane', 'somebody, Élane'],
    ['A.B', 'A.B AxB', 'somebody AxB'],
    ['🦆', 'to 🦆!', 'to somebody!'],
  ])('of any letters (%s) goes', (name, text, expected) => expect(withoutNames(text, [name])).toBe(expected));

  it('goes before a shorter one that begins it', () => {
    expect(withoutNames('Wren Two and Wren', ['Wren', 'Wren Two'])).toBe('somebody and somebody');
  });

  it('that is also a word of our own leaves the message’s frame alone', () => {
    const action = { kind: 'move', name: 'person', args: { text: 'person' } } as const;
    const page = (name: string) =>
      messageOf({ to: 'person', person: asId('person') }, `${name} is here`, [
        { type: 'prose', prose: [{ text: name }] },
        { type: 'choices', prompt: null, choices: [{ label: `to ${name}`, action }] },
      ]);
    expect(unnamed(page('person'), ['person', 'prose', 'move', 'choices'])).toEqual(page('somebody'));
  });
});

describe('A text is found', () => {
  const texts = ['The eel swims home', 'dam', '🦆🦆', 'one  two\nthree', '  '];
  it.each([
    ['where it is all', 'The eel swims home', true],
    ['inside another', 'So far: “The eel swims home.”', true],
    ['with other blanks', 'one two   three', true],
    ['not in part', 'The eel swims', false],
    ['as a single word only where it is all', 'dam', true],
    ['so not among the passage’s words', 'They built a dam there', false],
    ['without any letter', '🦆🦆', true],
    ['never when it is blank', '', false],
  ])('%s', (_, string, expected) => expect(textFinder(texts)(string)).toBe(expected));

  it('whatever its letters and whatever stands around it, when it has two words', () => {
    const word = fc.string({ minLength: 1, maxLength: 8 }).filter((text) => /^[\p{L}\p{N}]+$/u.test(text));
    const around = fc.string({ maxLength: 12 });
    fc.assert(
      fc.property(word, word, around, around, (first, second, before, after) => {
        const text = `${first}, ${second}!`;
        expect(textFinder([text])(`${before} ${text} ${after}`)).toBe(true);
      }),
    );
  });

  it('in a message however deep, or by whom it quotes', () => {
    const quoted = messageOf({ to: 'staff', group: null }, '', [
      { type: 'quotation', text: 'part', by: 'Wren' },
    ]);
    expect(repeats(quoted, () => false, ['Wren'])).toBe(true);
    expect(repeats(quoted, () => false, ['Lark'])).toBe(false);
    expect(repeats({ deep: [{ deeper: 'The eel swims home' }] }, textFinder(texts), [])).toBe(true);
  });
});

describe('A blanked reply', () => {
  it.each([
    ['{"done":true,"messages":[{"summary":"words"}]}', true],
    ['{"done":false,"messages":[]}', false],
    ['no JSON', false],
  ])('of %s says only whether it was done', (stored, done) => {
    expect(JSON.parse(blankReply(stored))).toEqual({ done, messages: [] });
  });
});
