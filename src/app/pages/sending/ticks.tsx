import { CheckField } from '../../controls';

interface TicksProps<Value extends string | number> {
  readonly legend: string;
  /** Tells each from a switch of the same name elsewhere on the page. */
  readonly where: string;
  /** In their order, which is that of what is ticked, too. */
  readonly values: readonly Value[];
  readonly ticked: readonly Value[];
  readonly label: (value: Value) => string;
  readonly onChange: (ticked: readonly Value[]) => void;
}

/** Things of which any number is wanted. */
export function Ticks<Value extends string | number>({
  legend,
  where,
  values,
  ticked,
  label,
  onChange,
}: TicksProps<Value>) {
  return (
    <fieldset className="sending__group">
      <legend>{legend}</legend>
      <div className="sending__ticks">
        {values.map((value) => (
          <CheckField
            key={value}
            label={label(value)}
            where={where}
            checked={ticked.includes(value)}
            onChange={(on) =>
              onChange(values.filter((each) => (each === value ? on : ticked.includes(each))))
            }
          />
        ))}
      </div>
    </fieldset>
  );
}
