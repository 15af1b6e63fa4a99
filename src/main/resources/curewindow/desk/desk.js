// Keeps the dates beside a form true while it is filled in; without it, buttons do the same.
(() => {
  'use strict';
  const root = document.documentElement;
  root.classList.add('js');
  const form = document.getElementById('job');
  /** In milliseconds; two keys of a scanner come sooner after each other, two of a person later. */
  const MOMENT = 400;
  const MINUTE = 60000;
  let turn = 0;
  let timer;
  let queue = Promise.resolve();

  /** The form as it would be sent, with what the pressed button says. */
  const body = (wanted) => {
    const data = new URLSearchParams(new FormData(form));
    data.set('do', wanted);
    return data;
  };

  const away = (text, way) => {
    const line = document.getElementById('away');
    line.hidden = !text;
    line.textContent = text;
    if (way) {
      // In a window of its own, so that the form stays as it is.
      const link = Object.assign(document.createElement('a'), {href: '/enter', target: '_blank', textContent: way});
      line.append(' ', link);
    }
    if (text) line.scrollIntoView({block: 'nearest'});
  };

  /** Fills an element with what came back of it, where that is another. */
  const renew = (now, then) => {
    if (now && then && now.innerHTML !== then.innerHTML) now.replaceChildren(...then.childNodes);
  };

  /** What is wrong with each value stands beside it, and goes once it is right. */
  const mark = (page) => {
    for (const then of page.querySelectorAll('[data-field]')) {
      const now = form.querySelector(`[data-field="${CSS.escape(then.dataset.field)}"]`);
      if (!now) continue;
      now.querySelectorAll(':scope > .wrong').forEach((e) => e.remove());
      now.append(...then.querySelectorAll(':scope > .wrong'));
      const field = now.querySelector('input,select');
      field?.toggleAttribute('aria-invalid', then.querySelector('[aria-invalid]') !== null);
      if (field?.hasAttribute('aria-invalid')) field.setAttribute('aria-invalid', 'true');
    }
  };

  /** A time that nobody touched is now, which was a while ago when it was last shown. */
  const follow = (page) => {
    for (const then of page.querySelectorAll('input[name^="now:"]')) {
      const now = form.querySelector(`[name="${CSS.escape(then.name)}"]`);
      const field = form.querySelector(`[name="${CSS.escape(then.name.slice(4))}"]`);
      if (now && field?.value === now.value) now.value = field.value = then.value;
    }
  };

  /** Puts back what was typed or checked while an answer was on its way. */
  const keep = (sent, typed) => {
    for (const name of new Set([...sent.keys(), ...typed.keys()])) {
      if (name === 'do' || `${sent.getAll(name)}` === `${typed.getAll(name)}`) continue;
      for (const field of form.querySelectorAll(`[name="${CSS.escape(name)}"]`)) {
        if (field.type === 'checkbox' || field.type === 'radio') {
          field.checked = typed.getAll(name).includes(field.value);
          field.dispatchEvent(new Event('change', {bubbles: true}));
        } else {
          field.value = typed.get(name) ?? '';
        }
      }
    }
  };

  /** Puts what came back into the page: what is beside the fields, what hangs on them, or all. */
  const put = (page, how, sent) => {
    const typed = new URLSearchParams(new FormData(form));
    const kept = document.activeElement?.id;
    for (const id of ['problems', 'advice', 'beside']) renew(document.getElementById(id), page.getElementById(id));
    const live = form.querySelectorAll('[data-live]');
    if (how === 'part' && live.length) {
      live.forEach((now) => renew(now, page.getElementById(now.id)));
    } else if (how !== 'look') {
      renew(document.getElementById('items'), page.getElementById('items'));
    }
    mark(page);
    follow(page);
    if (how === 'part') keep(sent, typed);
    if (how !== 'look' && kept) document.getElementById(kept)?.focus();
  };

  /** One request after the other, so that no answer undoes what came after its question. */
  const inTurn = (work) => {
    clearTimeout(timer);
    const mine = ++turn;
    queue = queue.then(() => work(mine)).catch(() => away(form.dataset.away));
    return queue;
  };

  /** Where in this window it is kept what was typed, until it is saved. */
  const KEPT = `typed ${form?.getAttribute('action')}`;
  const HERE = location.pathname + location.search;

  const remember = () => sessionStorage.setItem(KEPT, JSON.stringify({at: HERE, sent: `${body('look')}`}));

  /** Sends the form; a page without one says in its own words why there is none. */
  const send = async (wanted, sent = body(wanted)) => {
    const answer = await fetch(form.action, {method: 'POST', body: sent});
    if (wanted === 'save' && answer.redirected) {
      sessionStorage.removeItem(KEPT);
      location.assign(answer.url);
      return {};
    }
    const page = new DOMParser().parseFromString(await answer.text(), 'text/html');
    const said = [...page.querySelectorAll('main h1, main p')].map((e) => e.textContent).join(' ');
    const good = page.getElementById('job') !== null;
    const gate = page.querySelector('form[data-again]');
    if (gate) away(gate.dataset.kept, gate.dataset.again);
    else away(good ? '' : said || form.dataset.away);
    document.getElementById('beside').classList.toggle('old', !good);
    return good ? {page, sent} : {};
  };

  // Of several looks only the last one counts.
  const ask = (wanted, how) => inTurn(async (mine) => {
    if (how === 'look' && mine !== turn) return;
    const {page, sent} = await send(wanted);
    if (page) put(page, how, sent);
  });

  const save = () => inTurn(async () => {
    const {page} = await send('save');
    if (!page) return;
    form.replaceChildren(...page.getElementById('job').childNodes);
    const wrong = form.querySelector('.wrong, .warn:not([hidden])');
    wrong?.scrollIntoView({block: 'center'});
    const at = wrong?.closest('label,[data-field],.row,fieldset');
    [...at?.querySelectorAll('input,select,textarea') ?? []].find((e) => e.checkVisibility())?.focus({preventScroll: true});
  });

  /** Puts back what was typed before somebody went elsewhere. */
  const goOn = (sent) => inTurn(async () => {
    const {page} = await send('look', new URLSearchParams(sent));
    if (page) form.replaceChildren(...page.getElementById('job').childNodes);
  });

  /** Who comes back or loads the screen again goes on at once; who opens it anew is asked. */
  const begun = () => {
    const kept = JSON.parse(sessionStorage.getItem(KEPT));
    if (!kept) return;
    const back = performance.getEntriesByType('navigation')[0]?.type !== 'navigate';
    if (back && kept.at === HERE) {
      goOn(kept.sent);
      return;
    }
    const button = document.getElementById('begun');
    button.hidden = false;
    button.addEventListener('click', () => goOn(kept.sent));
  };

  /** Something is added, taken off or filled in; a second click meanwhile is none. */
  const act = async (wanted) => {
    if (form.dataset.busy) return;
    form.dataset.busy = 'true';
    await ask(wanted, 'items');
    delete form.dataset.busy;
    remember();
    const items = form.querySelectorAll('.item');
    const item = wanted.startsWith('usual') ? items[0] : items[items.length - 1];
    item?.querySelector(wanted.startsWith('usual') ? 'input[type=text]' : 'select')?.focus();
  };

  if (form) {
    form.addEventListener('input', (event) => {
      form.querySelector(`[name="now:${CSS.escape(event.target.name)}"]`)?.remove();
      remember();
      clearTimeout(timer);
      timer = setTimeout(() => ask('look', 'look'), 150);
    });
    form.addEventListener('change', (event) => {
      const box = event.target;
      if (box.type === 'checkbox') {
        const item = box.closest('.item');
        item?.querySelectorAll('.tap').forEach((tap) => {
          if (tap.dataset.spot === box.value) tap.classList.toggle('on', box.checked);
        });
      }
      if ('redraw' in box.dataset) ask('look', 'part');
    });
    form.addEventListener('click', (event) => {
      const tap = event.target.closest('.tap');
      if (!tap) return;
      const item = tap.closest('.item');
      const box = [...item.querySelectorAll('.picks input')].find((i) => i.value === tap.dataset.spot);
      box?.click();
    });
    // A scanner ends a batch with Enter, or with two, which is no wish to save or to press what comes next.
    let entered = -Infinity;
    form.addEventListener('keydown', (event) => {
      if (event.key !== 'Enter') return;
      const again = event.timeStamp - entered < MOMENT;
      if (again) event.preventDefault();
      if (again || !event.target.matches('input:not([type=checkbox]):not([type=radio])')) return;
      event.preventDefault();
      entered = event.timeStamp;
      const all = [...form.querySelectorAll('input,select,textarea')].filter((e) => e.checkVisibility() && e.tabIndex >= 0);
      all[all.indexOf(event.target) + 1]?.focus();
    });
    setInterval(() => {
      if (!document.hidden && form.querySelector('[name^="now:"]')) ask('look', 'look');
    }, MINUTE);
    form.addEventListener('submit', (event) => {
      // In another language it is a page of its own, with all that is in the form.
      if (event.submitter?.name === 'speak') return;
      event.preventDefault();
      const wanted = event.submitter?.value || 'look';
      if (wanted === 'save') save();
      else if (wanted === 'look') ask('look', 'part');
      else act(wanted);
    });
    begun();
  }

  // A file goes along as letters, since a form only carries text.
  const table = document.getElementById('import');
  if (table) {
    const label = document.getElementById('import-file');
    const {table: coded, name, rows} = table.elements;
    label.hidden = false;
    label.querySelector('input').addEventListener('change', async (event) => {
      const file = event.target.files[0];
      const large = !!file && file.size > +coded.dataset.most;
      document.getElementById('import-large').hidden = !large;
      coded.value = '';
      name.value = '';
      rows.disabled = !!file;
      const go = table.querySelector('.main');
      go.disabled = !!file;
      if (!file || large) return;
      const bytes = new Uint8Array(await file.arrayBuffer());
      let text = '';
      for (let i = 0; i < bytes.length; i += 0x8000) text += String.fromCharCode(...bytes.subarray(i, i + 0x8000));
      coded.value = btoa(text).replace(/\+/g, '-').replace(/\//g, '_').replace(/=/g, '');
      name.value = file.name;
      go.disabled = false;
    });
  }

  document.querySelectorAll('[data-copy]').forEach((button) => {
    button.hidden = false;
    // Without https, as in the shop's network, browsers only copy what is marked.
    button.addEventListener('click', () => {
      getSelection().selectAllChildren(document.getElementById(button.dataset.copy));
      if (document.execCommand('copy')) button.textContent = button.dataset.copied;
    });
  });
  document.querySelectorAll('[data-busy]').forEach((button) => {
    button.form.addEventListener('submit', (event) => {
      if (event.submitter === button) button.setAttribute('aria-busy', 'true');
    });
  });
})();
