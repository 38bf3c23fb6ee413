import type { Action, Block, Message } from '../../../../shared/messages.js';

/** Looks that the head of every pupil's page leads to. */
const inTheHead: readonly string[] = ['turn', 'for-you', 'where-are-we', 'words'];

function stands(action: Action): boolean {
  if (action.kind === 'look') return inTheHead.includes(action.name) && Object.keys(action.args).length === 0;
  return action.name === 'tell-grown-up';
}

function thin(block: Block): readonly Block[] {
  if (block.type === 'form') return stands(block.action) ? [] : [block];
  if (block.type !== 'choices') return [block];
  const choices = block.choices.filter(({ action }) => !stands(action));
  return choices.length === 0 ? [] : [{ ...block, choices }];
}

/** A message without what stands on every pupil's page anyway: ways to other pages, and "Tell a grown-up". */
export function withoutStanding(message: Message): Message {
  return { ...message, blocks: message.blocks.flatMap(thin) };
}

/** The heading that opens the one message of a look, to head the page, and the message without it. */
export function titled(messages: readonly Message[]): {
  readonly title: string | null;
  readonly messages: readonly Message[];
} {
  const [only, ...others] = messages;
  const [first, ...rest] = only?.blocks ?? [];
  if (only === undefined || others.length > 0 || first?.type !== 'heading') return { title: null, messages };
  return { title: first.text, messages: [{ ...only, blocks: rest }] };
}

/** The moves that a message offers, each as one text. */
export function movesIn(message: Message): readonly string[] {
  const actions = message.blocks.flatMap((block) => {
    if (block.type === 'form') return [block.action];
    return block.type === 'choices' ? block.choices.map(({ action }) => action) : [];
  });
  return actions.filter(({ kind }) => kind === 'move').map(({ name, args }) => JSON.stringify([name, args]));
}
