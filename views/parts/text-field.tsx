/** A line of text that must not stay empty, under its label: `max` letters. */
export const TextField = ({ name, label, max = 300 }: { name: string; label: string; max?: number }) => (
  <label>
    {label}
    <input name={name} required maxlength={max} autocomplete="off" />
  </label>
);
