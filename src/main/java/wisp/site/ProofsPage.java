package wisp.site;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import wisp.due.Due;
import wisp.due.Proof;
import wisp.due.ProofCalf;
import wisp.records.Records;

/**
 * Every limit of which something can be shown, with the share inside it.
 *
 * @param empty whether no calf at all is on record
 * @param law limits of law
 * @param practice limits of good practice
 */
public record ProofsPage(Frame frame, boolean empty, List<Row> law, List<Row> practice) {

    /** Steps that a figure proves too; where both say the same, the figure's row is enough. */
    private static final Map<String, String> FIGURES = Map.of(
            "both-tags", "tagged-inside-limit", "register", "registered-inside-limit", "castrate", "ring-window");

    /** One limit. */
    public record Row(
            String title,
            String href,
            String share,
            String interval,
            Count inside,
            Count outside,
            Count pending,
            Count leftOut) {}

    static ProofsPage of(Asked asked, Records records, Due due) {
        Frame frame = Frame.of(asked, "Inside the limits", "/proof", Map.of());
        List<Row> law = new ArrayList<>();
        List<Row> practice = new ArrayList<>();
        Map<String, Proof> proofs = new LinkedHashMap<>();
        for (String id : Proof.ids(due, records.definitions(), asked.cohort())) {
            Proof.of(due, records.definitions(), asked.cohort(), asked.selection(), id)
                    .filter(proof -> !proof.limits().isEmpty())
                    .filter(proof -> !said(proof, proofs.get(FIGURES.getOrDefault(id, ""))))
                    .ifPresent(proof -> proofs.put(id, proof));
        }
        proofs.values().forEach(proof -> (ofLaw(proof) ? law : practice).add(row(proof, frame.links())));
        return new ProofsPage(frame, asked.cohort().lives().isEmpty(), law, practice);
    }

    private static boolean said(Proof step, Proof figure) {
        return figure != null
                && Stream.of(ProofCalf.Part.INSIDE, ProofCalf.Part.BREACH, ProofCalf.Part.PENDING)
                        .allMatch(part -> step.count(part) == figure.count(part));
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
                count(proof, ProofCalf.Part.INSIDE, links),
                count(proof, ProofCalf.Part.BREACH, links),
                count(proof, ProofCalf.Part.PENDING, links),
                count(proof, ProofCalf.Part.LEFT_OUT, links));
    }

    private static Count count(Proof proof, ProofCalf.Part part, Links links) {
        int n = proof.count(part);
        return new Count(n, n == 0 ? "" : ProofList.of(part).href(links, "/proof/" + proof.id()));
    }
}
