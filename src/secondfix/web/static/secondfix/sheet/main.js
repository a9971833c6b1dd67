/* The switch schedule as a grid (WAI-ARIA 1.2, grid): move, choose, edit, copy, paste, fill down. */
import { cellsOf, falls, filledDown, textOf } from "./table.js";
import { Saving } from "./saving.js";

const table = document.getElementById("switch-schedule");
const body = table.tBodies[0];
const said = document.getElementById("said");
const keys = [...table.tHead.rows[0].cells].map((th) => th.dataset.key).filter(Boolean);
let choices = JSON.parse(document.getElementById("choices").textContent);
let at = { row: 0, column: 0 }, from = { row: 0, column: 0 }, field = null;

// Gang, answers and device stand among the cells that are filled in.
const places = [...table.tHead.rows[0].cells].flatMap((th, index) => (th.dataset.key ? [index] : []));
const cell = (row, column) => body.rows[row]?.cells[places[column]];
const columnOf = (td) => places.indexOf(td.cellIndex);
const textAt = (row, column) => cell(row, column).textContent;
const size = () => ({ rows: body.rows.length, columns: keys.length });
const area = () => ({
  top: Math.min(at.row, from.row), bottom: Math.max(at.row, from.row),
  left: Math.min(at.column, from.column), right: Math.max(at.column, from.column),
});

const saving = new Saving(table, {
  token: document.querySelector("[name=csrfmiddlewaretoken]").value,
  known: () => document.getElementById("known").value,
  done(answer, cells) {
    choices = answer.choices;
    for (const place of answer.gone) row(place)?.remove();
    for (const [place, markup] of Object.entries(answer.rows)) replace(place, markup);
    const c = answer.counts;
    say(`Saved as edit ${answer.number}, ${cells.length} ${cells.length === 1 ? "cell" : "cells"}. Open: ${c.danger} danger, ${c.fault} fault, ${c.advice} advice, ${c.cannot_tell} cannot be told.`);
    show(false);
  },
  failed(answer, cells) {
    if (answer.settle) { location.assign(answer.settle); return; }
    for (const [place, key] of cells) {
      const wrong = row(place)?.querySelector(`[data-key="${key}"]`);
      if (wrong) { wrong.textContent = wrong.dataset.was ?? wrong.textContent; wrong.setAttribute("aria-invalid", "true"); }
    }
    say(answer.faults.map((f) => `${f.path}: ${f.says}`).join("; "), true);
  },
});

function row(place) { return body.querySelector(`tr[data-place="${CSS.escape(place)}"]`); }

function replace(place, markup) {
  const held = document.createElement("tbody");
  held.innerHTML = markup;
  const old = row(place);
  if (old) old.replaceWith(held.rows[0]);
  else body.append(held.rows[0]);
}

function say(words, act = false) {
  said.textContent = words;
  said.classList.toggle("accent", act);
}

function show(focus = true) {
  for (const old of body.querySelectorAll(".chosen, [tabindex='0']")) { old.classList.remove("chosen"); old.tabIndex = -1; }
  const a = area();
  for (let r = a.top; r <= a.bottom; r++) for (let c = a.left; c <= a.right; c++) cell(r, c)?.classList.add("chosen");
  const here = cell(at.row, at.column);
  if (!here) return;
  here.tabIndex = 0;
  if (focus) here.focus({ preventScroll: false });
}

function go(row_, column, reach = false) {
  const s = size();
  at = { row: Math.max(0, Math.min(row_, s.rows - 1)), column: Math.max(0, Math.min(column, s.columns - 1)) };
  if (!reach) from = { ...at };
  show();
}

function put(changes) {
  const cells = [];
  for (const [r, c, text] of changes) {
    const td = cell(r, c);
    if (!td || td.textContent === text) continue;
    td.dataset.was = td.textContent;
    td.textContent = text;
    td.removeAttribute("aria-invalid");
    cells.push([body.rows[r].dataset.place, keys[c], text]);
  }
  if (cells.length) { say("Saving …"); saving.add(cells); }
}

function edit(first = null) {
  const td = cell(at.row, at.column), was = td.textContent;
  field = document.createElement("input");
  field.value = first ?? was;
  field.setAttribute("aria-label", `${body.rows[at.row].dataset.place}, ${table.tHead.rows[0].cells[places[at.column]].textContent}`);
  field.maxLength = 500;
  const list = choices[keys[at.column]];
  if (list) {
    const named = document.createElement("datalist");
    named.id = "choices-here";
    for (const text of list) named.append(new Option(text, text));
    td.replaceChildren(field, named);
    field.setAttribute("list", named.id);
  } else td.replaceChildren(field);
  field.focus();
  if (first === null) field.select();
  const close = (keep) => {
    if (!field) return;
    const text = field.value.trim();
    field = null;
    td.textContent = was;
    if (keep) put([[at.row, at.column, text]]);
  };
  field.addEventListener("blur", () => close(true));
  field.addEventListener("keydown", (event) => {
    event.stopPropagation();
    if (event.key === "Escape") { event.preventDefault(); close(false); show(); }
    if (event.key === "Enter") { event.preventDefault(); close(true); go(at.row + (event.shiftKey ? -1 : 1), at.column); }
    if (event.key === "Tab") { event.preventDefault(); close(true); go(at.row, at.column + (event.shiftKey ? -1 : 1)); }
  });
}

body.addEventListener("keydown", (event) => {
  if (field || !event.target.closest("td[data-key]")) return;
  const far = event.ctrlKey || event.metaKey, s = size(), reach = event.shiftKey;
  const ways = {
    ArrowUp: () => go(far ? 0 : at.row - 1, at.column, reach), ArrowDown: () => go(far ? s.rows - 1 : at.row + 1, at.column, reach),
    ArrowLeft: () => go(at.row, far ? 0 : at.column - 1, reach), ArrowRight: () => go(at.row, far ? s.columns - 1 : at.column + 1, reach),
    Home: () => go(far ? 0 : at.row, 0, reach), End: () => go(far ? s.rows - 1 : at.row, s.columns - 1, reach),
    PageUp: () => go(at.row - 12, at.column, reach), PageDown: () => go(at.row + 12, at.column, reach),
    Enter: () => edit(), F2: () => edit(),
    Delete: () => { const a = area(), all = []; for (let r = a.top; r <= a.bottom; r++) for (let c = a.left; c <= a.right; c++) all.push([r, c, ""]); put(all); },
  };
  if (ways[event.key]) { event.preventDefault(); ways[event.key](); return; }
  if (far && event.key.toLowerCase() === "d") { event.preventDefault(); put(filledDown(area(), textAt)); return; }
  if (!far && !event.altKey && event.key.length === 1) { event.preventDefault(); edit(event.key); }
});

body.addEventListener("mousedown", (event) => {
  const td = event.target.closest("td[data-key]");
  if (!td || field) return;
  go(td.parentElement.sectionRowIndex, columnOf(td), event.shiftKey);
});
body.addEventListener("dblclick", (event) => { if (event.target.closest("td[data-key]") && !field) edit(); });
body.addEventListener("focusin", (event) => {
  const td = event.target.closest("td[data-key]");
  if (!td || field || td.classList.contains("chosen")) return;
  at = from = { row: td.parentElement.sectionRowIndex, column: columnOf(td) };
  show(false);
});

document.addEventListener("copy", (event) => {
  if (field || !document.activeElement.closest?.("td[data-key]")) return;
  const a = area(), rows = [];
  for (let r = a.top; r <= a.bottom; r++) rows.push(Array.from({ length: a.right - a.left + 1 }, (_, c) => textAt(r, a.left + c)));
  event.clipboardData.setData("text/plain", textOf(rows));
  event.preventDefault();
});
document.addEventListener("paste", (event) => {
  if (field || !document.activeElement.closest?.("td[data-key]")) return;
  event.preventDefault();
  put(falls(cellsOf(event.clipboardData.getData("text/plain")), area(), size()));
});

if (body.rows.length) show(false);
