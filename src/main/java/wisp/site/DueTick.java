package wisp.site;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wisp.due.DueItem;
import wisp.event.BloodTested;
import wisp.event.Castrated;
import wisp.event.ColostrumFed;
import wisp.event.Disbudded;
import wisp.event.EventData;
import wisp.event.NavelChecked;
import wisp.event.NavelTreated;
import wisp.event.Registered;
import wisp.event.SampleResult;
import wisp.event.SampleSent;
import wisp.event.TagFitted;
import wisp.event.TissueSampled;
import wisp.history.EarTags;
import wisp.history.Life;
import wisp.indicator.Definitions;
import wisp.indicator.Law;
import wisp.indicator.ProcedureLimit;

/**
 * What the page offers to record one step: at once by a button where nothing has to be typed, and a form.
 *
 * @param turn which of this step's recordings it would be
 * @param usual what the button says, empty where something must be typed or the usual way is not lawful any more
 * @param preset what the button records beside the hour
 * @param other what the form's fold says
 * @param fields the form's fields
 */
public record DueTick(int turn, String usual, Map<String, String> preset, String other, List<MendField> fields) {
    /** The field that says that the other ear bears the same number. */
    static final String PAIR = "pair";

    private static final String DETAILS = "Other hour or details";
    private static final String WAY = "Record what was done";
    private static final Map<String, String> LABELS = Map.of(
            "number", "Tag number",
            "role", "Primary or secondary tag",
            "both_in", "Both testicles in",
            "document", "Number of the document",
            "tag_number", "Number of the sample tag",
            "serum_protein_g_dl", "Serum protein (g/dl)",
            "serum_brix_percent", "Serum Brix (%)",
            "igg_g_l", "IgG (g/l)",
            "brix_percent", "Colostrum's Brix (%)");

    /** What is offered for an item; empty where nothing can be recorded from this page. */
    static Optional<DueTick> of(DueItem item, Definitions definitions, Instant now) {
        if (now.isBefore(item.span().opens())) {
            return Optional.empty();
        }
        Life life = item.life();
        Optional<DueTick> tick = switch (item.event()) {
            case NAVEL_TREATED -> tick("Treated", Map.of(), DETAILS, new NavelTreated(null, null, null));
            case NAVEL_CHECKED ->
                tick("Looked: normal", Map.of("finding", "normal"), "Other finding or hour", new NavelChecked(null));
            case COLOSTRUM_FED -> colostrum(item, definitions);
            case TAG_FITTED -> Optional.of(tag(item));
            case TISSUE_SAMPLED -> tick("Sample taken", Map.of(), DETAILS, new TissueSampled(null));
            case SAMPLE_SENT -> tick("Sent", Map.of(), DETAILS, new SampleSent(null, null));
            case SAMPLE_RESULT -> tick("", Map.of(), "Record the result", new SampleResult(null, null, null, null));
            case REGISTERED -> tick("Registered", Map.of(), DETAILS, new Registered(null));
            case BLOOD_TESTED -> tick("", Map.of(), "Record the reading", new BloodTested(null, null, null));
            case CASTRATED -> Optional.of(castrated(item, definitions.law(life), now));
            case DISBUDDED -> Optional.of(disbudded(definitions.law(life)));
            default -> Optional.empty();
        };
        return tick.map(one -> one.turn(DueForm.nextTurn(life, item.step())));
    }

    private static Optional<DueTick> tick(String usual, Map<String, String> preset, String other, EventData blank) {
        return Optional.of(new DueTick(0, usual, preset, other, labelled(MendField.of(blank))));
    }

    private DueTick turn(int number) {
        return new DueTick(number, usual, preset, other, fields);
    }

    /** The same with what somebody typed. */
    DueTick typed(DueForm form) {
        return new DueTick(form.turn(), usual, preset, other, MendField.typed(fields, form.data()));
    }

    /** What is missing of the amount asked for is what is usually fed. */
    private static Optional<DueTick> colostrum(DueItem item, Definitions definitions) {
        Life life = item.life();
        double fed = life.events().stream()
                .filter(event -> event.data() instanceof ColostrumFed feed && feed.volumeL() != null)
                .mapToDouble(event -> ((ColostrumFed) event.data()).volumeL())
                .sum();
        double wanted = definitions
                .practice()
                .step(item.step())
                .map(step -> step.litres(life.birth().weightKg()))
                .orElse(0.0);
        // rounded up, so that what was asked for is reached; an amount such as 10 % of 41 kg is no exact number
        double missing = Math.ceil((wanted - fed) * 10 - 1e-6) / 10;
        ColostrumFed blank = new ColostrumFed(missing > 0 ? missing : null, null, null);
        List<MendField> fields = labelled(MendField.of(blank));
        return missing > 0
                ? tick(
                        "Fed " + fields.get(0).value() + " l",
                        Map.of("volume_l", fields.get(0).value()),
                        "Other amount or hour",
                        blank)
                : tick("", Map.of(), "Record a feeding", blank);
    }

    /** A calf without a tag usually gets both, with one number; the second tag bears the first one's. */
    private static DueTick tag(DueItem item) {
        List<EarTags.Fitting> worn = EarTags.of(item.life()).inPlace();
        if (worn.isEmpty()) {
            List<MendField> fields =
                    new ArrayList<>(labelled(MendField.of(new TagFitted(null, null, TagFitted.Role.PRIMARY))));
            fields.add(
                    new MendField(PAIR, "Other ear tagged too, same number", MendField.Kind.FLAG, List.of(), "true"));
            return new DueTick(0, "", Map.of(), "Record the tags", fields);
        }
        TagFitted first = worn.get(0).tag();
        TagFitted.Ear other = first.ear() == null
                ? null
                : first.ear() == TagFitted.Ear.LEFT ? TagFitted.Ear.RIGHT : TagFitted.Ear.LEFT;
        TagFitted.Role role =
                first.role() == TagFitted.Role.SECONDARY ? TagFitted.Role.PRIMARY : TagFitted.Role.SECONDARY;
        TagFitted second = new TagFitted(first.number(), other, role);
        return new DueTick(0, "", Map.of(), "Record the second tag", labelled(MendField.of(second)));
    }

    /** A ring by one tap, while law lets it go on without anything else; else the form alone. */
    private static DueTick castrated(DueItem item, Optional<Law> law, Instant now) {
        List<MendField> fields = labelled(MendField.of(new Castrated(null, null, null, null)));
        ZoneId zone = item.life().farm().zone();
        LocalDate today = now.atZone(zone).toLocalDate();
        LocalDate born = item.life().birthDate();
        boolean simple = law.flatMap(one -> one.castration(Castrated.Method.RING))
                .filter(ring -> ring.open(born, today) && asksNothing(ring, born, today))
                .isPresent();
        boolean first = item.life().events().stream().noneMatch(event -> event.data() instanceof Castrated);
        return simple && first
                ? new DueTick(
                        0, "Ring on, both in", Map.of("method", "ring", "both_in", "true"), "Other way or hour", fields)
                : new DueTick(0, "", Map.of(), WAY, fields);
    }

    private static boolean asksNothing(ProcedureLimit limit, LocalDate born, LocalDate day) {
        return List.of(limit.anaesthetic(), limit.painRelief(), limit.vet()).stream()
                .noneMatch(from -> from.reached(born, day));
    }

    private static DueTick disbudded(Optional<Law> law) {
        List<String> methods =
                law.map(one -> List.copyOf(one.disbudding().keySet())).orElse(List.of());
        List<MendField> fields = labelled(MendField.of(new Disbudded(null, null, null))).stream()
                .map(field -> field.name().equals("method") && !methods.isEmpty()
                        ? new MendField(field.name(), field.label(), MendField.Kind.CHOICE, methods, "")
                        : field)
                .toList();
        return new DueTick(0, "", Map.of(), WAY, fields);
    }

    private static List<MendField> labelled(List<MendField> fields) {
        return fields.stream()
                .map(field -> new MendField(
                        field.name(),
                        LABELS.getOrDefault(field.name(), field.label()),
                        field.kind(),
                        field.choices(),
                        field.value()))
                .toList();
    }
}
