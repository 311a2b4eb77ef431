// What htmx alone does not do: keep what is being typed while the page around it changes, keep folds open, and open
// and close explanations.
document.documentElement.classList.add('scripted');

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
  return element.querySelectorAll('input[id], select[id]');
}

document.addEventListener('htmx:beforeRequest', (event) => {
  const form = event.target.closest('form');
  sent = new Map();
  if (form) for (const field of fieldsIn(form)) sent.set(field.id, current(field));
});

document.addEventListener('htmx:oobBeforeSwap', (event) => {
  const { fragment, target } = event.detail;
  const arriving = fragment.querySelector(`#${CSS.escape(target.id)}`);
  if (!arriving) return;
  for (const field of fieldsIn(target)) {
    const held = sent.has(field.id) ? sent.get(field.id) : original(field);
    if (current(field) === held) continue;
    const next = arriving.querySelector(`#${CSS.escape(field.id)}`);
    if (!next) continue;
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

/** The figure whose explanation is open, to come back to. */
let opener;

document.addEventListener('htmx:beforeRequest', (event) => {
  const link = event.target;
  if (link.matches?.('a.figure')) opener = link;
});

document.addEventListener('htmx:afterSwap', (event) => {
  if (event.detail.target.id === 'explain') document.getElementById('explanation-title')?.focus();
});

function closeExplanation() {
  const panel = document.getElementById('explain');
  if (!panel || panel.childElementCount === 0) return;
  panel.replaceChildren();
  opener?.focus();
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
  if (step === undefined || !event.target.matches?.('.line input')) return;
  const lines = [...document.querySelectorAll('.line input')];
  const next = lines[lines.indexOf(event.target) + step];
  if (!next) return;
  event.preventDefault();
  next.focus();
});
