package wisp.site;

import java.util.ArrayList;
import java.util.List;
import wisp.due.Proof;
import wisp.due.ProofCalf;

/** A proof in plain words. */
final class ProofWords {
    private ProofWords() {}

    /** One or two sentences, and what is still open. */
    static List<String> answer(Proof proof) {
        List<String> answer = new ArrayList<>();
        int inside = proof.count(ProofCalf.Part.INSIDE);
        int settled = inside + proof.count(ProofCalf.Part.BREACH);
        if (settled == 0) {
            answer.add("No calf is settled yet, so nothing can be said of this limit.");
        } else {
            answer.add(inside + " of " + settled + (settled == 1 ? " calf was" : " calves were")
                    + " inside the limit, " + percent(proof.share().value()) + " (95 % interval "
                    + percent(proof.share().low()) + " to "
                    + percent(proof.share().high()) + ").");
        }
        int late = proof.enteredLate().size();
        if (late > 0) {
            answer.add((late == 1 ? "One of them was" : late + " of them were")
                    + " written down after the limit had passed: entered late is not done late.");
        }
        int pending = proof.count(ProofCalf.Part.PENDING);
        if (pending > 0) {
            answer.add(
                    pending == 1
                            ? "For one calf the limit is not over yet."
                            : "For " + pending + " calves the limit is not over yet.");
        }
        return answer;
    }

    /** How a calf counts, in words. */
    static String part(ProofCalf.Part part) {
        return switch (part) {
            case INSIDE -> "Inside the limit";
            case BREACH -> "Outside";
            case PENDING -> "Limit not over yet";
            case LEFT_OUT -> "Cannot be judged";
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
