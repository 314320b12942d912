package wisp.site;

import io.javalin.http.Context;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import wisp.event.Fault;
import wisp.question.navels.CareStratum;
import wisp.question.navels.NavelCalf;
import wisp.question.navels.NavelGroup;
import wisp.question.navels.NavelsAnswer;

/**
 * Which calves of the navels question are to be listed; null where nothing is asked.
 *
 * @param group of which group
 * @param delay of which class of delay
 * @param product treated with which product, {@code not recorded} among them
 * @param method treated by which method
 * @param stratum of which part, where the calves are divided
 * @param cases only those that fell ill
 */
record NavelCalvesAsked(NavelGroup group, String delay, String product, String method, String stratum, boolean cases) {
    static final Set<String> PARAMETERS = Set.of("group", "delay", "product", "method", "stratum", "cases");

    static NavelCalvesAsked all(NavelGroup group) {
        return new NavelCalvesAsked(group, null, null, null, null, false);
    }

    NavelCalvesAsked ofProduct(String name) {
        return new NavelCalvesAsked(group, delay, name, method, stratum, cases);
    }

    NavelCalvesAsked ofMethod(String name) {
        return new NavelCalvesAsked(group, delay, product, name, stratum, cases);
    }

    NavelCalvesAsked ofStratum(String name) {
        return new NavelCalvesAsked(group, delay, product, method, name, cases);
    }

    NavelCalvesAsked ofDelay(String name) {
        return new NavelCalvesAsked(group, name, product, method, stratum, cases);
    }

    NavelCalvesAsked of(NavelGroup other) {
        return new NavelCalvesAsked(other, delay, product, method, stratum, cases);
    }

    NavelCalvesAsked casesOnly() {
        return new NavelCalvesAsked(group, delay, product, method, stratum, true);
    }

    static NavelCalvesAsked of(Context ctx) {
        String group = ctx.queryParam("group");
        return new NavelCalvesAsked(
                NavelGroup.named(group == null ? "known" : group)
                        .orElseThrow(() -> Problem.parameters(List.of(new Fault(
                                "group",
                                "There is no group " + group + ".",
                                "Open it from a count on the page of navels.")))),
                ctx.queryParam("delay"),
                ctx.queryParam("product"),
                ctx.queryParam("method"),
                ctx.queryParam("stratum"),
                "true".equals(ctx.queryParam("cases")));
    }

    /** As parameters of an address. */
    Map<String, String> parameters() {
        Map<String, String> all = new LinkedHashMap<>();
        all.put("group", group.word());
        put(all, "delay", delay);
        put(all, "product", product);
        put(all, "method", method);
        put(all, "stratum", stratum);
        put(all, "cases", cases ? "true" : null);
        return all;
    }

    private static void put(Map<String, String> all, String name, String value) {
        if (value != null) {
            all.put(name, value);
        }
    }

    /** What the calves have in common. */
    String title() {
        return "Calves " + group.title()
                + (delay == null ? "" : ", " + delay)
                + (product == null ? "" : ", product: " + product)
                + (method == null ? "" : ", method: " + method)
                + (stratum == null ? "" : ", " + stratum)
                + (cases ? ": cases" : "");
    }

    List<NavelCalf> of(NavelsAnswer answer) {
        return group.of(answer.calves()).stream()
                .filter(calf -> delay == null || calf.delay().word().equals(delay))
                .filter(calf -> product == null || product.equals(CareStratum.name(calf.product())))
                .filter(calf -> method == null || method.equals(CareStratum.name(calf.method())))
                .filter(calf -> stratum == null
                        || Objects.equals(
                                stratum, answer.stratumOf().get(calf.verdict().row())))
                .filter(calf -> !cases || calf.sick())
                .toList();
    }
}
