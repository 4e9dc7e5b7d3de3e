/**
 * Campaigns against the real server as a process of its own: killed at random moments, and with the power cut. A few rounds run
 * with the tests, hundreds by command.
 */
package weekwright.campaign;
