/**
 * Who gets in: passphrases and their rules, log-ins, sessions, start codes, and how often somebody may try. In come a name
 * and a passphrase, out comes a session or the reason why not. Secrets are stored as hashes only and never logged.
 */
package weekwright.account;
