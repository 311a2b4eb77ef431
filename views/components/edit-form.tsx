import type { Children } from '@kitajs/html';
import { hereMark, type Refused } from '../workbench.ts';
import { FormProblem } from './field.tsx';

/** Id of the piece of a form that is swapped; the form element itself stays, so that waiting edits are kept. */
export function formPartId(form: string): string {
  return `${form}:fields`;
}

/** The swapped inside of a form: what is wrong with it, its fields, its button. */
export function FormFields(props: {
  readonly id: string;
  readonly children: Children;
  readonly refused?: Refused | undefined;
  readonly button: string;
  /** The form saves as soon as a field is left; its button is then for those without the script. */
  readonly live?: boolean;
}): JSX.Element {
  return (
    <div id={formPartId(props.id)} class="fields">
      <FormProblem refused={props.refused} />
      {props.children as 'safe'}
      <button type="submit" class={props.live ? 'save' : 'act'} safe>
        {props.button}
      </button>
    </div>
  );
}

/** A form that posts as a page does, and in place where the script runs. Its child is its `FormFields`. */
export function EditForm(props: {
  readonly id: string;
  readonly action: string;
  readonly children: Children;
  readonly live?: boolean;
  readonly class?: string;
}): JSX.Element {
  return (
    <form
      id={props.id}
      class={props.class ?? 'edit'}
      autocomplete="off"
      method="post"
      action={props.action}
      hx-post={props.action}
      hx-swap="none"
      hx-include="#here"
      hx-trigger={props.live ? 'change' : 'submit'}
    >
      {hereMark as 'safe'}
      {props.children as 'safe'}
    </form>
  );
}
