import type { FixtureGroup, Job, Level, UnitSystem } from '../../engine/job/job.ts';
import { EditForm, FormFields, formPartId } from '../components/edit-form.tsx';
import { SelectField, TextField } from '../components/field.tsx';
import { markupOf, type Part } from '../part.ts';
import { unitSymbol } from '../text/figure.ts';
import type { Refused, Workbench } from '../workbench.ts';

export const levelsId = 'level-list';
export const groupsId = 'group-list';
export const addLevelForm = 'add-level';
export const addGroupForm = 'add-group';

export function levelForm(level: string): string {
  return `level:${level}`;
}

export function groupForm(group: string): string {
  return `group:${group}`;
}

interface LevelProps {
  readonly system: UnitSystem;
  readonly level?: Level;
  readonly refused?: Refused | undefined;
}

/** Name and height of a level, or of a new one. */
export function LevelFields({ system, level, refused }: LevelProps): JSX.Element {
  const form = level === undefined ? addLevelForm : levelForm(level.id);
  return (
    <FormFields
      id={form}
      refused={refused}
      button={level === undefined ? 'Add the level' : 'Save'}
      live={level !== undefined}
    >
      <TextField
        form={form}
        name="name"
        label={level === undefined ? 'New level' : 'Level'}
        value={level?.name ?? ''}
        refused={refused}
        required
      />
      <TextField
        form={form}
        name="elevation"
        label={`Finished floor, ${unitSymbol('length', system)}`}
        value={level?.elevation.typed ?? ''}
        refused={refused}
        required
      />
    </FormFields>
  );
}

const groupKinds = [
  ['full-bath', 'full bath'],
  ['half-bath', 'half bath'],
  ['kitchen', 'kitchen'],
  ['laundry', 'laundry'],
] as const;

/** Name and kind of a group that the code counts together, or of a new one. */
export function GroupFields({
  group,
  refused,
}: {
  group?: FixtureGroup;
  refused?: Refused | undefined;
}): JSX.Element {
  const form = group === undefined ? addGroupForm : groupForm(group.id);
  return (
    <FormFields
      id={form}
      refused={refused}
      button={group === undefined ? 'Add the group' : 'Save'}
      live={group !== undefined}
    >
      <TextField
        form={form}
        name="name"
        label={group === undefined ? 'New group' : 'Group'}
        value={group?.name ?? ''}
        refused={refused}
        required
      />
      <SelectField
        form={form}
        name="kind"
        label="Counted as"
        value={group?.kind ?? 'full-bath'}
        refused={refused}
        choices={groupKinds}
      />
    </FormFields>
  );
}

export function deleteForm(row: string): string {
  return `${row}:delete`;
}

export function DeleteFields(props: {
  readonly row: string;
  readonly name: string;
  readonly refused?: Refused | undefined;
}): JSX.Element {
  return (
    <FormFields id={deleteForm(props.row)} refused={props.refused} button={`Delete ${props.name}`}>
      {''}
    </FormFields>
  );
}

function rowPart(row: string, name: string, action: string, fields: string): Part {
  const removal = (<DeleteFields row={row} name={name} />) as string;
  return {
    id: `${row}:row`,
    html: () =>
      (
        <li id={`${row}:row`}>
          <EditForm id={row} action={action} live>
            {fields as 'safe'}
          </EditForm>
          <EditForm id={deleteForm(row)} action={`${action}/delete`} class="edit slight">
            {removal as 'safe'}
          </EditForm>
        </li>
      ) as string,
    frame: '',
    children: [
      { id: formPartId(row), html: fields },
      { id: formPartId(deleteForm(row)), html: removal },
    ],
  };
}

function listPart(id: string, children: readonly Part[]): Part {
  return {
    id,
    frame: children.map((child) => child.id).join(' '),
    children,
    list: true,
    html: () =>
      (
        <ul id={id} class="rows">
          {children.map((child) => markupOf(child) as 'safe')}
        </ul>
      ) as string,
  };
}

export function levelListPart({ id, job }: Pick<Workbench, 'id' | 'job'>): Part {
  return listPart(
    levelsId,
    job.levels.map((level) =>
      rowPart(
        levelForm(level.id),
        level.name,
        `/jobs/${id}/levels/${encodeURIComponent(level.id)}`,
        (<LevelFields system={job.units} level={level} />) as string,
      ),
    ),
  );
}

export function groupListPart({ id, job }: Pick<Workbench, 'id' | 'job'>): Part {
  return listPart(
    groupsId,
    job.groups.map((group) =>
      rowPart(
        groupForm(group.id),
        group.name,
        `/jobs/${id}/groups/${encodeURIComponent(group.id)}`,
        (<GroupFields group={group} />) as string,
      ),
    ),
  );
}

export function addLevelPart(job: Job): Part {
  return { id: formPartId(addLevelForm), html: (<LevelFields system={job.units} />) as string };
}

export function addGroupPart(): Part {
  return { id: formPartId(addGroupForm), html: (<GroupFields />) as string };
}
