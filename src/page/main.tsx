import './page.css';
import './styles/photograph.css';
import './styles/build.css';
import './styles/sheets.css';
import './styles/grips.css';
import './styles/views.css';
import { render } from 'preact';
import { letInstall } from './installed.ts';
import { openDesign } from './keeping/bring.ts';
import { Page } from './Page.tsx';

const room = document.getElementById('room');
if (room === null) throw new Error('the page has no room to stand in');
render(<Page />, room);

/** A page that was served with a design has it in a block of its own. */
const given = document.getElementById('given-design')?.textContent;
if (given) void openDesign(JSON.parse(given));

letInstall();
