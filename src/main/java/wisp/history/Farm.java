package wisp.history;

import java.time.ZoneId;
import wisp.event.FarmDescribed;

/**
 * The farm as it was at one time.
 *
 * @param name its name, empty where never given
 * @param zone the zone of its clocks
 * @param jurisdiction whose law holds, the name of a limits file
 * @param enterprise dairy or beef
 * @param described false where nothing was ever said and these are what is taken for granted
 */
public record Farm(
        String name, ZoneId zone, String jurisdiction, FarmDescribed.Enterprise enterprise, boolean described) {
    /** What is taken for granted of a farm that was never described; pages say so. */
    public static final Farm UNDESCRIBED =
            new Farm("", ZoneId.of("Europe/London"), "england", FarmDescribed.Enterprise.DAIRY, false);

    /** This farm with the fields that a description gives. */
    Farm with(FarmDescribed said) {
        return new Farm(
                said.name() == null ? name : said.name(),
                said.zone() == null ? zone : said.zone(),
                said.jurisdiction() == null ? jurisdiction : said.jurisdiction(),
                said.enterprise() == null ? enterprise : said.enterprise(),
                true);
    }
}
