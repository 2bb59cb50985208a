// Cases on disk, and buttons that say what became of them.
import {post} from './asking.js';

// Hands the case over as the text of a case file.
export async function saveCase(tree) {
  const {title, text} = await post('/api/save', {case: tree});
  const name = title.toLowerCase().replace(/[^a-z0-9]+/g, '-').replace(/^-|-$/g, '') || 'case';
  const link = document.createElement('a');
  link.href = URL.createObjectURL(new Blob([text], {type: 'application/yaml'}));
  link.download = `${name}.yaml`;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 10_000);
}

// The case in a file.
export async function readCase(file) {
  const answer = await post('/api/open', {name: file.name.slice(0, 200), text: await file.text()});
  return answer.case;
}

// A button that says for a moment what it did.
export function sayOn(button, text, more, live) {
  const usual = button.dataset.usual || button.textContent;
  button.dataset.usual = usual;
  button.textContent = text;
  button.title = more;
  live.textContent = `${text}. ${more}`;
  setTimeout(() => {
    button.textContent = usual;
  }, 3000);
}
