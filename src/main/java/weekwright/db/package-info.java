/**
 * The store of one project folder: one writer connection, several readers, migrations, the change log. In come records
 * and the person who changes them; out come records with their row and version. Every change raises the project's
 * version and leaves a change record in the same transaction. Only this package and the {@code *Store} classes know SQL.
 */
package weekwright.db;
