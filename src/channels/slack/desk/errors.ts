import type { ViewOutput, ViewResponseAction } from '@slack/bolt';

/** An error that stands in the form, at its first field. */
export function errors(view: ViewOutput, text: string): ViewResponseAction {
  const first = view.blocks.find(({ type }) => type === 'input')?.block_id ?? '';
  return { response_action: 'errors', errors: { [first]: text } };
}
