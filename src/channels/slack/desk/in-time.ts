/** Slack wants an answer within three seconds; half of them are for the work, the other half for the way. */
export const quick = 1500;

/** Waits for work. Where it isn't done after `quick` milliseconds `early` is called, once, and waited for too. */
export async function inTime<T>(
  work: Promise<T>,
  early: () => Promise<unknown>,
  after = quick,
): Promise<{ readonly value: T; readonly late: boolean }> {
  let late = false;
  let said: Promise<unknown> = Promise.resolve();
  const timer = setTimeout(() => {
    late = true;
    said = early().catch(() => undefined);
  }, after);
  try {
    const value = await work;
    return { value, late };
  } finally {
    clearTimeout(timer);
    await said;
  }
}
