// The order of the page's parts is their order in the document, so that the keyboard follows the eye.
const NARROW = matchMedia('screen and (max-width: 719px)');

export function arrange(main) {
  const part = id => document.getElementById(id);
  const [lesson, stage, bend] = ['lesson', 'stage', 'bend'].map(part);
  const aside = main.querySelector('aside');
  const narrow = NARROW.matches;
  if (narrow) {
    stage.after(part('controls'));
    main.prepend(lesson);
  } else {
    stage.before(part('controls'));
    aside.prepend(lesson);
  }
  if (!main.classList.contains('bent')) aside.querySelector('section:not(#lesson):not(#bend)').before(bend);
  else if (narrow) lesson.after(bend);
  else lesson.before(bend);
}

export function keepArranged(main) {
  NARROW.addEventListener('change', () => arrange(main));
  arrange(main);
}
