import { attribute } from './attribute.ts';

/** One figure that opens its own explanation; its id keeps the focus when the figure changes. */
export function FigureLink(props: {
  readonly id: string;
  readonly job: string;
  readonly of: string;
  readonly quantity: string;
  readonly text: string;
  readonly label: string;
}): JSX.Element {
  const href = `/jobs/${props.job}/explain/${encodeURIComponent(props.of)}/${props.quantity}`;
  return (
    <a
      id={props.id}
      class="figure"
      href={href}
      hx-get={href}
      hx-target="#explain"
      hx-swap="innerHTML"
      title={attribute(`How ${props.label} is found`)}
      safe
    >
      {props.text}
    </a>
  );
}
