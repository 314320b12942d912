package wisp.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

/**
 * One file of published check values from {@code src/test/resources/reference}. A path such as {@code
 * "expected/lower"} or {@code "expected/0/ratio:log"} walks through objects by name and arrays by index; "Infinity" and
 * "NaN" are kept as strings in the files, and null, an undefined number, reads as NaN.
 */
record ReferenceFile(String name, JsonNode root) {

    /** Reads {@code reference/NAME.json} from the test resources. */
    static ReferenceFile read(String name) {
        String resource = "/reference/" + name + ".json";
        try (InputStream stream = ReferenceFile.class.getResourceAsStream(resource)) {
            if (stream == null) {
                throw new IllegalArgumentException("There is no test resource " + resource + ": copy the file there.");
            }
            return new ReferenceFile(name, new ObjectMapper().readTree(stream));
        } catch (IOException e) {
            throw new UncheckedIOException("The test resource " + resource + " is not JSON.", e);
        }
    }

    /** The node at a path; a path that leads nowhere is an error, not a missing node. */
    JsonNode node(String path) {
        JsonNode at = root;
        for (String step : path.split("/")) {
            JsonNode next = at.isArray() ? at.get(Integer.parseInt(step)) : at.get(step);
            if (next == null) {
                throw new IllegalArgumentException(name + ".json has no " + path + ": " + step + " is missing.");
            }
            at = next;
        }
        return at;
    }

    /** One number; an array of exactly one number counts as that number. */
    double number(String path) {
        JsonNode node = node(path);
        assertTrue(!node.isArray() || node.size() == 1, () -> path + " is not one number");
        return number(node.isArray() ? node.get(0) : node);
    }

    int integer(String path) {
        double number = number(path);
        assertEquals(Math.rint(number), number, () -> path + " is not a whole number");
        return (int) number;
    }

    String text(String path) {
        return node(path).textValue();
    }

    /** A row of numbers; a lone number is a row of one. */
    double[] numbers(String path) {
        return numbers(node(path));
    }

    int[] integers(String path) {
        double[] numbers = numbers(path);
        int[] integers = new int[numbers.length];
        for (int i = 0; i < numbers.length; i++) {
            assertEquals(Math.rint(numbers[i]), numbers[i], () -> path + " is not all whole numbers");
            integers[i] = (int) numbers[i];
        }
        return integers;
    }

    String[] texts(String path) {
        JsonNode node = node(path);
        String[] texts = new String[node.size()];
        for (int i = 0; i < texts.length; i++) {
            texts[i] = node.get(i).isNull() ? null : node.get(i).asText();
        }
        return texts;
    }

    /** A matrix, by row: either an array of arrays or an object {rows, columns, values}. */
    double[][] matrix(String path) {
        JsonNode node = node(path);
        JsonNode rows = node.isArray() ? node : node.get("values");
        double[][] matrix = new double[rows.size()][];
        for (int i = 0; i < matrix.length; i++) {
            matrix[i] = numbers(rows.get(i));
        }
        return matrix;
    }

    /** Holds a number to its reference value within a relative error (absolute where the reference is 0). */
    static void assertClose(double expected, double actual, double relative, String what) {
        if (Double.isNaN(expected) || Double.isInfinite(expected) || expected == 0) {
            assertEquals(expected, actual, relative, what);
        } else {
            assertEquals(expected, actual, relative * Math.abs(expected), what);
        }
    }

    private static double[] numbers(JsonNode node) {
        if (!node.isArray()) {
            return new double[] {number(node)};
        }
        double[] numbers = new double[node.size()];
        for (int i = 0; i < numbers.length; i++) {
            numbers[i] = number(node.get(i));
        }
        return numbers;
    }

    private static double number(JsonNode node) {
        if (node.isNull()) {
            return Double.NaN;
        }
        if (node.isNumber()) {
            return node.doubleValue();
        }
        return switch (node.asText()) {
            case "Infinity", "Inf" -> Double.POSITIVE_INFINITY;
            case "-Infinity", "-Inf" -> Double.NEGATIVE_INFINITY;
            case "NaN", "NA" -> Double.NaN;
            default -> throw new IllegalArgumentException(node + " is not a number.");
        };
    }
}
