package wisp.event;

/**
 * Blood was tested for passive transfer; at least one of the three is there.
 *
 * @param serumProteinGDl serum total protein, g/dl
 * @param serumBrixPercent serum Brix, percent
 * @param iggGL serum immunoglobulin G, g/l
 */
public record BloodTested(Double serumProteinGDl, Double serumBrixPercent, Double iggGL) implements EventData {

    static BloodTested read(DataReader in) {
        BloodTested tested = new BloodTested(
                in.number("serum_protein_g_dl", 0.5, 15),
                in.number("serum_brix_percent", 1, 30),
                in.number("igg_g_l", 0, 200));
        if (tested.serumProteinGDl == null && tested.serumBrixPercent == null && tested.iggGL == null && in.sound()) {
            in.fault(
                    "",
                    "No result is given.",
                    "Give one of serum_protein_g_dl, serum_brix_percent or igg_g_l as a number.");
        }
        return tested;
    }

    @Override
    public EventType type() {
        return EventType.BLOOD_TESTED;
    }
}
