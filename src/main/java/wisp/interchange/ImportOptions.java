package wisp.interchange;

import java.time.ZoneId;

/**
 * How files are to be imported.
 *
 * @param dryRun true: say what would happen and write nothing
 * @param partial true: sound rows go in though others are refused; false: all rows of all files go in, or none
 * @param zone the farm's time zone, for dates and hours that carry no offset; a mapping's own zone goes before it
 * @param mapping how a foreign CSV's columns become events; null for CSV in Wisp's own columns
 * @param subjects whose a tag number is, for a mapping that finds animals by it; else null
 */
public record ImportOptions(boolean dryRun, boolean partial, ZoneId zone, Mapping mapping, TagSubjects subjects) {

    /** Options for files that name animals by their keys. */
    public ImportOptions(boolean dryRun, boolean partial, ZoneId zone, Mapping mapping) {
        this(dryRun, partial, zone, mapping, null);
    }

    /** All or nothing, written, in this zone, from files that need no mapping. */
    public static ImportOptions plain(ZoneId zone) {
        return new ImportOptions(false, false, zone, null);
    }
}
