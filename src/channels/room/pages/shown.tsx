import type { Reply } from '../../../../shared/channel.js';
import { Messages } from './region.js';
import type { RenderContext } from '../render/context.js';
import { plain } from '../render/plain.js';
import { say, type RoomWord } from '../words.js';

/** Why something was not done, on top of the page, with the way to what was typed. */
export function Trouble({
  words,
  hasForm,
  title = 'look at this',
}: {
  readonly words: readonly string[];
  readonly hasForm: boolean;
  readonly title?: RoomWord;
}) {
  return (
    <div class="trouble" role="alert" tabindex={-1} id="trouble">
      <h2>{say(title)}</h2>
      {words.map((one) => (
        <p>{plain(one)}</p>
      ))}
      {hasForm ? (
        <p>
          <a href="#kept">{say('go to form')}</a>
        </p>
      ) : null}
    </div>
  );
}

/** What was typed and has no form any more on the page, so that nothing is lost. */
export function Leftover({ texts }: { readonly texts: readonly string[] }) {
  return (
    <div class="leftover" id="kept">
      <label for="leftover-text">{say('your words')}</label>
      <textarea id="leftover-text" rows={5} readonly dir="auto">
        {`\n${texts.map(plain).join('\n\n')}`}
      </textarea>
    </div>
  );
}

/** The answer to what was just done. */
export function Answer({ reply, context }: { readonly reply: Reply; readonly context: RenderContext }) {
  return (
    <section class="answer" id="answer" tabindex={-1} aria-label={say('answer')}>
      {reply.messages.length === 0 ? (
        <p>{say('done')}</p>
      ) : (
        <Messages messages={reply.messages} context={context} />
      )}
    </section>
  );
}

/** Whether an answer asks for something more, so that a pupil sees it alone. */
export function asksMore(reply: Reply): boolean {
  return reply.messages.some(({ blocks }) =>
    blocks.some(({ type }) => type === 'choices' || type === 'form'),
  );
}
