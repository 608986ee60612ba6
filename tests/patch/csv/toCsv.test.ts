import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Cell, type Table, toCsv } from '../../../src/patch/csv/toCsv.ts';
import { readCsv } from './readCsv.ts';

const csv = (...rows: readonly (readonly Cell[])[]): string => {
  const header = (rows[0] ?? []).map((_, index) => `c${index}`);
  return toCsv({ header, rows }).slice(toCsv({ header, rows: [] }).length);
};

describe('the reader used below, by the examples of RFC 4180, section 2', () => {
  it('reads them as the RFC says', () => {
    const rows = [
      ['aaa', 'bbb', 'ccc'],
      ['zzz', 'yyy', 'xxx'],
    ];
    expect(readCsv('aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n')).toEqual(rows);
    expect(readCsv('aaa,bbb,ccc\r\nzzz,yyy,xxx')).toEqual(rows);
    expect(readCsv('"aaa","bbb","ccc"\r\nzzz,yyy,xxx')).toEqual(rows);
    expect(readCsv('"aaa","b\r\nbb","ccc"\r\nzzz,yyy,xxx')).toEqual([
      ['aaa', 'b\r\nbb', 'ccc'],
      ['zzz', 'yyy', 'xxx'],
    ]);
    expect(readCsv('"aaa","b""bb","ccc"')).toEqual([['aaa', 'b"bb', 'ccc']]);
    expect(readCsv(',\r\n')).toEqual([['', '']]);
  });

  it.each(['a"b', 'a\nb', '"a"b', '"a', 'a\rb'])('refuses %j', (text) => {
    expect(() => readCsv(text)).toThrow(SyntaxError);
  });
});

describe('F1 RFC 4180', () => {
  it('writes bare what needs no quotation marks, and quotes what does', () => {
    expect(csv(['aaa', 'b bb', 'c.c'])).toBe('aaa,b bb,c.c\r\n');
    expect(csv(['a,b', 'b"bb', 'c\r\nc'])).toBe('"a,b","b""bb","c\r\nc"\r\n');
  });

  it('writes numbers with a point and nothing for nothing', () => {
    expect(csv([1, 2.5, null, -10, -0])).toBe('1,2.5,,-10,0\r\n');
  });

  it('quotes what other separators would split, and white space at the ends', () => {
    expect(csv(['a;b', 'a\tb', ' a', 'a '])).toBe('"a;b","a\tb"," a","a "\r\n');
  });

  const cell: fc.Arbitrary<Cell> = fc.oneof(
    fc.string(),
    fc.string({ unit: fc.constantFrom('"', ',', '\r', '\n', ';', '\t', '=', "'", ' ', 'ö', '😀') }),
    fc.double({ noNaN: true, noDefaultInfinity: true }),
    fc.integer(),
    fc.constant(null),
  );
  const table: fc.Arbitrary<Table> = fc.integer({ min: 1, max: 6 }).chain((columns) =>
    fc.record({
      header: fc.array(fc.string(), { minLength: columns, maxLength: columns }),
      rows: fc.array(fc.array(cell, { minLength: columns, maxLength: columns }), { maxLength: 8 }),
    }),
  );
  /** What a cell is to a reader: defused text, numbers as digits. */
  const read = (value: Cell): string => {
    if (value === null) return '';
    if (typeof value === 'number') return String(value === 0 ? 0 : value);
    const runs = ['=', '+', '-', '@', '\t', '\r', '\n', '＝', '＋', '－', '＠'];
    return runs.some((sign) => value.startsWith(sign)) ? `'${value}` : value;
  };

  it('comes back from an independent reader cell by cell, whatever is in it', () => {
    fc.assert(
      fc.property(table, (each) => {
        const rows = readCsv(toCsv(each));
        expect(rows).toEqual([each.header, ...each.rows].map((row) => row.map(read)));
      }),
      { numRuns: 300 },
    );
  });

  it('numbers come back exactly', () => {
    fc.assert(
      fc.property(fc.double({ noNaN: true, noDefaultInfinity: true }), (value) => {
        expect(Number(readCsv(csv([value]))[0]?.[0])).toBe(value + 0);
      }),
    );
  });

  it('every record ends with CRLF, and no CR or LF stands outside quotation marks', () => {
    fc.assert(
      fc.property(table, (each) => {
        const text = toCsv(each);
        expect(text.endsWith('\r\n')).toBe(true);
        const outside = text.replace(/"(?:[^"]|"")*"/g, '');
        expect(outside.split('\r\n')).toHaveLength(each.rows.length + 2);
        expect(outside.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
      }),
    );
  });
});

describe('F2 what a spreadsheet would run', () => {
  it.each(['=1+2', '+49 30', '-2+3', '@SUM(A1)', '\t=1', '\r=1'])('defuses %j', (text) => {
    expect(readCsv(csv([text]))).toEqual([[`'${text}`]]);
  });

  it('defuses headers too', () => {
    expect(toCsv({ header: ['=A1'], rows: [] })).toBe("'=A1\r\n");
  });

  it.each(['=1;=2', 'x";=1', 'a\t=1', 'x,=1'])(
    'lets no formula start a cell inside %j, whatever separates cells',
    (text) => {
      const [line] = csv([text, 'end']).split('\r\n');
      expect(line).toMatch(/^"(?:[^"]|"")*",end$/);
    },
  );

  it('no text starts with a sign that runs, for any text', () => {
    fc.assert(
      fc.property(
        fc.string(),
        fc.constantFrom('', '=', '+', '-', '@', '\t', '\r'),
        (text, sign) => {
          expect(readCsv(csv([sign + text, 'end']))[0]?.[0]).not.toMatch(/^[=+\-@\t\r]/);
        },
      ),
    );
  });

  it('leaves what runs nothing', () => {
    const safe = ["'=1", 'a=1', '5-piece', 'Größe', ''];
    expect(readCsv(csv(safe))).toEqual([safe]);
  });
});

describe('bad tables', () => {
  it('say what was expected', () => {
    expect(() => toCsv({ header: [], rows: [] })).toThrow('at least one column');
    expect(() => toCsv({ header: ['a', 'b'], rows: [['x', 'y'], ['x']] })).toThrow(
      'Row 2: expected 2 cells as in the header, not 1',
    );
    expect(() => csv([Number.NaN])).toThrow('Expected a finite number, not NaN');
  });
});
