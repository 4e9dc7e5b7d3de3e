package weekwright.build;

/**
 * What stands on every printed sheet for an emergency ([emergency] in project.toml). One row.
 */
public record Emergency(String number, String address, String wayIn, String firstAider, String kit, String shutOffs) {}
