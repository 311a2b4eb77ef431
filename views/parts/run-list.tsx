import { EditForm, FormFields } from '../components/edit-form.tsx';
import { TextField } from '../components/field.tsx';
import { markupOf, type Part } from '../part.ts';
import type { Refused, Workbench } from '../workbench.ts';
import { addRunForm, runEndsId, runLinesId, runNamesId, runsId, sizesId } from './run-ids.ts';
import { runRowPart } from './run-row.tsx';

/** The pipe tree as an outline, from the street outwards. */
export function runListPart(bench: Workbench): Part {
  const children = bench.rows.map((row) => runRowPart(row, bench));
  return {
    id: runsId,
    frame: children.map((child) => child.id).join(' '),
    children,
    list: true,
    html: () =>
      (
        <ol id={runsId} class="runs">
          {children.map((child) => markupOf(child) as 'safe')}
        </ol>
      ) as string,
  };
}

/** Names that the layout's fields offer while typing. */
export function runNamesPart(bench: Workbench): Part {
  const html = (
    <datalist id={runNamesId}>
      <option value="street"></option>
      {bench.rows.map(({ run }) => (
        <option value={run.id}></option>
      ))}
    </datalist>
  ) as string;
  return { id: runNamesId, html };
}

export function runEndsPart(bench: Workbench): Part {
  const html = (
    <datalist id={runEndsId}>
      {bench.report.network.inlets.map(({ fixture, side }) => (
        <option value={`${fixture.id} ${side}`} safe>
          {fixture.name}
        </option>
      ))}
    </datalist>
  ) as string;
  return { id: runEndsId, html };
}

/** Pipe that may be offered while a run is typed. */
export interface PipeChoices {
  /** Nominal sizes, rising. */
  readonly sizes: readonly string[];
  /** How a line may begin: size and material. */
  readonly openings: readonly string[];
}

export function pipeSizesPart({ sizes }: PipeChoices): Part {
  return choicesPart(sizesId, sizes);
}

export function runLinesPart({ openings }: PipeChoices): Part {
  return choicesPart(runLinesId, openings);
}

function choicesPart(id: string, choices: readonly string[]): Part {
  const html = (
    <datalist id={id}>
      {choices.map((choice) => (
        <option value={choice}></option>
      ))}
    </datalist>
  ) as string;
  return { id, html };
}

export function AddRunFields({
  refused,
  from,
}: {
  refused?: Refused | undefined;
  from?: string;
}): JSX.Element {
  return (
    <FormFields id={addRunForm} refused={refused} button="Add the run">
      <TextField
        form={addRunForm}
        name="from"
        label="Comes from"
        value={from ?? ''}
        list={runNamesId}
        refused={refused}
        required
      />
      <TextField
        form={addRunForm}
        name="id"
        label="Name"
        value=""
        refused={refused}
        hint="left empty, the next free one"
      />
      <TextField
        form={addRunForm}
        name="line"
        label="Run as a line"
        value=""
        list={runLinesId}
        refused={refused}
        required
        wide
        hint="e.g. 3/4 PEX 18' up 9' 2 ells"
      />
    </FormFields>
  );
}

export function AddRunForm({ job }: { job: string }): JSX.Element {
  return (
    <EditForm id={addRunForm} action={`/jobs/${job}/runs`}>
      <AddRunFields />
    </EditForm>
  );
}
