package wisp.site;

import java.util.List;
import java.util.Map;
import wisp.question.season.SeasonAnswer;

/**
 * Births and each illness by calendar week on one axis of time. A page of its own, as every week of every illness opens
 * its calves, which would make the season's page too heavy for a phone in the yard.
 *
 * @param pictures SVG, births first
 * @param before the season drawn behind this one, empty where there is none
 * @param rare the illnesses too rare to draw, in words; empty where there is none such
 * @param csv address of the same as CSV
 * @param table the counts behind the pictures
 */
public record SeasonWeeksPage(
        Frame frame, List<SeasonPage.Small> pictures, String before, Sentence rare, String csv, WeeksTable table) {

    static SeasonWeeksPage of(Asked asked, SeasonAnswer answer) {
        Frame frame = Frame.of(asked, "Births and illness by week", "/season/weeks", Map.of());
        SeasonLinks links = new SeasonLinks(frame.links());
        return new SeasonWeeksPage(
                frame,
                SeasonPage.small(IllnessPictures.byWeek(answer, links)),
                answer.before(),
                SeasonPage.rare(answer, frame.links()),
                links.csv("illness-by-week"),
                WeeksTable.of(answer));
    }
}
