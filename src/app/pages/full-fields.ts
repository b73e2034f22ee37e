const isField = (target: EventTarget | null): target is HTMLInputElement | HTMLTextAreaElement =>
  target instanceof HTMLInputElement || target instanceof HTMLTextAreaElement;

const sentence = (most: number, given: number): string =>
  given === 1
    ? `At most ${most.toLocaleString('en')} characters have room here.`
    : `At most ${most.toLocaleString('en')} characters have room here, and ${given.toLocaleString('en')} more do not fit, so none of them was put in.`;

/**
 * Says at the field itself, wherever on the page it stands, what does not fit into it: a browser would cut it off without
 * a word. What does not fit is not put in, so that nobody takes half of it for all.
 */
export function watchFullFields(): void {
  let told: HTMLInputElement | HTMLTextAreaElement | null = null;
  const forget = () => {
    told?.setCustomValidity('');
    told = null;
  };
  document.addEventListener('beforeinput', (event) => {
    const { target: field, data } = event;
    if (!isField(field) || field.maxLength < 0 || data === null || !event.cancelable) return;
    const chosen = (field.selectionEnd ?? 0) - (field.selectionStart ?? 0);
    if (field.value.length - chosen + data.length <= field.maxLength) return;
    event.preventDefault();
    field.setCustomValidity(sentence(field.maxLength, data.length));
    field.reportValidity();
    told = field;
  });
  for (const goneOn of ['keydown', 'input', 'focusout']) document.addEventListener(goneOn, forget, true);
}
