package wisp.indicator;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.List;
import org.junit.jupiter.api.Test;
import wisp.cohort.Cohort;
import wisp.cohort.Herd;
import wisp.event.EventReader;
import wisp.interchange.Import;
import wisp.interchange.ImportListener;
import wisp.interchange.ImportOptions;
import wisp.interchange.ImportReport;
import wisp.interchange.Mapping;
import wisp.log.MemoryLog;
import wisp.statistics.BetaBinomial;
import wisp.statistics.Interval;

/**
 * Contagious bovine pleuropneumonia in 15 herds (Lesnoff and others 2004, Prev Vet Med 64:27; {@code cbpp} of R's
 * lme4): imported through its mapping, each herd's risk of illness is the published count, and shrinks as published
 * values do.
 */
class PublishedHerdsTest {
    private static final Path FOLDER = Path.of("src", "test", "resources", "cbpp");
    private static final Path REFERENCE =
            Path.of("src", "test", "resources", "reference", "beta-binomial-eb-cbpp.json");

    @Test
    void theRiskOfIllnessByHerdIsAsPublished() throws IOException {
        Definitions definitions = Definitions.load(null);
        Cohort cohort = imported(definitions);
        Selection byHerd = new Selection(Selection.ALL, null, null, null, Stratum.PEN, null, null, null, null);
        Indicator risk = definitions.indicator("pneumonia-risk-60d").orElseThrow();
        List<Estimate> herds = new Figures(definitions).of(risk, cohort, byHerd).strata();

        JsonNode reference = new ObjectMapper().readTree(REFERENCE.toFile());
        JsonNode published = reference.at("/input/data");
        int count = published.get("herd").size();
        assertEquals(15, count);
        assertEquals(15, herds.size());
        int[] cases = new int[count];
        int[] sizes = new int[count];
        for (int i = 0; i < count; i++) {
            Estimate herd = named(herds, "herd " + published.get("herd").get(i).intValue());
            cases[i] = herd.numerator();
            sizes[i] = (int) herd.denominator();
            assertEquals(published.get("incidence").get(i).intValue(), cases[i], herd.name());
            assertEquals(published.get("size").get(i).intValue(), sizes[i], herd.name());
            assertEquals((double) cases[i] / sizes[i], herd.interval().value(), 1e-15, herd.name());
            assertEquals(0, herd.pending(), herd.name());
            assertTrue(herd.excluded().isEmpty(), herd.name());
        }

        // R 4.2.2: beta-binomial maximum likelihood, VGAM 1.1.7 as cross-check; the file holds shrunken risks to 1e-5
        JsonNode expected = reference.get("expected");
        BetaBinomial fit = BetaBinomial.fit(cases, sizes);
        assertEquals(expected.get("alpha").doubleValue(), fit.alpha(), 1e-4 * fit.alpha());
        assertEquals(expected.get("beta").doubleValue(), fit.beta(), 1e-4 * fit.beta());
        List<Interval> shrunken = fit.shrunken(0.95);
        for (int i = 0; i < count; i++) {
            assertEquals(
                    expected.get("shrunken").get(i).doubleValue(),
                    shrunken.get(i).value(),
                    1e-5);
            assertEquals(
                    expected.get("lower").get(i).doubleValue(), shrunken.get(i).low(), 1e-5);
            assertEquals(
                    expected.get("upper").get(i).doubleValue(), shrunken.get(i).high(), 1e-5);
        }
    }

    private static Cohort imported(Definitions definitions) {
        Mapping mapping = Mapping.read(FOLDER.resolve("cbpp-mapping.yaml"));
        ImportOptions options = new ImportOptions(false, false, ZoneId.of("UTC"), mapping);
        EventReader reader = EventReader.offered(definitions.conditions().keys(), Clock.systemUTC());
        try (MemoryLog log = new MemoryLog(Clock.systemUTC())) {
            ImportReport report =
                    Import.run(List.of(FOLDER.resolve("cbpp.csv")), options, log, reader, ImportListener.silent());
            assertTrue(report.sound(), report::sentence);
            Herd herd = Herd.following();
            herd.apply(log.read(0, Integer.MAX_VALUE));
            return herd.cohort();
        }
    }

    private static Estimate named(List<Estimate> herds, String name) {
        return herds.stream()
                .filter(herd -> herd.name().equals(name))
                .findFirst()
                .orElseThrow();
    }
}
