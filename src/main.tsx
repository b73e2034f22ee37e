import { startApp } from './app';

const element = document.getElementById('app');
if (element !== null) void startApp(element);
