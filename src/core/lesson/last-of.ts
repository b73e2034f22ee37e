/** As many lines as a lesson may have. */
const MOST_LINES = 24;

/** What was made last of each line, by its id: the start for what it becomes next. */
export class LastOf<Made> {
  private readonly lines = new Map<string, Made>();

  get(id: string): Made | null {
    return this.lines.get(id) ?? null;
  }

  set(id: string, made: Made): void {
    this.lines.delete(id);
    this.lines.set(id, made);
    for (const oldest of this.lines.keys()) {
      if (this.lines.size <= MOST_LINES) break;
      this.lines.delete(oldest);
    }
  }
}
