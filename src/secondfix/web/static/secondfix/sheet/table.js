/* Pure: texts of a spreadsheet's clipboard, and which cells they fall into. */

/** Rows of cells from tab-separated text; a quoted cell may hold tabs, line ends and doubled quotes. */
export function cellsOf(text) {
  const rows = [[]];
  let cell = "", quoted = false, begun = false;
  const end = () => { rows[rows.length - 1].push(cell); cell = ""; begun = false; };
  for (let i = 0; i < text.length; i++) {
    const c = text[i];
    if (quoted) {
      if (c !== '"') cell += c;
      else if (text[i + 1] === '"') { cell += '"'; i++; }
      else quoted = false;
    } else if (c === '"' && !begun) { quoted = true; begun = true; }
    else if (c === "\t") end();
    else if (c === "\n") { end(); rows.push([]); }
    else if (c !== "\r") { cell += c; begun = true; }
  }
  end();
  if (rows.length > 1 && rows[rows.length - 1].length === 1 && rows[rows.length - 1][0] === "") rows.pop();
  return rows;
}

/** Tab-separated text of rows of cells, quoted where a reader would need it. */
export function textOf(rows) {
  const one = (t) => (/["\t\n\r]/.test(t) ? `"${t.replaceAll('"', '""')}"` : t);
  return rows.map((row) => row.map(one).join("\t")).join("\n");
}

/** Where pasted rows fall: [row, column, text] from the corner on, repeated to fill a larger choice. */
export function falls(rows, area, size) {
  const high = rows.length, wide = Math.max(...rows.map((r) => r.length));
  const tall = Math.max(area.bottom - area.top + 1, high), broad = Math.max(area.right - area.left + 1, wide);
  const whole = tall % high === 0 && broad % wide === 0;
  const out = [];
  for (let r = 0; r < (whole ? tall : high); r++) {
    for (let c = 0; c < (whole ? broad : wide); c++) {
      const text = rows[r % high][c % wide];
      if (text !== undefined && area.top + r < size.rows && area.left + c < size.columns) {
        out.push([area.top + r, area.left + c, text]);
      }
    }
  }
  return out;
}

/** The first row of an area repeated down it. */
export function filledDown(area, textAt) {
  const out = [];
  for (let c = area.left; c <= area.right; c++) {
    for (let r = area.top + 1; r <= area.bottom; r++) out.push([r, c, textAt(area.top, c)]);
  }
  return out;
}
