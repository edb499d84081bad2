/** What a spreadsheet may hold. Far more than a person writes, and little enough that no file can fill the memory. */
export const MOST_BYTES = 50_000_000;
/** Of a workbook, which is packed: all its files together, unpacked. */
export const MOST_UNPACKED = 60_000_000;
export const MOST_ROWS = 200_000;
export const MOST_COLUMNS = 400;
/** What a cell of a workbook can hold. */
export const LONGEST_CELL = 32_767;
