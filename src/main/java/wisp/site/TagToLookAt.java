package wisp.site;

import java.util.List;
import wisp.cohort.Cohort;
import wisp.history.Life;
import wisp.history.TagWarning;
import wisp.tag.TagNumber;

/**
 * A tag that somebody should look at again, in words. It is no mark: every figure counts the tag.
 *
 * @param kind such as {@code two ears, two numbers}
 * @param likely what may have been meant, empty where nothing is known
 */
public record TagToLookAt(
        CalfName calf, String href, String kind, String problem, String likely, String mend, String mendHref) {

    /**
     * Those of a whole herd.
     *
     * @param mending where corrections are written; null where nothing can be
     */
    static List<TagToLookAt> of(Cohort cohort, Links links, Links mending) {
        return TagWarning.of(cohort.lives()).stream()
                .map(warning -> row(warning, links, mending))
                .toList();
    }

    /** Those of one calf. */
    static List<TagToLookAt> of(Life life, Cohort cohort, Links links, Links mending) {
        return TagWarning.of(life, cohort.lives()).stream()
                .map(warning -> row(warning, links, mending))
                .toList();
    }

    private static TagToLookAt row(TagWarning warning, Links links, Links mending) {
        return new TagToLookAt(
                CalfName.of(warning.life()),
                links.calf(warning.life().key()),
                warning.kind().word(),
                warning.problem(),
                String.join(
                        ", ", warning.likely().stream().map(TagNumber::shown).toList()),
                warning.kind().mend(),
                CalfPage.mendHref(warning.event(), mending));
    }
}
