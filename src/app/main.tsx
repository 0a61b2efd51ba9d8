import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { App } from './App.js';
import { startAutosave } from './storage/autosave.js';
import './styles/tokens.css';
import './styles/base.css';
import './styles/shell.css';
import './styles/panel.css';
import './styles/pages.css';
import './styles/print.css';

startAutosave();
createRoot(document.getElementById('root')!).render(
  <StrictMode>
    <App />
  </StrictMode>,
);
