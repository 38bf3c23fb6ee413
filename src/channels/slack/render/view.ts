import type { KnownBlock, ModalView } from '@slack/types';
import type { Message } from '../../../../shared/messages.js';
import { limits } from '../limits.js';
import { plain } from '../plain.js';
import { packMemo, type FormBlock, type LookRef, type ViewMemo } from '../press-code.js';
import { say } from '../words.js';
import { formsOf, unitsOf } from './blocks.js';
import { renderContext } from './context.js';
import { pagesOf, textSize } from './pages.js';
import { nextPage } from './payload.js';
import { plainText, sections } from './rich.js';

function frame(blocks: readonly KnownBlock[], memo: ViewMemo, submit: string | null): ModalView {
  const label = submit === null || plain(submit).trim() === '' ? say('send') : plain(submit);
  const metadata = packMemo(memo, limits.metadata);
  const shown = metadata === null ? sections([{ text: say('too long to carry', { label }) }]) : blocks;
  return {
    type: 'modal',
    callback_id: 'page',
    title: plainText(say('title')),
    close: plainText(say('close')),
    private_metadata: metadata ?? '',
    blocks: shown.length > 0 ? [...shown] : [...sections([{ text: say('nothing here') }])],
    ...(submit === null || metadata === null
      ? {}
      : { submit: plainText(label.length <= limits.viewButton ? label : say('send')) }),
  };
}

/** A few words in a view. */
export function wordsView(text: string): ModalView {
  return frame(sections([{ text }]), { send: null }, null);
}

/** A form alone, open. */
export function formView(form: FormBlock, memo?: ViewMemo): ModalView {
  const message: Message = { audience: { to: 'staff', group: null }, summary: form.title, blocks: [form] };
  const units = unitsOf([message], renderContext(null, form));
  return frame(
    units.map(({ block }) => block),
    memo ?? { send: { by: 'form', action: form.action } },
    form.submit,
  );
}

/**
 * An answer as a view: its main form stands open in it and is sent by the view's own button; other forms are buttons.
 * What is longer than a view goes on at the next page; the open form stands on the first one.
 */
export function answerView(messages: readonly Message[], look: LookRef | null, page = 0): ModalView {
  const open = formsOf(messages).find(({ main, fields }) => main && fields.length > 0) ?? null;
  const context = renderContext(look, open);
  const units = unitsOf(messages, context);
  const inputs = units.map(({ block }) => block).filter(({ type }) => type === 'input');
  const whole = {
    blocks: limits.blocksOfView - 2,
    text: limits.allText - 500,
  };
  const all = pagesOf(units, whole);
  const pages =
    all.length <= 1
      ? all
      : pagesOf(
          units.filter(({ block }) => block.type !== 'input'),
          { blocks: whole.blocks - inputs.length, text: Math.max(3000, whole.text - textSize(inputs)) },
        ).map((one, at) => (at === 0 ? [...one, ...inputs] : one));
  const shown = pages[Math.min(page, pages.length - 1)] ?? [];
  const withForm = open !== null && shown.some(({ type }) => type === 'input');
  return frame(
    [...shown, ...nextPage(look, page, pages.length, context.newName)],
    { send: withForm ? { by: 'form', action: open.action } : null },
    withForm ? open.submit : null,
  );
}
