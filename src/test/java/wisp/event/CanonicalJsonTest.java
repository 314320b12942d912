package wisp.event;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.HexFormat;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** RFC 8785's own samples: Rundgren, Jordan and Erdtman, JSON Canonicalization Scheme, June 2020. */
class CanonicalJsonTest {
    // RFC 8785 section 3.2.2, the sample that is serialised
    private static final String SAMPLE = """
            {
              "numbers": [333333333.33333329, 1E30, 4.50,
                          2e-3, 0.000000000000000000000000001],
              "string": "\\u20ac$\\u000F\\u000aA'\\u0042\\u0022\\u005c\\\\\\"\\/",
              "literals": [null, true, false]
            }
            """;

    @Test
    void theSampleComesOutSortedAndInTheShortestForm() {
        // RFC 8785 section 3.2.3
        String expected = "{\"literals\":[null,true,false],\"numbers\":[333333333.3333333,1e+30,4.5,0.002,1e-27],"
                + "\"string\":\"€$\\u000f\\nA'B\\\"\\\\\\\\\\\"/\"}";
        assertEquals(expected, CanonicalJson.of(SAMPLE));
    }

    @Test
    void theSampleComesOutAsTheBytesOfTheStandard() {
        // RFC 8785 section 3.2.4
        String bytes = "7b226c69746572616c73223a5b6e756c6c2c747275652c66616c73655d2c226e756d62657273223a5b333333333333"
                + "3333332e333333333333332c31652b33302c342e352c302e3030322c31652d32375d2c22737472696e67223a22e282ac2"
                + "45c75303030665c6e4127425c225c5c5c5c5c222f227d";
        assertEquals(bytes, HexFormat.of().formatHex(CanonicalJson.of(SAMPLE).getBytes(StandardCharsets.UTF_8)));
    }

    @Test
    void namesAreSortedByTheirUtf16CodeUnits() {
        // RFC 8785 section 3.2.3, "Sorting of Object Properties": the values in their expected order
        String input = """
                {
                  "\\u20ac": "Euro Sign",
                  "\\r": "Carriage Return",
                  "\\ufb33": "Hebrew Letter Dalet With Dagesh",
                  "1": "One",
                  "\\ud83d\\ude00": "Emoji: Grinning Face",
                  "\\u0080": "Control",
                  "\\u00f6": "Latin Small Letter O With Diaeresis"
                }
                """;
        String expected = "{\"\\r\":\"Carriage Return\",\"1\":\"One\",\"\u0080\":\"Control\","
                + "\"ö\":\"Latin Small Letter O With Diaeresis\",\"€\":\"Euro Sign\","
                + "\"😀\":\"Emoji: Grinning Face\",\"\ufb33\":\"Hebrew Letter Dalet With Dagesh\"}";
        assertEquals(expected, CanonicalJson.of(input));
    }

    // RFC 8785 appendix B, "Number Serialization Samples"
    @ParameterizedTest
    @CsvSource({
        "0000000000000000, 0",
        "8000000000000000, 0",
        "0000000000000001, 5e-324",
        "8000000000000001, -5e-324",
        "7fefffffffffffff, 1.7976931348623157e+308",
        "ffefffffffffffff, -1.7976931348623157e+308",
        "4340000000000000, 9007199254740992",
        "c340000000000000, -9007199254740992",
        "4430000000000000, 295147905179352830000",
        "44b52d02c7e14af5, 9.999999999999997e+22",
        "44b52d02c7e14af6, 1e+23",
        "44b52d02c7e14af7, 1.0000000000000001e+23",
        "444b1ae4d6e2ef4e, 999999999999999700000",
        "444b1ae4d6e2ef4f, 999999999999999900000",
        "444b1ae4d6e2ef50, 1e+21",
        "3eb0c6f7a0b5ed8c, 9.999999999999997e-7",
        "3eb0c6f7a0b5ed8d, 0.000001",
        "41b3de4355555553, 333333333.3333332",
        "41b3de4355555554, 333333333.33333325",
        "41b3de4355555555, 333333333.3333333",
        "41b3de4355555556, 333333333.3333334",
        "41b3de4355555557, 333333333.33333343",
        "becbf647612f3696, -0.0000033333333333333333",
        "43143ff3c1cb0959, 1424953923781206.2"
    })
    void aNumberIsWrittenAsTheStandardSays(String bits, String expected) {
        double value = Double.longBitsToDouble(Long.parseUnsignedLong(bits, 16));
        String exact = value == 0 ? Double.toString(value) : new BigDecimal(value).toString();
        assertEquals("[" + expected + "]", CanonicalJson.of("[" + exact + "]"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"[1e999]", "[NaN]", "[Infinity]", "", "{", "{\"a\":1,\"a\":2}", "[\"\u0001\"]", "7"})
    void whatHasNoCanonicalFormIsRefused(String text) {
        assertThrows(UncheckedIOException.class, () -> CanonicalJson.of(text));
    }

    @Test
    void theCanonicalFormOfACanonicalTextIsItself() {
        String once = CanonicalJson.of(SAMPLE);
        assertEquals(once, CanonicalJson.of(once));
    }
}
