import { render } from 'preact';
import { watchForUpdates } from './pwa/updates.ts';

const place = document.getElementById('app');
if (place) render(<h1>Slipbaste</h1>, place);

watchForUpdates({ onOfflineReady() {}, onUpdateWaiting() {} });
