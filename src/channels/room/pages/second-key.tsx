import type { Asked } from '../../../../shared/channel.js';
import { picturePath, type Assets } from '../assets.js';
import type { KeyPicture } from '../options.js';
import type { RenderContext } from '../render/context.js';
import { Hidden } from '../render/hidden.js';
import { say, type RoomWord } from '../words.js';
import { GrownUp } from './grown-up.js';

/** The three places of a key of pictures, by the form's field. */
export const pictureFields = ['first', 'second', 'third'] as const;

const legends: Readonly<Record<(typeof pictureFields)[number], RoomWord>> = {
  first: 'picture first',
  second: 'picture second',
  third: 'picture third',
};

interface Drawn {
  readonly pictures: readonly KeyPicture[];
  readonly assets: Assets;
}

/** Three rows of drawings, each a group of radio buttons with its word, so that keyboard and screen reader pick as fingers do. */
export function PictureFields({ pictures, assets }: Drawn) {
  return (
    <>
      {pictureFields.map((field) => (
        <fieldset class="field">
          <legend>{say(legends[field])}</legend>
          <div class="drawings">
            {pictures.map(({ name }) => (
              <label class="drawing">
                <input type="radio" name={field} value={name} required />
                <span class="drawn">
                  <img src={assets.href(picturePath(name)) ?? ''} alt="" width={56} height={56} />
                  <span>{name}</span>
                </span>
              </label>
            ))}
          </div>
        </fieldset>
      ))}
    </>
  );
}

/** What the door asks for beside the code, which goes along unseen. */
export function SecondKeyForm({
  asked,
  code,
  own,
  context,
  drawn,
}: {
  readonly asked: Asked;
  readonly code: string;
  readonly own: boolean;
  readonly context: RenderContext;
  readonly drawn: Drawn;
}) {
  const { asks, choose } = asked;
  const args = { code, ...(own ? { own: 'yes' } : {}), asked: asks };
  const title = say(secondKeyTitle(asked));
  if (asks === 'pictures') {
    return (
      <>
        <GrownUp context={context} action="/in/grown-up" args={{ code, ...(own ? { own: 'yes' } : {}) }} />
        <form method="post" action="/in" class="form" aria-label={title} id="kept">
          <Hidden context={context} args={args} />
          <p>{say(choose ? 'pictures pick hint' : 'pictures show hint')}</p>
          {choose ? null : <p>{say('pictures forgot')}</p>}
          <PictureFields {...drawn} />
          <button type="submit" class="button main">
            {say(choose ? 'pictures keep' : 'come in')}
          </button>
        </form>
      </>
    );
  }
  const id = context.newName();
  return (
    <form method="post" action="/in" class="form" aria-label={title} id="kept">
      <Hidden context={context} args={args} />
      <div class="field">
        <label for={id}>{say(choose ? 'passphrase new' : 'passphrase label')}</label>
        <p class="hint" id={`${id}-hint`}>
          {say('passphrase hint')}
        </p>
        <input
          type="password"
          id={id}
          name="passphrase"
          required
          maxlength={200}
          autocomplete={choose ? 'new-password' : 'current-password'}
          aria-describedby={`${id}-hint`}
        />
      </div>
      <button type="submit" class="button main">
        {say('come in')}
      </button>
    </form>
  );
}

/** A pupil's own page for their pictures: why, whether there are any, and the drawings. */
export function MyPictures({
  has,
  context,
  drawn,
}: {
  readonly has: boolean;
  readonly context: RenderContext;
  readonly drawn: Drawn;
}) {
  return (
    <>
      <p>{say(has ? 'pictures have' : 'pictures why')}</p>
      <form method="post" action="/pictures" class="form" aria-label={say('pictures mine')}>
        <Hidden context={context} args={{}} />
        <p>{say('pictures pick hint')}</p>
        <PictureFields {...drawn} />
        <button type="submit" class="button main">
          {say('pictures keep')}
        </button>
      </form>
    </>
  );
}

/** How the page is headed that asks for a second key. */
export function secondKeyTitle({ asks, choose }: Asked): RoomWord {
  if (asks === 'passphrase') return 'passphrase title';
  return choose ? 'pictures pick' : 'pictures show';
}
