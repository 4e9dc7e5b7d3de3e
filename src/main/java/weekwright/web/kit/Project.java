package weekwright.web.kit;

import weekwright.db.Db;
import weekwright.db.Folder;
import weekwright.forecast.Forecasts;

/**
 * What stands open while a project is served.
 *
 * @param folder where it and its pictures lie
 * @param backupTrouble why today's backup could not be made; empty while all is well
 */
public record Project(Folder folder, Db db, Forecasts forecasts, String backupTrouble) {}
