// Keeps the dates beside a form true while it is filled in; without it, buttons do the same.
(() => {
  'use strict';
  const root = document.documentElement;
  root.classList.add('js');
  const form = document.getElementById('job');
  let turn = 0;
  let timer;
  let queue = Promise.resolve();

  /** The form as it would be sent, with what the pressed button says. */
  const body = (wanted) => {
    const data = new URLSearchParams(new FormData(form));
    data.set('do', wanted);
    return data;
  };

  const away = (text) => {
    const line = document.getElementById('away');
    line.hidden = !text;
    line.textContent = text;
    if (text) line.scrollIntoView({block: 'nearest'});
  };

  /** Puts what came back into the page; what is being typed in stays untouched. */
  const put = (html, all) => {
    const page = new DOMParser().parseFromString(html, 'text/html');
    const kept = document.activeElement && document.activeElement.id;
    const ids = all ? ['items', 'problems', 'advice', 'beside'] : ['problems', 'advice', 'beside'];
    for (const id of ids) {
      const now = document.getElementById(id);
      const then = page.getElementById(id);
      if (now && then && now.innerHTML !== then.innerHTML) now.replaceChildren(...then.childNodes);
    }
    if (all && kept) document.getElementById(kept)?.focus();
  };

  /** One request after the other, so that no answer undoes what came after its question. */
  const inTurn = (work) => {
    clearTimeout(timer);
    const mine = ++turn;
    queue = queue.then(() => work(mine)).then(() => away(''), () => away(form.dataset.away));
  };

  // Of several looks only the last one counts.
  const ask = (wanted, all) => inTurn(async (mine) => {
    if (!all && mine !== turn) return;
    const answer = await fetch(form.action, {method: 'POST', body: body(wanted)});
    put(await answer.text(), all);
  });

  const save = () => inTurn(async () => {
    const answer = await fetch(form.action, {method: 'POST', body: body('save')});
    if (answer.redirected) {
      location.assign(answer.url);
      return;
    }
    const theirs = new DOMParser().parseFromString(await answer.text(), 'text/html').getElementById('job');
    form.replaceChildren(...theirs.childNodes);
    form.querySelector('.wrong, .warn:not([hidden])')?.scrollIntoView({block: 'center'});
  });

  if (form) {
    form.addEventListener('input', () => {
      clearTimeout(timer);
      timer = setTimeout(() => ask('look', false), 150);
    });
    form.addEventListener('change', (event) => {
      const box = event.target;
      if (box.type === 'checkbox') {
        const item = box.closest('.item');
        item?.querySelectorAll('.tap').forEach((tap) => {
          if (tap.dataset.spot === box.value) tap.classList.toggle('on', box.checked);
        });
      }
      if ('redraw' in box.dataset) {
        clearTimeout(timer);
        ask('look', true);
      }
    });
    form.addEventListener('click', (event) => {
      const tap = event.target.closest('.tap');
      if (!tap) return;
      const item = tap.closest('.item');
      const box = [...item.querySelectorAll('.picks input')].find((i) => i.value === tap.dataset.spot);
      box?.click();
    });
    // A scanner ends a batch with Enter, which is no wish to save.
    form.addEventListener('keydown', (event) => {
      if (event.key === 'Enter' && event.target.matches('input:not([type=checkbox]):not([type=radio])')) {
        event.preventDefault();
        const all = [...form.querySelectorAll('input,select,button')].filter((e) => e.offsetParent);
        all[all.indexOf(event.target) + 1]?.focus();
      }
    });
    form.addEventListener('submit', (event) => {
      event.preventDefault();
      const wanted = event.submitter?.value || 'look';
      if (wanted === 'save') save();
      else ask(wanted, true);
    });
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
    if (!navigator.clipboard) return;
    button.hidden = false;
    button.addEventListener('click', async () => {
      await navigator.clipboard.writeText(document.getElementById(button.dataset.copy).textContent);
      button.textContent = button.dataset.copied;
    });
  });
  document.querySelectorAll('[data-busy]').forEach((button) => {
    button.form.addEventListener('submit', (event) => {
      if (event.submitter === button) button.setAttribute('aria-busy', 'true');
    });
  });
})();
