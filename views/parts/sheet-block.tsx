import type { SheetBlock, SheetFormula, SheetRow, SheetTable } from '../sheet.ts';

/** One block of the sheet as it is read on a screen. */
export function SheetBlockView({ block }: { readonly block: SheetBlock }): JSX.Element {
  switch (block.is) {
    case 'paragraph':
      return (
        <p class={`tone-${block.tone}`} safe>
          {block.text}
        </p>
      );
    case 'list':
      return (
        <ul>
          {block.items.map((item) => (
            <li safe>{item}</li>
          ))}
        </ul>
      );
    case 'facts':
      return (
        <dl class="facts">
          {block.rows.map(([name, value]) => (
            <div>
              <dt safe>{name}</dt>
              <dd safe>{value}</dd>
            </div>
          ))}
        </dl>
      );
    case 'table':
      return <TableView table={block} />;
    case 'formula':
      return <FormulaView formula={block} />;
    case 'blanks':
      return (
        <ul class="blanks" aria-label="To be filled in by hand">
          {block.labels.map((label) => (
            <li safe>{label}</li>
          ))}
        </ul>
      );
  }
}

function TableView({ table }: { readonly table: SheetTable }): JSX.Element {
  const { title, columns, rows, note } = table;
  return (
    <>
      <section class="scroll" tabindex="0" aria-label={title}>
        <table class="sheet-table">
          <caption safe>{title}</caption>
          <thead>
            <tr>
              {columns.map(({ head, align }) =>
                head === '' ? (
                  <td></td>
                ) : (
                  <th scope="col" class={align === 'right' ? 'numeric' : undefined} safe>
                    {head}
                  </th>
                ),
              )}
            </tr>
          </thead>
          <tbody>
            {rows.map((row) => (
              <RowView row={row} table={table} />
            ))}
          </tbody>
        </table>
      </section>
      {note === '' ? (
        ''
      ) : (
        <p class="tone-note" safe>
          {note}
        </p>
      )}
    </>
  );
}

function RowView({ row, table }: { readonly row: SheetRow; readonly table: SheetTable }): JSX.Element {
  if (row.kind === 'group') {
    return (
      <tr class="group">
        <th scope="rowgroup" colspan={table.columns.length} safe>
          {row.cells[0] ?? ''}
        </th>
      </tr>
    );
  }
  return (
    <tr class={row.kind === 'total' ? 'total' : undefined}>
      {row.cells.map((cell, at) => (
        <td class={table.columns[at]?.align === 'right' ? 'numeric' : undefined} safe>
          {cell}
        </td>
      ))}
    </tr>
  );
}

function FormulaView({ formula }: { readonly formula: SheetFormula }): JSX.Element {
  const { title, step, printed, arithmetic, result, terms, source } = formula;
  return (
    <div class="worked">
      <h3 safe>{`${title}, here for ${step}`}</h3>
      <p class="formula">
        <code safe>{printed}</code>
      </p>
      <p class="arithmetic">
        <code safe>{`= ${arithmetic} = ${result}`}</code>
      </p>
      <section class="scroll" tabindex="0" aria-label={`Symbols of ${title}`}>
        <table class="sheet-table">
          <thead>
            <tr>
              <th scope="col">Symbol</th>
              <th scope="col" class="numeric">
                Value
              </th>
              <th scope="col">What it is</th>
              <th scope="col">Where it comes from</th>
            </tr>
          </thead>
          <tbody>
            {terms.map(({ symbol, value, meaning, origin }) => (
              <tr>
                <th scope="row" safe>
                  {symbol}
                </th>
                <td class="numeric" safe>
                  {value}
                </td>
                <td safe>{meaning}</td>
                <td safe>{origin}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      <p class="tone-note" safe>
        {source}
      </p>
    </div>
  );
}
