import type { RenderContext } from '../render/context.js';
import { Hidden } from '../render/hidden.js';
import { say } from '../words.js';

/** "Tell a grown-up": on every pupil's page, opened in place so that nothing being typed is lost, sent with or without words. */
export function GrownUp({
  context,
  action = '/move/tell-grown-up',
  args = {},
}: {
  readonly context: RenderContext;
  /** Where it is sent; at the door another way than inside. */
  readonly action?: string;
  readonly args?: Readonly<Record<string, string>>;
}) {
  const id = context.newName();
  return (
    <details class="grown-up">
      <summary>{say('grown-up')}</summary>
      <form method="post" action={action} class="form" aria-label={say('grown-up')}>
        <p>{say('grown-up words')}</p>
        <Hidden context={context} args={args} />
        <div class="field">
          <label for={id}>{say('grown-up label')}</label>
          <textarea
            id={id}
            name="text"
            rows={3}
            maxlength={5000}
            autocomplete="off"
            spellcheck={false}
            dir="auto"
          >
            {'\n'}
          </textarea>
        </div>
        <button type="submit" class="button">
          {say('grown-up send')}
        </button>
      </form>
    </details>
  );
}
