/** A labelled file of an upload form, with its problem tied to it. */
export function UploadField(props: {
  readonly form: string;
  readonly label: string;
  readonly accept: string;
  readonly problem: string | undefined;
}): JSX.Element {
  const id = `${props.form}:file`;
  const { problem } = props;
  return (
    <div class="field wide">
      <label for={id} safe>
        {props.label}
      </label>
      <input
        id={id}
        name="file"
        type="file"
        accept={props.accept}
        required
        aria-invalid={problem === undefined ? undefined : 'true'}
        aria-describedby={problem === undefined ? undefined : `${id}:problem`}
      />
      {problem === undefined ? (
        ''
      ) : (
        <span class="problem" id={`${id}:problem`} safe>
          {problem}
        </span>
      )}
    </div>
  );
}
