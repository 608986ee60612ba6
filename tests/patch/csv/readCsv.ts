/**
 * Reads CSV by the grammar of RFC 4180, section 2, one character at a time, and nothing else: what the grammar does not allow
 * throws. Independent of the writer.
 */
export function readCsv(text: string): readonly (readonly string[])[] {
  const records: string[][] = [];
  let record: string[] = [];
  let at = 0;
  const fail = (expected: string): never => {
    throw new SyntaxError(
      `At ${at}: expected ${expected}, found ${JSON.stringify(text.slice(at, at + 5))}`,
    );
  };
  const escaped = (): string => {
    let field = '';
    at += 1;
    for (;;) {
      const char = text[at];
      if (char === undefined) return fail('a closing quotation mark');
      if (char !== '"') {
        field += char;
        at += 1;
      } else if (text[at + 1] === '"') {
        field += '"';
        at += 2;
      } else {
        at += 1;
        return field;
      }
    }
  };
  const bare = (): string => {
    const from = at;
    for (
      let char = text[at];
      char !== undefined && char !== ',' && char !== '\r';
      char = text[at]
    ) {
      if (char === '"' || char === '\n') return fail('a character that may stand unquoted');
      at += 1;
    }
    return text.slice(from, at);
  };
  while (at < text.length) {
    record.push(text[at] === '"' ? escaped() : bare());
    if (text[at] === ',') {
      at += 1;
      if (at === text.length) record.push('');
    } else if (text.startsWith('\r\n', at)) {
      at += 2;
      records.push(record);
      record = [];
    } else if (at < text.length) return fail('a comma or CRLF');
  }
  if (record.length > 0) records.push(record);
  return records;
}
