// What htmx alone does not do: keep what is being typed while the page around it changes, put fresh figures in their
// places, unfold the fields of a row, and open and close explanations.
document.documentElement.classList.add('scripted');

// A form that saves as soon as a field is left has done so by the time that Enter submits it.
document.addEventListener('submit', (event) => {
  if (event.target.getAttribute('hx-trigger') === 'change') event.preventDefault();
});

/** What each field held when its form was sent; a field that differs from it at the swap is being typed in. */
let sent = new Map();

function current(field) {
  return field.type === 'checkbox' ? field.checked : field.value;
}

function original(field) {
  if (field.type === 'checkbox') return field.defaultChecked;
  if (field.tagName !== 'SELECT') return field.defaultValue;
  const chosen = [...field.options].find((option) => option.defaultSelected);
  return (chosen ?? field.options[0])?.value;
}

function fieldsIn(element) {
  return element.querySelectorAll('input[id], select[id], textarea[id]');
}

function isBeingTyped(field, next) {
  const held = sent.has(field.id) ? sent.get(field.id) : original(field);
  if (current(field) !== held) return true;
  // The answer has no blank at the end of a text, where the next word may be about to follow.
  return (
    field === document.activeElement && field.type !== 'checkbox' && field.value.trimEnd() === next.value
  );
}

document.addEventListener('htmx:beforeRequest', (event) => {
  const form = event.target.closest('form');
  sent = new Map();
  if (form) for (const field of fieldsIn(form)) sent.set(field.id, current(field));
});

document.addEventListener('htmx:oobBeforeSwap', (event) => {
  const { fragment, target } = event.detail;
  const arriving = fragment.querySelector?.(`#${CSS.escape(target.id)}`);
  if (!arriving) return;
  for (const field of fieldsIn(target)) {
    const next = arriving.querySelector(`#${CSS.escape(field.id)}`);
    if (!next || !isBeingTyped(field, next)) continue;
    if (next.type === 'checkbox') next.checked = field.checked;
    else next.value = field.value;
  }
  for (const fold of target.querySelectorAll('details[id][open]')) {
    arriving.querySelector(`#${CSS.escape(fold.id)}`)?.setAttribute('open', '');
  }
});

/** What was selected in the field that is being typed in; htmx gives it back only where it does not begin at 0. */
let selected;

document.addEventListener('htmx:beforeSwap', () => {
  const field = document.activeElement;
  const typed = field?.id && typeof field.selectionStart === 'number';
  selected = typed ? { id: field.id, start: field.selectionStart, end: field.selectionEnd } : undefined;
});

document.addEventListener('htmx:afterSwap', () => {
  const field = document.activeElement;
  if (selected && field?.id === selected.id) field.setSelectionRange(selected.start, selected.end);
});

// Figures that an edit changed arrive as texts in one hidden list.
document.addEventListener('htmx:afterSwap', () => {
  const fresh = document.getElementById('fresh');
  for (const { value, textContent } of fresh?.querySelectorAll('data') ?? []) {
    const place = document.getElementById(value);
    if (place) place.textContent = textContent;
  }
  fresh?.replaceChildren();
});

/** A plain click, which nobody meant for a new tab. */
function isPlain(event) {
  return event.button === 0 && !event.ctrlKey && !event.metaKey && !event.shiftKey && !event.altKey;
}

/** The figure whose explanation is open, to come back to. */
let opener;

document.addEventListener('click', (event) => {
  const link = event.target.closest('a.figure');
  const panel = document.querySelector('body.bench > #explain');
  if (!link || !panel || !isPlain(event)) return;
  event.preventDefault();
  opener = link.id;
  htmx.ajax('GET', link.getAttribute('href'), { target: panel, swap: 'innerHTML' });
});

document.addEventListener('htmx:afterSwap', (event) => {
  if (event.detail.target.id === 'explain') document.getElementById('explanation-title')?.focus();
});

function closeExplanation() {
  const panel = document.getElementById('explain');
  if (!panel || panel.childElementCount === 0) return;
  panel.replaceChildren();
  document.getElementById(opener)?.focus();
}

document.addEventListener('click', (event) => {
  if (event.target.closest('[data-close="explain"]')) closeExplanation();
});

document.addEventListener('keydown', (event) => {
  if (event.key === 'Escape' && document.body.classList.contains('bench')) closeExplanation();
});

// Undo and redo over the whole job; in a field that is being typed in the keys are the field's own.
document.addEventListener('keydown', (event) => {
  if ((!event.ctrlKey && !event.metaKey) || event.altKey) return;
  const key = event.key.toLowerCase();
  const turn = key === 'y' || (key === 'z' && event.shiftKey) ? 'redo' : key === 'z' ? 'undo' : undefined;
  const form = turn && document.getElementById(turn);
  const field = event.target;
  const typing = /^(?:INPUT|TEXTAREA)$/.test(field.tagName) && current(field) !== original(field);
  if (!form || typing || field.isContentEditable) return;
  event.preventDefault();
  form.requestSubmit();
});

/** Unfolds the fields of a row, or folds them. */
async function turnPanel(link) {
  const panel = document.getElementById(link.getAttribute('aria-controls'));
  if (panel.childElementCount > 0) {
    panel.replaceChildren();
  } else {
    await htmx.ajax('GET', link.getAttribute('href'), { target: panel, swap: 'innerHTML' });
  }
  link.setAttribute('aria-expanded', String(panel.childElementCount > 0));
}

document.addEventListener('click', (event) => {
  const link = event.target.closest('a.more[aria-controls]');
  if (!link || !isPlain(event)) return;
  event.preventDefault();
  void turnPanel(link);
});

// An edit keeps the unfolded panels up to date, and only those.
document.addEventListener('htmx:configRequest', (event) => {
  const open = document.querySelectorAll('.run > .panel:not(:empty), .fixture > .panel:not(:empty)');
  if (event.detail.verb === 'post' && open.length > 0)
    event.detail.parameters.livePanels = [...open].map((panel) => panel.id).join(' ');
});

// A link into the page opens the fold that it points into.
function openTarget() {
  const target = document.getElementById(decodeURIComponent(location.hash.slice(1)));
  target?.closest('details')?.setAttribute('open', '');
  if (target?.tagName === 'DETAILS') target.setAttribute('open', '');
}

window.addEventListener('hashchange', openTarget);
openTarget();

// Up and down go from line to line of the layout.
document.addEventListener('keydown', (event) => {
  const step = { ArrowUp: -1, ArrowDown: 1 }[event.key];
  if (step === undefined || event.altKey || !event.target.matches?.('.line input')) return;
  const lines = [...document.querySelectorAll('.line input')];
  const next = lines[lines.indexOf(event.target) + step];
  if (!next) return;
  event.preventDefault();
  next.focus();
});

/** What Alt and Shift with a key do to the run whose line is being typed in: the value of its button. */
const rowMoves = { ArrowUp: 'up', ArrowDown: 'down', ArrowRight: 'in', ArrowLeft: 'out', KeyD: 'copy' };

/** Sends a change of a row from its line, after what is typed there was saved; a line that is refused stays. */
function changeRow(input, change, values) {
  const form = input.form;
  const send = () =>
    htmx.ajax('POST', form.getAttribute('action').replace(/line$/, change), {
      source: form,
      swap: 'none',
      values,
    });
  if (current(input) === original(input)) {
    send();
    return;
  }
  form.addEventListener('htmx:afterRequest', ({ detail }) => detail.xhr.status === 200 && send(), {
    once: true,
  });
  // Left for a moment, the field saves as it does whenever it is left.
  input.blur();
  input.focus();
}

/** Unfolds the fields of a row and goes to the one for a new run. */
async function openNewRun(input, which) {
  const run = input.form.id.replace(/:line$/, '');
  const panel = document.getElementById(`${run}:panel`);
  if (panel.childElementCount === 0) await turnPanel(document.getElementById(`${run}:panel:open`));
  document.getElementById(`${run}:${which}:line`)?.focus();
}

document.addEventListener('keydown', (event) => {
  const input = event.target;
  if (!event.altKey || event.ctrlKey || event.metaKey || !input.matches?.('.line input')) return;
  const move = event.shiftKey ? rowMoves[event.code] : undefined;
  if (move) changeRow(input, 'move', { move });
  else if (event.shiftKey && event.key === 'Delete') {
    const lines = [...document.querySelectorAll('.line input')];
    const at = lines.indexOf(input);
    changeRow(input, 'delete', {});
    (lines[at + 1] ?? lines[at - 1])?.focus();
  } else if (event.key === 'Enter') void openNewRun(input, event.shiftKey ? 'after' : 'under');
  else return;
  event.preventDefault();
});
