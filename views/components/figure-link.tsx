/** One figure that opens its own explanation. */
export function FigureLink(props: {
  readonly job: string;
  readonly of: string;
  readonly quantity: string;
  readonly text: string;
  readonly label: string;
}): JSX.Element {
  const href = `/jobs/${props.job}/explain/${encodeURIComponent(props.of)}/${props.quantity}`;
  return (
    <a
      class="figure"
      href={href}
      hx-get={href}
      hx-target="#explain"
      hx-swap="innerHTML"
      title={`How ${props.label} is found`}
      safe
    >
      {props.text}
    </a>
  );
}
