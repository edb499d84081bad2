/**
 * Two things that the standard allows and the library that reads workbooks passes over (ECMA-376 part 1, 18.2.28 and 18.8.30):
 *
 *   date1904="true"              says the same as "1": days are counted from 1904
 *   a format of the file's own   may have a number below 100, as some writers give it, and tells days from amounts all the same
 */
export function tameWorkbook(name: string, xml: string): string {
  if (/(^|\/)workbook\.xml$/.test(name)) return xml.replace(/\bdate1904="true"/, 'date1904="1"');
  if (!/(^|\/)styles\.xml$/.test(name)) return xml;
  const own = new Set(
    [...xml.matchAll(/<(?:\w+:)?numFmt\s[^<>]*?\bnumFmtId="(\d{1,2})"/g)].map(([, id]) => id as string),
  );
  return xml.replaceAll(/\bnumFmtId="(\d{1,2})"/g, (whole, id: string) =>
    own.has(id) ? `numFmtId="${1000 + Number(id)}"` : whole,
  );
}
