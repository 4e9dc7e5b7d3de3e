package weekwright.testkit;

import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import weekwright.db.Db;

/** Plants a setting in the one connection of a store that writes; a new connection, after a disk fault say, has it no more. */
public final class WritingConnection {
    private WritingConnection() {}

    /** Runs a {@code PRAGMA} that no transaction allows. */
    public static void set(Db db, String pragma) throws SQLException {
        db.<Void, SQLException>write("crew", write -> {
            Connection connection = write.handle().getConnection();
            connection.setAutoCommit(true);
            try (Statement statement = connection.createStatement()) {
                statement.execute(pragma);
            }
            connection.setAutoCommit(false);
            return null;
        });
    }
}
