// Turns a picture into one to read values off: the curve is drawn again from the picture's own table, with a cursor
// that follows the pointer, a slider for the keyboard, and the figures under it in words.

/** The columns of a table that hold figures: what each is called, and its values. */
function columnsOf(table) {
  const heads = [...table.querySelectorAll('thead th.numeric')].map((head) => head.textContent.trim());
  const rows = [...table.querySelectorAll('tbody tr')].map((row) =>
    [...row.querySelectorAll('.numeric')].map((cell) => Number(cell.textContent.trim().replace('−', '-'))),
  );
  return heads.map((name, column) => ({ name, values: rows.map((row) => row[column]) }));
}

function unitOf({ name }) {
  return name.split(', ').at(-1);
}

/** `At the street, psi` and 82 as `At the street 82 psi`, with the digits that the table shows. */
function told({ name }, text) {
  const unit = unitOf({ name });
  return `${name.slice(0, -unit.length - 2)} ${text} ${unit}`;
}

function readOff(figure) {
  const table = document.querySelector(`#${CSS.escape(figure.dataset.readOff)} table`);
  const columns = table ? columnsOf(table) : [];
  if (columns.length < 2 || columns[0].values.length < 2) return;
  const [flow] = columns;
  const texts = [...table.querySelectorAll('tbody tr')].map((row) => [...row.children]);
  const atDemand = texts.findIndex(([cell]) => cell.parentElement.classList.contains('total'));
  const ink = (name) => () => getComputedStyle(figure).getPropertyValue(name).trim();

  const plotted = document.createElement('div');
  plotted.className = 'plotted';
  plotted.setAttribute('aria-hidden', 'true');

  const label = document.createElement('label');
  label.textContent = 'Read off at flow';
  const slider = document.createElement('input');
  slider.id = `${figure.dataset.readOff}:slider`;
  label.htmlFor = slider.id;
  Object.assign(slider, { type: 'range', min: 0, max: flow.values.length - 1, step: 1 });
  const output = document.createElement('output');
  output.htmlFor.add(slider.id);
  const controls = document.createElement('div');
  controls.className = 'read-off-controls';
  controls.append(label, slider, output);
  figure.prepend(plotted, controls);
  figure.classList.add('plotting');

  function show(at) {
    const words = columns
      .map((column, place) => told(column, texts[at][place].textContent.trim()))
      .join(' · ');
    output.textContent = at === atDemand ? `${words} · the demand` : words;
    slider.setAttribute('aria-valuetext', output.textContent);
    slider.value = String(at);
  }

  const axis = (side, label) => ({
    side,
    label,
    labelSize: 18,
    labelFont: '12px sans-serif',
    stroke: ink('--soft'),
    grid: { stroke: ink('--rule'), width: 1 },
    ticks: { stroke: ink('--rule'), width: 1 },
    font: '12px sans-serif',
    size: side === 3 ? 46 : 34,
  });
  const lines = [
    { stroke: ink('--accent'), width: 2.5 },
    { stroke: ink('--ink'), width: 1.8, dash: [7, 4] },
  ];
  const height = () => (figure.clientWidth < 600 ? 280 : 360);
  const plot = new uPlot(
    {
      width: figure.clientWidth,
      height: height(),
      legend: { show: false },
      cursor: { drag: { x: false, y: false }, points: { size: 9 } },
      scales: {
        x: { time: false },
        y: { range: (_plot, least, most) => [Math.min(0, least), Math.max(1, most * 1.08)] },
      },
      axes: [axis(2, flow.name), axis(3, unitOf(columns[1]))],
      series: [
        {},
        ...columns.slice(1).map((_, at) => ({ ...lines[at % lines.length], points: { show: false } })),
      ],
      hooks: {
        setCursor: [
          ({ cursor }) => {
            if (cursor.idx !== null && cursor.idx !== undefined) show(cursor.idx);
          },
        ],
        draw: [drawDemand],
        ready: [(ready) => moveTo(ready, Math.max(0, atDemand))],
        setSize: [(sized) => moveTo(sized, Number(slider.value))],
      },
    },
    columns.map(({ values }) => values),
    plotted,
  );

  function drawDemand({ ctx, bbox, valToPos }) {
    if (atDemand < 0) return;
    const x = Math.round(valToPos(flow.values[atDemand], 'x', true));
    ctx.save();
    ctx.strokeStyle = ink('--ink')();
    ctx.lineWidth = devicePixelRatio;
    ctx.setLineDash([6 * devicePixelRatio, 4 * devicePixelRatio]);
    ctx.beginPath();
    ctx.moveTo(x, bbox.top);
    ctx.lineTo(x, bbox.top + bbox.height);
    ctx.stroke();
    ctx.restore();
  }

  function moveTo(plot, at) {
    show(at);
    plot.setCursor({
      left: plot.valToPos(flow.values[at], 'x'),
      top: plot.valToPos(columns[1].values[at], 'y'),
    });
  }

  slider.addEventListener('input', () => moveTo(plot, Number(slider.value)));
  new ResizeObserver(() => plot.setSize({ width: figure.clientWidth, height: height() })).observe(figure);
  matchMedia('(prefers-color-scheme: dark)').addEventListener('change', () => plot.redraw());
}

for (const figure of document.querySelectorAll('figure[data-read-off]')) readOff(figure);
