/**
 * Checks of a payload against what Discord publishes, written apart from the channel's own limits.
 * Source: Discord's API documentation (message, component and interaction pages), August 2026.
 */
interface Part {
  readonly type?: number;
  readonly content?: string;
  readonly custom_id?: string;
  readonly label?: string;
  readonly description?: string;
  readonly placeholder?: string;
  readonly value?: unknown;
  readonly style?: number;
  readonly required?: boolean;
  readonly min_values?: number;
  readonly max_values?: number;
  readonly min_length?: number;
  readonly max_length?: number;
  readonly components?: readonly Part[];
  readonly component?: Part;
  readonly options?: readonly {
    readonly label?: string;
    readonly value?: string;
    readonly description?: string;
  }[];
}

export interface AnyPayload {
  readonly content?: string | null;
  readonly embeds?: readonly unknown[];
  readonly flags?: number;
  readonly nonce?: string | number;
  readonly components?: readonly Part[];
  readonly allowed_mentions?: { readonly parse?: readonly string[] };
  readonly title?: string;
  readonly custom_id?: string;
}

const laidOut = 1 << 15;

function between(
  what: string,
  text: string | undefined | null,
  least: number,
  most: number,
): readonly string[] {
  const length = text?.length ?? 0;
  return length < least || length > most
    ? [`${what}: ${length} characters, ${least} to ${most} allowed`]
    : [];
}

/** All parts of a payload or modal, depth first. */
export function partsOf(payload: AnyPayload): readonly Part[] {
  const walk = (part: Part): readonly Part[] => [
    part,
    ...(part.components ?? []).flatMap(walk),
    ...(part.component ? walk(part.component) : []),
  ];
  return (payload.components ?? []).flatMap(walk);
}

function optionFaults(part: Part, least: number, most: number): readonly string[] {
  const options = part.options ?? [];
  const values = options.map(({ value }) => value);
  return [
    ...(options.length < least || options.length > most ? [`options: ${options.length}`] : []),
    ...(new Set(values).size === values.length ? [] : ['options: two of one value']),
    ...options.flatMap(({ label, value, description }) => [
      ...between('option label', label, 1, 100),
      ...between('option value', value, 1, 100),
      ...(description === undefined ? [] : between('option description', description, 1, 100)),
    ]),
  ];
}

function partFaults(part: Part): readonly string[] {
  const faults: string[] = [];
  if (part.custom_id !== undefined) faults.push(...between('custom_id', part.custom_id, 1, 100));
  switch (part.type) {
    case 1: {
      const inside = part.components ?? [];
      if (inside.length < 1 || inside.length > 5) faults.push(`row: ${inside.length} parts`);
      if (inside.some(({ type }) => type !== 2) && inside.length > 1)
        faults.push('row: a select stands alone');
      break;
    }
    case 2:
      faults.push(...between('button label', part.label, 1, 80));
      if (part.custom_id === undefined) faults.push('button: no custom_id');
      break;
    case 3:
      faults.push(...optionFaults(part, 1, 25));
      if (part.placeholder !== undefined) faults.push(...between('placeholder', part.placeholder, 0, 150));
      if ((part.max_values ?? 1) > (part.options ?? []).length)
        faults.push('select: max_values above options');
      break;
    case 4:
      if ((part.max_length ?? 4000) < 1 || (part.max_length ?? 4000) > 4000) faults.push('input: max_length');
      if (typeof part.value === 'string')
        faults.push(...between('input value', part.value, 0, part.max_length ?? 4000));
      if (part.placeholder !== undefined) faults.push(...between('placeholder', part.placeholder, 0, 100));
      if (part.style !== 1 && part.style !== 2) faults.push('input: no style');
      break;
    case 10:
      faults.push(...between('text', part.content, 1, 4000));
      break;
    case 18:
      faults.push(...between('label', part.label, 1, 45));
      if (part.description !== undefined) faults.push(...between('description', part.description, 0, 100));
      if (part.component === undefined) faults.push('label: empty');
      break;
    case 19:
      if ((part.max_values ?? 1) > 10) faults.push('file: more than 10');
      break;
    case 21:
      faults.push(...optionFaults(part, 2, 10));
      break;
    case undefined:
    default:
      faults.push(`unknown part ${String(part.type)}`);
  }
  return faults;
}

/** What of a message breaks a published limit. */
export function messageFaults(payload: AnyPayload): readonly string[] {
  const parts = partsOf(payload);
  const faults = parts.flatMap(partFaults);
  const ids = parts.flatMap(({ custom_id }) => (custom_id === undefined ? [] : [custom_id]));
  if (new Set(ids).size !== ids.length) faults.push('two parts of one custom_id');
  if (payload.nonce !== undefined) faults.push(...between('nonce', String(payload.nonce), 1, 25));
  if ((payload.allowed_mentions?.parse ?? ['none given']).length > 0) faults.push('mentions are parsed');
  if (((payload.flags ?? 0) & laidOut) !== 0) {
    if (payload.content || payload.embeds?.length) faults.push('content beside parts that are laid out');
    if (parts.length > 40) faults.push(`${parts.length} parts`);
    const text = parts.reduce((sum, { content = '', label = '' }) => sum + content.length + label.length, 0);
    if (text > 4000) faults.push(`${text} characters of text`);
    if (parts.length === 0) faults.push('empty');
    return faults;
  }
  if (parts.some(({ type }) => type === 10)) faults.push('text part in a plain message');
  if ((payload.components ?? []).length > 5) faults.push('more than five rows');
  return [...faults, ...between('content', payload.content, 1, 2000)];
}

/** What of a modal breaks a published limit. */
export function modalFaults(modal: AnyPayload): readonly string[] {
  const top = modal.components ?? [];
  const ids = partsOf(modal).flatMap(({ custom_id }) => (custom_id === undefined ? [] : [custom_id]));
  return [
    ...between('title', modal.title, 1, 45),
    ...between('custom_id', modal.custom_id, 1, 100),
    ...(top.length < 1 || top.length > 5 ? [`modal: ${top.length} parts`] : []),
    ...(top.every(({ type }) => type === 18 || type === 10) ? [] : ['modal: a part outside a label']),
    ...(new Set(ids).size === ids.length ? [] : ['two parts of one custom_id']),
    ...partsOf(modal).flatMap(partFaults),
  ];
}

/** What breaks the published limits of a thread that is begun from a message. */
export function threadFaults(thread: {
  readonly name?: string;
  readonly auto_archive_duration?: number;
}): readonly string[] {
  const length = thread.name?.length ?? 0;
  return [
    ...(length < 1 || length > 100 ? [`name of ${length} characters`] : []),
    ...([60, 1440, 4320, 10_080].includes(thread.auto_archive_duration ?? 1440) ? [] : ['archive duration']),
  ];
}
