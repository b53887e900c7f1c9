'use strict';
// The board works without this script: then everything is shown, and links lead to their places.
// With it: filters, search, one time line at a time, keys, and the chosen leg at the foot of the window.
// What is shown stands behind the # of the address, so a link can be kept or sent.
(() => {
  const page = document.documentElement;
  const byId = id => document.getElementById(id);
  const all = (selector, from = document) => [...from.querySelectorAll(selector)];
  page.classList.add('scripted');

  // What there is: one entry a leg, with everything on the page that belongs to it.
  const legs = new Map();
  for (const row of all('table.legs tr[id]')) {
    const { state, aircraft, crew, day, key } = row.dataset;
    legs.set(row.id, { id: row.id, row, state, aircraft, crew: crew.split(' '), day, key, checks: new Set(), findings: [], parts: [], bars: [], text: row.textContent.toLowerCase(), isShown: true });
  }
  const titles = new Map();
  for (const part of all('[data-leg]')) {
    const leg = legs.get(part.dataset.leg);
    if (!leg) continue;
    if (part.classList.contains('bar')) leg.bars.push(part);
    else if (part.classList.contains('finding')) {
      leg.findings.push(part);
      leg.checks.add(part.dataset.check);
      leg.text += ' ' + part.textContent.toLowerCase();
      titles.set(part.dataset.check, part.dataset.title);
    } else leg.parts.push(part);
  }
  const bars = all('.bar');
  const rows = all('.row').map(row => ({ row, bars: all('.bar', row) }));
  const groups = all('.day, .actor').map(group => ({ group, members: all('tr[id], .finding', group), count: group.querySelector('h3 > .soft') }));
  const choice = { day: byId('day'), aircraft: byId('aircraft'), person: byId('person'), check: byId('check') };
  for (const [check, title] of [...titles].sort()) choice.check.add(new Option(check + ' ' + title, check));
  const search = byId('q'), shown = byId('shown'), detail = byId('detail'), help = byId('help');
  const toggles = all('.toggle'), views = all('[data-view]');
  let view = 'aircraft', chosen = '';

  // Filters.
  const wanted = () => ({ states: toggles.filter(one => one.getAttribute('aria-pressed') === 'true').map(one => one.dataset.state), words: search.value.toLowerCase().split(/\s+/).filter(Boolean),
    day: choice.day.value, aircraft: choice.aircraft.value, person: choice.person.value, check: choice.check.value });

  const fits = (leg, want) => (!want.states.length || want.states.includes(leg.state)) && (!want.day || leg.day === want.day) && (!want.aircraft || leg.aircraft === want.aircraft)
    && (!want.person || leg.crew.includes(want.person)) && (!want.check || leg.checks.has(want.check)) && want.words.every(word => leg.text.includes(word));

  const show = () => {
    const want = wanted();
    let count = 0;
    for (const leg of legs.values()) {
      leg.isShown = fits(leg, want);
      if (leg.isShown) count++;
      leg.row.hidden = !leg.isShown;
      for (const part of leg.parts) part.hidden = !leg.isShown;
      for (const finding of leg.findings) finding.hidden = !leg.isShown || (want.check !== '' && finding.dataset.check !== want.check);
      for (const bar of leg.bars) bar.classList.toggle('off', !leg.isShown);
    }
    const isAll = count === legs.size;
    for (const one of rows) one.row.hidden = !isAll && one.bars.every(bar => bar.classList.contains('off'));
    for (const one of groups) {
      const open = one.members.filter(member => !member.hidden).length;
      one.group.hidden = open === 0 && one.members.length > 0;
      if (one.count) one.count.textContent = open;
    }
    shown.textContent = isAll ? `All ${count} legs` : `${count} of ${legs.size} legs`;
    page.classList.toggle('filtered', !isAll);
    roam();
  };

  // The address.
  const plain = text => encodeURIComponent(text).replace(/%2F/g, '/').replace(/%20/g, '+');
  const write = () => {
    const want = wanted(), parts = [];
    if (chosen) parts.push('leg=' + plain(chosen.slice(4)));
    if (view === 'crew') parts.push('view=crew');
    if (want.states.length) parts.push('state=' + want.states.join(','));
    for (const name of ['day', 'aircraft', 'person', 'check']) if (want[name]) parts.push(name + '=' + plain(want[name]));
    if (search.value.trim()) parts.push('q=' + plain(search.value.trim()));
    history.replaceState(null, '', parts.length ? '#' + parts.join('&') : location.pathname + location.search);
  };

  const read = () => {
    const said = new URLSearchParams(location.hash.slice(1));
    if (location.hash && ![...said.values()].some(Boolean)) return; // a part of the page, such as #legs
    const states = (said.get('state') ?? '').split(',');
    for (const one of toggles) one.setAttribute('aria-pressed', states.includes(one.dataset.state));
    for (const [name, select] of Object.entries(choice)) {
      select.value = said.get(name) ?? '';
      if (select.selectedIndex < 0) select.value = '';
    }
    search.value = said.get('q') ?? '';
    look(said.get('view') === 'crew' ? 'crew' : 'aircraft');
    show();
    const leg = said.has('leg') ? legs.get('leg=' + said.get('leg')) : null;
    if (leg) choose(leg, true);
    else close();
  };

  // The chosen leg.
  const make = (name, text, className) => Object.assign(document.createElement(name), { textContent: text ?? '', className: className ?? '' });
  const choose = (leg, scrolls) => {
    for (const bar of bars) bar.removeAttribute('aria-current');
    for (const one of legs.values()) one.row.classList.toggle('chosen', one === leg);
    chosen = leg.id;
    const cells = [...leg.row.cells];
    const head = make('div', '', 'detail-head');
    const title = make('h2');
    title.append(...cells[0].cloneNode(true).childNodes, ' ', ...cells[1].cloneNode(true).childNodes);
    title.className = 'kind ' + leg.state;
    const shut = make('button', 'Close');
    shut.type = 'button';
    shut.addEventListener('click', () => { close(); write(); });
    head.append(title, shut);
    const facts = make('p', '', 'facts');
    for (const [index, label] of [[2, ' UTC'], [3, ''], [4, ''], [5, ''], [6, ' pax']]) facts.append(make('span', cells[index].textContent.trim() + label));
    facts.prepend(make('span', leg.row.closest('.day').querySelector('h3').textContent));
    const links = make('p', '', 'links');
    for (const link of cells[8].children) {
      const copy = link.cloneNode(true);
      copy.textContent = link.className === 'pdf' ? 'PDF' : 'Trip sheet';
      links.append(copy, ' ');
    }
    const inList = make('a', 'In the list');
    inList.href = '#legs';
    inList.addEventListener('click', event => { event.preventDefault(); leg.row.scrollIntoView({ block: 'center' }); });
    links.append(inList);
    const list = make('div', '', 'detail-list');
    list.tabIndex = 0;
    for (const finding of leg.findings) {
      const copy = finding.cloneNode(true);
      copy.hidden = false;
      copy.querySelector('.where')?.remove();
      list.append(copy);
    }
    if (!leg.findings.length) list.append(make('p', 'Every check passes without a caution.'));
    detail.replaceChildren(head, facts, links, list);
    detail.hidden = false;
    page.style.setProperty('--foot', detail.offsetHeight + 'px');
    for (const bar of leg.bars) {
      bar.setAttribute('aria-current', 'true');
      if (bar.closest('.line').dataset.line === view) {
        roam(bar);
        if (scrolls) bar.scrollIntoView({ block: 'nearest', inline: 'nearest' });
      }
    }
  };
  const close = () => {
    for (const bar of bars) bar.removeAttribute('aria-current');
    for (const leg of legs.values()) leg.row.classList.remove('chosen');
    chosen = '';
    detail.hidden = true;
    page.style.setProperty('--foot', '0px');
  };

  // The time line: one bar of each takes the focus, the arrows move it.
  const isOpen = bar => !bar.classList.contains('off');
  const roam = at => {
    for (const line of all('.line')) {
      const open = all('.bar', line);
      const stop = open.includes(at) ? at : open.find(bar => bar.tabIndex === 0 && isOpen(bar)) ?? open.find(isOpen);
      for (const bar of open) bar.tabIndex = bar === stop ? 0 : -1;
    }
  };
  const look = name => {
    view = name;
    page.dataset.view = name;
    for (const one of views) one.setAttribute('aria-pressed', one.dataset.view === name);
  };
  const middle = bar => parseFloat(bar.style.left) + parseFloat(bar.style.width) / 2;
  const move = key => {
    const lines = rows.filter(one => one.row.closest('.line').dataset.line === view).map(one => one.bars.filter(isOpen)).filter(list => list.length);
    if (!lines.length) return;
    const leg = legs.get(chosen);
    const at = document.activeElement.classList.contains('bar') ? document.activeElement : leg?.bars.find(bar => lines.some(list => list.includes(bar)));
    const line = lines.findIndex(list => list.includes(at));
    let next = lines[0][0];
    if (line >= 0) {
      const list = lines[line], place = list.indexOf(at);
      if (key === 'ArrowLeft') next = list[place - 1] ?? lines[line - 1]?.at(-1) ?? at;
      else if (key === 'ArrowRight') next = list[place + 1] ?? lines[line + 1]?.[0] ?? at;
      else if (key === 'Home') next = list[0];
      else if (key === 'End') next = list.at(-1);
      else {
        const other = lines[line + (key === 'ArrowUp' ? -1 : 1)];
        next = other ? other.reduce((best, bar) => Math.abs(middle(bar) - middle(at)) < Math.abs(middle(best) - middle(at)) ? bar : best) : at;
      }
    }
    next.focus({ preventScroll: true });
    choose(legs.get(next.dataset.leg), true);
    write();
  };

  // Scale: the whole week in the window where that leaves six px an hour, else steps.
  const scroll = name => document.querySelector(`.line[data-line="${name}"] .scroll`);
  const steps = [3, 6, 10, 16, 26, 48, 84];
  let hour = 0;
  const fitting = () => {
    const box = scroll(view);
    if (!box) return 14;
    const hours = parseFloat(box.querySelector('.canvas').style.getPropertyValue('--hours'));
    return (box.clientWidth - box.querySelector('.corner').offsetWidth) / hours;
  };
  const scale = to => {
    const box = scroll(view);
    const share = box && hour ? (box.scrollLeft + box.clientWidth / 2) / box.scrollWidth : 0;
    hour = to;
    page.style.setProperty('--hour', hour + 'px');
    page.dataset.scale = hour < 4 ? 'day' : hour < 12 ? 'six' : hour < 24 ? 'three' : 'one';
    if (box) box.scrollLeft = share * box.scrollWidth - box.clientWidth / 2;
    if (box) legs.get(chosen)?.bars.find(bar => box.contains(bar))?.scrollIntoView({ block: 'nearest', inline: 'center' });
  };
  const fit = () => { if (fitting() >= 6) scale(fitting()); else if (!hour) scale(14); };
  const step = by => scale(by > 0 ? steps.find(one => one > hour * 1.05) ?? hour : steps.findLast(one => one < hour / 1.05 && one >= fitting() * 0.95) ?? (fitting() < hour ? fitting() : hour));

  // What the user does.
  const changed = () => {
    performance.mark('filter');
    show();
    write();
    performance.measure('filter', 'filter');
  };
  for (const one of toggles) one.addEventListener('click', () => { one.setAttribute('aria-pressed', one.getAttribute('aria-pressed') !== 'true'); changed(); });
  for (const select of Object.values(choice)) select.addEventListener('change', changed);
  search.addEventListener('input', changed);
  byId('filters').addEventListener('submit', event => event.preventDefault());
  const clear = () => {
    for (const one of toggles) one.setAttribute('aria-pressed', 'false');
    for (const select of Object.values(choice)) select.value = '';
    search.value = '';
    changed();
  };
  byId('clear').addEventListener('click', clear);
  byId('more').addEventListener('click', event => event.target.setAttribute('aria-expanded', byId('filters').classList.toggle('open')));
  byId('keys').addEventListener('click', () => help.showModal());
  const turn = name => { look(name); fit(); roam(); write(); };
  for (const one of views) one.addEventListener('click', () => turn(one.dataset.view));
  byId('wider')?.addEventListener('click', () => step(1));
  byId('narrower')?.addEventListener('click', () => step(-1));
  document.addEventListener('click', event => {
    const link = event.target.closest('a[href^="#leg="]');
    const leg = link && legs.get(link.getAttribute('href').slice(1));
    if (!leg || event.ctrlKey || event.metaKey || event.shiftKey) return;
    event.preventDefault();
    choose(leg, !link.classList.contains('bar'));
    write();
  });
  document.addEventListener('keydown', event => {
    if (event.ctrlKey || event.metaKey || event.altKey || help.open) return;
    const at = document.activeElement, isTyping = at.matches('input, select, textarea');
    if (event.key === 'Escape') {
      if (isTyping && at === search && search.value) { search.value = ''; changed(); }
      else if (isTyping) at.blur();
      else if (!detail.hidden) { close(); write(); }
      else clear();
      return;
    }
    if (isTyping) return;
    const isOnLine = at.matches('.bar, .scroll') || (chosen && at === document.body);
    if (event.key === '/') search.focus();
    else if (event.key === '?') help.showModal();
    else if (event.key === 'v') turn(view === 'crew' ? 'aircraft' : 'crew');
    else if (event.key === '+' || event.key === '=') step(1);
    else if (event.key === '-') step(-1);
    else if (['ArrowLeft', 'ArrowRight'].includes(event.key) && (isOnLine || at === document.body)) move(event.key);
    else if (['ArrowUp', 'ArrowDown', 'Home', 'End'].includes(event.key) && isOnLine) move(event.key);
    else if (event.key === 'Enter' && chosen && (at.matches('.bar') || at === document.body)) location.href = legs.get(chosen).row.querySelector('a.sheet').href;
    else return;
    event.preventDefault();
  });
  addEventListener('hashchange', read);
  addEventListener('resize', fit);
  look('aircraft');
  fit();
  show();
  read();
})();
