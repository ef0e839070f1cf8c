/** What a browser makes of the pages: they are opened in Chromium, looked at, measured and attacked. Start at {@code Browsers}. */
package limbway.reports.browser;
