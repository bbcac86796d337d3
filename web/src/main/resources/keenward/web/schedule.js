// A schedule that sorts by the heads of its columns and filters by words. Both stand in the address, so that a view can be kept.
'use strict';
for (const table of document.querySelectorAll('table.schedule')) {
  const body = table.tBodies[0];
  const heads = Array.from(table.tHead.rows[0].cells);
  const rows = Array.from(body.rows);
  const address = new URL(window.location);
  const compare = new Intl.Collator('en', { numeric: true, sensitivity: 'base' }).compare;

  const remember = (name, value) => {
    if (value) {
      address.searchParams.set(name, value);
    } else {
      address.searchParams.delete(name);
    }
    window.history.replaceState(null, '', address);
  };

  const sort = (column, down) => {
    const order = (one, other) =>
      compare(one.cells[column].textContent.trim(), other.cells[column].textContent.trim()) * (down ? -1 : 1);
    body.append(...rows.sort(order));
    heads.forEach((head, index) => {
      if (index === column) {
        head.setAttribute('aria-sort', down ? 'descending' : 'ascending');
      } else {
        head.removeAttribute('aria-sort');
      }
    });
  };

  heads.forEach((head, column) => {
    const button = document.createElement('button');
    button.type = 'button';
    button.className = 'sort';
    button.textContent = head.textContent;
    button.addEventListener('click', () => {
      const down = head.getAttribute('aria-sort') === 'ascending';
      sort(column, down);
      remember('sort', (down ? '-' : '') + (column + 1));
    });
    head.replaceChildren(button);
  });

  const bar = document.createElement('p');
  bar.className = 'filter';
  const label = document.createElement('label');
  label.textContent = 'Show only ';
  const field = document.createElement('input');
  field.type = 'search';
  field.autocomplete = 'off';
  field.placeholder = 'words, such as: motion ward';
  label.append(field);
  const count = document.createElement('span');
  count.setAttribute('role', 'status');
  bar.append(label, count);
  table.closest('.scroll').before(bar);

  const filter = () => {
    const words = field.value.toLowerCase().split(/\s+/).filter(Boolean);
    let shown = 0;
    for (const row of rows) {
      const text = row.textContent.toLowerCase();
      row.hidden = !words.every((word) => text.includes(word));
      shown += row.hidden ? 0 : 1;
    }
    count.textContent = words.length ? ` ${shown} of ${rows.length}` : ` ${rows.length} rows`;
  };
  field.addEventListener('input', () => {
    filter();
    remember('show', field.value.trim());
  });

  field.value = address.searchParams.get('show') || '';
  filter();
  const sorted = /^(-?)([0-9]{1,2})$/.exec(address.searchParams.get('sort') || '');
  if (sorted && Number(sorted[2]) >= 1 && Number(sorted[2]) <= heads.length) {
    sort(Number(sorted[2]) - 1, sorted[1] === '-');
  }
}
