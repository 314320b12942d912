package wisp.site;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import wisp.due.Due;
import wisp.due.Proof;
import wisp.due.ProofCalf;
import wisp.records.Records;

/**
 * Every limit of which something can be shown, with the share inside it.
 *
 * @param law limits of law
 * @param practice limits of good practice
 */
public record ProofsPage(Frame frame, List<Row> law, List<Row> practice) {

    /** One limit. */
    public record Row(String title, String href, String share, String interval, int inside, int outside, int pending) {}

    static ProofsPage of(Asked asked, Records records, Due due) {
        Frame frame = Frame.of(asked, "Inside the limits", "/proof", Map.of());
        List<Row> law = new ArrayList<>();
        List<Row> practice = new ArrayList<>();
        for (String id : Proof.ids(due, records.definitions(), asked.cohort())) {
            Proof.of(due, records.definitions(), asked.cohort(), asked.selection(), id)
                    .ifPresent(proof -> (ofLaw(proof) ? law : practice).add(row(proof, frame.links())));
        }
        return new ProofsPage(frame, law, practice);
    }

    private static boolean ofLaw(Proof proof) {
        return proof.limits().keySet().stream().anyMatch(rule -> !rule.place().isEmpty());
    }

    private static Row row(Proof proof, Links links) {
        return new Row(
                ProofPage.title(proof),
                links.to("/proof/" + proof.id()),
                proof.share() == null ? "" : ProofWords.percent(proof.share().value()),
                proof.share() == null
                        ? ""
                        : ProofWords.percent(proof.share().low()) + " to "
                                + ProofWords.percent(proof.share().high()),
                proof.count(ProofCalf.Part.INSIDE),
                proof.count(ProofCalf.Part.BREACH),
                proof.count(ProofCalf.Part.PENDING));
    }
}
