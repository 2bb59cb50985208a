// Tables of numbers: the few that tell results apart, and every station.
import {html} from './svg.js';
import {difference, number, unitName} from './units.js';

export function drawNumbers(place, rows, pinned, units) {
  const heads = pinned ? ['', 'now', 'pinned', 'change'] : ['', 'now'];
  const groups = [];
  rows.forEach((row, i) => {
    if (i === 0 || rows[i - 1].group !== row.group) {
      groups.push(html('tbody', {}, html('tr', {class: 'group'},
        html('th', {scope: 'rowgroup', colspan: heads.length}, row.group))));
    }
    const then = pinned && pinned.find(other => other.key === row.key);
    groups[groups.length - 1].append(
      row.unit ? numberRow(row, pinned, then, units) : wordRow(row, then, heads.length));
  });
  place.replaceChildren(html('table', {class: pinned ? 'numbers compared' : 'numbers'},
    html('caption', {class: 'unseen'}, 'Numbers of the present result'),
    html('thead', {}, html('tr', {}, ...heads.map(head => html('th', {scope: 'col'}, head)))),
    ...groups));
}

function numberRow(row, pinned, then, units) {
  const cells = [number(row.value, row.unit, units)];
  if (pinned) {
    cells.push(then ? number(then.value, row.unit, units) : '–');
    cells.push(then ? difference(row.value, then.value, row.unit, units) : '–');
  }
  return html('tr', {'data-key': row.key},
    html('th', {scope: 'row'}, `${row.name} (${unitName(row.unit, units)})`),
    ...cells.map(cell => html('td', {}, cell)));
}

// Words have no difference: they share one cell.
function wordRow(row, then, columns) {
  const text = then && then.text !== row.text ? `${row.text}; pinned: ${then.text}` : row.text;
  return html('tr', {'data-key': row.key}, html('th', {scope: 'row'}, row.name),
    html('td', {colspan: columns - 1}, text));
}

export function drawStations(place, result, units) {
  const columns = [['hardness_HV', 'HV'], ['yield_MPa', 'MPa'], ['tensile_MPa', 'MPa']];
  const heads = [`distance (${unitName('mm', units)})`, 'zone', `peak (${unitName('°C', units)})`];
  for (const [key, unit] of columns) {
    const name = key.split('_')[0];
    result.states.forEach(state => heads.push(`${name}, ${state} (${unitName(unit, units)})`));
  }
  const rows = result.distance_mm.map((mm, i) => html('tr', {},
    html('th', {scope: 'row'}, number(mm, 'mm', units)),
    html('td', {}, result.zone[i]),
    html('td', {}, number(result.peak_temperature_C[i], '°C', units)),
    ...columns.flatMap(([key, unit]) => result.states.map((state, s) =>
      html('td', {}, number(result[key].middle[s][i], unit, units))))));
  place.replaceChildren(html('table', {},
    html('caption', {class: 'unseen'}, 'Every station, from left to right'),
    html('thead', {}, html('tr', {}, ...heads.map(head => html('th', {scope: 'col'}, head)))),
    html('tbody', {}, ...rows)));
}

export function drawNotes(place, warnings, cautions) {
  const list = items => html('ul', {}, ...items.map(text => html('li', {}, text)));
  place.replaceChildren(
    html('h3', {}, 'Warnings'), list(warnings.map(warning => warning.text)),
    html('h3', {}, 'Cautions'), list(cautions));
}
