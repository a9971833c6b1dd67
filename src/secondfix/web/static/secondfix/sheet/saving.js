/* Cells to the server, one batch after another, never two at once: each is made on the edit that the last left. */
export class Saving {
  constructor(table, { token, known, done, failed }) {
    Object.assign(this, { table, token, known, done, failed });
    this.waiting = [];
    this.running = false;
  }

  add(cells) {
    this.waiting.push(...cells);
    if (!this.running) this.run();
  }

  async run() {
    this.running = true;
    while (this.waiting.length) {
      const cells = this.waiting.splice(0);
      const form = new URLSearchParams({ base: this.table.dataset.base, known: this.known(), cells: JSON.stringify(cells) });
      try {
        const answer = await fetch(this.table.dataset.to, { method: "POST", body: form, headers: { "X-CSRFToken": this.token }, redirect: "error" });
        const said = await answer.json();
        if (answer.ok) {
          this.table.dataset.base = said.number;
          this.done(said, cells);
        } else this.failed(said, cells);
      } catch {
        this.failed({ faults: [{ path: "", says: "the desk did not answer; nothing of this was saved" }] }, cells);
      }
    }
    this.running = false;
  }
}
