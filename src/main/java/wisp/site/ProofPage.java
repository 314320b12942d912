package wisp.site;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import wisp.chart.SvgPainter;
import wisp.due.Breach;
import wisp.due.DueRule;
import wisp.due.Proof;
import wisp.due.ProofCalf;

/**
 * What can be shown of one limit: how many were inside, how long it took, and every calf that was not.
 *
 * @param answer one or two sentences
 * @param counts how many calves count in which way, each opening its calves
 * @param picture SVG, empty where no calf's time is known
 * @param milestones the share done by some times
 * @param outside the calves outside on this leaf, by both clocks; none beside another list
 * @param enteredLate calves inside, of which the record came in after the limit, on this leaf
 * @param counted how many there are of these two on all leaves
 * @param dayNought the day from which days are counted, in words
 * @param rules the limits used, with their sources
 * @param list the calves on this leaf of the count that is asked for, empty where none is
 * @param leaf which calves of the list, or else of those outside and entered late, stand on this leaf
 */
public record ProofPage(
        Frame frame,
        String id,
        String title,
        List<Sentence> answer,
        List<Count> counts,
        String picture,
        List<Milestone> milestones,
        List<Outside> outside,
        List<Outside> enteredLate,
        Counted counted,
        String dayNought,
        List<Rule> rules,
        String listTitle,
        List<Outside> list,
        Leaf leaf) {
    private static final int MILESTONES = 8;

    /** How many calves count in one way. */
    public record Count(String name, int calves, String href) {}

    /** The share done by a time. */
    public record Milestone(String time, String share, String interval, int waiting, String waitingHref) {}

    /** How many calves are outside, and how many were entered late. */
    public record Counted(int outside, int enteredLate) {}

    /** One calf and what is on record of it. */
    public record Outside(String name, String href, String words) {}

    /** A limit and what it stands on. */
    public record Rule(String limit, String kind, String source, String status, String remarks) {}

    static ProofPage of(Asked asked, Proof proof, String part, String number) {
        Map<String, String> kept = part == null || part.isBlank() ? Map.of() : Map.of(ProofList.PARAMETER, part);
        String path = "/proof/" + proof.id();
        Frame frame = Frame.of(asked, proof.title(), path, kept);
        Links links = frame.links();
        ProofList.Asked asksFor = ProofList.asked(proof, part);
        List<Outside> outside = breaches(proof.outside(), links);
        List<Outside> late = breaches(proof.enteredLate(), links);
        List<Outside> all = asksFor == null
                ? Stream.concat(outside.stream(), late.stream()).toList()
                : listed(asksFor.calves(), links);
        Leaf leaf = Leaf.of(all.size(), number, frame, Map.of());
        List<Outside> shown = leaf.of(all);
        int first = asksFor == null ? Math.max(0, Math.min(shown.size(), outside.size() - leaf.first() + 1)) : 0;
        return new ProofPage(
                frame,
                proof.id(),
                title(proof),
                Sentence.all(ProofWords.answer(proof), links, path + "#calves"),
                counts(proof, links, path),
                proof.curve() == null ? "" : SvgPainter.figure(ProofPicture.of(proof)),
                milestones(proof, links, path),
                shown.subList(0, first),
                asksFor == null ? shown.subList(first, shown.size()) : List.of(),
                new Counted(outside.size(), late.size()),
                ProofWords.dayNought(proof),
                rules(proof),
                asksFor == null ? "" : asksFor.title(),
                asksFor == null ? List.of() : shown,
                leaf);
    }

    static String title(Proof proof) {
        return proof.title().substring(0, 1).toUpperCase(Locale.ROOT)
                + proof.title().substring(1);
    }

    private static List<Count> counts(Proof proof, Links links, String path) {
        List<Count> counts = new ArrayList<>();
        for (ProofCalf.Part part : ProofCalf.Part.values()) {
            ProofList list = ProofList.of(part);
            counts.add(new Count(list.title(), proof.count(part), list.href(links, path)));
        }
        return counts;
    }

    /** Some of the curve's steps: the last at or before each of a few times, the limits' own among them. */
    private static List<Milestone> milestones(Proof proof, Links links, String path) {
        List<Milestone> milestones = new ArrayList<>();
        if (proof.curve() == null) {
            return milestones;
        }
        for (double time : ProofPicture.times(proof, MILESTONES)) {
            var there = proof.curve().at(time);
            milestones.add(new Milestone(
                    ProofWords.time(proof, time),
                    ProofWords.percent(there.value()),
                    ProofWords.percent(there.low()) + " to " + ProofWords.percent(there.high()),
                    proof.curve().atRiskAt(time),
                    ProofList.waiting(time, links, path)));
        }
        return milestones;
    }

    private static List<Outside> breaches(List<Breach> breaches, Links links) {
        return breaches.stream()
                .map(one -> new Outside(
                        CalfName.of(one.life()).both(), links.calf(one.life().key()), one.words()))
                .toList();
    }

    private static List<Outside> listed(List<ProofCalf> calves, Links links) {
        return calves.stream()
                .map(calf -> new Outside(
                        CalfName.of(calf.life()).both(), links.calf(calf.life().key()), done(calf)))
                .toList();
    }

    private static String done(ProofCalf calf) {
        ZoneId zone = calf.life().farm().zone();
        return calf.done() == null
                ? "nothing on record"
                : "done " + Shown.moment(calf.done().time(), calf.done().timeKnown(), zone) + ", recorded "
                        + Shown.moment(calf.done().recorded(), true, zone);
    }

    private static List<Rule> rules(Proof proof) {
        List<Rule> rules = new ArrayList<>();
        for (DueRule rule : proof.limits().keySet()) {
            String place = rule.place().isEmpty() ? "" : rule.place() + ": ";
            String read = rule.basis().readOn().isEmpty()
                    ? ""
                    : ", last checked " + rule.basis().readOn();
            rules.add(new Rule(
                    place + rule.limit(),
                    rule.basis().kind().word(),
                    rule.basis().source(),
                    rule.basis().status() + read,
                    rule.basis().remarks()));
        }
        return rules;
    }
}
