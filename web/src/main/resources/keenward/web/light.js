// Pointing at a finding, or reaching it by keyboard, lights its zones on the drawing; pointing at a zone lights its
// findings, and a click goes to the first of them.
'use strict';
const findings = [...document.querySelectorAll('.finding')].map((element) => ({
  element,
  zones: (element.dataset.zones || '').split(' ').filter(Boolean),
}));

for (const { element, zones } of findings) {
  const light = (on) => {
    for (const zone of zones) {
      for (const mark of document.querySelectorAll(`.drawing [data-zone~="${CSS.escape(zone)}"]`)) {
        mark.classList.toggle('lit', on);
      }
    }
  };
  element.addEventListener('mouseenter', () => light(true));
  element.addEventListener('mouseleave', () => light(false));
  element.addEventListener('focus', () => light(true));
  element.addEventListener('blur', () => light(false));
}

for (const mark of document.querySelectorAll('.drawing [data-zone]')) {
  const marked = mark.dataset.zone.split(' ');
  const about = findings.filter(({ zones }) => zones.some((zone) => marked.includes(zone)));
  const light = (on) => about.forEach(({ element }) => element.classList.toggle('lit', on));
  mark.addEventListener('mouseenter', () => light(true));
  mark.addEventListener('mouseleave', () => light(false));
  mark.addEventListener('click', () => {
    if (about.length > 0) {
      about[0].element.focus();
    }
  });
}
