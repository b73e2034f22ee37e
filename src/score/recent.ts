/** Keeps the values made last, by key, so that an edit computes again only what it touched. */
export class Recent<Value> {
  private readonly values = new Map<string, Value>();

  constructor(private readonly most: number) {}

  /** The value of a key, made when it is not at hand. */
  of(key: string, make: () => Value): Value {
    const known = this.values.get(key);
    const value = known ?? make();
    // A map lists its keys in the order they were set: the one used longest ago comes first.
    this.values.delete(key);
    this.values.set(key, value);
    if (this.values.size > this.most) {
      for (const oldest of this.values.keys()) {
        this.values.delete(oldest);
        break;
      }
    }
    return value;
  }
}
