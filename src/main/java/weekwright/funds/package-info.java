/** The money side: material lines, the timber yard, the ledger, regular items, pledge levels and supporters. */
package weekwright.funds;
