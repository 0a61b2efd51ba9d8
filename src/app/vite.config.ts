import { fileURLToPath } from 'node:url';
import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';
import { opencvVitePlugin } from '../vision/opencvVitePlugin.js';
import { relaxPolicyWhileDeveloping } from './build/relaxPolicyWhileDeveloping.js';
import { serveSamples } from './build/serveSamples.js';

const here = (path: string) => fileURLToPath(new URL(path, import.meta.url));

export default defineConfig({
  root: here('.'),
  publicDir: here('./public'),
  build: {
    outDir: here('../../dist/app'),
    emptyOutDir: true,
    target: 'es2022',
    assetsInlineLimit: 0,
    chunkSizeWarningLimit: 3000,
    modulePreload: { polyfill: false },
  },
  optimizeDeps: { exclude: ['opencv-wasm', 'libheif-js'] },
  worker: { format: 'es', plugins: () => [opencvVitePlugin()] },
  plugins: [
    react(),
    opencvVitePlugin(),
    relaxPolicyWhileDeveloping(),
    serveSamples(here('../../samples')),
    VitePWA({
      registerType: 'prompt',
      injectRegister: false,
      includeAssets: ['**/*'],
      manifest: {
        name: 'Seamgrain',
        short_name: 'Seamgrain',
        description: 'Photograph a panel; see where its joints show and why.',
        display: 'standalone',
        start_url: './',
        background_color: '#f2f2f2',
        theme_color: '#f2f2f2',
        icons: [{ src: 'mark.svg', sizes: 'any', type: 'image/svg+xml', purpose: 'any' }],
      },
      workbox: {
        globPatterns: ['**/*.{html,js,css,wasm,svg,jpg,jpeg,png,json,webmanifest}'],
        maximumFileSizeToCacheInBytes: 24 * 1024 * 1024,
        cleanupOutdatedCaches: true,
      },
    }),
  ],
});
