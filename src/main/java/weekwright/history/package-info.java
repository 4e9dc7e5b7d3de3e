/**
 * The change log in words, and back: all change records of one project version are one change, which can be taken back as
 * one; a removed thing, or an earlier state of one, can be brought back. Whatever is put back is checked by the rules that
 * stand, in one transaction, and is a change of its own.
 */
package weekwright.history;
