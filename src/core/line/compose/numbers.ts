import type { BarModel, LineModel } from '../model';

/** The number of a bar as the chart counts it. */
export const numberOf = (model: LineModel, bar: BarModel): number =>
  model.request.chart.bars[bar.index]?.number ?? bar.index + 1;
