package wisp.site;

import java.util.List;
import wisp.event.Fault;

/** What a page shows when it cannot show what was asked for. */
public record ErrorPage(int status, String title, String detail, List<Fault> faults) {}
