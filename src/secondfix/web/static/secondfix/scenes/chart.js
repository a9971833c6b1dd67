/* The scene schedule by keys (WAI-ARIA 1.2, grid): arrows move between crossings, Enter or a click reads one. */
const table = document.getElementById("scene-schedule");
const read = document.getElementById("crossing");

function links(row) { return [...row.querySelectorAll("td.crossing a")].filter((a) => a.offsetParent); }

function choose(link) {
  for (const old of table.querySelectorAll('td.crossing a[tabindex="0"]')) old.tabIndex = -1;
  link.tabIndex = 0;
}

function go(link) {
  if (!link) return;
  choose(link);
  link.focus();
}

async function show(link) {
  for (const old of table.querySelectorAll("a[aria-current]")) old.removeAttribute("aria-current");
  link.setAttribute("aria-current", "true");
  const answer = await fetch(link.href, { headers: { "HX-Request": "true" } });
  if (!answer.ok || answer.redirected) { location.assign(link.href); return; }
  const held = document.createElement("template");
  held.innerHTML = await answer.text();
  read.replaceChildren(...held.content.querySelector("#crossing").childNodes);
  history.replaceState(null, "", link.href.split("#")[0]);
}

if (table) {
  table.setAttribute("role", "grid");
  for (const link of table.querySelectorAll("td.crossing a")) link.tabIndex = -1;
  const first = table.querySelector("td.crossing.here a") ?? table.querySelector("td.crossing a");
  if (first) first.tabIndex = 0;
  const at = new URLSearchParams(location.search).get("at");
  const named = at && table.querySelector(`a[data-at="${CSS.escape(at)}"]`);
  if (named) { choose(named); named.setAttribute("aria-current", "true"); }

  table.addEventListener("click", (event) => {
    const link = event.target.closest("td.crossing a");
    if (!link || event.ctrlKey || event.metaKey || event.shiftKey) return;
    event.preventDefault();
    choose(link);
    show(link);
  });

  table.addEventListener("keydown", (event) => {
    const link = event.target.closest("td.crossing a");
    if (!link) return;
    const body = table.tBodies[0].rows, row = link.closest("tr"), here = links(row), column = here.indexOf(link);
    const far = event.ctrlKey || event.metaKey;
    const beside = (n) => here[Math.max(0, Math.min(n, here.length - 1))];
    const under = (n) => links(body[Math.max(0, Math.min(n, body.length - 1))])[column];
    const ways = {
      ArrowLeft: () => beside(column - 1), ArrowRight: () => beside(column + 1), Home: () => beside(0), End: () => beside(here.length - 1),
      ArrowUp: () => under(far ? 0 : row.sectionRowIndex - 1), ArrowDown: () => under(far ? body.length - 1 : row.sectionRowIndex + 1),
      PageUp: () => under(row.sectionRowIndex - 12), PageDown: () => under(row.sectionRowIndex + 12),
    };
    if (!ways[event.key]) return;
    event.preventDefault();
    go(ways[event.key]());
  });
}
