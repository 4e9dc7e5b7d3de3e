package weekwright.web.kit;

import weekwright.db.Db;
import weekwright.db.Folder;
import weekwright.forecast.Forecasts;

/**
 * What stands open while a project is served.
 *
 * @param folder where it and its pictures lie
 */
public record Project(Folder folder, Db db, Forecasts forecasts) {}
