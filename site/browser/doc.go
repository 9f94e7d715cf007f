// Package browser holds the tests that need a real browser: the built site,
// hosted and carried, in a headless Chromium. There is nothing in it to use.
//
// They need chromium, poppler-utils (for the printed sheets) and the npm
// packages of site/ (axe-core). What is missing is named and its tests are
// skipped; with CI set they fail instead. With the build tag "shots" a picture
// of every view in every theme and size is written to the folder that SHOTS
// names.
package browser
