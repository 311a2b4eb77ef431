import type { Text } from '../part.ts';
import { attribute } from './attribute.ts';

export interface FigureLinkProps {
  readonly id: string;
  readonly job: string;
  readonly of: string;
  readonly quantity: string;
  readonly text: string;
  readonly label: string;
}

/**
 * One figure that leads to its own explanation; its id keeps the focus when the figure changes. On the workbench the
 * script opens the explanation beside the page (`.figure` in app.js).
 */
export function FigureLink(props: FigureLinkProps): JSX.Element {
  return (
    <a
      id={props.id}
      class="figure"
      href={`/jobs/${props.job}/explain/${encodeURIComponent(props.of)}/${props.quantity}`}
      title={attribute(`How ${props.label} is found`)}
      safe
    >
      {props.text}
    </a>
  );
}

/** The same as a piece of which only the text changes. */
export function figurePart(props: FigureLinkProps): Text {
  return { id: props.id, text: props.text, html: () => (<FigureLink {...props} />) as string };
}
