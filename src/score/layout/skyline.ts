import type { Mark } from '../ink';
import type { InkBox } from '../types';

/** The upper or lower outline of ink: how far it reaches above a stretch of the system. */
export class Skyline {
  private readonly boxes: InkBox[] = [];

  add(box: InkBox): void {
    this.boxes.push(box);
  }

  /** The highest ink (least y) between two places; `otherwise` where there is none. */
  top(left: number, right: number, otherwise: number): number {
    let highest = otherwise;
    for (const box of this.boxes) {
      if (box.left < right && box.right > left && box.top < highest) highest = box.top;
    }
    return highest;
  }

  /** The lowest ink (greatest y) between two places; `otherwise` where there is none. */
  bottom(left: number, right: number, otherwise: number): number {
    let lowest = otherwise;
    for (const box of this.boxes) {
      if (box.left < right && box.right > left && box.bottom > lowest) lowest = box.bottom;
    }
    return lowest;
  }
}

/** The outline of some marks. */
export function skylineOf(marks: readonly Mark[]): Skyline {
  const skyline = new Skyline();
  for (const { box } of marks) skyline.add(box);
  return skyline;
}
