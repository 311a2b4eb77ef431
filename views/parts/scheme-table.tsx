import type { Comparison, SchemeColumn } from '../schemes.ts';
import { SchemeActions } from './scheme-actions.tsx';
import { type RowGroup, schemeRows } from './scheme-rows.tsx';

/** Schemes side by side: a table with a column for each, and on a phone a card for each. */
export function SchemeTable({ comparison }: { comparison: Comparison }): JSX.Element {
  const { columns } = comparison;
  const groups = schemeRows(comparison);
  return (
    <>
      <div class="scroll only-wide">
        <table class={`schemes of-${columns.length}`}>
          <thead>
            <tr>
              <td></td>
              {columns.map((column) => (
                <th scope="col" class={isChosen(comparison, column) ? 'chosen' : undefined}>
                  <SchemeHead comparison={comparison} column={column} />
                </th>
              ))}
            </tr>
          </thead>
          {groups.map((group) => (
            <GroupRows group={group} columns={columns} />
          ))}
          <tbody class="actions-row">
            <tr>
              <th scope="row">
                <span class="visually-hidden">What to do</span>
              </th>
              {columns.map(({ compared }) => (
                <td>
                  <SchemeActions comparison={comparison} scheme={compared.id} name={compared.name} />
                </td>
              ))}
            </tr>
          </tbody>
        </table>
      </div>
      <ul class="scheme-cards only-narrow">
        {columns.map((column) => (
          <li class={isChosen(comparison, column) ? 'chosen' : undefined}>
            <h3>
              <SchemeHead comparison={comparison} column={column} />
            </h3>
            {groups.map((group) => (
              <Card group={group} column={column} />
            ))}
            <SchemeActions comparison={comparison} scheme={column.compared.id} name={column.compared.name} />
          </li>
        ))}
      </ul>
    </>
  );
}

function isChosen({ job }: Comparison, { compared }: SchemeColumn): boolean {
  return job.chosen === compared.id;
}

function SchemeHead(props: { readonly comparison: Comparison; readonly column: SchemeColumn }): JSX.Element {
  const { letter, compared } = props.column;
  return (
    <>
      <span class="letter" safe>
        {letter}
      </span>{' '}
      <span class="scheme-name" safe>
        {compared.name}
      </span>
      {isChosen(props.comparison, props.column) ? <span class="chosen-mark">✓ chosen</span> : ''}
    </>
  );
}

function GroupRows(props: {
  readonly group: RowGroup;
  readonly columns: readonly SchemeColumn[];
}): JSX.Element {
  const { group, columns } = props;
  return (
    <tbody>
      <tr class="group">
        <th scope="rowgroup" colspan={columns.length + 1} safe>
          {group.title}
        </th>
      </tr>
      {group.rows.map(({ label, cell, strong }) => (
        <tr class={strong ? 'strong' : undefined}>
          <th scope="row" safe>
            {label}
          </th>
          {columns.map((column) => (
            <td>{cell(column) as 'safe'}</td>
          ))}
        </tr>
      ))}
    </tbody>
  );
}

function Card(props: { readonly group: RowGroup; readonly column: SchemeColumn }): JSX.Element {
  const { group, column } = props;
  const list = (
    <dl>
      {group.rows.map(({ label, cell, strong }) => (
        <div class={strong ? 'strong' : undefined}>
          <dt safe>{label}</dt>
          <dd>{cell(column) as 'safe'}</dd>
        </div>
      ))}
    </dl>
  );
  if (group.fold) {
    return (
      <details>
        <summary safe>{group.title}</summary>
        {list as 'safe'}
      </details>
    );
  }
  return list;
}
