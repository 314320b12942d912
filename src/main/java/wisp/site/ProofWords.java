package wisp.site;

import java.util.ArrayList;
import java.util.List;
import wisp.due.Proof;
import wisp.due.ProofCalf;
import wisp.question.Counted;

/** A proof in plain words. */
final class ProofWords {
    private ProofWords() {}

    /** One or two sentences, and what is still open. */
    static List<Counted> answer(Proof proof) {
        List<String> answer = new ArrayList<>();
        int inside = proof.count(ProofCalf.Part.INSIDE);
        int settled = inside + proof.count(ProofCalf.Part.BREACH);
        if (settled == 0) {
            answer.add("No calf is settled yet, so nothing can be said of this limit.");
        } else {
            answer.add(list(inside, String.valueOf(inside), ProofList.INSIDE) + " of "
                    + list(settled, settled + (settled == 1 ? " calf" : " calves"), ProofList.SETTLED)
                    + (settled == 1 ? " was" : " were")
                    + " inside the limit, " + percent(proof.share().value()) + " (95 % interval "
                    + percent(proof.share().low()) + " to "
                    + percent(proof.share().high()) + ").");
        }
        int late = proof.enteredLate().size();
        if (late > 0) {
            answer.add(list(late, late == 1 ? "One" : String.valueOf(late), ProofList.ENTERED_LATE)
                    + (late == 1 ? " of them was" : " of them were")
                    + " written down after the limit had passed: entered late is not done late.");
        }
        int pending = proof.count(ProofCalf.Part.PENDING);
        if (pending > 0) {
            answer.add("For " + list(pending, pending == 1 ? "one calf" : pending + " calves", ProofList.PENDING)
                    + " the limit is not over yet.");
        }
        return answer.stream().map(Counted::new).toList();
    }

    private static String list(int n, String words, ProofList list) {
        return Counted.count(n, words, ProofList.PARAMETER, list.word());
    }

    /** The proof's scale: what is counted, and from when. */
    static String scale(Proof proof) {
        if (proof.id().equals("sample-result")) {
            return "Days since sending";
        }
        if (proof.id().equals("sample-sent")) {
            return "Days since the sample was taken";
        }
        return proof.byHours() ? "Age (hours)" : "Day of life, 0 the day of birth";
    }

    /** The day that is day 0, in words. */
    static String dayNought(Proof proof) {
        return switch (proof.id()) {
            case "sample-result" -> "the day of sending";
            case "sample-sent" -> "the day of taking";
            default -> "the day of birth";
        };
    }

    /** A time on the proof's scale. */
    static String time(Proof proof, double time) {
        return proof.byHours() ? Shown.decimals(time, time < 2 ? 1 : 0) + " h" : "day " + Math.round(time);
    }

    /** A share as per cent. */
    static String percent(double share) {
        return Shown.decimals(100 * share, 1) + " %";
    }
}
