/** Chromium for the tests: found or installed, driven, measured and photographed. */
package wisp.browser;
