/** Looking for words in everything. */
package weekwright.web.search;
