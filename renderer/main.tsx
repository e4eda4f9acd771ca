import '@fontsource/ibm-plex-sans/400.css';
import '@fontsource/ibm-plex-sans/600.css';
import '@fontsource/ibm-plex-sans-condensed/400.css';
import '@fontsource/ibm-plex-sans-condensed/500.css';
import '@fontsource/ibm-plex-sans-condensed/600.css';
import './app/tokens.css';
import './app/book.css';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { BookShell } from './app/BookShell.tsx';
import { FaultPage } from './app/FaultPage.tsx';
import { connectHost } from './app/hostClient.ts';
import { Session } from './app/session.ts';
import { View } from './app/view.ts';
import { Planner } from './planning/Planner.ts';

const host = connectHost();
const session = new Session(host);
const planner = new Planner();
const view = new View(session, planner);
const book = { session, view, planner };

host.onOpenPath((path) => void session.open(path));

const place = document.getElementById('book');
if (place === null) throw new Error('the page has no place for the book');
createRoot(place).render(
  <StrictMode>
    <FaultPage>
      <BookShell book={book} />
    </FaultPage>
  </StrictMode>,
);
void session.start().then(() => {
  if (session.snapshot().yard !== null) view.fallOpen('walk');
});
