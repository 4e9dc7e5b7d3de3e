/** Files of banks and pay-out services, of any shape: bytes to letters, letters to cells, cells to bookings. Pure. */
package weekwright.files.bank;
