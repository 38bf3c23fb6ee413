import { pageLooks, type PageLook } from '../page-look.js';
import { say, type RoomWord } from '../words.js';
import type { RenderContext } from '../render/context.js';
import { Hidden } from '../render/hidden.js';

type Name = keyof PageLook;
const questions: Readonly<Record<Name, RoomWord>> = {
  size: 'text size',
  spacing: 'spacing',
  ground: 'ground',
};
const labels: { readonly [N in Name]: Readonly<Record<PageLook[N], RoomWord>> } = {
  size: { normal: 'size normal', large: 'size large', largest: 'size largest' },
  spacing: { normal: 'spacing normal', wide: 'spacing wide' },
  ground: { sand: 'ground sand', foam: 'ground foam', night: 'ground night' },
};

/** The form in which a reader sets letters, room and colour. */
export function HowItLooks({ look, context }: { readonly look: PageLook; readonly context: RenderContext }) {
  return (
    <form method="post" action="/page" class="form" aria-label={say('how it looks')}>
      <Hidden context={context} args={{}} />
      {(Object.keys(pageLooks) as Name[]).map((name) => (
        <fieldset class="field">
          <legend>{say(questions[name])}</legend>
          {pageLooks[name].map((choice) => (
            <label class="pick">
              <input type="radio" name={name} value={choice} checked={look[name] === choice} />
              <span>{say((labels[name] as Readonly<Record<string, RoomWord>>)[choice] ?? 'done')}</span>
            </label>
          ))}
        </fieldset>
      ))}
      <button type="submit" class="button main">
        {say('show like this')}
      </button>
    </form>
  );
}
