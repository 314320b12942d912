package wisp.indicator;

import java.math.BigDecimal;

/** Numbers without needless zeros. */
final class Plain {
    private Plain() {}

    static String number(double value) {
        return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }
}
