import type { SoundInput } from '../../../sound';
import { SelectField } from '../../controls';

interface InputProps {
  readonly inputs: readonly SoundInput[];
  readonly input: string;
  readonly onChoose: (id: string) => void;
}

/** Which microphone or input is listened to, where there are several. */
export function Input({ inputs, input, onChoose }: InputProps) {
  if (inputs.length < 2) return null;
  return (
    <SelectField
      label="Microphone or input"
      value={input}
      options={inputs.map(({ id, name }) => ({ value: id, label: name }))}
      onChange={onChoose}
    />
  );
}
