// Tracing a picture: a click gives a corner in the coordinates of the plan (or of the picture, while its scale is not
// known), and the corners make the line to copy into the plan.
'use strict';
for (const sheet of document.querySelectorAll('.trace')) {
  const svg = sheet.querySelector('svg');
  const measured = sheet.dataset.measured === 'true';
  const part = (name) => sheet.querySelector(`[data-trace="${name}"]`);
  const number = (name) => Number(svg.dataset[name]);
  const snapPixels = 10;
  const rooms = [...svg.querySelectorAll('[data-corners]')].flatMap((path) =>
    path.dataset.corners.split(' ').map((corner) => corner.split(',').map(Number)));
  const corners = [];

  const toPixels = ([right, down]) => [
    number('zeroX') + right * number('pixelsRight'),
    number('zeroY') + down * number('pixelsDown'),
  ];
  const distance = (one, other) => Math.hypot(one[0] - other[0], one[1] - other[1]);
  const round = (value) => Number((Math.round(value / number('rounding')) * number('rounding')).toFixed(4));

  const cornerAt = (pixels) => {
    const near = rooms
      .map((corner) => ({ corner, away: distance(toPixels(corner), pixels) }))
      .filter(({ away }) => away <= snapPixels)
      .sort((one, other) => one.away - other.away);
    if (measured && near.length > 0) {
      return near[0].corner;
    }
    const corner = [
      round((pixels[0] - number('zeroX')) / number('pixelsRight')),
      round((pixels[1] - number('zeroY')) / number('pixelsDown')),
    ];
    if (measured && corners.length > 0) {
      const before = corners[corners.length - 1];
      const beforePixels = toPixels(before);
      [0, 1].forEach((axis) => {
        if (Math.abs(beforePixels[axis] - pixels[axis]) <= snapPixels / 2) {
          corner[axis] = before[axis];
        }
      });
    }
    return corner;
  };

  const layer = document.createElementNS('http://www.w3.org/2000/svg', 'g');
  svg.append(layer);
  const show = () => {
    layer.replaceChildren();
    const line = document.createElementNS(layer.namespaceURI, 'polyline');
    line.setAttribute('points', corners.map((corner) => toPixels(corner).join(',')).join(' '));
    line.setAttribute('class', 'being-traced');
    layer.append(line);
    for (const corner of corners) {
      const dot = document.createElementNS(layer.namespaceURI, 'circle');
      const [x, y] = toPixels(corner);
      dot.setAttribute('cx', x);
      dot.setAttribute('cy', y);
      dot.setAttribute('r', 4);
      dot.setAttribute('class', 'being-traced');
      layer.append(dot);
    }
    const list = corners.map(([right, up]) => `[${right}, ${up}]`).join(', ');
    if (corners.length === 0) {
      part('line').textContent = measured ? 'no corners yet' : 'no places yet';
    } else {
      part('line').textContent = measured
        ? `New room: { outline: [${list}] }`
        : `points: [${list}], distance: ? m`;
    }
    const isWhole = corners.length >= (measured ? 3 : 2);
    part('undo').disabled = corners.length === 0;
    part('clear').disabled = corners.length === 0;
    part('copy').disabled = !isWhole;
  };

  svg.addEventListener('click', (event) => {
    const at = new DOMPoint(event.clientX, event.clientY).matrixTransform(svg.getScreenCTM().inverse());
    if (!measured && corners.length === 2) {
      corners.shift();
    }
    corners.push(cornerAt([at.x, at.y]));
    show();
  });
  part('undo').addEventListener('click', () => {
    corners.pop();
    show();
  });
  part('clear').addEventListener('click', () => {
    corners.length = 0;
    show();
  });
  part('copy').addEventListener('click', () => navigator.clipboard.writeText(part('line').textContent));
}
