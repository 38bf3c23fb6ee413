import type { RenderContext } from './context.js';

/** The fields that every form carries: the token, a fresh update id, the page to come back to, and the action's arguments. */
export function Hidden({
  context,
  args,
}: {
  readonly context: RenderContext;
  readonly args: Readonly<Record<string, string>>;
}) {
  return (
    <>
      <input type="hidden" name="_token" value={context.token} />
      <input type="hidden" name="_update" value={context.newId()} />
      <input type="hidden" name="_back" value={context.back} />
      {Object.entries(args).map(([name, value]) => (
        <input type="hidden" name={name} value={value} />
      ))}
    </>
  );
}
