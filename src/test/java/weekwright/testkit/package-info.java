/** What several tests stand on: a small project, the real server over a new folder, a browser with and without script. */
package weekwright.testkit;
