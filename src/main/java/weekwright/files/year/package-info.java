/** A tax year as one folder for the accountant. */
package weekwright.files.year;
