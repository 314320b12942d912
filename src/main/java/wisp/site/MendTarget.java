package wisp.site;

import java.time.ZoneId;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import wisp.cohort.Cohort;
import wisp.history.Annals;
import wisp.history.Life;
import wisp.history.LifeEvent;
import wisp.history.Mark;
import wisp.history.Withdrawn;

/**
 * An event that somebody wants to mend, as it stands now.
 *
 * @param subject whose it is; a correction's too
 * @param row the animal's row in the cohort, -1 for a pen and for the farm
 * @param event the event in its present form
 * @param zone the farm's clocks
 * @param problem what is wrong where it is marked, else empty
 * @param fallenBy the retraction that withdrew it, null where it stands
 */
record MendTarget(String subject, int row, LifeEvent event, ZoneId zone, String problem, LifeEvent fallenBy) {

    /** The event of this name, or empty where no animal, no pen and not the farm has it. */
    static Optional<MendTarget> of(Cohort cohort, String source, String id) {
        for (int row = 0; row < cohort.lives().size(); row++) {
            Life life = cohort.lives().get(row);
            Optional<MendTarget> found = ofAnimal(life, row, source, id);
            if (found.isPresent()) {
                return found;
            }
        }
        ZoneId zone = cohort.farm().latest().zone();
        for (Map.Entry<String, Annals> one : cohort.annals().entrySet()) {
            Annals annals = one.getValue();
            Optional<MendTarget> found =
                    of(one.getKey(), -1, zone, annals.marks(), annals.events(), annals.withdrawn(), source, id);
            if (found.isPresent()) {
                return found;
            }
        }
        // a pen that bears an animal's key
        for (Map.Entry<String, List<LifeEvent>> pen : cohort.pens().entrySet()) {
            Optional<MendTarget> found = of(pen.getKey(), -1, zone, List.of(), pen.getValue(), List.of(), source, id);
            if (found.isPresent()) {
                return found;
            }
        }
        return Optional.empty();
    }

    private static Optional<MendTarget> ofAnimal(Life life, int row, String source, String id) {
        ZoneId zone = life.farm().zone();
        return of(life.key(), row, zone, life.marks(), life.events(), life.withdrawn(), source, id);
    }

    private static Optional<MendTarget> of(
            String subject,
            int row,
            ZoneId zone,
            List<Mark> marks,
            List<LifeEvent> events,
            List<Withdrawn> withdrawn,
            String source,
            String id) {
        for (Mark mark : marks) {
            if (is(mark.event(), source, id)) {
                String problem = (mark.kind().problem() + " " + mark.detail()).strip();
                return Optional.of(new MendTarget(subject, row, mark.event(), zone, problem, null));
            }
        }
        Stream<LifeEvent> corrections = withdrawn.stream().map(Withdrawn::by);
        List<LifeEvent> standing = Stream.concat(events.stream(), corrections).toList();
        Optional<MendTarget> stands =
                named(standing, source, id).map(event -> new MendTarget(subject, row, event, zone, "", null));
        return stands.isPresent()
                ? stands
                : withdrawn.stream()
                        .filter(one -> is(one.event(), source, id))
                        .findFirst()
                        .map(one -> new MendTarget(subject, row, one.event(), zone, "", one.by()));
    }

    private static Optional<LifeEvent> named(Collection<LifeEvent> events, String source, String id) {
        return events.stream().filter(event -> is(event, source, id)).findFirst();
    }

    private static boolean is(LifeEvent event, String source, String id) {
        return event.id().equals(id) && event.source().equals(source);
    }

    /** Whether it is itself a correction, which can be withdrawn but not amended. */
    boolean correction() {
        return event.type().isCorrection();
    }
}
