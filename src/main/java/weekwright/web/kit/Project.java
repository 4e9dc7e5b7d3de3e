package weekwright.web.kit;

import weekwright.db.Db;
import weekwright.db.Folder;

/**
 * What stands open while a project is served.
 *
 * @param folder where it and its pictures lie
 */
public record Project(Folder folder, Db db) {}
