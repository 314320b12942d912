package wisp.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BoundUnitsTest {
    @Test
    void aNumberIsBoundToItsUnit() {
        assertEquals(
                "<p>6.0\u00a0% by 24\u00a0h, 41.5\u00a0kg, 3\u00a0l, 39.7\u00a0°C, 60\u00a0days.</p>",
                BoundUnits.in("<p>6.0 % by 24 h, 41.5 kg, 3 l, 39.7 °C, 60 days.</p>"));
        assertEquals("over 20 %", BoundUnits.in("over 20 %").replace('\u00a0', ' '));
        assertEquals("∞\u00a0%", BoundUnits.in("∞ %"));
    }

    @Test
    void aWordThatOnlyBeginsLikeAUnitIsNotBound() {
        String text = "<p>2 heifers, 3 lambs, 4 dams, 5 had it, 6 daysets; a % of all</p>";
        assertEquals(text, BoundUnits.in(text));
    }

    @Test
    void whatAFieldHoldsIsLeftAlone() {
        String field = "<input name='a' value=\"more > 5 kg, 'so' 10 %\"><img alt='it\"s 5 kg > 4 kg'>";
        assertEquals(field, BoundUnits.in(field));
        assertEquals(field + "5\u00a0kg", BoundUnits.in(field + "5 kg"));
    }

    @Test
    void anEmptyPageStaysEmpty() {
        assertEquals("", BoundUnits.in(""));
        assertEquals(" %", BoundUnits.in(" %"));
    }

    @Test
    void noPageLetsALineBeginWithAPercentSign(@TempDir Path folder) {
        Pattern loose = Pattern.compile(">[^<]*[0-9] %[^<]*<");
        try (RunningSite demo = RunningSite.demo(folder)) {
            for (String path : List.of("/", "/navels", "/pens", "/proof", "/records", "/figures/stillbirth?by=pen")) {
                String page = demo.get(path).body();
                assertTrue(page.contains("\u00a0%"), path);
                assertFalse(loose.matcher(page).find(), path);
            }
        }
    }
}
