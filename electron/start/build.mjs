// npm run build: the page and the Electron shell, into dist/.
import { ensureInstalled, ensurePage, ensureShell } from './ensure.mjs';

ensureInstalled();
ensurePage();
ensureShell();
