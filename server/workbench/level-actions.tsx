import {
  addGroupForm,
  addLevelForm,
  DeleteFields,
  deleteForm,
  GroupFields,
  groupForm as groupFormId,
  LevelFields,
  levelForm as levelFormId,
} from '../../views/parts/level-list.tsx';
import type { Workbench } from '../../views/workbench.ts';
import {
  addGroup,
  addLevel,
  changeGroup,
  changeLevel,
  removeGroup,
  removeLevel,
} from '../edits/level-edits.ts';
import { groupForm, levelForm } from '../forms/level-forms.ts';
import { readForm } from '../forms/read-form.ts';
import { type EditAction, withForm } from './edit-action.ts';

function levelOf(bench: Workbench, id: string) {
  return bench.job.levels.find((level) => level.id === id);
}

function groupOf(bench: Workbench, id: string) {
  return bench.job.groups.find((group) => group.id === id);
}

/** The forms of levels and groups. */
export const levelActions: readonly EditAction[] = [
  {
    path: '/levels',
    apply: (job, fields) => withForm(readForm(levelForm(job.units), fields), (level) => addLevel(job, level)),
    fields: (bench, _place, refused) =>
      (<LevelFields system={bench.job.units} refused={refused} />) as string,
    form: () => addLevelForm,
    anchor: () => 'levels',
  },
  {
    path: '/levels/:place',
    apply: (job, fields, id) =>
      withForm(readForm(levelForm(job.units), fields), (level) => changeLevel(job, id, level)),
    fields: (bench, id, refused) => {
      const level = levelOf(bench, id);
      if (level === undefined) return undefined;
      return (<LevelFields system={bench.job.units} level={level} refused={refused} />) as string;
    },
    form: levelFormId,
    anchor: () => 'levels',
  },
  {
    path: '/levels/:place/delete',
    apply: (job, _fields, id) => removeLevel(job, id),
    fields: (bench, id, refused) => {
      const level = levelOf(bench, id);
      if (level === undefined) return undefined;
      return (<DeleteFields row={levelFormId(id)} name={level.name} refused={refused} />) as string;
    },
    form: (id) => deleteForm(levelFormId(id)),
    anchor: () => 'levels',
  },
  {
    path: '/groups',
    apply: (job, fields) => withForm(readForm(groupForm, fields), (group) => addGroup(job, group)),
    fields: (_bench, _place, refused) => (<GroupFields refused={refused} />) as string,
    form: () => addGroupForm,
    anchor: () => 'levels',
  },
  {
    path: '/groups/:place',
    apply: (job, fields, id) => withForm(readForm(groupForm, fields), (group) => changeGroup(job, id, group)),
    fields: (bench, id, refused) => {
      const group = groupOf(bench, id);
      return group === undefined ? undefined : ((<GroupFields group={group} refused={refused} />) as string);
    },
    form: groupFormId,
    anchor: () => 'levels',
  },
  {
    path: '/groups/:place/delete',
    apply: (job, _fields, id) => removeGroup(job, id),
    fields: (bench, id, refused) => {
      const group = groupOf(bench, id);
      if (group === undefined) return undefined;
      return (<DeleteFields row={groupFormId(id)} name={group.name} refused={refused} />) as string;
    },
    form: (id) => deleteForm(groupFormId(id)),
    anchor: () => 'levels',
  },
];
