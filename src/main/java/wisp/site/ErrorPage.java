package wisp.site;

import java.util.List;
import wisp.event.Fault;

/**
 * What a page shows when it cannot show what was asked for.
 *
 * @param alert samples that are not negative, in words, as they stand on every page; empty where there are none
 */
public record ErrorPage(int status, String title, String detail, List<Fault> faults, String alert) {}
