/* Sorts, filters and keeps what is ticked. All there is to read stands in the page without this. */
(() => {
  /** Keeps the ticks of a list in this browser alone, where it lets itself be written to. */
  const keepTicks = () => {
    const lists = document.querySelectorAll('[data-checklist]');
    const nameOf = (list) => `ullage ${list.dataset.checklist}`;
    const boxes = (name) =>
      [...lists]
        .filter((list) => nameOf(list) === name)
        .flatMap((list) => [...list.querySelectorAll('input')]);
    for (const name of new Set([...lists].map(nameOf))) {
      try {
        const kept = JSON.parse(localStorage.getItem(name) ?? '[]');
        for (const box of boxes(name)) box.checked = Array.isArray(kept) && kept.includes(box.value);
      } catch {
        // Nothing is kept, then.
      }
    }
    document.addEventListener('change', ({ target }) => {
      const list = target.closest?.('[data-checklist]');
      if (!list) return;
      const ticked = boxes(nameOf(list)).filter((box) => box.checked);
      try {
        localStorage.setItem(nameOf(list), JSON.stringify(ticked.map((box) => box.value)));
      } catch {
        // Nothing is kept, then.
      }
    });
  };

  const valueIn = (row, index) => {
    const cell = row.children[index];
    const exact = cell?.querySelector('data')?.value ?? cell?.textContent ?? '';
    return /^-?\d+(\.\d+)?( %)?$/.test(exact.trim()) ? Number.parseFloat(exact) : exact;
  };

  const compare = (a, b) =>
    typeof a === 'number' && typeof b === 'number' ? a - b : String(a).localeCompare(String(b), 'en');

  /** A button in each heading of a table that is worth sorting. */
  const sortTables = () => {
    for (const table of document.querySelectorAll('.table table')) {
      const body = table.tBodies[0];
      if (!body || body.rows.length < 3) continue;
      for (const heading of table.querySelectorAll('thead th')) {
        const button = document.createElement('button');
        button.type = 'button';
        button.append(...heading.childNodes);
        heading.append(button);
        button.addEventListener('click', () => {
          const up = heading.getAttribute('aria-sort') !== 'ascending';
          for (const other of table.querySelectorAll('thead th')) other.removeAttribute('aria-sort');
          heading.setAttribute('aria-sort', up ? 'ascending' : 'descending');
          const index = heading.cellIndex;
          const rows = [...body.rows].map((row) => ({ row, value: valueIn(row, index) }));
          rows.sort((a, b) => (up ? compare(a.value, b.value) : compare(b.value, a.value)));
          body.append(...rows.map(({ row }) => row));
        });
      }
    }
  };

  /** A field above each long list or table that leaves what holds the words. */
  const filterLists = () => {
    let count = 0;
    for (const part of document.querySelectorAll('[data-filter]')) {
      const rows = [...part.querySelectorAll('.list > li, tbody > tr, [data-search]')];
      const label = document.createElement('label');
      const field = document.createElement('input');
      const shown = document.createElement('span');
      count += 1;
      field.type = 'search';
      field.id = `filter-${count}`;
      field.autocomplete = 'off';
      label.htmlFor = field.id;
      label.textContent = 'Show only what holds';
      shown.setAttribute('role', 'status');
      const line = document.createElement('div');
      line.className = 'filter';
      line.append(label, field, shown);
      part.prepend(line);
      const texts = [];
      let waiting = 0;
      const filter = () => {
        const wanted = field.value.toLowerCase().trim();
        let left = 0;
        rows.forEach((row, index) => {
          texts[index] ??= (row.dataset.search ?? row.textContent).toLowerCase();
          const isWanted = texts[index].includes(wanted);
          row.hidden = !isWanted;
          left += Number(isWanted);
        });
        for (const fold of part.querySelectorAll('details')) {
          fold.open =
            wanted !== '' &&
            fold.querySelector(':is(.list > li, tbody > tr, [data-search]):not([hidden])') !== null;
        }
        shown.textContent = wanted === '' ? '' : `${left} of ${part.dataset.filter}`;
      };
      field.addEventListener('input', () => {
        clearTimeout(waiting);
        waiting = setTimeout(filter, 120);
      });
    }
  };

  keepTicks();
  sortTables();
  filterLists();
})();
