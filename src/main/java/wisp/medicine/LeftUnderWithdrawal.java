package wisp.medicine;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.Optional;
import wisp.history.Exit;
import wisp.history.Life;
import wisp.history.MeatWithdrawal;

/**
 * An animal that left alive while a recorded meat withdrawal ran. Selling it is not refused, as it may be lawful where
 * the withdrawal is passed on, but it is never passed over in silence.
 *
 * @param life the animal
 * @param day the local day on which it left
 * @param last the withdrawal that ended last of those that ran
 */
public record LeftUnderWithdrawal(Life life, LocalDate day, MeatWithdrawal last) {

    /** The animal, where it left under withdrawal. */
    public static Optional<LeftUnderWithdrawal> of(Life life) {
        if (life.exit() == null || life.exit().kind() != Exit.Kind.LEFT) {
            return Optional.empty();
        }
        LocalDate day = life.exit().time().atZone(life.farm().zone()).toLocalDate();
        return MeatWithdrawal.of(life).stream()
                .filter(one -> one.runsAt(life.exit().time()))
                .max(Comparator.comparing(MeatWithdrawal::end))
                .map(last -> new LeftUnderWithdrawal(life, day, last));
    }
}
