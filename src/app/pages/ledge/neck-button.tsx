interface NeckButtonProps {
  readonly shown: boolean;
  readonly onShow: (shown: boolean) => void;
}

/** Takes the fretboard onto the ledge and away. */
export function NeckButton({ shown, onShow }: NeckButtonProps) {
  return (
    <button
      type="button"
      className="button button--quiet ledge__neck"
      aria-expanded={shown}
      aria-controls={shown ? 'fretboard' : undefined}
      onClick={() => onShow(!shown)}
    >
      Fretboard
    </button>
  );
}
