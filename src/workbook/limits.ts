/** How large a file may be. A workbook by hand is far below these; a file made to exhaust the machine is above. */

/** Largest file, bytes (100 MB). Ours: a workbook of a million cells is about 15 MB. */
export const LARGEST_FILE = 100_000_000;

/** Largest size of all parts together once unpacked, bytes (1 GB). Ours: what a browser tab can hold. */
export const LARGEST_UNPACKED = 1_000_000_000;

/** Largest single part that is read as text, bytes (500 MB). A text of more characters than this does not fit into one string. */
export const LARGEST_TEXT = 500_000_000;

/** Parts up to this unpacked size may be packed as tightly as they like, bytes (16 MB). */
export const SMALL_PART = 16_000_000;

/** Above `SMALL_PART`: most times that a part may be larger unpacked than packed. Sheets reach about 100; the packing itself ends at about 1030. */
export const LARGEST_RATIO = 400;

/** Bytes that are unpacked in one go. Small, since each can become 1030 times as many before they are counted. */
export const UNPACK_STEP = 16_384;

/** Most entries in one file. Ours: a workbook has some tens, one with many pictures some thousands. */
export const MOST_ENTRIES = 20_000;

/** Deepest nesting of elements in one part. Ours: workbook parts stay below 30. */
export const DEEPEST_ELEMENT = 1_000;

/** Most attributes of one element. Ours: the elements of workbooks have at most some sixty. */
export const MOST_ATTRIBUTES = 1_000;

/** Number of rows of a sheet. ECMA-376 part 1, 18.3.1.73. */
export const ROWS = 1_048_576;

/** Number of columns of a sheet, A to XFD. ECMA-376 part 1, 18.3.1.4. */
export const COLUMNS = 16_384;
