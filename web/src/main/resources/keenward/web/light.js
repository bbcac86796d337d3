// Pointing at a finding, or reaching it by keyboard, lights its zones on the drawing.
'use strict';
for (const finding of document.querySelectorAll('.finding')) {
  const zones = (finding.dataset.zones || '').split(' ').filter(Boolean);
  const light = (on) => {
    for (const zone of zones) {
      for (const mark of document.querySelectorAll(`.drawing [data-zone~="${CSS.escape(zone)}"]`)) {
        mark.classList.toggle('lit', on);
      }
    }
  };
  finding.addEventListener('mouseenter', () => light(true));
  finding.addEventListener('mouseleave', () => light(false));
  finding.addEventListener('focus', () => light(true));
  finding.addEventListener('blur', () => light(false));
}
