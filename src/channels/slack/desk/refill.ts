import type { ViewOutput } from '@slack/bolt';
import type { KnownBlock, ModalView } from '@slack/types';
import { sections, plainText } from '../render/rich.js';
import { say } from '../words.js';
import type { ViewState } from './state.js';

type Given = NonNullable<ViewState[string]>[string];

/** What was filled in, as the element's own beginning. */
function filled(
  element: Readonly<Record<string, unknown>>,
  given: Given | undefined,
): Record<string, unknown> {
  if (!given) return element;
  if (typeof given.value === 'string' && given.value !== '')
    return { ...element, initial_value: given.value };
  if (given.selected_option) return { ...element, initial_option: given.selected_option };
  if (given.selected_options && given.selected_options.length > 0) {
    return { ...element, initial_options: given.selected_options };
  }
  return element;
}

/** A form as it was submitted, with what was filled in and a line above it that says why it comes back. */
export function refilled(view: ViewOutput, why: string): ModalView {
  const state = view.state.values as ViewState;
  const blocks = (view.blocks as unknown as Record<string, unknown>[]).map((block) => {
    if (block['type'] !== 'input') return block;
    const element = block['element'] as Readonly<Record<string, unknown>>;
    const given = state[String(block['block_id'])]?.[String(element['action_id'])];
    return { ...block, element: filled(element, given) };
  });
  return {
    type: 'modal',
    callback_id: view.callback_id,
    title: plainText(say('title')),
    close: plainText(say('close')),
    ...(view.submit ? { submit: plainText(view.submit.text) } : {}),
    private_metadata: view.private_metadata,
    blocks: [...sections([{ text: why, strong: true }]), ...(blocks as unknown as KnownBlock[])].slice(
      0,
      100,
    ),
  };
}
