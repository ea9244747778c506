export { Opening as default } from '../later.tsx';
