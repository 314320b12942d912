package wisp.history;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import wisp.log.StoredEvent;
import wisp.testing.Calf;
import wisp.testing.Events;

class TagRegisterTest {
    private final Events events = Events.london();
    private final TagRegister register = new TagRegister();

    private Calf calf(String key) {
        return new Calf(events, key).born("2026-03-01 07:30", "alive: true");
    }

    private static StoredEvent tag(Calf calf, String when, String number) {
        return calf.at(when, "tag-fitted", "number: " + number);
    }

    private Set<String> update(Calf... calves) {
        Set<String> others = new TreeSet<>();
        for (Calf calf : calves) {
            others.addAll(register.update(calf.life()));
        }
        return others;
    }

    @Test
    void aNumberOnASecondLivingAnimalIsMarkedThere() {
        Calf a = calf("A");
        Calf b = calf("B");
        tag(a, "2026-03-02 09:00", "UK1");
        StoredEvent second = tag(b, "2026-03-03 09:00", "UK1");
        assertEquals(Set.of(), update(a, b), "B is the one in hand, A's marks stay");
        assertEquals(Set.of(), register.inUse("A"));
        assertEquals(Set.of(second.sequence()), register.inUse("B"));
    }

    @Test
    void theEarlierFittingHoldsThoughItArrivesLast() {
        Calf a = calf("A");
        Calf b = calf("B");
        StoredEvent late = tag(a, "2026-03-05 09:00", "UK1");
        update(a);
        tag(b, "2026-03-03 09:00", "UK1");
        assertEquals(Set.of("A"), update(b));
        assertEquals(Set.of(late.sequence()), register.inUse("A"));
    }

    @Test
    void theNumberIsFreeFromTheHoldersDeathOrLeavingOn() {
        for (String exit : new String[] {"died", "left"}) {
            Calf a = calf("A" + exit);
            Calf b = calf("B" + exit);
            Calf c = calf("C" + exit);
            tag(a, "2026-03-02 09:00", exit);
            a.at("2026-03-10 09:00", exit, "");
            StoredEvent early = tag(b, "2026-03-10 08:59:59.999", exit);
            tag(c, "2026-03-10 09:00", exit);
            update(a, b, c);
            assertEquals(Set.of(early.sequence()), register.inUse("B" + exit));
            assertEquals(Set.of(), register.inUse("C" + exit));
        }
    }

    @Test
    void aDeathThatBecomesKnownLaterFreesTheNumber() {
        Calf a = calf("A");
        Calf b = calf("B");
        tag(a, "2026-03-02 09:00", "UK1");
        tag(b, "2026-03-10 09:00", "UK1");
        update(a, b);
        a.at("2026-03-09 09:00", "died", "");
        assertEquals(Set.of("B"), update(a));
        assertEquals(Set.of(), register.inUse("B"));
    }

    @Test
    void aCorrectedNumberFreesTheSecondAnimal() {
        Calf a = calf("A");
        Calf b = calf("B");
        StoredEvent wrong = tag(a, "2026-03-02 09:00", "UK1");
        tag(b, "2026-03-03 09:00", "UK1");
        update(a, b);
        events.amend(wrong, "2026-03-04 09:00", "2026-03-02 09:00", "number: UK2");
        assertEquals(Set.of("B"), update(a));
        assertEquals(Set.of(), register.inUse("B"));
        assertEquals(Set.of(), register.inUse("A"));
    }

    @Test
    void oneNumberInTwoEarsOfOneAnimalIsFine() {
        Calf a = calf("A");
        tag(a, "2026-03-02 09:00", "UK1, ear: left");
        tag(a, "2026-03-02 09:01", "UK1, ear: right");
        update(a);
        assertEquals(Set.of(), register.inUse("A"));
    }

    @Test
    void aMarkedFittingHoldsNothingInAChainOfThree() {
        Calf a = calf("A");
        Calf b = calf("B");
        Calf c = calf("C");
        StoredEvent first = tag(a, "2026-03-02 09:00", "UK1");
        StoredEvent second = tag(b, "2026-03-03 09:00", "UK1");
        StoredEvent third = tag(c, "2026-03-04 09:00", "UK1");
        update(a, b, c);
        assertEquals(Set.of(second.sequence()), register.inUse("B"));
        assertEquals(Set.of(third.sequence()), register.inUse("C"));
        events.retract(first, "2026-03-05 09:00");
        assertEquals(Set.of("B"), update(a), "C's mark stays, now against B");
        assertEquals(Set.of(), register.inUse("B"));
        assertEquals(Set.of(third.sequence()), register.inUse("C"));
    }

    @Test
    void anAnimalWithoutBirthHoldsNoNumber() {
        Calf a = new Calf(events, "A");
        Calf b = calf("B");
        tag(a, "2026-03-02 09:00", "UK1");
        tag(b, "2026-03-03 09:00", "UK1");
        update(a, b);
        assertEquals(Set.of(), register.inUse("B"));
    }

    @Test
    void anEventThatTouchesNoTagTouchesNoOtherAnimal() {
        Calf a = calf("A");
        Calf b = calf("B");
        tag(a, "2026-03-02 09:00", "UK1");
        tag(b, "2026-03-03 09:00", "UK1");
        update(a, b);
        a.at("2026-03-04 09:00", "weighed", "weight_kg: 40");
        assertEquals(Set.of(), update(a));
    }
}
