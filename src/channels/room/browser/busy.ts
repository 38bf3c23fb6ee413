function isChanged(field: Element): boolean {
  if (field instanceof HTMLTextAreaElement) return !field.readOnly && field.value !== field.defaultValue;
  if (field instanceof HTMLSelectElement) {
    const before = Math.max(
      0,
      Array.from(field.options).findIndex((option) => option.defaultSelected),
    );
    return field.selectedIndex !== before;
  }
  if (!(field instanceof HTMLInputElement) || field.type === 'hidden') return false;
  if (field.type === 'radio' || field.type === 'checkbox') return field.checked !== field.defaultChecked;
  return field.value !== field.defaultValue;
}

/** Whether somebody is in the middle of something in this part of the page: typing, picking, or having it read. */
export function isBusy(region: Element): boolean {
  const active = document.activeElement;
  if (
    active !== null &&
    region.contains(active) &&
    (active instanceof HTMLTextAreaElement ||
      active instanceof HTMLSelectElement ||
      (active instanceof HTMLInputElement && active.type !== 'hidden'))
  ) {
    return true;
  }
  if (region.querySelector('.speaking') !== null) return true;
  return Array.from(region.querySelectorAll('input, textarea, select')).some(isChanged);
}
