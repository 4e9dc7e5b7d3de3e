package weekwright.web.start;

import weekwright.db.Db;
import weekwright.db.FolderRefused;

/** Makes the empty store of the folder that is served. */
@FunctionalInterface
public interface NewStore {
    Db create() throws FolderRefused;
}
