import type { Message } from '../../../../shared/messages.js';
import type { Instant } from '../../../../shared/time.js';
import { BlockView } from './blocks.js';
import type { RenderContext } from './context.js';
import { plain } from './plain.js';

/** Whether a message is a slip: it holds a code for a camera, and stands on paper by itself. */
function isSlip({ blocks }: Message): boolean {
  return blocks.some((block) => block.type === 'picture' && block.picture.kind === 'code');
}

/** A message as an article that a screen reader names by its summary; `at` is shown in the device's own zone by script. */
export function MessageView({
  message,
  context,
  seq,
  at,
}: {
  readonly message: Message;
  readonly context: RenderContext;
  readonly seq?: number;
  readonly at?: Instant;
}) {
  const mark = seq === undefined ? {} : { 'data-seq': String(seq) };
  return (
    <article
      class={`message to-${message.audience.to}${isSlip(message) ? ' slip' : ''}`}
      aria-label={plain(message.summary)}
      {...mark}
    >
      {message.blocks.map((block) => (
        <BlockView block={block} context={context} />
      ))}
      {at === undefined ? null : (
        <p class="when">
          <time datetime={new Date(at).toISOString()} />
        </p>
      )}
    </article>
  );
}
