import preact from '@preact/preset-vite';
import { defineConfig } from 'vitest/config';

export default defineConfig({
  base: './',
  plugins: [preact()],
  build: { target: 'es2022' },
  test: {
    projects: [
      {
        extends: true,
        test: { name: 'core', environment: 'node', include: ['tests/{length,shape,cloth,outfit,order,fitting,time,outside,house}/**/*.test.ts'] },
      },
      {
        extends: true,
        test: { name: 'screens', environment: 'happy-dom', include: ['tests/{store,ui,screens}/**/*.test.{ts,tsx}'] },
      },
      {
        extends: true,
        test: {
          name: 'browser',
          environment: 'node',
          include: ['tests/browser/**/*.test.ts'],
          testTimeout: 120_000,
          hookTimeout: 120_000,
          fileParallelism: false,
        },
      },
    ],
  },
});
