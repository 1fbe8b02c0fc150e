/** Waits for the host, but not for ever. */

/** How long the host may take to answer [ms]. Our own choice: a slow line still makes it, and nobody stares at an empty pane. */
export const HOST_TIME_LIMIT = 10_000;

/** What came of waiting: a workbook, another place, or no answer. */
export type HostAnswer = 'workbook' | 'elsewhere' | 'blocked';

/** The part of the host that says when it is ready. */
export interface Readies {
  onReady(): Promise<{ readonly host: unknown } | undefined>;
}

/**
 * @param office the host's object, or undefined where its script was not loaded
 * @param limit longest wait [ms]
 */
export const hostAnswer = async (office: Readies | undefined, limit: number = HOST_TIME_LIMIT): Promise<HostAnswer> => {
  if (!office) return 'blocked';
  let timer: ReturnType<typeof setTimeout> | undefined;
  const late = new Promise<'blocked'>((done) => {
    timer = setTimeout(done, limit, 'blocked');
  });
  try {
    const answer = await Promise.race([office.onReady(), late]);
    if (answer === 'blocked') return 'blocked';
    return answer?.host === 'Excel' ? 'workbook' : 'elsewhere';
  } catch {
    return 'blocked';
  } finally {
    clearTimeout(timer);
  }
};

/** What people are told where there is no workbook. */
export const NOTICES: Readonly<Record<Exclude<HostAnswer, 'workbook'>, string>> = {
  elsewhere:
    'This page belongs beside a workbook. Open a workbook, then choose Storage jackets on the Home tab. Cautions and functions can be read here all the same.',
  blocked:
    'The spreadsheet did not answer, so nothing can be read from the sheet or put into it. Check that this computer may reach appsforoffice.microsoft.com, then close the pane and open it again. Cautions and functions can be read here all the same.',
};
