package wisp.question;

import java.util.ArrayList;
import java.util.List;

/** What must be kept in mind before a pen is blamed. */
final class PensCautions {
    private PensCautions() {}

    static List<String> of(PensAnswer answer) {
        List<String> cautions = new ArrayList<>();
        long small = answer.pens().stream().filter(PenShare::tooFewToRank).count();
        cautions.add("Small pens cannot be ranked: with " + PenShare.TOO_FEW_TO_RANK + " calves or fewer a single calf"
                + " moves the share far (Hayer et al. 2021, J Anim Sci skab266, of farms that small)."
                + (small == 0
                        ? ""
                        : small == 1 ? " One pen here is that small." : " " + small + " here are that small."));
        cautions.add("Dirtiness does not stand for diarrhoea: of 452 calves a dirty hide found 67 % of those with"
                + " diarrhoea and was wrong about 37 % of those without (Graham et al. 2018, J Dairy Sci"
                + " 101:3363-3366, hides scored 0 to 3, dirty from 1 on).");
        cautions.add("A pen's share says where dirty calves were found, not why. Which cows calve where, and in which"
                + " weather, is nobody's experiment.");
        cautions.add(
                "People score differently, and age alone moves most welfare scores (Hayer et al. 2021): pens are only"
                        + " comparable where the same people score calves of the same age.");
        if (answer.spread().fitted() && !answer.spread().boundary()) {
            cautions.add(
                    "The intervals of drawn-in shares take the spread between pens as known. With few pens they are"
                            + " too narrow: of 95 % intervals of 20 groups of 15 to 54 some 90 % held the truth.");
        }
        cautions.add("Calves get dirty and fall ill for many reasons; what to change, and whom to treat, is for the"
                + " farm and its vet to decide.");
        return cautions;
    }
}
