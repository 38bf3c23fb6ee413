import type { RenderContext } from '../render/context.js';
import { Hidden } from '../render/hidden.js';
import { plain } from '../render/plain.js';
import { say, type RoomWord } from '../words.js';

function OwnDevice({ ticked }: { readonly ticked: boolean }) {
  return (
    <label class="pick">
      <input type="checkbox" name="own" value="yes" checked={ticked} />
      <span>{say('own device')}</span>
    </label>
  );
}

/** The form for a code from a slip. */
export function CodeForm({
  context,
  note,
  code,
}: {
  readonly context: RenderContext;
  /** Why somebody stands outside. */
  readonly note: RoomWord | null;
  /** What was typed before a refusal. */
  readonly code: string;
}) {
  const id = context.newName();
  return (
    <>
      {note === null ? null : <p class="notice">{say(note)}</p>}
      <form method="post" action="/in" class="form" aria-label={say('come in title')} id="kept">
        <Hidden context={context} args={{}} />
        <div class="field">
          <label for={id}>{say('code label')}</label>
          <p class="hint" id={`${id}-hint`}>
            {say('code hint')}
          </p>
          <input
            type="text"
            id={id}
            name="code"
            class="code-field"
            value={plain(code)}
            maxlength={100}
            required
            autocomplete="off"
            autocapitalize="characters"
            spellcheck={false}
            aria-describedby={`${id}-hint`}
          />
        </div>
        <OwnDevice ticked={false} />
        <button type="submit" class="button main">
          {say('come in')}
        </button>
      </form>
    </>
  );
}

/** The page behind a slip's link: one button, so that whatever only previews links opens nothing. */
export function LinkForm({ context, secret }: { readonly context: RenderContext; readonly secret: string }) {
  return (
    <form method="post" action="/in" class="form" aria-label={say('come in title')} id="kept">
      <p>{say('link words')}</p>
      <Hidden context={context} args={{ code: secret }} />
      <OwnDevice ticked={false} />
      <button type="submit" class="button main">
        {say('come in')}
      </button>
    </form>
  );
}
