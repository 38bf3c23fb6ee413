/** A picked or typed value as Slack sends it. */
interface Given {
  readonly type?: string;
  readonly value?: string | null;
  readonly selected_option?: { readonly value?: string } | null;
  readonly selected_options?: readonly { readonly value?: string }[] | null;
  readonly files?: readonly SlackFile[] | null;
}

/** A file that somebody chose in a form. */
export interface SlackFile {
  readonly id: string;
  readonly size?: number;
  readonly url_private?: string;
  readonly url_private_download?: string;
}

export type ViewState = Readonly<Record<string, Readonly<Record<string, Given>>>>;

function textOf({ value, selected_option: one, selected_options: many }: Given): string {
  if (many) return many.map((option) => option.value ?? '').join(',');
  return one?.value ?? value ?? '';
}

/** The fields of a submitted form by name, and the files of its file fields. The first of two fields of one name that isn't empty counts. */
export function readState(state: ViewState): {
  readonly fields: Readonly<Record<string, string>>;
  readonly files: Readonly<Record<string, SlackFile>>;
} {
  const fields: Record<string, string> = {};
  const files: Record<string, SlackFile> = {};
  for (const [block, elements] of Object.entries(state)) {
    const name = /^f\d+:(.+)$/su.exec(block)?.[1];
    if (name === undefined) continue;
    for (const given of Object.values(elements)) {
      const [file] = given.files ?? [];
      if (file) files[name] ??= file;
      const text = textOf(given);
      if (text !== '') fields[name] ??= text;
    }
  }
  return { fields, files };
}
