import { resolve } from 'node:path'
import type { Configuration } from 'electron-builder'

/** Where the project lies, by a whole path. */
export const root = resolve(import.meta.dirname, '..')
/** What goes into the archive, put together by `package-stage.ts`. */
export const STAGED = resolve(root, 'dist/package')
/** The licences of all that is shipped, for a file beside the archive. */
export const LICENCES = resolve(root, 'dist/licences.txt')

/** SQLite's library comes for every system; a package brings the one it can load. */
const onlyFor = (platform: 'linux' | 'win32' | 'darwin') => [
  `!node_modules/better-sqlite3/prebuilds/!(${platform}-\${arch}).node`,
]

/** What the packaged program can no longer be talked into, whatever its command line or its surroundings say. */
export const FUSES = {
  runAsNode: false,
  enableNodeOptionsEnvironmentVariable: false,
  enableNodeCliInspectArguments: false,
  enableEmbeddedAsarIntegrityValidation: true,
  onlyLoadAppFromAsar: true,
  loadBrowserProcessSpecificV8Snapshot: false,
  grantFileProtocolExtraPrivileges: false,
  // There are no cookies, and a key for them would ask for the maker's keychain.
  enableCookieEncryption: false,
} as const

/** Packages for Linux, Windows and the Mac, unsigned as long as there is nobody to sign them. */
export const configuration: Configuration = {
  appId: 'app.ellwand.planner',
  productName: 'Ellwand',
  copyright: 'MIT licence',
  directories: { app: STAGED, output: resolve(root, 'release'), buildResources: resolve(root, 'build') },
  npmRebuild: false,
  publish: null,
  asar: true,
  // A thread and a library of the system's own kind are loaded as files, and so is what the thread reads.
  asarUnpack: [
    'dist/electron/package.json',
    'dist/electron/*-thread*.js',
    'dist/electron/data/**',
    'migrations/**',
    'fonts/**',
    'node_modules/better-sqlite3/**',
  ],
  // A Mac starts no program whose binary was changed after it was signed, be it by nobody in particular.
  electronFuses: { ...FUSES, resetAdHocDarwinSignature: true },
  extraResources: [{ from: LICENCES, to: 'licences.txt' }],
  linux: {
    target: ['AppImage', 'deb'],
    category: 'Office',
    icon: resolve(root, 'build/icon'),
    synopsis: 'Plans historical clothing made to order',
    executableName: 'ellwand',
    files: onlyFor('linux'),
    maintainer: 'Ellwand <maintainer@ellwand.invalid>',
  },
  win: {
    target: ['nsis'],
    icon: resolve(root, 'build/icon/icon.ico'),
    files: onlyFor('win32'),
  },
  nsis: {
    oneClick: false,
    perMachine: false,
    allowToChangeInstallationDirectory: true,
    deleteAppDataOnUninstall: false,
  },
  mac: {
    target: [{ target: 'dmg', arch: ['x64', 'arm64'] }],
    category: 'public.app-category.business',
    icon: resolve(root, 'build/icon/icon.icns'),
    files: onlyFor('darwin'),
    identity: null,
  },
}
